// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// New run, in a laboratory that knows its photometer.
class UncertaintyOfANewRun : public WindowBench
{
protected:
    void plan()
    {
        laboratory.photometer =
            planning::Photometer{u"P1"_s, 0.0012, 0.1, u"check record 7"_s, QDate(2026, 9, 14)};
        book->saveLaboratory(laboratory, u"M. Lindqvist"_s);
        openWindow();
        press(Qt::Key_P, Qt::AltModifier);
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
        press(Qt::Key_N, Qt::ControlModifier);
        tabTo(u"title"_s);
        type(u"Perry tanks"_s);
        tabTo(u"sampleNames"_s);
        type(u"P-104"_s);
    }
    void key(const QString &field, const QString &text)
    {
        tabTo(field);
        press(Qt::Key_A, Qt::ControlModifier);
        press(Qt::Key_Delete);
        type(text);
    }
    QString fieldText(const QString &name) const { return find<QLineEdit>(name)->text(); }
    notebook::StoredRun putOnBench()
    {
        tabTo(u"putOnBench"_s);
        press(Qt::Key_Return);
        EXPECT_EQ(book->runs().size(), 1U) << noticeText().toStdString();
        return book->runs().empty() ? notebook::StoredRun{} : book->load(book->runs()[0].id);
    }
    planning::Laboratory laboratory = planning::usualLaboratory();
};

TEST_F(UncertaintyOfANewRun, IsTheLaboratorysAndSaysWhoseItIs)
{
    plan();
    EXPECT_EQ(fieldText(u"uncertaintyAbsorbance"_s), u"0.0012"_s);
    EXPECT_EQ(labelText(u"uncertaintyAbsorbanceOwner"_s), u"photometer P1: check record 7, 2026-09-14"_s);
    EXPECT_EQ(find<QLineEdit>(u"uncertaintyAbsorbance"_s)->accessibleDescription(),
              labelText(u"uncertaintyAbsorbanceOwner"_s));
    EXPECT_EQ(fieldText(u"uncertaintyTotalVolume"_s), u"0.568"_s);
    EXPECT_TRUE(labelText(u"uncertaintyAbsorptivityOwner"_s).contains(u"common practice, no source"_s));
    EXPECT_TRUE(labelText(u"uncertaintySummary"_s).contains(u"Still common practice: 3 of 7;"_s))
        << labelText(u"uncertaintySummary"_s).toStdString();
    const notebook::StoredRun stored = putOnBench();
    EXPECT_EQ(stored.run.uncertainty, planning::inputsFor(stored.method, laboratory, stored.run))
        << "to the last digit, not as it is shown";
    ASSERT_TRUE(stored.plan);
    ASSERT_EQ(stored.plan->owners.size(), 7U);
    EXPECT_EQ(stored.plan->owners[0].source, u"check record 7, 2026-09-14"_s);
    EXPECT_TRUE(stored.plan->owners[1].isDefault);
    EXPECT_TRUE(book->verify().findings.empty());
}

TEST_F(UncertaintyOfANewRun, ANumberTypedOverIsThePersonsUntilItIsEmptied)
{
    plan();
    key(u"uncertaintyAbsorbance"_s, u"0,003"_s);
    EXPECT_EQ(
        labelText(u"uncertaintyAbsorbanceOwner"_s),
        u"R. Okafor: typed for this run, in place of 0.0012 (photometer P1: check record 7, 2026-09-14)"_s);
    EXPECT_TRUE(labelText(u"uncertaintySummary"_s).endsWith(u"Typed for this run: 1."_s));
    key(u"uncertaintyPathLength"_s, u"0.4"_s);
    key(u"uncertaintyPathLength"_s, {});
    EXPECT_EQ(labelText(u"uncertaintyPathLengthOwner"_s),
              u"cuvette of the photometer P1: check record 7, 2026-09-14"_s);
    EXPECT_EQ(fieldText(u"uncertaintyPathLength"_s), QString()) << "somebody may be about to type";
    press(Qt::Key_Tab);
    EXPECT_EQ(fieldText(u"uncertaintyPathLength"_s), u"0.1"_s);
    const notebook::StoredRun stored = putOnBench();
    EXPECT_EQ(stored.run.uncertainty->absorbance, 0.003);
    EXPECT_EQ(stored.run.uncertainty->pathLength_percent, 0.1);
    EXPECT_EQ(stored.plan->owners[0].owner, u"R. Okafor"_s);
    EXPECT_EQ(stored.plan->owners[2].owner, u"cuvette of the photometer P1"_s);
}

TEST_F(UncertaintyOfANewRun, ATextThatIsNoNumberKeepsTheRunFromTheBench)
{
    plan();
    key(u"uncertaintyDilution"_s, u"much"_s);
    tabTo(u"putOnBench"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(book->runs().empty());
    EXPECT_EQ(fieldText(u"uncertaintyDilution"_s), u"much"_s) << "nothing typed is lost";
}

} // namespace
} // namespace plateau::test
