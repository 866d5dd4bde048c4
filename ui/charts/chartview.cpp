// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/chartview.h"

#include "core/charts/chartwords.h"
#include "ui/charts/chartkey.h"
#include "ui/charts/panelview.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QStyleOptionFocusRect>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <set>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// So many of the newest are in sight at first.
constexpr int firstInSight = 200;
constexpr double fewestInSight = 8;
constexpr int barSteps = 10; // of a place

std::set<std::size_t> outOfControl(const charts::ControlChart &chart)
{
    std::set<std::size_t> points;
    for (const charts::Panel &panel : chart.panels) {
        for (const charts::Finding &finding : panel.findings) {
            for (std::size_t mark = finding.completed; mark <= finding.last; ++mark)
                points.insert(panel.marks[mark].last);
        }
    }
    return points;
}

} // namespace

ChartView::ChartView(const Theme &theme, const QString &accessibleName, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_upper(new PanelView(theme, this))
    , m_lower(new PanelView(theme, this))
    , m_key(new ChartKey(theme, this))
    , m_bar(new QScrollBar(Qt::Horizontal, this))
{
    setAccessibleName(accessibleName);
    setFocusPolicy(Qt::StrongFocus);
    m_upper->setAccessibleName(accessibleName);
    m_lower->setAccessibleName(accessibleName);
    m_bar->setAccessibleName(tr("Visible part of the chart"));
    m_bar->setFocusPolicy(Qt::NoFocus); // the arrow keys of the chart do the same
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(2, 2, 2, 2); // the focus shows around it
    layout->setSpacing(0);
    layout->addWidget(m_upper, 5);
    layout->addWidget(m_lower, 4);
    layout->addWidget(m_key);
    layout->addWidget(m_bar);
    for (PanelView *panel : {m_upper, m_lower}) {
        connect(panel, &PanelView::placeHit, this, &ChartView::hit);
        connect(panel, &PanelView::dragged, this, &ChartView::pan);
        connect(panel, &PanelView::wheelTurned, this,
                [this](double steps, double place) { zoom(std::pow(0.8, steps), place); });
    }
    connect(m_bar, &QScrollBar::valueChanged, this, [this](int value) {
        const double width = m_to - m_from;
        const double from = 0.5 + static_cast<double>(value) / barSteps;
        setWindow(from, from + width);
    });
    setChart({}, {});
}

QSize ChartView::minimumSizeHint() const
{
    const int line = fontMetrics().height();
    return {24 * line, 14 * line};
}

void ChartView::setNothing(const QString &sentence)
{
    m_upper->setNothing(sentence);
    m_lower->setNothing(sentence);
    if (m_chart.series.empty())
        setAccessibleDescription(sentence);
}

void ChartView::setChart(const charts::Subject &subject, charts::ControlChart chart,
                         const ProductLimits &limits)
{
    const qint64 run = m_chosen ? m_chart.series[*m_chosen].run->run : 0;
    const QString name = m_chosen ? m_chart.series[*m_chosen].name : QString();
    const bool sameLength = m_chart.series.size() == chart.series.size();
    m_chart = std::move(chart);
    auto places = std::make_shared<PanelPlaces>();
    places->series = m_chart.series;
    places->changes = m_chart.changes;
    const auto pictureOfPanel = [&](std::size_t panel) {
        return std::make_shared<const PanelPicture>(
            panel < m_chart.panels.size() ? pictureOf(subject, m_chart, panel, limits) : PanelPicture{});
    };
    // A chart of one panel is the lower one; it alone says that there is nothing.
    const bool isPair = m_chart.panels.size() > 1 && !m_chart.series.empty();
    m_upper->setVisible(isPair);
    const auto upper = pictureOfPanel(isPair ? 0 : 2);
    const auto lower = pictureOfPanel(isPair ? 1 : 0);
    m_upper->setPicture(upper, places);
    m_lower->setPicture(lower, places);
    m_key->setEntries(m_chart.series.empty() ? std::vector<ChartKeyEntry>()
                                             : keyOf({upper.get(), lower.get()}, charts::isTrend(subject.quantity),
                                                     !m_chart.changes.empty()));
    align();
    keepChosen(run, name);
    const int count = static_cast<int>(m_chart.series.size());
    if (sameLength)
        setWindow(m_from, m_to);
    else
        setWindow(std::max(0.5, count + 0.5 - firstInSight), count + 0.5);
}

/// One run stands at one distance from the left in both.
void ChartView::align()
{
    PanelSides widest = m_lower->sides();
    if (m_chart.panels.size() > 1) {
        const PanelSides upper = m_upper->sides();
        widest = {std::max(widest.numbers, upper.numbers), std::max(widest.labels, upper.labels)};
    }
    m_upper->setSides(widest);
    m_lower->setSides(widest);
}

void ChartView::keepChosen(qint64 run, const QString &name)
{
    m_chosen.reset();
    for (std::size_t i = 0; run != 0 && i < m_chart.series.size(); ++i) {
        if (m_chart.series[i].run->run == run && m_chart.series[i].name == name)
            m_chosen = i;
    }
    showWindow();
    describe();
}

void ChartView::setWindow(double from, double to)
{
    const double all = std::max<double>(1, static_cast<double>(m_chart.series.size()));
    const double width = std::clamp(to - from, std::min(fewestInSight, all), all);
    m_from = std::clamp(from, 0.5, all + 0.5 - width);
    m_to = m_from + width;
    showWindow();
}

void ChartView::showWindow()
{
    for (PanelView *panel : {m_upper, m_lower}) {
        panel->setWindow(m_from, m_to);
        panel->setChosen(m_chosen ? std::optional(static_cast<int>(*m_chosen) + 1) : std::nullopt);
    }
    const auto all = static_cast<double>(m_chart.series.size());
    const QSignalBlocker blocker(m_bar);
    m_bar->setVisible(m_to - m_from < all - 1e-6);
    m_bar->setRange(0, static_cast<int>(std::lround((all - (m_to - m_from)) * barSteps)));
    m_bar->setPageStep(static_cast<int>(std::lround((m_to - m_from) * barSteps)));
    m_bar->setValue(static_cast<int>(std::lround((m_from - 0.5) * barSteps)));
}

void ChartView::pan(double places)
{
    setWindow(m_from + places, m_to + places);
}

void ChartView::zoom(double factor, double about)
{
    setWindow(about - (about - m_from) * factor, about + (m_to - about) * factor);
}

void ChartView::showAll()
{
    setWindow(0.5, static_cast<double>(m_chart.series.size()) + 0.5);
}

void ChartView::choose(std::size_t point)
{
    if (point >= m_chart.series.size())
        return;
    m_chosen = point;
    bringIntoSight(point);
    describe();
    Q_EMIT pointChosen(static_cast<int>(point));
}

void ChartView::bringIntoSight(std::size_t point)
{
    const double place = static_cast<double>(point) + 1;
    const double width = m_to - m_from;
    if (place < m_from + 0.5)
        setWindow(place - 0.5, place - 0.5 + width);
    else if (place > m_to - 0.5)
        setWindow(place + 0.5 - width, place + 0.5);
    else
        showWindow();
}

void ChartView::describe()
{
    if (m_chart.series.empty())
        return;
    setAccessibleDescription(m_chosen ? charts::pointSentence(m_chart, *m_chosen)
                                      : charts::basisSentence(m_chart));
    QAccessibleEvent event(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
}

void ChartView::hit(int place)
{
    const auto point = static_cast<std::size_t>(place - 1);
    if (m_chosen == point)
        Q_EMIT pointOpened(static_cast<int>(point));
    else
        choose(point);
}

void ChartView::step(int points)
{
    if (m_chart.series.empty())
        return;
    const int last = static_cast<int>(m_chart.series.size()) - 1;
    const int from = m_chosen ? static_cast<int>(*m_chosen) : (points < 0 ? last + 1 : last - points);
    choose(static_cast<std::size_t>(std::clamp(from + points, 0, last)));
}

void ChartView::stepToNextFinding(bool forward)
{
    const std::set<std::size_t> points = outOfControl(m_chart);
    if (points.empty())
        return;
    const std::size_t from = m_chosen.value_or(forward ? 0 : m_chart.series.size());
    if (forward) {
        if (const auto next = m_chosen ? points.upper_bound(from) : points.begin(); next != points.end())
            choose(*next);
    } else if (const auto next = points.lower_bound(from); next != points.begin()) {
        choose(*std::prev(next));
    }
}

void ChartView::keyPressEvent(QKeyEvent *event)
{
    const bool withControl = event->modifiers() & Qt::ControlModifier;
    const double middle = m_chosen ? static_cast<double>(*m_chosen) + 1 : (m_from + m_to) / 2;
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
        if (withControl)
            stepToNextFinding(event->key() == Qt::Key_Right);
        else
            step(event->key() == Qt::Key_Right ? 1 : -1);
        return;
    case Qt::Key_PageUp:
        step(-10);
        return;
    case Qt::Key_PageDown:
        step(10);
        return;
    case Qt::Key_Home:
        choose(0);
        return;
    case Qt::Key_End:
        if (!m_chart.series.empty())
            choose(m_chart.series.size() - 1);
        return;
    case Qt::Key_Plus:
        zoom(0.5, middle);
        return;
    case Qt::Key_Minus:
        zoom(2, middle);
        return;
    case Qt::Key_0:
        showAll();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_chosen)
            Q_EMIT pointOpened(static_cast<int>(*m_chosen));
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void ChartView::mousePressEvent(QMouseEvent *)
{
    setFocus(Qt::MouseFocusReason);
}

void ChartView::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        align();
}

void ChartView::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    layout()->activate();
    align();
}

void ChartView::focusInEvent(QFocusEvent *event)
{
    QWidget::focusInEvent(event);
    update();
}

void ChartView::focusOutEvent(QFocusEvent *event)
{
    QWidget::focusOutEvent(event);
    update();
}

void ChartView::paintEvent(QPaintEvent *)
{
    if (!hasFocus())
        return;
    QPainter painter(this);
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void ChartView::paintOn(QPainter &painter)
{
    painter.fillRect(rect(), m_theme.base());
    for (PanelView *panel : {m_upper, m_lower}) {
        if (!panel->isHidden())
            panel->paintOn(painter, panel->geometry());
    }
    if (!m_key->isHidden())
        m_key->paintOn(painter, m_key->geometry());
}

} // namespace plateau::ui
