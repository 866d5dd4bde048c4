// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/rundraft.h"

#include "core/evaluation/format.h"
#include "core/exchange/decimal.h"
#include "core/exchange/keyedmoment.h"
#include "core/run/soundness.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunDraft)
};

using assay::pointerTo;

/// Reads the texts of a draft; what is no number goes to the problems with its place.
class Reader
{
public:
    explicit Reader(assay::Problems &problems)
        : m_problems(problems)
    {
    }

    double number(const QString &text, const QString &pointer) const
    {
        const auto parsed = exchange::parseDecimal(text);
        if (const double *value = std::get_if<double>(&parsed))
            return *value;
        m_problems.push_back(assay::error(
            pointer,
            text.trimmed().isEmpty()
                ? Words::tr("A number is needed here.")
                : Words::tr("\"%1\" is no number. %2")
                      .arg(text, exchange::faultSentence(std::get<exchange::DecimalFault>(parsed)))));
        return 0;
    }

    std::optional<double> optionalNumber(const QString &text, const QString &pointer) const
    {
        return text.trimmed().isEmpty() ? std::nullopt : std::optional(number(text, pointer));
    }

    QDateTime moment(const QString &text, const QDateTime &now, const QString &pointer) const
    {
        const auto parsed = exchange::parseKeyedMoment(text, now);
        if (const QDateTime *value = std::get_if<QDateTime>(&parsed))
            return *value;
        complain(pointer, exchange::faultSentence(std::get<exchange::MomentFault>(parsed)));
        return now;
    }

    void complain(const QString &pointer, const QString &sentence) const
    {
        m_problems.push_back(assay::error(pointer, sentence));
    }
    void remark(const QString &pointer, const QString &sentence) const
    {
        m_problems.push_back(assay::warning(pointer, sentence));
    }

private:
    assay::Problems &m_problems;
};

bool isBlank(const DilutionDraft &step)
{
    return step.take_mL.trimmed().isEmpty() && step.makeUpTo_mL.trimmed().isEmpty();
}

run::Sample sampleOf(const SampleDraft &draft, run::Form form, const Reader &reader, const QString &pointer)
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
        sample.dilution.push_back({reader.number(step.take_mL, pointerTo(place, u"take_mL"_s)),
                                   reader.number(step.makeUpTo_mL, pointerTo(place, u"makeUpTo_mL"_s))});
    }
    return sample;
}

/// A loss and a time that nobody gave must not make a standard count at full strength.
run::Standard standardOf(const RunDraft &draft, const assay::Method &method, const Reader &reader)
{
    const StandardDraft &typed = *draft.standard;
    const QString pointer = u"/standards/0"_s;
    const QString lossPlace = pointerTo(pointer, u"lossPerHour"_s);
    const QString preparedPlace = pointerTo(pointer, u"preparedAt"_s);
    run::Standard standard;
    standard.id = typed.id.trimmed();
    standard.concentration_g_per_L =
        reader.number(typed.concentration_g_per_L, pointerTo(pointer, u"concentration_g_per_L"_s));
    const bool lossGiven = !typed.lossPerHour_percent.trimmed().isEmpty();
    if (lossGiven)
        standard.lossPerHour = reader.number(typed.lossPerHour_percent, lossPlace) / 100;
    else
        reader.complain(lossPlace,
                        Words::tr("Say how much of its strength it loses in an hour; 0 if it keeps "
                                  "its strength for the day."));
    const double usualLoss = method.standard ? method.standard->lossPerHour.value_or(0) : 0;
    if (lossGiven && standard.lossPerHour == 0 && usualLoss > 0)
        reader.remark(lossPlace, Words::tr("With 0 it counts at full strength all day; the method reckons "
                                           "with a loss of %1 % an hour.")
                                     .arg(evaluation::plainText(usualLoss * 100)));

    if (!typed.preparedAt.trimmed().isEmpty()) {
        standard.preparedAt = reader.moment(typed.preparedAt, draft.startedAt, preparedPlace);
    } else if (standard.lossPerHour > 0 || !typed.usedWhenRead) {
        reader.complain(preparedPlace,
                        Words::tr("Say when it was made, as 8:10, so that its strength at use can be "
                                  "worked out."));
        standard.preparedAt = draft.startedAt; // stands in, so that the same is not said again in other words
    }
    if (!typed.usedWhenRead)
        standard.usedAt = reader.moment(typed.usedAt, draft.startedAt, pointerTo(pointer, u"usedAt"_s));
    return standard;
}

