// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"

#include "tests/ui/shown.h"
#include "ui/books/lotledger.h"
#include "ui/books/lotsmodel.h"
#include "ui/books/reagentnames.h"
#include "ui/books/shelfmodel.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QSortFilterProxyModel>

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using Mode = QAbstractItemModelTester::FailureReportingMode;
using ui::State;

const QDateTime now = QDateTime::fromString(u"2026-03-02T09:10:00+01:00"_s, Qt::ISODate);
const QDate today(2026, 3, 2);

assay::Component component(const QString &id, const QString &name, double volume_mL)
{
    assay::Component component;
    component.id = id;
    component.name = name;
    component.volume_mL = volume_mL;
    return component;
}

planning::Lot lotOf(double remaining_mL)
{
    return {7, u"Buffer pH 9"_s, u"4711"_s, {}, {}, {}, remaining_mL};
}

TEST(LotWords, StateSaysWhatCountsMost)
{
    const ui::LotUse unknown{};
    const auto standing = [&](const planning::Lot &lot) { return ui::standingOf(lot, now, unknown); };
    planning::Lot lot = lotOf(100);
    EXPECT_EQ(standing(lot), (ui::LotStanding{State::Good, u"not opened"_s}));
    lot.opened = QDate(2026, 2, 20);
    EXPECT_EQ(standing(lot), (ui::LotStanding{State::Good, u"in use"_s}));
    lot.keepsOpened_days = 10;
    EXPECT_EQ(standing(lot), (ui::LotStanding{State::Attention, u"use by tonight"_s}));
    lot.keepsOpened_days = 9;
    EXPECT_EQ(standing(lot), (ui::LotStanding{State::Bad, u"open too long, was to be used by 2026-03-01"_s}));
    lot.expires = QDate(2026, 3, 1);
    EXPECT_EQ(standing(lot), (ui::LotStanding{State::Bad, u"expired on 2026-03-01"_s}));
    lot.remaining_mL = 0;
    EXPECT_EQ(standing(lot), (ui::LotStanding{State::Pending, u"used up"_s}));
    lot.remaining_mL = -0.5;
    EXPECT_EQ(standing(lot), (ui::LotStanding{State::Bad, u"more taken than it held"_s}));
}

TEST(LotWords, InTheListTheStateSaysNoDay)
{
    const auto words = [](const planning::Lot &lot, const ui::LotUse &use = {}) {
        return ui::listedStandingOf(lot, now, use).words;
    };
    planning::Lot lot = lotOf(100);
    EXPECT_EQ(words(lot), u"not opened"_s);
    lot.opened = QDate(2026, 2, 20);
    lot.keepsOpened_days = 15;
    EXPECT_EQ(words(lot), u"opened; good for 5 more days"_s);
    EXPECT_EQ(ui::listedStandingOf(lot, now, {}).shape, State::Attention);
    EXPECT_EQ(words(lot, {10.0, 24}), u"opened; good for 5 more days; low, enough for 10 tubes"_s);
    lot.keepsOpened_days = 10;
    EXPECT_EQ(words(lot), u"opened; use by tonight"_s);
    lot.keepsOpened_days = 9;
    EXPECT_EQ(words(lot), u"open too long"_s);
    lot.expires = QDate(2026, 3, 1);
    EXPECT_EQ(words(lot), u"expired"_s);
    lot.remaining_mL = 0;
    EXPECT_EQ(words(lot), u"used up"_s);
}

TEST(LotWords, WhatIsOverdrawnHasAMinusSign)
{
    EXPECT_EQ(ui::lotVolume(-0.1), u"\u22120.1\u00a0mL"_s);
    EXPECT_EQ(ui::lotVolume(-0.0001), u"0\u00a0mL"_s);
    EXPECT_EQ(ui::lotVolume(12.5), u"12.5\u00a0mL"_s);
}

