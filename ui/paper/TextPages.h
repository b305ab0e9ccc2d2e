// A text on sheets of paper, each with a foot that says what it is of and which page.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>
#include <memory>

class QTextDocument;

namespace matwright {

struct TextSheet {
  QString title;
  QString html; // in the classes of textStyleOf()
  QString foot; // under every page, before its number
  friend bool operator==(const TextSheet&, const TextSheet&) = default;
};

class TextPages {
public:
  static constexpr double kPoints = 9.5; // of the running text

  TextPages(const TextSheet& sheet, QSizeF paperMillimetres);
  ~TextPages();

  int count() const;
  void paint(QPainter& painter, const QRectF& area, int page) const; // from 0 on; fills the area

private:
  void keepHeadingsWithText();

  TextSheet sheet_;
  QSizeF paper_; // units of the layout
  std::unique_ptr<QTextDocument> document_;
};

QByteArray textPdf(const TextSheet& sheet, QSizeF paperMillimetres);

} // namespace matwright
