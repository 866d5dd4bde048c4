// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/soundness.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/run/fit.h"
#include "core/run/tubesoundness.h"

#include <QCoreApplication>
#include <QSet>

namespace plateau::run {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct SoundnessWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::run::Soundness)
};

void checkGeneral(const Run &run, Problems &problems)
{
    checkProse(problems, u"/title"_s, run.title, SoundnessWording::tr("the title"));
    if (run.wavelength_nm)
        checkWithin(problems, u"/wavelength_nm"_s, *run.wavelength_nm, limit::shortestWavelength_nm,
                    limit::longestWavelength_nm, u"nm"_s);
    if (run.pathLength_mm)
        checkAbove(problems, u"/pathLength_mm"_s, *run.pathLength_mm, 0, limit::pathLength_mm, u"mm"_s);
}

void checkUncertainty(const UncertaintyInputs &inputs, Problems &problems)
{
    const QString pointer = u"/uncertainty"_s;
    checkWithin(problems, pointerTo(pointer, u"absorbance"_s), inputs.absorbance, 0, 1, {});
    const std::pair<QString, double> relative[] = {
        {u"absorptivity_percent"_s, inputs.absorptivity_percent},
        {u"pathLength_percent"_s, inputs.pathLength_percent},
        {u"totalVolume_percent"_s, inputs.totalVolume_percent},
        {u"sampleVolume_percent"_s, inputs.sampleVolume_percent},
        {u"dilution_percent"_s, inputs.dilution_percent},
        {u"extract_percent"_s, inputs.extract_percent},
    };
    for (const auto &[key, value] : relative)
        checkWithin(problems, pointerTo(pointer, key), value, 0, 100, u"%"_s);
}

/// Ids that look alike on paper are one id: composed and decomposed letters are the same.
class Ids
{
public:
    void check(const QString &id, const QString &pointer, const QString &taken, Problems &problems)
    {
        checkLabel(problems, pointer, id, SoundnessWording::tr("the id"));
        const QString key = id.normalized(QString::NormalizationForm_C);
        if (m_seen.contains(key))
            problems.push_back(error(pointer, taken.arg(quoted(id))));
        m_seen.insert(key);
    }

private:
    QSet<QString> m_seen;
};

// ---- samples

void checkDilution(const Sample &sample, const QString &pointer, Problems &problems)
{
    const auto before = problems.size();
    for (std::size_t i = 0; i < sample.dilution.size(); ++i) {
        const DilutionStep &step = sample.dilution[i];
        const QString place = pointerTo(pointer, static_cast<qsizetype>(i));
        const auto soFar = problems.size();
        checkAbove(problems, pointerTo(place, u"take_mL"_s), step.take_mL, 0, limit::flaskVolume_mL, u"mL"_s);
        checkAbove(problems, pointerTo(place, u"makeUpTo_mL"_s), step.makeUpTo_mL, 0, limit::flaskVolume_mL,
                   u"mL"_s);
        if (step.uncertainty_percent)
            checkWithin(problems, pointerTo(place, u"uncertainty_percent"_s), *step.uncertainty_percent, 0,
                        100, u"%"_s);
        if (problems.size() == soFar && step.take_mL > step.makeUpTo_mL)
            problems.push_back(
                error(pointerTo(place, u"take_mL"_s),
                      SoundnessWording::tr("must not be larger than makeUpTo_mL: %1 mL cannot be made up "
                                           "to %2 mL")
                          .arg(shown(step.take_mL), shown(step.makeUpTo_mL))));
    }
    if (problems.size() == before && !(dilutionFactor(sample.dilution) <= limit::dilutionFactor))
        problems.push_back(
            error(pointer, SoundnessWording::tr("dilutes more than %1-fold; check the volumes")
                               .arg(shown(limit::dilutionFactor))));
}

void checkSolid(const Sample &sample, const QString &pointer, Problems &problems)
{
    const QString mass = pointerTo(pointer, u"mass_g"_s);
    const QString extract = pointerTo(pointer, u"extract_mL"_s);
    if (sample.mass_g)
        checkWithin(problems, mass, *sample.mass_g, limit::smallestMass_g, limit::mass_g, u"g"_s);
    else
        problems.push_back(
            error(mass, SoundnessWording::tr("is missing: a solid needs the mass that was weighed, in g")));
    if (sample.extract_mL)
        checkAbove(problems, extract, *sample.extract_mL, 0, limit::flaskVolume_mL, u"mL"_s);
    else
        problems.push_back(
            error(extract, SoundnessWording::tr("is missing: a solid needs the volume it was extracted "
                                                "into, in mL")));
}

void checkLiquid(const Sample &sample, const QString &pointer, Problems &problems)
{
    const QString message =
        SoundnessWording::tr("a liquid has no %1; leave it out or set the form to \"solid\"");
    if (sample.mass_g)
        problems.push_back(error(pointerTo(pointer, u"mass_g"_s), message.arg("mass_g"_L1)));
    if (sample.extract_mL)
        problems.push_back(error(pointerTo(pointer, u"extract_mL"_s), message.arg("extract_mL"_L1)));
}

