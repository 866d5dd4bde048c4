// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/celllines.h"

#include <QCoreApplication>

namespace plateau::exchange {

namespace {

struct CellLinesWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::CellLines)
};

class CellCutter
{
public:
    CellCutter(const QString &line, Delimiter delimiter)
        : m_line(delimiter == Delimiter::Blanks ? line.trimmed() : line)
        , m_delimiter(delimiter)
    {
    }

    CellLine cut()
    {
        CellLine result;
        do {
            if (result.cells.size() == mostColumns)
                result.fault = CellLinesWording::tr("The line has more than %1 columns.").arg(mostColumns);
            else if (const auto cell = takeCell(); !cell)
                result.fault = CellLinesWording::tr("A quotation mark has no partner in the line.");
            else if (cell->size() > longestCell)
                result.fault =
                    CellLinesWording::tr("The cell is longer than %1 characters.").arg(longestCell);
            else
                result.cells << *cell;
        } while (result.fault.isEmpty() && takeDelimiter());
        return result;
    }

private:
    bool isDelimiter(QChar sign) const
    {
        switch (m_delimiter) {
        case Delimiter::Tab:
            return sign == u'\t';
        case Delimiter::Semicolon:
            return sign == u';';
        case Delimiter::Comma:
            return sign == u',';
        case Delimiter::Blanks:
            return sign.isSpace();
        }
        return false;
    }

    /// Up to the next delimiter that does not stand in quotation marks; nothing if one has no partner.
    std::optional<QString> takeCell()
    {
        QString cell;
        bool quoted = false;
        for (; m_at < m_line.size(); ++m_at) {
            const QChar sign = m_line[m_at];
            if (quoted && sign == u'"' && m_at + 1 < m_line.size() && m_line[m_at + 1] == u'"') {
                cell += sign;
                ++m_at;
            } else if (sign == u'"' && (quoted || cell.trimmed().isEmpty())) {
                quoted = !quoted;
            } else if (!quoted && isDelimiter(sign)) {
                break;
            } else {
                cell += sign;
            }
        }
        return quoted ? std::nullopt : std::optional(cell);
    }

    bool takeDelimiter()
    {
        if (m_at >= m_line.size())
            return false;
        ++m_at;
        while (m_delimiter == Delimiter::Blanks && m_at < m_line.size() && isDelimiter(m_line[m_at]))
            ++m_at;
        return true;
    }

    QString m_line;
    Delimiter m_delimiter;
    qsizetype m_at = 0;
};

} // namespace

CellLine cellsOf(const QString &line, Delimiter delimiter)
{
    return CellCutter(line, delimiter).cut();
}

} // namespace plateau::exchange
