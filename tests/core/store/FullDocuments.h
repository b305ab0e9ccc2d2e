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

} // namespace matwright