TEST(LotWords, WhatIsDryWaitsToBeDissolved)
{
    planning::Lot lot = lotOf(0);
    lot.isDry = true;
    lot.expires = today.addDays(3);
    EXPECT_EQ(ui::standingOf(lot, now, {1.0, 24}),
              (ui::LotStanding{State::Attention, u"dry, not dissolved yet; use by 2026-03-05"_s}));
    lot.expires = today.addDays(300);
    EXPECT_EQ(ui::standingOf(lot, now, {1.0, 24}),
              (ui::LotStanding{State::Pending, u"dry, not dissolved yet"_s}));
    lot.expires = today.addDays(-1);
    EXPECT_EQ(ui::standingOf(lot, now, {}), (ui::LotStanding{State::Bad, u"expired on 2026-03-01"_s}));
}

TEST(LotWords, LastGoodDayIsPointedOutAWeekAhead)
{
    planning::Lot lot = lotOf(100);
    lot.expires = today.addDays(ui::warnAhead_days);
    EXPECT_EQ(ui::standingOf(lot, now, {}).words, u"use by 2026-03-09"_s);
    lot.expires = today.addDays(ui::warnAhead_days + 1);
    EXPECT_EQ(ui::standingOf(lot, now, {}).shape, State::Good);
}

TEST(LotWords, LowIsLessThanARackOfTubes)
{
    EXPECT_EQ(ui::standingOf(lotOf(24), now, {1.0, 24}).shape, State::Good);
    EXPECT_EQ(ui::standingOf(lotOf(23.9), now, {1.0, 24}),
              (ui::LotStanding{State::Attention, u"low, enough for 23 tubes"_s}));
    EXPECT_EQ(ui::standingOf(lotOf(0.1), now, {std::nullopt, 24}).shape, State::Good)
        << "nobody knows what a tube takes";
}

TEST(LotWords, DaysAreReadAsPrintedOnLabels)
{
    EXPECT_EQ(std::get<QDate>(ui::parseDay(u" 2026-12-31 "_s)), QDate(2026, 12, 31));
    EXPECT_EQ(std::get<QDate>(ui::parseDay(u"2028-2"_s)), QDate(2028, 2, 29)) << "a month's last day";
    for (const QString &text : {u"31.12.2026"_s, u"2026-13"_s, u"2026-02-30"_s, u"soon"_s})
        EXPECT_EQ(std::get<ui::DayFault>(ui::parseDay(text)), ui::DayFault::NotADay) << text.toStdString();
    EXPECT_EQ(std::get<ui::DayFault>(ui::parseDay(u" "_s)), ui::DayFault::Empty);
}

TEST(LotWords, ReagentsAreEveryComponentButTheSample)
{
    assay::Method one;
    one.sample = u"s"_s;
    one.components = {component(u"b"_s, u"Buffer"_s, 1.0), component(u"s"_s, u"Sample"_s, 0.1),
                      component(u"w"_s, u"Water"_s, 1.5)};
    assay::Method other;
    other.sample = u"s"_s;
    other.components = {component(u"w"_s, u"water "_s, 2.0), component(u"s"_s, u"Sample"_s, 0.1)};
    const ui::ReagentNames names({one, other});
    EXPECT_EQ(names.names(), (QStringList{u"Buffer"_s, u"Water"_s}));
    EXPECT_EQ(names.largestDose_mL(u"WATER"_s), 2.0);
    EXPECT_EQ(names.largestDose_mL(u"Sample"_s), std::nullopt);
}

