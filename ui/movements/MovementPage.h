// A page of the editor of a movement: fields with their names, and beside each what is wrong with it.
#pragma once

#include "core/knowledge/Knowledge.h"
#include "ui/controls/FaultMarks.h"

#include <QString>
#include <QWidget>
#include <functional>
#include <memory>
#include <vector>

namespace matwright {

// What of a movement is written in one place of the editor.
enum class MovementField {
  name,
  repertoire,
  about,
  start,
  end,
  sides,
  dose,
  effort,
  regions,
  spine,
  props,
  prerequisites,
  counters,
  setUp,
  action,
  tempo,
  poses,
  features,
  options
};

struct FieldFault : FaultLine {
  MovementField field{};
  std::size_t option = 0; // which option, where the field is `options`
  friend bool operator==(const FieldFault&, const FieldFault&) = default;
};

class MovementPage : public QWidget {
  Q_OBJECT

public:
  explicit MovementPage(QWidget* parent = nullptr);

  // Emits nothing.
  void show(const Movement& movement, std::shared_ptr<const Knowledge> knowledge);
  const Movement& movement() const { return movement_; }

  bool has(MovementField field) const { return marks_.has(static_cast<int>(field)); }
  // What is wrong stands below its field, which is marked; faults of fields elsewhere are left out of account.
  virtual void showFaults(const std::vector<FieldFault>& faults);
  virtual void goTo(const FieldFault& fault); // the focus goes to its field

Q_SIGNALS:
  // Done by the user; `gesture` is the same for what should be one entry of the undo list.
  void edited(const matwright::Movement& movement, const QString& what, const QString& gesture);
  void left(); // the next change is another gesture

protected:
  virtual void refresh() = 0; // movement() and knowledge() have changed

  const Knowledge& knowledge() const { return *knowledge_; }
  void change(const std::function<void(Movement&)>& edit, const QString& what, const QString& gesture = {});
  // A row of a grid: the name, the field, and below it the hint and what is wrong.
  void addField(QGridLayout& grid, MovementField field, const QString& name, QWidget* widget, QLabel* hint = nullptr);
  // A field that stands elsewhere; `note` is where its faults are said.
  void mark(MovementField field, QWidget* widget, QLabel* note);

private:
  Movement movement_;
  std::shared_ptr<const Knowledge> knowledge_;
  FaultMarks marks_;
};

} // namespace matwright
