#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "core/store/Tree.h"
#include "ui/text/VocabularyText.h"

#include <iomanip>
#include <iostream>

namespace matwright {
namespace {

template <class Enum> Tree words(EnumSet<Enum> set) {
  Tree list = Tree::list();
  set.forEach([&](Enum value) { list.add(std::string(word(value))); });
  return list;
}

template <class Enum> Tree words(const std::vector<Enum>& values) {
  Tree list = Tree::list();
  for (Enum value : values)
    list.add(std::string(word(value)));
  return list;
}

Tree idList(const std::vector<MovementId>& ids) {
  Tree list = Tree::list();
  for (const MovementId& id : ids)
    list.add(id.value);
  return list;
}

Tree movementTree(const Movement& movement) {
  Tree options = Tree::list();
  for (const Option& option : movement.options)
    options.add(Tree::object()
                    .set("id", option.id.value)
                    .set("name", option.name)
                    .set("kind", std::string(word(option.kind)))
                    .set("adds", words(option.adds))
                    .set("removes", words(option.removes))
                    .set("props", words(propsOf(movement, &option))));
  return Tree::object()
      .set("id", movement.id.value)
      .set("name", movement.name)
      .set("repertoire", std::string(word(movement.repertoire)))
      .set("start", movement.start.value)
      .set("end", movement.end.value)
      .set("sides", std::string(word(movement.sides)))
      .set("dose",
           Tree::object().set("amount", movement.dose.amount).set("unit", std::string(word(movement.dose.unit))))
      .set("work", workOf(movement.dose, movement.tempo, movement.sides, std::nullopt).whole.value())
      .set("effort", movement.effort.value())
      .set("features", words(movement.features))
      .set("regions", words(movement.regions))
      .set("spine", words(movement.spine))
      .set("props", words(movement.props))
      .set("prerequisites", idList(movement.prerequisites))
      .set("counters", idList(movement.counters))
      .set("options", std::move(options));
}

Tree positionTree(const Position& position) {
  Tree tree = Tree::object();
  tree.set("id", position.id.value)
      .set("name", position.name)
      .set("elevation", std::string(word(position.elevation)))
      .set("features", words(position.features));
  if (!position.mirror.empty())
    tree.set("mirror", position.mirror.value);
  return tree;
}

Tree conditionTree(const Condition& condition) {
  Tree codes = Tree::list(), qualifiers = Tree::list();
  for (const std::string& code : condition.icd10)
    codes.add(code);
  for (const QualifierSpec& spec : condition.qualifiers) {
    Tree choices = Tree::list();
    for (const Choice& choice : spec.choices)
      choices.add(choice.id);
    qualifiers.add(Tree::object()
                       .set("id", spec.id)
                       .set("name", spec.name)
                       .set("kind", std::string(word(spec.kind)))
                       .set("choices", std::move(choices)));
  }
  return Tree::object()
      .set("id", condition.id.value)
      .set("name", condition.name)
      .set("icd10", std::move(codes))
      .set("qualifiers", std::move(qualifiers));
}

template <class Item, class ToTree, class Detail>
void print(const std::vector<Item>& items, bool json, const char* format, ToTree toTree, Detail detail) {
  if (json) {
    Tree list = Tree::list();
    for (const Item& item : items)
      list.add(toTree(item));
    std::cout << Tree::object().set("format", format).set("version", 1).set("items", std::move(list)).text();
    return;
  }
  for (const Item& item : items)
    std::cout << std::left << std::setw(30) << item.id.value << ' ' << item.name << "  (" << detail(item) << ")\n";
}

} // namespace

int listCommand(const Arguments& arguments) {
  const std::string& what = arguments.free.front();
  if (what != "movements" && what != "positions" && what != "conditions") {
    std::cerr << "matwright-cli: list knows movements, positions and conditions, not " << what << '\n';
    return kBadInput;
  }
  const auto knowledge = loadKnowledge();
  if (!knowledge)
    return kBadInput;
  const bool json = arguments.has("--json");
  if (what == "movements")
    print(knowledge->catalogue.movements(), json, "matwright-movement-list", movementTree,
          [](const Movement& movement) {
            return doseText(movement.dose, movement.sides, std::nullopt).toStdString() + ", " +
                   clock(workOf(movement.dose, movement.tempo, movement.sides, std::nullopt).whole).toStdString();
          });
  else if (what == "positions")
    print(knowledge->transitions.positions(), json, "matwright-position-list", positionTree,
          [](const Position& position) { return text(position.elevation).toStdString(); });
  else
    print(knowledge->rules.conditions, json, "matwright-condition-list", conditionTree, [](const Condition& condition) {
      std::string codes;
      for (const std::string& code : condition.icd10)
        codes += (codes.empty() ? "" : ", ") + code;
      return codes.empty() ? std::string("no ICD-10 code") : codes;
    });
  return kFine;
}

} // namespace matwright
