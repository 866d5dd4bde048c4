// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/paper.h"
#include "ui/print/worksheetcontent.h"

#include <QByteArray>

namespace plateau::ui {

/// The pipetting worksheet as a PDF: head with the code that finds the run again, the additions with their
/// lots, the table of tubes with a box to tick for each addition and room for the readings, cautions; black
/// and white, upright where the columns fit, else across. Needs a QGuiApplication; empty where nothing could
/// be drawn.
QByteArray worksheetPdf(const WorksheetContent &content, Paper paper);

/// "worksheet Perry tanks, morning.pdf": what a file dialog proposes, without signs that folders do not take.
QString worksheetFileName(const run::Run &run);

} // namespace plateau::ui
