// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reportsaving.h"

#include "ui/bench/printing.h"
#include "ui/bench/reportdialog.h"
#include "ui/bench/reportsource.h"
#include "ui/print/knownfields.h"
#include "ui/print/pdf.h"
#include "ui/print/resultscsv.h"
#include "ui/print/resultsreport.h"
#include "ui/print/runrecord.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/notice.h"

#include <QCoreApplication>
#include <QLocale>

namespace plateau::ui {

namespace {

struct ReportSavingWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ReportSaving)
};

void saveTable(QWidget *parent, Dialogs &dialogs, Notice &notice, const ReportContent &content)
{
    const QString path =
        dialogs.fileToSave(parent, ReportSavingWords::tr("Save the results as CSV"),
                           resultsCsvFileName(content), ReportSavingWords::tr("CSV files (*.csv)"));
    if (path.isEmpty())
        return;
    const QString fault = saveBytes(path, resultsCsv(content, CsvCells::Safe));
    if (fault.isEmpty())
        notice.sayDone(ReportSavingWords::tr("%1 was written, one row for each result.").arg(path));
    else
        notice.say(State::Bad, fault);
}

} // namespace

void saveReportAs(QWidget *parent, const Theme &theme, Dialogs &dialogs, Notice &notice,
                  ReportContent content, ReportKind kind, const QDateTime &now, const QString &person)
{
    const QLocale locale = QLocale::system();
    stampReport(content, now, person, locale);
    if (kind == ReportKind::Results) {
        ReportDialog form(theme, knownFields(content), parent);
        if (!dialogs.isAccepted(form))
            return;
        content.fields = form.fields();
    }
    if (kind == ReportKind::Table)
        saveTable(parent, dialogs, notice, content);
    else if (kind == ReportKind::Record)
        savePdfAs(parent, dialogs, notice, runRecordFileName(content),
                  runRecordPdf(content, usualPaper(locale)));
    else
        savePdfAs(parent, dialogs, notice, resultsReportFileName(content),
                  resultsReportPdf(content, usualPaper(locale)));
}

} // namespace plateau::ui
