// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/table.h"

#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"
#include "ui/shared/wrappedheader.h"

#include <QHeaderView>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QRegularExpression>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <numeric>

namespace plateau::ui {

namespace {

/// In characters. A moment or a short name is never cut for the sake of others; longer words give way so far.
constexpr int shortText = 21;
constexpr int leastOfText = 16;
/// Of a column whose words wrap: a longer word is cut all the same.
constexpr int longestWord = 30;
/// That the scroll bar may leave while nothing else changes.
constexpr int mostTimesBarLeaves = 8;

} // namespace

Table::Table(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
             const QString &objectName, QWidget *parent)
    : QTableView(parent)
    , m_wrappedHeader(new WrappedHeader(this))
    , m_oneLine(theme.target())
    , m_aroundLines(theme.gap())
{
    setHorizontalHeader(m_wrappedHeader);
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
    verticalHeader()->setDefaultSectionSize(m_oneLine);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    // The engine's own least is that of its widest letter, which a column of two figures need not be.
    horizontalHeader()->setMinimumSectionSize(theme.gap());
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, &Table::keepWidth);
    m_rowsLater.setSingleShot(true);
    m_rowsLater.setInterval(0);
    connect(&m_rowsLater, &QTimer::timeout, this, &Table::layOutRows);
    m_fitLater.setSingleShot(true);
    m_fitLater.setInterval(0);
    connect(&m_fitLater, &QTimer::timeout, this, &Table::fit);
    m_followLater.setSingleShot(true);
    m_followLater.setInterval(0);
    connect(&m_followLater, &QTimer::timeout, this, [this] { scrollTo(currentIndex()); });
    connect(model, &QAbstractItemModel::rowsInserted, this, &Table::layOutRowsLater);
    connect(model, &QAbstractItemModel::rowsInserted, this,
            [this](const QModelIndex &, int first, int last) { fitWhereWholeIsCut(first, last); });
    connect(model, &QAbstractItemModel::rowsRemoved, this, &Table::layOutRowsLater); // few again
    connect(model, &QAbstractItemModel::rowsMoved, this, &Table::layOutRowsLater);
    connect(model, &QAbstractItemModel::dataChanged, this, &Table::layOutRowsLater);
    connect(model, &QAbstractItemModel::layoutChanged, this, &Table::layOutRowsLater);
    connect(model, &QAbstractItemModel::modelReset, this, &Table::layOutRowsLater);
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

void Table::setEqualColumns(int from)
{
    m_equalFrom = from;
}

void Table::setLimit(int characters)
{
    m_limit = characters;
}

void Table::setWholeColumn(int column)
{
    m_whole.insert(column);
}

void Table::setNameColumn(int column)
{
    m_names = column;
}

void Table::setWrap(Wrap wrap)
{
    m_wrap = wrap;
    setWordWrap(wrap != Wrap::Never);
    if (wrap != Wrap::Never)
        setHeadingsWrap();
    verticalHeader()->setDefaultSectionSize(linesHigh(wrap == Wrap::TwoLines ? 2 : 1));
}

void Table::setMayBeWider()
{
    m_mayBeWider = true;
}

void Table::setHeadingsWrap()
{
    m_doHeadingsWrap = true;
}

void Table::layOutRowsLater()
{
    if (m_wrap != Wrap::AsNeeded)
        return;
    m_areRowsStale = true;
    m_timesBarLeft = 0;
    m_rowsLater.start();
}

bool Table::wraps(int column) const
{
    return isText(column) && (m_wrap == Wrap::TwoLines || (m_wrap == Wrap::AsNeeded && !m_whole.contains(column)));
}

bool Table::isText(int column) const
{
    const QVariant alignment = model()->headerData(column, Qt::Horizontal, Qt::TextAlignmentRole);
    return !alignment.isValid() || !(alignment.value<Qt::Alignment>() & Qt::AlignRight);
}

ColumnNeed Table::needOf(int column) const
{
    const int cells = sizeHintForColumn(column);
    const int heading = m_wrappedHeader->inOneLine(column);
    const int usualHeading = m_doHeadingsWrap ? m_wrappedHeader->inTwoLines(column) : heading;
    const int leastHeading = m_doHeadingsWrap ? m_wrappedHeader->narrowest(column) : heading;
    const bool isShort = cells <= charactersWide(shortText);
    ColumnNeed need;
    need.isFirst = column == m_names;
    need.wanted = std::max(cells, heading);
    need.usual = std::max(std::min(cells, charactersWide(m_limit)), usualHeading);
    need.least = std::max(std::min(cells, charactersWide(m_limit)), leastHeading);
    if (m_whole.contains(column)) {
        constexpr int mostOfWhole = 54;
        const int whole = wraps(column) && !isShort ? m_narrow[column].twoLines : cells;
        need.least = std::max(std::min(whole, charactersWide(mostOfWhole)), leastHeading);
        need.usual = std::max(need.least, usualHeading);
        need.wanted = wraps(column) ? std::max(need.wanted, need.usual) : need.usual;
    } else if (wraps(column)) {
        const int word = std::min(m_narrow[column].word, std::max(charactersWide(longestWord), leastHeading));
        need.least = isShort                ? std::max(cells, leastHeading)
                     : column == m_flexible ? std::max(word, charactersWide(m_flexibleMinimum))
                                            : word;
        need.usual = std::max({std::min(m_narrow[column].twoLines, charactersWide(m_limit)), need.least, usualHeading});
        need.wanted = std::max(need.wanted, need.usual);
    } else if (column == m_flexible) {
        need.least = std::max(charactersWide(m_flexibleMinimum), leastHeading);
        need.usual = std::max(need.usual, need.least);
        need.wanted = std::max(need.wanted, need.usual);
    } else if (isText(column) && need.usual > charactersWide(shortText)) {
        need.least = std::max(charactersWide(leastOfText), leastHeading);
    }
    return need;
}

Table::Narrow Table::narrowOf(int column) const
{
    const int margin = style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, this) + 1;
    const int icon = style()->pixelMetric(QStyle::PM_SmallIconSize, nullptr, this) + 2 * margin;
    const int tick = style()->pixelMetric(QStyle::PM_IndicatorWidth, nullptr, this) + 2 * margin;
    // As a text is broken: a no-break space, and a hyphen before a figure, hold it together.
    static const QRegularExpression breaks(QStringLiteral("[ \\n]|(?<=[-/])(?=\\p{L})"));
    Narrow narrow;
    for (int row = 0; row < std::min(model()->rowCount(), mostMeasured); ++row) {
        const QModelIndex index = model()->index(row, column);
        const QString text = unbroken(shownNumbers(index.data().toString()));
        const int beside = (index.data(Qt::DecorationRole).isValid() ? icon : 0) +
                           (index.data(Qt::CheckStateRole).isValid() ? tick : 0);
        const QFontMetrics metrics = metricsOf(index);
        const int widestLetter = 2 * metrics.averageCharWidth(); // few words have to be measured then
        for (const QString &word : text.split(breaks)) {
            if (static_cast<int>(word.size()) * widestLetter + beside > narrow.word)
                narrow.word = std::max(narrow.word, metrics.horizontalAdvance(word) + beside);
        }
        if (metrics.horizontalAdvance(text) + beside > narrow.twoLines)
            narrow.twoLines = std::max(narrow.twoLines, widerHalf(text, metrics) + beside);
    }
    const int around = 2 * margin + 2; // lines are broken by fractions of a pixel, and each counts
    return {std::max(narrow.word + around, m_wrappedHeader->narrowest(column)),
            std::max(narrow.twoLines + around, m_wrappedHeader->inTwoLines(column))};
}

