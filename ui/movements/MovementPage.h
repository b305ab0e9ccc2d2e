// A page of the editor of a movement: fields with their names, and beside each what is wrong with it.
#pragma once

#include "core/knowledge/Knowledge.h"

#include <QString>
#include <QWidget>
#include <functional>
#include <map>
#include <memory>
#include <vector>

class QGridLayout;
class QLabel;

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

struct FieldFault {
  MovementField field{};
  std::size_t option = 0; // which option, where the field is `options`
  QString words;
  bool hint = false; // unusual, and may have its reason
  friend bool operator==(const FieldFault&, const FieldFault&) = default;
};

class MovementPage : public QWidget {
  Q_OBJECT

public:
  explicit MovementPage(QWidget* parent = nullptr);

  // Emits nothing.
  void show(const Movement& movement, std::shared_ptr<const Knowledge> knowledge);
  const Movement& movement() const { return movement_; }

  bool has(MovementField field) const { return marks_.contains(field); }
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
  void mark(MovementField field, QWidget* widget, QLabel* note, QLabel* name = nullptr);

private:
  struct Mark {
    QWidget* widget;
    QLabel* note;
    QLabel* name; // may be null
    QString words;
  };

  Movement movement_;
  std::shared_ptr<const Knowledge> knowledge_;
  std::map<MovementField, Mark> marks_;
};

// What is wrong, in a label of its own: with a sign before it, and hidden while there is nothing.
QLabel* faultLabel();
void showFaults(QLabel* label, const std::vector<FieldFault>& faults);
QString lineOf(const FieldFault& fault, const QString& words); // with the sign of a fault or a hint before it

// Two columns, names and fields, and room that is left over beside them.
QGridLayout* fieldGrid(QWidget* page = nullptr);

} // namespace matwright
