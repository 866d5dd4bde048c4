// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/methodcomparison.h"

#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "tests/core/exchange/documents.h"
#include "tests/support/print.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace assay;
using ::testing::IsEmpty;
using ::testing::SizeIs;

void PrintTo(const Difference &difference, std::ostream *out)
{
    *out << difference.place.toStdString() << " (" << difference.words.toStdString()
         << "): " << difference.before.value_or(u"-"_s).toStdString() << " -> "
         << difference.after.value_or(u"-"_s).toStdString();
}

namespace {

/// Every member of a method in use.
Method full()
{
    return *readMethod(test::bytes(test::methodDocument())).value;
}

struct ChangedMember {
    std::function<void(Method &)> change;
    const char *place;
    const char *words;
    /// nullptr: not there.
    const char *before;
    const char *after;
};

// The brackets name every member of every part of a method. One more member stops the compiler here: give it
// a bracket and, below, a row.
[[maybe_unused]] void everyMemberIsKnownHere(Method method)
{
    [[maybe_unused]] auto &[id, version, name, source, principle, chromophore, absorptivity, wavelength, path,
                            direction, correction, components, sample, diluent, starter, steps, measurands,
                            window, acceptance, extrapolate, derived, standard, tubes, reactions,
                            interferences, preparation, cautions] = method;
    [[maybe_unused]] auto &[componentId, componentName, volume, range, suspension] = components[0];
    [[maybe_unused]] auto &[measurandId, measurandName, molarMass, perMolecule, signal, typical] =
        measurands[0];
    [[maybe_unused]] auto &[minSignal, maxSignal, maxAbsorbance, reserve] = window;
    [[maybe_unused]] auto &[maxBlank, standardRecovery, spikeRecovery, repeatability] = acceptance;
    [[maybe_unused]] auto &[constant, proportional] = *repeatability;
    [[maybe_unused]] auto &[reading, lastReadings] = *extrapolate;
    [[maybe_unused]] auto &[derivedId, derivedName, terms] = derived[0];
    [[maybe_unused]] auto &[termMethod, termMeasurand, factor] = terms[0];
    [[maybe_unused]] auto &[concentration, loss] = *standard;
    [[maybe_unused]] auto &[blanks, replicates, standards] = *tubes;
    [[maybe_unused]] auto &[matrix, text] = preparation[0];
    [[maybe_unused]] auto &[added] = std::get<AddStep>(steps[0]);
    [[maybe_unused]] auto &[wait, temperature] = std::get<WaitStep>(steps[4]);
    [[maybe_unused]] auto &[read] = std::get<ReadStep>(steps[5]);
    [[maybe_unused]] auto &[from, to] = std::get<DifferenceSignal>(signal);
}

std::vector<ChangedMember> changedMembers()
{
    return {
        {[](Method &m) { m.id = u"x"_s; }, "/id", "ID", "example-acid", "x"},
        {[](Method &m) { m.version = 2; }, "/version", "Version", "1", "2"},
        {[](Method &m) { m.name = u"x"_s; }, "/name", "Name", "Example acid", "x"},
        {[](Method &m) { m.source = u"x"_s; }, "/source", "Source", "title, section", "x"},
        {[](Method &m) { m.principle.clear(); }, "/principle", "Principle", "One NADH for each.", nullptr},
        {[](Method &m) { m.chromophore = u"NADPH"_s; }, "/chromophore", "Chromophore", "NADH", "NADPH"},
        {[](Method &m) { m.absorptivity_L_per_mol_cm[334] = 6180.5; }, "/absorptivity_L_per_mol_cm/334",
         "Absorptivity at 334 nm", "6180 L/(mol cm)", "6180.5 L/(mol cm)"},
        {[](Method &m) { m.absorptivity_L_per_mol_cm.erase(365); }, "/absorptivity_L_per_mol_cm/365",
         "Absorptivity at 365 nm", "3400 L/(mol cm)", nullptr},
        {[](Method &m) { m.wavelength_nm = 334; }, "/wavelength_nm", "Wavelength", "340 nm", "334 nm"},
        {[](Method &m) { m.pathLength_mm = 9.99; }, "/pathLength_mm", "Path length", "10 mm", "9.99 mm"},
        {[](Method &m) { m.direction = Direction::Falling; }, "/direction", "Direction", "rising", "falling"},
        {[](Method &m) { m.volumeCorrection = VolumeCorrection::ToFinalVolume; }, "/volumeCorrection",
         "Volume correction", "none", "to the final volume"},
        {[](Method &m) { m.components[0].name = u"x"_s; }, "/components/0/name", "Name of x", "Buffer pH 9",
         "x"},
        {[](Method &m) { m.components[0].volume_mL = 1.0 + 1e-15; }, "/components/0/volume_mL",
         "Volume of Buffer pH 9", "1 mL", "1.000000000000001 mL"},
        {[](Method &m) { m.components[2].range_mL->upper = 1; }, "/components/2/range_mL",
         "Allowed volumes of Sample", "0.05 to 0.5 mL", "0.05 to 1 mL"},
        {[](Method &m) { m.components[2].range_mL.reset(); }, "/components/2/range_mL",
         "Allowed volumes of Sample", "0.05 to 0.5 mL", nullptr},
        {[](Method &m) { m.components[3].suspension = false; }, "/components/3/suspension",
         "Suspension of Enzyme suspension", "yes", nullptr},
        {[](Method &m) { m.sample = u"water"_s; }, "/sample", "Component that is the sample", "Sample",
         "Water"},
        {[](Method &m) { m.diluent = u"buffer"_s; }, "/diluent", "Component that is the diluent", "Water",
         "Buffer pH 9"},
        {[](Method &m) { m.starter = u"buffer"_s; }, "/starter", "Component that is the starter",
         "Enzyme suspension", "Buffer pH 9"},
        {[](Method &m) { m.steps[0] = AddStep{u"starter"_s}; }, "/steps/0", "Step 1", "add Buffer pH 9",
         "add Enzyme suspension"},
        {[](Method &m) { std::get<WaitStep>(m.steps[4]).wait_min.lower = 4; }, "/steps/4", "Step 5",
         "wait 3 to 10 min, temperature 20 to 25 °C", "wait 4 to 10 min, temperature 20 to 25 °C"},
        {[](Method &m) { std::get<WaitStep>(m.steps[4]).temperature_C.reset(); }, "/steps/4", "Step 5",
         "wait 3 to 10 min, temperature 20 to 25 °C", "wait 3 to 10 min"},
        {[](Method &m) { m.steps[5] = ReadStep{u"A0"_s}; }, "/steps/5", "Step 6", "read A1", "read A0"},
        {[](Method &m) { m.steps.erase(m.steps.begin() + 3); }, "/steps/3", "Step 4", "mix", nullptr},
        {[](Method &m) { m.steps.insert(m.steps.begin() + 2, MixStep{}); }, "/steps/2", "Step 3", nullptr,
         "mix"},
        {[](Method &m) { m.measurands[0].name = u"x"_s; }, "/measurands/0/name", "Name of x", "Example acid",
         "x"},
        {[](Method &m) { m.measurands[0].molarMass_g_per_mol = 134; }, "/measurands/0/molarMass_g_per_mol",
         "Molar mass of Example acid", "134.09 g/mol", "134 g/mol"},
        {[](Method &m) { m.measurands[0].chromophorePerMolecule = 2; },
         "/measurands/0/chromophorePerMolecule", "Chromophore molecules per molecule of Example acid", "1",
         "2"},
        {[](Method &m) {
             m.measurands[0].signal = DifferenceSignal{u"A1"_s, u"A3"_s};
         },
         "/measurands/0/signal", "Signal of Example acid", "difference, From A1, To A2",
         "difference, From A1, To A3"},
        {[](Method &m) {
             m.measurands[0].signal = CoupledIndicatorSignal{u"A0"_s, u"A1"_s, u"A2"_s};
         },
         "/measurands/0/signal", "Signal of Example acid", "difference, From A1, To A2",
         "coupled indicator, Base reading A0, Middle reading A1, Final reading A2"},
        {[](Method &m) { m.measurands[0].typicalRange_g_per_L->lower = 1; },
         "/measurands/0/typicalRange_g_per_L", "Typical range of Example acid", "0.5 to 12 g/L",
         "1 to 12 g/L"},
        {[](Method &m) { m.window.minSignal = 0.2; }, "/window/minSignal", "Smallest net signal", "0.1",
         "0.2"},
        {[](Method &m) { m.window.maxSignal = 2; }, "/window/maxSignal", "Largest net signal", "1", "2"},
        {[](Method &m) { m.window.maxAbsorbance.reset(); }, "/window/maxAbsorbance", "Largest absorbance",
         "2", nullptr},
        {[](Method &m) { m.window.reserveAbsorbance = 0; }, "/window/reserveAbsorbance",
         "Absorbance that must remain", "0.1", "0"},
        {[](Method &m) { m.acceptance.maxBlankSignal = 0.06; }, "/acceptance/maxBlankSignal",
         "Largest blank signal", "0.05", "0.06"},
        {[](Method &m) { m.acceptance.standardRecovery_percent->lower = 90; },
         "/acceptance/standardRecovery_percent", "Recovery of a standard", "95 to 105 %", "90 to 105 %"},
        {[](Method &m) { m.acceptance.spikeRecovery_percent.reset(); }, "/acceptance/spikeRecovery_percent",
         "Recovery of a spike", "90 to 110 %", nullptr},
        {[](Method &m) { m.acceptance.repeatability->constant_g_per_L = 0.04; },
         "/acceptance/repeatability/constant_g_per_L", "Repeatability, constant part", "0.03 g/L",
         "0.04 g/L"},
        {[](Method &m) { m.acceptance.repeatability->proportional = 0.04; },
         "/acceptance/repeatability/proportional", "Repeatability, proportional part", "3 %", "4 %"},
        {[](Method &m) { m.extrapolate->reading = u"A1"_s; }, "/extrapolate/reading",
         "Reading that is extrapolated", "A2", "A1"},
        {[](Method &m) { m.extrapolate->lastReadings = 5; }, "/extrapolate/lastReadings",
         "Readings the line goes through", "4", "5"},
        {[](Method &m) { m.derived[0].name = u"x"_s; }, "/derived/0/name", "Name of x", "Bound acid", "x"},
        {[](Method &m) { m.derived[0].terms[0].factor = 2; }, "/derived/0/terms/0/factor",
         "Factor of example-acid in Bound acid", "1.5", "2"},
        {[](Method &m) { m.derived[0].terms.pop_back(); }, "/derived/0/terms/1", "Part acid of Bound acid",
         "Method free-acid, Measurand acid, Factor -1", nullptr},
        {[](Method &m) { m.standard->concentration_g_per_L = 0.3; }, "/standard/concentration_g_per_L",
         "Concentration of the usual standard", "0.2 g/L", "0.3 g/L"},
        {[](Method &m) { m.standard->lossPerHour.reset(); }, "/standard/lossPerHour",
         "Loss of the usual standard per hour", "2 %", nullptr},
        {[](Method &m) { m.tubes->blanks = 2; }, "/tubes/blanks", "Blanks of a rack", "1", "2"},
        {[](Method &m) { m.tubes->replicates = 3; }, "/tubes/replicates", "Tubes of each sample", "2", "3"},
        {[](Method &m) { m.tubes->standards = 0; }, "/tubes/standards", "Tubes of standards of a rack", "3",
         "0"},
        {[](Method &m) { m.reactions[0] = u"x"_s; }, "/reactions/0", "Reaction 1",
         "Acid + NAD -> base + NADH: one NADH for each.", "x"},
        {[](Method &m) { m.interferences.erase(m.interferences.begin()); }, "/interferences/0",
         "Interference 1", "Other acids.", nullptr},
        {[](Method &m) { m.samplePreparation[1].text = u"x"_s; }, "/samplePreparation/1/text",
         "Preparation of protein-rich samples", "Clarify.", "x"},
        {[](Method &m) { m.cautions.push_back(u"x"_s); }, "/cautions/1", "Caution 2", nullptr, "x"},
    };
}

std::optional<QString> text(const char *bytes)
{
    return bytes ? std::optional(QString::fromUtf8(bytes)) : std::nullopt;
}

} // namespace

