#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

namespace matwright {

// A JSON value being built, for what programs print. Written in the canonical form of all files: sorted keys, two
// spaces, C locale.
class Tree {
public:
  static Tree object();
  static Tree list();

  Tree(); // null
  Tree(bool value);
  Tree(int value);
  Tree(std::int64_t value);
  Tree(double value); // must be finite
  Tree(std::string value);
  Tree(const char* value);
  Tree(const Tree& other);
  Tree(Tree&& other) noexcept;
  Tree& operator=(Tree other) noexcept;
  ~Tree();

  Tree& set(std::string_view key, Tree value); // this must be an object
  Tree& add(Tree value);                       // this must be a list

  std::string text() const;

private:
  struct Node;
  std::unique_ptr<Node> node_;
};

} // namespace matwright
