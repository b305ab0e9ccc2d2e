#include "core/store/Tree.h"

#include "core/store/JsonText.h"

namespace matwright {

struct Tree::Node {
  Json json;
};

Tree Tree::object() {
  Tree tree;
  tree.node_->json = Json::object();
  return tree;
}

Tree Tree::list() {
  Tree tree;
  tree.node_->json = Json::array();
  return tree;
}

Tree::Tree() : node_(std::make_unique<Node>()) {}
Tree::Tree(bool value) : node_(std::make_unique<Node>(Node{value})) {}
Tree::Tree(int value) : node_(std::make_unique<Node>(Node{value})) {}
Tree::Tree(std::int64_t value) : node_(std::make_unique<Node>(Node{value})) {}
Tree::Tree(double value) : node_(std::make_unique<Node>(Node{value})) {}
Tree::Tree(std::string value) : node_(std::make_unique<Node>(Node{std::move(value)})) {}
Tree::Tree(const char* value) : Tree(std::string(value)) {}
Tree::Tree(const Tree& other) : node_(std::make_unique<Node>(*other.node_)) {}
Tree::Tree(Tree&& other) noexcept = default;
Tree& Tree::operator=(Tree other) noexcept {
  node_ = std::move(other.node_);
  return *this;
}
Tree::~Tree() = default;

Tree& Tree::set(std::string_view key, Tree value) {
  node_->json[std::string(key)] = std::move(value.node_->json);
  return *this;
}

Tree& Tree::add(Tree value) {
  node_->json.push_back(std::move(value.node_->json));
  return *this;
}

std::string Tree::text() const { return canonicalText(node_->json); }

} // namespace matwright
