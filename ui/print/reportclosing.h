// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/pageflow.h"
#include "ui/print/reportcontent.h"

namespace plateau::ui {

/// What a report of results says below its results: the method, what was otherwise, what only the laboratory
/// knows, what holds for every report, who answers for it.
void writeReportClosing(PageFlow &flow, const ReportContent &content);

} // namespace plateau::ui
