#include "core/evaluate/GroupTable.h"

#include <algorithm>
#include <unordered_map>

namespace matwright {
namespace {

void count(GroupCell& cell, const Caution& caution) {
  cell.strongest = std::max(cell.strongest.value_or(caution.level), caution.level);
  ++cell.cautions;
}

GroupCell& cellFor(GroupRow& row, const Caution& caution) {
  return caution.person < row.of.size() ? row.of[caution.person] : row.everybody;
}

} // namespace

GroupTable groupTableOf(const ClassPlan& plan, const Evaluation& evaluation) {
  GroupRow empty;
  empty.of.resize(evaluation.people.size());
  GroupTable table{evaluation.people, {empty}, empty};
  std::unordered_map<StepId, std::size_t> places;
  for (std::size_t section = 0; section < plan.sections.size(); ++section)
    for (const Step& step : plan.sections[section].steps) {
      places.emplace(step.id, table.rows.size());
      GroupRow& row = table.rows.emplace_back(empty);
      row.step = step.id;
      row.section = section;
      for (std::size_t person = 0; person < table.people.size(); ++person) {
        row.of[person].varied = variantOf(step, table.people[person]) != nullptr;
        table.sums.of[person].varied |= row.of[person].varied;
      }
    }
  for (const Caution& caution : evaluation.cautions) {
    const auto place = caution.step ? places.find(*caution.step) : places.end();
    count(cellFor(table.rows[place == places.end() ? 0 : place->second], caution), caution);
    count(cellFor(table.sums, caution), caution);
  }
  return table;
}

} // namespace matwright
