// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechart.h"

#include "ui/shared/theme.h"
#include "ui/shared/timechartnow.h"
#include "ui/shared/timechartpainting.h"
#include "ui/shared/widgets.h"

#include <QFontMetricsF>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollArea>
#include <QToolTip>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Of the names of the rows, as part of the width.
constexpr double widestName = 0.4;

/// The scroll area that moves this widget itself.
QScrollArea *scrollAreaOf(const QWidget *widget)
{
    QWidget *viewport = widget->parentWidget();
    auto *area = viewport ? qobject_cast<QScrollArea *>(viewport->parentWidget()) : nullptr;
    return area && area->viewport() == viewport && area->widget() == widget ? area : nullptr;
}

bool isAnyLate(const std::vector<std::optional<TimeStanding>> &standings)
{
    return std::any_of(standings.begin(), standings.end(), [](const std::optional<TimeStanding> &standing) {
        return standing && standing->phase == TimeStanding::Phase::Late;
    });
}

} // namespace

TimeChart::TimeChart(const Theme &theme, const QString &accessibleName, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(accessibleName);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&theme, &Theme::changed, this, &TimeChart::redraw);
    measure();
    layOutAnew();
    describe();
}

void TimeChart::setData(TimeChartData data)
{
    const std::optional<int> now_s = data.now_s;
    data.now_s = m_data.now_s;
    if (data == m_data) {
        setNow(now_s);
        return;
    }
    data.now_s = now_s;
    m_data = std::move(data);
    m_chosen = std::min(m_chosen, rowsOf(m_data) - 1);
    m_standings = standingsOf(m_data);
    measure();
    layOutAnew();
    describe();
    updateGeometry();
}

void TimeChart::setNow(std::optional<int> now_s)
{
    if (now_s == m_data.now_s)
        return;
    const QRect before = areaOfNow();
    const TimeStretch shown{m_layout.first_s, m_layout.last_s};
    const bool wasKnown = m_data.now_s.has_value();
    m_data.now_s = now_s;
    std::vector<std::optional<TimeStanding>> standings = standingsOf(m_data);
    const bool isOtherwise = standings != m_standings || wasKnown != now_s.has_value();
    m_standings = std::move(standings);
    if (isOtherwise || (!m_data.visible_s && shown != extentOf(m_data)))
        layOutAnew();
    // A screen reader is not to read it all again with every second: what it has says as of when it is.
    if (!m_data.live || (isOtherwise && !hasFocus()))
        describe();
    if (isAnyLate(m_standings))
        update();
    else
        update(before.united(areaOfNow()));
}

void TimeChart::chooseRow(int row)
{
    row = std::clamp(row, -1, rowsOf(m_data) - 1);
    if (row == m_chosen)
        return;
    m_chosen = row;
    describe();
    redraw();
    if (row >= 0)
        reveal(row);
    Q_EMIT rowChosen(row);
}

void TimeChart::reveal(int row)
{
    QScrollArea *area = scrollAreaOf(this);
    if (!area)
        return;
    const QRectF place = m_layout.rowArea(row);
    // Room above for the axis, which stands over the rows there.
    const int margin = static_cast<int>(std::ceil(m_layout.plot.top() + m_layout.rowHeight));
    area->ensureVisible(-x(), static_cast<int>(place.center().y()), 0,
                        std::min(margin, area->viewport()->height() / 2));
}

int TimeChart::headTop() const
{
    return scrollAreaOf(this) ? std::max(0, -y()) : 0;
}

void TimeChart::describe()
{
    // What was chosen last is said first; the whole follows.
    QString text = rowsOf(m_data) == 0 ? tr("There is nothing to draw yet.") : chartText(m_data);
    if (m_chosen >= 0)
        text = tr("Row %1 of %2, %3")
                   .arg(QString::number(m_chosen + 1), QString::number(rowsOf(m_data)),
                        rowText(rowOf(m_data, m_chosen), m_data.now_s)) +
               u'\n' + text;
    setAccessibleDescription(text);
}

void TimeChart::measure()
{
    const QFontMetricsF metrics(font());
    double tube = 0;
    double behindTube = 0;
    // Room for the usual one from the start, so that the plot does not shift when it comes.
    double remark = m_data.live ? metrics.horizontalAdvance(earlyRemark(u"A1"_s, 0).text) : 0;
    for (const TimeRack &rack : m_data.racks) {
        for (const TimeRow &row : rack.rows) {
            const RowLabel label = labelOf(row);
            if (!label.number.isEmpty())
                tube = std::max(tube, metrics.horizontalAdvance(label.number + afterNumber()));
            behindTube = std::max(behindTube, metrics.horizontalAdvance(label.name));
            if (m_data.live)
                remark = std::max(remark, metrics.horizontalAdvance(widestBeside(row)));
        }
    }
    const double shape = metrics.lineSpacing();
    const double name = std::max(tube + behindTube, m_data.live ? 0.0 : metrics.horizontalAdvance(handsWord()));
    m_measures = {metrics.lineSpacing(), name, metrics.horizontalAdvance(QStringLiteral("000")),
                  m_data.live ? remark + shape : 0, tube};
}

