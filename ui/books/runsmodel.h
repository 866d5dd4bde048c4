// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/books/wordfilter.h"

#include <QAbstractTableModel>

#include <functional>
#include <optional>
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

/// Searches title, samples, method and state of the runs, but neither their times nor their counts. The code
/// of a printed sheet, scanned, pasted or typed whole, finds what it stands for.
class RunsFilter : public WordFilter
{
    Q_OBJECT

public:
    using Finder = std::function<std::vector<notebook::RunId>(const QString &runCode)>;
    /// Without a finder no code is known.
    explicit RunsFilter(RunsModel *source, Finder finder = {}, QObject *parent = nullptr);
    void setFilter(const QString &text) override;

protected:
    QString textOf(int sourceRow) const override;
    bool filterAcceptsRow(int sourceRow, const QModelIndex &sourceParent) const override;

private:
    RunsModel *m_runs;
    Finder m_finder;
    /// While the search is a code.
    std::optional<std::vector<notebook::RunId>> m_found;
};

} // namespace plateau::ui
