#include "core/knowledge/OwnKnowledge.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/catalogue/CatalogueModel.h"
#include "ui/catalogue/CataloguePanel.h"
#include "ui/catalogue/CataloguePreview.h"
#include "ui/catalogue/FilterBar.h"
#include "ui/catalogue/MovementAbout.h"
#include "ui/catalogue/MovementList.h"
#include "ui/figure/FigureView.h"
#include "ui/text/VocabularyText.h"

#include <QAction>
#include <QApplication>
#include <QEnterEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QToolButton>
#include <algorithm>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Panels;

struct Catalogue : ::testing::Test, Panels {
  Catalogue() : panel(document, selection, commands) {
    selection.select(stepOf("spine-stretch-forward"));
    testing::layOut(panel, {270, 700});
    panel.refreshNow();
  }

  MovementList& list() { return *panel.findChild<MovementList*>(); }
  CatalogueModel& model() { return *static_cast<CatalogueModel*>(list().model()); }
  FilterBar& filters() { return *panel.findChild<FilterBar*>(); }

  std::vector<std::string> shown() {
    std::vector<std::string> ids;
    for (int row = 0; row < model().rowCount(); ++row)
      ids.push_back(model().movementAt(model().index(row))->id.value);
    return ids;
  }
  std::vector<std::string> ranked() const {
    std::vector<std::string> ids;
    for (const Candidate& candidate :
         candidatesFor(document.knowledge(), document.plan(), document.roster(), document.day(), selection.gap()))
      ids.push_back(candidate.movement->id.value);
    return ids;
  }
  bool says(const QString& words) const {
    const auto labels = panel.findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(),
                       [&](const QLabel* label) { return label->isVisible() && label->text().contains(words); });
  }

  CataloguePanel panel;
};

TEST_F(Catalogue, RanksForTheGapAfterTheSelectedStep) {
  EXPECT_EQ(shown(), ranked());
  EXPECT_EQ(shown().size(), document.knowledge().catalogue.movements().size());
  EXPECT_TRUE(says(QStringLiteral("\"Spine stretch forward\"")));
}

TEST_F(Catalogue, RanksAnewForAnotherGapAndOnlyOnceForSeveralChanges) {
  const auto before = shown();
  selection.select(stepOf("breathing-ribs"));
  selection.select(stepOf("four-point-cat"));
  EXPECT_EQ(shown(), before); // not yet
  EXPECT_TRUE(QTest::qWaitFor([this] { return shown() == ranked(); }, 3000));
  EXPECT_NE(shown(), before);
}

TEST_F(Catalogue, CatchesUpWhenItIsShownAgain) {
  panel.hide();
  selection.select(stepOf("four-point-cat"));
  QTest::qWait(150);
  EXPECT_NE(shown(), ranked());
  panel.show();
  EXPECT_TRUE(QTest::qWaitFor([this] { return shown() == ranked(); }, 3000));
}

TEST_F(Catalogue, ListsByNameOnDemand) {
  for (QToolButton* button : panel.findChildren<QToolButton*>())
    if (button->text() == QStringLiteral("A\u2013Z"))
      button->click();
  QStringList names;
  for (int row = 0; row < model().rowCount(); ++row)
    names << model().index(row).data().toString();
  EXPECT_TRUE(std::is_sorted(names.begin(), names.end(), [](const QString& one, const QString& other) {
    return QString::localeAwareCompare(one, other) < 0;
  }));
}

TEST_F(Catalogue, FindsByTheBeginningOfAnyWordOfTheName) {
  panel.search()->setText(QStringLiteral("hundr"));
  EXPECT_THAT(shown(), ::testing::ElementsAre("hundred"));
  panel.search()->setText(QStringLiteral("undr"));
  EXPECT_THAT(shown(), ::testing::IsEmpty());
}

