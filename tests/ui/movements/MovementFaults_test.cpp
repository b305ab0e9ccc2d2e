#include "tests/support/PanelFixture.h"
#include "ui/movements/MovementFaults.h"
#include "ui/movements/MovementsWorkspace.h"

#include <functional>
#include <gmock/gmock.h>
#include <ostream>

namespace matwright {

void PrintTo(const FieldFault& fault, std::ostream* out) {
  *out << text(fault.field).toStdString() << ": " << fault.words.toStdString();
}

namespace {

using ::testing::IsEmpty;

struct Spoilt {
  const char* how;
  std::function<void(Movement&)> spoil;
  MovementField field;
  const char* words; // that its fault contains
};

std::vector<FieldFault> faultsOf(const Movement& movement) {
  return matwright::faultsOf(movement, {}, *testing::knowledge());
}

Movement blank() {
  Movement movement = blankMovement(*testing::knowledge());
  movement.id = {"own-blank"};
  return movement;
}

TEST(MovementFaults, ABlankMovementHasNone) { EXPECT_THAT(faultsOf(blank()), IsEmpty()); }

TEST(MovementFaults, AreToldAtTheFieldWhereTheyAreMended) {
  const Spoilt cases[] = {
      {"no name", [](Movement& m) { m.name.clear(); }, MovementField::name, "has to stand here"},
      {"short cue", [](Movement& m) { m.setUp = "Lie down"; }, MovementField::setUp, "8 words at least, 2"},
      {"long cue", [](Movement& m) { m.action = "a b c d e f g h i j"; }, MovementField::action, "9 words at most, 10"},
      {"no region", [](Movement& m) { m.regions.clear(); }, MovementField::regions, "has to stand here"},
      {"needs itself", [](Movement& m) { m.prerequisites = {m.id}; }, MovementField::prerequisites, "cannot need"},
      {"nowhere", [](Movement& m) { m.end = {"moon"}; }, MovementField::end, "\"moon\" is not there"},
      {"no phase", [](Movement& m) { m.tempo.phases.clear(); }, MovementField::tempo, "has to stand here"},
      {"far elbow", [](Movement& m) { m.poses.end.arms[0].elbow = 200; }, MovementField::poses,
       "End: Nobody goes so far: near elbow"},
      {"wrung back",
       [](Movement& m) {
         m.poses.start.lumbar.turn = 10;
         m.poses.start.thorax.turn = 42;
       },
       MovementField::poses, "together, 52 degrees; at most 50 degrees"},
      {"from its position", [](Movement& m) { m.features = {Feature::supine}; }, MovementField::features,
       "Comes with the position"},
      {"held breath",
       [](Movement& m) {
         m.tempo.phases.push_back({Breath::hold, 2});
       },
       MovementField::features, "phase holds the breath"},
      {"unnamed option", [](Movement& m) { m.options.resize(1); }, MovementField::options, "has to stand here"},
  };
  for (const Spoilt& spoilt : cases) {
    Movement movement = blank();
    spoilt.spoil(movement);
    const std::vector<FieldFault> faults = faultsOf(movement);
    bool found = false;
    for (const FieldFault& fault : faults)
      found =
          found || (fault.field == spoilt.field && !fault.hint && fault.words.contains(QLatin1String(spoilt.words)));
    EXPECT_TRUE(found) << spoilt.how << ": " << ::testing::PrintToString(faults);
  }
}

TEST(MovementFaults, OneThingIsSaidOnce) {
  Movement movement = blank();
  movement.setUp = "Lie down";
  EXPECT_EQ(faultsOf(movement).size(), 1U) << ::testing::PrintToString(faultsOf(movement));
}

TEST(MovementFaults, TheOptionIsNamed) {
  Movement movement = *testing::knowledge()->catalogue.find({"single-leg-stretch"});
  movement.id = {"own-copy"};
  movement.name = "A copy";
  ASSERT_GE(movement.options.size(), 2U);
  movement.options[1].how.clear();
  const std::vector<FieldFault> faults = faultsOf(movement);
  ASSERT_FALSE(faults.empty());
  EXPECT_EQ(faults[0].option, 1U);
  EXPECT_TRUE(faults[0].words.startsWith(QString::fromStdString(movement.options[1].name)));
}

} // namespace
} // namespace matwright
