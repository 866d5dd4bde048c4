// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/checksmodel.h"

namespace plateau::ui {

namespace {

QString text(const evaluation::CheckLine &line, int column)
{
    switch (column) {
    case ChecksModel::Check:
        return line.where.isEmpty() ? line.what : ChecksModel::tr("%1: %2").arg(line.what, line.where);
    case ChecksModel::Outcome:
        return outcomeOf(line.outcome).text;
    case ChecksModel::Found:
        return line.found;
    case ChecksModel::Limit:
        return line.limit;
    case ChecksModel::Origin:
        return evaluation::limitOriginName(line.origin);
    default:
        return {};
    }
}

} // namespace

Sentence outcomeOf(evaluation::CheckOutcome outcome)
{
    switch (outcome) {
    case evaluation::CheckOutcome::Failed:
        return {State::Bad, ChecksModel::tr("fail")};
    case evaluation::CheckOutcome::Repeat:
        return {State::Attention, ChecksModel::tr("repeat")};
    case evaluation::CheckOutcome::Waiting:
        return {State::Pending, ChecksModel::tr("waiting")};
    case evaluation::CheckOutcome::NotJudged:
        return {State::Info, ChecksModel::tr("not judged")};
    case evaluation::CheckOutcome::Noted:
        return {State::Info, ChecksModel::tr("noted")};
    case evaluation::CheckOutcome::Passed:
        break;
    }
    return {State::Good, ChecksModel::tr("pass")};
}

ChecksModel::ChecksModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

int ChecksModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant ChecksModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const evaluation::CheckLine &line = row(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return text(line, index.column());
    case Qt::DecorationRole:
        return index.column() == Outcome ? QVariant(m_theme.icon(outcomeOf(line.outcome).state)) : QVariant();
    case Qt::FontRole:
        return line.outcome == evaluation::CheckOutcome::Failed ||
                       line.outcome == evaluation::CheckOutcome::Repeat
                   ? QVariant(m_theme.bold())
                   : QVariant();
    case Qt::AccessibleDescriptionRole:
        return line.message;
    default:
        return {};
    }
}

QVariant ChecksModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Check:
        return tr("Check");
    case Outcome:
        return tr("Outcome");
    case Found:
        return tr("Found");
    case Limit:
        return tr("Limit");
    case Origin:
        return tr("Limit from");
    default:
        return {};
    }
}

} // namespace plateau::ui
