// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/rundraft.h"

#include "core/evaluation/checksnotmade.h"
#include "core/evaluation/format.h"
#include "core/evaluation/standardage.h"
#include "core/exchange/keyedmoment.h"
#include "core/planning/expectation.h"
#include "core/planning/glassfor.h"
#include "core/planning/uncertaintyowners.h"
#include "core/run/soundness.h"
#include "ui/bench/drafteduncertainty.h"
#include "ui/shared/numberreader.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct RunDraftWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunDraft)
};

using assay::pointerTo;

/// Reads the texts of a draft; what is no number or no time goes to the problems with its place.
class Reader : public NumberReader
{
public:
    using NumberReader::NumberReader;

    QDateTime moment(const QString &text, const QDateTime &now, const QString &pointer) const
    {
        return read(exchange::parseKeyedMoment(text, now), now, pointer);
    }

    QDateTime dayOrMoment(const QString &text, const QDateTime &now, const QString &pointer) const
    {
        return read(exchange::parseKeyedDayOrMoment(text, now), now, pointer);
    }

    void remark(const QString &pointer, const QString &sentence) const
    {
        m_problems.push_back(assay::warning(pointer, sentence));
    }

private:
    QDateTime read(const std::variant<QDateTime, exchange::MomentFault> &parsed, const QDateTime &now,
                   const QString &pointer) const
    {
        if (const QDateTime *value = std::get_if<QDateTime>(&parsed))
            return *value;
        complain(pointer, exchange::faultSentence(std::get<exchange::MomentFault>(parsed)));
        return now;
    }
};

bool isBlank(const DilutionDraft &step)
{
    return step.take_mL.trimmed().isEmpty() && step.makeUpTo_mL.trimmed().isEmpty();
}

run::Sample sampleOf(const SampleDraft &draft, run::Form form, const planning::Glassware &glassware,
                     const Reader &reader, const QString &pointer)
{
    run::Sample sample;
    sample.id = draft.id;
    sample.form = form;
    if (form == run::Form::Solid) {
        sample.mass_g = reader.number(draft.mass_g, pointerTo(pointer, u"mass_g"_s));
        sample.extract_mL = reader.number(draft.extract_mL, pointerTo(pointer, u"extract_mL"_s));
    }
    const QString steps = pointerTo(pointer, u"dilution"_s);
    for (const DilutionDraft &step : draft.dilution) {
        if (isBlank(step))
            continue;
        const QString place = pointerTo(steps, static_cast<qsizetype>(sample.dilution.size()));
        run::DilutionStep read{reader.number(step.take_mL, pointerTo(place, u"take_mL"_s)),
                               reader.number(step.makeUpTo_mL, pointerTo(place, u"makeUpTo_mL"_s))};
        if (const auto glass = planning::glassFor(read, glassware))
            read.uncertainty_percent = glass->uncertainty_percent;
        sample.dilution.push_back(read);
    }
    return sample;
}

/// A loss and a time that nobody gave must not make a standard count at full strength.
run::Standard standardOf(const StandardDraft &typed, const RunDraft &draft, const assay::Method &method,
                         const Reader &reader, const QString &pointer, bool isControl)
{
    const QString lossPlace = pointerTo(pointer, u"lossPerHour"_s);
    const QString preparedPlace = pointerTo(pointer, u"preparedAt"_s);
    run::Standard standard;
    standard.id = typed.id.trimmed();
    standard.concentration_g_per_L =
        reader.number(typed.concentration_g_per_L, pointerTo(pointer, u"concentration_g_per_L"_s));
    standard.uncertainty_percent =
        reader.optionalNumber(typed.uncertainty_percent, pointerTo(pointer, u"uncertainty_percent"_s));
    const bool lossGiven = !typed.lossPerHour_percent.trimmed().isEmpty();
    if (lossGiven)
        standard.lossPerHour = reader.number(typed.lossPerHour_percent, lossPlace) / 100;
    else
        reader.complain(lossPlace,
                        RunDraftWords::tr("Say how much of its strength it loses in an hour; 0 if it keeps "
                                          "its strength for the day."));
    const double usualLoss = method.standard ? method.standard->lossPerHour.value_or(0) : 0;
    // A control is no standard of the method.
    if (lossGiven && standard.lossPerHour == 0 && usualLoss > 0 && !isControl)
        reader.remark(lossPlace,
                      RunDraftWords::tr("With 0 it counts at full strength all day; the method expects a "
                                        "loss of %1 % an hour.")
                          .arg(evaluation::plainText(usualLoss * 100)));

    if (!typed.preparedAt.trimmed().isEmpty()) {
        standard.preparedAt = reader.moment(typed.preparedAt, draft.startedAt, preparedPlace);
    } else if (standard.lossPerHour > 0 || !typed.usedWhenRead) {
        reader.complain(preparedPlace,
                        RunDraftWords::tr("Say when it was made, such as 8:10, so that its strength at use "
                                          "can be worked out."));
        standard.preparedAt = draft.startedAt; // stands in, so that the same is not said again in other words
    }
    if (!typed.usedWhenRead)
        standard.usedAt = reader.moment(typed.usedAt, draft.startedAt, pointerTo(pointer, u"usedAt"_s));
    return standard;
}

