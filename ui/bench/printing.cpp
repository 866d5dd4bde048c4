// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/printing.h"

#include "core/planning/schedule.h"
#include "ui/bench/benchworksheet.h"
#include "ui/print/pdf.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/notice.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct PrintingWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Printing)
};

using DueTimes = std::map<QString, std::vector<int>>;

/// Of a series the first reading. Empty where there is no schedule of that interval.
DueTimes dueTimes(const assay::Method &method, const run::Run &run, const planning::HandlingTimes &handling,
                  int interval_s)
{
    const bool spikes =
        std::ranges::any_of(run.tubes, [](const run::Tube &tube) { return tube.spike.has_value(); });
    const planning::Procedure procedure = planning::procedureOf(method, handling, spikes);
    const int tubes = static_cast<int>(run.tubes.size());
    const auto schedule = planning::scheduleOf(procedure, tubes);
    DueTimes due;
    if (!schedule || schedule->interval_s != interval_s)
        return due;
    for (std::size_t i = 0; i < procedure.timed.size(); ++i) {
        const planning::Operation &operation = procedure.timed[i];
        if (operation.kind != planning::Operation::Kind::Read || due.contains(operation.names.front()))
            continue;
        for (int tube = 0; tube < tubes; ++tube)
            due[operation.names.front()].push_back(tube * interval_s + schedule->offset_s[i]);
    }
    return due;
}

} // namespace

WorksheetContent worksheetOf(const notebook::StoredRun &stored, const planning::Laboratory &laboratory,
                             const QString &person)
{
    run::Run planned = stored.run;
    for (run::Tube &tube : planned.tubes)
        tube.pipetted_mL.clear();
    WorksheetContent content = worksheetOf(stored.method, planned, laboratory.glassware);
    content.laboratory = laboratory.name;
    content.person = person;
    content.runCode = stored.runCode;
    content.rackColumns = rackColumns(stored, laboratory);
    if (stored.plan && stored.plan->interval_s) {
        content.startInterval_s = stored.plan->interval_s;
        content.readAt_s = dueTimes(stored.method, planned, laboratory.handling, *stored.plan->interval_s);
    }
    return content;
}

bool savePdfAs(QWidget *parent, Dialogs &dialogs, Notice &notice, const QString &suggestedName,
               const QByteArray &pdf)
{
    const QString path = dialogs.fileToSave(parent, PrintingWords::tr("Save as PDF"), suggestedName,
                                            PrintingWords::tr("PDF files (*.pdf)"));
    if (path.isEmpty())
        return false;
    const QString fault = savePdf(path, pdf);
    if (fault.isEmpty())
        notice.sayDone(PrintingWords::tr("%1 was written; open it to look at it or to print it.").arg(path));
    else
        notice.say(State::Bad, fault);
    return fault.isEmpty();
}

} // namespace plateau::ui
