// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/runsmodel.h"

#include "core/assay/listed.h"
#include "core/evaluation/checkfacts.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct RunsmodelWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunStates)
};

State shapeOf(notebook::RunState state)
{
    switch (state) {
    case notebook::RunState::Accepted:
        return State::Good;
    case notebook::RunState::Rejected:
        return State::Bad;
    case notebook::RunState::OnBench:
        break;
    }
    return State::Pending;
}

} // namespace

QString stateText(notebook::RunState state)
{
    switch (state) {
    case notebook::RunState::Accepted:
        return RunsmodelWords::tr("accepted");
    case notebook::RunState::Rejected:
        return RunsmodelWords::tr("rejected");
    case notebook::RunState::OnBench:
        break;
    }
    return RunsmodelWords::tr("on the bench");
}

QString flagsText(const std::vector<evaluation::CheckId> &flags)
{
    if (flags.empty())
        return {};
    const QString first = evaluation::checkTitle(flags.front());
    const int others = static_cast<int>(flags.size()) - 1;
    return others == 0 ? first : RunsmodelWords::tr("%1, and %2 more").arg(first).arg(others);
}

RunsModel::RunsModel(const Theme &theme, Source source, QObject *parent)
    : ShownCells(parent)
    , m_theme(theme)
    , m_source(std::move(source))
{
    connect(&theme, &Theme::changed, this, [this] {
        if (rowCount() > 0)
            Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    });
}

void RunsModel::find(const notebook::RunFilter &filter, notebook::RunOrder order)
{
    m_filter = filter;
    m_order = order;
    read(pageSize);
}

void RunsModel::refresh()
{
    read(std::clamp(rowCount(), pageSize, 10 * pageSize));
}

void RunsModel::read(int size)
{
    notebook::RunPage page = m_source(m_filter, m_order, size, {});
    m_end = page.end;
    show(std::move(page.runs));
    noteVersions(0);
}

void RunsModel::noteVersions(int from)
{
    if (from == 0)
        m_versions.clear();
    std::set<QString> several = from == 0 ? std::set<QString>() : m_ofSeveralVersions;
    for (int row = from; row < rowCount(); ++row) {
        const notebook::RunSummary &summary = run(row).summary;
        const auto [first, isFirst] = m_versions.try_emplace(summary.methodId, summary.methodVersion);
        if (!isFirst && first->second != summary.methodVersion)
            several.insert(summary.methodId);
    }
    if (several == m_ofSeveralVersions)
        return;
    m_ofSeveralVersions = std::move(several);
    if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, Method), index(rowCount() - 1, Method));
}

void RunsModel::show(std::vector<notebook::FoundRun> runs)
{
    std::set<notebook::RunId> wanted;
    for (const notebook::FoundRun &found : runs)
        wanted.insert(found.summary.id);
    const auto remove = [this](int row) {
        beginRemoveRows({}, row, row);
        m_runs.erase(m_runs.begin() + row);
        endRemoveRows();
    };
    for (int row = rowCount() - 1; row >= 0; --row) {
        if (!wanted.contains(run(row).summary.id))
            remove(row);
    }
    for (int row = 0; row < static_cast<int>(runs.size()); ++row) {
        notebook::FoundRun &fresh = runs[static_cast<std::size_t>(row)];
        const notebook::RunId id = fresh.summary.id;
        if (row < rowCount() && run(row).summary.id == id) {
            m_runs[static_cast<std::size_t>(row)] = std::move(fresh);
            Q_EMIT dataChanged(index(row, 0), index(row, ColumnCount - 1));
            continue;
        }
        // In another order a run may have stood further down.
        const auto old = std::ranges::find(m_runs.begin() + row, m_runs.end(), id,
                                           [](const notebook::FoundRun &found) { return found.summary.id; });
        if (old != m_runs.end()) {
            const int from = static_cast<int>(old - m_runs.begin());
            beginMoveRows({}, from, from, {}, row);
            std::rotate(m_runs.begin() + row, old, old + 1);
            endMoveRows();
            m_runs[static_cast<std::size_t>(row)] = std::move(fresh);
            Q_EMIT dataChanged(index(row, 0), index(row, ColumnCount - 1));
            continue;
        }
        beginInsertRows({}, row, row);
        m_runs.insert(m_runs.begin() + row, std::move(fresh));
        endInsertRows();
    }
}

bool RunsModel::canFetchMore(const QModelIndex &parent) const
{
    return !parent.isValid() && m_end.has_value();
}

void RunsModel::fetchMore(const QModelIndex &parent)
{
    if (!canFetchMore(parent))
        return;
    notebook::RunPage page = m_source(m_filter, m_order, pageSize, m_end);
    m_end = page.end;
    if (page.runs.empty())
        return;
    const int first = rowCount();
    beginInsertRows({}, first, first + static_cast<int>(page.runs.size()) - 1);
    std::ranges::move(page.runs, std::back_inserter(m_runs));
    endInsertRows();
    noteVersions(first);
}

int RunsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_runs.size());
}

int RunsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QString RunsModel::text(const notebook::FoundRun &found, int column) const
{
    const notebook::RunSummary &run = found.summary;
    switch (column) {
    case Begun:
        return momentText(found.startedAt);
    case Title:
        return run.title;
    case Method:
        return m_ofSeveralVersions.contains(run.methodId)
                   ? tr("%1, version %2").arg(run.methodName).arg(run.methodVersion)
                   : run.methodName;
    case Samples:
        return assay::listed(run.samples); // a name may hold a comma
    case Tubes:
        return QString::number(run.tubes);
    case Readings:
        return tr("%1 of %2").arg(run.readingsTaken).arg(run.readingsPlanned);
    case Decision:
        return stateText(run.state);
    case DecidedBy:
        return run.decidedBy;
    case Flags:
        return flagsText(found.flags);
    default:
        return {};
    }
}

QVariant RunsModel::decoration(const notebook::FoundRun &found, int column) const
{
    if (column == Decision)
        return m_theme.icon(shapeOf(found.summary.state));
    if (column == Flags && !found.flags.empty())
        return m_theme.icon(State::Bad);
    return {};
}

/// All of them, where the cell has room for the first.
QString RunsModel::description(const notebook::FoundRun &found, int column) const
{
    QStringList titles;
    if (column == Flags) {
        for (const evaluation::CheckId flag : found.flags)
            titles.append(evaluation::checkTitle(flag));
    }
    return assay::listed(titles);
}

QVariant RunsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const bool number = index.column() == Tubes || index.column() == Readings;
    switch (role) {
    case Qt::DisplayRole:
        return text(run(index.row()), index.column());
    case Qt::DecorationRole:
        return decoration(run(index.row()), index.column());
    case Qt::AccessibleDescriptionRole:
        return description(run(index.row()), index.column());
    case Qt::TextAlignmentRole:
        return number ? QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    default:
        return {};
    }
}

QVariant RunsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole && (section == Tubes || section == Readings))
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Begun:
        return tr("Started");
    case Title:
        return tr("Title");
    case Method:
        return tr("Method");
    case Samples:
        return tr("Samples");
    case Tubes:
        return tr("Tubes");
    case Readings:
        return tr("Readings");
    case Decision:
        return tr("State");
    case DecidedBy:
        return tr("Decided by");
    case Flags:
        return tr("Checks that failed");
    default:
        return {};
    }
}

} // namespace plateau::ui
