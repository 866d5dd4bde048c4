// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/table.h"

#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHeaderView>
#include <QHelpEvent>
#include <QToolTip>

#include <algorithm>

namespace plateau::ui {

Table::Table(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
             const QString &objectName, QWidget *parent)
    : QTableView(parent)
{
    setModel(model);
    setAccessibleName(accessibleName);
    setObjectName(objectName);
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

void Table::fit()
{
    resizeColumnsToContents();
    for (int column = 0; column < model()->columnCount(); ++column) {
        const int wanted = std::min(columnWidth(column) + charactersWide(1), charactersWide(m_limit));
        setColumnWidth(column, std::max(wanted, horizontalHeader()->sectionSizeHint(column)));
    }
    flex();
}

void Table::fitWhereCut()
{
    const int last = rowAt(viewport()->height() - 1);
    const int end = last < 0 ? model()->rowCount() : last + 1;
    for (int row = std::max(0, rowAt(0)); row < end; ++row) {
        for (int column = 0; column < model()->columnCount(); ++column) {
            if (isColumnHidden(column) || column == m_flexible)
                continue;
            const int wanted = sizeHintForIndex(model()->index(row, column)).width();
            if (std::min(wanted, charactersWide(m_limit)) > columnWidth(column)) {
                fit();
                return;
            }
        }
    }
}

void Table::flex()
{
    int others = 0;
    for (int column = 0; column < model()->columnCount(); ++column) {
        if (column != m_flexible && !isColumnHidden(column))
            others += columnWidth(column);
    }
    setColumnWidth(m_flexible, std::max({viewport()->width() - others, charactersWide(m_flexibleMinimum),
                                         horizontalHeader()->sectionSizeHint(m_flexible)}));
}

void Table::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    if (model()->columnCount() > m_flexible)
        flex();
}

bool Table::viewportEvent(QEvent *event)
{
    if (event->type() != QEvent::ToolTip)
        return QTableView::viewportEvent(event);
    const auto *help = static_cast<QHelpEvent *>(event);
    const QModelIndex index = indexAt(help->pos());
    const bool cut = index.isValid() && sizeHintForIndex(index).width() > columnWidth(index.column());
    QToolTip::showText(help->globalPos(), cut ? tipText(index.data(Qt::DisplayRole).toString()) : QString(),
                       this);
    return true;
}

} // namespace plateau::ui
