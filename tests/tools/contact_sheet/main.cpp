// contact-sheet: draws the poses of knowledge files side by side, for those who write them. A red label says what does
// not rest as its pose says, in millimetres for a stature of 1.75 m, and what is turned further than bodies go, in
// degrees.
#include "core/figure/JointLimits.h"
#include "tests/support/PoseFile.h"
#include "ui/figure/MovementPaint.h"
#include "ui/theme/Theme.h"

#include <QCommandLineParser>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <cstdio>

using namespace matwright;

namespace {

constexpr double kStature = 1750; // millimetres
constexpr int kSheetWidth = 1320, kLabelHeight = 42, kBetween = 10;
constexpr int kLeastLabelled = 60; // smaller figures stand without words

QString faultsOf(const Settled& shape) {
  QStringList faults;
  shape.articulation.pose.on.forEach([&](Contact contact) {
    const double gap = clearance(shape.body, contact) * kStature;
    const std::string name(word(contact));
    if (std::abs(gap) > 1)
      faults << QStringLiteral("%1 %2").arg(QString::fromStdString(name)).arg(gap, 0, 'f', 0);
  });
  if (const double sink = shape.deepestSink * kStature; sink > 1)
    faults << QStringLiteral("sinks %1").arg(sink, 0, 'f', 0);
  if (faults.isEmpty() && shape.largestGap * kStature > 1)
    faults << QStringLiteral("wall %1").arg(shape.largestGap * kStature, 0, 'f', 0);
  for (const Overturned& turn : overturned(shape.articulation.pose))
    faults << QStringLiteral("%1 %2")
                  .arg(QString::fromStdString(std::string(word(turn.motion))))
                  .arg(turn.angle, 0, 'f', 0);
  return faults.join(QStringLiteral(", "));
}

struct Cell {
  std::string label;
  KeyPoses poses; // twice the same for a pose alone
  EnumSet<Region> regions;
};

// What is drawn of poses that stand in pairs of start and end: each alone; the ends alone; or, `ways`, the ends before
// their starts with the way between them.
std::vector<Cell> cellsOf(const std::vector<LabelledPose>& poses, bool ends, bool ways) {
  std::vector<Cell> cells;
  for (std::size_t i = 0; i < poses.size(); ++i) {
    const Pose& pose = poses[i].pose;
    if (!ends && !ways)
      cells.push_back({poses[i].label, {pose, pose}, poses[i].regions});
    else if (i % 2 == 1)
      cells.push_back({poses[i].label, {ways ? poses[i - 1].pose : pose, pose}, poses[i].regions});
  }
  return cells;
}

QImage sheetOf(const std::vector<Cell>& cells, int size, FigureStyle style) {
  const int count = static_cast<int>(cells.size());
  const int labelHeight = size < kLeastLabelled ? 0 : kLabelHeight;
  const int columns = std::clamp(kSheetWidth / (size + kBetween), 1, count);
  const int rows = (count + columns - 1) / columns;
  QImage image(columns * (size + kBetween), rows * (size + labelHeight + kBetween), QImage::Format_RGB32);
  image.fill(style.colours.paper);
  QPainter painter(&image);
  QFont font = painter.font();
  font.setPixelSize(11);
  painter.setFont(font);
  for (int i = 0; i < count; ++i) {
    const Cell& entry = cells[static_cast<std::size_t>(i)];
    const int x = i % columns * (size + kBetween) + kBetween / 2;
    const int y = i / columns * (size + labelHeight + kBetween) + kBetween / 2;
    style.regions = entry.regions;
    paintMovement(painter, QRectF(x, y, size, size), pictureOf(entry.poses), style);
    if (labelHeight == 0)
      continue;
    QString label = QString::fromStdString(entry.label);
    const QString faults = faultsOf(*settledOnce(entry.poses.end));
    if (!faults.isEmpty())
      label += u'\n' + faults;
    painter.setPen(faults.isEmpty() ? QColor(0x80, 0x80, 0x80) : QColor(Qt::red));
    painter.drawText(QRectF(x, y + size + 1, size, kLabelHeight), Qt::AlignHCenter | Qt::TextWordWrap, label);
  }
  return image;
}

void say(const Error& error) {
  std::fprintf(stderr, "%s: %s: expected %s, found %s\n", error.file.c_str(), error.path.c_str(),
               error.expected.c_str(), error.found.c_str());
}

} // namespace

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
    qputenv("QT_QPA_PLATFORM", "offscreen");
  QGuiApplication application(argc, argv);
  QCommandLineParser parser;
  parser.setApplicationDescription(QStringLiteral("Draws the poses of knowledge files side by side."));
  parser.addHelpOption();
  parser.addOptions({{{"o", "output"}, "Write the sheet here.", "png", "sheet.png"},
                     {"ids", "Only these movements, joined by commas.", "ids"},
                     {"size", "Width and height of a figure in pixels, 16 to 600.", "pixels", "150"},
                     {"ends", "End poses alone."},
                     {"ways", "End poses before their start poses, with the way between them."},
                     {"dark", "The dark theme."},
                     {"positions", "The files hold positions, not movements."},
                     {"print", "Black on white."},
                     {"base", "The file of the positions that poses are written over.", "file",
                      MATWRIGHT_SOURCE_DIR "/resources/positions/positions.json"}});
  parser.addPositionalArgument("files", "Catalogue or positions files.", "FILE.json...");
  parser.process(application);

  std::vector<std::string> ids;
  for (const QString& id : parser.value("ids").split(u',', Qt::SkipEmptyParts))
    ids.push_back(id.trimmed().toStdString());
  QStringList files = parser.positionalArguments();
  if (files.isEmpty())
    files << parser.value("base");
  std::vector<LabelledPose> poses;
  for (const QString& file : files) {
    const bool positions = parser.isSet("positions") || file.endsWith("positions.json");
    const PoseList list = positions ? readPositionPoses(file.toStdString())
                                    : readCataloguePoses(file.toStdString(), parser.value("base").toStdString(), ids);
    std::for_each(list.errors.begin(), list.errors.end(), say);
    poses.insert(poses.end(), list.poses.begin(), list.poses.end());
  }
  if (poses.empty()) {
    std::fprintf(stderr, "contact-sheet: no pose found\n");
    return 1;
  }
  FigureStyle style;
  if (parser.isSet("print"))
    style.colours = printColours();
  else if (parser.isSet("dark"))
    style.colours = figureColours(darkTheme(), darkTheme().panel);
  const QImage sheet = sheetOf(cellsOf(poses, parser.isSet("ends"), parser.isSet("ways")),
                               std::clamp(parser.value("size").toInt(), 16, 600), style);
  if (!sheet.save(parser.value("output"))) {
    std::fprintf(stderr, "contact-sheet: cannot write %s\n", qPrintable(parser.value("output")));
    return 1;
  }
  return 0;
}
