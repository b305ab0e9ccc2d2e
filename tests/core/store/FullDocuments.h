// One document of each kind in which everything that may stand there stands there.
#pragma once

#include <string>

namespace matwright {

inline const std::string kFullClass = R"({
  "format": "matwright-class",
  "version": 1,
  "name": "Tuesday, gentle",
  "date": "2026-11-26",
  "targetSeconds": 3000,
  "note": "Mats along the window.",
  "pace": {"mobility": 1.25, "wordsPerMinute": 130, "settleSeconds": 2.5},
  "people": ["rosa", "imre"],
  "sections": [
    {
      "name": "Arrive",
      "steps": [
        {
          "id": 12,
          "movement": "hundred",
          "option": "knees-bent",
          "dose": {"amount": 10, "unit": "breaths"},
          "tempo": {
            "secondsPerCount": 1.1,
            "phases": [{"breath": "in", "counts": 5}, {"breath": "out", "counts": 5}]
          },
          "onlySide": "left",
          "note": "Head down for Imre.",
          "variants": [
            {"person": "imre", "movement": "hundred", "option": "head-down"},
            {"person": "rosa", "movement": "head-nod"}
          ]
        }
      ]
    },
    {
      "name": "Settle",
      "steps": [
        {
          "id": 7,
          "movement": "resting",
          "dose": {"amount": 60, "unit": "seconds"},
          "tempo": {"secondsPerCount": 1, "phases": [{"breath": "free", "counts": 1}]}
        }
      ]
    }
  ]
})";

inline const std::string kFullPerson = R"({
  "format": "matwright-person",
  "version": 1,
  "id": "rosa",
  "name": "Rosa Amberley",
  "initials": "R.A.",
  "ageBand": "18-39",
  "stature": 1.68,
  "mass": 71.5,
  "wishes": "Stay strong until the birth.",
  "note": "Likes the mat by the door.",
  "conditions": [
    {
      "condition": "pregnancy",
      "qualifiers": {"due": "2027-03-01", "complications": false, "phase": "settled"},
      "clearances": [
        {
          "given": "2026-10-01",
          "until": "2027-01-31",
          "by": "her midwife",
          "features": ["flex-load", "supine"],
          "sets": "adapt",
          "note": "By letter."
        }
      ],
      "note": "Second child."
    }
  ]
})";

inline const std::string kFullStudio = R"({
  "format": "matwright-studio",
  "version": 1,
  "name": "The Long Room",
  "note": "Eight mats."
})";

// Over the small knowledge in tests/data/knowledge.
inline const std::string kFullWishes = R"({
  "format": "matwright-wishes",
  "version": 1,
  "name": "Tuesday, for the back",
  "date": "2026-11-26",
  "lengthSeconds": 3000,
  "challenge": "gentle",
  "focus": {"regions": ["lower-back", "hips"], "spine": ["extension"], "skills": ["balance"]},
  "sections": [{"name": "Arrive", "lengthSeconds": 600}, {"name": "Main", "lengthSeconds": 2400}],
  "props": ["band", "cushion"],
  "wall": false,
  "people": ["rosa", "imre"],
  "pace": {"mobility": 1.25, "wordsPerMinute": 130, "settleSeconds": 2.5},
  "include": ["bridge"],
  "leaveOut": ["hundred", "roll-up"],
  "recent": [{"name": "Last week", "movements": ["bridge", "cat"]}],
  "known": ["cat"],
  "recentIsKnown": false,
  "arc": [{"at": 0.25, "effort": 2}, {"at": 1, "effort": 4.5}],
  "fewerRises": true,
  "seed": 7
})";

