#include "core/store/PoseJson.h"

#include <algorithm>
#include <array>

namespace matwright {
namespace {

constexpr double kWidestAngle = 360;

struct BodyKey {
  std::string_view name;
  double& (*angle)(Pose&);
};
struct LimbKey {
  std::string_view name;
  double& (*angle)(Pose&, std::size_t limb);
};

constexpr std::array kBodyKeys = {
    BodyKey{"lean", [](Pose& pose) -> double& { return pose.lean; }},
    BodyKey{"roll", [](Pose& pose) -> double& { return pose.roll; }},
    BodyKey{"lumbar", [](Pose& pose) -> double& { return pose.lumbar.bend; }},
    BodyKey{"lumbar.side", [](Pose& pose) -> double& { return pose.lumbar.side; }},
    BodyKey{"lumbar.rot", [](Pose& pose) -> double& { return pose.lumbar.turn; }},
    BodyKey{"thorax", [](Pose& pose) -> double& { return pose.thorax.bend; }},
    BodyKey{"thorax.side", [](Pose& pose) -> double& { return pose.thorax.side; }},
    BodyKey{"thorax.rot", [](Pose& pose) -> double& { return pose.thorax.turn; }},
    BodyKey{"neck", [](Pose& pose) -> double& { return pose.neck.bend; }},
    BodyKey{"neck.side", [](Pose& pose) -> double& { return pose.neck.side; }},
    BodyKey{"neck.rot", [](Pose& pose) -> double& { return pose.neck.turn; }},
};

constexpr std::array kLimbKeys = {
    LimbKey{"shoulder", [](Pose& pose, std::size_t limb) -> double& { return pose.arms[limb].shoulder; }},
    LimbKey{"shoulder.out", [](Pose& pose, std::size_t limb) -> double& { return pose.arms[limb].out; }},
    LimbKey{"elbow", [](Pose& pose, std::size_t limb) -> double& { return pose.arms[limb].elbow; }},
    LimbKey{"hip", [](Pose& pose, std::size_t limb) -> double& { return pose.legs[limb].hip; }},
    LimbKey{"hip.out", [](Pose& pose, std::size_t limb) -> double& { return pose.legs[limb].out; }},
    LimbKey{"hip.rot", [](Pose& pose, std::size_t limb) -> double& { return pose.legs[limb].turn; }},
    LimbKey{"knee", [](Pose& pose, std::size_t limb) -> double& { return pose.legs[limb].knee; }},
    LimbKey{"ankle", [](Pose& pose, std::size_t limb) -> double& { return pose.legs[limb].ankle; }},
};

template <class Key, std::size_t n> const Key* findKey(const std::array<Key, n>& keys, std::string_view name) {
  const auto at = std::find_if(keys.begin(), keys.end(), [&](const Key& key) { return key.name == name; });
  return at == keys.end() ? nullptr : &*at;
}

// "hip.out.near" -> "hip.out" and near; nothing for a name without a limb.
std::optional<Limb> takeLimb(std::string_view& name) {
  const std::size_t dot = name.rfind('.');
  if (dot == std::string_view::npos)
    return std::nullopt;
  const auto limb = fromWord<Limb>(name.substr(dot + 1));
  if (limb)
    name.remove_suffix(name.size() - dot);
  return limb;
}

bool setAngle(Pose& pose, std::string_view name, double degrees) {
  if (const BodyKey* key = findKey(kBodyKeys, name)) {
    key->angle(pose) = degrees;
    return true;
  }
  const auto limb = takeLimb(name);
  const LimbKey* key = findKey(kLimbKeys, name);
  if (!key)
    return false;
  for (const Limb each : {Limb::near, Limb::far})
    if (!limb || *limb == each)
      key->angle(pose, static_cast<std::size_t>(each)) = degrees;
  return true;
}

// "hands" names both; "hands.near" one; "seat" the only one.
EnumSet<Contact> contactsOf(std::string_view name) {
  EnumSet<Contact> contacts;
  if (const auto one = fromWord<Contact>(name))
    contacts.insert(*one);
  for (const Limb limb : {Limb::near, Limb::far})
    if (const auto one = fromWord<Contact>(std::string(name) + '.' + std::string(word(limb))))
      contacts.insert(*one);
  return contacts;
}

EnumSet<Contact> readContacts(const std::optional<Spot>& spot) {
  EnumSet<Contact> all;
  for (const Spot& entry : readList(spot, 0, kWordCount<Contact>)) {
    if (!entry.json->is_string()) {
      entry.note(ErrorCode::wrongType, "text");
      continue;
    }
    const auto contacts = contactsOf(entry.json->get_ref<const std::string&>());
    if (contacts.empty())
      entry.note(ErrorCode::unknownWord, "what may rest on the floor, such as seat, hands or feet.near");
    if (contacts.intersects(all))
      entry.note(ErrorCode::duplicateId, "each contact once");
    all |= contacts;
  }
  return all;
}

// Two limbs by the word for both.
Json contactsJson(EnumSet<Contact> contacts) {
  Json list = Json::array();
  contacts.forEach([&](Contact contact) {
    std::string_view name = word(contact);
    const auto limb = takeLimb(name);
    if (!limb || !contacts.containsAll(contactsOf(name)))
      list.push_back(word(contact));
    else if (*limb == Limb::near)
      list.push_back(name);
  });
  return list;
}

} // namespace

PoseSpec readPose(const std::optional<Spot>& spot) {
  ObjectReader object(spot);
  PoseSpec spec;
  spec.path = spot ? spot->path : std::string();
  spec.base = readId<PositionId>(object.need("base"));
  if (spec.base.value == kUprightBase)
    spec.base = {};
  // The reader gives keys in sorted order, in which "hip" comes before "hip.near".
  for (const auto& [key, value] : readEntries(object.need("set"))) {
    Pose trial;
    if (setAngle(trial, key, 0))
      spec.set.emplace_back(key, readNumber(value, -kWidestAngle, kWidestAngle));
    else
      value.note(ErrorCode::unknownKey, "an angle of FORMAT.md, section 5", extractOf(key));
  }
  if (const auto view = object.find("view"))
    spec.view = readWord<View>(view);
  if (const auto flip = object.find("flip"))
    spec.flip = readFlag(flip);
  if (const auto on = object.find("on"))
    spec.on = readContacts(on);
  if (const auto wall = object.find("wall"))
    spec.wall = readWordSet<WallContact>(wall);
  object.refuseRest();
  return spec;
}

KeyPoseSpecs readKeyPoses(const std::optional<Spot>& spot) {
  ObjectReader object(spot);
  KeyPoseSpecs specs{readPose(object.need("start")), readPose(object.need("end"))};
  object.refuseRest();
  return specs;
}

Json poseJson(const Pose& pose) {
  Json set = Json::object();
  const auto put = [&](const std::string& name, double degrees) {
    if (degrees != 0)
      set[name] = degrees;
  };
  Pose angles = pose; // the keys give angles to be set
  for (const BodyKey& key : kBodyKeys)
    put(std::string(key.name), key.angle(angles));
  for (const LimbKey& key : kLimbKeys) {
    const double near = key.angle(angles, 0), far = key.angle(angles, 1);
    if (near == far) {
      put(std::string(key.name), near);
      continue;
    }
    put(std::string(key.name) + ".near", near);
    put(std::string(key.name) + ".far", far);
  }
  Json object = {{"base", kUprightBase}, {"set", std::move(set)}};
  if (pose.view != View::side)
    object["view"] = word(pose.view);
  if (pose.flip)
    object["flip"] = true;
  if (!pose.on.empty())
    object["on"] = contactsJson(pose.on);
  if (!pose.wall.empty()) {
    Json wall = Json::array();
    pose.wall.forEach([&](WallContact contact) { wall.push_back(word(contact)); });
    object["wall"] = std::move(wall);
  }
  return object;
}

Json keyPosesJson(const KeyPoses& poses) { return {{"start", poseJson(poses.start)}, {"end", poseJson(poses.end)}}; }

Pose poseOn(Pose base, const PoseSpec& spec) {
  for (const auto& [key, degrees] : spec.set)
    setAngle(base, key, degrees);
  base.view = spec.view.value_or(base.view);
  base.flip = spec.flip.value_or(base.flip);
  base.on = spec.on.value_or(base.on);
  base.wall = spec.wall.value_or(base.wall);
  return base;
}

} // namespace matwright
