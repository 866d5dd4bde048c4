// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/shelfmodel.h"

#include "ui/bench/waitingwords.h"
#include "ui/books/shelfdraft.h"
#include "ui/shared/matrixtext.h"
#include "ui/shared/widgets.h"

namespace plateau::ui {

namespace {

ShelfRow rowOf(const notebook::WaitingSample &waiting, const MeasurandNames &measurands)
{
    const planning::ShelfSample &sample = waiting.sample;
    return {sample.id,
            sample.product,
            waiting.repeat ? State::Attention : State::Pending,
            whyItWaits(waiting),
            expectedText(sample, measurands, true),
            matrixText(sample.matrix),
            exchange::dayOrMomentText(sample.receivedAt.value_or(QDateTime())),
            sample.receivedFrom};
}

QString cellText(const ShelfRow &row, int column)
{
    switch (column) {
    case ShelfModel::Sample:
        return row.sample;
    case ShelfModel::Product:
        return row.product;
    case ShelfModel::Why:
        return row.why;
    case ShelfModel::Expected:
        return row.expected;
    case ShelfModel::Matrix:
        return row.matrix;
    case ShelfModel::Received:
        return row.received;
    case ShelfModel::From:
        return row.from;
    default:
        return {};
    }
}

} // namespace

ShelfModel::ShelfModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void ShelfModel::setWaiting(std::vector<notebook::WaitingSample> waiting, const MeasurandNames &measurands)
{
    m_waiting = std::move(waiting);
    std::vector<ShelfRow> fresh;
    for (const notebook::WaitingSample &each : m_waiting)
        fresh.push_back(rowOf(each, measurands));
    setRows(std::move(fresh));
}

int ShelfModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant ShelfModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == Qt::DisplayRole)
        return cellText(row(index.row()), index.column());
    if (role == Qt::DecorationRole && index.column() == Why)
        return m_theme.icon(row(index.row()).shape);
    return {};
}

QVariant ShelfModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    if (section == Why)
        return tr("Why it waits");
    switch (section) {
    case Sample:
        return shelfColumnName(shelf::Id);
    case Product:
        return shelfColumnName(shelf::Product);
    case Expected:
        return shelfColumnName(shelf::Expected);
    case Matrix:
        return shelfColumnName(shelf::Matrix);
    case Received:
        return shelfColumnName(shelf::Received);
    case From:
        return shelfColumnName(shelf::From);
    default:
        return {};
    }
}

} // namespace plateau::ui
