// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechart.h"

#include "ui/shared/theme.h"
#include "ui/shared/timechartpainting.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace plateau::ui {

TimeChart::TimeChart(const Theme &theme, const QString &accessibleName, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(accessibleName);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
    describe();
}

void TimeChart::setData(TimeChartData data)
{
    if (data == m_data)
        return;
    m_data = std::move(data);
    m_chosen = std::min(m_chosen, rowsOf(m_data) - 1);
    describe();
    updateGeometry();
    update();
}

void TimeChart::chooseRow(int row)
{
    row = std::clamp(row, -1, rowsOf(m_data) - 1);
    if (row == m_chosen)
        return;
    m_chosen = row;
    describe();
    update();
    Q_EMIT rowChosen(row);
}

void TimeChart::describe()
{
    // What was chosen last is said first; the whole follows.
    QString text = rowsOf(m_data) == 0 ? tr("There is nothing to draw yet.") : chartText(m_data);
    if (m_chosen >= 0)
        text = tr("Row %1 of %2, %3")
                   .arg(QString::number(m_chosen + 1), QString::number(rowsOf(m_data)),
                        rowText(rowOf(m_data, m_chosen))) +
               u'\n' + text;
    setAccessibleDescription(text);
}

TextMeasures TimeChart::measures() const
{
    const QFontMetricsF metrics(font());
    double name = 0;
    for (const TimeRack &rack : m_data.racks) {
        for (const TimeRow &row : rack.rows)
            name = std::max(name, metrics.horizontalAdvance(row.name));
    }
    name = std::max(name, metrics.horizontalAdvance(handsWord()));
    return {metrics.lineSpacing(), std::min(name, 16 * metrics.averageCharWidth()),
            metrics.horizontalAdvance(QStringLiteral("000"))};
}

TimeChartLayout TimeChart::currentLayout() const
{
    return layOut(m_data, size(), measures());
}

QSize TimeChart::sizeHint() const
{
    const TextMeasures text = measures();
    return {static_cast<int>(text.name + 40 * text.number / 2),
            static_cast<int>(std::ceil(usualHeight(m_data, text)))};
}

QSize TimeChart::minimumSizeHint() const
{
    const TextMeasures text = measures();
    return {static_cast<int>(text.name + 8 * text.number),
            static_cast<int>(std::ceil(smallestHeight(m_data, text)))};
}

void TimeChart::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    paintTimeChart(painter, {m_theme, m_data, currentLayout(), m_chosen, hasFocus()});
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
    default:
        QWidget::keyPressEvent(event);
    }
}

void TimeChart::mousePressEvent(QMouseEvent *event)
{
    const int row = currentLayout().rowAt(event->position().y());
    if (row >= 0)
        chooseRow(row);
}

void TimeChart::focusInEvent(QFocusEvent *event)
{
    // Whoever comes by the keyboard hears a row at once.
    if (m_chosen < 0)
        chooseRow(0);
    QWidget::focusInEvent(event);
}

void TimeChart::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        updateGeometry();
}

} // namespace plateau::ui
