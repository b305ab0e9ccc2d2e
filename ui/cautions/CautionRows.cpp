#include "ui/cautions/CautionRows.h"

#include "ui/controls/CautionCard.h"
#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <QCoreApplication>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("CautionRows", text); }

QString keyOf(const Caution& caution, const Evaluation& evaluation) {
  return QStringLiteral("%1/%2/%3/%4/%5")
      .arg(static_cast<int>(caution.kind))
      .arg(caution.step ? caution.step->value : 0)
      .arg(QString::fromStdString(caution.rule ? caution.rule->id.value : caution.name))
      .arg(QString::fromStdString(evaluation.whom(caution).value_or(PersonId{}).value))
      .arg(caution.condition == Finding::kNone ? -1 : static_cast<int>(caution.condition));
}

CautionRow rowOf(const Caution& caution, std::size_t index, const PlanDocument& document) {
  const CautionLines lines =
      linesOf(caution, document.knowledge(), document.plan(), document.seen(), document.roster());
  CautionRow row;
  row.key = keyOf(caution, document.seen());
  row.level = caution.level;
  row.step = caution.step;
  row.index = index;
  row.title = lines.headline;
  row.body = lines.about;
  if (!lines.instead.isEmpty())
    row.instead = tr("Instead: %1").arg(lines.instead);
  return row;
}

} // namespace

std::vector<CautionGroup> cautionGroups(const PlanDocument& document) {
  const Evaluation& evaluation = document.seen();
  std::vector<CautionGroup> groups;
  for (std::size_t level = kWordCount<Level>; level-- > 0;) {
    CautionGroup group;
    group.level = static_cast<Level>(level);
    group.key = QStringLiteral("level%1").arg(level);
    for (std::size_t i = 0; i < evaluation.cautions.size(); ++i)
      if (evaluation.cautions[i].level == *group.level)
        group.rows.push_back(rowOf(evaluation.cautions[i], i, document));
    group.title = QStringLiteral("%1 \u00b7 %2").arg(withCapital(text(*group.level))).arg(group.rows.size());
    if (!group.rows.empty())
      groups.push_back(std::move(group));
  }
  if (!document.seenPeople().empty() || evaluation.remarks.empty())
    return groups;
  CautionGroup remarks;
  remarks.key = QStringLiteral("remarks");
  for (std::size_t i = 0; i < evaluation.remarks.size(); ++i) {
    const Remark& remark = evaluation.remarks[i];
    CautionRow row;
    row.key = QStringLiteral("remark/%1/%2/%3")
                  .arg(static_cast<int>(remark.kind))
                  .arg(remark.step ? remark.step->value : 0)
                  .arg(QString::fromStdString(remark.other.value));
    row.step = remark.step;
    row.index = i;
    row.title = remarkText(remark, document.knowledge(), document.plan());
    remarks.rows.push_back(std::move(row));
  }
  remarks.title = tr("About the class \u00b7 %1").arg(remarks.rows.size());
  groups.push_back(std::move(remarks));
  return groups;
}

QString wholeReason(const PlanDocument& document, const CautionRow& row) {
  const Evaluation& evaluation = document.seen();
  if (!row.level || row.index >= evaluation.cautions.size())
    return row.title;
  return wordsFor(evaluation.cautions[row.index], document.knowledge(), document.plan(), evaluation, document.roster())
      .whole;
}

} // namespace matwright
