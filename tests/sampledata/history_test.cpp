// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/checkfigures.h"
#include "sampledata/maker/house.h"
#include "sampledata/maker/samplemaker.h"

#include "core/charts/controlchart.h"
#include "core/equipment/outcome.h"
#include "core/evaluation/doubts.h"
#include "core/exchange/library.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QCryptographicHash>
#include <QDirIterator>
#include <QFile>
#include <QTemporaryDir>

#include <map>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;
using ::testing::Contains;
using ::testing::Each;
using ::testing::IsEmpty;

namespace {

QByteArray fileOf(const QString &name)
{
    QFile file(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/sampledata/notebook/"_s + name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
    return file.readAll();
}

House house()
{
    return {exchange::readLaboratory(fileOf(u"laboratory.json"_s)).value.value(),
            exchange::readSpecifications(fileOf(u"limits.json"_s)).value.value(),
            exchange::MethodLibrary::load(u":/methods"_s).lookup()};
}

WantedHistory wantedRuns(int runs)
{
    WantedHistory wanted;
    wanted.runs = runs;
    wanted.seed = 20;
    wanted.until = QDate(2026, 6, 26);
    wanted.workedAtBench = 2;
    wanted.signedDecisions = 1;
    return wanted;
}

constexpr int runsOfTheHistory = 150;

/// Made once: months of the house.
const notebook::Notebook &madeHistory()
{
    static const QTemporaryDir folder;
    static const std::unique_ptr<notebook::Notebook> made = [] {
        const QString path = folder.filePath(u"made.plateau"_s);
        makeSampleNotebook(path, house(), wantedRuns(runsOfTheHistory));
        return notebook::Notebook::open(path, notebook::Access::ReadOnly);
    }();
    return *made;
}

/// Everything that people put into it. The salts of passphrases are by chance on purpose, and the chain of
/// the audit holds them.
QByteArray contentOf(const QString &path)
{
    const QTemporaryDir folder;
    const QString out = folder.filePath(u"out"_s);
    notebook::Notebook::open(path, notebook::Access::ReadOnly)->keeping().exportTo(out);
    QStringList files;
    for (QDirIterator each(out, QDir::Files, QDirIterator::Subdirectories); each.hasNext();) {
        const QString file = each.next();
        const bool isByChance = file.contains(u"/audit"_s) || file.contains(u"passphrase"_s);
        if (!isByChance && (file.endsWith(u".csv"_s)))
            files.append(file);
    }
    files.sort();
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const QString &name : files) {
        QFile file(name);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        hash.addData(file.readAll());
    }
    EXPECT_GT(files.size(), 20);
    return hash.result().toHex();
}

QByteArray contentOfMade(quint64 seed)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"made.plateau"_s);
    WantedHistory wanted = wantedRuns(12);
    wanted.seed = seed;
    makeSampleNotebook(path, house(), wanted);
    return contentOf(path);
}

const equipment::HeldItem &itemNamed(const std::vector<equipment::HeldItem> &items, const QString &name)
{
    const auto found = std::ranges::find_if(items, [&](const auto &held) { return held.item.name == name; });
    EXPECT_NE(found, items.end());
    return *found;
}

} // namespace

TEST(SampleHistory, OfTheSameSeedHasTheSameContentAndOfAnotherAnother)
{
    const QByteArray content = contentOfMade(3);
    EXPECT_EQ(contentOfMade(3), content);
    EXPECT_NE(contentOfMade(4), content);
}

TEST(SampleHistory, IsSoundWhenVerified)
{
    const notebook::Verification verification = madeHistory().verify();
    QStringList sentences;
    for (const notebook::Finding &finding : verification.findings)
        sentences.append(finding.place + u": "_s + finding.message);
    EXPECT_THAT(sentences, IsEmpty());
    EXPECT_EQ(verification.runsChecked, runsOfTheHistory);
}

TEST(SampleHistory, BeginsNoRunWithAReadingThatTheMethodQuestions)
{
    const notebook::Notebook &made = madeHistory();
    int asked = 0;
    for (const notebook::RunSummary &summary : made.runs()) {
        const notebook::StoredRun stored = made.load(summary.id);
        run::Run unread = stored.run;
        for (run::Tube &tube : unread.tubes)
            tube.readings.clear();
        const QString first = assay::readingsInOrder(stored.method).front();
        const auto read = stored.run.tubes.front().readings.find(first);
        if (read == stored.run.tubes.front().readings.end() || !std::holds_alternative<double>(read->second))
            continue;
        ++asked;
        EXPECT_EQ(evaluation::doubtAbout(stored.method, unread, 0, first, std::get<double>(read->second)), QString())
            << summary.id.value;
    }
    EXPECT_GT(asked, runsOfTheHistory / 2);
}

