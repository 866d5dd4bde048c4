// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/reportcontent.h"

#include <QString>
#include <QStringList>

namespace plateau::test {

/// The runs of sampledata, by file name.
QStringList sampleRuns();
/// One of them, evaluated, made at a fixed time.
ui::ReportContent reportOfSample(const QString &fileName);
ui::ReportContent reportOfRun(const run::Run &run, const assay::Method &method);

/// As a notebook would have it: run 12, put on the bench, accepted by a reviewer.
void accept(ui::ReportContent &content);

/// Without any blanks, as lines are broken where they have to be.
QString packed(const QString &text);

} // namespace plateau::test
