// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reportsource.h"

#include "core/planning/uncertaintyowners.h"
#include "ui/bench/reportchoices.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ReportSourceWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ReportSource)
};

QString roleName(notebook::PersonRole role)
{
    switch (role) {
    case notebook::PersonRole::Reviewer:
        return ReportSourceWords::tr("reviewer");
    case notebook::PersonRole::Head:
        return ReportSourceWords::tr("head of the laboratory");
    case notebook::PersonRole::Analyst:
        break;
    }
    return ReportSourceWords::tr("analyst");
}

QString decisionWord(bool isAccepted)
{
    return isAccepted ? ReportSourceWords::tr("accepted") : ReportSourceWords::tr("rejected");
}

/// A sample that is decided otherwise than its run: "Ice cider: rejected (cloudy)".
QString sampleDecisionText(const notebook::SampleDecision &decision)
{
    QString what = ReportSourceWords::tr("%1: accepted");
    if (decision.kind == notebook::SampleDecisionKind::Rejected)
        what = ReportSourceWords::tr("%1: rejected");
    else if (decision.kind == notebook::SampleDecisionKind::Repeat)
        what = ReportSourceWords::tr("%1: to be repeated");
    what = what.arg(decision.sample);
    return decision.reason.isEmpty() ? what : ReportSourceWords::tr("%1 (%2)").arg(what, decision.reason);
}

ReportAct actOf(const notebook::Reopening &reopening)
{
    ReportAct act{reopening.person, {}, reopening.reason, reopening.at, {}};
    if (reopening.signedAs) {
        act.role = roleName(*reopening.signedAs);
        act.isSigned = true;
    }
    return act;
}

ReportDecision decisionOf(const notebook::StoredRun &stored, std::size_t index)
{
    const notebook::Decision &decision = stored.decisions[index];
    ReportDecision report;
    report.what = decisionWord(decision.kind == notebook::DecisionKind::Accepted);
    for (const notebook::SampleDecision &sample : decision.samples)
        report.samples << sampleDecisionText(sample);
    report.act = {decision.person, {}, decision.reason, decision.at, decision.signedAs.has_value()};
    if (decision.signedAs)
        report.act.role = roleName(*decision.signedAs);
    report.contentHash = decision.contentHash;
    report.programVersion = decision.programVersion;
    for (const notebook::Reopening &reopening : stored.reopenings) {
        if (reopening.decision == static_cast<int>(index))
            report.takenBack = actOf(reopening);
    }
    return report;
}

std::optional<run::Reading> replacedBy(const notebook::StoredRun &stored,
                                       const notebook::StoredReading &reading)
{
    // One more reading of a series names the one before as well, but corrects nothing.
    if (!reading.corrects || reading.again)
        return std::nullopt;
    const auto old = std::ranges::find(stored.readings, *reading.corrects, &notebook::StoredReading::id);
    return old == stored.readings.end() ? std::nullopt : std::optional(old->value);
}

/// What counts of the marks: ticks of one component from one container by one person in one line.
std::vector<ReportDosing> dosingsOf(const notebook::StoredRun &stored)
{
    std::vector<ReportDosing> dosings;
    for (const notebook::StoredMark &mark : stored.marks) {
        if (mark.kind != notebook::MarkKind::Done || notebook::doneMark(stored.marks, mark.dose) != &mark)
            continue;
        const assay::Component *component = assay::findComponent(stored.method, mark.dose.component);
        QString name = component ? component->name : mark.dose.component;
        if (mark.dose.spike)
            name = ReportSourceWords::tr("spike");
        auto dosing = std::ranges::find_if(dosings, [&](const ReportDosing &known) {
            return known.component == name && known.lot == mark.lotName && known.pipette == mark.pipette &&
                   known.person == mark.person;
        });
        if (dosing == dosings.end())
            dosing = dosings.insert(dosings.end(), {name, mark.lotName, mark.lotExpires, mark.pipette,
                                                    mark.person, 0, mark.at, mark.at});
        ++dosing->tubes;
        dosing->first = std::min(dosing->first, mark.at);
        dosing->last = std::max(dosing->last, mark.at);
    }
    return dosings;
}

