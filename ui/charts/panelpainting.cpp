// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/panelpainting.h"

#include "core/assay/localday.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Points nearer to each other than this are not drawn one by one.
constexpr double roomyPixels = 6;
constexpr double panelMarkSize = 7;

Qt::PenStyle styleOf(LevelLine::Kind kind, bool isProvisional)
{
    switch (kind) {
    case LevelLine::Kind::Centre:
        return Qt::SolidLine;
    case LevelLine::Kind::Warning:
    case LevelLine::Kind::Threshold:
        return Qt::DotLine;
    case LevelLine::Kind::Action:
        return isProvisional ? Qt::DashDotDotLine : Qt::DashLine;
    case LevelLine::Kind::Limit:
        return Qt::DashLine;
    }
    return Qt::SolidLine;
}

/// What is written first where labels would cover each other: the action lines, then the centre.
int rankOf(LevelLine::Kind kind)
{
    if (kind == LevelLine::Kind::Action || kind == LevelLine::Kind::Limit)
        return 0;
    return kind == LevelLine::Kind::Centre ? 1 : 2;
}

QPen penOf(LevelLine::Kind kind, bool isProvisional, const Theme &theme)
{
    const bool isAction = rankOf(kind) == 0;
    return {isAction ? theme.text() : theme.mutedText(), isAction ? 1.5 : 1.0, styleOf(kind, isProvisional)};
}

/// Its foot stands there.
void paintFlag(QPainter &painter, const Theme &theme, const QPointF &foot)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.colour(State::Info));
    painter.drawPolygon(QPolygonF({foot, foot + QPointF(7, -4), foot + QPointF(0, -8)}));
}

void paintLevels(QPainter &painter, const Theme &theme, const PanelScene &scene)
{
    std::vector<LevelLine> levels = scene.picture.levels;
    std::ranges::stable_sort(levels, {}, [](const LevelLine &level) { return rankOf(level.kind); });
    const QFontMetricsF metrics(painter.font());
    std::vector<double> written;
    for (const LevelLine &level : levels) {
        const double y = scene.y(level.value);
        painter.setPen(penOf(level.kind, scene.picture.isProvisional, theme));
        painter.drawLine(QPointF(scene.plot.left(), y), QPointF(scene.plot.right(), y));
        // Where its neighbour stands already, the sentence below the chart has the numbers.
        if (std::ranges::any_of(written,
                                [&](double other) { return std::abs(other - y) < metrics.height(); }))
            continue;
        painter.setPen(theme.text());
        painter.drawText(QPointF(scene.plot.right() + theme.gap(), y + metrics.ascent() / 2 - 1),
                         level.label);
        written.push_back(y);
    }
}

/// Where a standard is made anew for every run its marks are a fence: those keep to their flags, and the
/// points are seen.
bool standsAlone(const PanelScene &scene, std::size_t change)
{
    constexpr double least = 24;
    const auto &changes = scene.places.changes;
    const auto at = [&](std::size_t i) { return scene.x(static_cast<double>(changes[i].at) + 0.5); };
    return (change == 0 || at(change) - at(change - 1) >= least) &&
           (change + 1 == changes.size() || at(change + 1) - at(change) >= least);
}

void paintChanges(QPainter &painter, const Theme &theme, const PanelScene &scene)
{
    const QFontMetricsF metrics(painter.font());
    double free = scene.plot.left();
    double lastLine = -10;
    const auto &changes = scene.places.changes;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        // Between the last point before and the first after it.
        const double place = static_cast<double>(changes[i].at) + 0.5;
        if (place < scene.from || place > scene.to)
            continue;
        const double x = scene.x(place);
        if (x < lastLine + 4)
            continue;
        lastLine = x;
        painter.setPen(QPen(theme.colour(State::Info), 1, Qt::DashDotLine));
        painter.drawLine(QPointF(x, scene.plot.top()),
                         QPointF(x, standsAlone(scene, i) ? scene.plot.bottom() : scene.plot.top() + 6));
        paintFlag(painter, theme, {x, scene.plot.top()});
        if (x + 10 < free)
            continue;
        double next = scene.plot.right();
        for (std::size_t later = i + 1; later < changes.size(); ++later) {
            const double laterX = scene.x(static_cast<double>(changes[later].at) + 0.5);
            if (laterX > x + 4) {
                next = std::min(next, laterX);
                break;
            }
        }
        const double room = next - x - 14;
        const QString text = metrics.elidedText(changes[i].text, Qt::ElideRight, room);
        if (room < metrics.horizontalAdvance(u"mmmmmm"_s))
            continue;
        painter.setPen(theme.text());
        painter.drawText(QPointF(x + 10, scene.plot.top() - 3), text);
        free = x + 10 + metrics.horizontalAdvance(text);
    }
}

void paintDays(QPainter &painter, const Theme &theme, const PanelScene &scene)
{
    const charts::SharedSeries &series = scene.places.series;
    if (series.empty())
        return;
    const QFontMetricsF metrics(painter.font());
    const double width = metrics.horizontalAdvance(assay::shownDay({2000, 10, 20}));
    const int first = std::max(1, static_cast<int>(std::ceil(scene.from)));
    const int last = std::min(scene.picture.places, static_cast<int>(std::floor(scene.to)));
    const int most = std::clamp(static_cast<int>(scene.plot.width() / (1.5 * width)), 1, 8);
    const int step = std::max(1, (last - first) / most);
    painter.setPen(theme.text());
    QString former;
    double free = -1e9;
    for (int place = first; place <= last; place += step) {
        const QString label =
            assay::shownDay(series[static_cast<std::size_t>(place - 1)].run->at.date());
        const double left = std::clamp(scene.x(place) - width / 2, 0.0, scene.plot.right() - width / 2);
        painter.drawLine(QPointF(scene.x(place), scene.plot.bottom()),
                         QPointF(scene.x(place), scene.plot.bottom() + 3));
        if (label == former || left < free)
            continue;
        painter.drawText(QPointF(left, scene.plot.bottom() + metrics.height()), label);
        former = label;
        free = left + 1.2 * width;
    }
}

