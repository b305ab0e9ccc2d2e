#include "core/store/PoseJson.h"

#include "core/figure/Support.h"

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
template <class Enum> EnumSet<Enum> contactsOf(std::string_view name) {
  EnumSet<Enum> contacts;
  if (const auto one = fromWord<Enum>(name))
    contacts.insert(*one);
  for (const Limb limb : {Limb::near, Limb::far})
    if (const auto one = fromWord<Enum>(std::string(name) + '.' + std::string(word(limb))))
      contacts.insert(*one);
  return contacts;
}

template <class Enum> EnumSet<Enum> readContacts(const std::optional<Spot>& spot, const char* expected) {
  EnumSet<Enum> all;
  for (const Spot& entry : readList(spot, 0, kWordCount<Enum>)) {
    if (!entry.json->is_string()) {
      entry.note(ErrorCode::wrongType, "text");
      continue;
    }
    const auto contacts = contactsOf<Enum>(entry.json->get_ref<const std::string&>());
    if (contacts.empty())
      entry.note(ErrorCode::unknownWord, expected);
    if (contacts.intersects(all))
      entry.note(ErrorCode::duplicateId, "each contact once");
    all |= contacts;
  }
  return all;
}

const char* keyOf(Support support) { return word(support).data(); } // of a literal

// What lies on `floor` lies on nothing else. The chair comes first.
std::array<EnumSet<Contact>, kWordCount<Support>> readSupports(const Spot& spot, EnumSet<Contact> floor) {
  std::array<EnumSet<Contact>, kWordCount<Support>> supports;
  ObjectReader object(spot);
  EnumSet<Contact> taken = floor;
  for (std::size_t i = 0; i < supports.size(); ++i) {
    const auto support = static_cast<Support>(i);
    const auto list = object.find(keyOf(support));
    if (!list)
      continue;
    supports[i] = readContacts<Contact>(list, "what may rest on something, such as seat, hands or feet.near");
    const EnumSet<Contact> out = supports[i].without(bearable(support));
    out.forEach([&](Contact contact) {
      list->note(ErrorCode::unknownWord, "what may rest there", std::string(word(contact)));
    });
    (supports[i] & (goesOnChairs(support) ? taken.without(supports[0]) : taken)).forEach([&](Contact contact) {
      list->note(ErrorCode::duplicateId, "each contact on one thing", std::string(word(contact)));
    });
    taken |= supports[i];
  }
  object.refuseRest();
  return supports;
}

HeldProp readHeld(const Spot& spot) {
  ObjectReader object(spot);
  HeldProp held{readWord<Held>(object.need("prop")), {}};
  const auto where = object.need("where");
  if (const auto at = findWord<HeldAt>(where)) {
    held.at = *at;
    if (!canHold(held.what, held.at))
      where->note(ErrorCode::unknownWord, "a place where that is held");
  }
  object.refuseRest();
  return held;
}

// Two limbs by the word for both.
template <class Enum> Json contactsJson(EnumSet<Enum> contacts) {
  Json list = Json::array();
  contacts.forEach([&](Enum contact) {
    std::string_view name = word(contact);
    const auto limb = takeLimb(name);
    if (!limb || !contacts.containsAll(contactsOf<Enum>(name)))
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
    spec.on = readContacts<Contact>(on, "what may rest on the floor, such as seat, hands or feet.near");
  if (const auto supports = object.find("supports"))
    spec.supports = readSupports(*supports, spec.on.value_or(EnumSet<Contact>{}));
  if (const auto wall = object.find("wall"))
    spec.wall = readContacts<WallContact>(wall, "what may rest against the wall, such as back, feet or hands.near");
  if (const auto holds = object.find("holds"))
    spec.holds = readHeld(*holds);
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
  for (std::size_t i = 0; i < pose.supports.size(); ++i)
    if (!pose.supports[i].empty())
      object["supports"][keyOf(static_cast<Support>(i))] = contactsJson(pose.supports[i]);
  if (!pose.wall.empty())
    object["wall"] = contactsJson(pose.wall);
  if (pose.holds)
    object["holds"] = {{"prop", word(pose.holds->what)}, {"where", word(pose.holds->at)}};
  return object;
}

Json keyPosesJson(const KeyPoses& poses) { return {{"start", poseJson(poses.start)}, {"end", poseJson(poses.end)}}; }

Pose poseOn(Pose base, const PoseSpec& spec) {
  for (const auto& [key, degrees] : spec.set)
    setAngle(base, key, degrees);
  base.view = spec.view.value_or(base.view);
  base.flip = spec.flip.value_or(base.flip);
  if (spec.on) {
    base.on = *spec.on;
    for (EnumSet<Contact>& each : base.supports)
      each = each.without(*spec.on);
  }
  if (spec.supports) {
    base.supports = *spec.supports;
    for (const EnumSet<Contact>& each : *spec.supports)
      base.on = base.on.without(each);
  }
  base.wall = spec.wall.value_or(base.wall);
  if (spec.holds)
    base.holds = spec.holds;
  return base;
}

} // namespace matwright