TEST(LotsList, ByReagentTheOneToUseFirstOnTopAndUsedUpLast)
{
    const ui::Theme theme;
    ui::LotsModel model(theme);
    const QAbstractItemModelTester tester(&model, Mode::Warning);
    const QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    const auto use = [](const QString &) { return ui::LotUse{}; };
    model.setLots({{1, u"water"_s, u"w"_s, {}, {}, {}, 500},
                   {2, u"Buffer"_s, u"late"_s, QDate(2027, 1, 1), {}, {}, 50},
                   {3, u"Buffer"_s, u"gone"_s, QDate(2026, 12, 1), {}, {}, 0},
                   {4, u"buffer"_s, u"opened"_s, QDate(2027, 5, 1), today, 30, 12.3456}},
                  now, use);
    ASSERT_EQ(model.rowCount(), 4);
    QStringList lots;
    for (int row = 0; row < 4; ++row)
        lots << shown(model, row, ui::LotsModel::Lot);
    EXPECT_EQ(lots, (QStringList{u"opened"_s, u"late"_s, u"w"_s, u"gone"_s}));
    EXPECT_EQ(shown(model, 0, ui::LotsModel::Left), u"12.346\u00a0mL"_s);
    EXPECT_EQ(shown(model, 0, ui::LotsModel::UseBy), u"2026-04-01 (opened)"_s);
    EXPECT_EQ(shown(model, 0, ui::LotsModel::Standing), u"opened"_s) << "the day has its own column";
    EXPECT_EQ(shown(model, 1, ui::LotsModel::UseBy), u"2027-01-01"_s) << "the label says so";
    EXPECT_EQ(shown(model, 3, ui::LotsModel::Standing), u"used up"_s);
    EXPECT_EQ(model.rowOf(4), 0);
    EXPECT_EQ(model.rowOf(99), -1);
    model.setLots({{1, u"water"_s, u"w"_s, {}, {}, {}, 400}}, now, use);
    EXPECT_EQ(model.rowCount(), 1);
    EXPECT_EQ(reset.count(), 0);
}

TEST(LotsList, SortsItsDaysByTheCalendarAndNotByTheirText)
{
    const ui::Theme theme;
    ui::LotsModel model(theme);
    const QAbstractItemModelTester tester(&model, Mode::Warning);
    model.setLots({{1, u"A"_s, u"third"_s, QDate(2027, 2, 3), {}, {}, 50},
                   {2, u"B"_s, u"second"_s, QDate(2026, 12, 1), {}, {}, 50},
                   {3, u"C"_s, u"last"_s, {}, {}, {}, 50},
                   {4, u"D"_s, u"first"_s, QDate(2026, 11, 27), {}, {}, 50}},
                  now, [](const QString &) { return ui::LotUse{}; });
    for (int row = 0; row < model.rowCount(); ++row)
        EXPECT_EQ(model.index(row, ui::LotsModel::UseBy).data(ui::LotsModel::SortRole).typeId(),
                  int(QMetaType::QDate));
    QSortFilterProxyModel sorted;
    sorted.setSourceModel(&model);
    sorted.setSortRole(ui::LotsModel::SortRole);
    sorted.setSortLocaleAware(true);
    const QAbstractItemModelTester sortedTester(&sorted, Mode::Warning);
    const auto lots = [&] {
        QStringList names;
        for (int row = 0; row < sorted.rowCount(); ++row)
            names << sorted.index(row, ui::LotsModel::Lot).data().toString();
        return names;
    };
    const QStringList byDay{u"first"_s, u"second"_s, u"third"_s, u"last"_s};
    sorted.sort(ui::LotsModel::UseBy);
    EXPECT_EQ(lots(), byDay);
    sorted.sort(ui::LotsModel::Standing);
    EXPECT_EQ(lots(), byDay) << "alike in state, the one that ends first";
    sorted.sort(ui::LotsModel::UseBy, Qt::DescendingOrder);
    EXPECT_EQ(lots(), (QStringList{byDay.rbegin(), byDay.rend()}));
}

