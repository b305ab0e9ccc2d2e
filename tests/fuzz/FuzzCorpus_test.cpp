// Replays the kept corpus, whole and spoilt, without needing a fuzzer.
#include "tests/fuzz/StoreInvariants.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <ostream>
#include <random>

namespace matwright {
namespace {

namespace fs = std::filesystem;

struct Corpus {
  const char* name;
  const char* (*brokenInvariant)(std::string_view);
};

void PrintTo(const Corpus& corpus, std::ostream* out) { *out << corpus.name; }

class FuzzCorpus : public testing::TestWithParam<Corpus> {
protected:
  std::vector<std::string> texts() const {
    std::vector<std::string> found;
    for (const auto& entry :
         fs::directory_iterator(fs::path(MATWRIGHT_SOURCE_DIR) / "tests/fuzz/corpus" / GetParam().name))
      found.push_back(readFile(entry.path()).value());
    std::sort(found.begin(), found.end());
    return found;
  }
  void expectInvariant(const std::string& text) const {
    if (const char* broken = GetParam().brokenInvariant(text))
      ADD_FAILURE() << broken << ": " << text;
  }
};

TEST_P(FuzzCorpus, HoldsTheInvariants) {
  ASSERT_GE(texts().size(), 10u);
  for (const std::string& text : texts())
    expectInvariant(text);
}

TEST_P(FuzzCorpus, HoldsTheInvariantsWhenSpoilt) {
  std::mt19937 random(99);
  for (const std::string& text : texts())
    for (int round = 0; round < 40 && !text.empty(); ++round) {
      std::string spoilt = text;
      const std::size_t at = std::uniform_int_distribution<std::size_t>(0, text.size() - 1)(random);
      switch (round % 4) {
      case 0:
        spoilt.resize(at);
        break;
      case 1:
        spoilt[at] = static_cast<char>(std::uniform_int_distribution<int>(0, 255)(random));
        break;
      case 2:
        spoilt.erase(at, 1);
        break;
      default:
        spoilt.insert(at, text.substr(at / 2, 20));
      }
      expectInvariant(spoilt);
    }
}

INSTANTIATE_TEST_SUITE_P(Documents, FuzzCorpus,
                         testing::Values(Corpus{"class", brokenInvariantOfClass},
                                         Corpus{"person", brokenInvariantOfPerson},
                                         Corpus{"wishes", brokenInvariantOfWishes},
                                         Corpus{"knowledge", brokenInvariantOfKnowledge}),
                         [](const auto& test) { return std::string(test.param.name); });

} // namespace
} // namespace matwright
