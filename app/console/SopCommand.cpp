#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "app/console/SearchLimits.h"
#include "core/order/OrderCheck.h"
#include "core/order/SolveOrder.h"
#include "core/order/SopText.h"
#include "core/store/Files.h"
#include "core/store/Tree.h"

#include <chrono>
#include <iomanip>
#include <iostream>

namespace matwright {
namespace {

using Clock = std::chrono::steady_clock;

const char* word(OrderStatus status) {
  switch (status) {
  case OrderStatus::optimal:
    return "optimal";
  case OrderStatus::bounded:
    return "bounded";
  case OrderStatus::infeasible:
    return "infeasible";
  case OrderStatus::cancelled:
    return "cancelled";
  }
  return "";
}

const char* word(OrderStop stop) {
  switch (stop) {
  case OrderStop::proven:
    return "proven";
  case OrderStop::nodes:
    return "nodes";
  case OrderStop::stopped:
    return "seconds";
  case OrderStop::memory:
    return "memory";
  }
  return "";
}

Tree treeOf(const std::string& file, const OrderAnswer& answer, double seconds) {
  Tree order = Tree::list();
  for (int item : answer.order)
    order.add(item);
  Tree tree = Tree::object();
  tree.set("file", file)
      .set("status", word(answer.status))
      .set("stop", word(answer.stop))
      .set("nodes", answer.nodes)
      .set("seed", std::to_string(answer.seed))
      .set("seconds", seconds)
      .set("order", std::move(order));
  if (!answer.order.empty())
    tree.set("cost", answer.cost);
  if (answer.status != OrderStatus::infeasible)
    tree.set("lower", answer.lower);
  return tree;
}

void print(const std::string& file, const OrderAnswer& answer, double seconds) {
  std::cout << file << ": " << word(answer.status);
  if (!answer.order.empty())
    std::cout << ", cost " << answer.cost;
  if (answer.status != OrderStatus::infeasible)
    std::cout << ", bound " << answer.lower;
  std::cout << ", " << answer.nodes << " nodes, " << std::fixed << std::setprecision(3) << seconds
            << " s (stopped by: " << word(answer.stop) << ")\n";
  for (std::size_t at = 0; at < answer.order.size(); ++at)
    std::cout << (at == 0 ? "  " : " ") << answer.order[at];
  if (!answer.order.empty())
    std::cout << '\n';
}

} // namespace

int sopCommand(const Arguments& arguments) {
  const auto limits = searchLimits(arguments, "--nodes", OrderLimits{}.nodes);
  if (!limits)
    return kBadInput;
  int code = kFine;
  Tree instances = Tree::list();
  for (const std::string& file : arguments.free) {
    const auto instance = readFile(file).and_then([&](const std::string& text) { return readSop(text, file); });
    if (!instance) {
      complain(instance.error());
      code = kBadInput;
      continue;
    }
    const auto begin = Clock::now();
    OrderLimits search;
    search.nodes = limits->count;
    search.stop = limits->stop();
    const OrderAnswer answer = solveOrder(instance->problem, search).value(); // the reader refuses what it would
    const double seconds = std::chrono::duration<double>(Clock::now() - begin).count();
    if (!answer.order.empty() &&
        checkOrder(instance->problem, answer.order) != Result<OrderCost, OrderBreach>(answer.cost)) {
      std::cerr << "matwright-cli: " << file << ": the order does not cost what the search says\n";
      return kBadInput;
    }
    if (arguments.has("--json"))
      instances.add(treeOf(file, answer, seconds));
    else
      print(file, answer, seconds);
  }
  if (arguments.has("--json"))
    std::cout << Tree::object()
                     .set("format", "matwright-sop")
                     .set("version", 1)
                     .set("instances", std::move(instances))
                     .text();
  return code;
}

} // namespace matwright
