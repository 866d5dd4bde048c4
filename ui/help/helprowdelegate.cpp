// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helprowdelegate.h"

#include "ui/help/helplistmodel.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QPainter>
#include <QTextLayout>

namespace plateau::ui {

namespace {

constexpr int contextLines = 2;

const HelpRow &helpRowOf(const QModelIndex &index)
{
    return static_cast<const HelpListModel *>(index.model())->row(index.row());
}

/// Wrapped to so many lines, the last one ending in an ellipsis where there is more.
void drawLines(QPainter &painter, const QRect &area, const QString &text, const QFontMetrics &metrics)
{
    QTextLayout layout(text, painter.font());
    layout.beginLayout();
    int top = area.top();
    for (int count = 1; count <= contextLines; ++count) {
        QTextLine line = layout.createLine();
        if (!line.isValid())
            break;
        line.setLineWidth(area.width());
        const QString rest = text.mid(line.textStart());
        const QString shown = count < contextLines ? rest.left(line.textLength())
                                                   : metrics.elidedText(rest, Qt::ElideRight, area.width());
        painter.drawText(QRect(area.left(), top, area.width(), metrics.lineSpacing()),
                         Qt::AlignTop | Qt::AlignLeft, shown);
        top += metrics.lineSpacing();
    }
    layout.endLayout();
}

} // namespace

HelpRowDelegate::HelpRowDelegate(const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

void HelpRowDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                            const QModelIndex &index) const
{
    const HelpRow &row = helpRowOf(index);
    QStyleOptionViewItem item(option);
    initStyleOption(&item, index);
    item.text.clear();
    const QStyle *style = option.widget ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &item, painter, option.widget);

    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    const QPalette::ColorGroup group =
        option.state.testFlag(QStyle::State_Active) ? QPalette::Active : QPalette::Inactive;
    const QColor first = option.palette.color(group, chosen ? QPalette::HighlightedText : QPalette::Text);
    const QColor second = chosen ? first : m_theme.mutedText();
    const bool isHit = row.kind == HelpRow::Kind::Hit;
    const int line = option.fontMetrics.lineSpacing();
    QRect area = option.rect.adjusted(m_theme.gap() + row.depth * m_theme.wideGap(), m_theme.gap() / 2,
                                      -m_theme.gap(), -m_theme.gap() / 2);
    painter->save();
    const QFont titleFont = isHit ? m_theme.bold() : option.font;
    painter->setFont(titleFont);
    painter->setPen(row.kind == HelpRow::Kind::Group ? second : first);
    const QString title = QFontMetrics(titleFont).elidedText(row.title, Qt::ElideRight, area.width());
    if (isHit) {
        painter->drawText(area, Qt::AlignTop | Qt::AlignLeft, title);
        painter->setFont(option.font);
        painter->setPen(second);
        area.setTop(area.top() + line);
        painter->drawText(area, Qt::AlignTop | Qt::AlignLeft,
                          option.fontMetrics.elidedText(row.where, Qt::ElideRight, area.width()));
        area.setTop(area.top() + line);
        painter->setPen(first);
        drawLines(*painter, area, row.context, option.fontMetrics);
    } else {
        painter->drawText(
            area, (row.kind == HelpRow::Kind::Group ? Qt::AlignBottom : Qt::AlignVCenter) | Qt::AlignLeft,
            title);
    }
    painter->restore();
}

QSize HelpRowDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const HelpRow &row = helpRowOf(index);
    const int line = option.fontMetrics.lineSpacing();
    int height = m_theme.target();
    if (row.kind == HelpRow::Kind::Hit)
        height = (2 + contextLines) * line + 2 * m_theme.gap();
    else if (row.kind == HelpRow::Kind::Group)
        height = m_theme.target() + m_theme.gap();
    return {option.fontMetrics.averageCharWidth() * 24, height};
}

} // namespace plateau::ui
