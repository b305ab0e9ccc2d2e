#pragma once

#include "core/knowledge/Knowledge.h"

#include <QWidget>
#include <memory>
#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace matwright {

class PickList;
class SourceForm;

// The sources of a rule: one line each, those that can be added, and a form for one of one's own, which is added to all
// sources and to the rule at once.
class SourcePicker : public QWidget {
  Q_OBJECT

public:
  explicit SourcePicker(QWidget* parent = nullptr);

  void show(const std::vector<SourceId>& sources, std::shared_ptr<const Knowledge> knowledge); // emits nothing
  void closeForm();                  // what was written there has been taken
  void refuse(const QString& words); // it has not, and why

Q_SIGNALS:
  void edited(const std::vector<matwright::SourceId>& sources);
  void added(const matwright::Source& source);                                                // without an id
  void changed(const matwright::Source& source, const QString& what, const QString& gesture); // one of one's own

private:
  void build();
  void openForm(const Source& source, bool isNew);
  void judge();
  void takeNew();

  std::vector<SourceId> sources_;
  std::shared_ptr<const Knowledge> knowledge_;
  QLabel* none_;
  QVBoxLayout* rows_;
  std::vector<QWidget*> shown_;
  PickList* list_;
  QPushButton* own_;
  QWidget* panel_;
  SourceForm* form_;
  QLabel* refused_;
  QPushButton *take_, *close_;
  bool isNew_ = true;
};

} // namespace matwright
