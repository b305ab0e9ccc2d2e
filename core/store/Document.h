// The frame that all files share: `format` and `version` at the root, and the steps from older versions to this one.
#pragma once

#include "core/store/JsonReader.h"

#include <span>
#include <string>
#include <string_view>

namespace matwright {

// Changes the tree of one version into that of the next. What it does not understand it leaves for the decoder to name.
using Migration = void (*)(Json& root);

struct Format {
  std::string_view name;
  int version = 1;
  std::span<const Migration> migrations; // from version 1 on: one less than `version`
};

// The root object of the text, brought to the format's version. The first thing wrong is given, in this order: syntax,
// root, format, version.
Result<Json> openTree(std::string_view text, const std::string& file, const Format& format);

// Takes the two keys of the frame from a root that openTree gave.
void takeFrame(ObjectReader& root);
Json framed(const Format& format);

extern const Format kClassFormat, kPersonFormat, kStudioFormat, kOwnKnowledgeFormat, kStepsFormat, kWishesFormat;
extern const Format kPositionsFormat, kChangesFormat, kCatalogueFormat, kConditionsFormat, kSourcesFormat, kRulesFormat,
    kRedFlagsFormat, kMeasuredLoadsFormat;

} // namespace matwright
