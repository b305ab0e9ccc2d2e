#pragma once

#include "core/figure/Pose.h"

#include <QWidget>
#include <array>

class QCheckBox;
class QComboBox;

namespace matwright {

// What of a body rests on a chair, a roller or a cushion, one of them at a time, and what it holds.
class SupportForm : public QWidget {
  Q_OBJECT

public:
  explicit SupportForm(QWidget* parent = nullptr);

  void show(const Pose& pose); // emits nothing

Q_SIGNALS:
  void edited(const matwright::Pose& pose); // by the user

private:
  Support shown() const;
  void showContacts();
  void put(Contact contact, bool on);

  Pose pose_;
  QComboBox* support_;
  QComboBox* holds_;
  std::array<QCheckBox*, kWordCount<Contact>> contacts_{};
};

} // namespace matwright