std::vector<ReportDilution> tickedDilutionsOf(const notebook::StoredRun &stored)
{
    std::vector<ReportDilution> dilutions;
    for (int sample = 0; sample < static_cast<int>(stored.run.samples.size()); ++sample) {
        const run::Sample &own = stored.run.samples[static_cast<std::size_t>(sample)];
        const int steps = static_cast<int>(own.dilution.size());
        for (int step = 0; step < steps; ++step) {
            if (const auto *mark = notebook::doneMark(stored.dilutionMarks, {sample, step}))
                dilutions.push_back({own.id, step + 1, steps, own.dilution[static_cast<std::size_t>(step)],
                                     mark->person, mark->at});
        }
    }
    return dilutions;
}

/// Empty for what was keyed, or came with its run.
QString originText(const notebook::ReadingOrigin &origin)
{
    using enum notebook::ReadingOrigin::Kind;
    switch (origin.kind) {
    case Pasted:
        return ReportSourceWords::tr("pasted");
    case File:
        return ReportSourceWords::tr("from the file %1").arg(origin.source);
    case Serial:
        return ReportSourceWords::tr("sent over the serial line %1").arg(origin.source);
    case Network:
        return ReportSourceWords::tr("sent over the network, %1").arg(origin.source);
    case Keyed:
        break;
    }
    return {};
}

ReportReading readingOf(const notebook::StoredRun &stored, const notebook::StoredReading &reading)
{
    ReportReading report;
    report.tube = reading.tube;
    report.reading = reading.reading;
    report.value = reading.value;
    report.typed = reading.typed;
    report.act = {reading.person, {}, reading.reason, reading.at, {}};
    report.replaces = replacedBy(stored, reading);
    report.origin = originText(reading.origin);
    report.line = reading.origin.line;
    report.again = reading.again;
    return report;
}

ReportRecord recordOf(const notebook::StoredRun &stored, const QString &notebook,
                      const notebook::AuditHead &head)
{
    ReportRecord record;
    record.run = stored.summary.id.value;
    record.notebook = QFileInfo(notebook).fileName();
    if (stored.summary.state == notebook::RunState::Accepted)
        record.state = ReportState::Accepted;
    else if (stored.summary.state == notebook::RunState::Rejected)
        record.state = ReportState::Rejected;
    record.revision = stored.summary.revision;
    record.addedAt = stored.summary.createdAt;
    for (const notebook::StoredReading &reading : stored.readings)
        record.readings.push_back(readingOf(stored, reading));
    record.dosings = dosingsOf(stored);
    record.dilutions = tickedDilutionsOf(stored);
    for (const notebook::ClockJump &jump : stored.clockJumps)
        record.clockJumps.push_back({jump.at, jump.shift_ms, jump.person});
    for (std::size_t i = 0; i < stored.decisions.size(); ++i)
        record.decisions.push_back(decisionOf(stored, i));
    record.auditEntries = head.entries;
    record.auditHead = head.hash;
    return record;
}

std::vector<ReportItem> itemsOf(const notebook::StoredRun &stored)
{
    std::vector<ReportItem> items;
    if (!stored.plan)
        return items;
    for (const planning::PlannedSample &planned : stored.plan->samples)
        items.push_back({planned.sample.id, planned.sample.product, planned.sample.receivedAt,
                         planned.sample.receivedFrom});
    return items;
}

/// Of a sample that was planned by its name alone: when the registration came that the run took. The day of an earlier
/// sample of that name would be wrong, so that nothing is better.
void addArrivals(std::vector<ReportItem> &items, const notebook::Notebook &notebook, const notebook::StoredRun &stored)
{
    for (const run::Sample &sample : stored.run.samples) {
        auto item = std::ranges::find(items, sample.id, &ReportItem::sample);
        if (item != items.end() && item->receivedAt)
            continue;
        const auto taken = notebook.shelf().takenBy(stored.summary.id, sample.id);
        if (!taken || !taken->receivedAt)
            continue;
        if (item == items.end())
            item = items.insert(items.end(), {sample.id, {}, {}, {}});
        item->receivedAt = taken->receivedAt;
        item->receivedFrom = taken->receivedFrom;
    }
}