QFontMetrics Table::metricsOf(const QModelIndex &index) const
{
    const QVariant own = index.data(Qt::FontRole);
    return own.isValid() ? QFontMetrics(own.value<QFont>().resolve(font())) : fontMetrics();
}

void Table::fit()
{
    m_fitLater.stop();
    m_needs.clear();
    m_narrow.clear();
    // Words that wrap would be measured as wide as the column is already.
    const bool isWrapping = wordWrap();
    setWordWrap(false);
    for (int column = 0; column < model()->columnCount(); ++column) {
        m_narrow.push_back(wraps(column) ? narrowOf(column) : Narrow());
        m_needs.push_back(needOf(column));
    }
    setWordWrap(isWrapping);
    m_areRowsStale = true;
    m_timesBarLeft = 0;
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

/// Of rows that are fetched as somebody scrolls.
void Table::fitWhereWholeIsCut(int first, int last)
{
    if (m_wrap != Wrap::TwoLines || first == 0 || last >= mostMeasured || m_needs.empty())
        return;
    for (int row = first; row <= last; ++row) {
        for (const int column : m_whole) {
            if (!isColumnHidden(column) && isCut(model()->index(row, column))) {
                fit();
                return;
            }
        }
    }
}

/// At another width the rows have other heights, which bring the scroll bar or take it away, which makes another width: for
/// ever, where narrower columns make lower rows. After some rounds the room of a scroll bar that leaves is left free.
int Table::columnRoom()
{
    const bool hasScrollBar = verticalScrollBar()->isVisible();
    if (width() != m_laidOutWidth)
        m_timesBarLeft = 0;
    else if (m_hadScrollBar && !hasScrollBar)
        ++m_timesBarLeft;
    m_laidOutWidth = width();
    m_hadScrollBar = hasScrollBar;
    const bool isLeftFree = m_wrap == Wrap::AsNeeded && !hasScrollBar && m_timesBarLeft > mostTimesBarLeaves;
    return viewport()->width() - (isLeftFree ? verticalScrollBar()->sizeHint().width() : 0);
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
    const int room = columnRoom();
    const int least = std::accumulate(shown.begin(), shown.end(), 0,
                                      [](int sum, const ColumnNeed &need) { return sum + need.least; });
    if (m_wrap != Wrap::Never && least > room) {
        for (std::size_t place = 0; place < shown.size(); ++place) {
            const bool isKept = m_whole.contains(columns[place]) || (m_mayBeWider && columns[place] == 0);
            if (wraps(columns[place]) && !isKept)
                shown[place].least = std::min(shown[place].least, m_narrow[columns[place]].word);
        }
    }
    std::vector<int> widths = columnWidths(shown, room, flexible);
    if (m_equalFrom >= 0)
        shareEqually(widths, shown, static_cast<std::size_t>(std::ranges::lower_bound(columns, m_equalFrom) - columns.begin()));
    m_isLayingOut = true;
    for (std::size_t place = 0; place < widths.size(); ++place) {
        m_areRowsStale |= columnWidth(columns[place]) != widths[place];
        setColumnWidth(columns[place], widths[place]);
    }
    m_isLayingOut = false;
    if (m_wrappedHeader->height() != m_wrappedHeader->sizeHint().height())
        updateGeometries(); // its headings take another number of lines
    if (m_areRowsStale)
        layOutRows();
}

int Table::linesHigh(int lines) const
{
    return lines == 1 ? m_oneLine : std::max(m_oneLine, fontMetrics().lineSpacing() * lines + m_aroundLines);
}

QSize Table::wrappedSize(const QModelIndex &index) const
{
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    option.features.setFlag(QStyleOptionViewItem::WrapText, false);
    const QSize inOneLine = itemDelegateForIndex(index)->sizeHint(option, index);
    if (inOneLine.width() <= columnWidth(index.column()))
        return inOneLine;
    // A style that lays out words beside an icon counts the margins around the icon once less than when it paints them.
    const int margins = 2 * (style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, this) + 1);
    const int beside = index.data(Qt::DecorationRole).isValid() ? margins : 0;
    // Words wrap at the width of a rectangle that is not empty.
    option.rect = QRect(0, 0, std::max(1, columnWidth(index.column()) - beside), 1);
    option.features.setFlag(QStyleOptionViewItem::WrapText);
    return itemDelegateForIndex(index)->sizeHint(option, index);
}

