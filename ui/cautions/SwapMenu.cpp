#include "ui/cautions/SwapMenu.h"

#include "core/evaluate/Swaps.h"
#include "ui/text/SwapText.h"

namespace matwright {
namespace {

QString nameOf(const PersonId& id, const std::vector<Person>& roster) {
  const Person* person = findPerson(roster, id);
  return QString::fromStdString(person ? person->name : id.value);
}

// A menu takes an ampersand for the mark of a key.
QString forMenu(QString text) { return text.replace(QLatin1Char('&'), QStringLiteral("&&")); }

} // namespace

SwapMenu::SwapMenu(PlanDocument& document, QWidget* parent) : QMenu(parent), document_(document) {
  setAccessibleName(tr("What instead"));
}

void SwapMenu::fill(const Caution& caution) {
  clear();
  if (!caution.step) {
    addHeading(tr("About the class as a whole: no step to swap"));
    return;
  }
  if (caution.person != Finding::kNone) {
    const PersonId person = document_.seen().people[caution.person];
    const QString name = nameOf(person, document_.roster());
    addHeading(tr("For %1 alone, printed on the card").arg(name));
    addTakeBack(*caution.step, person, name);
    addSwaps(caution, person, kMostForPerson);
  }
  addHeading(tr("For everybody"));
  addSwaps(caution, std::nullopt, kMostForEverybody);
}

// A section of QMenu shows its text in some styles only.
void SwapMenu::addHeading(const QString& words) {
  if (!isEmpty())
    addSeparator();
  QAction* heading = addAction(forMenu(words));
  QFont font = this->font();
  font.setBold(true);
  heading->setFont(font);
  heading->setEnabled(false);
}

void SwapMenu::addSwaps(const Caution& caution, const std::optional<PersonId>& person, std::size_t most) {
  const std::vector<Swap> swaps =
      swapsFor(document_.knowledge(), document_.plan(), document_.roster(), document_.day(), caution, person);
  const StepId id = *caution.step;
  for (std::size_t i = 0; i < swaps.size() && i < most; ++i) {
    const Swap& swap = swaps[i];
    const QString what = swapName(swap);
    const Edit edit = person ? Edit(SetVariant{id, variantFor(*person, swap)})
                             : Edit(ReplaceStep{id, swapped(*findStep(document_.plan(), id), swap)});
    const QString undo =
        person ? tr("%1 for %2").arg(what, nameOf(*person, document_.roster())) : tr("%1 instead").arg(what);
    connect(addAction(forMenu(swapText(swap))), &QAction::triggered, this,
            [this, edit, undo] { document_.perform(edit, undo); });
  }
  if (swaps.empty())
    addAction(tr("Nothing found that raises less"))->setEnabled(false);
}

void SwapMenu::addTakeBack(StepId step, const PersonId& person, const QString& name) {
  const Step* held = findStep(document_.plan(), step);
  if (!held || !variantOf(*held, person))
    return;
  connect(addAction(tr("As everybody does it")), &QAction::triggered, this, [this, step, person, name] {
    document_.perform(RemoveVariant{step, person}, tr("%1 as everybody").arg(name));
  });
}

} // namespace matwright
