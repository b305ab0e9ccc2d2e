#pragma once

#include "ui/catalogue/CatalogueFilter.h"

#include <QWidget>
#include <functional>

class QToolButton;

namespace matwright {

class CheckMenu;

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
  struct Choice {
    QToolButton* button;
    CheckMenu* menu;
    QString title;
  };

  template <class Enum> Choice addChoice(const QString& title, EnumSet<Enum> CatalogueFilter::*set);
  template <class Enum> void showChoice(const Choice& choice, EnumSet<Enum> chosen);
  void refresh();

  CatalogueFilter filter_;
  Choice position_, region_, repertoire_;
  QToolButton *watch_, *clear_;
};

} // namespace matwright