void addTubes(run::Run &run, run::Tube tube, int count)
{
    run.tubes.insert(run.tubes.end(), static_cast<std::size_t>(count), tube);
}

void layOutTubes(run::Run &run, const RunDraft &draft, const Reader &reader)
{
    addTubes(run, {run::Role::Blank, {}, {}, {}, {}, {}}, draft.blanks);
    if (draft.standard)
        addTubes(run, {run::Role::Standard, {}, run.standards.front().id, {}, {}, {}}, draft.standard->tubes);
    for (const SampleDraft &sample : draft.samples) {
        run::Tube tube{run::Role::Sample, sample.id, {}, {}, {}, {}};
        const QString place =
            pointerTo(pointerTo(u"/tubes"_s, static_cast<qsizetype>(run.tubes.size())), u"sampleVolume_mL"_s);
        tube.sampleVolume_mL = reader.optionalNumber(sample.sampleVolume_mL, place);
        addTubes(run, tube, draft.replicates);
        if (!sample.ownBlank)
            continue;
        tube.role = run::Role::SampleBlank;
        addTubes(run, tube, 1);
    }
}

run::UncertaintyInputs uncertaintyOf(const UncertaintyDraft &draft, const Reader &reader)
{
    const QString pointer = u"/uncertainty"_s;
    const auto read = [&](std::size_t index, const QString &field) {
        return reader.number(draft.texts[index], pointerTo(pointer, field));
    };
    return {read(0, u"absorbance"_s),           read(1, u"absorptivity_percent"_s),
            read(2, u"pathLength_percent"_s),   read(3, u"totalVolume_percent"_s),
            read(4, u"sampleVolume_percent"_s), read(5, u"dilution_percent"_s),
            read(6, u"extract_percent"_s)};
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
    run.uncertainty = uncertaintyOf(draft.uncertainty, reader);
    if (run.title.isEmpty())
        outcome.problems.push_back(
            assay::error(u"/title"_s, Words::tr("Give the run a title, by which it is found again.")));
    if (draft.standard)
        run.standards.push_back(standardOf(draft, method, reader));
    for (const SampleDraft &sample : draft.samples) {
        const QString pointer = pointerTo(u"/samples"_s, static_cast<qsizetype>(run.samples.size()));
        run.samples.push_back(sampleOf(sample, draft.form, reader, pointer));
    }
    if (draft.samples.empty())
        outcome.problems.push_back(
            assay::error(u"/samples"_s, Words::tr("Name at least one sample, one a line.")));
    layOutTubes(run, draft, reader);

    // A number that could not be read stands as 0 in the run: say so once, not again as a wrong number.
    for (const assay::Problem &problem : run::problemsOf(run, method)) {
        const bool known =
            std::any_of(outcome.problems.begin(), outcome.problems.end(),
                        [&](const auto &earlier) { return earlier.pointer == problem.pointer; });
        if (!known)
            outcome.problems.push_back(problem);
    }
    return outcome;
}

run::UncertaintyInputs usualUncertainty()
{
    run::UncertaintyInputs usual;
    usual.absorbance = 0.002;
    usual.absorptivity_percent = 0.5;
    usual.pathLength_percent = 0.2;
    usual.totalVolume_percent = 0.5;
    usual.sampleVolume_percent = 0.8;
    usual.dilution_percent = 0.4;
    usual.extract_percent = 0.2;
    return usual;
}

} // namespace plateau::ui
