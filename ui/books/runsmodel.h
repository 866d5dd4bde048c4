// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>

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

/// Keeps the runs in which every word of the filter stands somewhere: title, samples, method or state.
class RunsFilter : public QSortFilterProxyModel
{
    Q_OBJECT

public:
    explicit RunsFilter(RunsModel *source, QObject *parent = nullptr);
    void setFilter(const QString &text);

protected:
    bool filterAcceptsRow(int sourceRow, const QModelIndex &sourceParent) const override;

private:
    RunsModel *m_runs;
    QStringList m_words;
};

} // namespace plateau::ui
