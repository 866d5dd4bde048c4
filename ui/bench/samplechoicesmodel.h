// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/samplechoices.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

class Theme;

/// The samples of a run with what is decided of each; choice, reason and how it is repeated can be edited.
/// EditRole of Choice is a SampleChoice as a number.
class SampleChoicesModel : public RowsModel<QAbstractTableModel, SampleChoiceRow>
{
    Q_OBJECT

public:
    enum Column { Sample, Verdict, Choice, Reason, How, Consequence, ColumnCount };

    explicit SampleChoicesModel(const Theme &theme, QObject *parent = nullptr);
    void show(std::vector<SampleChoiceRow> rows) { setRows(std::move(rows)); }
    /// A reason that was given for another choice is taken out: it is none for this one.
    void choose(int row, SampleChoice choice);
    void giveReason(int row, const QString &reason);
    /// See SampleChoiceRow::how.
    void sayHow(int row, const QString &how);

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

Q_SIGNALS:
    void edited();

private:
    void put(int row, const SampleChoiceRow &fresh);
    QVariant decoration(const SampleChoiceRow &row, int column) const;

    const Theme &m_theme;
};

/// What somebody can choose, in the order it is offered.
std::vector<SampleChoice> offeredChoices();

} // namespace plateau::ui
