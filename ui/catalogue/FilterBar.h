#pragma once

#include "ui/catalogue/CatalogueFilter.h"

#include <QWidget>
#include <functional>

class QToolButton;

namespace matwright {

class ChoiceButton;

// The filters of the catalogue as a few buttons that say what is chosen.
class FilterBar : public QWidget {
  Q_OBJECT

public:
  explicit FilterBar(QWidget* parent = nullptr);

  // Without words: those are typed elsewhere.
  const CatalogueFilter& filter() const { return filter_; }
  void setFilter(const CatalogueFilter& filter);
  void clear() { setFilter({}); }
  // One more button at the end of the line, which takes it over.
  void add(QToolButton* button);

Q_SIGNALS:
  void changed();

private:
  template <class Enum> ChoiceButton* addChoice(const QString& title, EnumSet<Enum> CatalogueFilter::*set);
  void refresh();

  CatalogueFilter filter_;
  ChoiceButton *position_, *region_, *repertoire_;
  QToolButton *watch_, *clear_;
};

} // namespace matwright
