// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methoddraft.h"

#include "core/exchange/library.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"
#include "ui/books/methodplaces.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// A method that says everything a method can.
assay::Method fullMethod()
{
    assay::Method method = coupledMethod();
    method.version = 3;
    method.principle = u"Two lines\nof principle"_s;
    method.volumeCorrection = assay::VolumeCorrection::ToFinalVolume;
    std::get<assay::WaitStep>(method.steps[4]).temperature_C = assay::Interval{20, 25.5};
    method.measurands.push_back(sequentialMethod().measurands[1]);
    method.measurands[0].typicalRange_g_per_L = assay::Interval{0.1, 5};
    method.window = {0.1, 1.0, 2.0, 0.15};
    method.acceptance.spikeRecovery_percent = assay::Interval{90, 110};
    method.extrapolate = assay::Extrapolation{u"A3"_s, 4};
    method.standard = assay::UsualStandard{0.2, 0.07};
    method.derived = {{u"bound"_s, u"Bound"_s, {{{}, u"analyte"_s, 1}, {{}, u"second"_s, -1}}},
                      {u"other"_s, u"Other"_s, {{u"elsewhere"_s, u"x"_s, 0.95}}}};
    method.tubes = assay::UsualTubes{2, 2, 1};
    method.reactions = {u"a + b = c"_s, u"c = d"_s};
    method.interferences = {u"colour"_s};
    method.cautions = {u"one caution\nof two lines"_s, u"another"_s};
    method.samplePreparation = {{assay::Matrix::Clear, u"as it is"_s},
                                {assay::Matrix::Solid, u"extract\nand filter"_s}};
    return method;
}

ui::CellRow &row(std::vector<ui::CellRow> &rows, const QString &key)
{
    return *std::ranges::find(rows, key, &ui::CellRow::key);
}

TEST(MethodDraft, AMethodComesBackAsItWas)
{
    for (const assay::Method &method :
         {fullMethod(), risingMethod(), fallingMethod(), sequentialMethod(), coupledMethod()}) {
        const ui::MethodOutcome outcome = ui::methodOf(ui::draftOf(method));
        EXPECT_EQ(outcome.method, method) << method.id.toStdString();
        EXPECT_EQ(errorsIn(outcome.problems), 0) << listed(outcome.problems);
    }
}

TEST(MethodDraft, AnEmptyEndOfTheWindowIsMissingAndNothingElseIsWrong)
{
    ui::MethodDraft draft = ui::draftOf(risingMethod());
    draft.maxSignal.clear();
    ui::MethodOutcome outcome = ui::methodOf(draft);
    EXPECT_EQ(errorsIn(outcome.problems), 1) << listed(outcome.problems);
    EXPECT_TRUE(names(outcome.problems, "/window/maxSignal", "is empty; a number is needed"));
    draft.minSignal.clear();
    outcome = ui::methodOf(draft);
    EXPECT_EQ(errorsIn(outcome.problems), 2) << listed(outcome.problems);
    EXPECT_TRUE(names(outcome.problems, "/window/minSignal", "is empty; a number is needed"));
    draft = ui::draftOf(fallingMethod());
    draft.maxAbsorbance = u"2x"_s; // with something that must remain below it
    draft.reserveAbsorbance = u"0.1"_s;
    outcome = ui::methodOf(draft);
    EXPECT_EQ(errorsIn(outcome.problems), 1) << listed(outcome.problems);
    EXPECT_TRUE(names(outcome.problems, "/window/maxAbsorbance", "\"2x\" is not a number"));
}