TEST(MethodComparison, EveryChangedMemberIsExactlyOneDifference)
{
    for (const ChangedMember &row : changedMembers()) {
        SCOPED_TRACE(row.place);
        Method changed = full();
        row.change(changed);
        const std::vector<Difference> found = differences(full(), changed);
        ASSERT_THAT(found, SizeIs(1));
        EXPECT_EQ(found[0], (Difference{QString::fromUtf8(row.place), QString::fromUtf8(row.words),
                                        text(row.before), text(row.after)}));
        // And back again, with before and after the other way about.
        const std::vector<Difference> back = differences(changed, full());
        ASSERT_THAT(back, SizeIs(1));
        EXPECT_EQ(back[0].before, text(row.after));
        EXPECT_EQ(back[0].after, text(row.before));
    }
}

TEST(MethodComparison, EveryValueOfTheDocumentIsCompared)
{
    // Over the document, so that a member that only the writer knows of would be missed here, too.
    const auto document = nlohmann::ordered_json::parse(writeMethod(full()).toStdString());
    const auto flat = document.flatten();
    std::size_t values = 0;
    for (const auto &[pointer, value] : flat.items())
        values += pointer.empty() ? 0U : 1U;
    EXPECT_EQ(values, 88U) << "a value more or less: give it a row above";
}

