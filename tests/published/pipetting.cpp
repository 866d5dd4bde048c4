// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/published/pipetting.h"

#include "core/assay/soundness.h"
#include "core/run/soundness.h"

#include <stdexcept>

namespace plateau::published {

using namespace Qt::StringLiterals;

const Absorptivities nadhAndNadph{{340, 6300}, {334, 6180}, {365, 3400}};

namespace {

/// The checks are of sound input only; a slip in a test's scheme shows as itself.
void expectNoErrors(const assay::Problems &problems)
{
    for (const assay::Problem &problem : problems) {
        if (problem.severity == assay::Problem::Severity::Error)
            throw std::runtime_error((problem.pointer + u": "_s + problem.message).toStdString());
    }
}

evaluation::Evaluation evaluateSound(const assay::Method &method, const run::Run &run)
{
    expectNoErrors(assay::problemsOf(method));
    expectNoErrors(run::problemsOf(run, method));
    return evaluation::evaluate(method, run);
}

void add(assay::Method &method, const QString &id, double volume_mL)
{
    method.components.push_back({id, id, volume_mL, {}, false});
    method.steps.push_back(assay::AddStep{id});
}

void readAfterWaiting(assay::Method &method, const QString &reading)
{
    method.steps.push_back(assay::MixStep{});
    method.steps.push_back(assay::WaitStep{{3, 60}, {}});
    method.steps.push_back(assay::ReadStep{reading});
}

} // namespace

assay::Method methodOf(const Pipetting &pipetting, double molarMass_g_per_mol,
                       const Absorptivities &absorptivities)
{
    assay::Method method;
    method.id = u"scheme"_s;
    method.name = u"Scheme"_s;
    method.source = u"named in the test"_s;
    method.chromophore = u"NADH"_s;
    method.absorptivity_L_per_mol_cm = absorptivities;
    method.wavelength_nm = absorptivities.begin()->first;
    for (std::size_t i = 0; i < pipetting.reagents_mL.size(); ++i)
        add(method, u"reagent %1"_s.arg(i + 1), pipetting.reagents_mL[i]);
    add(method, u"water"_s, pipetting.diluent_mL);
    add(method, u"sample"_s, pipetting.sample_mL);
    readAfterWaiting(method, u"A1"_s);
    add(method, u"starter"_s, pipetting.starter_mL);
    readAfterWaiting(method, u"A2"_s);
    method.sample = u"sample"_s;
    method.diluent = u"water"_s;
    method.starter = u"starter"_s;
    method.measurands = {
        {u"analyte"_s, u"Analyte"_s, molarMass_g_per_mol, 1, assay::DifferenceSignal{u"A1"_s, u"A2"_s}}};
    method.window = {0.1, 1.0, {}, {}};
    return method;
}

assay::Method cascadeOf(const Pipetting &pipetting, double secondStarter_mL, double molarMass_g_per_mol,
                        const Absorptivities &absorptivities)
{
    assay::Method method = methodOf(pipetting, molarMass_g_per_mol, absorptivities);
    add(method, u"second starter"_s, secondStarter_mL);
    readAfterWaiting(method, u"A3"_s);
    method.measurands = {
        {u"first"_s, u"First"_s, molarMass_g_per_mol, 1, assay::DifferenceSignal{u"A1"_s, u"A2"_s}},
        {u"second"_s, u"Second"_s, molarMass_g_per_mol, 1, assay::DifferenceSignal{u"A2"_s, u"A3"_s}}};
    return method;
}

Pipetting ofTotal(double total_mL, double sample_mL)
{
    const double starter_mL = 0.02;
    return {{}, total_mL - sample_mL - starter_mL, sample_mL, starter_mL};
}

run::Tube tubeOf(run::Role role, double a1, double a2)
{
    run::Tube tube;
    tube.role = role;
    tube.readings = {{u"A1"_s, a1}, {u"A2"_s, a2}};
    return tube;
}

run::Tube sampleTube(double a1, double a2)
{
    run::Tube tube = tubeOf(run::Role::Sample, a1, a2);
    tube.sample = u"S"_s;
    return tube;
}

run::Sample liquidSample(std::vector<run::DilutionStep> dilution)
{
    run::Sample sample;
    sample.id = u"S"_s;
    sample.dilution = std::move(dilution);
    return sample;
}

run::Sample solidSample(double mass_g, double extract_mL)
{
    run::Sample sample = liquidSample();
    sample.form = run::Form::Solid;
    sample.mass_g = mass_g;
    sample.extract_mL = extract_mL;
    return sample;
}

run::Run runOf(run::Sample sample, std::vector<run::Tube> tubes)
{
    run::Run run;
    run.title = u"Published"_s;
    run.method = u"scheme"_s;
    run.samples = {std::move(sample)};
    run.tubes = std::move(tubes);
    return run;
}

double factor_g_per_L(const assay::Method &method, int wavelength_nm, std::size_t measurand)
{
    run::Run run = runOf(liquidSample(), {tubeOf(run::Role::Blank, 0, 0), sampleTube(0, 0)});
    run.method = method.id;
    run.wavelength_nm = wavelength_nm;
    return evaluateSound(method, run).factors.at(measurand).factor_g_per_L;
}

double valueOf(const assay::Method &method, const run::Run &run)
{
    return evaluateSound(method, run).results.at(0).value.value();
}

} // namespace plateau::published
