// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/decimalsign.h"
#include "ui/print/paper.h"
#include "ui/print/reportfields.h"
#include "ui/print/resultscsv.h"

#include <QStringList>

namespace plateau::app {

struct ReportArguments {
    /// A run file, or a run's number in the notebook.
    QString file;
    qint64 run = 0;
    /// Which of its decisions; 0: as it stands.
    int revision = 0;
    QStringList with;
    QString notebook;
    /// What is to be written; at least one of them.
    QString pdf;
    QString csv;
    /// The PDF is the run record in place of the report of results.
    bool isRecord = false;
    ui::CsvCells cells = ui::CsvCells::Safe;
    ui::Paper paper = ui::Paper::A4;
    ui::DecimalSign decimalSign = ui::DecimalSign::Point;
    ui::ReportFields fields;
    QString person;
    /// What is wrong with them; empty: nothing.
    QString fault;
};

ReportArguments reportArguments(const QStringList &arguments);

} // namespace plateau::app
