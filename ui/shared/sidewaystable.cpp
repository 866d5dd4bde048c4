// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/sidewaystable.h"

#include "ui/shared/wrappedheader.h"

#include <QHeaderView>
#include <QPainter>
#include <QScrollBar>

namespace plateau::ui {

SidewaysTable::SidewaysTable(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
                             const QString &objectName, QWidget *parent)
    : Table(theme, model, accessibleName, objectName, parent)
{
    setMayBeWider();
    // What is scrolled is moved as a picture, the kept column with it.
    connect(horizontalScrollBar(), &QScrollBar::valueChanged, this, [this] {
        wrappedHeader().setKeptWidth(keptWidth());
        viewport()->update();
    });
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, [this](int section) {
        if (section == 0)
            wrappedHeader().setKeptWidth(keptWidth());
    });
}

int SidewaysTable::keptWidth() const
{
    constexpr int leastShareOfTheOthers = 2;
    const int width = isColumnHidden(0) ? 0 : columnWidth(0);
    const bool isScrolled = horizontalScrollBar()->value() > 0;
    return isScrolled && width * leastShareOfTheOthers <= viewport()->width() ? width : 0;
}

QModelIndex SidewaysTable::indexAt(const QPoint &place) const
{
    if (place.x() >= 0 && place.x() < keptWidth() && rowAt(place.y()) >= 0)
        return model()->index(rowAt(place.y()), 0);
    return Table::indexAt(place);
}

QRect SidewaysTable::visualRect(const QModelIndex &index) const
{
    QRect rect = Table::visualRect(index);
    if (index.isValid() && index.column() == 0 && keptWidth() > 0)
        rect.moveLeft(0);
    return rect;
}

void SidewaysTable::scrollTo(const QModelIndex &index, ScrollHint hint)
{
    QScrollBar *bar = horizontalScrollBar();
    const int before = bar->value();
    const bool isKept = keptWidth() > 0 && index.column() == 0;
    Table::scrollTo(index, hint);
    if (isKept)
        bar->setValue(before); // it is in sight wherever the others are
    else if (const int hidden = keptWidth() - columnViewportPosition(index.column()); index.column() > 0 && hidden > 0)
        bar->setValue(bar->value() - hidden);
}

void SidewaysTable::paintEvent(QPaintEvent *event)
{
    Table::paintEvent(event);
    const int width = keptWidth();
    if (width == 0)
        return;
    QPainter painter(viewport());
    painter.fillRect(0, 0, width, viewport()->height(), palette().base());
    for (int row = std::max(0, rowAt(0)); row < model()->rowCount() && rowViewportPosition(row) < viewport()->height(); ++row)
        paintKept(painter, row);
    painter.setPen(palette().mid().color());
    painter.drawLine(width - 1, 0, width - 1, viewport()->height());
}

void SidewaysTable::paintKept(QPainter &painter, int row) const
{
    const QModelIndex index = model()->index(row, 0);
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    option.rect = visualRect(index);
    option.features.setFlag(QStyleOptionViewItem::Alternate, alternatingRowColors() && row % 2 == 1);
    option.state.setFlag(QStyle::State_Enabled, isEnabled() && index.flags().testFlag(Qt::ItemIsEnabled));
    option.state.setFlag(QStyle::State_Selected, selectionModel()->isSelected(index));
    option.state.setFlag(QStyle::State_HasFocus, hasFocus() && index == currentIndex());
    if (option.features.testFlag(QStyleOptionViewItem::Alternate))
        painter.fillRect(option.rect, palette().alternateBase());
    itemDelegateForIndex(index)->paint(&painter, option, index);
}

} // namespace plateau::ui
