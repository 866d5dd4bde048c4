// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/planning/reagents.h"
#include "ui/shared/syncrows.h"
#include "ui/shared/theme.h"

#include <QAbstractTableModel>

#include <map>
#include <vector>

namespace plateau::ui {

/// One component of a plan: what it needs, and the lot it is taken from.
struct ReagentRow {
    planning::ReagentNeed need;
    /// Lots of that reagent with the words to choose them by; 0 stands for none noted.
    std::vector<std::pair<qint64, QString>> offers;
    qint64 chosen = 0;
    State state = State::Pending;
    /// Of a cell: two lines of it.
    QString remark;
    /// All that there is to say; what is said of it where there is room.
    QString told;
    bool operator==(const ReagentRow &) const = default;
};

/// The reagents of a plan against the lots in hand. The lot can be chosen; else it is the one to use up
/// first.
class ReagentsModel : public RowsModel<QAbstractTableModel, ReagentRow>
{
    Q_OBJECT

public:
    enum Column { Component, Need, LotColumn, Remark, ColumnCount };
    enum Role { OffersRole = Qt::UserRole };

    explicit ReagentsModel(const Theme &theme, QObject *parent = nullptr);

    /// to: when the run ends; what is good then but not for long is pointed out.
    void setNeeds(const std::vector<planning::ReagentNeed> &needs, const std::vector<planning::Lot> &lots,
                  const QDateTime &to);
    /// What is chosen or proposed of each component, for the run.
    std::vector<run::LotUse> lotUses() const;
    /// A warning for every reagent that is short or not fit, by its name; none where the book has no lot of
    /// it.
    assay::Problems remarks() const;
    /// Forgets what was chosen by hand.
    void startAnew();

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    /// How many tubes the chosen lot is enough for; empty where the book does not say.
    static QString enoughText(const planning::ReagentNeed &need, qint64 chosen);
    /// What others would add, with their names.
    QString othersText(const planning::ReagentNeed &need, qint64 chosen) const;
    /// From which tube on it comes from which other lot, as the bench will go on; nothing said where the
    /// chosen one is enough for the tubes.
    void sayTurns(ReagentRow &row, const planning::Lot &chosen) const;
    ReagentRow rowOf(const planning::ReagentNeed &need) const;
    void refresh();

    const Theme &m_theme;
    std::vector<planning::ReagentNeed> m_needs;
    std::vector<planning::Lot> m_lots;
    QDateTime m_to;
    /// By component; 0 for none.
    std::map<QString, qint64> m_chosen;
};

} // namespace plateau::ui
