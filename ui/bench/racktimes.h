// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/ids.h"

#include <QWidget>

class QScrollArea;

namespace plateau::ui {

class BenchSession;
class Theme;
class TimeChart;

/// One rack's tubes against time, with the line of now going on.
class RackTimes : public QWidget
{
    Q_OBJECT

public:
    RackTimes(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    void showRack(notebook::RunId id);
    void showTube(int tube);
    /// Whether anything was marked, so that there is something to see.
    bool isWorthSeeing() const;

Q_SIGNALS:
    /// Somebody chose a tube of the chart.
    void tubeWanted(int tube);

private:
    void refresh();
    void tick();

    BenchSession &m_session;
    TimeChart *m_chart;
    QScrollArea *m_scroll;
    notebook::RunId m_id;
};

} // namespace plateau::ui