TEST(MethodDraft, SharesAreInPerCentAndTheFileKeepsTheFraction)
{
    assay::Method method = risingMethod();
    for (const auto &[fraction, percent] : std::vector<std::pair<double, QString>>{
             {0.03, u"3"_s}, {0.028, u"2.8"_s}, {0.07, u"7"_s}, {0.0575, u"5.75"_s}, {1, u"100"_s}}) {
        method.acceptance.repeatability = assay::Repeatability{0.01, fraction};
        const ui::MethodDraft draft = ui::draftOf(method);
        EXPECT_EQ(draft.repeatabilityProportional_percent, percent);
        EXPECT_EQ(ui::methodOf(draft).method, method);
    }
    ui::MethodDraft draft = ui::draftOf(method);
    draft.repeatabilityProportional_percent = u"300"_s;
    draft.standardLoss_percent_per_h = u"-1"_s;
    const ui::MethodOutcome outcome = ui::methodOf(draft);
    EXPECT_EQ(errorsIn(outcome.problems), 2) << listed(outcome.problems);
    EXPECT_TRUE(names(outcome.problems, "/acceptance/repeatability/proportional",
                      "must lie between 0 and 100 %, not 300"));
    EXPECT_TRUE(names(outcome.problems, "/standard/lossPerHour", "must lie between 0 and 100 %, not -1"));
}

