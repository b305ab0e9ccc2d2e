// order-instances: the ordering problems of the benchmark, for programs that are held beside the search. A problem is
// named ITEMS-SECTIONS-LOOPS-SEED (LOOPS: percent of items that end where they begin), with -soft for soft terms.
//
//   order-instances write NAME...            as JSON: what each order costs, and what comes before what
//   order-instances solve SECONDS NAME...    what the search makes of each in turn, with processor time in milliseconds
//   order-instances check NAME ITEM...       what an order costs, counted anew; ends with 1 when it is none
#include "core/order/OrderCheck.h"
#include "core/order/SolveOrder.h"
#include "core/store/Tree.h"
#include "tests/support/RandomOrder.h"

#include <charconv>
#include <ctime>
#include <iostream>
#include <string>

using namespace matwright;

namespace {

constexpr double kSoon = 50; // milliseconds

double milliseconds() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

std::optional<int> number(std::string_view text) {
  int value = 0;
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
  return fault == std::errc() && end == text.data() + text.size() && value >= 0 ? std::optional(value) : std::nullopt;
}

std::optional<OrderProblem> problemNamed(std::string_view name) {
  const std::string_view mark = "-soft";
  const bool soft = name.ends_with(mark);
  if (soft)
    name.remove_suffix(mark.size());
  std::vector<int> numbers;
  for (bool more = true; more;) {
    const std::size_t end = std::min(name.find('-'), name.size());
    const auto value = number(name.substr(0, end));
    if (!value)
      return std::nullopt;
    numbers.push_back(*value);
    more = end < name.size();
    name.remove_prefix(std::min(end + 1, name.size()));
  }
  if (numbers.size() != 4 || numbers[0] < 1 || numbers[0] > kMostOrderItems || numbers[1] < 1 || numbers[2] > 100)
    return std::nullopt;
  const auto seed = static_cast<std::uint64_t>(numbers[3]);
  OrderProblem problem = test::classLikeProblem(seed, numbers[0], numbers[1], numbers[2] / 100.0);
  if (soft)
    test::addSoftTerms(problem, seed);
  return problem;
}

// Items are numbered from 1, and the tables are whole: `first` is the way to each item as the first one, `ways` from
// the row's item to the column's. `before` is closed: it has all that follows from it.
Tree written(const OrderProblem& problem) {
  const int items = static_cast<int>(problem.items.size());
  const auto way = [&](int from, int to) { return problem.ways[static_cast<std::size_t>(from) * problem.places + to]; };
  Tree first = Tree::list(), ways = Tree::list(), before = Tree::list();
  const OrderRelation relation = relationOf(problem).value();
  for (int a = 0; a < items; ++a) {
    Tree row = Tree::list(), earlier = Tree::list();
    first.add(way(*problem.origin, problem.items[a].start));
    for (int b = 0; b < items; ++b) {
      row.add(way(problem.items[a].end, problem.items[b].start));
      earlier.add(relation.before(a, b));
    }
    ways.add(std::move(row));
    before.add(std::move(earlier));
  }
  return Tree::object()
      .set("items", items)
      .set("first", std::move(first))
      .set("ways", std::move(ways))
      .set("before", std::move(before));
}

std::string_view word(OrderStatus status) {
  constexpr std::string_view words[] = {"optimal", "bounded", "infeasible", "cancelled"};
  return words[static_cast<std::size_t>(status)];
}

Tree solved(const OrderProblem& problem, double seconds) {
  OrderLimits limits;
  limits.nodes = std::int64_t{1} << 60;
  OrderCost soon = kNoWay;
  const double begin = milliseconds();
  limits.stop = [&] { return milliseconds() - begin > 1000 * seconds; };
  limits.progress = [&](const OrderProgress& progress, const std::vector<int>&) {
    if (milliseconds() - begin < kSoon)
      soon = progress.cost;
  };
  const OrderAnswer answer = solveOrder(problem, limits).value();
  const double passed = milliseconds() - begin;
  Tree order = Tree::list();
  for (int item : answer.order)
    order.add(item + 1);
  return Tree::object()
      .set("status", std::string(word(answer.status)))
      .set("cost", answer.cost)
      .set("lower", answer.lower)
      .set("soon", soon)
      .set("milliseconds", passed)
      .set("order", std::move(order));
}

int usage() {
  std::cerr << "Usage: order-instances write NAME... | solve SECONDS NAME... | check NAME ITEM...\n"
               "NAME is ITEMS-SECTIONS-LOOPS-SEED or ITEMS-SECTIONS-LOOPS-SEED-soft\n";
  return 2;
}

int check(const std::vector<std::string>& words) {
  const auto problem = words.empty() ? std::nullopt : problemNamed(words[0]);
  std::vector<int> order;
  for (std::size_t i = 1; i < words.size(); ++i)
    if (const auto item = number(words[i]))
      order.push_back(*item - 1);
  if (!problem || order.size() + 1 != words.size())
    return usage();
  const auto cost = checkOrder(*problem, order);
  std::cout << (cost ? std::to_string(*cost) : "not an order") << '\n';
  return cost ? 0 : 1;
}

} // namespace

int main(int count, char** arguments) {
  std::vector<std::string> words(arguments + std::min(count, 1), arguments + count);
  const std::string command = words.empty() ? "" : words[0];
  words.erase(words.begin(), words.begin() + !words.empty());
  if (command == "check")
    return check(words);
  std::optional<int> seconds;
  if (command == "solve") {
    seconds = words.empty() ? std::nullopt : number(words[0]);
    words.erase(words.begin(), words.begin() + !words.empty());
  }
  if (words.empty() || (command == "solve" ? !seconds : command != "write"))
    return usage();
  Tree all = Tree::object();
  for (const std::string& name : words) {
    const auto problem = problemNamed(name);
    if (!problem)
      return usage();
    all.set(name, seconds ? solved(*problem, *seconds) : written(*problem));
  }
  std::cout << all.text();
  return 0;
}