TEST(MethodComparison, EqualMethodsHaveNoDifference)
{
    EXPECT_THAT(differences(full(), full()), IsEmpty());
    EXPECT_THAT(differences({}, {}), IsEmpty());
}

TEST(MethodComparison, NothingKeepsAKeyForItsWords)
{
    // Everything in the one and nothing in the other: every field has to be told in words.
    for (const Difference &difference : differences({}, full())) {
        const QString key = difference.place.section(u'/', -1);
        EXPECT_NE(difference.words, key);
        EXPECT_FALSE(difference.words.contains(u'_')) << difference.words.toStdString();
        EXPECT_TRUE(difference.words[0].isUpper()) << difference.words.toStdString();
    }
}

TEST(MethodComparison, ChangedIdIsAPartTakenAwayAndAnotherAdded)
{
    Method changed = full();
    changed.components[0].id = u"other"_s;
    const std::vector<Difference> found = differences(full(), changed);
    ASSERT_THAT(found, SizeIs(2));
    EXPECT_EQ(found[0].words, u"Component Buffer pH 9"_s);
    EXPECT_FALSE(found[0].before);
    EXPECT_EQ(found[0].after, u"ID other, Name Buffer pH 9, Volume 1 mL"_s);
    EXPECT_EQ(found[1].before, u"ID buffer, Name Buffer pH 9, Volume 1 mL"_s);
}

