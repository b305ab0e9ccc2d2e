// A text on sheets of paper, each with a foot that says what it is of and which page.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>
#include <memory>

class QTextBlock;
class QTextDocument;
class QTextTable;

namespace matwright {

struct TextSheet {
  QString title;
  QString html; // in the classes of textStyleOf()
  QString foot; // under every page, before its number
  friend bool operator==(const TextSheet&, const TextSheet&) = default;
};

class TextPages {
public:
  static constexpr double kPoints = 9.75;     // of the running text
  static constexpr double kSmallPoints = 9.0; // where that takes fewer pages

  TextPages(const TextSheet& sheet, QSizeF paperMillimetres);
  ~TextPages();

  int count() const;
  void paint(QPainter& painter, const QRectF& area, int page) const; // from 0 on; fills the area

private:
  void layOut(double points);
  void keepTogether();
  qreal pageHeight() const;
  int pageOf(const QTextBlock& block, bool lastLine) const;
  bool isSplit(QTextTable& table) const; // over pages, though it would fit on one
  qreal heightOf(QTextTable& table) const;

  TextSheet sheet_;
  QSizeF paper_; // units of the layout
  std::unique_ptr<QTextDocument> document_;
};

QString plainText(const TextSheet& sheet); // without its foot, for a terminal
QByteArray textPdf(const TextSheet& sheet, QSizeF paperMillimetres);

} // namespace matwright
