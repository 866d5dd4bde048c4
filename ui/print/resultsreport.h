// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/paper.h"
#include "ui/print/reportcontent.h"

#include <QByteArray>

namespace plateau::ui {

/// The report for the customer: who tested what, how and when, the results with their uncertainties, who
/// answers for it. What ISO/IEC 17025:2017 asks of a report in 7.8.2.1 a) to p), 7.8.3.1, 7.8.6.2 and 7.8.8
/// (from memory, held against public summaries of the clause) has a place on it; what the program cannot know
/// is a caption with a line to write on, unless the content's fields say it. A run that nobody accepted is
/// marked as a draft on every page. Needs a QGuiApplication; empty where nothing could be drawn.
QByteArray resultsReportPdf(const ReportContent &content, Paper paper);

/// "report Perry tanks, morning.pdf": what a file dialog proposes, without signs that folders do not take.
QString resultsReportFileName(const ReportContent &content);

} // namespace plateau::ui
