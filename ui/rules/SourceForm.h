#pragma once

#include "core/screening/Rule.h"
#include "ui/controls/FaultMarks.h"

#include <QWidget>

class QComboBox;

namespace matwright {

class NoteField;

// A source of one's own: how it is cited, and what it is.
class SourceForm : public QWidget {
  Q_OBJECT

public:
  explicit SourceForm(QWidget* parent = nullptr);

  void show(const Source& source); // emits nothing
  const Source& source() const { return source_; }
  void showFaults(const std::multimap<int, FaultLine>& faults) const { marks_.show(faults); } // by Field
  void focusCite();

Q_SIGNALS:
  // By the user; `gesture` is the same for what should be one entry of the undo list.
  void edited(const matwright::Source& source, const QString& what, const QString& gesture);
  void left(); // the next change is another gesture

private:
  Source source_;
  NoteField* cite_;
  QComboBox* kind_;
  FaultMarks marks_;
};

} // namespace matwright
