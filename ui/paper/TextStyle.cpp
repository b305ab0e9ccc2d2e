#include "ui/paper/TextStyle.h"

#include "ui/theme/Theme.h"

namespace matwright {

QString textStyleOf(const Theme& theme) {
  QString sheet = QStringLiteral(R"(
body { color: @ink; }
h1 { font-size: x-large; font-weight: 600; margin-top: 0; margin-bottom: 2px; }
h2 { font-size: medium; font-weight: 600; margin-top: 12px; margin-bottom: 3px; }
h3 { font-size: medium; font-weight: 600; margin-top: 7px; margin-bottom: 1px; }
p { margin-top: 0; margin-bottom: 3px; }
ul, ol { margin-top: 1px; margin-bottom: 3px; margin-left: 0; -qt-list-indent: 1; }
li { margin-top: 0; margin-bottom: 1px; }
td { padding: 2px 5px; }
hr { background-color: @line; }
a { color: @ink; text-decoration: none; }
.soft { color: @inkSoft; font-size: small; }
.level { font-weight: 600; }
.band { font-size: large; background-color: @band; }
.ruled { border-top: 1px solid @line; }
)");
  const std::pair<const char*, QColor> names[] = {
      {"@inkSoft", theme.inkSoft}, {"@ink", theme.ink}, {"@line", theme.line}, {"@band", theme.accentSoft}};
  for (const auto& [name, colour] : names)
    sheet.replace(QLatin1String(name), colour.name());
  return sheet;
}

} // namespace matwright
