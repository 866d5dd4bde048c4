// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/benches.h"

namespace plateau::test {

using namespace Qt::StringLiterals;

assay::Method risingMethod()
{
    assay::Method method;
    method.id = u"rising"_s;
    method.name = u"Rising"_s;
    method.source = u"made up for the tests"_s;
    method.chromophore = u"NADH"_s;
    method.absorptivity_L_per_mol_cm = {{334, 6180}, {340, 6300}, {365, 3400}};
    method.components = {{u"buffer"_s, u"Buffer"_s, 1.0, {}, false},
                         {u"water"_s, u"Water"_s, 1.0, {}, false},
                         {u"sample"_s, u"Sample"_s, 0.1, assay::Interval{0.05, 0.5}, false},
                         {u"starter"_s, u"Enzyme"_s, 0.02, {}, true}};
    method.sample = u"sample"_s;
    method.diluent = u"water"_s;
    method.starter = u"starter"_s;
    method.steps = {assay::AddStep{u"buffer"_s},   assay::AddStep{u"water"_s},
                    assay::AddStep{u"sample"_s},   assay::MixStep{},
                    assay::WaitStep{{3, 10}, {}},  assay::ReadStep{u"A1"_s},
                    assay::AddStep{u"starter"_s},  assay::MixStep{},
                    assay::WaitStep{{15, 40}, {}}, assay::ReadStep{u"A2"_s}};
    method.measurands = {{u"analyte"_s, u"Analyte"_s, 100, 1, assay::DifferenceSignal{u"A1"_s, u"A2"_s}}};
    method.window = {0.1, 1.0, 2.0, {}};
    method.acceptance.maxBlankSignal = 0.05;
    method.acceptance.standardRecovery_percent = assay::Interval{95, 105};
    method.acceptance.repeatability = assay::Repeatability{0.01, 0.03};
    return method;
}

assay::Method fallingMethod()
{
    assay::Method method = risingMethod();
    method.id = u"falling"_s;
    method.direction = assay::Direction::Falling;
    method.window.reserveAbsorbance = 0.1;
    return method;
}

assay::Method sequentialMethod()
{
    assay::Method method = risingMethod();
    method.id = u"sequential"_s;
    method.components.push_back({u"second"_s, u"Second enzyme"_s, 0.02, {}, false});
    method.steps.push_back(assay::AddStep{u"second"_s});
    method.steps.push_back(assay::WaitStep{{10, 30}, {}});
    method.steps.push_back(assay::ReadStep{u"A3"_s});
    method.measurands = {{u"first"_s, u"First"_s, 100, 1, assay::DifferenceSignal{u"A1"_s, u"A2"_s}},
                         {u"second"_s, u"Second"_s, 100, 1, assay::DifferenceSignal{u"A2"_s, u"A3"_s}}};
    return method;
}

assay::Method coupledMethod()
{
    assay::Method method = sequentialMethod();
    method.id = u"coupled"_s;
    method.measurands = {
        {u"analyte"_s, u"Analyte"_s, 100, 1, assay::CoupledIndicatorSignal{u"A1"_s, u"A2"_s, u"A3"_s}}};
    return method;
}

run::Tube blank(double a1, double a2)
{
    run::Tube tube;
    tube.role = run::Role::Blank;
    tube.readings = {{u"A1"_s, a1}, {u"A2"_s, a2}};
    return tube;
}

run::Tube sampleTube(const char *sample, double a1, double a2)
{
    run::Tube tube = blank(a1, a2);
    tube.role = run::Role::Sample;
    tube.sample = QString::fromLatin1(sample);
    return tube;
}

run::Tube standardTube(const char *standard, double a1, double a2)
{
    run::Tube tube = blank(a1, a2);
    tube.role = run::Role::Standard;
    tube.standard = QString::fromLatin1(standard);
    return tube;
}

run::Sample liquid(const char *id, std::vector<run::DilutionStep> dilution)
{
    run::Sample sample;
    sample.id = QString::fromLatin1(id);
    sample.dilution = std::move(dilution);
    return sample;
}

run::Sample solid(const char *id, double mass_g, double extract_mL, std::vector<run::DilutionStep> dilution)
{
    run::Sample sample = liquid(id, std::move(dilution));
    sample.form = run::Form::Solid;
    sample.mass_g = mass_g;
    sample.extract_mL = extract_mL;
    return sample;
}

run::Run plainRun()
{
    run::Run run;
    run.title = u"Plain"_s;
    run.method = u"rising"_s;
    run.samples = {liquid("S")};
    run.tubes = {blank(0.100, 0.110), sampleTube("S", 0.120, 0.630), sampleTube("S", 0.121, 0.631)};
    return run;
}

run::UncertaintyInputs uncertainties()
{
    return {0.002, 0.5, 0.2, 0.5, 0.8, 0.4, 0.2};
}

} // namespace plateau::test
