// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetpdf.h"

#include "core/exchange/shippedtexts.h"
#include "tests/print/printed.h"
#include "tests/print/racks.h"
#include "tests/print/spoken.h"
#include "tests/support/print.h"
#include "ui/print/worksheettable.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <algorithm>

namespace plateau::ui {

using namespace Qt::StringLiterals;
using test::Printed;

namespace {

const QStringList longLots{u"PP-2026-0917"_s, u"ESA-2026-11-0017"_s};
const QString longStandard = u"S-2026-0017"_s;
const QString longPerson = u"M. Keel-Oberholzer"_s;
/// Of a single tube: one row, where two lines are needed.
const QString longSample = u"Ice cider, cask 12, second filling"_s;

/// Everything on it that is long: lots, the standard, a sample that is weighed, times beyond an hour and a half.
WorksheetContent longSheet(const QString &methodId, bool isSpiked)
{
    assay::Method method = test::shippedMethod(methodId);
    exchange::putInWindowLanguage(method);
    run::Run run = test::rackOf(24, methodId);
    run.pathLength_mm = 2.5;
    run.standards[0].id = longStandard;
    for (run::Tube &tube : run.tubes) {
        if (!tube.standard.isEmpty())
            tube.standard = longStandard;
    }
    run::Sample weighed;
    weighed.id = longSample;
    weighed.form = run::Form::Solid;
    weighed.mass_g = 5.012;
    weighed.extract_mL = 100;
    run.samples.push_back(weighed);
    run.tubes.back().sample = longSample;
    if (isSpiked) {
        run.tubes[21].role = run::Role::Spiked;
        run.tubes[21].spike = run::Spike{longStandard, 0.15};
    }
    run.lots.clear();
    for (const assay::Component &component : method.components) {
        if (component.id != method.sample)
            run.lots.push_back({component.id, longLots[static_cast<qsizetype>(run.lots.size()) % longLots.size()],
                                QDate(2026, 11, 30)});
    }
    WorksheetContent content = worksheetOf(method, run, planning::usualLaboratory().glassware);
    content.rackColumns = 6;
    content.person = longPerson;
    content.laboratory = u"Orchard laboratory, press house"_s;
    content.startInterval_s = 40;
    for (const QString &reading : assay::readingsInOrder(method)) {
        for (int tube = 0; tube < static_cast<int>(run.tubes.size()); ++tube)
            content.readAt_s[reading].push_back(6340 - 40 * tube);
    }
    return content;
}

QString onSheet(const char *text)
{
    return QCoreApplication::translate("plateau::ui::Worksheet", text);
}

/// Without the blanks, some of which are ends of lines.
QString unspaced(QString text)
{
    return text.simplified().remove(u' ');
}

qsizetype countOf(const std::vector<Printed::Word> &words, const QString &text)
{
    return std::ranges::count_if(words, [&](const Printed::Word &word) { return word.text == text; });
}

/// Nothing is cut anywhere, and what must be whole is there.
void expectWhole(const WorksheetContent &content, Paper paper)
{
    const Printed sheet(worksheetPdf(content, paper));
    const QString text = unspaced(sheet.text());
    const auto words = sheet.words();
    for (const Printed::Word &word : words)
        EXPECT_FALSE(word.text.contains(u'…')) << word.text.toStdString();
    for (const planning::Round &round : content.rounds) {
        EXPECT_TRUE(text.contains(unspaced(round.name))) << round.name.toStdString();
        EXPECT_TRUE(text.contains(unspaced(round.pipette))) << round.pipette.toStdString();
    }
    for (const QString &lot : longLots)
        EXPECT_GE(countOf(words, lot), 1) << lot.toStdString();
    EXPECT_EQ(countOf(words, longLots[0]) + countOf(words, longLots[1]),
              static_cast<qsizetype>(content.run.lots.size()));
    for (const QString &part : {longStandard, longSample, longPerson, content.laboratory, content.run.title,
                                content.run.startedAt->toString(u"HH:mm"_s)})
        EXPECT_TRUE(text.contains(unspaced(part))) << part.toStdString();
    for (const run::Sample &sample : content.run.samples)
        EXPECT_TRUE(text.contains(unspaced(sample.id))) << sample.id.toStdString();
    for (const auto &[reading, times] : content.readAt_s) {
        for (const int seconds : times) {
            const QString due = u"%1:%2"_s.arg(seconds / 60).arg(seconds % 60, 2, 10, QChar(u'0'));
            EXPECT_EQ(countOf(words, due), static_cast<qsizetype>(content.readAt_s.size())) << due.toStdString();
        }
    }
    for (const char *caption : {"tube", "reads", "time", "swirl", "lot", "date", "started at", "by", "photometer",
                                "contents, taken → made up to"})
        EXPECT_TRUE(text.contains(unspaced(onSheet(caption)))) << onSheet(caption).toStdString();
}

} // namespace

TEST(WorksheetLanguages, CutNoLotTimeOrTubeName)
{
    for (const QString &language : test::languages) {
        const test::Spoken spoken(language);
        for (const QString &method : {u"l-malic-acid"_s, u"glucose-fructose"_s}) {
            for (const bool isSpiked : {false, true}) {
                for (const Paper paper : {Paper::A4, Paper::Letter}) {
                    SCOPED_TRACE((language + u' ' + method + (isSpiked ? u" spiked"_s : QString()) +
                                  (paper == Paper::A4 ? u" A4"_s : u" Letter"_s))
                                     .toStdString());
                    expectWhole(longSheet(method, isSpiked), paper);
                }
            }
        }
    }
}

TEST(WorksheetLanguages, KeepARackOfTwentyFourOnOneUprightPage)
{
    for (const QString &language : test::languages) {
        const test::Spoken spoken(language);
        assay::Method method = test::shippedMethod(u"l-malic-acid"_s);
        exchange::putInWindowLanguage(method);
        WorksheetContent content =
            worksheetOf(method, test::rackOf(24), planning::usualLaboratory().glassware);
        content.rackColumns = 6;
        EXPECT_EQ(tableOf(content, Paper::A4).orientation, QPageLayout::Portrait) << language.toStdString();
        content.startAt_s[content.rounds[4].step] = std::vector<int>(24, 345);
        content.startAt_s[content.rounds[5].step] = std::vector<int>(24, 945);
        EXPECT_EQ(tableOf(content, Paper::A4).orientation, QPageLayout::Portrait) << language.toStdString();
        EXPECT_EQ(Printed(worksheetPdf(content, Paper::A4)).pages(), 1) << language.toStdString();
    }
}

TEST(WorksheetLanguages, WriteEveryNumberWithTheirDecimalSign)
{
    static const QRegularExpression withPoint(u"^\\d+\\.\\d+$"_s);
    static const QRegularExpression withComma(u"^\\d+,\\d+$"_s);
    for (const QString &language : test::languages) {
        const test::Spoken spoken(language);
        const bool hasComma = language != u"en"_s;
        const Printed sheet(worksheetPdf(longSheet(u"l-malic-acid"_s, true), Paper::A4));
        for (const Printed::Word &word : sheet.words())
            EXPECT_FALSE((hasComma ? withPoint : withComma).match(word.text).hasMatch())
                << language.toStdString() << ": " << word.text.toStdString();
        for (QString number : {u"2.5 mm"_s, u"5.012 g"_s, u"0.2 g/L"_s, u"10 µL"_s, u"150"_s}) {
            if (hasComma)
                number.replace(u'.', u',');
            EXPECT_TRUE(sheet.text().contains(number)) << language.toStdString() << ": " << number.toStdString();
        }
    }
}

TEST(WorksheetNames, OfASingleTubeGoOnOnASecondLineBeforeTheyAreCut)
{
    const WorksheetContent content = longSheet(u"l-malic-acid"_s, false);
    const SheetTable table = tableOf(content, Paper::A4);
    const Printed sheet(worksheetPdf(content, Paper::A4));
    QRectF first;
    QRectF last;
    for (const Printed::Word &word : sheet.words()) {
        if (word.text == u"Ice"_s)
            first = word.area_mm;
        if (word.text == u"filling"_s)
            last = word.area_mm;
    }
    ASSERT_FALSE(first.isEmpty() || last.isEmpty());
    EXPECT_GT(last.top(), first.center().y()) << "a second line";
    EXPECT_LT(last.right(), table.left_mm + table.number_mm + table.contents_mm);
    EXPECT_FALSE(sheet.text().contains(u"Names in full"_s));
}

} // namespace plateau::ui
