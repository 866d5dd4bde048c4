// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/checksmodel.h"

#include "ui/shared/shownnumbers.h"

namespace plateau::ui {

Sentence outcomeOf(evaluation::CheckOutcome outcome)
{
    switch (outcome) {
    case evaluation::CheckOutcome::Failed:
        return {State::Bad, ChecksModel::tr("failed")};
    case evaluation::CheckOutcome::Repeat:
        return {State::Attention, ChecksModel::tr("repeat")};
    case evaluation::CheckOutcome::Waiting:
        return {State::Pending, ChecksModel::tr("waiting")};
    case evaluation::CheckOutcome::NotMade:
        return {State::Attention, ChecksModel::tr("not made")};
    case evaluation::CheckOutcome::NotJudged:
        return {State::Info, ChecksModel::tr("not judged")};
    case evaluation::CheckOutcome::Noted:
        return {State::Info, ChecksModel::tr("noted")};
    case evaluation::CheckOutcome::Passed:
        break;
    }
    return {State::Good, ChecksModel::tr("passed")};
}

ChecksModel::ChecksModel(const Theme &theme, QObject *parent)
    : ColumnsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

QString ChecksModel::text(const evaluation::CheckLine &line, int column) const
{
    switch (column) {
    case Check:
        return line.where.isEmpty() ? line.what : tr("%1: %2").arg(line.what, line.where);
    case Outcome:
        return outcomeOf(line.outcome).text;
    case Found:
        return line.found;
    case Limit:
        return line.limit;
    case Origin:
        return evaluation::limitOriginName(line.origin);
    default:
        return {};
    }
}

QVariant ChecksModel::look(const evaluation::CheckLine &line, int column, int role) const
{
    if (role == FigureRole)
        return column == Found || column == Limit;
    const bool failed =
        line.outcome == evaluation::CheckOutcome::Failed || line.outcome == evaluation::CheckOutcome::Repeat;
    if (role == Qt::FontRole && failed && (column == Check || column == Outcome))
        return m_theme.bold();
    if (role == Qt::AccessibleDescriptionRole)
        return line.message;
    return role == Qt::DecorationRole && column == Outcome
               ? QVariant(m_theme.icon(outcomeOf(line.outcome).state))
               : QVariant();
}

QString ChecksModel::heading(int column) const
{
    switch (column) {
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
