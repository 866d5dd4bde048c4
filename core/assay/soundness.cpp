// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/soundness.h"

#include "core/assay/background.h"
#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/assay/plausibility.h"
#include "core/assay/procedure.h"

#include <QCoreApplication>
#include <QSet>

#include <iterator>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

struct SoundnessWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Soundness)
};

void checkIdentity(const Method &method, Problems &problems)
{
    checkLabel(problems, u"/id"_s, method.id, SoundnessWording::tr("the id"));
    checkLabel(problems, u"/name"_s, method.name, SoundnessWording::tr("the name"));
    if (method.version < 1)
        problems.push_back(
            error(u"/version"_s, SoundnessWording::tr("versions count from 1, not %1").arg(method.version)));
    if (method.source.trimmed().isEmpty())
        problems.push_back(
            error(u"/source"_s, SoundnessWording::tr("says nothing: name the document and its section, "
                                                     "or say that there is none")));
    checkProse(problems, u"/source"_s, method.source, SoundnessWording::tr("the source"));
    checkProse(problems, u"/principle"_s, method.principle, SoundnessWording::tr("the principle"));
}

void checkAbsorptivities(const Method &method, Problems &problems)
{
    const QString table = u"/absorptivity_L_per_mol_cm"_s;
    for (const auto &[wavelength_nm, value] : method.absorptivity_L_per_mol_cm) {
        const QString pointer = pointerTo(table, QString::number(wavelength_nm));
        checkWithin(problems, pointer, wavelength_nm, limit::shortestWavelength_nm,
                    limit::longestWavelength_nm, u"nm"_s);
        checkAbove(problems, pointer, value, 0, limit::absorptivity_L_per_mol_cm, u"L/(mol cm)"_s);
        if (value > 0 && value < 100)
            problems.push_back(
                warning(pointer, SoundnessWording::tr("%1 L/(mol cm) is very small; is it meant in "
                                                      "L/(mmol cm), a thousand times as much?")
                                     .arg(shown(value))));
    }
}

void checkPhotometry(const Method &method, Problems &problems)
{
    checkLabel(problems, u"/chromophore"_s, method.chromophore,
               SoundnessWording::tr("the chromophore's name"));
    checkAbsorptivities(method, problems);
    checkAbove(problems, u"/pathLength_mm"_s, method.pathLength_mm, 0, limit::pathLength_mm, u"mm"_s);
    const auto before = problems.size();
    checkWithin(problems, u"/wavelength_nm"_s, method.wavelength_nm, limit::shortestWavelength_nm,
                limit::longestWavelength_nm, u"nm"_s);
    if (problems.size() != before || absorptivity(method, method.wavelength_nm))
        return;
    problems.push_back(
        error(u"/wavelength_nm"_s,
              SoundnessWording::tr("the method has no absorptivity for %1 nm; add it to the table of "
                                   "absorptivities (only NADH and NADPH at 340 nm need none)")
                  .arg(method.wavelength_nm)));
}

void checkComponent(const Component &component, const QString &pointer, Problems &problems)
{
    checkLabel(problems, pointerTo(pointer, u"id"_s), component.id, SoundnessWording::tr("the id"));
    checkLabel(problems, pointerTo(pointer, u"name"_s), component.name, SoundnessWording::tr("the name"));
    const auto before = problems.size();
    checkWithin(problems, pointerTo(pointer, u"volume_mL"_s), component.volume_mL, limit::smallestVolume_mL,
                limit::tubeVolume_mL, u"mL"_s);
    if (!component.range_mL)
        return;
    const QString range = pointerTo(pointer, u"range_mL"_s);
    checkInterval(problems, range, *component.range_mL, limit::smallestVolume_mL, limit::tubeVolume_mL,
                  u"mL"_s);
    const Interval &allowed = *component.range_mL;
    if (problems.size() == before &&
        (component.volume_mL < allowed.lower || component.volume_mL > allowed.upper))
        problems.push_back(error(
            range,
            SoundnessWording::tr("must include the usual volume of %1 mL").arg(shown(component.volume_mL))));
}

void checkComponents(const Method &method, Problems &problems)
{
    if (method.components.empty())
        problems.push_back(
            error(u"/components"_s, SoundnessWording::tr("a method needs at least one component")));
    QSet<QString> seen;
    for (std::size_t i = 0; i < method.components.size(); ++i) {
        const Component &component = method.components[i];
        const QString pointer = pointerTo(u"/components"_s, static_cast<qsizetype>(i));
        checkComponent(component, pointer, problems);
        if (seen.contains(component.id))
            problems.push_back(
                error(pointerTo(pointer, u"id"_s),
                      SoundnessWording::tr("the id %1 is taken by an earlier component; give each its own")
                          .arg(quoted(component.id))));
        seen.insert(component.id);
    }
}

