#include "ui/theme/Theme.h"

namespace matwright {

QPalette paletteOf(const Theme& theme) {
  QPalette palette;
  palette.setColor(QPalette::Window, theme.ground);
  palette.setColor(QPalette::WindowText, theme.ink);
  palette.setColor(QPalette::Base, theme.panel);
  palette.setColor(QPalette::AlternateBase, theme.ground);
  palette.setColor(QPalette::Text, theme.ink);
  palette.setColor(QPalette::PlaceholderText, theme.inkSoft);
  palette.setColor(QPalette::Button, theme.panel);
  palette.setColor(QPalette::ButtonText, theme.ink);
  palette.setColor(QPalette::BrightText, theme.onAccent);
  palette.setColor(QPalette::ToolTipBase, theme.ink);
  palette.setColor(QPalette::ToolTipText, theme.panel);
  palette.setColor(QPalette::Highlight, theme.accent);
  palette.setColor(QPalette::HighlightedText, theme.onAccent);
  palette.setColor(QPalette::Link, theme.accent);
  palette.setColor(QPalette::LinkVisited, theme.accent);
  palette.setColor(QPalette::Light, theme.panel);
  palette.setColor(QPalette::Midlight, theme.line);
  palette.setColor(QPalette::Mid, theme.line);
  palette.setColor(QPalette::Dark, theme.inkSoft);
  palette.setColor(QPalette::Shadow, theme.dark ? QColor("#000000") : QColor("#8c877b"));
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    QColor faint = theme.inkSoft;
    faint.setAlphaF(0.6F);
    palette.setColor(QPalette::Disabled, role, faint);
  }
  return palette;
}

QString styleSheetOf(const Theme& theme) {
  QString sheet = QStringLiteral(R"(
QToolTip { color: @panel; background: @ink; border: 0; padding: 4px 6px; }
QLineEdit, QPlainTextEdit, QTextEdit {
  background: @panel; color: @ink; border: 1px solid @line; border-radius: 5px; padding: 3px 6px; min-height: 20px;
  selection-background-color: @accent; selection-color: @onAccent; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus { border: 1px solid @accent; }
QAbstractSpinBox > QLineEdit, QComboBox > QLineEdit { border: 0; min-height: 0; padding: 0; background: transparent; }
QLineEdit[faulty="true"], QPlainTextEdit[faulty="true"] { border: 2px dashed @fault; }
QLabel[fault="true"] { color: @fault; font-weight: 600; }
QCheckBox::indicator:unchecked { border: 1px solid @inkSoft; border-radius: 3px; background: @panel; width: 13px; height: 13px; }
QCheckBox::indicator:unchecked:hover { border-color: @accent; }
QTabWidget::pane { border: 0; border-top: 1px solid @line; }
QTabBar::tab { background: transparent; color: @inkSoft; border: 0; border-bottom: 2px solid transparent; padding: 6px 12px; margin-right: 4px; }
QTabBar::tab:selected { color: @ink; border-bottom-color: @accent; } QTabBar::tab:hover { color: @ink; }
QTabBar::tab:selected:focus { background: @accentSoft; }
QPushButton, QToolButton { background: @panel; color: @ink; border: 1px solid @line; border-radius: 5px; padding: 4px 10px; }
QPushButton:hover, QToolButton:hover { border-color: @accent; }
QPushButton:focus, QToolButton:focus { border: 1px solid @accent; }
QPushButton:pressed, QToolButton:pressed, QPushButton:checked, QToolButton:checked,
QToolButton[narrowed="true"] {
  background: @accentSoft; border-color: @accent; color: @ink; }
QPushButton[primary="true"] { background: @accent; color: @onAccent; border-color: @accent; font-weight: 600; }
QPushButton:disabled, QToolButton:disabled { color: @inkSoft; }
QPushButton[primary="true"]:disabled { background: @panel; border-color: @line; }
QToolButton::menu-indicator { image: none; }
QListView, QTreeView, QTableView, QScrollArea { border: 0; background: transparent; }
QListView::item:selected, QTreeView::item:selected, QTableView::item:selected { background: @accentSoft; color: @ink; }
QHeaderView::section { background: @ground; color: @inkSoft; border: 0; border-bottom: 1px solid @line; padding: 4px 6px; }
QAbstractScrollArea::corner { background: transparent; }
QTableCornerButton::section { background: @ground; border: 0; border-bottom: 1px solid @line; }
QSplitter::handle { background: @line; }
QSplitter::handle:horizontal { width: 1px; } QSplitter::handle:vertical { height: 1px; }
QMenuBar { background: @ground; } QMenuBar::item { padding: 4px 9px; background: transparent; }
QMenuBar::item:selected { background: @accentSoft; }
QMenu { background: @panel; color: @ink; border: 1px solid @line; padding: 4px; }
QMenu::item { padding: 5px 22px 5px 12px; border-radius: 4px; } QMenu::item:selected { background: @accentSoft; }
QMenu::item:disabled { color: @inkSoft; } QMenu::separator { height: 1px; background: @line; margin: 4px 8px; }
QScrollBar:vertical { background: transparent; width: 11px; margin: 0; } QScrollBar:horizontal { background: transparent; height: 11px; }
QScrollBar::handle { background: @line; border-radius: 4px; min-height: 28px; min-width: 28px; margin: 2px; }
QScrollBar::handle:hover { background: @inkSoft; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; } QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QStatusBar { color: @inkSoft; } QStatusBar::item { border: 0; }
QGroupBox { border: 0; margin-top: 18px; font-weight: 600; } QGroupBox::title { subcontrol-origin: margin; left: 0; }
)");
  const std::pair<const char*, QColor> names[] = {{"@onAccent", theme.onAccent}, {"@accentSoft", theme.accentSoft},
                                                  {"@accent", theme.accent},     {"@inkSoft", theme.inkSoft},
                                                  {"@ink", theme.ink},           {"@panel", theme.panel},
                                                  {"@ground", theme.ground},     {"@line", theme.line},
                                                  {"@fault", theme.levels[3]}};
  for (const auto& [name, colour] : names)
    sheet.replace(QLatin1String(name), colour.name());
  return sheet;
}

} // namespace matwright
