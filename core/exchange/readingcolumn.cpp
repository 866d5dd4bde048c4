// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readingcolumn.h"

#include "core/evaluation/format.h"
#include "core/exchange/celllines.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

struct ReadingColumnWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::ReadingColumn)
};

constexpr std::pair<Delimiter, QLatin1StringView> words[] = {{Delimiter::Tab, "tab"_L1},
                                                             {Delimiter::Semicolon, "semicolon"_L1},
                                                             {Delimiter::Comma, "comma"_L1},
                                                             {Delimiter::Blanks, "blanks"_L1}};

/// Cuts the text at LF, CR and CRLF.
std::vector<QString> linesOf(const QString &text)
{
    std::vector<QString> lines;
    qsizetype start = 0;
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i] != u'\n' && text[i] != u'\r')
            continue;
        lines.push_back(text.mid(start, i - start));
        if (text[i] == u'\r' && i + 1 < text.size() && text[i + 1] == u'\n')
            ++i;
        start = i + 1;
    }
    lines.push_back(text.mid(start));
    while (!lines.empty() && lines.back().trimmed().isEmpty())
        lines.pop_back();
    return lines;
}

class RowReader
{
public:
    explicit RowReader(const ColumnMapping &mapping)
        : m_mapping(mapping)
    {
    }

    ColumnRow read(int number, const QString &line) const
    {
        ColumnRow row;
        row.line = number;
        row.raw = line;
        if (number <= m_mapping.headerLines)
            return leftOut(row, ReadingColumnWording::tr("Heading"));
        if (line.trimmed().isEmpty() && m_mapping.leavesOutBlankLines)
            return leftOut(row, ReadingColumnWording::tr("Left out: empty"));
        if (line.trimmed().isEmpty())
            return fault(row, 0,
                         ReadingColumnWording::tr("The line is empty; fill it in or leave out empty lines."));
        const CellLine cells = cellsOf(line, m_mapping.delimiter);
        if (!cells.fault.isEmpty())
            return fault(row, static_cast<int>(cells.cells.size()) + 1, cells.fault);
        if (m_mapping.tubeColumn > 0 && !takeTube(row, cells))
            return row;
        return takeAbsorbance(std::move(row), cells);
    }

private:
    static ColumnRow leftOut(ColumnRow row, const QString &why)
    {
        row.kind = ColumnRow::Kind::LeftOut;
        row.sentence = why;
        return row;
    }

    static ColumnRow fault(ColumnRow row, int column, const QString &whole)
    {
        const QString sentence = evaluation::afterColon(whole);
        row.kind = ColumnRow::Kind::Fault;
        row.sentence =
            column > 0
                ? ReadingColumnWording::tr("line %1, column %2: %3").arg(row.line).arg(column).arg(sentence)
                : ReadingColumnWording::tr("line %1: %2").arg(row.line).arg(sentence);
        return row;
    }

    /// The cell; nothing, and the row says why, if there is none.
    static std::optional<QString> cell(ColumnRow &row, const CellLine &cells, int column)
    {
        if (cells.cells.size() < column) {
            row = fault(row, column,
                        ReadingColumnWording::tr("The line ends with column %1.").arg(cells.cells.size()));
            return std::nullopt;
        }
        QString text = cells.cells[column - 1].trimmed();
        if (!text.isEmpty())
            return text;
        row = fault(row, column, ReadingColumnWording::tr("The cell is empty."));
        return std::nullopt;
    }

    bool takeTube(ColumnRow &row, const CellLine &cells) const
    {
        row.tube = cell(row, cells, m_mapping.tubeColumn);
        return row.tube.has_value();
    }

