// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/samplechoicesmodel.h"

#include "ui/bench/repeathow.h"
#include "ui/shared/theme.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

bool hasReason(SampleChoice choice)
{
    return choice == SampleChoice::Accepted || choice == SampleChoice::Rejected ||
           choice == SampleChoice::Repeat;
}

bool lacksReason(const SampleChoiceRow &row)
{
    return row.choice == SampleChoice::Rejected && row.reason.isEmpty();
}

bool howIsUnreadable(const SampleChoiceRow &row)
{
    return row.choice == SampleChoice::Repeat && !repeatHow(row.how).fault.isEmpty();
}

QString howCell(const SampleChoiceRow &row)
{
    if (row.choice != SampleChoice::Repeat)
        return {};
    if (!row.how.isEmpty())
        return row.how;
    return row.advice.isEmpty() ? SampleChoicesModel::tr("as in this run") : SampleChoicesModel::tr("as advised");
}

QString cellText(const SampleChoiceRow &row, int column)
{
    switch (column) {
    case SampleChoicesModel::Sample:
        return row.sample;
    case SampleChoicesModel::Verdict:
        return row.verdict.text;
    case SampleChoicesModel::Choice:
        return choiceText(row.choice);
    case SampleChoicesModel::Reason:
        return lacksReason(row) ? SampleChoicesModel::tr("say why") : row.reason;
    case SampleChoicesModel::How:
        return howCell(row);
    case SampleChoicesModel::Consequence:
        return consequenceText(row);
    default:
        return {};
    }
}

State stateOf(SampleChoice outcome)
{
    switch (outcome) {
    case SampleChoice::Accepted:
        return State::Good;
    case SampleChoice::Rejected:
        return State::Bad;
    case SampleChoice::Repeat:
        return State::Attention;
    default:
        return State::Pending;
    }
}

} // namespace

SampleChoicesModel::SampleChoicesModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void SampleChoicesModel::put(int index, const SampleChoiceRow &fresh)
{
    if (index < 0 || index >= rowCount() || fresh == row(index))
        return;
    std::vector<SampleChoiceRow> all = rows();
    all[static_cast<std::size_t>(index)] = fresh;
    all[static_cast<std::size_t>(index)].touched = true;
    setRows(std::move(all));
    Q_EMIT edited();
}

void SampleChoicesModel::choose(int index, SampleChoice choice)
{
    if (index < 0 || index >= rowCount())
        return;
    SampleChoiceRow fresh = row(index);
    if (fresh.choice != choice)
        fresh.reason.clear();
    fresh.choice = choice;
    put(index, fresh);
}

void SampleChoicesModel::giveReason(int index, const QString &reason)
{
    if (index < 0 || index >= rowCount())
        return;
    SampleChoiceRow fresh = row(index);
    fresh.reason = reason.simplified();
    put(index, fresh);
}

void SampleChoicesModel::sayHow(int index, const QString &how)
{
    if (index < 0 || index >= rowCount())
        return;
    SampleChoiceRow fresh = row(index);
    fresh.how = how.simplified();
    put(index, fresh);
}

int SampleChoicesModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant SampleChoicesModel::decoration(const SampleChoiceRow &row, int column) const
{
    if (column == Verdict)
        return m_theme.icon(row.verdict.state);
    if (column == Choice)
        return m_theme.icon(stateOf(outcomeOf(row, notebook::DecisionKind::Accepted)));
    if ((column == Reason && lacksReason(row)) || (column == How && howIsUnreadable(row)))
        return m_theme.icon(State::Attention);
    return {};
}

QVariant SampleChoicesModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const SampleChoiceRow &row = this->row(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return cellText(row, index.column());
    case Qt::EditRole:
        if (index.column() == Choice)
            return static_cast<int>(row.choice);
        if (index.column() == How)
            return row.how;
        return index.column() == Reason ? row.reason : cellText(row, index.column());
    case Qt::DecorationRole:
        return decoration(row, index.column());
    case Qt::FontRole:
        return index.column() == Choice ? QVariant(m_theme.bold()) : QVariant();
    default:
        return {};
    }
}

bool SampleChoicesModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid() || role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable))
        return false;
    if (index.column() == Choice) {
        bool isNumber = false;
        const int number = value.toInt(&isNumber);
        if (!isNumber || number < 0 || number > static_cast<int>(SampleChoice::Repeat))
            return false;
        choose(index.row(), static_cast<SampleChoice>(number));
    } else if (index.column() == How) {
        sayHow(index.row(), value.toString());
    } else {
        giveReason(index.row(), value.toString());
    }
    return true;
}

Qt::ItemFlags SampleChoicesModel::flags(const QModelIndex &index) const
{
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (!index.isValid())
        return flags;
    // What follows the run has no reason of its own: one that was typed would be lost.
    const SampleChoice choice = row(index.row()).choice;
    if (index.column() == Choice || (index.column() == Reason && hasReason(choice)) ||
        (index.column() == How && choice == SampleChoice::Repeat))
        flags |= Qt::ItemIsEditable;
    return flags;
}

QVariant SampleChoicesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Sample:
        return tr("Sample");
    case Verdict:
        return tr("Verdict");
    case Choice:
        return tr("Decision");
    case Reason:
        return tr("Reason");
    case How:
        return tr("Repeat how");
    case Consequence:
        return tr("If the run is accepted");
    default:
        return {};
    }
}

std::vector<SampleChoice> offeredChoices()
{
    return {SampleChoice::AsRun, SampleChoice::Accepted, SampleChoice::Rejected, SampleChoice::Repeat};
}

} // namespace plateau::ui
