// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/pipettesheet.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// One round over the tubes as they stand in the rack: from left to right, row by row. A rack with more tubes
/// than the laboratory's has places goes on in further rows. Cells behind the last tube hold nothing.
class PipetteModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Role {
        /// PipetteSheet::State as int.
        StateRole = Qt::UserRole,
        /// What the tube holds, in few words.
        ContentsRole,
        /// How it stands: volume, what really went in, why it is spoilt.
        StateWordsRole,
        /// Unlike the other tubes of the round, by volume or by content.
        OddRole,
        /// Ticked with another volume than the worksheet's.
        DifferentRole,
    };

    explicit PipetteModel(QObject *parent = nullptr);

    /// Same tubes and columns as before: changes only. Else a reset.
    void show(const PipetteSheet &sheet, int round, int rackColumns);

    int round() const { return m_round; }
    /// Nothing for a cell behind the last tube.
    std::optional<int> tubeAt(const QModelIndex &index) const;
    QModelIndex indexOf(int tube) const;
    /// First and last tube of the row that the tube stands in.
    std::pair<int, int> rowOf(int tube) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;

private:
    QString spoken(const Dosing &dosing) const;

    PipetteSheet m_sheet;
    int m_round = 0;
    int m_columns = 1;
};

} // namespace plateau::ui
