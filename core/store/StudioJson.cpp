#include "core/store/StudioJson.h"

#include "core/store/Store.h"

namespace matwright {

Studio readStudioTree(const Json& tree, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  Studio studio;
  studio.name = readText(root.need("name"), 1, kLongestName);
  studio.note = readText(root.find("note"), 0, kLongestNote);
  root.keepRest("");
  return studio;
}

Result<Stored<Studio>> parseStudio(std::string_view text, const std::string& file) {
  const auto tree = openTree(text, file, kStudioFormat);
  if (!tree)
    return failure(tree.error());
  Reading reading{file, {}, {}, nullptr};
  Studio studio = readStudioTree(*tree, reading);
  return stored(std::move(studio), reading, text);
}

std::string studioText(const Studio& studio, const KeptTree& kept) {
  Json root = framed(kStudioFormat);
  root["name"] = studio.name;
  if (!studio.note.empty())
    root["note"] = studio.note;
  putBack(kept.get(), "", root);
  return canonicalText(root);
}

} // namespace matwright
