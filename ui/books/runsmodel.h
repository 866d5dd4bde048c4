// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/books/wordfilter.h"

#include <QAbstractTableModel>

#include <vector>

namespace plateau::ui {

class Theme;

/// "on the bench", "accepted", "rejected".
QString stateText(notebook::RunState state);

/// The runs of the notebook, newest first.
class RunsModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column { Begun, Title, Method, Samples, Tubes, Readings, Decision, DecidedBy, ColumnCount };

    explicit RunsModel(const Theme &theme, QObject *parent = nullptr);

    /// Rows that stay keep their place and selection.
    void setRuns(std::vector<notebook::RunSummary> runs);
    const notebook::RunSummary &run(int row) const { return m_runs[static_cast<std::size_t>(row)]; }

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString text(const notebook::RunSummary &run, int column) const;

    const Theme &m_theme;
    std::vector<notebook::RunSummary> m_runs;
};

/// Searches title, samples, method and state of the runs, but neither their times nor their counts.
class RunsFilter : public WordFilter
{
    Q_OBJECT

public:
    explicit RunsFilter(RunsModel *source, QObject *parent = nullptr);

protected:
    QString textOf(int sourceRow) const override;

private:
    RunsModel *m_runs;
};

} // namespace plateau::ui