void checkRepeats(const Sample &sample, const Run &run, const QString &pointer, Problems &problems)
{
    if (sample.repeats.isEmpty())
        return;
    const QString place = pointerTo(pointer, u"repeats"_s);
    const Sample *other = findSample(run, sample.repeats);
    if (!other)
        problems.push_back(
            error(place, SoundnessWording::tr("the run has no sample %1; name the one that is repeated, "
                                              "or leave it out")
                             .arg(quoted(sample.repeats))));
    else if (other->id == sample.id)
        problems.push_back(error(
            place, SoundnessWording::tr("a sample cannot repeat itself; name the one that is repeated")));
    else if (!other->repeats.isEmpty())
        problems.push_back(
            error(place, SoundnessWording::tr("the sample %1 is a repeat itself; name the one that it "
                                              "repeats")
                             .arg(quoted(sample.repeats))));
    else if (other->form != sample.form)
        problems.push_back(
            error(place, SoundnessWording::tr("the sample %1 has another form; a repeat has the form of "
                                              "what it repeats")
                             .arg(quoted(sample.repeats))));
}

void checkSamples(const Run &run, Problems &problems)
{
    Ids ids;
    for (std::size_t i = 0; i < run.samples.size(); ++i) {
        const Sample &sample = run.samples[i];
        const QString pointer = pointerTo(u"/samples"_s, static_cast<qsizetype>(i));
        ids.check(sample.id, pointerTo(pointer, u"id"_s),
                  SoundnessWording::tr("the id %1 is taken by an earlier sample; give each its own"),
                  problems);
        if (sample.form == Form::Solid)
            checkSolid(sample, pointer, problems);
        else
            checkLiquid(sample, pointer, problems);
        checkDilution(sample, pointerTo(pointer, u"dilution"_s), problems);
        checkRepeats(sample, run, pointer, problems);
    }
}

// ---- standards

void checkAge(const Standard &standard, const std::optional<QDateTime> &startedAt, const QString &pointer,
              Problems &problems)
{
    const QString used = pointerTo(pointer, u"usedAt"_s);
    if (!standard.preparedAt) {
        if (standard.usedAt)
            problems.push_back(
                error(pointerTo(pointer, u"preparedAt"_s),
                      SoundnessWording::tr("is missing: with usedAt goes the time it was made")));
        else if (standard.lossPerHour > 0)
            problems.push_back(
                warning(pointerTo(pointer, u"lossPerHour"_s),
                        SoundnessWording::tr("is without effect, since no preparedAt is given: the stated "
                                             "concentration counts")));
        return;
    }
    if (standard.usedAt && *standard.usedAt < *standard.preparedAt)
        problems.push_back(
            error(used, SoundnessWording::tr("must not lie before preparedAt; check dates and offsets")));
    if (standard.usedAt)
        return;
    if (!startedAt)
        problems.push_back(
            error(used, SoundnessWording::tr("is missing: give it, or startedAt in the run to stand in "
                                             "for it")));
    else if (*startedAt < *standard.preparedAt)
        problems.push_back(
            error(used, SoundnessWording::tr("is missing, and the run's startedAt, which stands in for it, "
                                             "lies before preparedAt")));
}

void checkStandards(const Run &run, Problems &problems)
{
    Ids ids;
    for (std::size_t i = 0; i < run.standards.size(); ++i) {
        const Standard &standard = run.standards[i];
        const QString pointer = pointerTo(u"/standards"_s, static_cast<qsizetype>(i));
        ids.check(standard.id, pointerTo(pointer, u"id"_s),
                  SoundnessWording::tr("the id %1 is taken by an earlier standard; give each its own"),
                  problems);
        checkWithin(problems, pointerTo(pointer, u"concentration_g_per_L"_s), standard.concentration_g_per_L,
                    0, limit::concentration_g_per_L, u"g/L"_s);
        if (!(standard.lossPerHour >= 0 && standard.lossPerHour < 1))
            problems.push_back(error(
                pointerTo(pointer, u"lossPerHour"_s),
                SoundnessWording::tr("must be a fraction from 0 to below 1 (0.02 for 2 % an hour), not %1")
                    .arg(shown(standard.lossPerHour))));
        if (standard.uncertainty_percent)
            checkWithin(problems, pointerTo(pointer, u"uncertainty_percent"_s), *standard.uncertainty_percent,
                        0, 100, u"%"_s);
        checkAge(standard, run.startedAt, pointer, problems);
    }
}

// ---- lots

void checkLots(const Run &run, Problems &problems)
{
    QSet<std::pair<QString, QString>> seen;
    for (std::size_t i = 0; i < run.lots.size(); ++i) {
        const LotUse &use = run.lots[i];
        const QString pointer = pointerTo(u"/lots"_s, static_cast<qsizetype>(i));
        checkLabel(problems, pointerTo(pointer, u"component"_s), use.component,
                   SoundnessWording::tr("the component's id"));
        checkLabel(problems, pointerTo(pointer, u"lot"_s), use.lot, SoundnessWording::tr("the lot's number"));
        if (seen.contains({use.component, use.lot}))
            problems.push_back(
                error(pointer, SoundnessWording::tr("lot %1 of %2 stands in the list already; name it once")
                                   .arg(quoted(use.lot), quoted(use.component))));
        seen.insert({use.component, use.lot});
    }
}

} // namespace

Problems problemsOf(const Run &run)
{
    Problems problems;
    checkGeneral(run, problems);
    if (run.uncertainty)
        checkUncertainty(*run.uncertainty, problems);
    checkStandards(run, problems);
    checkSamples(run, problems);
    checkTubes(run, problems);
    checkLots(run, problems);
    return problems;
}

Problems problemsOf(const Run &run, const Method &method)
{
    Problems problems = problemsOf(run);
    checkFit(run, method, problems);
    return problems;
}

} // namespace plateau::run