int Table::rowHeightFor(int row) const
{
    int words = 0;
    for (int column = 0; column < model()->columnCount(); ++column) {
        if (!isColumnHidden(column) && wraps(column))
            words = std::max(words, wrappedSize(model()->index(row, column)).height());
    }
    return std::clamp(words + m_aroundLines, m_oneLine, linesHigh(mostLines));
}

void Table::layOutRows()
{
    if (m_wrap != Wrap::AsNeeded)
        return;
    m_rowsLater.stop();
    m_areRowsStale = false;
    const int rows = model()->rowCount();
    const int current = currentIndex().row();
    const int currentTop = rowViewportPosition(current);
    const bool isCurrentSeen = isVisible() && current >= 0 && currentTop < viewport()->height() &&
                               currentTop + rowHeight(current) > 0;
    const int former = verticalHeader()->length();
    const bool isLong = rows > mostMeasured;
    const int usual = linesHigh(isLong ? 2 : 1);
    if (verticalHeader()->defaultSectionSize() != usual)
        verticalHeader()->setDefaultSectionSize(usual); // of all rows that there are, too
    for (int row = 0; !isLong && row < rows; ++row)
        setRowHeight(row, rowHeightFor(row));
    if (verticalHeader()->length() == former)
        return;
    m_isRangeStale = true;
    if (isCurrentSeen)
        m_followLater.start();
}

void Table::scrollTo(const QModelIndex &index, ScrollHint hint)
{
    if (m_rowsLater.isActive())
        layOutRows();
    // Again where the scroll bar came only now: with less room the rows are higher.
    for (int round = 0; m_isRangeStale && round < 3; ++round) {
        m_isRangeStale = false;
        updateGeometries();
    }
    QTableView::scrollTo(index, hint);
}

bool Table::isCut(const QModelIndex &index) const
{
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    option.features.setFlag(QStyleOptionViewItem::WrapText, false);
    const int width = columnWidth(index.column());
    if (itemDelegateForIndex(index)->sizeHint(option, index).width() <= width)
        return false;
    if (!wordWrap())
        return true;
    const QSize wrapped = wrappedSize(index);
    return wrapped.width() > width || wrapped.height() > rowHeight(index.row());
}

void Table::keepWidth(int column, int before, int now)
{
    if (m_isLayingOut)
        return;
    const bool isByHand = before > 0 && now > 0; // else it was hidden or shown
    if (isByHand && column < static_cast<int>(m_needs.size())) {
        m_needs[column] = {now, now, now, false};
        m_narrow[column] = {now, now};
    }
    layOutRowsLater();
}

void Table::changeEvent(QEvent *event)
{
    QTableView::changeEvent(event);
    const bool isOfWidths = event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange;
    if (isOfWidths && !m_needs.empty())
        m_fitLater.start();
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
    if (words.isEmpty() && index.isValid() && isCut(index))
        words = index.data(Qt::DisplayRole).toString();
    QToolTip::showText(help->globalPos(), words.isEmpty() ? QString() : tipText(shownNumbers(words)), this);
    return true;
}

} // namespace plateau::ui
