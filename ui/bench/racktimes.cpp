// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/racktimes.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/rackpicture.h"
#include "ui/shared/timechart.h"

#include <QScrollArea>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Longer racks are seen through a window of time around now.
constexpr int visible_s = 45 * 60;

} // namespace

RackTimes::RackTimes(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_chart(new TimeChart(theme, tr("Tubes against time"), this))
    , m_scroll(new QScrollArea(this))
{
    m_chart->setObjectName(u"rackTimes"_s);
    m_scroll->setWidget(m_chart);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_scroll);
    connect(m_chart, &TimeChart::rowActivated, this, &RackTimes::tubeWanted);
    connect(&session, &BenchSession::ticked, this, &RackTimes::tick);
    connect(&session, &BenchSession::rackChanged, this, [this](notebook::RunId id) {
        if (id == m_id)
            refresh();
    });
}

void RackTimes::showRack(notebook::RunId id)
{
    m_id = id;
    refresh();
}

void RackTimes::showTube(int tube)
{
    if (tube >= 0 && tube != m_chart->chosenRow())
        m_chart->chooseRow(tube);
}

bool RackTimes::isWorthSeeing() const
{
    const Rack *rack = m_session.find(m_id);
    return rack && !rack->stored.clock.isEmpty();
}

void RackTimes::refresh()
{
    const Rack *rack = m_session.find(m_id);
    if (!rack)
        return;
    TimeChartData picture = pictureOf(*rack, m_session.now_min(*rack));
    picture.visible_s = stretchAroundNow(picture, visible_s);
    m_chart->setData(std::move(picture));
}

void RackTimes::tick()
{
    const Rack *rack = m_session.find(m_id);
    if (!rack || !isVisible() || rack->stored.clock.isEmpty())
        return;
    TimeChartData moved = m_chart->data();
    moved.now_s = static_cast<int>(m_session.now_min(*rack) * 60);
    // The stretch moves on now and then; else only the line of now does.
    const auto stretch = stretchAroundNow(moved, visible_s);
    if (stretch == moved.visible_s) {
        m_chart->setNow(moved.now_s);
        return;
    }
    moved.visible_s = stretch;
    m_chart->setData(std::move(moved));
}

} // namespace plateau::ui
