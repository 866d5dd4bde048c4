// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/standardsmodel.h"

#include "core/evaluation/format.h"
#include "ui/shared/widgets.h"

#include <algorithm>

namespace plateau::ui {

StandardsModel::StandardsModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void StandardsModel::setPreparations(const std::vector<planning::HeldPreparation> &all, const QDateTime &now)
{
    std::vector<const planning::HeldPreparation *> order;
    for (const planning::HeldPreparation &held : all)
        order.push_back(&held);
    std::ranges::stable_sort(order, std::greater(), [&now](const planning::HeldPreparation *held) {
        return planning::isAlive(*held, now);
    });
    std::vector<StandardRow> fresh;
    for (const planning::HeldPreparation *held : order)
        fresh.push_back({held->id, held->preparation.name, strengthNowText(*held, now),
                         standingOf(*held, now),
                         strengthText(planning::strengthOf(held->of, held->preparation)),
                         momentText(held->preparation.madeAt), held->of.name, held->person});
    setRows(std::move(fresh));
}

int StandardsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant StandardsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const StandardRow &shown = row(index.row());
    if (role == Qt::DecorationRole && index.column() == Standing)
        return m_theme.icon(shown.standing.shape);
    if (role == Qt::TextAlignmentRole && (index.column() == Now || index.column() == Made))
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case Name:
        return shown.name;
    case Now:
        return shown.strengthNow;
    case Standing:
        return evaluation::capitalised(shown.standing.words);
    case Made:
        return shown.strengthMade;
    case MadeAt:
        return shown.madeAt;
    case Substance:
        return shown.substance;
    default:
        return shown.person;
    }
}

QVariant StandardsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole && (section == Now || section == Made))
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Name:
        return tr("Name");
    case Now:
        return tr("Strength now");
    case Standing:
        return tr("State");
    case Made:
        return tr("Strength when made (k = 2)");
    case MadeAt:
        return tr("Made");
    case Substance:
        return tr("Made of");
    default:
        return tr("By");
    }
}

} // namespace plateau::ui
