#include "ui/controls/Labels.h"

#include <QApplication>
#include <QEvent>
#include <QPointer>
#include <cmath>

namespace matwright {
namespace {

constexpr int kFieldInset = 6; // from the top of a field to its text

class FocusWatch : public QObject {
public:
  FocusWatch(QWidget* watched, QWidget* owner, std::function<void()> then)
      : QObject(watched), watched_(watched), owner_(owner), kind_(owner->metaObject()), then_(std::move(then)) {
    connect(qApp, &QApplication::focusChanged, this, &FocusWatch::focusMoved);
  }

private:
  bool holds(const QWidget* widget) const { return widget && (widget == watched_ || watched_->isAncestorOf(widget)); }
  void focusMoved(const QWidget* before, const QWidget* now) const {
    if (ownerIsWhole() && holds(before) && !holds(now))
      then_();
  }
  // Fields inside an owner lose the focus while it is being destroyed. It is no longer of its own class then.
  bool ownerIsWhole() const { return owner_ && owner_->metaObject()->inherits(kind_); }

  QWidget* watched_;
  QPointer<QWidget> owner_;
  const QMetaObject* kind_; // of the owner when it began to watch
  std::function<void()> then_;
};

class LargeLabel : public QLabel {
public:
  LargeLabel(const QString& text, double factor, QWidget* parent) : QLabel(text, parent), factor_(factor) {
    setTextFormat(Qt::PlainText);
    scale();
  }

protected:
  bool event(QEvent* event) override {
    if (event->type() == QEvent::ApplicationFontChange)
      scale();
    return QLabel::event(event);
  }

private:
  void scale() {
    QFont font = headingFont(QApplication::font(this));
    if (font.pixelSize() > 0)
      font.setPixelSize(static_cast<int>(std::lround(font.pixelSize() * factor_)));
    else
      font.setPointSizeF(font.pointSizeF() * factor_);
    setFont(font);
  }

  double factor_;
};

} // namespace

QLabel* plainLabel(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

QLabel* softLabel(const QString& text, QWidget* parent) {
  QLabel* label = plainLabel(text, parent);
  label->setForegroundRole(QPalette::PlaceholderText);
  return label;
}

QLabel* headingLabel(const QString& text, QWidget* parent) {
  QLabel* label = plainLabel(text, parent);
  label->setFont(headingFont(label->font()));
  return label;
}

QLabel* titleLabel(const QString& text, QWidget* parent) {
  QLabel* label = largeLabel(text, 1.25, parent);
  label->setWordWrap(true);
  return label;
}

QLabel* largeLabel(const QString& text, double factor, QWidget* parent) { return new LargeLabel(text, factor, parent); }

QFont headingFont(const QFont& base) {
  QFont font = base;
  font.setWeight(QFont::DemiBold);
  return font;
}

QLabel* fieldLabel(const QString& text, QWidget* field, QWidget* parent) {
  QLabel* label = softLabel(text, parent);
  label->setBuddy(field);
  if (field->accessibleName().isEmpty())
    field->setAccessibleName(QString(text).remove(QLatin1Char('&')));
  return label;
}

QLabel* besideLabel(const QString& text, QWidget* field, QWidget* parent) {
  QLabel* label = fieldLabel(text, field, parent);
  label->setWordWrap(false);
  label->setContentsMargins(0, kFieldInset, 0, 0);
  return label;
}

QWidget* hairline(QWidget* parent) {
  auto* line = new QWidget(parent);
  line->setFixedHeight(1);
  line->setAutoFillBackground(true);
  line->setBackgroundRole(QPalette::Mid);
  return line;
}

void showText(QLabel* label, const QString& text) {
  label->setText(text);
  label->setVisible(!text.isEmpty());
}

void whenFocusLeaves(QWidget* widget, QWidget* owner, std::function<void()> then) {
  new FocusWatch(widget, owner, std::move(then));
}

} // namespace matwright