/// What is known of the sample beyond the run.
planning::PlannedSample plannedOf(const SampleDraft &draft, const run::Sample &sample, const RunDraft &whole,
                                  const assay::Method &method, const Reader &reader, const QString &pointer)
{
    planning::PlannedSample planned;
    planned.sample.id = sample.id;
    planned.sample.form = sample.form;
    planned.sample.matrix = draft.matrix;
    planned.sample.product = draft.product.simplified();
    planned.sample.receivedFrom = draft.receivedFrom.simplified();
    planned.repeats = draft.repeats;
    if (!draft.received.trimmed().isEmpty())
        planned.sample.receivedAt =
            reader.dayOrMoment(draft.received, whole.startedAt, pointerTo(pointer, u"received"_s));
    const std::size_t known = std::min(draft.expected.size(), method.measurands.size());
    for (std::size_t measurand = 0; measurand < known; ++measurand) {
        const auto expected =
            reader.optionalNumber(draft.expected[measurand], pointerTo(pointer, u"expected"_s));
        if (expected)
            planned.sample.expected[method.measurands[measurand].id] = *expected;
    }
    for (const run::DilutionStep &step : sample.dilution) {
        if (const auto glass = planning::glassFor(step, whole.laboratory.glassware))
            planned.glass.push_back({glass->pipette, glass->flask});
    }
    if (planned.glass.size() != sample.dilution.size())
        planned.glass.clear(); // named for each step or for none
    return planned;
}

/// A whole number of tubes that was typed.
int tubeCount(const QString &text, int usual, const Reader &reader, const QString &pointer)
{
    const std::optional<double> typed = reader.optionalNumber(text, pointer);
    if (!typed)
        return usual;
    if (*typed >= 1 && *typed <= 12 && *typed == std::floor(*typed))
        return static_cast<int>(*typed);
    reader.complain(pointer, RunDraftWords::tr("Between 1 and 12 tubes per sample, as a whole number."));
    return usual;
}

void addTubes(run::Run &run, run::Tube tube, int count)
{
    run.tubes.insert(run.tubes.end(), static_cast<std::size_t>(count), tube);
}

void addStandardTubes(run::Run &run, const StandardDraft &draft, run::Role role, const QString &id,
                      const Reader &reader, const QString &pointer)
{
    run::Tube tube;
    tube.role = role;
    tube.standard = id;
    static const QRegularExpression gaps(u"[;\\s]+"_s, QRegularExpression::UseUnicodePropertiesOption);
    const QStringList volumes = draft.volumes_mL.split(gaps, Qt::SkipEmptyParts);
    if (volumes.isEmpty())
        addTubes(run, tube, draft.tubes);
    for (const QString &volume : volumes) {
        tube.sampleVolume_mL = reader.optionalNumber(volume, pointerTo(pointer, u"sampleVolume_mL"_s));
        addTubes(run, tube, draft.tubes);
    }
}

/// The sample's own tubes, one with a spike, and its blank.
void addSampleTubes(run::Run &run, const SampleDraft &sample, const RunDraft &draft, const Reader &reader,
                    const QString &samplePointer)
{
    run::Tube tube;
    tube.sample = sample.id;
    tube.sampleVolume_mL =
        reader.optionalNumber(sample.sampleVolume_mL, pointerTo(samplePointer, u"sampleVolume_mL"_s));
    addTubes(
        run, tube,
        tubeCount(sample.replicates, draft.replicates, reader, pointerTo(samplePointer, u"replicates"_s)));
    if (!sample.spike_mL.trimmed().isEmpty()) {
        run::Tube spiked = tube;
        spiked.role = run::Role::Spiked;
        const QString spikePlace = pointerTo(samplePointer, u"spike"_s);
        const std::optional<double> volume_mL = reader.optionalNumber(sample.spike_mL, spikePlace);
        if (draft.standard && volume_mL) {
            spiked.spike = run::Spike{run.standards.front().id, *volume_mL};
            addTubes(run, spiked, 1);
        } else if (!draft.standard) {
            reader.complain(spikePlace,
                            RunDraftWords::tr("A spike is a volume of the run's standard: run one."));
        }
    }
    if (sample.ownBlank) {
        tube.role = run::Role::SampleBlank;
        addTubes(run, tube, 1);
    }
}

