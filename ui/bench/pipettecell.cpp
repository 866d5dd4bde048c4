// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettecell.h"

#include "ui/bench/pipettemodel.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"

#include <QPainter>

#include <algorithm>
#include <optional>

namespace plateau::ui {

namespace {

using Sheet = PipetteSheet::State;

Sheet sheetState(const QModelIndex &index)
{
    return static_cast<Sheet>(index.data(PipetteModel::StateRole).toInt());
}

bool isDifferent(const QModelIndex &index)
{
    return index.data(PipetteModel::DifferentRole).toBool();
}

/// Once the tube has it, what was planned is no news any more.
std::optional<State> remarkOf(const QModelIndex &index)
{
    if (isDifferent(index))
        return State::Attention;
    if (sheetState(index) == Sheet::Due && index.data(PipetteModel::OddRole).toBool())
        return State::Info;
    return std::nullopt;
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

BrokenText inTwoLines(const QString &text, const QFontMetricsF &metrics, double width)
{
    if (text.isEmpty())
        return {};
    if (metrics.horizontalAdvance(text) <= width)
        return {{text}, true};
    qsizetype fits = 1;
    while (fits < text.size() && metrics.horizontalAdvance(text.left(fits + 1)) <= width)
        ++fits;
    // Behind a hyphen or a slash as well as at a blank.
    const qsizetype soft = std::max({text.lastIndexOf(u' ', fits), text.lastIndexOf(u'-', fits - 1) + 1,
                                     text.lastIndexOf(u'/', fits - 1) + 1});
    const qsizetype end = soft > 0 ? soft : fits;
    const QString rest = text.mid(end).trimmed();
    const bool fitsToo = metrics.horizontalAdvance(rest) <= width;
    return {{text.left(end), metrics.elidedText(rest, Qt::ElideLeft, width)}, fitsToo && soft > 0};
}

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
    if (isDifferent(index)) {
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
    if (const auto remark = remarkOf(index))
        m_theme.paintShape(painter, place.translated(-line.height() - m_theme.gap() / 2, 0), *remark);
}

std::vector<PipetteCell::Line> PipetteCell::linesOf(const QModelIndex &index, double width,
                                                    const QFont &font) const
{
    QFont firm = font;
    firm.setBold(true);
    const QFont plain = m_isCompact ? font : m_theme.large();
    const QString name = index.data(PipetteModel::ContentsRole).toString();
    const QString volume = withDecimalSigns(index.data(PipetteModel::StateWordsRole).toString());
    std::vector<Line> lines;
    const auto add = [&lines, width](const QString &text, const QFont &own) {
        for (const QString &part : inTwoLines(text, QFontMetricsF(own), width).lines)
            lines.push_back({part, own});
    };
    const bool isWhole = m_isCompact || inTwoLines(name, QFontMetricsF(plain), width).isWhole;
    add(name, isWhole ? plain : firm);
    lines.push_back({index.data(PipetteModel::WhichRole).toString(), font, true});
    if (sheetState(index) == Sheet::Spoilt) {
        add(volume, firm);
        return lines;
    }
    QFont own = plain;
    own.setBold(isDifferent(index));
    // A unit that is cut off is a wrong volume.
    if (const double whole = QFontMetricsF(own).horizontalAdvance(volume); whole > width)
        own.setPointSizeF(own.pointSizeF() * width / whole);
    lines.push_back({volume, own, sheetState(index) == Sheet::Nothing});
    add(withDecimalSigns(index.data(PipetteModel::DetailRole).toString()), firm);
    return lines;
}

double PipetteCell::neededHeight(const QModelIndex &index, double width, const QFont &font) const
{
    if (index.data(Qt::DisplayRole).toString().isEmpty())
        return 0;
    const QRectF inner = innerOf({0, 0, width, 0});
    // Within no height the margins leave less than none.
    double height = QFontMetricsF(numberFont()).height() - inner.height();
    for (const Line &line : linesOf(index, inner.width(), font))
        height += QFontMetricsF(line.font).height();
    return height;
}

QFont PipetteCell::numberFont() const
{
    QFont font = m_theme.large();
    font.setBold(true);
    return font;
}

QRectF PipetteCell::areaOf(const QRectF &cell) const
{
    const double margin = m_theme.gap() / 3.0;
    return cell.adjusted(margin, margin, -margin, -margin);
}

QRectF PipetteCell::innerOf(const QRectF &cell) const
{
    const double gap = m_theme.gap();
    return areaOf(cell).adjusted(gap, gap / 2, -gap, -gap / 2);
}

void PipetteCell::paintWords(QPainter &painter, const QRectF &area, const QModelIndex &index,
                             const QFont &font, bool next) const
{
    // The muted ink reads on the plain ground alone.
    const Sheet state = sheetState(index);
    const bool isTinted = next || state == Sheet::Ticked || state == Sheet::Passed;
    double top = area.top();
    for (const Line &line : linesOf(index, area.width(), font)) {
        const double height = QFontMetricsF(line.font).height();
        painter.setFont(line.font);
        painter.setPen(line.isQuiet && !isTinted ? m_theme.mutedText() : m_theme.text());
        painter.drawText(QRectF(area.left(), top, area.width(), height), Qt::AlignLeft | Qt::AlignVCenter,
                         line.text);
        top += height;
    }
}

void PipetteCell::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const QString number = index.data(Qt::DisplayRole).toString();
    if (number.isEmpty())
        return;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool next = option.state & QStyle::State_Selected;
    paintGround(*painter, areaOf(option.rect), index, next);
    const QRectF inner = innerOf(option.rect);
    const QFont large = numberFont();
    const QRectF line(inner.left(), inner.top(), inner.width(), QFontMetricsF(large).height());
    painter->setFont(large);
    painter->setPen(m_theme.text());
    painter->drawText(line, Qt::AlignLeft | Qt::AlignVCenter, number);
    paintShapes(*painter, line, index);
    paintWords(*painter, QRectF(QPointF(inner.left(), line.bottom()), inner.bottomRight()), index,
               option.font, next);
    painter->restore();
}

} // namespace plateau::ui
