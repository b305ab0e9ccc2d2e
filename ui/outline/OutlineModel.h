#pragma once

#include "ui/document/ClassCommands.h"

#include <QAbstractItemModel>

namespace matwright {

enum class OutlineColumn { name, begins, dose, length, change, caution };
inline constexpr int kOutlineColumns = 6;

// What an outline row carries besides its text.
enum OutlineRole {
  kSecondLineRole = Qt::UserRole + 1, // of the name column: the option, when there is one
  kFactsRole,                         // of the name column: begin, length and change in one line, for narrow views
  kLevelRole,                         // of the caution column; invalid when none was raised
  kUnknownRole,                       // true when the movement is not in the catalogue
};

// The sections of a class, with their steps below them. Edits go through the commands.
class OutlineModel : public QAbstractItemModel {
  Q_OBJECT

public:
  OutlineModel(PlanDocument& document, ClassCommands& commands, QObject* parent = nullptr);

  // Brings the rows up to the document; does nothing when they are. Where the same steps stand in the same sections,
  // rows keep their identity.
  void refresh();

  // The step of a row, or nothing for a section heading.
  std::optional<StepId> stepAt(const QModelIndex& index) const;
  std::optional<std::size_t> sectionAt(const QModelIndex& index) const; // of a heading, or of a step's section
  QModelIndex indexOf(StepId step, OutlineColumn column = OutlineColumn::name) const;
  QModelIndex indexOfSection(std::size_t section) const;

  QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  QModelIndex parent(const QModelIndex& index) const override;
  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
  QVariant sectionData(std::size_t section, int role) const;
  QVariant stepData(const Step& step, OutlineColumn column, int role) const;
  QVariant cautionData(const Step& step, int role) const;
  QString textOf(const Step& step, OutlineColumn column) const;
  QString spokenText(const Step& step) const;

  PlanDocument& document_;
  ClassCommands& commands_;
  Snapshot snapshot_;
};

} // namespace matwright
