// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class StandardBookTest : public OpenNotebookTest
{
protected:
    StandardBook &standards() { return m_book->standards(); }
    planning::Substance substance() const
    {
        planning::Substance of;
        of.name = u"L-malic acid"_s;
        of.supplier = u"Kaddour supplies"_s;
        of.lot = u"M-3"_s;
        of.certificate = u"C 12"_s;
        of.purity = 0.995;
        of.purityHalfWidth = 0.005;
        of.water = 0.01;
        of.waterHalfWidth = 0.002;
        of.molarMass_g_per_mol = 134.09;
        of.density_g_per_mL = 1.6;
        of.expires = QDate(2027, 3, 31);
        return of;
    }
    planning::Preparation preparation(const QString &name = u"STD-17"_s) const
    {
        planning::Preparation made;
        made.name = name;
        made.measurand = u"analyte"_s;
        made.analyteMolarMass_g_per_mol = 134.09;
        made.masses_mg = {50.3, 49.8};
        made.mass_u_mg = 0.1;
        made.flask_mL = 500;
        made.flask = u"flask 500 mL"_s;
        made.flask_u_mL = 0.2;
        made.madeAt = QDateTime(QDate(2026, 3, 2), QTime(8, 30), Qt::OffsetFromUTC, 3600);
        made.lossPerHour = 0.01;
        made.useBy = made.madeAt.addDays(1);
        made.note = u"stirred for ten minutes"_s;
        return made;
    }
};

TEST_F(StandardBookTest, APreparationComesBackToTheLastBit)
{
    const SubstanceId of = standards().addSubstance(substance(), person);
    const PreparationId id = standards().prepare(of, preparation(), person);
    m_book.reset(); // it has the file for itself
    const auto opened = reopen(Access::ReadOnly);
    ASSERT_THAT(opened->standards().substances(), SizeIs(1));
    EXPECT_EQ(opened->standards().substances()[0].substance, substance());
    ASSERT_THAT(opened->standards().preparations(), SizeIs(1));
    const planning::HeldPreparation held = opened->standards().preparations()[0];
    EXPECT_EQ(held.id, id.value);
    EXPECT_EQ(held.of, substance());
    EXPECT_EQ(held.preparation, preparation());
    EXPECT_EQ(held.person, person);
    EXPECT_FALSE(held.discarded);
}

TEST_F(StandardBookTest, WhatWasMadeKeepsTheSubstanceAsItWasKnown)
{
    const SubstanceId of = standards().addSubstance(substance(), person);
    standards().prepare(of, preparation(), person);
    planning::Substance dried = substance();
    dried.water = 0;
    standards().changeSubstance(of, dried, person, u"dried at 105 °C"_s);
    standards().prepare(of, preparation(u"STD-18"_s), person);
    const auto all = standards().preparations();
    ASSERT_THAT(all, SizeIs(2));
    EXPECT_EQ(all[0].preparation.name, u"STD-18"_s) << "the newest first";
    EXPECT_EQ(all[0].of, dried);
    EXPECT_EQ(all[1].of, substance());
    ASSERT_THAT(standards().substances(), SizeIs(1));
    EXPECT_EQ(standards().substances()[0].substance, dried);
}

TEST_F(StandardBookTest, RunsThatUsedItAreFoundByNameAndTime)
{
    const SubstanceId of = standards().addSubstance(substance(), person);
    const PreparationId id = standards().prepare(of, preparation(), person);
    run::Run run = plainRun();
    run::Standard used;
    used.id = u"STD-17"_s;
    used.concentration_g_per_L = 0.2;
    used.preparedAt = preparation().madeAt;
    run.standards = {used};
    run.startedAt = preparation().madeAt.addSecs(3600);
    const RunId first = m_book->addRun(run, risingMethod(), person);
    run.standards[0].preparedAt = preparation().madeAt.addDays(-7);
    m_book->addRun(run, risingMethod(), person);
    run.standards[0].preparedAt.reset();
    const RunId third = m_book->addRun(run, risingMethod(), person);
    EXPECT_THAT(standards().runsOf(id), ElementsAre(third, first));
}

