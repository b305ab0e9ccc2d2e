#include "core/store/Document.h"

#include "core/store/Store.h"

#include <limits>

namespace matwright {

const Format kClassFormat{"matwright-class", kClassVersion, {}};
const Format kPersonFormat{"matwright-person", kPersonVersion, {}};
const Format kStudioFormat{"matwright-studio", kStudioVersion, {}};
const Format kOwnKnowledgeFormat{"matwright-knowledge", kOwnKnowledgeVersion, {}};
const Format kWishesFormat{"matwright-wishes", kWishesVersion, {}};
const Format kStepsFormat{"matwright-steps", 1, {}};
const Format kPositionsFormat{"matwright-positions", 1, {}};
const Format kChangesFormat{"matwright-changes", 1, {}};
const Format kCatalogueFormat{"matwright-catalogue", 1, {}};
const Format kConditionsFormat{"matwright-conditions", 1, {}};
const Format kSourcesFormat{"matwright-sources", 1, {}};
const Format kRulesFormat{"matwright-rules", 1, {}};
const Format kRedFlagsFormat{"matwright-redflags", 1, {}};
const Format kMeasuredLoadsFormat{"matwright-measured-loads", 1, {}};

Result<Json> openTree(std::string_view text, const std::string& file, const Format& format) {
  auto tree = parseJson(text, file);
  if (!tree)
    return tree;
  Reading reading{file, {}, {}, nullptr};
  ObjectReader root(Spot{&*tree, {}, &reading});
  const auto name = root.need("format");
  readText(name, 0, kLargestFile);
  if (!reading.errors.empty())
    return failure(reading.errors.front());
  if (*name->json != format.name)
    return failure(
        Error{ErrorCode::wrongFormat, file, name->path, std::string(format.name), extractOfValue(*name->json)});

  const auto version = root.need("version");
  const auto written = readInteger(version, 1, std::numeric_limits<int>::max());
  if (!reading.errors.empty())
    return failure(reading.errors.front());
  if (written > format.version)
    return failure(Error{ErrorCode::newerVersion, file, version->path,
                         "version " + std::to_string(format.version) + " or older", std::to_string(written)});
  for (auto from = written; from < format.version; ++from)
    format.migrations[static_cast<std::size_t>(from - 1)](*tree);
  (*tree)["version"] = format.version;
  return tree;
}

void takeFrame(ObjectReader& root) {
  root.need("format");
  root.need("version");
}

Json framed(const Format& format) { return {{"format", format.name}, {"version", format.version}}; }

} // namespace matwright
