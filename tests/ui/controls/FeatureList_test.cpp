#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "ui/controls/FeatureList.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <gmock/gmock.h>

namespace matwright {
namespace {

struct Features : ::testing::Test {
  Features() {
    QObject::connect(&list, &FeatureList::edited, &list, [this](FeatureSet now) { ticked = now; });
    testing::layOut(list, {800, 1600});
  }
  QCheckBox& box(Feature feature) {
    for (QCheckBox* candidate : list.findChildren<QCheckBox*>())
      if (candidate->text().compare(text(feature), Qt::CaseInsensitive) == 0)
        return *candidate;
    ADD_FAILURE() << "no box " << word(feature);
    std::abort();
  }
  bool says(const QString& words) const { return testing::saysIn(list, words); }

  FeatureList list;
  FeatureSet ticked;
};

TEST_F(Features, EachHasABoxAndItsDefinitionBesideIt) {
  for (std::size_t i = 0; i < kWordCount<Feature>; ++i) {
    const auto feature = static_cast<Feature>(i);
    EXPECT_TRUE(says(definition(feature))) << word(feature);
    EXPECT_EQ(box(feature).accessibleDescription(), definition(feature)) << word(feature);
  }
  EXPECT_EQ(testing::cutParts(list), QStringList());
}

TEST_F(Features, TickingTellsWhatIsTickedNow) {
  list.show({Feature::kneel}, {});
  box(Feature::rot).click();
  EXPECT_EQ(ticked, (FeatureSet{Feature::kneel, Feature::rot}));
  box(Feature::kneel).click();
  EXPECT_EQ(ticked, FeatureSet{Feature::rot});
}

TEST_F(Features, WhatThePositionBringsIsTickedAndLockedAndSaysWhy) {
  list.show({}, {{Feature::supine, QStringLiteral("from the position \"Face up\"")}});
  EXPECT_TRUE(box(Feature::supine).isChecked());
  EXPECT_FALSE(box(Feature::supine).isEnabled());
  EXPECT_TRUE(says(QStringLiteral("from the position \"Face up\"")));
  box(Feature::supine).click();
  EXPECT_TRUE(ticked.empty());
  list.show({}, {});
  EXPECT_TRUE(box(Feature::supine).isEnabled());
  EXPECT_FALSE(box(Feature::supine).isChecked());
}

TEST_F(Features, WordsFindThemByNameAndMeaning) {
  QTest::keyClicks(list.findChild<QLineEdit*>(), QStringLiteral("wrist 90"));
  EXPECT_TRUE(box(Feature::wristLoad).isVisibleTo(&list));
  EXPECT_FALSE(box(Feature::kneel).isVisibleTo(&list));
  EXPECT_FALSE(says(QStringLiteral("Spine")));
  QTest::keyClicks(list.findChild<QLineEdit*>(), QStringLiteral(" zebra"));
  EXPECT_TRUE(says(QStringLiteral("No feature")));
}

TEST_F(Features, OnlyWhatIsOfferedIsShown) {
  list.setOffered({Feature::flexLoad, Feature::kneel});
  EXPECT_TRUE(box(Feature::flexLoad).isVisibleTo(&list));
  EXPECT_FALSE(box(Feature::flexEnd).isVisibleTo(&list));
}

TEST_F(Features, ABriefListShowsWhatIsTickedUntilSomethingIsSearchedForOrAllAreAskedFor) {
  list.setBrief(QStringLiteral("One of these"));
  EXPECT_TRUE(says(QStringLiteral("None is chosen")));
  list.show({Feature::kneel}, {});
  EXPECT_TRUE(box(Feature::kneel).isVisibleTo(&list));
  EXPECT_FALSE(box(Feature::wristLoad).isVisibleTo(&list));
  auto& find = testing::namedIn<QLineEdit>(list, QStringLiteral("Find a feature: One of these"));
  QTest::keyClicks(&find, QStringLiteral("wrist"));
  EXPECT_TRUE(box(Feature::wristLoad).isVisibleTo(&list));
  EXPECT_FALSE(box(Feature::kneel).isVisibleTo(&list));
  box(Feature::wristLoad).click();
  find.clear();
  EXPECT_EQ(ticked, (FeatureSet{Feature::kneel, Feature::wristLoad}));
  EXPECT_TRUE(box(Feature::wristLoad).isVisibleTo(&list));
  testing::namedIn<QCheckBox>(list, QStringLiteral("Show all features: One of these")).click();
  EXPECT_TRUE(box(Feature::impact).isVisibleTo(&list));
}

} // namespace
} // namespace matwright