TEST_F(Catalogue, FindsByRegionPositionKindAndSpineAndAsksForAllTerms) {
  panel.search()->setText(QStringLiteral("shoul stand"));
  ASSERT_GT(model().rowCount(), 0);
  for (const std::string& id : shown()) {
    const Movement* movement = document.knowledge().catalogue.find({id});
    const QString words = QString::fromStdString(movement->name) + QLatin1Char(' ') +
                          positionName(document.knowledge(), movement->start) + QLatin1Char(' ') +
                          text(document.knowledge().transitions.find(movement->start)->elevation) + QLatin1Char(' ') +
                          text(movement->repertoire);
    EXPECT_TRUE(words.contains(QStringLiteral("stand"), Qt::CaseInsensitive)) << id;
  }
  panel.search()->setText(QStringLiteral("rotation"));
  EXPECT_THAT(shown(), ::testing::Contains("saw"));
  panel.search()->setText(QStringLiteral("ROTATION seat zzz"));
  EXPECT_THAT(shown(), ::testing::IsEmpty());
}

TEST(SearchWords, AreWithoutMarksAndCase) {
  EXPECT_EQ(searchWords(QStringLiteral("\u00c9paul\u00e9-jet\u00e9, 2")),
            QStringList({QStringLiteral("epaule"), QStringLiteral("jete"), QStringLiteral("2")}));
}

TEST_F(Catalogue, FiltersByHeightRegionAndKind) {
  CatalogueFilter filter;
  filter.elevations = {Elevation::sitting};
  filter.regions = {Region::hips};
  filters().setFilter(filter);
  ASSERT_GT(model().rowCount(), 0);
  for (const std::string& id : shown()) {
    const Movement* movement = document.knowledge().catalogue.find({id});
    EXPECT_EQ(document.knowledge().transitions.find(movement->start)->elevation, Elevation::sitting);
    EXPECT_THAT(movement->regions, ::testing::Contains(Region::hips));
  }
  filter = {};
  filter.repertoires = {Repertoire::wall};
  filters().setFilter(filter);
  ASSERT_GT(model().rowCount(), 0);
  for (const std::string& id : shown())
    EXPECT_EQ(document.knowledge().catalogue.find({id})->repertoire, Repertoire::wall);
}

TEST_F(Catalogue, WatchAtMostLeavesOutWhatWouldAddAStrongerCaution) {
  CatalogueFilter filter;
  filter.watchAtMost = true;
  filters().setFilter(filter);
  std::vector<std::string> wanted;
  for (const Candidate& candidate :
       candidatesFor(document.knowledge(), document.plan(), document.roster(), document.day(), selection.gap()))
    if (!candidate.strongest || *candidate.strongest == Level::watch)
      wanted.push_back(candidate.movement->id.value);
  EXPECT_LT(wanted.size(), document.knowledge().catalogue.movements().size());
  EXPECT_EQ(shown(), wanted);
}

TEST_F(Catalogue, FilterButtonsSayWhatIsChosen) {
  CatalogueFilter filter;
  filter.elevations = {Elevation::kneeling};
  filters().setFilter(filter);
  QStringList texts;
  for (const QToolButton* button : filters().findChildren<QToolButton*>())
    if (button->isVisible())
      texts << button->text();
  EXPECT_TRUE(texts.join(QLatin1Char('|')).contains(QStringLiteral("Kneeling")));
  EXPECT_TRUE(texts.contains(QStringLiteral("Clear")));
}

TEST_F(Catalogue, AnEmptyResultSaysWhatToDoAndItsButtonDoesIt) {
  panel.search()->setText(QStringLiteral("zebra"));
  EXPECT_TRUE(says(QStringLiteral("Use fewer words")));
  for (QPushButton* button : panel.findChildren<QPushButton*>())
    if (button->isVisible())
      button->click();
  EXPECT_EQ(shown(), ranked());
}

TEST_F(Catalogue, EnterPutsTheMovementIntoTheGapAsOneEntry) {
  const Place gap = selection.gap();
  list().setCurrentIndex(model().indexOf({"mermaid"}));
  QTest::keyClick(&list(), Qt::Key_Return);
  const Step& step = document.plan().sections[gap.section].steps.at(gap.index);
  EXPECT_EQ(step.movement.value, "mermaid");
  EXPECT_EQ(selection.current(), step.id);
  EXPECT_EQ(document.undoStack()->count(), 1);
  document.undoStack()->undo();
  EXPECT_EQ(document.plan(), testing::twentySteps());
  document.undoStack()->redo();
  EXPECT_EQ(countSteps(document.plan()), 21U);
}

