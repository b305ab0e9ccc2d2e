// The console as a script meets it: words in, text and an exit code out.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace matwright::test {

using Json = nlohmann::json;

struct Answer {
  int code = -1;
  std::string out, err;
};

struct Console : testing::Test {
  std::filesystem::path folder;
  const std::string demo = MATWRIGHT_SOURCE_DIR "/resources/demo";
  const std::string thursday = demo + "/classes/thursday-mixed-level.json";

  void SetUp() override {
    std::string name = (std::filesystem::temp_directory_path() / "console-XXXXXX").string();
    ASSERT_TRUE(mkdtemp(name.data()));
    folder = name;
  }
  void TearDown() override { std::filesystem::remove_all(folder); }

  static std::string quoted(const std::string& word) { return "'" + word + "'"; }
  static std::string textOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  std::string put(const std::string& name, const std::string& text) const {
    std::ofstream(folder / name, std::ios::binary) << text;
    return (folder / name).string();
  }
  Answer run(const std::vector<std::string>& words) const {
    std::string command = quoted(MATWRIGHT_CLI);
    for (const std::string& word : words)
      command += ' ' + quoted(word);
    command += " >" + quoted((folder / "out").string()) + " 2>" + quoted((folder / "err").string()) + " </dev/null";
    const int status = std::system(command.c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, textOf(folder / "out"), textOf(folder / "err")};
  }
};

} // namespace matwright::test
