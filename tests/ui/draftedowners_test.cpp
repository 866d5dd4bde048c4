// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/bench/budgetowners.h"
#include "ui/bench/drafteduncertainty.h"
#include "ui/bench/rundraft.h"

#include <QLocale>

#include <gmock/gmock.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using planning::UncertaintyInput;

planning::Laboratory ownLaboratory()
{
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.photometer =
        planning::Photometer{u"P1"_s, 0.0012, 0.1, u"check record 7"_s, QDate(2026, 9, 14)};
    laboratory.methodUncertainties = {
        {u"example-acid"_s, u"validation of 2026"_s, {}, 0.3, {}, {}, {}, {}, {}}};
    return laboratory;
}

class DraftedOwners : public Bench
{
protected:
    DraftedOwners()
    {
        draft.title = u"Perry tanks"_s;
        draft.samples = {{u"P-104"_s, {}, {}, {}, false, {}}};
        draft.pathLength_mm = u"10"_s;
        draft.startedAt = StoppedClock().now();
        draft.laboratory = ownLaboratory();
        draft.person = u"R. Okafor"_s;
    }
    planning::OwnedInput owned(UncertaintyInput input) const
    {
        const auto all = ui::runOf(draft, method()).uncertainty;
        return *std::ranges::find(all, input, &planning::OwnedInput::input);
    }
    ui::RunDraft draft;
};

TEST_F(DraftedOwners, AreTheLaboratorysWhereNothingIsTyped)
{
    const ui::DraftOutcome outcome = ui::runOf(draft, method());
    ASSERT_EQ(outcome.problems.size(), 1U);
    EXPECT_EQ(outcome.problems[0].pointer, u"/standards"_s) << "a warning: it has none";
    EXPECT_EQ(outcome.problems[0].severity, assay::Problem::Severity::Warning);
    EXPECT_EQ(outcome.run.uncertainty, planning::inputsFor(method(), draft.laboratory, outcome.run));
    EXPECT_EQ(outcome.run.uncertainty->absorbance, 0.0012);
    EXPECT_EQ(outcome.run.uncertainty->absorptivity_percent, 0.3);
    // 0.1 mL of sample: the least exact of the two pipettes that make it.
    EXPECT_EQ(outcome.run.uncertainty->sampleVolume_percent, 0.8);
    ASSERT_EQ(outcome.plan.owners.size(), 7U);
    EXPECT_EQ(outcome.plan.owners[0].owner, u"photometer P1"_s);
    EXPECT_EQ(outcome.plan.owners[1].source, u"validation of 2026"_s);
    EXPECT_TRUE(planning::problemsOf(outcome.plan, outcome.run).empty());
}

TEST_F(DraftedOwners, ANumberTypedOverIsThePersons)
{
    draft.uncertainty.texts[0] = u"0,003"_s;
    const planning::OwnedInput typed = owned(UncertaintyInput::Absorbance);
    EXPECT_EQ(typed.value, 0.003);
    EXPECT_EQ(
        planning::ownedText(typed),
        u"R. Okafor: absorbance of a reading 0.0030 (typed for this run, in place of 0.0012 (photometer P1: "
        "check record 7, 2026-09-14))"_s);
    EXPECT_FALSE(typed.isDefault);
    EXPECT_EQ(ui::runOf(draft, method()).plan.owners[0].owner, u"R. Okafor"_s);
    draft.uncertainty.texts[0] = u"0.00120"_s;
    EXPECT_EQ(owned(UncertaintyInput::Absorbance).owner, u"photometer P1"_s) << "the same number";
    draft.person.clear();
    draft.uncertainty.texts[4] = u"0.9"_s;
    EXPECT_EQ(owned(UncertaintyInput::SampleVolume).owner, u"whoever plans the run"_s);
}