TEST_F(Catalogue, EnterInTheSearchFieldTakesTheFirstFound) {
  const Place gap = selection.gap();
  QTest::keyClicks(panel.search(), QStringLiteral("rocker"));
  QTest::keyClick(panel.search(), Qt::Key_Return);
  EXPECT_EQ(document.plan().sections[gap.section].steps.at(gap.index).movement.value, "open-leg-rocker");
}

TEST_F(Catalogue, ADoubleClickPutsTheMovementIntoTheGap) {
  const QPoint point = list().visualRect(model().index(0)).center();
  const std::string first = shown().front();
  const Place gap = selection.gap();
  QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, point);
  EXPECT_EQ(countSteps(document.plan()), 20U);
  QTest::mouseDClick(list().viewport(), Qt::LeftButton, {}, point);
  EXPECT_EQ(document.plan().sections[gap.section].steps.at(gap.index).movement.value, first);
}

TEST_F(Catalogue, ADragCarriesTheMovement) {
  std::unique_ptr<QMimeData> carried(model().mimeData({model().indexOf({"saw"})}));
  ASSERT_TRUE(carried);
  EXPECT_EQ(carried->data(kMovementMime), QByteArray("saw"));
  EXPECT_EQ(carried->text(), QStringLiteral("Saw"));
}

TEST_F(Catalogue, SaysInWordsWhatColoursShow) {
  bool marked = false, plain = false;
  for (int row = 0; row < model().rowCount(); ++row) {
    const QModelIndex index = model().index(row);
    const QVariant level = index.data(CatalogueModel::kLevelRole);
    const QString spoken = index.data(Qt::AccessibleTextRole).toString();
    marked |= level.isValid();
    plain |= !level.isValid();
    EXPECT_TRUE(
        spoken.contains(level.isValid() ? text(static_cast<Level>(level.toInt())) : QStringLiteral("not a clearance")));
  }
  EXPECT_TRUE(marked);
  EXPECT_TRUE(plain);
}

TEST_F(Catalogue, CutsNothingInANarrowDock) {
  EXPECT_THAT(testing::cutParts(panel), ::testing::IsEmpty());
  for (int row = 0; row < model().rowCount(); ++row)
    EXPECT_GE(list().visualRect(model().index(row)).height(), 58);
  MovementAbout about(document.knowledge(), *document.knowledge().catalogue.find({"hundred"}));
  about.setAttribute(Qt::WA_DeleteOnClose, false);
  testing::layOut(about, {460, 620});
  EXPECT_THAT(testing::cutParts(about), ::testing::IsEmpty());
}

TEST_F(Catalogue, ShowsWhatIsOpenToThePeopleTheClassIsSeenFor) {
  const auto strongest = [this](const char* movement) {
    return model().indexOf({movement}).data(CatalogueModel::kLevelRole);
  };
  ASSERT_TRUE(strongest("roll-over").isValid());
  document.setSeenPeople({{"person-6"}}); // of whom nothing is known
  ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral(", for N.H.")); }, 3000));
  const Candidate* wanted = nullptr;
  const auto candidates = candidatesFor(document.knowledge(), document.plan(), document.roster(), document.day(),
                                        selection.gap(), std::vector<PersonId>{{"person-6"}});
  for (const Candidate& each : candidates)
    if (each.movement->id.value == "roll-over")
      wanted = &each;
  ASSERT_TRUE(wanted);
  EXPECT_EQ(strongest("roll-over"), wanted->strongest ? QVariant(static_cast<int>(*wanted->strongest)) : QVariant());
  std::vector<std::string> order;
  for (const Candidate& each : candidates)
    order.push_back(each.movement->id.value);
  EXPECT_EQ(shown(), order);
  EXPECT_NE(shown(), ranked());
  EXPECT_EQ(list().currentIndex().row(), 0) << "the best for them";
}

