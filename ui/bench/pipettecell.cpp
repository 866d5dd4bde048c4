// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettecell.h"

#include "ui/bench/pipettemodel.h"
#include "ui/shared/theme.h"

#include <QPainter>

#include <optional>

namespace plateau::ui {

namespace {

using Sheet = PipetteSheet::State;

Sheet sheetState(const QModelIndex &index)
{
    return static_cast<Sheet>(index.data(PipetteModel::StateRole).toInt());
}

bool isUnlike(const QModelIndex &index)
{
    // Once the tube has it, only what went in otherwise is worth a look.
    return sheetState(index) == Sheet::Due ? index.data(PipetteModel::OddRole).toBool()
                                           : index.data(PipetteModel::DifferentRole).toBool();
}

std::optional<State> shapeOf(const QModelIndex &index)
{
    switch (sheetState(index)) {
    case Sheet::Due:
        return State::Pending;
    case Sheet::Ticked:
    case Sheet::Passed:
        return State::Good;
    case Sheet::Spoilt:
        return State::Bad;
    case Sheet::Nothing:
        break;
    }
    return std::nullopt;
}

} // namespace

PipetteCell::PipetteCell(const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

void PipetteCell::paintGround(QPainter &painter, const QRectF &area, const QModelIndex &index,
                              bool next) const
{
    const Sheet state = sheetState(index);
    const double line = std::max(1.0, m_theme.gap() / 5.0);
    QColor ground = m_theme.base();
    if (state == Sheet::Ticked || state == Sheet::Passed)
        ground = m_theme.tint(State::Good);
    else if (next)
        ground = m_theme.tint(State::Info);
    painter.setPen(QPen(next ? m_theme.text() : m_theme.mutedText(), next ? line * 3 : line));
    painter.setBrush(ground);
    painter.drawRect(area);
    if (isUnlike(index)) {
        painter.setPen(QPen(m_theme.text(), line));
        painter.setBrush(Qt::NoBrush);
        const double inset = line * 3;
        painter.drawRect(area.adjusted(inset, inset, -inset, -inset));
    }
}

void PipetteCell::paintShapes(QPainter &painter, const QRectF &line, const QModelIndex &index) const
{
    QRectF place(line.right() - line.height(), line.top(), line.height(), line.height());
    if (const auto shape = shapeOf(index))
        m_theme.paintShape(painter, place, *shape);
    if (isUnlike(index))
        m_theme.paintShape(painter, place.translated(-line.height() - m_theme.gap(), 0), State::Attention);
}

void PipetteCell::paintWords(QPainter &painter, const QRectF &area, const QModelIndex &index,
                             const QFont &font) const
{
    const bool firm = isUnlike(index) || sheetState(index) == Sheet::Spoilt;
    const QString volume = index.data(PipetteModel::StateWordsRole).toString();
    QFont own = m_theme.large();
    own.setBold(firm);
    if (QFontMetricsF(own).horizontalAdvance(volume) > area.width())
        own.setPointSizeF(font.pointSizeF());
    const QFontMetricsF metrics(own);
    QRectF line(area.left(), area.top(), area.width(), metrics.height());
    painter.setFont(own);
    painter.setPen(sheetState(index) == Sheet::Nothing ? m_theme.mutedText() : m_theme.text());
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(volume, Qt::ElideRight, line.width()));
    paintContents(painter, QRectF(line.bottomLeft(), area.bottomRight()), index, font);
}

void PipetteCell::paintContents(QPainter &painter, const QRectF &area, const QModelIndex &index,
                                const QFont &font) const
{
    const QFontMetricsF metrics(font);
    const int lines = static_cast<int>((area.height() + 1) / metrics.lineSpacing());
    if (lines < 1)
        return;
    // The end of "sample Orchard blend, tank 7, 1 of 2" tells the tubes apart; a line ends early to wrap.
    const double room = lines == 1 ? area.width() : area.width() * (lines - 0.6);
    const QString contents =
        metrics.elidedText(index.data(PipetteModel::ContentsRole).toString(), Qt::ElideMiddle, room);
    painter.setFont(font);
    painter.setPen(m_theme.mutedText());
    painter.setClipRect(area);
    painter.drawText(area, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, contents);
}

void PipetteCell::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const QString number = index.data(Qt::DisplayRole).toString();
    if (number.isEmpty())
        return;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const double gap = m_theme.gap();
    const QRectF area = QRectF(option.rect).adjusted(gap / 3, gap / 3, -gap / 3, -gap / 3);
    const bool next = option.state & QStyle::State_Selected;
    paintGround(*painter, area, index, next);
    const QRectF inner = area.adjusted(gap, gap / 2, -gap, -gap / 2);
    QFont large = m_theme.large();
    large.setBold(true);
    const QRectF line(inner.left(), inner.top(), inner.width(), QFontMetricsF(large).height());
    painter->setFont(large);
    painter->setPen(m_theme.text());
    painter->drawText(line, Qt::AlignLeft | Qt::AlignVCenter, number);
    paintShapes(*painter, line, index);
    paintWords(*painter, QRectF(QPointF(inner.left(), line.bottom()), inner.bottomRight()), index,
               option.font);
    painter->restore();
}

} // namespace plateau::ui