class Marks
{
public:
    Marks(QPainter &painter, const Theme &theme)
        : m_painter(painter)
        , m_theme(theme)
    {
    }

    void paint(const QPointF &at, State state, double size)
    {
        const double half = size / 2;
        m_painter.setPen(QPen(m_theme.text(), 1));
        m_painter.setBrush(state == State::Good ? m_theme.base() : m_theme.colour(state));
        if (state == State::Bad)
            m_painter.drawRect(QRectF(at.x() - half, at.y() - half, size, size));
        else if (state == State::Attention)
            m_painter.drawPolygon(QPolygonF(
                {{at.x(), at.y() - half}, {at.x() + half, at.y() + half}, {at.x() - half, at.y() + half}}));
        else
            m_painter.drawEllipse(at, half, half);
    }

    void cross(const QPointF &at)
    {
        const double half = panelMarkSize / 2;
        m_painter.setPen(QPen(m_theme.text(), 1.5));
        m_painter.drawLine(at + QPointF(-half, -half), at + QPointF(half, half));
        m_painter.drawLine(at + QPointF(-half, half), at + QPointF(half, -half));
    }

    void frame(const QPointF &at)
    {
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(m_theme.text(), 2));
        m_painter.drawEllipse(at, 1.2 * panelMarkSize, 1.2 * panelMarkSize);
    }

private:
    QPainter &m_painter;
    const Theme &m_theme;
};

void paintLine(QPainter &painter, const Theme &theme, const PanelScene &scene,
               const std::vector<PanelPoint> &line)
{
    Marks marks(painter, theme);
    const double apart = scene.plot.width() / std::max(1.0, scene.to - scene.from);
    const auto place = [](const PanelPoint &point) { return point.place; };
    const auto first = std::ranges::lower_bound(line, scene.from, {}, place);
    const auto last = std::ranges::upper_bound(line, scene.to, {}, place);
    double free[2] = {-1e9, -1e9}; // warnings and worse, below and above the middle of the plot
    for (auto point = first; point != last; ++point) {
        const QPointF at(scene.x(point->place), scene.y(point->value));
        const bool isRoomy = apart >= roomyPixels;
        if (point->uncertainty && apart >= 3) {
            painter.setPen(QPen(theme.mutedText(), 1));
            painter.drawLine(QPointF(at.x(), scene.y(point->value - *point->uncertainty)),
                             QPointF(at.x(), scene.y(point->value + *point->uncertainty)));
        }
        if (point->state == State::Good && !isRoomy)
            continue;
        if (point->state != State::Good) {
            double &side = free[at.y() < scene.plot.center().y()];
            if (!isRoomy && at.x() < side)
                continue;
            side = at.x() + 2;
        }
        marks.paint(at, point->state, isRoomy ? panelMarkSize : panelMarkSize * 0.7);
    }
}

} // namespace

void paintPanel(QPainter &painter, const Theme &theme, const PanelScene &scene)
{
    painter.setRenderHint(QPainter::Antialiasing);
    paintLevels(painter, theme, scene);
    paintChanges(painter, theme, scene);
    paintDays(painter, theme, scene);
    for (const auto &line : scene.picture.lines)
        paintLine(painter, theme, scene, line);
    Marks marks(painter, theme);
    for (const PanelPoint &point : scene.picture.leftOut) {
        if (point.place >= scene.from && point.place <= scene.to)
            marks.cross({scene.x(point.place), scene.y(point.value)});
    }
    if (!scene.chosen || *scene.chosen < scene.from || *scene.chosen > scene.to)
        return;
    const auto frameIn = [&](const std::vector<PanelPoint> &points) {
        const auto found = std::ranges::lower_bound(points, static_cast<double>(*scene.chosen), {},
                                                    [](const PanelPoint &point) { return point.place; });
        if (found != points.end() && found->place == *scene.chosen)
            marks.frame({scene.x(found->place), scene.y(found->value)});
    };
    for (const auto &line : scene.picture.lines)
        frameIn(line);
    frameIn(scene.picture.leftOut);
    painter.setPen(QPen(theme.text(), 1, Qt::DotLine));
    painter.drawLine(QPointF(scene.x(*scene.chosen), scene.plot.top()),
                     QPointF(scene.x(*scene.chosen), scene.plot.bottom()));
}

void paintKeyShape(QPainter &painter, const Theme &theme, const QRectF &area, KeyShape shape)
{
    Marks marks(painter, theme);
    const QPointF middle = area.center();
    const auto line = [&](LevelLine::Kind kind) {
        painter.setPen(penOf(kind, false, theme));
        painter.drawLine(QPointF(area.left(), middle.y()), QPointF(area.right(), middle.y()));
    };
    switch (shape) {
    case KeyShape::OutOfControl:
        marks.paint(middle, State::Bad, panelMarkSize);
        break;
    case KeyShape::Warning:
        marks.paint(middle, State::Attention, panelMarkSize);
        break;
    case KeyShape::LeftOut:
        marks.cross(middle);
        break;
    case KeyShape::ActionLine:
        line(LevelLine::Kind::Action);
        break;
    case KeyShape::WarningLine:
        line(LevelLine::Kind::Warning);
        break;
    case KeyShape::Change:
        paintFlag(painter, theme, middle + QPointF(-3, 4));
        break;
    }
}

} // namespace plateau::ui
