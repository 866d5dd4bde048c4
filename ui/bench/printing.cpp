// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/printing.h"

#include "core/planning/schedule.h"
#include "ui/bench/benchworksheet.h"
#include "ui/bench/lotsonpaper.h"
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

/// Of each tube, in seconds after the first tube's start: by reading, and by the method's add step.
struct DueTimes {
    std::map<QString, std::vector<int>> readings;
    std::map<int, std::vector<int>> additions;
};

/// The method's add steps, one after the other.
class AddSteps
{
public:
    explicit AddSteps(const assay::Method &method)
        : m_method(method)
    {
    }
    /// Index of the next step that adds the component; -1 where none does.
    int next(const QString &component)
    {
        while (m_at < m_method.steps.size()) {
            const auto *add = std::get_if<assay::AddStep>(&m_method.steps[m_at++]);
            if (add && add->component == component)
                return static_cast<int>(m_at) - 1;
        }
        return -1;
    }

private:
    const assay::Method &m_method;
    std::size_t m_at = 0;
};

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
    const auto timesOf = [&](std::size_t operation) {
        std::vector<int> times;
        for (int tube = 0; tube < tubes; ++tube)
            times.push_back(tube * interval_s + schedule->offset_s[operation]);
        return times;
    };
    AddSteps steps(method);
    for (const planning::Operation &operation : procedure.setUp) {
        for (const QString &component : operation.names)
            steps.next(component);
    }
    for (std::size_t i = 0; i < procedure.timed.size(); ++i) {
        const planning::Operation &operation = procedure.timed[i];
        if (operation.kind == planning::Operation::Kind::Read) {
            due.readings.try_emplace(operation.names.front(), timesOf(i));
            continue;
        }
        // What goes in with the first one has its time.
        for (const QString &component : operation.names) {
            const int step = steps.next(component);
            if (component == operation.names.front())
                due.additions.try_emplace(step, timesOf(i));
        }
    }
    return due;
}

} // namespace

WorksheetContent worksheetOf(const notebook::StoredRun &stored, const planning::Laboratory &laboratory,
                             const QString &person, const std::vector<planning::Lot> &inHand,
                             const QDateTime &at)
{
    run::Run planned = stored.run;
    for (run::Tube &tube : planned.tubes)
        tube.pipetted_mL.clear();
    // Until something is done the run has the time of its plan, and when it begins is to be written in.
    if (stored.marks.empty() && stored.readings.empty())
        planned.startedAt.reset();
    WorksheetContent content = worksheetOf(stored.method, planned, laboratory.glassware);
    content.lotsByRound = lotsOnPaper(sheetOf(stored, laboratory.glassware, false), inHand, at);
    content.laboratory = laboratory.name;
    content.person = person;
    content.runCode = stored.runCode;
    content.rackColumns = rackColumns(stored, laboratory);
    if (stored.plan && stored.plan->interval_s) {
        content.startInterval_s = stored.plan->interval_s;
        DueTimes due = dueTimes(stored.method, planned, laboratory.handling, *stored.plan->interval_s);
        content.readAt_s = std::move(due.readings);
        content.startAt_s = std::move(due.additions);
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
