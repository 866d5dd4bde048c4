// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/runpapers.h"

#include "core/exchange/writers.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/labelprinting.h"
#include "ui/bench/pipettesource.h"
#include "ui/bench/printing.h"
#include "ui/bench/stores.h"
#include "ui/print/worksheetpdf.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/guard.h"
#include "ui/shared/notice.h"

#include <QCoreApplication>
#include <QLocale>
#include <QSaveFile>

namespace plateau::ui {

namespace {

struct RunPapersWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunPapers)
};

} // namespace

void RunPapers::saveCopy(notebook::RunId id, QWidget *over)
{
    m_notice.clear();
    guarded(m_notice, [&] {
        const notebook::StoredRun stored = m_session.load(id);
        const QString path =
            m_dialogs.fileToSave(over, RunPapersWords::tr("Save a copy of the run"),
                                 RunPapersWords::tr("run.json"), RunPapersWords::tr("Run files (*.json)"));
        if (path.isEmpty())
            return;
        QSaveFile file(path);
        const QByteArray bytes = exchange::writeRun(stored.run, &stored.method);
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
            m_notice.say(State::Bad,
                         RunPapersWords::tr("The copy could not be written to %1: %2. Choose another "
                                            "place; the run itself is in the notebook as before.")
                             .arg(path, file.errorString()));
        else
            m_notice.sayDone(RunPapersWords::tr("A copy of the run was written to %1.").arg(path));
    });
}

void RunPapers::saveWorksheet(notebook::RunId id, QWidget *over)
{
    m_notice.clear();
    guarded(m_notice, [&] {
        const notebook::StoredRun stored = m_session.load(id);
        const WorksheetContent content = worksheetOf(stored, m_stores.laboratory(), m_session.person(),
                                                     lotsFor(stored, m_stores), m_session.now().wall);
        savePdfAs(over, m_dialogs, m_notice, worksheetFileName(stored.run),
                  worksheetPdf(content, usualPaper(QLocale::system())));
    });
}

void RunPapers::saveLabels(notebook::RunId id, QWidget *over)
{
    m_notice.clear();
    guarded(m_notice, [&] {
        saveLabelsAs(over, m_theme, m_dialogs, m_notice, m_session.load(id).run, m_session.person());
    });
}

void RunPapers::saveReport(notebook::RunId id, ReportKind kind, QWidget *over)
{
    m_notice.clear();
    guarded(m_notice, [&] {
        saveReportAs(over, m_theme, m_dialogs, m_notice, m_session.report(id), kind, m_session.now().wall,
                     m_session.person());
    });
}

} // namespace plateau::ui
