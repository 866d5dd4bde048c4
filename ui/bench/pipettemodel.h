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
        /// What the tube holds, in few words, and which of those alike: "P-104", "1 of 2".
        ContentsRole,
        WhichRole,
        /// How it stands: the volume, the reading, why it is spoilt.
        StateWordsRole,
        /// What stands in, and whether another volume is planned or noted.
        DetailRole,
        /// Planned unlike the other tubes of the round, by volume or by content.
        OddRole,
        /// Ticked with another volume than the worksheet's.
        DifferentRole,
    };

    explicit PipetteModel(QObject *parent = nullptr);

    /// Same tubes and columns as before: changes only. Else a reset. With a reading the tubes stand as that
    /// reading does.
    void show(const PipetteSheet &sheet, int round, int rackColumns, const QString &reading = {});

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
    QString spokenReading(int tube) const;
    QVariant readingData(int tube, int role) const;

    PipetteSheet m_sheet;
    int m_round = 0;
    /// Empty while an addition is on show.
    QString m_reading;
    int m_columns = 1;
};

} // namespace plateau::ui
