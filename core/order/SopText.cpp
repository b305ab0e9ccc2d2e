#include "core/order/SopText.h"

#include <algorithm>
#include <charconv>

namespace matwright {
namespace {

constexpr std::size_t kLongestExtract = 80;

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view kBlank = " \t\r\f\v";
  const std::size_t begin = text.find_first_not_of(kBlank);
  return begin == std::string_view::npos ? std::string_view()
                                         : text.substr(begin, text.find_last_not_of(kBlank) - begin + 1);
}

// Words and lines of a text, and where it is.
class Lines {
public:
  Lines(std::string_view text, const std::string& file) : rest_(text), file_(file) {}

  // Goes to the next line that is not blank. False at the end.
  bool next() {
    while (!rest_.empty()) {
      const std::size_t end = std::min(rest_.find('\n'), rest_.size());
      line_ = trimmed(rest_.substr(0, end));
      rest_.remove_prefix(std::min(end + 1, rest_.size()));
      ++number_;
      if (!line_.empty())
        return true;
    }
    line_ = {};
    ++number_;
    return false;
  }
  std::string_view line() const { return line_; }
  // Takes the next word off the line; goes on to further lines. Empty at the end.
  std::string_view word() {
    if (line_.empty() && !next())
      return {};
    const std::size_t end = std::min(line_.find_first_of(" \t"), line_.size());
    const std::string_view taken = line_.substr(0, end);
    line_ = trimmed(line_.substr(end));
    return taken;
  }
  Error error(ErrorCode code, std::string expected, std::string_view found) const {
    return {code, file_, "/line/" + std::to_string(number_), std::move(expected),
            std::string(found.substr(0, kLongestExtract))};
  }

private:
  std::string_view rest_, line_;
  std::string file_;
  int number_ = 0;
};

Result<OrderCost> number(Lines& lines, OrderCost least, OrderCost most) {
  const std::string expected = "whole number from " + std::to_string(least) + " to " + std::to_string(most);
  const std::string_view word = lines.word();
  OrderCost value = 0;
  const auto [end, fault] = std::from_chars(word.data(), word.data() + word.size(), value);
  if (word.empty())
    return failure(lines.error(ErrorCode::missingKey, expected, "end of the text"));
  if (fault == std::errc::result_out_of_range)
    return failure(lines.error(ErrorCode::outOfRange, expected, word));
  if (fault != std::errc() || end != word.data() + word.size())
    return failure(lines.error(ErrorCode::wrongType, expected, word));
  if (value < least || value > most)
    return failure(lines.error(ErrorCode::outOfRange, expected, word));
  return value;
}

struct Header {
  std::string name;
  std::optional<OrderCost> dimension;
};

// Up to and with EDGE_WEIGHT_SECTION. `lines` is at the first line.
Result<Header> readHeader(Lines& lines) {
  Header header;
  do {
    const std::string_view line = lines.line();
    if (line == "EDGE_WEIGHT_SECTION") {
      lines.word();
      return header;
    }
    const std::size_t colon = line.find(':');
    const std::string_view key = trimmed(line.substr(0, colon));
    const std::string_view value = colon == std::string_view::npos ? "" : trimmed(line.substr(colon + 1));
    const auto require = [&](std::string_view wanted) -> Result<Header> {
      if (value == wanted)
        return header;
      return failure(lines.error(ErrorCode::unknownWord, std::string(wanted), value));
    };
    Result<Header> step = header;
    if (colon == std::string_view::npos)
      step = failure(lines.error(ErrorCode::wrongFormat, "KEYWORD: value or EDGE_WEIGHT_SECTION", line));
    else if (key == "NAME")
      header.name = value;
    else if (key == "TYPE")
      step = require("SOP");
    else if (key == "EDGE_WEIGHT_TYPE")
      step = require("EXPLICIT");
    else if (key == "EDGE_WEIGHT_FORMAT")
      step = require("FULL_MATRIX");
    else if (key == "DIMENSION") {
      OrderCost dimension = 0;
      const auto [end, fault] = std::from_chars(value.data(), value.data() + value.size(), dimension);
      if (fault != std::errc() || end != value.data() + value.size())
        step = failure(lines.error(ErrorCode::wrongType, "DIMENSION: whole number", value));
      header.dimension = dimension;
    } else if (key != "COMMENT")
      step = failure(lines.error(ErrorCode::unknownKey, "NAME, TYPE, COMMENT, DIMENSION, EDGE_WEIGHT_...", key));
    if (!step)
      return step;
  } while (lines.next());
  return failure(lines.error(ErrorCode::missingKey, "EDGE_WEIGHT_SECTION", "end of the text"));
}

} // namespace

Result<SopInstance> readSop(std::string_view text, const std::string& file) {
  Lines lines(text, file);
  if (!lines.next())
    return failure(lines.error(ErrorCode::wrongFormat, "an instance of SOPLIB or TSPLIB", "nothing"));
  Header header;
  if (const char begin = lines.line().front(); begin < '0' || begin > '9') {
    auto read = readHeader(lines);
    if (!read)
      return failure(read.error());
    header = *std::move(read);
  }
  const auto dimension = number(lines, 2, kMostOrderItems);
  if (!dimension)
    return failure(dimension.error());
  if (header.dimension && *header.dimension != *dimension)
    return failure(lines.error(ErrorCode::outOfRange,
                               "the dimension of the header, " + std::to_string(*header.dimension),
                               std::to_string(*dimension)));
  const int items = static_cast<int>(*dimension);
  std::vector<OrderCost> costs;
  costs.reserve(static_cast<std::size_t>(items) * items);
  for (int i = 0; i < items * items; ++i) {
    const auto cost = number(lines, kNoWay, kLargestOrderCost);
    if (!cost)
      return failure(cost.error());
    costs.push_back(*cost);
  }
  std::string_view rest = lines.word();
  if (rest == "EOF")
    rest = lines.word();
  if (!rest.empty())
    return failure(lines.error(ErrorCode::wrongFormat, "the end of the text", rest));
  SopInstance instance{header.name, problemOfMatrix(items, costs)};
  instance.problem.first = 0;
  instance.problem.last = items - 1;
  if (const auto relation = relationOf(instance.problem); !relation)
    return failure(lines.error(ErrorCode::wrongFormat, "precedences without a cycle", "a cycle"));
  return instance;
}

} // namespace matwright