void layOutTubes(run::Run &run, const RunDraft &draft, const Reader &reader)
{
    run::Tube blank;
    blank.role = run::Role::Blank;
    addTubes(run, blank, draft.blanks);
    std::size_t standard = 0;
    if (draft.standard)
        addStandardTubes(run, *draft.standard, run::Role::Standard, run.standards[standard++].id, reader,
                         u"/standards/0"_s);
    if (draft.control)
        addStandardTubes(run, *draft.control, run::Role::Control, run.standards[standard].id, reader,
                         pointerTo(u"/standards"_s, static_cast<qsizetype>(standard)));
    for (std::size_t sample = 0; sample < draft.samples.size(); ++sample)
        addSampleTubes(run, draft.samples[sample], draft, reader,
                       pointerTo(u"/samples"_s, static_cast<qsizetype>(sample)));
}

/// Places of tubes are those of the order they are put in at last, so what is wrong with one is said of its
/// sample.
void checkRack(const RunDraft &draft, const run::Run &run, const Reader &reader)
{
    const auto places = static_cast<std::size_t>(std::max(draft.laboratory.rackRows, 0) *
                                                 std::max(draft.laboratory.rackColumns, 0));
    if (run.tubes.size() > places)
        reader.complain(
            u"/tubes"_s,
            RunDraftWords::tr("The rack has %1 places and this run %2 tubes: take fewer, or split it.")
                .arg(places)
                .arg(run.tubes.size()));
}

} // namespace

DraftOutcome runOf(const RunDraft &draft, const assay::Method &method)
{
    DraftOutcome outcome;
    const Reader reader(outcome.problems);
    run::Run &run = outcome.run;
    run.title = draft.title.simplified();
    run.method = method.id;
    run.wavelength_nm = draft.wavelength_nm;
    run.pathLength_mm = reader.number(draft.pathLength_mm, u"/pathLength_mm"_s);
    run.calibration = draft.calibration;
    run.startedAt = draft.startedAt;
    if (run.title.isEmpty())
        outcome.problems.push_back(assay::error(
            u"/title"_s, RunDraftWords::tr("Give the run a title, by which it is found again.")));
    for (const std::optional<StandardDraft> *typed : {&draft.standard, &draft.control}) {
        const QString pointer = pointerTo(u"/standards"_s, static_cast<qsizetype>(run.standards.size()));
        if (*typed)
            run.standards.push_back(standardOf(**typed, draft, method, reader, pointer, typed == &draft.control));
    }
    for (const SampleDraft &sample : draft.samples) {
        const QString pointer = pointerTo(u"/samples"_s, static_cast<qsizetype>(run.samples.size()));
        run.samples.push_back(sampleOf(sample, draft.form, draft.laboratory.glassware, reader, pointer));
        outcome.plan.samples.push_back(plannedOf(sample, run.samples.back(), draft, method, reader, pointer));
    }
    outcome.plan.rackRows = draft.laboratory.rackRows;
    outcome.plan.rackColumns = draft.laboratory.rackColumns;
    if (draft.samples.empty())
        outcome.problems.push_back(
            assay::error(u"/samples"_s, evaluation::afterColon(RunDraftWords::tr("Name at least one sample, one per line."))));
    layOutTubes(run, draft, reader);
    checkRack(draft, run, reader);
    run.tubes = planning::arranged(run.tubes, draft.order);
    outcome.uncertainty =
        withTyped(planning::uncertaintySources(method, draft.laboratory, run), draft, reader);
    run.uncertainty = inputsOf(outcome.uncertainty);
    outcome.plan.owners = planning::ownersToKeep(outcome.uncertainty);

    // A number that could not be read stands as 0 in the run: say so once, not again as a wrong number.
    for (const assay::Problem &problem : run::problemsOf(run, method)) {
        const bool known =
            std::any_of(outcome.problems.begin(), outcome.problems.end(),
                        [&](const auto &earlier) { return earlier.pointer == problem.pointer; });
        if (!known)
            outcome.problems.push_back(problem);
    }
    for (const assay::Problems &remarks :
         {evaluation::checksNotPlanned(method, run), evaluation::agedStandards(run), planning::unfitExpectations(method, run, outcome.plan)})
        outcome.problems.insert(outcome.problems.end(), remarks.begin(), remarks.end());
    return outcome;
}

} // namespace plateau::ui
