// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/historymodel.h"

#include "ui/bench/places.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <algorithm>

namespace plateau::ui {

namespace {

bool isCorrected(const notebook::StoredRun &stored, const notebook::StoredReading &reading)
{
    return std::any_of(stored.readings.begin(), stored.readings.end(), [&reading](const auto &other) {
        return other.corrects == reading.id && !other.again;
    });
}

const QString &text(const HistoryRow &row, int column)
{
    switch (column) {
    case HistoryModel::Reading:
        return row.reading;
    case HistoryModel::Absorbance:
        return row.absorbance;
    case HistoryModel::Typed:
        return row.typed;
    case HistoryModel::Person:
        return row.person;
    case HistoryModel::At:
        return row.at;
    case HistoryModel::Reason:
        return row.reason;
    default:
        return row.tube;
    }
}

} // namespace

HistoryModel::HistoryModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void HistoryModel::show(const notebook::StoredRun &stored)
{
    std::vector<notebook::StoredReading> readings = stored.readings;
    std::stable_sort(readings.begin(), readings.end(), [](const auto &one, const auto &other) {
        return one.tube == other.tube ? one.reading < other.reading : one.tube < other.tube;
    });
    std::vector<HistoryRow> fresh;
    for (const notebook::StoredReading &reading : readings) {
        HistoryRow row;
        row.corrected = isCorrected(stored, reading);
        row.tube = tr("%1: %2").arg(reading.tube + 1).arg(contentsText(stored.run, reading.tube));
        row.reading = reading.reading;
        const QString value = readingText(reading.value);
        row.absorbance = row.corrected ? tr("%1, corrected").arg(value) : value;
        row.typed = reading.typed.isEmpty() ? tr("from a file") : reading.typed;
        if (!reading.origin.line.isEmpty())
            row.typed = tr("%1 of the line “%2”").arg(row.typed, reading.origin.line);
        row.person = reading.person;
        row.at = momentText(reading.at);
        row.reason = reading.again ? tr("read again") : reading.reason;
        fresh.push_back(std::move(row));
    }
    setRows(std::move(fresh));
}

bool HistoryModel::hasReasons() const
{
    return std::any_of(rows().begin(), rows().end(), [](const auto &row) { return !row.reason.isEmpty(); });
}

int HistoryModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant HistoryModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const HistoryRow &shown = row(index.row());
    if (role == Qt::DisplayRole)
        return text(shown, index.column());
    if (role == Qt::FontRole && shown.corrected && index.column() == Absorbance) {
        QFont font;
        font.setStrikeOut(true);
        return font;
    }
    if (role == Qt::ForegroundRole && shown.corrected)
        return m_theme.mutedText();
    return {};
}

QVariant HistoryModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Tube:
        return tr("Tube");
    case Reading:
        return tr("Point");
    case Absorbance:
        return tr("Absorbance");
    case Typed:
        return tr("As keyed");
    case Person:
        return tr("Person");
    case At:
        return tr("Time");
    case Reason:
        return tr("Reason");
    default:
        return {};
    }
}

} // namespace plateau::ui
