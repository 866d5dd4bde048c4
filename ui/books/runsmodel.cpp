// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/runsmodel.h"

#include "core/run/runcode.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
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
        return Words::tr("accepted");
    case notebook::RunState::Rejected:
        return Words::tr("rejected");
    case notebook::RunState::OnBench:
        break;
    }
    return Words::tr("on the bench");
}

RunsModel::RunsModel(const Theme &theme, QObject *parent)
    : QAbstractTableModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] {
        if (rowCount() > 0)
            Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    });
}

void RunsModel::setRuns(std::vector<notebook::RunSummary> runs)
{
    const auto has = [](const std::vector<notebook::RunSummary> &list, notebook::RunId id) {
        return std::any_of(list.begin(), list.end(), [id](const auto &run) { return run.id == id; });
    };
    for (int row = rowCount() - 1; row >= 0; --row) {
        if (has(runs, run(row).id))
            continue;
        beginRemoveRows({}, row, row);
        m_runs.erase(m_runs.begin() + row);
        endRemoveRows();
    }
    // Both lists are newest first, so what is left stands in the same order.
    for (int row = 0; row < static_cast<int>(runs.size()); ++row) {
        const notebook::RunSummary &fresh = runs[static_cast<std::size_t>(row)];
        if (row < rowCount() && run(row).id == fresh.id) {
            m_runs[static_cast<std::size_t>(row)] = fresh;
            Q_EMIT dataChanged(index(row, 0), index(row, ColumnCount - 1));
            continue;
        }
        beginInsertRows({}, row, row);
        m_runs.insert(m_runs.begin() + row, fresh);
        endInsertRows();
    }
}

int RunsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_runs.size());
}

int RunsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QString RunsModel::text(const notebook::RunSummary &run, int column) const
{
    switch (column) {
    case Begun:
        return momentText(run.createdAt);
    case Title:
        return run.title;
    case Method:
        return tr("%1, version %2").arg(run.methodName).arg(run.methodVersion);
    case Samples:
        return run.samples.join(u", "_s);
    case Tubes:
        return QString::number(run.tubes);
    case Readings:
        return tr("%1 of %2").arg(run.readingsTaken).arg(run.readingsPlanned);
    case Decision:
        return stateText(run.state);
    case DecidedBy:
        return run.decidedBy;
    default:
        return {};
    }
}

QVariant RunsModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const bool number = index.column() == Tubes || index.column() == Readings;
    switch (role) {
    case Qt::DisplayRole:
        return text(run(index.row()), index.column());
    case Qt::DecorationRole:
        return index.column() == Decision ? QVariant(m_theme.icon(shapeOf(run(index.row()).state)))
                                          : QVariant();
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
        return tr("On the bench since");
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
    default:
        return {};
    }
}

RunsFilter::RunsFilter(RunsModel *source, Finder finder, QObject *parent)
    : WordFilter(source, parent)
    , m_runs(source)
    , m_finder(std::move(finder))
{
}

void RunsFilter::setFilter(const QString &text)
{
    const auto code = m_finder ? run::runCodeIn(text) : std::nullopt;
    m_found = code ? std::optional(m_finder(*code)) : std::nullopt;
    WordFilter::setFilter(text);
}

bool RunsFilter::filterAcceptsRow(int sourceRow, const QModelIndex &sourceParent) const
{
    const bool hasWords = WordFilter::filterAcceptsRow(sourceRow, sourceParent);
    return hasWords || (m_found && std::ranges::find(*m_found, m_runs->run(sourceRow).id) != m_found->end());
}

QString RunsFilter::textOf(int sourceRow) const
{
    const notebook::RunSummary &run = m_runs->run(sourceRow);
    return QStringList{run.title, run.samples.join(u' '), run.methodName, run.methodId, stateText(run.state)}
        .join(u'\n');
}

} // namespace plateau::ui