    ColumnRow takeAbsorbance(ColumnRow row, const CellLine &cells) const
    {
        const auto text = cell(row, cells, m_mapping.absorbanceColumn);
        if (!text)
            return row;
        const QByteArray utf8 = text->toUtf8();
        const auto value = parseReading(
            std::string_view(utf8.constData(), static_cast<std::size_t>(utf8.size())), m_mapping.decimal);
        if (const QString *why = std::get_if<QString>(&value))
            return fault(std::move(row), m_mapping.absorbanceColumn, *why);
        row.absorbance = std::get<double>(value);
        return row;
    }

    const ColumnMapping &m_mapping;
};

int countOf(const std::vector<ColumnRow> &rows, ColumnRow::Kind kind)
{
    return static_cast<int>(std::ranges::count(rows, kind, &ColumnRow::kind));
}

ReadingColumn refusedColumn(const QString &sentence)
{
    return {{}, sentence};
}

} // namespace

QString wordOf(Delimiter delimiter)
{
    return std::ranges::find(words, delimiter, &std::pair<Delimiter, QLatin1StringView>::first)->second;
}

std::optional<Delimiter> delimiterFromWord(const QString &word)
{
    for (const auto &[delimiter, known] : words) {
        if (word == known)
            return delimiter;
    }
    return std::nullopt;
}

QString faultOf(const ColumnMapping &mapping)
{
    if (mapping.absorbanceColumn < 1 || mapping.absorbanceColumn > mostColumns)
        return ReadingColumnWording::tr("The column of the absorbance must be from 1 to %1.")
            .arg(mostColumns);
    if (mapping.tubeColumn < 0 || mapping.tubeColumn > mostColumns)
        return ReadingColumnWording::tr("The column of the tube must be from 1 to %1, or none.")
            .arg(mostColumns);
    if (mapping.tubeColumn == mapping.absorbanceColumn)
        return ReadingColumnWording::tr("Tube and absorbance cannot be in the same column.");
    if (mapping.headerLines < 0 || mapping.headerLines > mostHeaderLines)
        return ReadingColumnWording::tr("A heading has 0 to %1 lines.").arg(mostHeaderLines);
    if (mapping.delimiter == Delimiter::Comma && mapping.decimal != DecimalSign::Point)
        return ReadingColumnWording::tr(
            "Where commas separate the columns, the decimal mark has to be the point.");
    return {};
}

int ReadingColumn::readings() const
{
    return countOf(rows, ColumnRow::Kind::Reading);
}

int ReadingColumn::faults() const
{
    return countOf(rows, ColumnRow::Kind::Fault);
}

ReadingColumn readColumn(const QString &text, const ColumnMapping &mapping)
{
    if (text.size() > longestColumnText)
        return refusedColumn(
            ReadingColumnWording::tr("The text is longer than %1 million characters, the most that is read.")
                .arg(longestColumnText / 1000000));
    const std::vector<QString> lines = linesOf(text);
    if (lines.empty())
        return refusedColumn(ReadingColumnWording::tr("There is nothing in the text."));
    if (lines.size() > static_cast<std::size_t>(mostReadings + mapping.headerLines))
        return refusedColumn(
            ReadingColumnWording::tr("The text has %1 lines; at most %2 readings are taken at a time.")
                .arg(lines.size())
                .arg(mostReadings));
    ReadingColumn column;
    const RowReader reader(mapping);
    for (const QString &line : lines)
        column.rows.push_back(reader.read(static_cast<int>(column.rows.size()) + 1, line));
    return column;
}

std::vector<ColumnRow> readingsOf(const ReadingColumn &column, const ColumnMapping &mapping)
{
    std::vector<ColumnRow> readings;
    if (!column.isAccepted())
        return readings;
    std::ranges::copy_if(column.rows, std::back_inserter(readings),
                         [](const ColumnRow &row) { return row.kind == ColumnRow::Kind::Reading; });
    if (mapping.isReversed)
        std::ranges::reverse(readings);
    return readings;
}

Delimiter likelyDelimiter(const QString &text)
{
    return !text.contains(u'\t') && text.contains(u';') ? Delimiter::Semicolon : Delimiter::Tab;
}

} // namespace plateau::exchange