inline const std::string kFullOwnKnowledge = R"({
  "format": "matwright-knowledge",
  "version": 1,
  "movements": [
    {
      "id": "own-slow-curl",
      "name": "Slow curl",
      "repertoire": "fundamental",
      "about": "A curl with time to breathe.",
      "start": "lying",
      "end": "lying",
      "sides": "together",
      "dose": {"amount": 4, "unit": "repetitions"},
      "tempo": {"secondsPerCount": 1.5, "phases": [{"breath": "in", "counts": 2}, {"breath": "out", "counts": 4}]},
      "setUp": "Lie on your back, knees bent, and let your hands hold your head.",
      "action": "out: curl slowly, in: lower",
      "regions": ["abdominals", "neck"],
      "spine": ["flexion"],
      "features": ["flex-load"],
      "effort": 3,
      "props": ["ball", "cushion"],
      "prerequisites": ["curl"],
      "counters": ["side-lift"],
      "poses": {
        "start": {"base": "lying", "set": {}, "view": "side", "flip": false, "on": ["back", "head"], "wall": ["back"], "supports": {
            "chair": ["heels.far"], "chair-top": ["forearms.near"], "chair-back": ["front"],
            "roller-along": ["seat"], "roller-across": ["toes.near"], "ball": ["heels.near"],
            "cushion": ["heels.far"], "bolster": ["knees"], "wedge": ["upper-back"]
          },
          "holds": {"prop": "band", "where": "hands"}},
        "end": {
          "base": "upright",
          "set": {
            "lean": -90, "roll": 1, "lumbar": 5, "lumbar.side": 1, "lumbar.rot": 1, "thorax": 30, "thorax.side": 1,
            "thorax.rot": 1, "neck": 20, "neck.side": 1, "neck.rot": 1, "shoulder": 10, "shoulder.near": 11,
            "shoulder.out": 5.5, "elbow.far": 80, "hip": 60, "hip.out": 3, "hip.rot.near": -4, "knee": 90, "ankle": -30
          },
          "view": "front",
          "flip": true,
          "on": ["back", "feet", "hands.near"],
          "wall": ["feet"], "supports": {
            "chair": ["heels.far"], "chair-top": ["forearms.near"], "chair-back": ["front"],
            "roller-along": ["seat"], "roller-across": ["toes.near"], "ball": ["heels.near"],
            "cushion": ["heels.far"], "bolster": ["knees"], "wedge": ["upper-back"]
          },
          "holds": {"prop": "band", "where": "hands"}
        }
      },
      "options": [
        {
          "id": "head-down",
          "name": "Head down",
          "kind": "easier",
          "how": "Leave the head where it is.",
          "removes": ["flex-load"],
          "adds": ["breath-hold"],
          "props": ["cushion"],
          "effort": 1,
          "dose": {"amount": 3, "unit": "breaths"},
          "tempo": {"secondsPerCount": 2, "phases": [{"breath": "free", "counts": 3}]},
          "poses": {
            "start": {"base": "lying", "set": {}, "view": "top", "flip": false, "on": ["back"], "wall": ["feet"], "supports": {
            "chair": ["heels.far"], "chair-top": ["forearms.near"], "chair-back": ["front"],
            "roller-along": ["seat"], "roller-across": ["toes.near"], "ball": ["heels.near"],
            "cushion": ["heels.far"], "bolster": ["knees"], "wedge": ["upper-back"]
          },
          "holds": {"prop": "band", "where": "hands"}},
            "end": {"base": "lying", "set": {"neck": 10}, "view": "top", "flip": true, "on": ["back"], "wall": ["feet"], "supports": {
            "chair": ["heels.far"], "chair-top": ["forearms.near"], "chair-back": ["front"],
            "roller-along": ["seat"], "roller-across": ["toes.near"], "ball": ["heels.near"],
            "cushion": ["heels.far"], "bolster": ["knees"], "wedge": ["upper-back"]
          },
          "holds": {"prop": "band", "where": "hands"}}
          }
        }
      ]
    }
  ],
  "conditions": [
    {
      "id": "own-tired",
      "name": "Tired today",
      "icd10": ["R53"],
      "about": "Somebody who says so.",
      "qualifiers": [
        {"id": "how", "name": "How tired", "kind": "choice",
         "choices": [{"id": "little", "name": "A little"}, {"id": "very", "name": "Very"}]}
      ]
    }
  ],
  "sources": [{"id": "own-talk", "cite": "A talk at the studio, 2026", "kind": "practice"}],
  "rules": [
    {
      "id": "own-tired-rise",
      "condition": "own-tired",
      "when": [{"qualifier": "how", "is": ["very"], "ifOpen": false}],
      "ages": ["65-79", "80-plus"],
      "any": ["rise"],
      "all": ["balance"],
      "at": ["standing"],
      "effortFrom": 3,
      "leverFrom": 60,
      "scope": "total",
      "over": {"amount": 60, "unit": "seconds"},
      "threshold": "ours",
      "level": "watch",
      "why": "Rising often tires.",
      "instead": "fewer changes of height",
      "strength": "practice",
      "check": "memory",
      "contested": "Some would rather have more of it.",
      "sources": ["own-talk"],
      "reviewed": "2026-11-26"
    }
  ],
  "thresholds": {"sum-of-lifts": 42.5}
})";

} // namespace matwright