TEST_F(DraftedOwners, ATextThatIsNoNumberNamesItsPlace)
{
    draft.uncertainty.texts[6] = u"much"_s;
    const assay::Problems problems = ui::runOf(draft, method()).problems;
    assay::Problems errors = problems;
    std::erase_if(errors, [](const assay::Problem &problem) {
        return problem.severity == assay::Problem::Severity::Warning; // of a run without a standard
    });
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0].pointer, u"/uncertainty/extract_percent"_s);
}

TEST_F(DraftedOwners, AStandardKeepsWhatItsRecipeSays)
{
    ui::StandardDraft standard;
    standard.id = u"STD"_s;
    standard.concentration_g_per_L = u"0.2"_s;
    standard.lossPerHour_percent = u"0"_s;
    standard.uncertainty_percent = u"0,7"_s;
    draft.standard = standard;
    draft.calibration = run::Calibration::Standard;
    const ui::DraftOutcome stated = ui::runOf(draft, method());
    EXPECT_EQ(stated.run.standards[0].uncertainty_percent, 0.7);
    EXPECT_EQ(stated.plan.owners.back().source, u"stated with the standard"_s);
    draft.standard->uncertaintySource = u"weighed, 20.6 mg"_s;
    EXPECT_EQ(ui::runOf(draft, method()).plan.owners.back(),
              (planning::InputOwner{UncertaintyInput::Standard, u"STD"_s, u"standard STD"_s,
                                    u"weighed, 20.6 mg"_s}));
    draft.standard->uncertainty_percent = u"little"_s;
    QStringList places;
    for (const assay::Problem &problem : ui::runOf(draft, method()).problems)
        places << problem.pointer;
    EXPECT_THAT(places, ::testing::Contains(u"/standards/0/uncertainty_percent"_s));
}

TEST_F(DraftedOwners, TheReviewTellsWhoseNumbersTheBudgetIsMadeOf)
{
    draft.samples[0].dilution = {{u"5"_s, u"50"_s}};
    ui::DraftOutcome outcome = ui::runOf(draft, method());
    for (run::Tube &tube : outcome.run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.6}};
    const notebook::RunId id = book->addRun(outcome.run, method(), u"R. Okafor"_s, outcome.plan);
    const notebook::StoredRun stored = book->load(id);
    const evaluation::Evaluation evaluation = evaluation::evaluate(stored.method, stored.run);
    const std::vector<ui::Sentence> told = ui::budgetOwners(stored, evaluation.results.at(0));
    QStringList texts;
    for (const ui::Sentence &sentence : told)
        texts << sentence.text;
    ASSERT_EQ(told.size(), 7U) << texts.join(u'\n').toStdString();
    EXPECT_EQ(texts[0], u"Photometer P1: absorbance of a reading 0.0012 (check record 7, 2026-09-14)"_s);
    EXPECT_EQ(told[0].state, ui::State::Good);
    EXPECT_EQ(texts[1], u"Laboratory, for Example acid: absorptivity 0.30\u00a0% (validation of 2026)"_s);
    EXPECT_TRUE(texts[5].startsWith(u"Bulb pipette 5 mL with flask 50 mL: dilution step 5 to 50\u00a0mL "_s))
        << texts[5].toStdString();

    QLocale::setDefault(QLocale(QLocale::French, QLocale::France));
    EXPECT_EQ(ui::budgetOwners(stored, evaluation.results.at(0))[0].text,
              u"Photometer P1: absorbance of a reading 0.0012 (check record 7, 14/09/2026)"_s);
    QLocale::setDefault(QLocale::c());

    const notebook::StoredRun bare = book->load(addRun(outcome.run));
    const std::vector<ui::Sentence> unknown = ui::budgetOwners(bare, evaluation.results.at(0));
    EXPECT_EQ(unknown[0].state, ui::State::Pending);
    EXPECT_TRUE(unknown[0].text.startsWith(u"Not on record: "_s));
    EXPECT_TRUE(ui::budgetOwners(stored, evaluation::Result{}).empty()) << "no budget, no owners";
}

} // namespace
} // namespace plateau::test