/// What the standing decision says of the sample, and the unit that the laboratory reports its product in.
std::vector<ReportedResult> reportedIn(const ReportContent &content, const notebook::StoredRun &stored,
                                       const planning::Laboratory &laboratory)
{
    const bool isDecided = stored.summary.state != notebook::RunState::OnBench && !stored.decisions.empty();
    std::vector<ReportedResult> all;
    for (const evaluation::Result &result : content.evaluation.results) {
        ReportedResult reported;
        reported.sample = result.sample;
        reported.measurand = result.measurand;
        const ReportItem *item = findItem(content, result.sample);
        if (const auto unit = planning::reportUnitOf(laboratory, item ? item->product : QString(), result.measurand,
                                                     evaluation::formOf(result.unit)))
            reported.unit = *unit;
        if (isDecided) {
            const notebook::Decision &decision = stored.decisions.back();
            reported.isReported =
                notebook::decidedOf(decision, result.sample) == notebook::SampleDecisionKind::Accepted;
            for (const notebook::SampleDecision &sample : decision.samples) {
                if (sample.sample != result.sample)
                    continue;
                if (sample.kind == notebook::SampleDecisionKind::Accepted)
                    reported.reason = sample.reason;
                else
                    reported.remark = sampleDecisionText(sample);
            }
        }
        all.push_back(reported);
    }
    return all;
}

} // namespace

void tellLaboratory(ReportContent &content, const planning::Laboratory &laboratory)
{
    const planning::ReportHead &head = laboratory.reportHead;
    content.laboratory = {laboratory.name, head.address.join(u'\n'), head.contact,
                          head.logo ? head.logo->bytes : QByteArray()};
    content.inputs = planning::uncertaintySources(content.method, laboratory, content.run);
    for (ReportCompanion &companion : content.companions)
        companion.inputs = planning::uncertaintySources(companion.method, laboratory, companion.run);
}

ReportContent reportOf(const notebook::StoredRun &stored, const planning::Laboratory &laboratory,
                       const QString &notebook, const notebook::AuditHead &head)
{
    ReportContent content = reportOf(stored.method, stored.run, stored.companions);
    content.runCode = stored.runCode;
    tellLaboratory(content, laboratory);
    content.record = recordOf(stored, notebook, head);
    for (std::size_t i = 0; i < content.companions.size(); ++i)
        content.companions[i].number = stored.companionRuns[i].value;
    content.items = itemsOf(stored);
    // As they were when the run was planned; without that, as the laboratory has them now.
    if (stored.plan && !stored.plan->owners.empty())
        content.inputs = planning::statedOnRecord(stored.run, stored.plan);
    content.reported = reportedIn(content, stored, laboratory);
    return content;
}

ReportContent reportOf(const notebook::Notebook &notebook, notebook::RunId run, std::optional<int> revision)
{
    const notebook::StoredRun present = notebook.load(run);
    const bool isPresent = !revision || (present.summary.state != notebook::RunState::OnBench &&
                                         *revision == present.summary.revision);
    const notebook::StoredRun stored = isPresent ? present : notebook.loadRevision(run, *revision);
    const notebook::DecisionBasis basis =
        notebook.decisionBasis(run, isPresent ? std::nullopt : revision); // whatever was saved since
    ReportContent content = reportOf(stored, notebook.laboratory(), notebook.path(), notebook.auditHead());
    content.reported = reportedIn(content, stored, basis.laboratory);
    addArrivals(content.items, notebook, stored);
    if (isPresent)
        addChoices(content, notebook, stored);
    else
        content.record->state = ReportState::Replaced;
    addLimits(content, basis.specifications);
    return content;
}

void stampReport(ReportContent &content, const QDateTime &now, const QString &person, const QLocale &locale)
{
    content.programVersion = QCoreApplication::applicationVersion();
    content.madeAt = now;
    content.madeBy = person;
    content.decimalSign = usualDecimalSign(locale);
}

} // namespace plateau::ui