TEST(SampleHistory, HoldsWhatALaboratoryHasOverTheYears)
{
    const notebook::Notebook &made = madeHistory();
    EXPECT_EQ(made.persons().all().size(), 4U);
    std::set<QString> methods;
    int onBench = 0;
    int rejected = 0;
    int revised = 0;
    std::set<QString> reviewers;
    for (const notebook::RunSummary &run : made.runs()) {
        methods.insert(run.methodId);
        onBench += run.state == notebook::RunState::OnBench;
        reviewers.insert(run.decidedBy);
        rejected += run.state == notebook::RunState::Rejected;
        revised += run.revision > 1 && run.state != notebook::RunState::OnBench;
    }
    EXPECT_EQ(methods.size(), 6U);
    EXPECT_EQ(reviewers, (std::set<QString>{QString(), nameOfHead(), nameOfReviewer()}));
    EXPECT_EQ(onBench, 1);
    EXPECT_GE(rejected, 1);
    EXPECT_GE(revised, 2);
    EXPECT_EQ(made.equipment().all().size(), 7U);
    EXPECT_GE(made.standards().substances().size(), 7U);
    EXPECT_GE(made.lots().all().size(), 30U);
    EXPECT_FALSE(made.shelf().waiting().empty());
}

TEST(SampleHistory, KeepsWithEveryPlanWhoseTheUncertaintiesAre)
{
    const notebook::Notebook &made = madeHistory();
    for (const notebook::RunSummary &run : made.runs()) {
        const notebook::StoredRun stored = made.load(run.id);
        ASSERT_TRUE(stored.plan);
        EXPECT_GE(stored.plan->owners.size(), 7U) << run.id.value;
    }
}

TEST(SampleHistory, ShowsTheWeakLotByTheRunRulesOfTheControlChart)
{
    const auto offers = madeHistory().charts().offers(charts::Quantity::StandardRecovery);
    const auto offer = std::ranges::find_if(offers, [](const notebook::ChartOffer &one) {
        return one.preparations > 1 && one.subject.methodId == "total-sulphite"_L1 &&
               one.subject.measurand == "sulphite"_L1;
    });
    ASSERT_NE(offer, offers.end()) << "the substance that its standards are made of";
    const charts::Subject subject = offer->subject;
    const charts::Series series = madeHistory().charts().series(subject);
    const charts::Settings settings = charts::usualSettings(subject.quantity);
    charts::Filter all;
    all.withRejected = true;
    const charts::ControlChart chart = charts::controlChart(subject, series, all, settings);
    ASSERT_FALSE(chart.panels.empty());
    const charts::Panel &panel = chart.panels.front();
    // The first mark beyond 3 s, and what the lot of the starter was then and before.
    const auto beyond = std::ranges::find_if(panel.findings, [](const charts::Finding &finding) {
        return finding.kind == charts::Finding::Kind::Rule && finding.rule == quality::RunRule::OneBeyond3 &&
               !finding.isAbove;
    });
    ASSERT_NE(beyond, panel.findings.end());
    const std::size_t first = panel.marks[beyond->completed].first;
    EXPECT_LT(chart.series[first].value, 96);
    const auto starterOf = [&](std::size_t point) {
        for (const charts::LotOf &lot : chart.series[point].run->lots) {
            if (lot.component == "starter"_L1)
                return lot.lot;
        }
        return QString();
    };
    ASSERT_GT(first, 0U);
    EXPECT_NE(starterOf(first), starterOf(first - 1));
    // Weaker until it was thrown away: a run was rejected for it, and the next lot is found again.
    EXPECT_FALSE(std::ranges::all_of(chart.series, &charts::Point::isAccepted));
    EXPECT_GT(chart.series.back().value, 97);
}

TEST(SampleHistory, ALotBelongsToOneReagent)
{
    std::map<QString, QString> reagents;
    for (const planning::Lot &lot : madeHistory().lots().all()) {
        const auto [known, isNew] = reagents.try_emplace(lot.lot, lot.reagent);
        EXPECT_EQ(known->second, lot.reagent) << lot.lot.toStdString();
    }
    EXPECT_GT(reagents.size(), 5U);
}

TEST(SampleHistory, FlagsThePipetteThatFailsAndNoOther)
{
    const std::vector<equipment::HeldItem> items = madeHistory().equipment().all();
    QStringList failed;
    for (const equipment::HeldItem &held : items) {
        for (const equipment::HeldCheck &check : held.checks) {
            const auto outcome = equipment::outcomeOf(check.of, check.check);
            ASSERT_TRUE(outcome);
            if (!outcome->passed)
                failed.append(held.item.name);
        }
    }
    EXPECT_EQ(failed, QStringList{nameOfWornPipette()});
    const auto &checks = itemNamed(items, nameOfWornPipette()).checks;
    EXPECT_TRUE(equipment::outcomeOf(checks.back().of, checks.back().check)->passed); // after the repair
}

TEST(SampleHistory, IsNotWrittenOverAFile)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"there.plateau"_s);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("a letter");
    file.close();
    EXPECT_THROW(makeSampleNotebook(path, house(), wantedRuns(1)), notebook::Failure);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), "a letter");
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), 1);
}

} // namespace plateau::sampledata