void checkMeasurands(const Method &method, Problems &problems)
{
    if (method.measurands.empty())
        problems.push_back(
            error(u"/measurands"_s, SoundnessWording::tr("a method needs at least one measurand")));
    QSet<QString> seen;
    for (std::size_t i = 0; i < method.measurands.size(); ++i) {
        const Measurand &measurand = method.measurands[i];
        const QString pointer = pointerTo(u"/measurands"_s, static_cast<qsizetype>(i));
        checkLabel(problems, pointerTo(pointer, u"id"_s), measurand.id, SoundnessWording::tr("the id"));
        checkLabel(problems, pointerTo(pointer, u"name"_s), measurand.name, SoundnessWording::tr("the name"));
        checkAbove(problems, pointerTo(pointer, u"molarMass_g_per_mol"_s), measurand.molarMass_g_per_mol, 0,
                   limit::molarMass_g_per_mol, u"g/mol"_s);
        checkAbove(problems, pointerTo(pointer, u"chromophorePerMolecule"_s),
                   measurand.chromophorePerMolecule, 0, limit::chromophorePerMolecule, {});
        if (seen.contains(measurand.id))
            problems.push_back(
                error(pointerTo(pointer, u"id"_s),
                      SoundnessWording::tr("the id %1 is taken by an earlier measurand; give each its own")
                          .arg(quoted(measurand.id))));
        seen.insert(measurand.id);
    }
}

void checkWindow(const Window &window, Problems &problems)
{
    checkWithin(problems, u"/window/minSignal"_s, window.minSignal, 0, limit::absorbance, {});
    checkAbove(problems, u"/window/maxSignal"_s, window.maxSignal, 0, limit::absorbance, {});
    if (window.minSignal >= window.maxSignal)
        problems.push_back(
            error(u"/window/minSignal"_s, SoundnessWording::tr("must be smaller than maxSignal: %1 is not "
                                                               "smaller than %2")
                                              .arg(shown(window.minSignal), shown(window.maxSignal))));
    if (window.maxAbsorbance)
        checkAbove(problems, u"/window/maxAbsorbance"_s, *window.maxAbsorbance, 0, limit::absorbance, {});
    if (!window.reserveAbsorbance)
        return;
    checkWithin(problems, u"/window/reserveAbsorbance"_s, *window.reserveAbsorbance, 0, limit::absorbance,
                {});
    if (window.maxAbsorbance && *window.reserveAbsorbance >= *window.maxAbsorbance)
        problems.push_back(
            error(u"/window/reserveAbsorbance"_s,
                  SoundnessWording::tr("must be smaller than maxAbsorbance: %1 is not smaller than %2")
                      .arg(shown(*window.reserveAbsorbance), shown(*window.maxAbsorbance))));
}

void checkAcceptance(const Acceptance &acceptance, Problems &problems)
{
    if (acceptance.maxBlankSignal)
        checkWithin(problems, u"/acceptance/maxBlankSignal"_s, *acceptance.maxBlankSignal, 0,
                    limit::absorbance, {});
    if (acceptance.standardRecovery_percent)
        checkInterval(problems, u"/acceptance/standardRecovery_percent"_s,
                      *acceptance.standardRecovery_percent, 0, 1000, u"%"_s);
    if (acceptance.spikeRecovery_percent)
        checkInterval(problems, u"/acceptance/spikeRecovery_percent"_s, *acceptance.spikeRecovery_percent, 0,
                      1000, u"%"_s);
    if (!acceptance.repeatability)
        return;
    const QString pointer = u"/acceptance/repeatability"_s;
    const Repeatability &limits = *acceptance.repeatability;
    checkWithin(problems, pointerTo(pointer, u"constant_g_per_L"_s), limits.constant_g_per_L, 0,
                limit::concentration_g_per_L, u"g/L"_s);
    checkWithin(problems, pointerTo(pointer, u"proportional"_s), limits.proportional, 0, 1, {});
    if (limits.constant_g_per_L == 0 && limits.proportional == 0)
        problems.push_back(
            error(pointer, SoundnessWording::tr("no duplicates can meet a limit of 0; give a constant part, "
                                                "a proportional part, or leave repeatability out")));
}

} // namespace

Problems problemsOf(const Method &method)
{
    Problems problems;
    checkIdentity(method, problems);
    checkPhotometry(method, problems);
    checkComponents(method, problems);
    checkProcedure(method, problems);
    checkMeasurands(method, problems);
    checkSignals(method, problems);
    checkWindow(method.window, problems);
    checkAcceptance(method.acceptance, problems);
    checkBackground(method, problems);
    checkPlausibility(method, problems);
    return problems;
}

} // namespace plateau::assay
