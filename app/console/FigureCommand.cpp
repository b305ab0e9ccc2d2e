#include "app/console/Commands.h"
#include "app/console/Loading.h"
#include "app/console/Measuring.h"
#include "core/store/Files.h"
#include "ui/figure/FigureSvg.h"
#include "ui/text/FigureText.h"

#include <iostream>

namespace matwright {
namespace {

struct Wanted {
  const Movement* movement = nullptr;
  const Option* option = nullptr; // null as written
};

// `MOVEMENT` or `MOVEMENT/OPTION`; says what is not in the catalogue.
std::optional<Wanted> find(const Catalogue& catalogue, const std::string& words) {
  const std::size_t slash = words.find('/');
  const std::string id = words.substr(0, slash);
  Wanted wanted{catalogue.find(MovementId{id})};
  if (!wanted.movement) {
    std::cerr << "matwright-cli: no movement " << id << "; `list movements` names them\n";
    return std::nullopt;
  }
  if (slash == std::string::npos)
    return wanted;
  const std::string option = words.substr(slash + 1);
  wanted.option = findOption(*wanted.movement, OptionId{option});
  if (wanted.option)
    return wanted;
  std::cerr << "matwright-cli: " << id << " has no option " << option << '\n';
  return std::nullopt;
}

std::string drawn(const Wanted& wanted, FigureEnds ends) {
  const KeyPoses& poses = posesOf(*wanted.movement, wanted.option);
  FigureCaption caption;
  caption.title = QString::fromStdString(wanted.movement->name);
  if (wanted.option)
    caption.title += QStringLiteral(", ") + QString::fromStdString(wanted.option->name);
  const KeyPoses alone =
      ends == FigureEnds::start ? KeyPoses{poses.start, poses.start} : KeyPoses{poses.end, poses.end};
  const bool both = ends == FigureEnds::both && movesInOnePicture(poses);
  caption.description = figureDescription(both ? poses : alone, both);
  return figureSvg(poses, ends, caption, svgStyle({wanted.movement->regions.front()})).toStdString();
}

} // namespace

int figureCommand(const Arguments& arguments) {
  const std::string word = arguments.value("--pose").value_or("both");
  const std::optional<FigureEnds> ends = fromWord<FigureEnds>(word);
  if (!ends) {
    std::cerr << "matwright-cli: --pose is start, end or both, not " << word << '\n';
    return kBadInput;
  }
  const auto knowledge = loadKnowledge();
  const auto wanted = knowledge ? find(knowledge->catalogue, arguments.free.front()) : std::nullopt;
  if (!wanted)
    return kBadInput;
  const Measuring measuring;
  const std::string svg = drawn(*wanted, *ends);
  const auto out = arguments.value("-o");
  if (!out) {
    std::cout << svg;
    return kFine;
  }
  if (const auto written = writeFile(*out, svg); !written) {
    complain(written.error());
    return kBadInput;
  }
  std::cout << *out << '\n';
  return kFine;
}

} // namespace matwright
