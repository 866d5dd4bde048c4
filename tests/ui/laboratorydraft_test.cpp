// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/writers.h"
#include "tests/support/print.h"
#include "ui/books/laboratorydraft.h"
#include "ui/books/laboratoryplaces.h"
#include "ui/books/methodchoices.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

planning::Laboratory fullLaboratory()
{
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.name = u"Orchard bench"_s;
    laboratory.reportHead = {
        {u"Orchard Lane 4"_s, u"Threnholt"_s},
        u"bench@threnholt.example"_s,
        planning::Logo{planning::LogoKind::Svg,
                       R"(<svg xmlns="http://www.w3.org/2000/svg" width="4" height="2"/>)"}};
    laboratory.reportUnits = {{u"Perry"_s, {}, evaluation::ReportUnit::MilligramPerLitre},
                              {u"Perry"_s, u"acid"_s, evaluation::ReportUnit::GramPerLitre}};
    laboratory.review = {true, true, {u"spilt"_s, u"wrong sample"_s}};
    laboratory.photometer =
        planning::Photometer{u"P1"_s, 0.001234567, 0.1, u"check record 7\nsheet 2"_s, QDate(2026, 9, 14)};
    laboratory.methodUncertainties = {
        {u"acid"_s, u"validation of 2026"_s, 0.00123456, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6},
        {u"sugar"_s, u"validation of 2025"_s, {}, 1.0 / 3, {}, {}, {}, {}, {}}};
    return laboratory;
}

QStringList placesOf(const assay::Problems &problems)
{
    QStringList places;
    for (const assay::Problem &problem : problems)
        places << ui::laboratoryField(problem.pointer).words;
    places.sort();
    return places;
}

TEST(LaboratoryDraft, WhatIsNotTouchedIsKeptToItsLastDigit)
{
    for (const planning::Laboratory &laboratory :
         {planning::Laboratory{}, planning::usualLaboratory(), fullLaboratory()}) {
        const ui::LaboratoryOutcome outcome = ui::laboratoryOf(ui::draftOf(laboratory), laboratory);
        EXPECT_TRUE(outcome.problems.empty()) << placesOf(outcome.problems).join(u" | "_s).toStdString();
        EXPECT_EQ(outcome.laboratory, laboratory);
        EXPECT_EQ(exchange::writeLaboratory(outcome.laboratory), exchange::writeLaboratory(laboratory));
    }
}

TEST(LaboratoryDraft, NumbersAreShownToThreeFigures)
{
    const ui::LaboratoryDraft draft = ui::draftOf(fullLaboratory());
    EXPECT_EQ(draft.pipettes[3].cells[ui::pipette::Step_mL], QString()) << "a fixed-volume pipette";
    EXPECT_LE(draft.pipettes[3].cells[ui::pipette::Uncertainty_percent].size(), 5);
    EXPECT_EQ(draft.photometer.absorbance, u"0.00123"_s);
    EXPECT_EQ(draft.methodUncertainties[1].cells[ui::methodUncertainty::Absorptivity_percent], u"0.333"_s);
    EXPECT_EQ(draft.methodUncertainties[1].cells[ui::methodUncertainty::Absorbance], QString());
    EXPECT_EQ(draft.photometer.checkedOn, u"2026-09-14"_s);
    EXPECT_EQ(draft.address, u"Orchard Lane 4\nThrenholt"_s);
}

TEST(LaboratoryDraft, WhatIsTypedReplacesWhatWasThere)
{
    const planning::Laboratory before = fullLaboratory();
    ui::LaboratoryDraft draft = ui::draftOf(before);
    draft.photometer = {u" P2 "_s, u"0,0015"_s, {}, u"check record 8"_s, u"2026-10"_s};
    draft.methodUncertainties.erase(draft.methodUncertainties.begin());
    draft.methodUncertainties[0].cells[ui::methodUncertainty::Absorptivity_percent] = u"0.334"_s;
    draft.reportUnits[1].cells[ui::reportUnit::Unit] = u"mg/100 mL"_s;
    draft.address = u"\nOrchard Lane 5 \n\n"_s;
    draft.logo.reset();
    draft.reviewerDecides = false;
    draft.rejectionReasons.push_back({u"new"_s, {u" cloudy "_s}});
    const auto [after, problems] = ui::laboratoryOf(draft, before);
    EXPECT_TRUE(problems.empty()) << placesOf(problems).join(u" | "_s).toStdString();
    EXPECT_EQ(after.photometer,
              (planning::Photometer{u"P2"_s, 0.0015, {}, u"check record 8"_s, QDate(2026, 10, 31)}));
    ASSERT_EQ(after.methodUncertainties.size(), 1U);
    EXPECT_EQ(after.methodUncertainties[0].absorptivity_percent, 0.334);
    EXPECT_EQ(after.reportUnits[1].unit, evaluation::ReportUnit::MilligramPer100mL);
    EXPECT_EQ(after.reportHead.address, QStringList{u"Orchard Lane 5"_s}) << "blank lines are no lines";
    EXPECT_FALSE(after.reportHead.logo);
    EXPECT_EQ(after.review.rejectionReasons.back(), u"cloudy"_s);
    EXPECT_FALSE(after.review.reviewerDecides);
    EXPECT_TRUE(after.review.secondPersonReviews);
    EXPECT_EQ(ui::changedParts(before, after),
              (QStringList{u"name and report head"_s, u"photometer"_s, u"uncertainties by method"_s,
                           u"units of products"_s, u"review"_s}));
    EXPECT_TRUE(ui::changedParts(after, after).isEmpty());
}

TEST(LaboratoryDraft, AnEmptiedPhotometerIsNone)
{
    ui::LaboratoryDraft draft = ui::draftOf(fullLaboratory());
    draft.photometer = {};
    const auto [laboratory, problems] = ui::laboratoryOf(draft, fullLaboratory());
    EXPECT_TRUE(problems.empty());
    EXPECT_FALSE(laboratory.photometer);
}

TEST(LaboratoryDraft, ProblemsOfTheRackAndTheGlassNameTheirField)
{
    const planning::Laboratory usual = planning::usualLaboratory();
    ui::LaboratoryDraft draft = ui::draftOf(usual);
    draft.rackRows = u"4,5"_s;
    draft.mix_s = u"quick"_s;
    draft.overage_percent = u"-1"_s;
    draft.pipettes[1].cells[ui::pipette::Largest_mL] = u""_s;
    draft.pipettes[2].cells[ui::pipette::Step_mL] = u"0,7"_s;
    draft.flasks[0].cells[ui::flask::Name] = draft.flasks[1].cells[ui::flask::Name];
    const QStringList places = placesOf(ui::laboratoryOf(draft, usual).problems);
    EXPECT_EQ(places, (QStringList{u"Flask 2, name"_s, u"Pipette 2, largest volume"_s, u"Pipette 3, step"_s,
                                   u"Reagent beyond the need"_s, u"Rows of a rack"_s, u"Time to mix"_s}))
        << places.join(u" | "_s).toStdString();
}

TEST(LaboratoryDraft, OneFaultIsSaidOnceAtItsField)
{
    struct Row {
        std::function<void(ui::LaboratoryDraft &)> change;
        const char *words;
        const char *objectName;
        ui::LaboratoryPart part;
        const char *sentence;
    };
    using enum ui::LaboratoryPart;
    const auto cell = [](std::vector<ui::CellRow> ui::LaboratoryDraft::*rows, int row, int column,
                         const QString &text) {
        return [=](ui::LaboratoryDraft &draft) {
            (draft.*rows)[static_cast<std::size_t>(row)].cells[static_cast<std::size_t>(column)] = text;
        };
    };
    using Draft = ui::LaboratoryDraft;
    const Row rows[] = {
        {[](Draft &d) { d.name = u"a\tb"_s; }, "Name", "laboratoryName", Head, "the name"},
        {[](Draft &d) { d.address = u"1\n2\n3\n4\n5\n6\n7\n8\n9"_s; }, "Address", "laboratoryAddress", Head,
         "at most 8"},
        {[](Draft &d) { d.contact = QString(300, u'x'); }, "Contact", "laboratoryContact", Head,
         "the contact"},
        {[](Draft &d) { d.logo->bytes = "<html/>"; }, "Logo", "loadLogo", Head, "the logo cannot be used"},
        {[](Draft &d) { d.photometer.name.clear(); }, "Photometer, name", "photometerName", Photometer,
         "name"},
        {[](Draft &d) { d.photometer.absorbance = u"1.5"_s; }, "Photometer, uncertainty of a reading",
         "photometerAbsorbance", Photometer, "not 1.5"},
        {[](Draft &d) { d.photometer.absorbance = u"small"_s; }, "Photometer, uncertainty of a reading",
         "photometerAbsorbance", Photometer, "is not a number"},
        {[](Draft &d) { d.photometer.pathLength_percent = u"-1"_s; },
         "Photometer, uncertainty of the path length", "photometerPathLength", Photometer, "not -1"},
        {[](Draft &d) { d.photometer.source = u" "_s; }, "Photometer, check record", "photometerSource",
         Photometer, "which record"},
        {[](Draft &d) { d.photometer.checkedOn = u"yesterday"_s; }, "Photometer, checked on",
         "photometerCheckedOn", Photometer, "2026"},
        {cell(&Draft::methodUncertainties, 0, ui::methodUncertainty::Source, {}), "Row 1, source",
         "methodUncertainties", Methods, "is blank"},
        {cell(&Draft::methodUncertainties, 1, ui::methodUncertainty::Method, {}), "Row 2, method",
         "methodUncertainties", Methods, "method's id"},
        {cell(&Draft::methodUncertainties, 1, ui::methodUncertainty::Method, u"acid"_s), "Row 2, method",
         "methodUncertainties", Methods, "has an entry already"},
        {cell(&Draft::methodUncertainties, 1, ui::methodUncertainty::Absorptivity_percent, {}), "Row 2",
         "methodUncertainties", Methods, "at least one"},
        {cell(&Draft::methodUncertainties, 1, ui::methodUncertainty::Absorptivity_percent, u"1x"_s),
         "Row 2, absorptivity", "methodUncertainties", Methods, "is not a number"},
        {cell(&Draft::methodUncertainties, 0, ui::methodUncertainty::Extract_percent, u"101"_s),
         "Row 1, extract", "methodUncertainties", Methods, "not 101"},
        {cell(&Draft::reportUnits, 0, ui::reportUnit::Product, u" "_s), "Row 1, product", "reportUnits",
         Units, "neither a product nor a measurand"},
        {cell(&Draft::reportUnits, 1, ui::reportUnit::Measurand, {}), "Row 2, product", "reportUnits", Units,
         "already"},
        {cell(&Draft::reportUnits, 1, ui::reportUnit::Unit, {}), "Row 2, unit", "reportUnits", Units,
         "choose one"},
        {cell(&Draft::rejectionReasons, 1, 0, u"SPILT "_s), "Reason 2", "rejectionReasons", Review,
         "already"},
        {cell(&Draft::rejectionReasons, 0, 0, {}), "Reason 1", "rejectionReasons", Review, "the reason"},
    };
    for (const Row &row : rows) {
        ui::LaboratoryDraft draft = ui::draftOf(fullLaboratory());
        row.change(draft);
        const assay::Problems problems = ui::laboratoryOf(draft, fullLaboratory()).problems;
        ASSERT_EQ(problems.size(), 1U)
            << row.words << ' ' << row.sentence << ": " << placesOf(problems).join(u" | "_s).toStdString();
        const ui::LaboratoryField field = ui::laboratoryField(problems[0].pointer);
        EXPECT_EQ(field.words, QString::fromUtf8(row.words));
        EXPECT_EQ(field.objectName, QString::fromUtf8(row.objectName));
        EXPECT_EQ(field.part, row.part) << row.words;
        EXPECT_TRUE(problems[0].message.contains(QString::fromUtf8(row.sentence)))
            << row.words << ": " << problems[0].message.toStdString();
    }
}

TEST(LaboratoryDraft, ATablesFieldIsItsCell)
{
    const ui::LaboratoryField field = ui::laboratoryField(u"/glassware/pipettes/1/largest_mL"_s);
    EXPECT_EQ(field.objectName, u"pipettes"_s);
    EXPECT_EQ(field.row, 1);
    EXPECT_EQ(field.column, int{ui::pipette::Largest_mL});
    EXPECT_EQ(ui::laboratoryField(u"/methodUncertainties/2/source"_s).column,
              int{ui::methodUncertainty::Source});
    EXPECT_EQ(ui::laboratoryField(u"/review/rejectionReasons/4"_s).row, 4);
    EXPECT_EQ(ui::laboratoryField(u"/reportUnits"_s).row, -1);
}

TEST(MethodChoices, NewestNamesInTheAlphabetAndIdsWhereANameStandsTwice)
{
    const auto stored = [](const QString &id, int version, const QString &name, const QString &measurand) {
        notebook::StoredMethod method;
        method.method.id = id;
        method.method.version = version;
        method.method.name = name;
        assay::Measurand measured;
        measured.id = measurand;
        measured.name = u"Acid"_s;
        method.method.measurands = {measured};
        return method;
    };
    std::vector<notebook::StoredMethod> catalogue{
        stored(u"b"_s, 2, u"zymase"_s, u"b-acid"_s), stored(u"b"_s, 1, u"old name"_s, u"b-acid"_s),
        stored(u"c"_s, 1, u"Acetate"_s, u"c-acid"_s), stored(u"d"_s, 1, u"gone"_s, u"d-acid"_s)};
    catalogue[3].retired = true;
    const ui::MethodChoices choices = ui::methodChoices(catalogue);
    QStringList methods;
    for (const ui::CellChoice &choice : choices.methods)
        methods << choice.value + u'=' + choice.words;
    EXPECT_EQ(methods, (QStringList{u"c=Acetate"_s, u"b=zymase"_s}));
    ASSERT_EQ(choices.measurands.size(), 2U);
    EXPECT_EQ(choices.measurands[0].words, u"Acid (b-acid)"_s);
}

} // namespace
} // namespace plateau::test
