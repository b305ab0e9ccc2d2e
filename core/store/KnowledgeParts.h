// The knowledge files as they are decoded, one by one, and the checks that hold them together afterwards.
//
// A read... function takes the root object that openTree gave. A check... function looks at what was decoded: ids, and
// references to things that are on hand. Both note what is wrong; drafts are complete even then.
#pragma once

#include "core/knowledge/Knowledge.h"
#include "core/store/Document.h"
#include "core/store/PoseJson.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace matwright {

// Where a draft was written.
struct Origin {
  std::string file;
  std::string path;
};

struct PositionDraft {
  Position position; // its pose is set by checkPositions
  PoseSpec pose;
  Origin origin;
};

struct ChangeDraft {
  Change change;
  Origin origin;
};

struct MovementDraft {
  Movement movement; // its poses, and those of its options, are set by checkMovements
  KeyPoseSpecs poses;
  std::vector<std::optional<KeyPoseSpecs>> optionPoses; // one an option
  Origin origin;
};

struct ConditionDraft {
  Condition condition;
  Origin origin;
};

struct SourceDraft {
  Source source;
  Origin origin;
};

struct RuleDraft {
  Rule rule;
  Origin origin;
};

struct RedFlagDraft {
  RedFlagGroup group;
  Origin origin;
};

struct RedFlagDrafts {
  std::vector<RedFlagDraft> groups;
  std::vector<std::string> closing;
};

struct MeasuredTaskDraft {
  MeasuredTask task;
  Origin origin;
};

struct MeasuredLoadDrafts {
  std::vector<MeasuredTaskDraft> tasks;
  std::vector<std::string> closing;
};

std::vector<PositionDraft> readPositionDrafts(const Json& tree, Reading& reading);
std::vector<ChangeDraft> readChangeDrafts(const Json& tree, Reading& reading);
std::vector<MovementDraft> readMovementDrafts(const Json& tree, Reading& reading);
std::vector<ConditionDraft> readConditionDrafts(const Json& tree, Reading& reading);
std::vector<SourceDraft> readSourceDrafts(const Json& tree, Reading& reading);
std::vector<RuleDraft> readRuleDrafts(const Json& tree, Reading& reading);
RedFlagDrafts readRedFlagDrafts(const Json& tree, Reading& reading);
MeasuredLoadDrafts readMeasuredLoadDrafts(const Json& tree, Reading& reading);

// The entries of a list on their own, for files that hold more than one kind. Nothing for an absent list.
std::vector<MovementDraft> readMovementList(const std::optional<Spot>& spot);
std::vector<ConditionDraft> readConditionList(const std::optional<Spot>& spot);
std::vector<SourceDraft> readSourceList(const std::optional<Spot>& spot);
std::vector<RuleDraft> readRuleList(const std::optional<Spot>& spot);

// As the reader takes it, with poses written over the upright body.
Json movementJson(const Movement& movement);

// The files *.json of a folder in the order of their names, hidden ones left out.
Result<std::vector<std::filesystem::path>> jsonFilesIn(const std::filesystem::path& folder);

using Errors = std::vector<Error>;
// What a pose turns further than bodies go, each at the angle that is written, or at its base.
void checkAngles(const Pose& pose, const PoseSpec& spec, const std::string& file, Errors& errors);
void noteAt(Errors& errors, const Origin& origin, const std::string& below, ErrorCode code, std::string expected,
            std::string found);

// Null stands for a list that could not be read as a whole: references into it are then not checked.
// Unique ids, mutual mirrors, bases of poses, angles; sets the poses.
void checkPositions(std::vector<PositionDraft>& positions, Errors& errors);
// Positions named, and no change twice, also not from the other side.
void checkChanges(const std::vector<ChangeDraft>& changes, const std::vector<PositionDraft>* positions, Errors& errors);
// Unique ids, positions, prerequisites without circles, bases of poses, angles; sets the poses. `beside` are movements
// that may be named too; they name none of these. Movements of a studio's `own` may have angles that no joint has: the
// editor tells of them, and one of them must not close the whole file.
enum class Written { withTheProgram, own };
void checkMovements(std::vector<MovementDraft>& movements, const std::vector<PositionDraft>* positions,
                    bool allMovements, Errors& errors, Written by = Written::withTheProgram,
                    const Catalogue* beside = nullptr);
void checkConditions(const std::vector<ConditionDraft>& conditions, Errors& errors);
void checkSources(const std::vector<SourceDraft>& sources, Errors& errors);
// Unique ids, and tests, conditions and sources that are there and fit together.
void checkRules(const std::vector<RuleDraft>& rules, const std::vector<ConditionDraft>* conditions,
                const std::vector<SourceDraft>* sources, Errors& errors);
// Unique ids, and conditions and sources that are there.
void checkRedFlags(const RedFlagDrafts& drafts, const std::vector<ConditionDraft>* conditions,
                   const std::vector<SourceDraft>* sources, Errors& errors);
// Unique ids, and movements and sources that are there, each once in a task.
void checkMeasuredLoads(const MeasuredLoadDrafts& drafts, const std::vector<MovementDraft>* movements,
                        const std::vector<SourceDraft>* sources, Errors& errors);

} // namespace matwright
