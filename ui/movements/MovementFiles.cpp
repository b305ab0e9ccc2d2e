#include "ui/movements/MovementFiles.h"

#include "core/store/Store.h"
#include "ui/document/NativePath.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

namespace matwright {
namespace {

const Movement* find(const std::vector<Movement>& movements, const MovementId& id) {
  const auto at =
      std::find_if(movements.begin(), movements.end(), [&](const Movement& movement) { return movement.id == id; });
  return at == movements.end() ? nullptr : &*at;
}

void take(OwnKnowledge& taken, const OwnKnowledge& own, const MovementId& id) {
  const Movement* movement = find(own.movements, id);
  if (!movement || find(taken.movements, id))
    return;
  taken.movements.push_back(*movement);
  for (const auto& named : {movement->prerequisites, movement->counters})
    for (const MovementId& other : named)
      take(taken, own, other);
}

} // namespace

OwnKnowledge withWhatItNames(const OwnKnowledge& own, const MovementId& movement) {
  OwnKnowledge taken;
  take(taken, own, movement);
  return taken;
}

Result<void> exportMovement(const KnowledgeDocument& document, const MovementId& movement, const QString& file) {
  return writeFile(nativePath(file), ownKnowledgeText(withWhatItNames(document.own(), movement))).map([](const auto&) {
  });
}

Result<Imported, std::vector<Error>> importMovements(KnowledgeDocument& document, const QString& file) {
  auto read = readOwnKnowledge(nativePath(file), document.builtIn());
  if (!read)
    return failure(std::move(read.error()));
  OwnKnowledge from = std::move(read->value);
  Imported imported;
  imported.notTaken =
      static_cast<int>(from.conditions.size() + from.sources.size() + from.rules.size() + from.thresholds.size());
  Knowledge all = *document.knowledge();
  std::map<MovementId, MovementId> names;
  std::vector<Movement> fresh;
  for (Movement& movement : from.movements) {
    const Movement* here = find(document.own().movements, movement.id);
    if (here && *here == movement) {
      ++imported.alreadyHere;
      continue;
    }
    if (all.catalogue.find(movement.id)) {
      const MovementId other = mintMovementId(all, movement.name);
      names[movement.id] = other;
      movement.id = other;
    }
    fresh.push_back(movement);
    std::vector<Movement> known = all.catalogue.movements();
    known.push_back(movement);
    all.catalogue = Catalogue(std::move(known));
    imported.movements.push_back(movement.id);
  }
  OwnKnowledge after = document.own();
  for (Movement& movement : fresh) {
    for (auto* named : {&movement.prerequisites, &movement.counters})
      for (MovementId& id : *named)
        if (const auto other = names.find(id); other != names.end())
          id = other->second;
    after.movements.push_back(movement);
  }
  const QString what = QCoreApplication::translate("MovementFiles", "Import %n movements", nullptr,
                                                   static_cast<int>(imported.movements.size()));
  if (auto done = document.change(std::move(after), what); !done)
    return failure(std::move(done.error()));
  return imported;
}

} // namespace matwright
