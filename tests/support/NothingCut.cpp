#include "tests/support/NothingCut.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QScrollBar>

namespace matwright::testing {
namespace {

QString called(const QWidget& widget) {
  QString words = widget.accessibleName();
  if (const auto* label = qobject_cast<const QLabel*>(&widget))
    words = label->text();
  else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
    words = button->text();
  return QStringLiteral("%1 \"%2\"").arg(QLatin1String(widget.metaObject()->className()), words.left(60));
}

bool isCut(const QWidget& widget) {
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
    if (label->text().isEmpty())
      return false;
    if (!label->wordWrap())
      return label->sizeHint().width() > label->width() || label->sizeHint().height() > label->height();
    return label->heightForWidth(label->width()) > label->height() + 1;
  }
  if (qobject_cast<const QAbstractButton*>(&widget))
    return widget.sizeHint().width() > widget.width() || widget.sizeHint().height() > widget.height() + 1;
  if (qobject_cast<const QAbstractSpinBox*>(&widget))
    return widget.minimumSizeHint().width() > widget.width();
  // A box that adjusts to a minimum shows its text in full elsewhere.
  if (const auto* box = qobject_cast<const QComboBox*>(&widget);
      box && box->sizeAdjustPolicy() != QComboBox::AdjustToMinimumContentsLengthWithIcon)
    return box->fontMetrics().horizontalAdvance(box->currentText()) + 26 > box->width();
  return false;
}

bool laidOut(const QWidget* widget) {
  const QWidget* parent = widget->parentWidget();
  return parent && parent->layout() && parent->layout()->indexOf(const_cast<QWidget*>(widget)) >= 0;
}

} // namespace

QStringList cutParts(const QWidget& widget) {
  QStringList found;
  for (const QWidget* part : widget.findChildren<QWidget*>()) {
    if (!part->isVisibleTo(&widget) || part->isWindow() || qobject_cast<const QScrollBar*>(part))
      continue;
    if (isCut(*part))
      found << QStringLiteral("cut: %1 has %2x%3, wants %4x%5")
                   .arg(called(*part))
                   .arg(part->width())
                   .arg(part->height())
                   .arg(part->sizeHint().width())
                   .arg(part->hasHeightForWidth() ? part->heightForWidth(part->width()) : part->sizeHint().height());
    const QWidget* parent = part->parentWidget();
    if (laidOut(part) && !parent->rect().contains(part->geometry()))
      found << QStringLiteral("outside: %1").arg(called(*part));
    for (const QWidget* other : parent->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
      if (other < part && other->isVisibleTo(&widget) && laidOut(part) && laidOut(other) &&
          other->geometry().intersects(part->geometry()))
        found << QStringLiteral("overlap: %1 and %2").arg(called(*part), called(*other));
  }
  // What is scrolled sideways is cut too.
  for (const QAbstractScrollArea* area : widget.findChildren<QAbstractScrollArea*>())
    if (area->isVisibleTo(&widget) && area->horizontalScrollBar()->maximum() > 0)
      found << QStringLiteral("wider than its view: %1 by %2")
                   .arg(called(*area))
                   .arg(area->horizontalScrollBar()->maximum());
  return found;
}

void layOut(QWidget& widget, const QSize& size) {
  widget.resize(size);
  widget.show();
  for (int i = 0; i < 5; ++i)
    QApplication::processEvents();
}

} // namespace matwright::testing