TEST(MethodDraft, EveryShippedMethodComesBackAsItWasAndClean)
{
    const auto library =
        exchange::MethodLibrary::load(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/resources/methods"_s);
    ASSERT_FALSE(library.methods().empty());
    for (const assay::Method &method : library.methods()) {
        const ui::MethodOutcome outcome = ui::methodOf(ui::draftOf(method));
        EXPECT_EQ(outcome.method, method) << method.id.toStdString();
        EXPECT_TRUE(outcome.problems.empty()) << method.id.toStdString() << ' ' << listed(outcome.problems);
    }
}

TEST(MethodDraft, ATextThatIsNoNumberIsSaidOnceAtItsPlace)
{
    ui::MethodDraft draft = ui::draftOf(risingMethod());
    row(draft.components, u"sample"_s).cells[ui::component::Volume_mL] = u"0.1x"_s;
    row(draft.components, u"sample"_s).cells[ui::component::To_mL] = u"0,5,0"_s;
    const ui::MethodOutcome outcome = ui::methodOf(draft);
    EXPECT_EQ(errorsIn(outcome.problems), 2) << listed(outcome.problems);
    EXPECT_TRUE(names(outcome.problems, "/components/2/volume_mL", "\"0.1x\" is not a number"));
    EXPECT_TRUE(names(outcome.problems, "/components/2/range_mL/1", "\"0,5,0\" is not a number"));
}

TEST(MethodDraft, PointAndCommaAreBothDecimalMarks)
{
    ui::MethodDraft draft = ui::draftOf(risingMethod());
    row(draft.components, u"starter"_s).cells[ui::component::Volume_mL] = u"0,05"_s;
    EXPECT_EQ(ui::methodOf(draft).method.components[3].volume_mL, 0.05);
}

TEST(MethodDraft, OneEndOfARangeAloneIsAProblem)
{
    ui::MethodDraft draft = ui::draftOf(risingMethod());
    row(draft.components, u"sample"_s).cells[ui::component::From_mL].clear();
    draft.standardRecovery_percent[1] = u" "_s;
    const ui::MethodOutcome outcome = ui::methodOf(draft);
    EXPECT_TRUE(names(outcome.problems, "/components/2/range_mL/0", "a number is needed"));
    EXPECT_TRUE(names(outcome.problems, "/acceptance/standardRecovery_percent/1", "a number is needed"));
    EXPECT_EQ(errorsIn(outcome.problems), 2) << listed(outcome.problems);
}

TEST(MethodDraft, ANewComponentGetsAnIdOfItsNameAndAnOldOneKeepsIts)
{
    ui::MethodDraft draft = ui::draftOf(risingMethod());
    row(draft.components, u"buffer"_s).cells[ui::component::Name] = u"Glycine buffer"_s;
    for (const QString &key : {u"\u0001a"_s, u"\u0001b"_s})
        draft.components.push_back({key, {u"Buffer, pH 9.0 (Gärwein)"_s, u"0.1"_s, {}, {}, {}, {}}});
    draft.components.push_back({u"\u0001c"_s, {u"Buffer"_s, u"0.1"_s, {}, {}, {}, {}}});
    const assay::Method method = ui::methodOf(draft).method;
    EXPECT_EQ(method.components[0].id, u"buffer"_s);
    EXPECT_EQ(method.components[4].id, u"buffer-ph-9-0-gaerwein"_s);
    EXPECT_EQ(method.components[5].id, u"buffer-ph-9-0-gaerwein-2"_s);
    EXPECT_EQ(method.components[6].id, u"buffer-2"_s);
}

TEST(MethodDraft, AnIdIsSpelledAsItsLanguageDoesWithoutMarks)
{
    EXPECT_EQ(ui::idFrom(u"L-Äpfelsäure, gelöst für Süßmost"_s), u"l-aepfelsaeure-geloest-fuer-suessmost"_s);
    EXPECT_EQ(ui::idFrom(u"L-A\u0308pfelsa\u0308ure"_s), u"l-aepfelsaeure"_s) << "however the marks are stored";
    EXPECT_EQ(ui::idFrom(u"Bœuf séché à l’ancienne"_s), u"boeuf-seche-a-l-ancienne"_s);
    EXPECT_EQ(ui::idFrom(u"Sulfito en piña y pingüino"_s), u"sulfito-en-pina-y-pinguino"_s);
    EXPECT_EQ(ui::idFrom(QString(59, u'a') + u" b"_s), QString(59, u'a')) << "nor does it end in a hyphen where it is cut";
}

TEST(MethodDraft, AStepFollowsItsComponentAndSaysWhenThatIsGone)
{
    ui::MethodDraft draft = ui::draftOf(risingMethod());
    std::swap(draft.components[0], draft.components[3]);
    EXPECT_EQ(std::get<assay::AddStep>(ui::methodOf(draft).method.steps[0]).component, u"buffer"_s);
    std::erase_if(draft.components, [](const ui::CellRow &each) { return each.key == u"buffer"_s; });
    const ui::MethodOutcome outcome = ui::methodOf(draft);
    EXPECT_TRUE(names(outcome.problems, "/steps/0/add", "say which component is added"));
    EXPECT_EQ(errorsIn(outcome.problems), 1) << listed(outcome.problems);
}

TEST(MethodDraft, AWavelengthThatIsNotWholeOrTwiceInTheTableIsRefused)
{
    ui::MethodDraft draft = ui::draftOf(risingMethod());
    draft.wavelength_nm = u"340.5"_s;
    draft.absorptivities[0].cells[ui::absorptivity::Wavelength_nm] = u"340"_s;
    const ui::MethodOutcome outcome = ui::methodOf(draft);
    EXPECT_TRUE(names(outcome.problems, "/wavelength_nm", "whole number"));
    EXPECT_TRUE(names(outcome.problems, "/absorptivity_L_per_mol_cm/340", "in the table already"));
}

TEST(MethodDraft, CautionsAreOneALineOnceTheyAreEdited)
{
    ui::MethodDraft draft = ui::draftOf(fullMethod());
    draft.cautions.text += u"\n\n  a third  \n"_s;
    const auto cautions = ui::methodOf(draft).method.cautions;
    ASSERT_EQ(cautions.size(), 4U);
    EXPECT_EQ(cautions.back(), u"a third"_s);
}

TEST(MethodDraft, TheUsualOrderIsASoundRecipeButForItsWaits)
{
    ui::MethodDraft draft = ui::draftOf(risingMethod());
    draft.steps = ui::usualSteps(draft.components);
    ui::MethodOutcome outcome = ui::methodOf(draft);
    EXPECT_EQ(errorsIn(outcome.problems), 4) << listed(outcome.problems); // two ends of two waits
    for (ui::CellRow &each : draft.steps) {
        if (each.cells[ui::step::Kind] == ui::step::wait) {
            each.cells[ui::step::From_min] = u"3"_s;
            each.cells[ui::step::To_min] = u"10"_s;
        }
    }
    outcome = ui::methodOf(draft);
    EXPECT_TRUE(outcome.problems.empty()) << listed(outcome.problems);
    std::vector<assay::Step> expected = risingMethod().steps;
    expected[8] = assay::WaitStep{{3, 10}, {}};
    EXPECT_EQ(outcome.method.steps, expected);
}

TEST(MethodDraft, ANewMethodSaysWhatIsStillOpenAndNothingElse)
{
    const ui::MethodOutcome outcome = ui::methodOf(ui::newMethodDraft());
    EXPECT_TRUE(names(outcome.problems, "/name", "cannot be used"));
    EXPECT_TRUE(names(outcome.problems, "/source", "says nothing"));
    EXPECT_TRUE(names(outcome.problems, "/components/0/volume_mL", "a number is needed"));
    EXPECT_TRUE(names(outcome.problems, "/measurands/0/molarMass_g_per_mol", "a number is needed"));
    EXPECT_TRUE(names(outcome.problems, "/window/maxSignal", "a number is needed"));
    EXPECT_FALSE(names(outcome.problems, "/id", ""));
    EXPECT_FALSE(names(outcome.problems, "/wavelength_nm", ""));
}

TEST(MethodPlaces, EveryPlaceHasItsFieldAndItsWords)
{
    using ui::MethodSection;
    const ui::MethodDraft draft = ui::draftOf(fullMethod());
    struct Row {
        const char *pointer;
        ui::MethodField field;
        const char *words;
    };
    const Row rows[] = {
        {"/name", {MethodSection::Measures, u"methodName"_s}, "name"},
        {"/components/2/range_mL/1",
         {MethodSection::Recipe, u"components"_s, 2, ui::component::To_mL},
         "component Sample, allowed volumes, to"},
        {"/components/0/volume_mL",
         {MethodSection::Recipe, u"components"_s, 0, ui::component::Volume_mL},
         "component Buffer, volume"},
        {"/starter", {MethodSection::Recipe, u"components"_s, 3, ui::component::Part}, "starter"},
        {"/steps/4/wait_min/0",
         {MethodSection::Recipe, u"steps"_s, 4, ui::step::From_min},
         "step 5, time, from"},
        {"/steps/6/add", {MethodSection::Recipe, u"steps"_s, 6, ui::step::Component}, "step 7"},
        {"/measurands/1/signal/to",
         {MethodSection::Signal, u"signals"_s, 1, ui::measurand::Last},
         "measurand Second, signal, to reading"},
        {"/measurands/0/molarMass_g_per_mol",
         {MethodSection::Measures, u"measurands"_s, 0, ui::measurand::MolarMass},
         "measurand Analyte, molar mass"},
        {"/derived/1/terms/0/factor",
         {MethodSection::Measures, u"derived"_s, 2, ui::derived::Factor},
         "Other, part 1, times"},
        {"/absorptivity_L_per_mol_cm/365",
         {MethodSection::Signal, u"absorptivities"_s, 2, ui::absorptivity::Value},
         "absorptivity at 365 nm"},
        {"/window/minSignal",
         {MethodSection::Limits, u"minSignal"_s},
         "measuring window, smallest net signal"},
        {"/acceptance/spikeRecovery_percent/1",
         {MethodSection::Limits, u"spikeRecoveryTo"_s},
         "what a run has to keep, recovery of a spike, to"},
        {"/samplePreparation/1/text",
         {MethodSection::Text, u"preparation6"_s},
         "preparation of the sample, text"},
        {"/cautions/1", {MethodSection::Text, u"cautions"_s}, "caution 2"},
        {"/extrapolate/lastReadings",
         {MethodSection::Signal, u"lastReadings"_s},
         "reading taken as a series, readings on the line"},
    };
    for (const Row &each : rows) {
        const QString pointer = QString::fromLatin1(each.pointer);
        const ui::MethodField field = ui::fieldOf(pointer, draft);
        EXPECT_EQ(field, each.field) << each.pointer << " goes to " << field.objectName.toStdString() << ' '
                                     << field.row << ' ' << field.column;
        EXPECT_EQ(ui::methodPlaceWords(pointer, draft).toStdString(), each.words);
    }
}

} // namespace
} // namespace plateau::test
