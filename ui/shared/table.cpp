// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/table.h"

#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHeaderView>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QRegularExpression>
#include <QToolTip>

#include <algorithm>

namespace plateau::ui {

namespace {

/// In characters. A moment or a short name is never cut for the sake of others; longer words give way so far.
constexpr int shortText = 21;
constexpr int leastOfText = 16;
/// Of a table that wraps: so many rows say how long a word may be.
constexpr int mostRowsMeasured = 200;

} // namespace

Table::Table(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
             const QString &objectName, QWidget *parent)
    : QTableView(parent)
{
    setModel(model);
    setAccessibleName(accessibleName);
    setObjectName(objectName);
    setItemDelegate(new ShownNumbersDelegate(this));
    setTabKeyNavigation(false);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(SingleSelection);
    setWordWrap(false);
    setAlternatingRowColors(true);
    setShowGrid(false);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(theme.target());
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, &Table::keepWidth);
}

int Table::charactersWide(int count) const
{
    return fontMetrics().averageCharWidth() * count;
}

void Table::setFlexibleColumn(int column)
{
    m_flexible = column;
}

void Table::setFlexibleMinimum(int characters)
{
    m_flexibleMinimum = characters;
}

void Table::setLimit(int characters)
{
    m_limit = characters;
}

void Table::setWholeColumn(int column)
{
    m_whole.insert(column);
}

void Table::setWrapped()
{
    m_isWrapped = true;
    setWordWrap(true);
}

bool Table::isText(int column) const
{
    const QVariant alignment = model()->headerData(column, Qt::Horizontal, Qt::TextAlignmentRole);
    return !alignment.isValid() || !(alignment.value<Qt::Alignment>() & Qt::AlignRight);
}

/// With what else stands in its cell.
int Table::longestWord(int column) const
{
    // As a text is broken; a no-break space, and a hyphen before a figure, hold it together.
    static const QRegularExpression breaks(QStringLiteral("[ \\n]|(?<=[-/])(?=\\p{L})"));
    int longest = 0;
    const int rows = std::min(model()->rowCount(), mostRowsMeasured);
    for (int row = 0; row < rows; ++row) {
        const QModelIndex index = model()->index(row, column);
        const QString text = shownNumbers(index.data(Qt::DisplayRole).toString());
        const int beside = sizeHintForIndex(index).width() - fontMetrics().horizontalAdvance(text);
        for (const QString &word : text.split(breaks))
            longest = std::max(longest, beside + fontMetrics().horizontalAdvance(word));
    }
    return longest;
}

ColumnNeed Table::needOf(int column) const
{
    const int heading = horizontalHeader()->sectionSizeHint(column);
    ColumnNeed need;
    need.wanted = std::max(sizeHintForColumn(column), heading);
    need.usual = std::max(std::min(need.wanted, charactersWide(m_limit)), heading);
    need.least = need.usual;
    if (m_whole.contains(column)) {
        constexpr int mostOfWhole = 54;
        need.wanted = std::max(std::min(need.wanted, charactersWide(mostOfWhole)), heading);
        need.usual = need.least = need.wanted;
    } else if (column == m_flexible) {
        need.least = std::max(charactersWide(m_flexibleMinimum), heading);
        need.usual = std::max(need.usual, need.least);
        need.wanted = std::max(need.wanted, need.usual);
    } else if (m_isWrapped && isText(column)) {
        need.least = std::clamp(longestWord(column), heading, need.wanted);
        need.usual = std::max(need.usual, need.least);
    } else if (isText(column) && need.usual > charactersWide(shortText)) {
        need.least = std::max(charactersWide(leastOfText), heading);
    }
    return need;
}

void Table::fit()
{
    m_needs.clear();
    // Words that wrap would be measured as wide as the column is already.
    const bool wraps = wordWrap();
    setWordWrap(false);
    for (int column = 0; column < model()->columnCount(); ++column)
        m_needs.push_back(needOf(column));
    setWordWrap(wraps);
    layOutColumns();
}

void Table::fitWhereCut()
{
    const int last = rowAt(viewport()->height() - 1);
    const int end = last < 0 ? model()->rowCount() : last + 1;
    const int columns = std::min(model()->columnCount(), static_cast<int>(m_needs.size()));
    for (int row = std::max(0, rowAt(0)); row < end; ++row) {
        for (int column = 0; column < columns; ++column) {
            if (isColumnHidden(column) || column == m_flexible)
                continue;
            if (sizeHintForIndex(model()->index(row, column)).width() > m_needs[column].wanted) {
                fit();
                return;
            }
        }
    }
}

void Table::layOutColumns()
{
    if (static_cast<int>(m_needs.size()) != model()->columnCount()) {
        fit(); // other columns than when they were measured
        return;
    }
    std::vector<ColumnNeed> shown;
    std::vector<int> columns;
    std::size_t flexible = m_needs.size();
    for (int column = 0; column < model()->columnCount(); ++column) {
        if (isColumnHidden(column))
            continue;
        if (column == m_flexible)
            flexible = shown.size();
        shown.push_back(m_needs[column]);
        columns.push_back(column);
    }
    const std::vector<int> widths = columnWidths(shown, viewport()->width(), flexible);
    m_isLayingOut = true;
    for (std::size_t place = 0; place < widths.size(); ++place)
        setColumnWidth(columns[place], widths[place]);
    m_isLayingOut = false;
    if (m_isWrapped)
        fitRows();
}

/// Never lower than those of other tables.
void Table::fitRows()
{
    const int least = verticalHeader()->defaultSectionSize();
    for (int row = 0; row < model()->rowCount(); ++row)
        setRowHeight(row, std::max(least, sizeHintForRow(row)));
}

void Table::keepWidth(int column, int before, int now)
{
    const bool isByHand = !m_isLayingOut && before > 0 && now > 0; // else it was hidden or shown
    if (isByHand && column < static_cast<int>(m_needs.size()))
        m_needs[column] = {now, now, now};
}

void Table::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    if (model()->columnCount() > m_flexible)
        layOutColumns();
}

void Table::keyPressEvent(QKeyEvent *event)
{
    const bool isUp = event->key() == Qt::Key_Up;
    if (!isSortingEnabled() || event->modifiers() != Qt::AltModifier || (!isUp && event->key() != Qt::Key_Down)) {
        QTableView::keyPressEvent(event);
        return;
    }
    QHeaderView *header = horizontalHeader();
    const int column = std::max(0, currentIndex().column());
    const Qt::SortOrder order = isUp ? Qt::DescendingOrder : Qt::AscendingOrder;
    const bool isAgain = header->sortIndicatorSection() == column && header->sortIndicatorOrder() == order;
    header->setSortIndicator(isAgain ? -1 : column, order);
}

bool Table::viewportEvent(QEvent *event)
{
    if (event->type() != QEvent::ToolTip)
        return QTableView::viewportEvent(event);
    const auto *help = static_cast<QHelpEvent *>(event);
    const QModelIndex index = indexAt(help->pos());
    QString words = index.data(Qt::ToolTipRole).toString();
    if (words.isEmpty() && index.isValid() && sizeHintForIndex(index).width() > columnWidth(index.column()))
        words = index.data(Qt::DisplayRole).toString();
    QToolTip::showText(help->globalPos(), words.isEmpty() ? QString() : tipText(shownNumbers(words)), this);
    return true;
}

} // namespace plateau::ui
