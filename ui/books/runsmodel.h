// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/runsearch.h"
#include "ui/shared/showncells.h"

#include <QAbstractTableModel>

#include <functional>
#include <map>
#include <set>

namespace plateau::ui {

class Theme;

/// "on the bench", "accepted", "rejected".
QString stateText(notebook::RunState state);
/// What the checks are called, the first of several and how many more there are.
QString flagsText(const std::vector<evaluation::CheckId> &flags);

/// The runs that a search found, a page at a time as far as somebody looks.
class RunsModel : public ShownCells<QAbstractTableModel>
{
    Q_OBJECT

public:
    enum Column { Begun, Title, Method, Samples, Tubes, Readings, Decision, DecidedBy, Flags, ColumnCount };
    static constexpr int pageSize = 100;
    /// Throws nothing; a page it could not read is empty.
    using Source = std::function<notebook::RunPage(const notebook::RunFilter &, notebook::RunOrder, int size,
                                                   const std::optional<notebook::PageEnd> &after)>;

    RunsModel(const Theme &theme, Source source, QObject *parent = nullptr);

    /// The first page of what that finds; rows that stay keep their place and selection.
    void find(const notebook::RunFilter &filter, notebook::RunOrder order);
    /// The same question again, for as many rows as were looked at, up to 1000.
    void refresh();
    const notebook::RunFilter &filter() const { return m_filter; }
    const notebook::FoundRun &run(int row) const { return m_runs[static_cast<std::size_t>(row)]; }

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    bool canFetchMore(const QModelIndex &parent) const override;
    void fetchMore(const QModelIndex &parent) override;

private:
    void read(int size);
    void show(std::vector<notebook::FoundRun> runs);
    /// Of the methods in the rows from that one on; 0: all anew.
    void noteVersions(int from);
    QString text(const notebook::FoundRun &found, int column) const;
    QVariant decoration(const notebook::FoundRun &found, int column) const;
    QString description(const notebook::FoundRun &found, int column) const;

    const Theme &m_theme;
    Source m_source;
    notebook::RunFilter m_filter;
    notebook::RunOrder m_order = notebook::RunOrder::NewestFirst;
    std::vector<notebook::FoundRun> m_runs;
    std::optional<notebook::PageEnd> m_end;
    /// Of each method in the list, by id, a version of it.
    std::map<QString, int> m_versions;
    /// Methods that stand in the list with more than one: only there it is said which one it was.
    std::set<QString> m_ofSeveralVersions;
};

} // namespace plateau::ui
