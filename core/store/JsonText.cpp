#include "core/store/JsonText.h"

#include "core/store/Files.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <vector>

namespace matwright {
namespace {

constexpr std::size_t kLongestExtract = 76; // bytes, before "..."

bool continuesCharacter(char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; }

std::string lineAndColumn(std::string_view text, std::size_t at) {
  const std::string_view before = text.substr(0, std::min(at, text.size()));
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  const std::size_t begin = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
  const auto column = 1 + std::count_if(before.begin() + static_cast<std::ptrdiff_t>(begin), before.end(),
                                        [](char c) { return !continuesCharacter(c); });
  return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

// Where brackets are first nested too deep; found before parsing, because only the text knows lines and columns.
std::optional<std::size_t> tooDeepAt(std::string_view text) {
  std::size_t depth = 0;
  bool quoted = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (quoted) {
      if (c == '\\')
        ++i;
      else if (c == '"')
        quoted = false;
    } else if (c == '"') {
      quoted = true;
    } else if (c == '[' || c == '{') {
      if (++depth > kDeepestNesting)
        return i;
    } else if ((c == ']' || c == '}') && depth > 0) {
      --depth;
    }
  }
  return std::nullopt;
}

// Builds the tree from the parser's events and stops at the first key that stands twice in its object.
class TreeBuilder : public nlohmann::json_sax<Json> {
public:
  bool null() override { return put(Json(nullptr)); }
  bool boolean(bool value) override { return put(Json(value)); }
  bool number_integer(number_integer_t value) override { return put(Json(value)); }
  bool number_unsigned(number_unsigned_t value) override { return put(Json(value)); }
  bool number_float(number_float_t value, const string_t&) override { return put(Json(value)); }
  bool string(string_t& value) override { return put(Json(std::move(value))); }
  bool binary(binary_t&) override { return false; } // not in JSON text
  bool start_object(std::size_t) override { return open(Json::object()); }
  bool start_array(std::size_t) override { return open(Json::array()); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }
  bool key(string_t& name) override {
    if (open_.back()->contains(name)) {
      doubled = pointerTo(pointer(), name);
      return false;
    }
    names_.back() = std::move(name);
    return true;
  }
  bool parse_error(std::size_t position, const std::string& token, const nlohmann::detail::exception&) override {
    faultAt = position > 0 ? position - 1 : 0;
    faultToken = token;
    return false;
  }

  Json root;
  std::optional<std::string> doubled;
  std::optional<std::size_t> faultAt;
  std::string faultToken;

private:
  Json* place(Json value) {
    if (open_.empty()) {
      root = std::move(value);
      return &root;
    }
    Json& parent = *open_.back();
    if (parent.is_array()) {
      parent.push_back(std::move(value));
      return &parent.back();
    }
    return &(parent[names_.back()] = std::move(value));
  }
  bool put(Json value) {
    place(std::move(value));
    return true;
  }
  // Pointers stay good: a container grows only while its own children are closed.
  bool open(Json container) {
    open_.push_back(place(std::move(container)));
    names_.emplace_back();
    return true;
  }
  bool close() {
    open_.pop_back();
    names_.pop_back();
    return true;
  }
  std::string pointer() const {
    std::string text;
    for (std::size_t i = 0; i + 1 < open_.size(); ++i)
      text = open_[i]->is_array() ? pointerTo(text, open_[i]->size() - 1) : pointerTo(text, names_[i]);
    return text;
  }

  std::vector<Json*> open_;
  std::vector<std::string> names_; // the key at work in each open container
};

void write(std::string& out, const Json& value, std::size_t level);

std::string quotedText(const std::string& text) {
  return Json(text).dump(-1, ' ', false, Json::error_handler_t::replace);
}

void breakLine(std::string& out, std::size_t level) {
  out += '\n';
  out.append(level * 2, ' ');
}

void writeObject(std::string& out, const Json& object, std::size_t level) {
  if (object.empty()) {
    out += "{}";
    return;
  }
  char before = '{';
  for (const auto& [key, value] : object.items()) {
    out += before;
    breakLine(out, level + 1);
    out += quotedText(key) + ": ";
    write(out, value, level + 1);
    before = ',';
  }
  breakLine(out, level);
  out += '}';
}

void writeArray(std::string& out, const Json& array, std::size_t level) {
  if (array.empty()) {
    out += "[]";
    return;
  }
  char before = '[';
  for (const Json& value : array) {
    out += before;
    breakLine(out, level + 1);
    write(out, value, level + 1);
    before = ',';
  }
  breakLine(out, level);
  out += ']';
}

void write(std::string& out, const Json& value, std::size_t level) {
  if (value.is_object())
    writeObject(out, value, level);
  else if (value.is_array())
    writeArray(out, value, level);
  else if (value.is_string())
    out += quotedText(value.get_ref<const std::string&>());
  else if (value.is_number_float())
    out += numberText(value.get<double>());
  else
    out += value.dump();
}

} // namespace

Result<Json> parseJson(std::string_view text, const std::string& file) {
  if (text.size() > kLargestFile)
    return failure(Error{ErrorCode::tooLarge, file, {}, "at most " + std::to_string(kLargestFile) + " bytes", {}});
  if (const auto at = tooDeepAt(text))
    return failure(Error{ErrorCode::notJson,
                         file,
                         lineAndColumn(text, *at),
                         "JSON nested at most " + std::to_string(kDeepestNesting) + " levels deep",
                         {}});
  TreeBuilder builder;
  if (Json::sax_parse(text, &builder))
    return std::move(builder.root);
  if (builder.doubled)
    return failure(Error{ErrorCode::duplicateId, file, *builder.doubled, "each key once", {}});
  return failure(Error{ErrorCode::notJson, file, lineAndColumn(text, builder.faultAt.value_or(0)), "JSON",
                       extractOf(builder.faultToken)});
}

std::string canonicalText(const Json& tree) {
  std::string out;
  write(out, tree, 0);
  out += '\n';
  return out;
}

std::string pointerTo(const std::string& pointer, std::string_view key) {
  std::string text = pointer + '/';
  for (const char c : key) {
    if (c == '~')
      text += "~0";
    else if (c == '/')
      text += "~1";
    else
      text += c;
  }
  return text;
}

std::string pointerTo(const std::string& pointer, std::size_t index) { return pointer + '/' + std::to_string(index); }

std::string extractOf(std::string_view text) {
  const bool cut = text.size() > kLongestExtract;
  std::string_view piece = text.substr(0, kLongestExtract);
  while (cut && !piece.empty() && continuesCharacter(text[piece.size()]))
    piece.remove_suffix(1);
  std::string clean(piece);
  for (char& c : clean)
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F)
      c = ' ';
  // The round trip puts a mark in the place of bytes that are no UTF-8.
  clean = Json::parse(quotedText(clean)).get<std::string>();
  return cut ? clean + "..." : clean;
}

std::string extractOfValue(const Json& value) {
  if (value.is_object())
    return "an object";
  if (value.is_array())
    return "a list of " + std::to_string(value.size());
  if (value.is_string())
    return extractOf(value.get_ref<const std::string&>());
  if (value.is_number_float())
    return numberText(value.get<double>());
  return value.dump();
}

std::string numberText(double value) {
  if (!std::isfinite(value))
    return "null";
  if (value == 0)
    return "0"; // -0 would be read back as the integer 0
  char digits[32];
  const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
  return {digits, end};
}

} // namespace matwright
