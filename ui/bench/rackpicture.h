// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartdata.h"

#include <QString>

namespace plateau::ui {

struct Rack;

/// The rack against its own clock: what was added and read to each tube, the waits between, the time in which
/// the next thing is to be done, and how far a reading was early or late. No rows where nothing was marked.
TimeChartData pictureOf(const Rack &rack, double now_min);

/// How far what was read lies outside its method's wait: "A1 early by 0:30", "A2 late by 1:10"; empty where
/// all was in time, or nobody knows.
QString untimelyText(const Rack &rack, int tube);

} // namespace plateau::ui