TEST_F(StandardBookTest, ItIsThrownAwayOnceWithAReason)
{
    const SubstanceId of = standards().addSubstance(substance(), person);
    const PreparationId id = standards().prepare(of, preparation(), person);
    expectRefused([&] { standards().discard(id, person, u" "_s); }, "say why"_L1);
    standards().discard(id, person, u"turbid"_s);
    EXPECT_EQ(standards().preparations()[0].discarded, u"turbid"_s);
    expectRefused([&] { standards().discard(id, person, u"again"_s); }, "already"_L1);
}

TEST_F(StandardBookTest, WhatCannotBeIsRefused)
{
    expectRefused([&] { standards().addSubstance(planning::Substance{}, person); }, "/name"_L1);
    expectRefused([&] { standards().prepare({7}, preparation(), person); }, "no substance number 7"_L1);
    const SubstanceId of = standards().addSubstance(substance(), person);
    expectRefused([&] { standards().changeSubstance(of, substance(), person, u"why"_s); },
                  "reads like this already"_L1);
    standards().prepare(of, preparation(), person);
    expectRefused([&] { standards().prepare(of, preparation(u"std-17"_s), person); },
                  "is taken by one made on"_L1);
    planning::Preparation later = preparation(u"STD-19"_s);
    later.madeAt = m_now.addDays(2);
    later.useBy.reset();
    expectRefused([&] { standards().prepare(of, later, person); }, "/madeAt is in the future"_L1);
    expectRefused([&] { standards().discard({9}, person, u"why"_s); }, "no preparation number 9"_L1);
}

TEST_F(StandardBookTest, RecoveriesOfASubstanceAreThoseOfAllItsStandards)
{
    const SubstanceId acid = standards().addSubstance(substance(), person);
    planning::Substance other = substance();
    other.name = u"D-malic acid"_s;
    const SubstanceId another = standards().addSubstance(other, person);
    const PreparationId first = standards().prepare(acid, preparation(u"STD-1"_s), person);
    standards().prepare(acid, preparation(u"STD-2"_s), person);
    standards().prepare(another, preparation(u"STD-3"_s), person);
    EXPECT_THAT(standards().recoveriesOfItsKind(first), IsEmpty()) << "no run used any";
    for (const QString &name : {u"STD-1"_s, u"STD-2"_s, u"STD-3"_s}) {
        run::Run run = plainRun();
        run.standards.push_back(
            {name, 0.2, {}, preparation().madeAt, preparation().madeAt.addSecs(7200), 0.01});
        run::Tube tube = run.tubes[1];
        tube.role = run::Role::Standard;
        tube.sample.clear();
        tube.standard = name;
        run.tubes.push_back(tube);
        m_book->decide(m_book->addRun(run, risingMethod(), person), DecisionKind::Accepted, person,
                       u"good"_s);
    }
    const charts::Series series = standards().recoveriesOfItsKind(first);
    ASSERT_THAT(series, SizeIs(2)) << "of L-malic acid, each of its two";
    EXPECT_EQ(series[0].name, u"STD-1"_s);
    EXPECT_EQ(series[1].name, u"STD-2"_s);
    ASSERT_TRUE(series[0].standard);
    EXPECT_EQ(series[0].standard->age_h, 2);
    EXPECT_EQ(series[0].standard->lossPerHour, 0.01);
}

