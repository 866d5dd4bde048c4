// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/runcode.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <QTimeZone>

#include <gtest/gtest.h>

#include <functional>
#include <set>

namespace plateau::run {

using namespace Qt::StringLiterals;

namespace {

Run planned()
{
    Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.2, {}, QDateTime(QDate(2026, 3, 2), QTime(8, 10), Qt::UTC), {}, 0.02}};
    run.samples.push_back(test::solid("D", 5.012, 100, {{5, 50}}));
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.5));
    run.startedAt = QDateTime(QDate(2026, 3, 2), QTime(9, 10), Qt::UTC);
    return run;
}

} // namespace

TEST(RunCode, IsTwelveDigitsThatStayTheSameFromVersionToVersion)
{
    // Sheets of paper last longer than a program's version: these digits stand on some.
    EXPECT_EQ(runCode(planned(), 1), u"011285454983"_s);
}

TEST(RunCode, StaysWhileTheRunIsWorkedOn)
{
    const QString code = runCode(planned(), 1);
    run::Run run = planned();
    run.tubes[1].readings.clear();
    run.tubes[2].spoilt = u"spilled"_s;
    run.tubes[0].pipetted_mL[u"water"_s] = 0.9;
    run.lots = {{u"buffer"_s, u"B-1"_s, {}}};
    run.tubes[0].addedAt_min = {{u"starter"_s, 12.5}};
    run.tubes[0].readAt_min = {{u"A1"_s, 9.0}, {u"A2"_s, 31.0}};
    run.standards[0].usedAt = QDateTime(QDate(2026, 3, 2), QTime(9, 40), Qt::UTC);
    run.standards[0].lossPerHour = 0.01;
    run.uncertainty = test::uncertainties();
    run.samples[1].dilution[0].uncertainty_percent = 0.3;
    EXPECT_EQ(runCode(run, 1), code);
    // the same moment, as the notebook keeps it with its offset
    run.startedAt = run.startedAt->toOffsetFromUtc(3600);
    EXPECT_EQ(runCode(run, 1), code);
}

TEST(RunCode, DiffersForEveryOtherPlan)
{
    const std::function<void(run::Run &)> changes[] = {
        [](run::Run &run) { run.title = u"Other"_s; },
        [](run::Run &run) { run.startedAt = run.startedAt->addSecs(60); },
        [](run::Run &run) { run.startedAt.reset(); },
        [](run::Run &run) { run.method = u"falling"_s; },
        [](run::Run &run) { run.standards[0].concentration_g_per_L = 0.21; },
        [](run::Run &run) { run.standards[0].id = u"STE"_s; },
        [](run::Run &run) { run.samples[0].id = u"T"_s; },
        [](run::Run &run) { run.samples[1].mass_g = 5.013; },
        [](run::Run &run) { run.samples[1].extract_mL = 50; },
        [](run::Run &run) { run.samples[1].dilution[0].take_mL = 10; },
        [](run::Run &run) { run.samples[1].dilution.clear(); },
        [](run::Run &run) { run.tubes[1].sampleVolume_mL = 0.2; },
        [](run::Run &run) { run.tubes[1].role = Role::SampleBlank; },
        [](run::Run &run) {
            run.tubes[1].spike = Spike{u"STD"_s, 0.1};
        },
        [](run::Run &run) { run.tubes.pop_back(); },
        [](run::Run &run) { std::swap(run.tubes[0], run.tubes[1]); },
    };
    std::set<QString> codes{runCode(planned(), 1), runCode(planned(), 2)};
    for (const auto &change : changes) {
        run::Run run = planned();
        change(run);
        codes.insert(runCode(run, 1));
    }
    EXPECT_EQ(codes.size(), std::size(changes) + 2);
}

TEST(RunCode, IsReadAsItIsScannedPastedOrTyped)
{
    EXPECT_EQ(scannedText(u"409622317785"_s), u"PLATEAU RUN 4096 2231 7785"_s);
    for (const QString &text :
         {u"PLATEAU RUN 4096 2231 7785"_s, u" plateau run 409622317785\n"_s, u"4096 2231 7785"_s,
          u"run 4096\u00a02231\u00a07785"_s, u"409622317785"_s, u"PLQTEQU RUN 4096 2231 7785"_s})
        EXPECT_EQ(runCodeIn(text), u"409622317785"_s) << text.toStdString();
    for (const QString &text :
         {u""_s, u"4096 2231 778"_s, u"4096 2231 77851"_s, u"Perry, tank 7"_s, u"P-409622317785"_s,
          u"4096 2231 778x"_s, u"4096-2231-7785"_s, u"٤٠٩٦٢٢٣١٧٧٨٥"_s})
        EXPECT_EQ(runCodeIn(text), std::nullopt) << text.toStdString();
}

} // namespace plateau::run
