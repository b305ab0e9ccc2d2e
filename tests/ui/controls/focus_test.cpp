#include "ui/controls/Labels.h"

#include <QLineEdit>
#include <QTest>
#include <QVBoxLayout>
#include <gtest/gtest.h>
#include <memory>

namespace matwright {

// Watches a field of its own.
class WatchingForm : public QWidget {
  Q_OBJECT

public:
  explicit WatchingForm(int& left) : field(new QLineEdit), other(new QLineEdit) {
    auto* column = new QVBoxLayout(this);
    column->addWidget(field);
    column->addWidget(other);
    whenFocusLeaves(field, this, [&left] { ++left; });
  }

  QLineEdit *field, *other;
};

namespace {

struct FocusLeaving : ::testing::Test {
  FocusLeaving() : form(std::make_unique<WatchingForm>(left)) {
    form->show();
    form->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(form.get()));
    form->field->setFocus();
    EXPECT_TRUE(form->field->hasFocus());
  }

  int left = 0;
  std::unique_ptr<WatchingForm> form;
};

TEST_F(FocusLeaving, IsToldOnceWhenItGoesElsewhere) {
  form->other->setFocus();
  EXPECT_EQ(left, 1);
  form->field->setFocus();
  EXPECT_EQ(left, 1);
}

TEST_F(FocusLeaving, IsNotToldToAFormThatIsBeingDestroyed) {
  form.reset();
  EXPECT_EQ(left, 0);
}

} // namespace
} // namespace matwright

#include "focus_test.moc"
