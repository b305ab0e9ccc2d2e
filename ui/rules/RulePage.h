#pragma once

#include "ui/document/KnowledgeDocument.h"
#include "ui/rules/RuleReport.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace matwright {

class FactGrid;
class LevelMark;
class ThresholdEditor;

// All of a rule, to be read: whom it is for, what it looks for, what it says, what stands behind it, and what it
// concerns here and now. Its threshold can be set where that is open.
class RulePage : public QWidget {
  Q_OBJECT

public:
  RulePage(KnowledgeDocument& document, const PlanDocument& plan, QWidget* parent = nullptr);

  void show(const Rule& rule);

Q_SIGNALS:
  void copyWanted();
  void editWanted();
  void removeWanted();
  void refused(const std::vector<matwright::Error>& errors);

private:
  QWidget* makeActions();
  void fillFacts(const Rule& rule);
  void fillToday(const Rule& rule);

  KnowledgeDocument& document_;
  const PlanDocument& plan_;
  ConcernedMovements concerned_;
  LevelMark* mark_;
  QLabel *level_, *title_, *whose_, *look_;
  QPushButton *copy_, *edit_, *remove_;
  ThresholdEditor* threshold_;
  QVBoxLayout* column_;
  QWidget *facts_ = nullptr, *today_ = nullptr;
};

// The column of a page to be read, not wider than is read well.
QVBoxLayout* readingColumn(QWidget& page);
// A place in a column for facts, made anew: what was there goes.
FactGrid* freshFacts(QVBoxLayout& column, QWidget*& place, const QString& heading);

} // namespace matwright
