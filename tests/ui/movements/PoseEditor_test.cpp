#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/movements/PoseCanvas.h"
#include "ui/movements/PoseEditor.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QPushButton>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

struct Poses : ::testing::Test {
  Poses() {
    const Movement& movement = *testing::knowledge()->catalogue.find({"shoulder-bridge"});
    poses = movement.poses;
    tempo = movement.tempo;
    editor.setPositions(testing::knowledge()->transitions.positions());
    editor.show(poses, tempo, QStringLiteral("Shoulder bridge"));
    QObject::connect(&editor, &PoseEditor::edited, &editor,
                     [this](const KeyPoses& after, const QString& what, const QString& gesture) {
                       poses = after;
                       last = what;
                       key = gesture;
                       editor.show(poses, tempo, QStringLiteral("Shoulder bridge"));
                     });
    testing::layOut(editor, {1000, 640});
  }
  template <class Widget> Widget& named(const QString& name) {
    for (Widget* widget : editor.findChildren<Widget*>())
      if (widget->accessibleName() == name)
        return *widget;
    ADD_FAILURE() << "no control " << name.toStdString();
    std::abort();
  }
  QPushButton& button(const QString& words) {
    for (QPushButton* candidate : editor.findChildren<QPushButton*>())
      if (candidate->text() == words)
        return *candidate;
    ADD_FAILURE() << "no button " << words.toStdString();
    std::abort();
  }

  KeyPoses poses;
  Tempo tempo;
  QString last, key;
  PoseEditor editor{PoseEditor::Arrangement::wide};
};

TEST_F(Poses, TheEndIsEditedFirstAndTheStartOnceChosen) {
  named<QDoubleSpinBox>(QStringLiteral("Neck, bend")).setValue(12);
  EXPECT_EQ(poses.end.neck.bend, 12);
  named<QToolButton>(QStringLiteral("Edit the start pose")).click();
  named<QDoubleSpinBox>(QStringLiteral("Neck, bend")).setValue(7);
  EXPECT_EQ(poses.start.neck.bend, 7);
  EXPECT_EQ(poses.end.neck.bend, 12);
  EXPECT_EQ(key, QStringLiteral("start/neck"));
}

TEST_F(Poses, EveryJointHasANumberWithANameAndItsRange) {
  for (std::size_t i = 0; i < kWordCount<Joint>; ++i) {
    const auto joint = static_cast<Joint>(i);
    int found = 0;
    for (const QDoubleSpinBox* box : editor.findChildren<QDoubleSpinBox*>())
      if (box->toolTip().startsWith(box->accessibleName()) && box->minimum() == rangeOf(joint).least)
        ++found;
    EXPECT_GE(found, 1) << word(joint);
  }
  EXPECT_EQ(editor.findChildren<QDoubleSpinBox*>().size(), static_cast<qsizetype>(kWordCount<Joint>));
}

TEST_F(Poses, WhatRestsIsTicked) {
  auto& hand = named<QCheckBox>(QStringLiteral("Near hand on the floor"));
  EXPECT_EQ(hand.isChecked(), poses.end.on.contains(Contact::handNear));
  hand.click();
  EXPECT_EQ(poses.end.on.contains(Contact::handNear), hand.isChecked());
  named<QCheckBox>(QStringLiteral("Near foot against the wall")).click();
  EXPECT_TRUE(poses.end.wall.contains(WallContact::footNear));
}

TEST_F(Poses, WhatRestsOnAChairIsNoLongerOnTheFloor) {
  poses.end.on.insert(Contact::handNear);
  editor.show(poses, tempo, QStringLiteral("Shoulder bridge"));
  named<QCheckBox>(QStringLiteral("Near hand on: seat of a chair")).click();
  EXPECT_TRUE(poses.end.onSupport(Support::chair).contains(Contact::handNear));
  EXPECT_FALSE(poses.end.on.contains(Contact::handNear));
  named<QComboBox>(QStringLiteral("What it rests on beside floor and wall"))
      .setCurrentIndex(static_cast<int>(Support::cushion));
  EXPECT_TRUE(poses.end.onSupport(Support::chair).contains(Contact::handNear)); // looking at another changes nothing
  named<QCheckBox>(QStringLiteral("Near hand on the floor")).click();
  EXPECT_TRUE(poses.end.on.contains(Contact::handNear));
  EXPECT_FALSE(poses.end.onSupport(Support::chair).contains(Contact::handNear));
}

