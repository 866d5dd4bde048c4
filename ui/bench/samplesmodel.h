// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/rundraft.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

class Theme;

/// What is to be known of each sample of a new run, one row each: mass and extract of solids, sample volume,
/// a blank of its own, and the dilution as pairs of take and make up to. Texts stay as typed; one that is no
/// number is marked.
class SamplesModel : public RowsModel<QAbstractTableModel, SampleDraft>
{
    Q_OBJECT

public:
    explicit SamplesModel(const Theme &theme, QObject *parent = nullptr);

    /// Names in their order; what was filled in for a name stays with it.
    void setNames(const QStringList &names);
    void setForm(run::Form form);
    /// As many pairs of columns, at least one; what stood in a pair that goes is gone.
    void setDilutionSteps(int steps);
    int dilutionSteps() const { return m_steps; }
    /// Where the volume taken in the last step is keyed.
    int lastTakeColumn() const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    enum class Kind { Name, Mass, Extract, Volume, OwnBlank, Take, MakeUp, Factor };
    struct Column {
        Kind kind = Kind::Name;
        int step = 0;
    };
    std::vector<Column> columnsNow() const;
    void layOut();
    /// The text of that column within the sample; nullptr for a column without one.
    static QString *text(SampleDraft &sample, const Column &column);
    QString factorText(const SampleDraft &sample) const;

    const Theme &m_theme;
    run::Form m_form = run::Form::Liquid;
    int m_steps = 1;
    std::vector<Column> m_columns;
};

} // namespace plateau::ui