TEST(LotsList, LedgerAndRunsInWords)
{
    ui::LedgerModel ledger;
    const QAbstractItemModelTester ledgerTester(&ledger, Mode::Warning);
    using Kind = notebook::LotMovementKind;
    ledger.setMovements(
        {{Kind::Received, 500, {}, u"Ines"_s, now}, {Kind::Discarded, -0.25, u"spilt"_s, u"Ines"_s, now}});
    ASSERT_EQ(ledger.rowCount(), 2);
    EXPECT_EQ(shown(ledger, 0, ui::LedgerModel::Change), u"+500\u00a0mL"_s);
    EXPECT_EQ(shown(ledger, 1, ui::LedgerModel::Change), u"\u22120.25\u00a0mL"_s);
    EXPECT_EQ(shown(ledger, 1, ui::LedgerModel::What), u"discarded"_s);
    EXPECT_EQ(shown(ledger, 1, ui::LedgerModel::Note), u"spilt"_s);
    ledger.setMovements({{Kind::Stored, 0, u"freezer 2"_s, u"Ines"_s, now}});
    EXPECT_EQ(shown(ledger, 0, ui::LedgerModel::Change), QString()) << "the volume is as it was";
    EXPECT_EQ(shown(ledger, 0, ui::LedgerModel::What), u"put where it is kept"_s);

    ui::TakingsModel takings;
    const QAbstractItemModelTester takingsTester(&takings, Mode::Warning);
    takings.setTakings({{{12}, 8, 8, {}, u"Perry tanks"_s, now},
                        {{13}, 1, 1, u"Buffer, 4711, aliquot 2"_s, u"Cider"_s, now}});
    ASSERT_EQ(takings.rowCount(), 2);
    EXPECT_EQ(shown(takings, 0, ui::TakingsModel::Title), u"Perry tanks"_s);
    EXPECT_EQ(shown(takings, 0, ui::TakingsModel::Tubes), u"8"_s);
    EXPECT_EQ(shown(takings, 0, ui::TakingsModel::Volume), u"8\u00a0mL"_s);
    EXPECT_EQ(takings.row(1).run, notebook::RunId{13});
    EXPECT_EQ(shown(takings, 0, ui::TakingsModel::Through), QString());
    EXPECT_EQ(shown(takings, 1, ui::TakingsModel::Through), u"Buffer, 4711, aliquot 2"_s);
}

TEST(ShelfList, SaysWhyEachSampleWaits)
{
    const ui::Theme theme;
    ui::ShelfModel model(theme);
    const QAbstractItemModelTester tester(&model, Mode::Warning);
    notebook::WaitingSample registered;
    registered.sample.id = u"P-1"_s;
    registered.sample.expected = {{u"acid"_s, 3.5}};
    registered.shelf = notebook::ShelfId{1};
    evaluation::Advice dilute;
    dilute.factor = 10;
    dilute.atLeast = true;
    evaluation::Advice more;
    more.kind = evaluation::Advice::Kind::IncreaseVolume;
    more.sampleVolume_mL = 0.5;
    notebook::WaitingSample repeat;
    repeat.sample.id = u"P-2"_s;
    repeat.repeat =
        notebook::AdvisedRepeat{{12}, u"m"_s, {{u"a"_s, dilute}, {u"b"_s, dilute}, {u"c"_s, more}}};
    notebook::WaitingSample both = repeat;
    both.repeat->advice.clear();
    both.repeat->reason = u"tube spilt"_s;
    repeat.repeat->failed = {evaluation::CheckId::SignalHigh, evaluation::CheckId::AbsorbanceHigh};
    both.shelf = notebook::ShelfId{2};
    model.setWaiting({repeat, registered, both}, {});
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(shown(model, 0, ui::ShelfModel::Why),
              u"repeat of run 12 (failed: largest net signal, largest absorbance): dilute at least 10-fold, "
              "take 0.5\u00a0mL of it"_s);
    EXPECT_EQ(model.row(0).shape, State::Attention);
    EXPECT_EQ(shown(model, 1, ui::ShelfModel::Why), u"registered, not run yet"_s);
    EXPECT_EQ(shown(model, 1, ui::ShelfModel::Expected), u"acid 3.5\u00a0g/L"_s);
    EXPECT_EQ(model.row(1).shape, State::Pending);
    EXPECT_EQ(shown(model, 2, ui::ShelfModel::Why), u"repeat of run 12 (tube spilt); registered again"_s);
}

} // namespace
} // namespace plateau::test
