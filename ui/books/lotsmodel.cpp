// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotsmodel.h"

#include "ui/books/measurandnames.h"

#include <algorithm>
#include <tuple>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Used up ones last, then by reagent, then the one that is good for the shortest time.
auto orderOf(const planning::Lot &lot)
{
    const std::optional<QDate> last = planning::lastGoodDay(lot);
    return std::tuple(planning::isUsedUp(lot), foldedName(lot.reagent), !last.has_value(),
                      last.value_or(QDate()), lot.id);
}

int lotRank(State state)
{
    switch (state) {
    case State::Bad:
        return 0;
    case State::Attention:
        return 1;
    default:
        return 2;
    }
}

QString cellText(const LotRow &row, int column)
{
    const planning::Lot &lot = row.lot;
    switch (column) {
    case LotsModel::Reagent:
        return lot.reagent;
    case LotsModel::Lot:
        return lot.lot;
    case LotsModel::Standing:
        return row.standing.words;
    case LotsModel::Left:
        return lot.isDry ? LotsModel::tr("dry") : lotVolume(lot.remaining_mL);
    case LotsModel::UseBy: {
        const std::optional<planning::UseBy> useBy = planning::useByOf(lot);
        return useBy ? planning::useByText(*useBy) : QString();
    }
    case LotsModel::Place:
        return lot.place ? planning::placeText(*lot.place) : QString();
    default:
        return {};
    }
}

/// What a heading sorts by. What has no date keeps for ever.
QVariant sortKey(const LotRow &row, int column)
{
    const planning::Lot &lot = row.lot;
    switch (column) {
    case LotsModel::Left:
        return lot.isDry ? -1 : lot.remaining_mL;
    case LotsModel::UseBy:
        return planning::lastGoodDay(lot).value_or(QDate(9999, 12, 31));
    case LotsModel::Standing:
        // The worst first, and of those the one that ends first.
        return u"%1 %2"_s.arg(lotRank(row.standing.shape))
            .arg(planning::lastGoodDay(lot).value_or(QDate(9999, 12, 31)).toString(Qt::ISODate));
    default:
        return cellText(row, column);
    }
}

} // namespace

LotsModel::LotsModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void LotsModel::setLots(std::vector<planning::Lot> lots, const QDateTime &now,
                        const std::function<LotUse(const QString &)> &use)
{
    std::ranges::sort(lots, {}, orderOf);
    std::vector<LotRow> fresh;
    for (const planning::Lot &lot : lots)
        fresh.push_back({lot, listedStandingOf(lot, now, use(lot.reagent))});
    setRows(std::move(fresh));
}

int LotsModel::rowOf(qint64 id) const
{
    const auto found = std::ranges::find(rows(), id, [](const LotRow &row) { return row.lot.id; });
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

int LotsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant LotsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const LotRow &shown = row(index.row());
    if (role == Qt::DisplayRole)
        return cellText(shown, index.column());
    if (role == SortRole)
        return sortKey(shown, index.column());
    if (role == Qt::DecorationRole && index.column() == Standing)
        return m_theme.icon(shown.standing.shape);
    if (role == Qt::TextAlignmentRole && index.column() == Left)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant LotsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole && section == Left)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Reagent:
        return tr("Reagent");
    case Lot:
        return tr("Lot");
    case Standing:
        return tr("State");
    case Left:
        return tr("Left");
    case UseBy:
        return tr("Use by");
    case Place:
        return tr("Storage");
    default:
        return {};
    }
}

} // namespace plateau::ui