TEST_F(Poses, WhatIsHeldIsChosen) {
  auto& box = named<QComboBox>(QStringLiteral("Holds"));
  const int index = box.findText(QStringLiteral("Ring at the knees"));
  ASSERT_GT(index, 0);
  box.setCurrentIndex(index);
  EXPECT_EQ(poses.end.holds, (HeldProp{Held::ring, HeldAt::knees}));
  box.setCurrentIndex(0);
  EXPECT_FALSE(poses.end.holds);
}

TEST_F(Poses, AnAngleLeavesSupportsAndWhatIsHeldAlone) {
  poses.end.onSupport(Support::bolster) = {Contact::kneeFar};
  poses.end.holds = HeldProp{Held::band, HeldAt::feet};
  editor.show(poses, tempo, QStringLiteral("Shoulder bridge"));
  const Pose before = poses.end;
  named<QDoubleSpinBox>(QStringLiteral("Near elbow")).setValue(33);
  EXPECT_EQ(poses.end.arms[0].elbow, 33);
  EXPECT_EQ(poses.end.supports, before.supports);
  EXPECT_EQ(poses.end.holds, before.holds);
}

TEST_F(Poses, ViewAndFlipAreOfThePoseThatIsEdited) {
  named<QComboBox>(QStringLiteral("Seen")).setCurrentIndex(static_cast<int>(View::top));
  EXPECT_EQ(poses.end.view, View::top);
  EXPECT_EQ(poses.start.view, View::side);
}

TEST_F(Poses, ThePoseOfAPositionIsTakenWithWhatRests) {
  auto& box = named<QComboBox>(QStringLiteral("Take the pose of a position"));
  const int index = box.findText(QStringLiteral("Face up, legs long"));
  ASSERT_GT(index, 0);
  Q_EMIT box.activated(index);
  EXPECT_EQ(poses.end, testing::knowledge()->transitions.find({"face-up"})->pose);
}

TEST_F(Poses, StartIsCopiedToEndAndBack) {
  button(QStringLiteral("Copy from start")).click();
  EXPECT_EQ(poses.end, poses.start);
  named<QDoubleSpinBox>(QStringLiteral("Roll of the body")).setValue(20);
  named<QToolButton>(QStringLiteral("Edit the start pose")).click();
  button(QStringLiteral("Copy from end")).click();
  EXPECT_EQ(poses.start.roll, 20);
}

TEST_F(Poses, SidesAreExchanged) {
  const Pose before = poses.end;
  named<QDoubleSpinBox>(QStringLiteral("Near hip, bend")).setValue(33);
  button(QStringLiteral("Exchange sides")).click();
  EXPECT_EQ(poses.end.legs[1].hip, 33);
  EXPECT_EQ(poses.end.legs[0].hip, before.legs[1].hip);
}

TEST_F(Poses, ADragOnTheCanvasShowsItsNumbersWhileItLasts) {
  auto& canvas = *editor.findChild<PoseCanvas*>();
  const KeyPoses before = poses;
  canvas.setHandle(Handle::head);
  const QPoint from = canvas.spotOf(Handle::head).toPoint();
  QTest::mousePress(&canvas, Qt::LeftButton, {}, from);
  QTest::mouseMove(&canvas, from + QPoint(10, -25));
  EXPECT_EQ(poses, before);
  EXPECT_NE(named<QDoubleSpinBox>(QStringLiteral("Neck, bend")).value(), before.end.neck.bend);
  QTest::mouseRelease(&canvas, Qt::LeftButton, {}, from + QPoint(10, -25));
  EXPECT_EQ(named<QDoubleSpinBox>(QStringLiteral("Neck, bend")).value(), poses.end.neck.bend);
  EXPECT_NE(poses, before);
}

TEST_F(Poses, NothingIsCut) {
  for (const QSize& size : {QSize(900, 560), QSize(1200, 800)}) {
    testing::layOut(editor, size);
    EXPECT_EQ(testing::cutParts(editor), QStringList()) << size.width();
  }
}

} // namespace
} // namespace matwright
