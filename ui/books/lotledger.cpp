// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotledger.h"

#include "ui/books/lotwords.h"
#include "ui/shared/widgets.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// With its sign, also where it adds.
QString changeText(double change_mL)
{
    const QString amount = lotVolume(std::abs(change_mL));
    return change_mL < 0 ? u"\u2212%1"_s.arg(amount) : u"+%1"_s.arg(amount);
}

QVariant rightAligned()
{
    return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
}

} // namespace

void LedgerModel::setMovements(const std::vector<notebook::LotMovement> &movements)
{
    std::vector<LedgerRow> fresh;
    for (const notebook::LotMovement &movement : movements)
        fresh.push_back({momentText(movement.at), movementText(movement.kind),
                         movement.change_mL == 0 ? QString() : changeText(movement.change_mL), movement.note,
                         movement.person});
    setRows(std::move(fresh));
}

int LedgerModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant LedgerModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == Qt::TextAlignmentRole && index.column() == Change)
        return rightAligned();
    if (role != Qt::DisplayRole)
        return {};
    const LedgerRow &shown = row(index.row());
    switch (index.column()) {
    case At:
        return shown.at;
    case What:
        return shown.what;
    case Change:
        return shown.change;
    case Note:
        return shown.note;
    case Person:
        return shown.person;
    default:
        return {};
    }
}

QVariant LedgerModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole && section == Change)
        return rightAligned();
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case At:
        return tr("When");
    case What:
        return tr("What");
    case Change:
        return tr("Volume");
    case Note:
        return tr("Note");
    case Person:
        return tr("Person");
    default:
        return {};
    }
}

void TakingsModel::setTakings(const std::vector<notebook::LotTaking> &takings)
{
    std::vector<TakingRow> fresh;
    for (const notebook::LotTaking &taking : takings)
        fresh.push_back({taking.run, momentText(taking.begun), taking.title, lotVolume(taking.volume_mL),
                         taking.tubes, taking.through});
    setRows(std::move(fresh));
}

int TakingsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant TakingsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == Qt::TextAlignmentRole && (index.column() == Volume || index.column() == Tubes))
        return rightAligned();
    if (role != Qt::DisplayRole)
        return {};
    const TakingRow &shown = row(index.row());
    switch (index.column()) {
    case Begun:
        return shown.begun;
    case Title:
        return shown.title;
    case Volume:
        return shown.volume;
    case Tubes:
        return QString::number(shown.tubes);
    case Through:
        return shown.through;
    default:
        return {};
    }
}

QVariant TakingsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole && (section == Volume || section == Tubes))
        return rightAligned();
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Begun:
        return tr("Started");
    case Title:
        return tr("Run");
    case Volume:
        return tr("Volume");
    case Tubes:
        return tr("Tubes");
    case Through:
        return tr("By way of");
    default:
        return {};
    }
}

} // namespace plateau::ui
