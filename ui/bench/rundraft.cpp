// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/rundraft.h"

#include "core/exchange/decimal.h"
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

run::Standard standardOf(const StandardDraft &draft, const Reader &reader)
{
    const QString pointer = u"/standards/0"_s;
    run::Standard standard;
    standard.id = draft.id.trimmed();
    standard.concentration_g_per_L =
        reader.number(draft.concentration_g_per_L, pointerTo(pointer, u"concentration_g_per_L"_s));
    standard.lossPerHour =
        reader.number(draft.lossPerHour_percent, pointerTo(pointer, u"lossPerHour"_s)) / 100;
    standard.preparedAt = draft.preparedAt;
    standard.usedAt = draft.usedAt;
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
        run.standards.push_back(standardOf(*draft.standard, reader));
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