TEST_F(StandardBookTest, ASubstanceIsOneMaterialOfAControlChart)
{
    planning::Substance other = substance();
    other.name = u"D-malic acid"_s;
    const SubstanceId acid = standards().addSubstance(substance(), person);
    const SubstanceId another = standards().addSubstance(other, person);
    standards().prepare(acid, preparation(u"STD-1"_s), person);
    standards().prepare(acid, preparation(u"STD-2"_s), person);
    standards().prepare(another, preparation(u"STD-3"_s), person);
    for (const QString &name : {u"STD-1"_s, u"STD-2"_s, u"STD-3"_s, u"CONTROL"_s}) {
        run::Run run = plainRun();
        run.standards.push_back({name, 0.2, {}, {}, {}, 0});
        run::Tube tube = run.tubes[1];
        tube.role = run::Role::Standard;
        tube.sample.clear();
        tube.standard = name;
        run.tubes.push_back(tube);
        m_book->decide(m_book->addRun(run, risingMethod(), person), DecisionKind::Accepted, person,
                       u"good"_s);
    }
    const auto offers = m_book->charts().offers(charts::Quantity::StandardRecovery);
    QStringList names;
    for (const ChartOffer &offer : offers)
        names << u"%1: %2 of %3"_s.arg(offer.subject.name).arg(offer.values).arg(offer.preparations);
    EXPECT_EQ(names, (QStringList{u"D-malic acid: 1 of 1"_s, u"L-malic acid: 2 of 2"_s, u"CONTROL: 1 of 0"_s,
                                  u"STD-1: 1 of 0"_s, u"STD-2: 1 of 0"_s, u"STD-3: 1 of 0"_s}));
    ASSERT_EQ(offers.size(), 6u);
    const charts::Series joint = m_book->charts().series(offers[1].subject);
    ASSERT_THAT(joint, SizeIs(2));
    EXPECT_EQ(joint[0].name, u"STD-1"_s);
    EXPECT_EQ(joint[1].name, u"STD-2"_s);
    EXPECT_THAT(m_book->charts().series(offers[2].subject), SizeIs(1)) << "a name by itself";
    // Found strengths depend on what was weighed in: each standard by itself.
    EXPECT_THAT(m_book->charts().offers(charts::Quantity::StandardStrength), SizeIs(4));
}

TEST_F(StandardBookTest, AChartOfOneStandardHasOnlyItsOwnNumbers)
{
    planning::Substance other = substance();
    other.name = u"D-malic acid"_s;
    const SubstanceId acid = standards().addSubstance(substance(), person);
    standards().prepare(acid, preparation(u"STD-1"_s), person);
    standards().prepare(standards().addSubstance(other, person), preparation(u"STD-3"_s), person);
    // Both in every run, of one measurand; the second recovers more. A run writes the name as it likes.
    std::vector<double> first;
    std::vector<double> second;
    for (const double signal : {0.58, 0.60, 0.62}) {
        run::Run run = plainRun();
        run.startedAt = m_now.addSecs(static_cast<qint64>(signal * 1000));
        for (const auto &[name, more] : {std::pair(u"STD-1"_s, 0.0), std::pair(u"std-3"_s, 0.1)}) {
            run.standards.push_back({name, 0.2, {}, {}, {}, 0});
            run::Tube tube = run.tubes[0];
            tube.role = run::Role::Standard;
            tube.standard = name;
            tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.1 + signal + more}};
            run.tubes.push_back(tube);
        }
        const evaluation::Evaluation made = evaluation::evaluate(risingMethod(), run);
        first.push_back(made.standards.at(0).recovery_percent.value());
        second.push_back(made.standards.at(1).recovery_percent.value());
        m_book->decide(m_book->addRun(run, risingMethod(), person), DecisionKind::Accepted, person,
                       u"good"_s);
    }
    ASSERT_NE(first, second);
    const auto recovered = [&](const QString &name) {
        std::vector<double> values;
        for (const charts::Point &point : m_book->charts().series(
                 {charts::Quantity::StandardRecovery, u"rising"_s, u"analyte"_s, name}))
            values.push_back(point.value);
        return values;
    };
    EXPECT_EQ(recovered(u"STD-1"_s), first);
    EXPECT_EQ(recovered(u"std-3"_s), second);
    EXPECT_EQ(recovered(u"L-malic acid"_s), first);
    EXPECT_EQ(recovered(u"D-malic acid"_s), second);
    EXPECT_THAT(recovered(u"STD-3"_s), IsEmpty()) << "no run used one of that spelling";
    EXPECT_THAT(recovered({}), SizeIs(6));
    const auto strengths =
        m_book->charts().series({charts::Quantity::StandardStrength, u"rising"_s, u"analyte"_s, u"std-3"_s});
    ASSERT_THAT(strengths, SizeIs(3));
    EXPECT_DOUBLE_EQ(strengths[0].value, second[0] / 100 * 0.2);
}

} // namespace plateau::test
