// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/controlchart.h"

#include <QByteArray>
#include <QString>

namespace plateau::ui {

class ChartView;

/// A row for each point, in UTF-8 with commas and points (RFC 4180): run, title, time, name, value, unit,
/// expanded uncertainty, accepted, left out and why, distance from the centre in standard deviations, what it
/// breaks. A text that a spreadsheet would take for a formula has an apostrophe before it.
QByteArray chartCsv(const charts::ControlChart &chart);

/// As it is on the screen.
QByteArray chartPng(ChartView &view);
QByteArray chartSvg(ChartView &view, const QString &title);

/// By the file's ending: .png, .svg, else .csv. A sentence where it could not be written, and nothing of it
/// is there then.
QString saveChart(ChartView &view, const QString &title, const QString &path);

} // namespace plateau::ui
