#pragma once

#include <QGridLayout>

namespace matwright {

// What is known of one thing, a line each: a name, and beside it words that can be selected. Owned by the layout or the
// widget that it is given to.
class FactGrid : public QGridLayout {
public:
  explicit FactGrid(int spacing); // between names and words

  void add(const QString& name, const QString& words); // nothing for empty words
};

} // namespace matwright