struct Preview : Catalogue {
  CataloguePreview& preview() { return *panel.findChild<CataloguePreview*>(); }
  FigureView& figure() { return preview().figure(); }
  QString nameAt(int row) { return model().index(row).data().toString(); }
  bool shows(const QString& name) {
    return QTest::qWaitFor([&] { return figure().accessibleName() == name; }, 3000);
  }
  void pointAt(QWidget& widget, QPoint at, QEvent::Type type) {
    if (type == QEvent::Leave) {
      QEvent leave(type);
      QApplication::sendEvent(&widget, &leave);
    } else {
      QEnterEvent enter(at, at, widget.mapToGlobal(at));
      QApplication::sendEvent(&widget, &enter);
    }
  }
};

TEST_F(Preview, ShowsTheChosenMovementInLarge) {
  EXPECT_TRUE(shows(nameAt(0)));
  list().setFocus();
  QTest::keyClick(&list(), Qt::Key_Down);
  EXPECT_TRUE(shows(nameAt(1)));
  EXPECT_TRUE(says(nameAt(1)));
  EXPECT_EQ(figure().poses(), model().movementAt(model().index(1))->poses);
}

TEST_F(Preview, ShowsTheOneUnderThePointerAndThenTheChosenOneAgain) {
  ASSERT_TRUE(shows(nameAt(0)));
  Q_EMIT list().entered(model().index(2));
  EXPECT_TRUE(shows(nameAt(2)));
  pointAt(*list().viewport(), {}, QEvent::Leave);
  EXPECT_TRUE(shows(nameAt(0)));
}

TEST_F(Preview, MovesWhileItsListIsLookedAtAlone) {
  ASSERT_TRUE(shows(nameAt(0)));
  panel.search()->setFocus();
  EXPECT_FALSE(figure().isMoving());
  pointAt(*list().viewport(), {5, 5}, QEvent::Enter);
  EXPECT_TRUE(figure().isMoving());
  pointAt(*list().viewport(), {}, QEvent::Leave);
  EXPECT_FALSE(figure().isMoving());
  pointAt(preview(), {5, 5}, QEvent::Enter);
  EXPECT_TRUE(figure().isMoving());
  pointAt(preview(), {}, QEvent::Leave);
  panel.activateWindow();
  list().setFocus();
  EXPECT_TRUE(QTest::qWaitFor([this] { return figure().isMoving(); }, 3000));
  panel.setReducedMotion(true);
  EXPECT_FALSE(figure().isMoving());
}

TEST_F(Preview, RestsWhileThePanelIsHiddenOrLow) {
  ASSERT_TRUE(shows(nameAt(0)));
  pointAt(*list().viewport(), {5, 5}, QEvent::Enter);
  ASSERT_TRUE(figure().isMoving());
  panel.hide();
  EXPECT_FALSE(figure().isMoving());
  panel.show();
  EXPECT_TRUE(figure().isMoving());
  panel.resize(270, 300);
  EXPECT_TRUE(QTest::qWaitFor([this] { return !preview().isVisible(); }, 3000));
  EXPECT_FALSE(figure().isMoving());
}

TEST_F(Preview, IsEmptyWhenNothingIsFound) {
  panel.search()->setText(QStringLiteral("zzz"));
  EXPECT_TRUE(QTest::qWaitFor([this] { return figure().isEmpty(); }, 3000));
}

TEST_F(Catalogue, FollowsTheKnowledgeOfTheStudio) {
  OwnKnowledge own;
  own.movements = {*document.knowledge().catalogue.find({"hundred"})};
  own.movements.front().id = {"own-slow-hundred"};
  own.movements.front().name = "Slow hundred";
  document.setKnowledge(std::make_shared<const Knowledge>(layered(*testing::knowledge(), own)));
  ASSERT_TRUE(QTest::qWaitFor([this] { return model().indexOf({"own-slow-hundred"}).isValid(); }, 3000));
  EXPECT_EQ(model().indexOf({"own-slow-hundred"}).data().toString(), QStringLiteral("Slow hundred"));
  document.setKnowledge(testing::knowledge());
  EXPECT_TRUE(QTest::qWaitFor([this] { return !model().indexOf({"own-slow-hundred"}).isValid(); }, 3000));
}

} // namespace
} // namespace matwright
