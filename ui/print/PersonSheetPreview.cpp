#include "ui/print/PersonSheetPreview.h"

#include "core/handout/PersonSheet.h"
#include "ui/text/PersonSheetText.h"

namespace matwright {

PersonSheetPreview::PersonSheetPreview(PlanDocument& document, Settings& settings, QWidget* parent)
    : TextPreview(settings, parent), document_(document), settings_(settings) {
  // Many changes in one gesture make one new text.
  refreshTimer_.setSingleShot(true);
  refreshTimer_.setInterval(80);
  connect(&refreshTimer_, &QTimer::timeout, this, [this] {
    if (isVisible())
      refresh();
  });
  connect(&document_, &PlanDocument::changed, &refreshTimer_, qOverload<>(&QTimer::start));
  connect(&settings_, &Settings::changed, &refreshTimer_, qOverload<>(&QTimer::start));
}

void PersonSheetPreview::showPerson(const PersonId& person) {
  person_ = person;
  refresh();
}

void PersonSheetPreview::refresh() {
  const Person* person = findPerson(document_.roster(), person_);
  if (!person) {
    close();
    return;
  }
  const PersonSheet sheet = personSheetOf(document_.knowledge(), *person, document_.day(),
                                          settings_.namesOnCard() ? NameStyle::names : NameStyle::initials,
                                          document_.plan(), document_.evaluation());
  setSheet({personSheetTitle(sheet), personSheetHtml(sheet), personSheetFoot(sheet)});
}

} // namespace matwright
