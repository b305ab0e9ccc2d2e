// The check that other tests rely on finds what it is meant to find.
#include "tests/support/NothingCut.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <gmock/gmock.h>

namespace matwright::testing {
namespace {

using ::testing::IsEmpty;
using ::testing::Not;

TEST(NothingCut, IsContentWithALabelThatHasRoom) {
  QWidget panel;
  auto* row = new QHBoxLayout(&panel);
  row->addWidget(new QLabel(QStringLiteral("a few words")));
  layOut(panel, {300, 60});
  EXPECT_THAT(cutParts(panel), IsEmpty());
}

TEST(NothingCut, FindsALabelThatIsTooNarrow) {
  QWidget panel;
  auto* row = new QHBoxLayout(&panel);
  auto* label = new QLabel(QStringLiteral("words that need far more room than they are given"));
  label->setMaximumWidth(60);
  row->addWidget(label);
  layOut(panel, {300, 60});
  EXPECT_THAT(cutParts(panel), Not(IsEmpty()));
}

TEST(NothingCut, FindsAWrappingLabelThatIsTooLow) {
  QWidget panel;
  auto* label = new QLabel(QStringLiteral("words that wrap into several lines in a narrow place"), &panel);
  label->setWordWrap(true);
  label->setGeometry(0, 0, 80, 20);
  layOut(panel, {300, 60});
  EXPECT_THAT(cutParts(panel), Not(IsEmpty()));
}

TEST(NothingCut, FindsButtonsThatLieOnOneAnother) {
  QWidget panel;
  auto* row = new QHBoxLayout(&panel);
  auto* one = new QPushButton(QStringLiteral("one"));
  auto* other = new QPushButton(QStringLiteral("other"));
  row->addWidget(one);
  row->addWidget(other);
  layOut(panel, {300, 60});
  other->move(one->pos());
  EXPECT_THAT(cutParts(panel), Not(IsEmpty()));
}

} // namespace
} // namespace matwright::testing
