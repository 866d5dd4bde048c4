// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/shelfpaste.h"

#include "core/assay/label.h"
#include "ui/books/delimited.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <optional>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ShelfPasteWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ShelfPaste)
};

/// What a column holds: one of shelf::Column, or what is expected of a measurand.
struct Meaning {
    int column = shelf::Id;
    QString measurand;
};
using Meanings = std::vector<std::optional<Meaning>>;

const std::vector<int> &usualOrder()
{
    // As they stand in the table.
    static const std::vector<int> order{shelf::Id,       shelf::Product, shelf::Matrix,  shelf::Form,
                                        shelf::Received, shelf::From,    shelf::Expected};
    return order;
}

/// Other heads than the column's own name.
QStringList otherHeads(int column)
{
    switch (column) {
    case shelf::Id:
        return {ShelfPasteWords::tr("id"), ShelfPasteWords::tr("sample id"), ShelfPasteWords::tr("samples"),
                ShelfPasteWords::tr("name")};
    case shelf::Received:
        return {ShelfPasteWords::tr("received at"), ShelfPasteWords::tr("received on"),
                ShelfPasteWords::tr("date")};
    case shelf::From:
        return {ShelfPasteWords::tr("from"), ShelfPasteWords::tr("sender"), ShelfPasteWords::tr("supplier")};
    default:
        return {};
    }
}

std::optional<Meaning> meaningOf(const QString &head, const MeasurandNames &measurands)
{
    static const QRegularExpression unit(u"\\s*[(\\[][^()\\[\\]]*[)\\]]$"_s);
    const QString wanted = foldedName(head);
    for (int column = 0; column < shelf::ColumnCount; ++column) {
        QStringList heads = otherHeads(column);
        heads << shelfColumnName(column);
        if (std::ranges::any_of(heads, [&](const QString &each) { return foldedName(each) == wanted; }))
            return Meaning{column, {}};
    }
    const QString name = QString(head).remove(unit);
    if (!name.isEmpty() && !measurands.idsOf(name).empty())
        return Meaning{shelf::Expected, name};
    return std::nullopt;
}

bool isIdColumn(const std::optional<Meaning> &meaning)
{
    return meaning && meaning->column == shelf::Id;
}

Meanings meaningsOfHeads(const QStringList &heads, const MeasurandNames &measurands)
{
    Meanings meanings;
    for (const QString &head : heads) {
        const std::optional<Meaning> meaning = meaningOf(head, measurands);
        // Of two columns of one name the first counts; amounts add up to a list.
        const bool again = std::ranges::any_of(meanings, [&](const std::optional<Meaning> &other) {
            return meaning && other && meaning->column == other->column &&
                   meaning->measurand == other->measurand;
        });
        meanings.push_back(again ? std::nullopt : meaning);
    }
    return meanings;
}

Meanings meaningsByOrder(const std::vector<DelimitedLine> &lines)
{
    qsizetype columns = 0;
    for (const DelimitedLine &line : lines)
        columns = std::max(columns, line.cells.size());
    Meanings meanings(static_cast<std::size_t>(columns));
    for (std::size_t i = 0; i < std::min(meanings.size(), usualOrder().size()); ++i)
        meanings[i] = Meaning{usualOrder()[i], {}};
    return meanings;
}

std::vector<QString> cellsOf(const DelimitedLine &line, const Meanings &meanings)
{
    std::vector<QString> cells(shelf::ColumnCount);
    for (std::size_t i = 0; i < meanings.size(); ++i) {
        const QString text = line.cells.value(static_cast<qsizetype>(i));
        if (!meanings[i] || text.isEmpty())
            continue;
        QString &cell = cells[static_cast<std::size_t>(meanings[i]->column)];
        const QString said =
            meanings[i]->measurand.isEmpty() ? text : u"%1 %2"_s.arg(meanings[i]->measurand, text);
        cell = cell.isEmpty() ? said : u"%1; %2"_s.arg(cell, said);
    }
    return cells;
}

QString meaningText(const Meaning &meaning)
{
    return meaning.measurand.isEmpty() ? shelfColumnName(meaning.column)
                                       : ShelfPasteWords::tr("%1 expected").arg(meaning.measurand);
}

QString understoodText(qsizetype lines, const Meanings &meanings, bool byHeads)
{
    QStringList parts;
    for (std::size_t i = 0; i < meanings.size(); ++i) {
        if (meanings[i])
            parts << u"%1 = %2"_s.arg(QString::number(i + 1), meaningText(*meanings[i]));
    }
    const QString columns = parts.join(ShelfPasteWords::tr(", "));
    const QString samples = ShelfPasteWords::tr("Lines pasted: %1").arg(lines);
    return byHeads ? ShelfPasteWords::tr("%1. Columns by their heads: %2.").arg(samples, columns)
                   : ShelfPasteWords::tr("%1. Columns by their order: %2.").arg(samples, columns);
}

QString leftOutText(const Meanings &meanings, const QStringList &heads)
{
    QStringList parts;
    for (std::size_t i = 0; i < meanings.size(); ++i) {
        const QString head = heads.value(static_cast<qsizetype>(i));
        if (!meanings[i])
            parts << (head.isEmpty() ? QString::number(i + 1)
                                     : u"%1 %2"_s.arg(QString::number(i + 1), assay::quoted(head)));
    }
    if (parts.isEmpty())
        return {};
    return ShelfPasteWords::tr("Not understood and left out: column %1.")
        .arg(parts.join(ShelfPasteWords::tr(", ")));
}

} // namespace

QString pastedOrder()
{
    QStringList names;
    for (const int column : usualOrder())
        names << shelfColumnName(column);
    return names.join(ShelfPasteWords::tr(", "));
}

PastedSamples readPasted(const QString &text, const MeasurandNames &measurands)
{
    PastedSamples pasted;
    std::vector<DelimitedLine> lines = splitDelimited(text);
    if (lines.empty()) {
        pasted.understood =
            ShelfPasteWords::tr("There is no text to paste. Copy the cells in the spreadsheet first.");
        return pasted;
    }
    Meanings meanings = meaningsOfHeads(lines.front().cells, measurands);
    const bool byHeads = std::ranges::any_of(meanings, isIdColumn);
    const QStringList heads = byHeads ? lines.front().cells : QStringList();
    if (byHeads)
        lines.erase(lines.begin());
    else
        meanings = meaningsByOrder(lines);
    if (lines.size() > mostPastedLines) {
        pasted.understood = ShelfPasteWords::tr("%1 lines are more than are taken at once; paste at most %2.")
                                .arg(lines.size())
                                .arg(mostPastedLines);
        return pasted;
    }
    for (const DelimitedLine &line : lines)
        pasted.rows.push_back(cellsOf(line, meanings));
    pasted.understood = understoodText(static_cast<qsizetype>(lines.size()), meanings, byHeads);
    pasted.leftOut = leftOutText(meanings, heads);
    return pasted;
}

} // namespace plateau::ui
