// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/paper.h"
#include "ui/print/reportcontent.h"

#include <QByteArray>

namespace plateau::ui {

/// Everything that is known of the run, for the file: decisions, results, checks, method, samples, standards,
/// lots, tubes, readings with times and corrections, and the calculation of every result from the readings to
/// the value, so that it can be followed by hand from the pages alone; then the same of the runs it takes
/// results from, and the hashes that `plateau verify` recomputes. Marked as a draft until the run is
/// accepted, as a copy of the notebook's record from then on. Needs a QGuiApplication; empty where nothing
/// could be drawn.
QByteArray runRecordPdf(const ReportContent &content, Paper paper);

/// "run record Perry tanks, morning.pdf"
QString runRecordFileName(const ReportContent &content);

} // namespace plateau::ui
