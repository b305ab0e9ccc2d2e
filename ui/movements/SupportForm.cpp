#include "ui/movements/SupportForm.h"

#include "core/figure/Support.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/text/FigureText.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace matwright {
namespace {

constexpr int kPlaces = static_cast<int>(kWordCount<HeldAt>);

int keyOf(HeldProp held) { return static_cast<int>(held.what) * kPlaces + static_cast<int>(held.at); }
HeldProp heldOf(int key) { return {static_cast<Held>(key / kPlaces), static_cast<HeldAt>(key % kPlaces)}; }

} // namespace

SupportForm::SupportForm(QWidget* parent) : QWidget(parent), support_(new QComboBox), holds_(new QComboBox) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  column->addWidget(headingLabel(tr("On something else")));
  for (std::size_t i = 0; i < kWordCount<Support>; ++i)
    support_->addItem(withCapital(text(static_cast<Support>(i))));
  support_->setAccessibleName(tr("What it rests on beside floor and wall"));
  keepWheelForFocus(support_);
  column->addWidget(support_);
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(12);
  grid->setVerticalSpacing(2);
  grid->setColumnStretch(1, 1);
  for (std::size_t i = 0; i < contacts_.size(); ++i) {
    const auto contact = static_cast<Contact>(i);
    contacts_[i] = new QCheckBox(withCapital(text(contact)));
    connect(contacts_[i], &QCheckBox::toggled, this, [this, contact](bool on) { put(contact, on); });
    grid->addWidget(contacts_[i], static_cast<int>(i) / 2, static_cast<int>(i) % 2);
  }
  column->addLayout(grid);
  auto* held = new QGridLayout;
  held->setColumnStretch(1, 1);
  holds_->addItem(tr("Nothing"), -1);
  for (std::size_t i = 0; i < kWordCount<Held>; ++i)
    for (std::size_t j = 0; j < kWordCount<HeldAt>; ++j) {
      const HeldProp each{static_cast<Held>(i), static_cast<HeldAt>(j)};
      if (canHold(each.what, each.at))
        holds_->addItem(withCapital(tr("%1 %2").arg(text(each.what), text(each.at))), keyOf(each));
    }
  keepWheelForFocus(holds_);
  held->addWidget(besideLabel(tr("Holds"), holds_), 0, 0);
  held->addWidget(holds_, 0, 1);
  column->addLayout(held);
  connect(support_, &QComboBox::currentIndexChanged, this, [this] { showContacts(); });
  connect(holds_, &QComboBox::currentIndexChanged, this, [this] {
    const int key = holds_->currentData().toInt();
    pose_.holds.reset();
    if (key >= 0)
      pose_.holds = heldOf(key);
    Q_EMIT edited(pose_);
  });
  showContacts();
}

Support SupportForm::shown() const { return static_cast<Support>(support_->currentIndex()); }

// A contact leaves what it rested on before, but for a cushion on a chair.
void SupportForm::put(Contact contact, bool on) {
  pose_.onSupport(shown()).erase(contact);
  if (on) {
    pose_.on.erase(contact);
    const bool stacked = goesOnChairs(shown());
    for (std::size_t i = 0; i < pose_.supports.size(); ++i) {
      const auto other = static_cast<Support>(i);
      const bool stays = (stacked && other == Support::chair) || (shown() == Support::chair && goesOnChairs(other));
      if (!stays)
        pose_.supports[i].erase(contact);
    }
    pose_.onSupport(shown()).insert(contact);
  }
  Q_EMIT edited(pose_);
}

void SupportForm::showContacts() {
  const EnumSet<Contact> able = bearable(shown());
  for (std::size_t i = 0; i < contacts_.size(); ++i) {
    const auto contact = static_cast<Contact>(i);
    const QSignalBlocker quiet(contacts_[i]);
    contacts_[i]->setVisible(able.contains(contact));
    contacts_[i]->setChecked(pose_.onSupport(shown()).contains(contact));
    contacts_[i]->setAccessibleName(tr("%1 on: %2").arg(withCapital(text(contact)), text(shown())));
  }
}

void SupportForm::show(const Pose& pose) {
  const bool another = pose.supports != pose_.supports;
  pose_ = pose;
  if (another && pose.onSupport(shown()).empty()) // shows something that is in use, if anything is
    for (std::size_t i = 0; i < pose.supports.size(); ++i)
      if (!pose.supports[i].empty()) {
        const QSignalBlocker quiet(support_);
        support_->setCurrentIndex(static_cast<int>(i));
        break;
      }
  showContacts();
  const QSignalBlocker quiet(holds_);
  holds_->setCurrentIndex(pose.holds ? holds_->findData(keyOf(*pose.holds)) : 0);
}

} // namespace matwright
