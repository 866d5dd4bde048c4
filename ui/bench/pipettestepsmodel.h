// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/pipettesheet.h"
#include "ui/shared/showncells.h"

#include <QAbstractTableModel>
#include <QIcon>

namespace plateau::ui {

class Theme;

/// The method's steps in their order: rounds, mixing, waits and readings, and how many tubes are through.
class PipetteStepsModel : public ShownCells<QAbstractTableModel>
{
    Q_OBJECT

public:
    enum Column { Step, Volume, Tubes, columns };

    explicit PipetteStepsModel(const Theme &theme, QObject *parent = nullptr);

    /// Same steps as before: changes only. Else a reset. shown: the round on show, dilution: the step of the dilution on
    /// show, -1 for none.
    void show(const PipetteSheet &sheet, int shown, int dilution = -1);
    const SheetStep &step(int row) const { return m_sheet.steps().at(static_cast<std::size_t>(row)); }

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString text(int row, int column) const;
    /// Of a dilution, whose shape says whether it is made: the same in words.
    QVariant spoken(int row) const;
    /// Whether work of the step is left or done; where it is not counted nothing but the room for that, so that all steps
    /// begin in one line.
    QVariant shape(int row) const;
    void touch();

    const Theme &m_theme;
    QIcon m_noShape;
    PipetteSheet m_sheet;
    int m_shown = -1;
    int m_dilution = -1;
};

} // namespace plateau::ui
