// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/chartkey.h"

#include "ui/charts/panelpainting.h"

#include <QEvent>
#include <QPainter>

#include <algorithm>

namespace plateau::ui {

namespace {

/// As wide as the piece of a line is drawn; a mark stands in the middle of it.
constexpr int shapeWidth = 22;

bool hasState(const PanelPicture &picture, State state)
{
    return std::ranges::any_of(picture.lines, [state](const std::vector<PanelPoint> &line) {
        return std::ranges::find(line, state, &PanelPoint::state) != line.end();
    });
}

bool hasLevel(const PanelPicture &picture, LevelLine::Kind kind)
{
    return std::ranges::find(picture.levels, kind, &LevelLine::kind) != picture.levels.end();
}

} // namespace

std::vector<ChartKeyEntry> keyOf(const std::vector<const PanelPicture *> &panels, bool isTrend, bool hasChanges)
{
    const auto any = [&panels](const auto &is) {
        return std::ranges::any_of(panels, [&is](const PanelPicture *picture) { return is(*picture); });
    };
    std::vector<ChartKeyEntry> key;
    if (any([](const PanelPicture &picture) { return hasState(picture, State::Bad); }))
        key.push_back({KeyShape::OutOfControl, isTrend ? ChartKey::tr("outside a limit") : ChartKey::tr("out of control")});
    if (any([](const PanelPicture &picture) { return hasState(picture, State::Attention); }))
        key.push_back({KeyShape::Warning, ChartKey::tr("warning")});
    if (any([](const PanelPicture &picture) { return !picture.leftOut.empty(); }))
        key.push_back({KeyShape::LeftOut, ChartKey::tr("left out")});
    // Of cumulative sums, which are two lines, the limit is one of decision.
    const bool isOfSums = any([](const PanelPicture &picture) { return picture.lines.size() > 1; });
    if (any([](const PanelPicture &picture) {
            return hasLevel(picture, LevelLine::Kind::Action) || !picture.bounds.empty();
        }))
        key.push_back({KeyShape::ActionLine, isOfSums ? ChartKey::tr("decision limit") : ChartKey::tr("action limit")});
    if (any([](const PanelPicture &picture) { return hasLevel(picture, LevelLine::Kind::Warning); }))
        key.push_back({KeyShape::WarningLine, ChartKey::tr("warning limit")});
    if (hasChanges)
        key.push_back({KeyShape::Change, ChartKey::tr("change of lot, standard or control")});
    return key;
}

ChartKey::ChartKey(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAttribute(Qt::WA_TransparentForMouseEvents); // a click goes to the chart
    setAccessibleName(tr("Key of the chart"));
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
    hide();
}

void ChartKey::setEntries(std::vector<ChartKeyEntry> entries)
{
    m_entries = std::move(entries);
    QStringList words;
    for (const ChartKeyEntry &entry : m_entries)
        words << entry.words;
    setAccessibleDescription(words.join(QStringLiteral("; ")));
    setVisible(!m_entries.empty());
    fitHeight();
    update();
}

std::vector<QPoint> ChartKey::placesIn(int width) const
{
    std::vector<QPoint> places;
    int left = m_theme.gap();
    int line = 0;
    for (const ChartKeyEntry &entry : m_entries) {
        const int wide = shapeWidth + m_theme.gap() + fontMetrics().horizontalAdvance(entry.words);
        if (left > m_theme.gap() && left + wide > width) {
            left = m_theme.gap();
            ++line;
        }
        places.emplace_back(left, line);
        left += wide + m_theme.wideGap();
    }
    return places;
}

int ChartKey::heightIn(int width) const
{
    const std::vector<QPoint> places = placesIn(width);
    const int lines = places.empty() ? 0 : places.back().y() + 1;
    return lines * fontMetrics().lineSpacing() + m_theme.gap();
}

void ChartKey::fitHeight()
{
    setFixedHeight(heightIn(width()));
}

void ChartKey::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    fitHeight();
}

void ChartKey::paintOn(QPainter &painter, const QRectF &area) const
{
    painter.save();
    painter.setFont(font());
    painter.setRenderHint(QPainter::Antialiasing);
    const std::vector<QPoint> places = placesIn(static_cast<int>(area.width()));
    const int line = fontMetrics().lineSpacing();
    for (std::size_t i = 0; i < places.size(); ++i) {
        const QPointF left = area.topLeft() + QPointF(places[i].x(), places[i].y() * line);
        paintKeyShape(painter, m_theme, QRectF(left, QSizeF(shapeWidth, line)), m_entries[i].shape);
        painter.setPen(m_theme.text());
        painter.drawText(left + QPointF(shapeWidth + m_theme.gap(), fontMetrics().ascent()), m_entries[i].words);
    }
    painter.restore();
}

void ChartKey::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme.base());
    paintOn(painter, rect());
}

void ChartKey::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitHeight();
}

} // namespace plateau::ui