TEST(MethodComparison, OrderOfComponentsIsADifferenceOfItsOwn)
{
    Method changed = full();
    std::swap(changed.components[0], changed.components[1]);
    changed.components[0].volume_mL = 2;
    const std::vector<Difference> found = differences(full(), changed);
    ASSERT_THAT(found, SizeIs(2));
    EXPECT_EQ(found[0],
              (Difference{u"/components/0/volume_mL"_s, u"Volume of Water"_s, u"1 mL"_s, u"2 mL"_s}));
    EXPECT_EQ(found[1], (Difference{u"/components"_s, u"Order of: Components"_s,
                                    u"Buffer pH 9, Water, Sample, Enzyme suspension"_s,
                                    u"Water, Buffer pH 9, Sample, Enzyme suspension"_s}));
}

TEST(MethodComparison, InsertedStepsLeaveTheOthersInPlace)
{
    Method changed = full();
    changed.steps.insert(changed.steps.begin() + 6, {WaitStep{{1, 2}, {}}, ReadStep{u"A1b"_s}});
    std::get<WaitStep>(changed.steps[10]).wait_min.upper = 50;
    const std::vector<Difference> found = differences(full(), changed);
    ASSERT_THAT(found, SizeIs(3));
    EXPECT_EQ(found[0], (Difference{u"/steps/6"_s, u"Step 7"_s, {}, u"wait 1 to 2 min"_s}));
    EXPECT_EQ(found[1], (Difference{u"/steps/7"_s, u"Step 8"_s, {}, u"read A1b"_s}));
    EXPECT_EQ(found[2],
              (Difference{u"/steps/10"_s, u"Step 11"_s, u"wait 15 to 40 min"_s, u"wait 15 to 50 min"_s}));
}

TEST(MethodComparison, PartThatOnlyOneHasIsToldMemberByMember)
{
    Method changed = full();
    changed.extrapolate.reset();
    changed.acceptance.repeatability.reset();
    const std::vector<Difference> found = differences(full(), changed);
    ASSERT_THAT(found, SizeIs(4));
    EXPECT_EQ(found[0].words, u"Repeatability, constant part"_s);
    EXPECT_EQ(found[3].before, u"4"_s);
    Method empty = changed;
    empty.standard = UsualStandard{};
    changed.standard.reset();
    ASSERT_THAT(differences(changed, empty), SizeIs(1));
    EXPECT_EQ(differences(changed, empty)[0].words, u"Usual standard"_s);
}

TEST(MethodComparison, WordsOfManyDifferencesAreCutShort)
{
    EXPECT_EQ(differenceWords({}), u""_s);
    const std::vector<Difference> five{{u"/a"_s, u"A"_s, {}, {}},
                                       {u"/b"_s, u"B"_s, {}, {}},
                                       {u"/c"_s, u"C"_s, {}, {}},
                                       {u"/d"_s, u"D"_s, {}, {}},
                                       {u"/e"_s, u"E"_s, {}, {}}};
    EXPECT_EQ(differenceWords(five), u"A, B, C and 2 more"_s);
    EXPECT_EQ(differenceWords({five[0]}), u"A"_s);
    EXPECT_EQ(differenceWords({five[0], five[1], five[2]}), u"A, B and C"_s);
}

} // namespace plateau::exchange
