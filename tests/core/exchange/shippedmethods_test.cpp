// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Every file in resources/methods, one test each: what it has to say, and that a run of it is evaluated to
// what a hand calculation gives.

#include "core/assay/matrix.h"
#include "core/evaluation/evaluation.h"
#include "core/exchange/library.h"
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/run/soundness.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <QDir>

#include <gtest/gtest.h>

#include <cmath>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using assay::Method;
using test::listed;

namespace {

QDir folder()
{
    return QDir(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/resources/methods"_s);
}

std::vector<std::string> fileNames()
{
    std::vector<std::string> names;
    const QStringList entries = folder().entryList({u"*.json"_s}, QDir::Files, QDir::Name);
    for (const QString &name : entries)
        names.push_back(name.toStdString());
    return names;
}

Read<Method> readShipped(const std::string &fileName)
{
    const auto file = readFile(folder().filePath(QString::fromStdString(fileName)));
    return file.value ? readMethod(*file.value) : Read<Method>{std::nullopt, file.problems};
}

template <class Texts> bool anyHolds(const Texts &texts, const QString &fragment)
{
    return std::ranges::any_of(texts, [&](const QString &text) { return text.contains(fragment); });
}

bool preparationHolds(const Method &method, const QString &fragment)
{
    return std::ranges::any_of(method.samplePreparation, [&](const assay::Preparation &preparation) {
        return preparation.text.contains(fragment, Qt::CaseInsensitive);
    });
}

// Our own arithmetic, independent of core/run and core/evaluation: everything added before the reading.
double volumeByHand_mL(const Method &method, const QString &reading)
{
    double volume_mL = 0;
    for (const assay::Step &step : method.steps) {
        if (const auto *add = std::get_if<assay::AddStep>(&step)) {
            for (const assay::Component &component : method.components)
                volume_mL += component.id == add->component ? component.volume_mL : 0;
        } else if (const auto *read = std::get_if<assay::ReadStep>(&step); read && read->reading == reading) {
            return volume_mL;
        }
    }
    return std::nan("");
}

// Readings that rise (or fall) by the step from one reading to the next.
std::map<QString, run::Reading> readings(const Method &method, double first, double step)
{
    const double sign = method.direction == assay::Direction::Rising ? 1 : -1;
    std::map<QString, run::Reading> all;
    double absorbance = first;
    for (const QString &reading : assay::readingsInOrder(method)) {
        all[reading] = absorbance;
        absorbance += sign * step;
    }
    return all;
}

// What the measurand takes from readings that go on by the step: once the step; with a coupled indicator
// x2 - x1^2 / x2 with x1 = step and x2 = 2 steps.
double signalByHand(const assay::Measurand &measurand, double step)
{
    const bool coupled = std::holds_alternative<assay::CoupledIndicatorSignal>(measurand.signal);
    return coupled ? 2 * step - step * step / (2 * step) : step;
}

run::Tube tube(run::Role role, std::map<QString, run::Reading> readings)
{
    run::Tube tube;
    tube.role = role;
    if (role == run::Role::Sample)
        tube.sample = u"S"_s;
    tube.readings = std::move(readings);
    return tube;
}

constexpr double blankStep = 0.004;
constexpr double dilution = 25;

/// A blank and a sample, diluted 2 in 50; the sample's net signals lie in the middle of the window.
run::Run syntheticRun(const Method &method, int wavelength_nm, double sampleStep)
{
    const double first = method.direction == assay::Direction::Rising ? 0.15 : 1.6;
    run::Run run;
    run.title = u"Synthetic"_s;
    run.method = method.id;
    run.wavelength_nm = wavelength_nm;
    run::Sample sample;
    sample.id = u"S"_s;
    sample.dilution = {{2, 50}};
    run.samples = {sample};
    run.tubes = {tube(run::Role::Blank, readings(method, first, blankStep)),
                 tube(run::Role::Sample, readings(method, first, sampleStep))};
    return run;
}

/// c x F of the synthetic run: c = dA x V x M / (e x d x v x n), all from the file.
double concentrationByHand_g_per_L(const Method &method, const assay::Measurand &measurand, double sampleStep,
                                   int wavelength_nm)
{
    const double dA = signalByHand(measurand, sampleStep) - signalByHand(measurand, blankStep);
    const double V_mL = volumeByHand_mL(method, assay::laterReading(measurand.signal));
    const double v_mL = assay::findComponent(method, method.sample)->volume_mL;
    const double e_L_per_mol_cm = method.absorptivity_L_per_mol_cm.at(wavelength_nm);
    return dA * V_mL * measurand.molarMass_g_per_mol /
           (e_L_per_mol_cm * method.pathLength_mm / 10 * v_mL * measurand.chromophorePerMolecule) * dilution;
}

const evaluation::Result *resultOf(const evaluation::Evaluation &evaluation, const QString &measurand)
{
    const auto found = std::ranges::find(evaluation.results, measurand, &evaluation::Result::measurand);
    return found == evaluation.results.end() ? nullptr : &*found;
}

class ShippedMethod : public ::testing::TestWithParam<std::string>
{
protected:
    void SetUp() override
    {
        const auto read = readShipped(GetParam());
        ASSERT_TRUE(read.value) << listed(read.problems);
        m_method = *read.value;
    }
    Method m_method;
};

} // namespace

TEST_P(ShippedMethod, IsReadWithoutAnyRemarkUnderItsFilesName)
{
    EXPECT_TRUE(readShipped(GetParam()).problems.empty()) << listed(readShipped(GetParam()).problems);
    EXPECT_EQ(m_method.id + u".json"_s, QString::fromStdString(GetParam()));
}

TEST_P(ShippedMethod, IsCompiledIntoTheProgram)
{
    const auto method = MethodLibrary::load(u":/methods"_s).find(m_method.id);
    ASSERT_TRUE(method);
    EXPECT_EQ(*method, m_method);
}

TEST_P(ShippedMethod, ComesBackAsItWasWhenWrittenAndRead)
{
    const auto read = readMethod(writeMethod(m_method));
    ASSERT_TRUE(read.value) << listed(read.problems);
    EXPECT_EQ(*read.value, m_method);
}

TEST_P(ShippedMethod, SaysWhereItComesFromAndMarksMemoryOnce)
{
    const QString &source = m_method.source;
    EXPECT_TRUE(source.at(0).isUpper()) << source.toStdString();
    EXPECT_TRUE(source.contains(u"from memory"_s, Qt::CaseInsensitive));
    if (assay::isTemplate(m_method))
        EXPECT_TRUE(source.startsWith(u"Template: set the volumes of your reagent supplier. Common practice, "
                                      "no published source;"_s))
            << source.toStdString();
    else
        EXPECT_EQ(source.count(u"Common practice, no source:"_s), 1) << source.toStdString();
    EXPECT_EQ(assay::isTemplate(m_method), source.contains(u"template"_s, Qt::CaseInsensitive));
    EXPECT_EQ(assay::isTemplate(m_method), m_method.name.endsWith(u" (template)"_s));
    for (const auto &texts : {m_method.cautions, m_method.interferences, m_method.reactions})
        EXPECT_FALSE(anyHolds(texts, u"(common practice"_s)) << "said once, in the source";
    EXPECT_FALSE(preparationHolds(m_method, u"common practice"_s));
}

TEST_P(ShippedMethod, TellsACustomerOnlyWhatIsPublished)
{
    const QString published = assay::publishedSource(m_method);
    for (const QString &mark : {u"memory"_s, u"common practice"_s, u"our own"_s, u"template"_s, u"supplier"_s})
        EXPECT_FALSE(published.contains(mark, Qt::CaseInsensitive)) << published.toStdString();
    EXPECT_TRUE(published.isEmpty() || published.endsWith(u'.')) << published.toStdString();
    EXPECT_EQ(published.isEmpty(), m_method.id == "l-ascorbic-acid"_L1) << published.toStdString();
}

TEST(MethodSource, WhatIsLeftOfASentenceKeepsTheSpacesOfItsLanguage)
{
    assay::Method method;
    method.source = u"Règlement 2676/90\u202f; valeurs de mémoire\u202f; OENO 6/98\u202f; de mémoire."_s;
    EXPECT_EQ(assay::publishedSource(method), u"Règlement 2676/90\u202f; OENO 6/98."_s);
    method.source = u"From memory: volumes; OENO 6/98; Regulation 2676/90."_s;
    EXPECT_EQ(assay::publishedSource(method), u"OENO 6/98; Regulation 2676/90."_s);
}

TEST(MethodSource, WhatIsFromMemoryIsToldInEveryLanguageOfTheWindow)
{
    assay::Method method;
    for (const QString &source : {u"Gängige Praxis; alle Werte aus dem Gedächtnis."_s, u"Valeurs de mémoire."_s,
                                  u"De memoria: los volúmenes."_s, u"From memory: the volumes."_s}) {
        method.source = source;
        EXPECT_TRUE(assay::isPartlyFromMemory(method)) << source.toStdString();
        EXPECT_FALSE(assay::publishedSource(method).contains(u"mem"_s, Qt::CaseInsensitive));
    }
    method.source = u"Regulation 2676/90, annex."_s;
    EXPECT_FALSE(assay::isPartlyFromMemory(method));
}

TEST_P(ShippedMethod, StatesReactionsWithTheirStoichiometry)
{
    ASSERT_GE(m_method.reactions.size(), 2U);
    EXPECT_FALSE(m_method.principle.isEmpty());
    EXPECT_TRUE(anyHolds(m_method.reactions, m_method.chromophore.section(u' ', 0, 0)));
    const QString &count = m_method.reactions.back();
    const bool rising = m_method.direction == assay::Direction::Rising;
    EXPECT_EQ(rising, count.contains(u" formed "_s)) << count.toStdString();
    EXPECT_EQ(!rising, count.contains(u" used "_s) || count.contains(u" lost "_s)) << count.toStdString();
    for (const assay::Measurand &measurand : m_method.measurands) {
        const QString word = measurand.chromophorePerMolecule == 1 ? u"one "_s : u"two "_s;
        ASSERT_TRUE(measurand.chromophorePerMolecule == 1 || measurand.chromophorePerMolecule == 2);
        EXPECT_TRUE(count.contains(word, Qt::CaseInsensitive)) << count.toStdString();
    }
}

TEST_P(ShippedMethod, KnowsItsSamples)
{
    for (const assay::Measurand &measurand : m_method.measurands) {
        ASSERT_TRUE(measurand.typicalRange_g_per_L) << measurand.id.toStdString();
        EXPECT_LT(measurand.typicalRange_g_per_L->lower, measurand.typicalRange_g_per_L->upper);
    }
    EXPECT_FALSE(m_method.interferences.empty());
    EXPECT_FALSE(m_method.samplePreparation.empty());
    // Free sulphite of fatty, protein-rich and solid samples does not outlive the extraction.
    if (assay::isTemplate(m_method) && m_method.id != "free-sulphite"_L1) {
        EXPECT_EQ(m_method.samplePreparation.size(), assay::matrixWords().size());
    }
}

TEST_P(ShippedMethod, SaysHowManyTubesARackHas)
{
    ASSERT_TRUE(m_method.tubes);
    EXPECT_GE(m_method.tubes->blanks, 1);
    EXPECT_GE(m_method.tubes->replicates, 2);
    EXPECT_GE(m_method.tubes->standards, 1);
}

TEST_P(ShippedMethod, WarnsOfWhatCanHurt)
{
    ASSERT_FALSE(m_method.cautions.empty());
    EXPECT_TRUE(m_method.cautions[0].contains(
        u"supplier's instructions, the local safety rules and licensed practice come first"_s));
    if (std::ranges::any_of(m_method.components, &assay::Component::suspension)) {
        EXPECT_TRUE(anyHolds(m_method.cautions, u"azide"_s));
        EXPECT_TRUE(anyHolds(m_method.cautions, u"Swirl"_s) || m_method.id == "d-sorbitol"_L1);
    }
    if (m_method.wavelength_nm < 400) {
        EXPECT_TRUE(anyHolds(m_method.cautions, u"ultraviolet"_s));
    }
    const std::pair<QString, QString> named[] = {
        {u"hexacyanoferrate"_s, u"hydrogen cyanide"_s},
        {u"20 mL of perchloric"_s, u"Perchloric acid burns"_s},
        {u"perchloric acid, 1 mol/L"_s, u"Perchloric acid burns"_s},
        {u"metaphosphoric"_s, u"Metaphosphoric acid burns"_s},
        {u"hydroxide"_s, u"hydroxide solutions burn"_s},
        {u"with the stopper on"_s, u"builds up pressure"_s},
        {u"closed 100 mL flask"_s, u"builds up pressure"_s},
        {u"extract closed with"_s, u"builds up pressure"_s},
    };
    for (const auto &[reagent, caution] : named) {
        if (preparationHolds(m_method, reagent)) {
            EXPECT_TRUE(anyHolds(m_method.cautions, caution)) << reagent.toStdString();
        }
    }
}

TEST_P(ShippedMethod, CanBeWorked)
{
    const auto order = assay::readingsInOrder(m_method);
    ASSERT_GE(order.size(), 2U);
    for (const QString &reading : order) {
        const auto wait_min = assay::waitBefore(m_method, reading);
        ASSERT_TRUE(wait_min) << reading.toStdString();
        EXPECT_LT(wait_min->lower, wait_min->upper) << reading.toStdString();
    }
    const bool coenzyme = m_method.chromophore.startsWith(u"NAD"_s);
    for (const int wavelength_nm : {334, 340, 365})
        EXPECT_EQ(assay::absorptivity(m_method, wavelength_nm).has_value(), coenzyme) << wavelength_nm;
    EXPECT_TRUE(m_method.acceptance.maxBlankSignal);
    EXPECT_TRUE(m_method.acceptance.standardRecovery_percent);
    EXPECT_TRUE(m_method.window.maxAbsorbance);
}

TEST_P(ShippedMethod, DerivesResultsOnlyFromShippedMeasurands)
{
    const MethodLibrary library = MethodLibrary::load(u":/methods"_s);
    for (const assay::Derived &derived : m_method.derived) {
        for (const assay::DerivedTerm &term : derived.terms) {
            const auto other =
                term.method.isEmpty() ? m_method : library.find(term.method).value_or(Method());
            EXPECT_TRUE(assay::findMeasurand(other, term.measurand))
                << derived.id.toStdString() << ", " << term.method.toStdString();
        }
    }
}

// At every wavelength the file has.
TEST_P(ShippedMethod, EvaluatesASyntheticRunAsByHand)
{
    const double midWindow = (m_method.window.minSignal + m_method.window.maxSignal) / 2;
    const double steps = static_cast<double>(assay::readingsInOrder(m_method).size() - 1);
    const double sampleStep = midWindow / steps + blankStep;
    ASSERT_EQ(m_method.volumeCorrection, assay::VolumeCorrection::None);
    for (const auto &[wavelength_nm, absorptivity] : m_method.absorptivity_L_per_mol_cm) {
        const run::Run run = syntheticRun(m_method, wavelength_nm, sampleStep);
        ASSERT_FALSE(assay::hasErrors(run::problemsOf(run, m_method)))
            << listed(run::problemsOf(run, m_method));
        const auto evaluation = evaluation::evaluate(m_method, run);
        for (const assay::Measurand &measurand : m_method.measurands) {
            const evaluation::Result *result = resultOf(evaluation, measurand.id);
            ASSERT_TRUE(result) << measurand.id.toStdString();
            ASSERT_TRUE(result->value) << measurand.id.toStdString();
            EXPECT_NEAR(*result->value /
                            concentrationByHand_g_per_L(m_method, measurand, sampleStep, wavelength_nm),
                        1, 1e-12)
                << wavelength_nm;
            EXPECT_EQ(result->verdict, evaluation::Verdict::Reportable) << measurand.id.toStdString();
            EXPECT_EQ(result->unit, u"g/L"_s);
        }
    }
}

// The sum of factor x result over the terms, the other method's run of the same sample beside it.
TEST_P(ShippedMethod, DerivesAcrossTwoRunsAsByHand)
{
    const MethodLibrary library = MethodLibrary::load(u":/methods"_s);
    for (const assay::Derived &derived : m_method.derived) {
        std::vector<evaluation::Companion> companions;
        double expected_g_per_L = 0;
        for (const assay::DerivedTerm &term : derived.terms) {
            const Method method = term.method.isEmpty() ? m_method : library.find(term.method).value();
            const double sampleStep = term.method.isEmpty() ? 0.404 : 0.064;
            expected_g_per_L += term.factor * concentrationByHand_g_per_L(
                                                  method, *assay::findMeasurand(method, term.measurand),
                                                  sampleStep, method.wavelength_nm);
            if (!term.method.isEmpty())
                companions.push_back({method, syntheticRun(method, method.wavelength_nm, sampleStep)});
        }
        const run::Run run = syntheticRun(m_method, m_method.wavelength_nm, 0.404);
        EXPECT_FALSE(resultOf(evaluation::evaluate(m_method, run), derived.id)) << "needs the other run";
        const auto evaluation = evaluation::evaluate(m_method, run, {}, companions);
        const evaluation::Result *result = resultOf(evaluation, derived.id);
        ASSERT_TRUE(result);
        ASSERT_TRUE(result->value);
        EXPECT_GT(*result->value, 0);
        EXPECT_NEAR(*result->value / expected_g_per_L, 1, 1e-12);
    }
}

INSTANTIATE_TEST_SUITE_P(Files, ShippedMethod, ::testing::ValuesIn(fileNames()), [](const auto &file) {
    std::string name = file.param.substr(0, file.param.find('.'));
    std::erase(name, '-');
    return name;
});

TEST(ShippedMethods, CoverTheLaboratorysUsualAssays)
{
    EXPECT_EQ(fileNames().size(), 23U);
    EXPECT_EQ(MethodLibrary::load(u":/methods"_s).methods().size(), fileNames().size());
}

} // namespace plateau::exchange
