// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/equipmentmodel.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "ui/books/equipmentwords.h"

#include <algorithm>

namespace plateau::ui {

EquipmentModel::EquipmentModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void EquipmentModel::setItems(const std::vector<equipment::HeldItem> &items, const QDate &today)
{
    std::vector<std::pair<equipment::AspectStanding, EquipmentRow>> rows;
    for (const equipment::HeldItem &held : items) {
        const equipment::AspectStanding standing = equipment::standingOf(held, today);
        rows.push_back({standing,
                        {held.id, held.item.name, equipment::kindName(held.item.kind), sizeText(held.item),
                         stateOf(standing.standing), equipment::standingText(standing, today),
                         standing.due ? assay::shownDay(*standing.due) : QString(), held.item.number}});
    }
    std::ranges::stable_sort(rows, [](const auto &one, const auto &other) {
        if (one.first.standing != other.first.standing)
            return one.first.standing > other.first.standing;
        if (one.first.due != other.first.due)
            return one.first.due < other.first.due;
        return one.second.name.compare(other.second.name, Qt::CaseInsensitive) < 0;
    });
    std::vector<EquipmentRow> fresh;
    for (auto &[standing, row] : rows)
        fresh.push_back(std::move(row));
    setRows(std::move(fresh));
}

int EquipmentModel::rowOf(qint64 id) const
{
    const auto found = std::ranges::find(rows(), id, &EquipmentRow::id);
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

int EquipmentModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant EquipmentModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const EquipmentRow &shown = row(index.row());
    if (role == Qt::DecorationRole && index.column() == Standing)
        return m_theme.icon(shown.shape);
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case Name:
        return shown.name;
    case Kind:
        return evaluation::capitalised(shown.kind);
    case Standing:
        return evaluation::capitalised(shown.standing);
    case Due:
        return shown.due;
    case Size:
        return shown.size;
    default:
        return shown.number;
    }
}

QVariant EquipmentModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Name:
        return tr("Name");
    case Kind:
        return tr("What it is");
    case Standing:
        return tr("State");
    case Due:
        return tr("Next check due");
    case Size:
        return tr("Volume");
    default:
        return tr("Serial number");
    }
}

} // namespace plateau::ui
