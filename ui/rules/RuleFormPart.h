#pragma once

#include "core/knowledge/Faults.h"
#include "ui/controls/FaultMarks.h"

#include <QWidget>
#include <functional>
#include <memory>

namespace matwright {

// A part of the form of a rule: fields under one heading.
class RuleFormPart : public QWidget {
  Q_OBJECT

public:
  using QWidget::QWidget;

  void show(const Rule& rule, std::shared_ptr<const Knowledge> knowledge); // emits nothing
  void showFaults(const std::multimap<int, FaultLine>& faults) const { marks_.show(faults); }
  bool has(Field field) const { return marks_.has(static_cast<int>(field)); }
  void goTo(Field field) const { marks_.goTo(static_cast<int>(field)); }

Q_SIGNALS:
  // Done by the user; `gesture` is the same for what should be one entry of the undo list.
  void edited(const matwright::Rule& rule, const QString& what, const QString& gesture);
  void left(); // the next change is another gesture

protected:
  virtual void refresh() = 0; // rule() and knowledge() have changed

  const Rule& rule() const { return rule_; }
  const Knowledge& knowledge() const { return *knowledge_; }
  std::shared_ptr<const Knowledge> sharedKnowledge() const { return knowledge_; }
  void change(const std::function<void(Rule&)>& edit, const QString& what, const QString& gesture = {});
  // The heading, and the grid of fields below it.
  QGridLayout* makeGrid(const QString& heading);
  void addField(QGridLayout& grid, Field field, const QString& name, QWidget* widget, QLabel* hint = nullptr);
  // A field of which nothing can be wrong; gives back its label.
  static QLabel* addPlain(QGridLayout& grid, const QString& name, QWidget* widget, QLabel* hint = nullptr);
  FaultMarks& marks() { return marks_; }

private:
  Rule rule_;
  std::shared_ptr<const Knowledge> knowledge_;
  FaultMarks marks_;
};

} // namespace matwright