double TimeChart::leastName() const
{
    return 16 * QFontMetricsF(font()).averageCharWidth();
}

void TimeChart::layOutAnew()
{
    TextMeasures measures = m_measures;
    // Names are read whole where that leaves the plot the larger part; what a live chart tells is its plot.
    measures.name = std::min(measures.name, std::max(leastName(), m_data.live ? 0.0 : widestName * width()));
    m_layout = layOut(m_data, size(), measures);
    redraw();
}

void TimeChart::redraw()
{
    m_picture = {};
    update();
}

QSize TimeChart::sizeHint() const
{
    return {static_cast<int>(std::min(m_measures.name, leastName()) + 40 * m_measures.number / 2 + m_measures.remark),
            static_cast<int>(std::ceil(usualHeight(m_data, m_measures)))};
}

QSize TimeChart::minimumSizeHint() const
{
    return {static_cast<int>(std::min(m_measures.name, leastName()) + 5 * m_measures.number +
                             std::min(m_measures.remark, 5 * m_measures.number)),
            static_cast<int>(std::ceil(smallestHeight(m_data, m_measures)))};
}

TimeChartView TimeChart::view() const
{
    return {m_theme, m_data, m_layout, m_standings, m_chosen, hasFocus()};
}

QRect TimeChart::areaOfNow() const
{
    return nowArea(view(), QFontMetricsF(font())).toAlignedRect();
}

void TimeChart::drawPicture()
{
    const double scale = devicePixelRatioF();
    m_picture = QPixmap((QSizeF(size()) * scale).toSize().expandedTo({1, 1}));
    m_picture.setDevicePixelRatio(scale);
    m_picture.fill(palette().color(QPalette::Window));
    QPainter painter(&m_picture);
    painter.setFont(font());
    painter.setLayoutDirection(layoutDirection());
    paintTimeChart(painter, view());
    ++m_drawings;
}

void TimeChart::paintEvent(QPaintEvent *event)
{
    if (m_picture.isNull() || m_picture.devicePixelRatio() != devicePixelRatioF())
        drawPicture();
    QPainter painter(this);
    painter.drawPixmap(QPointF(), m_picture);
    paintTimeChartLate(painter, view(), event->rect());
    const int top = headTop();
    if (top > 0) {
        // The axis goes along: over the rows that were moved up.
        painter.save();
        painter.setClipRect(QRectF(0, top, width(), m_layout.plot.top()), Qt::IntersectClip);
        painter.drawPixmap(QPointF(0, top), m_picture);
        painter.restore();
    }
    paintTimeChartNow(painter, view(), top);
}

bool TimeChart::event(QEvent *event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto *help = static_cast<QHelpEvent *>(event);
    const int row = rowAt(help->pos());
    if (row < 0)
        QToolTip::hideText();
    else
        QToolTip::showText(help->globalPos(), tipText(rowText(rowOf(m_data, row), m_data.now_s)), this);
    return true;
}

void TimeChart::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    layOutAnew();
}

void TimeChart::moveEvent(QMoveEvent *event)
{
    QWidget::moveEvent(event);
    if (scrollAreaOf(this))
        update();
}

void TimeChart::keyPressEvent(QKeyEvent *event)
{
    constexpr int page = 8;
    const int last = rowsOf(m_data) - 1;
    switch (event->key()) {
    case Qt::Key_Up:
        chooseRow(std::max(0, m_chosen - 1));
        break;
    case Qt::Key_Down:
        chooseRow(std::min(last, m_chosen + 1));
        break;
    case Qt::Key_PageUp:
        chooseRow(std::max(0, m_chosen - page));
        break;
    case Qt::Key_PageDown:
        chooseRow(std::min(last, m_chosen + page));
        break;
    case Qt::Key_Home:
        chooseRow(0);
        break;
    case Qt::Key_End:
        chooseRow(last);
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_chosen >= 0) {
            Q_EMIT rowActivated(m_chosen);
            break;
        }
        [[fallthrough]];
    default:
        QWidget::keyPressEvent(event);
    }
}

int TimeChart::rowAt(const QPointF &position) const
{
    return position.y() < headTop() + m_layout.plot.top() ? -1 : m_layout.rowAt(position.y());
}

void TimeChart::mousePressEvent(QMouseEvent *event)
{
    if (const int row = rowAt(event->position()); row >= 0)
        chooseRow(row);
}

void TimeChart::mouseDoubleClickEvent(QMouseEvent *event)
{
    const int row = rowAt(event->position());
    if (event->button() == Qt::LeftButton && row >= 0)
        Q_EMIT rowActivated(row);
}

void TimeChart::focusInEvent(QFocusEvent *event)
{
    // Whoever comes by the keyboard hears a row at once, as it stands now.
    if (m_chosen < 0)
        chooseRow(0);
    else
        describe();
    redraw();
    QWidget::focusInEvent(event);
}

void TimeChart::focusOutEvent(QFocusEvent *event)
{
    redraw();
    QWidget::focusOutEvent(event);
}

void TimeChart::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        measure();
        layOutAnew();
        updateGeometry();
    } else if (event->type() == QEvent::PaletteChange) {
        redraw();
    }
}

} // namespace plateau::ui
