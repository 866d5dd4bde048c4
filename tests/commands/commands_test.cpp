// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/notebook.h"
#include "tests/commands/program.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QTemporaryDir>

using namespace plateau;
using namespace plateau::test;
using namespace Qt::StringLiterals;

namespace {

QString sample(const QString &name)
{
    return QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata/") + name;
}

class Commands : public ::testing::Test
{
protected:
    QString write(const QString &name, const QByteArray &bytes)
    {
        const QString path = m_folder.filePath(name);
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(bytes), bytes.size());
        return path;
    }
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(Commands, VersionAndHelpGoToStandardOutput)
{
    const Outcome version = runProgram({u"--version"_s});
    EXPECT_EQ(version.status, 0);
    EXPECT_EQ(version.out, "plateau " PLATEAU_VERSION "\n");
    const Outcome help = runProgram({u"--help"_s});
    EXPECT_EQ(help.status, 0);
    EXPECT_TRUE(help.out.contains("plateau evaluate RUN.json"));
    EXPECT_TRUE(help.error.isEmpty());
}

TEST_F(Commands, UnknownWordsAreRefusedWithoutADisplay)
{
    for (const QStringList &words :
         {QStringList{u"evalute"_s}, QStringList{u"--nonsense"_s}, QStringList{u"--notebook"_s},
          QStringList{u"--demo"_s, u"--notebook"_s, u"x"_s}, QStringList{u"--person"_s}, QStringList{u"evaluate"_s},
          QStringList{u"evaluate"_s, u"--json"_s}, QStringList{u"verify"_s}, QStringList{u"import"_s, u"x"_s},
          QStringList{u"import"_s, u"--twice"_s, u"x"_s, u"y"_s}}) {
        const Outcome outcome = runProgram(words);
        EXPECT_EQ(outcome.status, 2) << words.join(u' ').toStdString();
        EXPECT_EQ(outcome.errorLines().size(), 1) << outcome.error.toStdString();
        EXPECT_TRUE(outcome.out.isEmpty());
    }
}

TEST_F(Commands, TheWindowWithoutADisplayIsRefusedInOneSentence)
{
    for (const QStringList &words : {QStringList{}, QStringList{u"--demo"_s}}) {
        const Outcome outcome = runProgram(words);
        EXPECT_EQ(outcome.status, 2);
        ASSERT_EQ(outcome.errorLines().size(), 1) << outcome.error.toStdString();
        EXPECT_TRUE(outcome.error.contains("needs a display")) << outcome.error.toStdString();
    }
}

TEST_F(Commands, EvaluateWritesTheContractsKeys)
{
    const Outcome outcome = runProgram({u"evaluate"_s, sample(u"clean-run.json"_s)});
    EXPECT_EQ(outcome.status, 0) << outcome.error.toStdString();
    const QJsonObject evaluation = outcome.json();
    EXPECT_EQ(evaluation["format"_L1].toString(), u"plateau-evaluation/1"_s);
    for (const char *key :
         {"method", "factors", "blanks", "tubes", "results", "standards", "spikes", "checks", "acceptable"})
        EXPECT_TRUE(evaluation.contains(QLatin1StringView(key))) << key;
    EXPECT_TRUE(evaluation["acceptable"_L1].toBool());
    const QJsonObject tube = evaluation["tubes"_L1].toArray().at(0).toObject();
    for (const char *key : {"index", "role", "measurand", "signal", "netSignal", "concentration_g_per_L"})
        EXPECT_TRUE(tube.contains(QLatin1StringView(key))) << key;
    const QJsonObject result = evaluation["results"_L1].toArray().at(0).toObject();
    for (const char *key : {"sample", "measurand", "value", "unit", "n", "spread", "expandedUncertainty",
                            "coverageFactor", "budget", "verdict", "checks"})
        EXPECT_TRUE(result.contains(QLatin1StringView(key))) << key;
    const QJsonObject check = evaluation["checks"_L1].toArray().at(0).toObject();
    for (const char *key : {"id", "scope", "passed", "message", "advice"})
        EXPECT_TRUE(check.contains(QLatin1StringView(key))) << key;
}

TEST_F(Commands, EvaluateSaysByItsStatusThatSomethingNeedsAttention)
{
    EXPECT_EQ(runProgram({u"evaluate"_s, sample(u"failed-standard.json"_s)}).status, 1);
}

TEST_F(Commands, ManyRunsAreALineEachInTheirOrderAndTheStatusIsTheWorst)
{
    const QStringList paths{sample(u"clean-run.json"_s), sample(u"failed-standard.json"_s), sample(u"clean-run.json"_s)};
    const Outcome outcome = runProgram(QStringList{u"evaluate"_s} + paths);
    EXPECT_EQ(outcome.status, 1);
    EXPECT_TRUE(outcome.error.isEmpty()) << outcome.error.toStdString();
    EXPECT_TRUE(outcome.out.endsWith('\n'));
    const QList<QByteArray> lines = outcome.out.chopped(1).split('\n');
    ASSERT_EQ(lines.size(), paths.size());
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const QJsonObject line = QJsonDocument::fromJson(lines[i]).object();
        EXPECT_EQ(line["run"_L1].toString(), paths[i]);
        // Number for number what it is of the file alone.
        EXPECT_EQ(line["evaluation"_L1].toObject(), runProgram({u"evaluate"_s, paths[i]}).json());
    }
}

TEST_F(Commands, OneOfManyThatCannotBeReadIsNamedAndTheOthersAreEvaluated)
{
    const QString absent = m_folder.filePath(u"absent.json"_s);
    const QString clean = sample(u"clean-run.json"_s);
    const Outcome outcome = runProgram({u"evaluate"_s, clean, absent, write(u"text.json"_s, "hello"), clean});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_EQ(outcome.errorLines().size(), 2) << outcome.error.toStdString();
    EXPECT_TRUE(outcome.error.contains("absent.json"));
    EXPECT_TRUE(outcome.error.contains("text.json"));
    EXPECT_EQ(outcome.out.count('\n'), 2);
}

TEST_F(Commands, EveryProblemOfAFileIsALineWithItsPlace)
{
    const QString path =
        write(u"bad.json"_s, R"({"format": "plateau-run/1", "method": "total-sulphite", "colour": "red",
        "samples": [{"id": "A", "form": "liquid"}],
        "tubes": [{"role": "sample", "sample": "B", "readings": {"A1": "high"}}]})");
    const Outcome outcome = runProgram({u"evaluate"_s, path});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_TRUE(outcome.out.isEmpty());
    EXPECT_TRUE(outcome.error.contains("/colour")) << outcome.error.toStdString();
    EXPECT_TRUE(outcome.error.contains("/tubes/0/readings/A1")) << outcome.error.toStdString();
    for (const QByteArray &line : outcome.errorLines())
        EXPECT_TRUE(line.contains("bad.json")) << line.toStdString();
}

TEST_F(Commands, FilesThatAreNoRunAreRefusedInOneLine)
{
    QFile huge(m_folder.filePath(u"huge.json"_s));
    ASSERT_TRUE(huge.open(QIODevice::WriteOnly));
    ASSERT_TRUE(huge.resize(17 * 1024 * 1024));
    huge.close();
    for (const QString &path :
         {m_folder.filePath(u"absent.json"_s), m_folder.path(), huge.fileName(), write(u"empty.json"_s, ""),
          write(u"text.json"_s, "hello"), write(u"latin1.json"_s, "{\"format\": \"\xe9\"}"),
          write(u"bomb.json"_s, QByteArray(100000, '[')),
          write(u"twice.json"_s, R"({"format": "plateau-run/1", "format": "plateau-run/1"})")}) {
        const Outcome outcome = runProgram({u"evaluate"_s, path});
        EXPECT_EQ(outcome.status, 2) << path.toStdString();
        EXPECT_GE(outcome.errorLines().size(), 1);
        EXPECT_TRUE(outcome.out.isEmpty());
    }
}

TEST_F(Commands, UnusedSampleIsAWarningAndTheRunIsEvaluated)
{
    QFile file(sample(u"clean-run.json"_s));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QJsonObject run = QJsonDocument::fromJson(file.readAll()).object();
    QJsonArray samples = run["samples"_L1].toArray();
    samples.append(
        QJsonObject{{u"id"_s, u"never pipetted"_s}, {u"form"_s, u"liquid"_s}, {u"dilution"_s, QJsonArray()}});
    run["samples"_L1] = samples;
    const Outcome outcome = runProgram({u"evaluate"_s, write(u"warned.json"_s, QJsonDocument(run).toJson())});
    EXPECT_EQ(outcome.status, 0); // what was never pipetted has no result to wait for
    EXPECT_EQ(outcome.error.count("warning: "), 1) << outcome.error.toStdString();
    EXPECT_FALSE(outcome.json().isEmpty());
}

TEST_F(Commands, SampleNotebookIsMadeAndVerifies)
{
    const QString path = m_folder.filePath(u"sample.plateau"_s);
    const Outcome made = runProgram({u"sample"_s, path});
    EXPECT_EQ(made.status, 0) << made.error.toStdString();
    const Outcome verified = runProgram({u"verify"_s, path});
    EXPECT_EQ(verified.status, 0) << verified.out.toStdString() << verified.error.toStdString();
    EXPECT_TRUE(verified.out.endsWith("sound\n"));
    EXPECT_EQ(runProgram({u"sample"_s, path}).status, 2); // never over an existing file
    EXPECT_EQ(runProgram({u"verify"_s, path}).status, 0);
}

TEST_F(Commands, SampleMakesAHistoryOfSoManyRunsFromASeed)
{
    const QString path = m_folder.filePath(u"history.plateau"_s);
    const QStringList wanted{u"sample"_s, path,   u"--runs"_s,  u"4"_s,
                             u"--seed"_s, u"7"_s, u"--until"_s, u"2026-06-26"_s};
    const Outcome made = runProgram(wanted);
    EXPECT_EQ(made.status, 0) << made.error.toStdString();
    EXPECT_TRUE(made.out.startsWith("4 runs of an invented laboratory"));
    const Outcome verified = runProgram({u"verify"_s, path});
    EXPECT_EQ(verified.status, 0);
    EXPECT_TRUE(verified.out.startsWith("4 runs, 3 decisions"));
    EXPECT_EQ(runProgram(wanted).status, 2); // never over an existing file
}

TEST_F(Commands, SampleRefusesNumbersAndDaysThatCannotBe)
{
    const QString path = m_folder.filePath(u"history.plateau"_s);
    const QList<QStringList> wrong{{u"--runs"_s, u"0"_s},
                                   {u"--runs"_s, u"many"_s},
                                   {u"--runs"_s},
                                   {u"--seed"_s, u"3"_s},
                                   {u"--runs"_s, u"5"_s, u"--seed"_s, u"-1"_s},
                                   {u"--runs"_s, u"5"_s, u"--until"_s, u"2026-02-30"_s},
                                   {u"--runs"_s, u"5"_s, u"--until"_s, u"9999-01-01"_s},
                                   {u"--years"_s, u"2"_s}};
    for (const QStringList &options : wrong) {
        const Outcome refused = runProgram(QStringList{u"sample"_s, path} + options);
        EXPECT_EQ(refused.status, 2) << options.join(u' ').toStdString();
        EXPECT_EQ(refused.error.count(u'\n'), 1) << refused.error.toStdString();
    }
    EXPECT_FALSE(QFile::exists(path));
}

TEST_F(Commands, SampleNotebookHasSamplesThatWaitAndLotsInHand)
{
    const QString path = m_folder.filePath(u"sample.plateau"_s);
    ASSERT_EQ(runProgram({u"sample"_s, path}).status, 0);
    const auto book = notebook::Notebook::open(path, notebook::Access::ReadOnly);
    int registered = 0;
    for (const notebook::WaitingSample &waiting : book->shelf().waiting())
        registered += waiting.shelf ? 1 : 0;
    EXPECT_EQ(registered, 4);
    const std::vector<planning::Lot> lots = book->lots().inHand();
    ASSERT_EQ(lots.size(), 12U) << "one is dry, one is divided into four";
    EXPECT_EQ(lots[1].reagent, u"NADH and NADH peroxidase solution"_s);
    EXPECT_EQ(lots[1].remaining_mL, 11.0);
    EXPECT_EQ(lots[1].opened, QDate::currentDate().addDays(-3));
    EXPECT_EQ(lots[6].remaining_mL, 4.0) << "12 mL, of which four aliquots took 2 mL each";
    EXPECT_EQ(planning::lastGoodDay(lots[8]), QDate::currentDate().addDays(54)) << "frozen six days ago for 60";
    EXPECT_TRUE(lots[7].isDry);
}

TEST_F(Commands, ImportPutsRunsOnTheBenchOrNothingAtAll)
{
    const QString path = m_folder.filePath(u"bench.plateau"_s);
    const QString broken = write(u"broken.json"_s, "{}");
    EXPECT_EQ(runProgram({u"import"_s, path, sample(u"clean-run.json"_s), broken}).status, 2);
    EXPECT_FALSE(QFile::exists(path));
    EXPECT_EQ(runProgram({u"import"_s, path, sample(u"clean-run.json"_s), sample(u"solid.json"_s)}).status,
              0);
    const Outcome verified = runProgram({u"verify"_s, path});
    EXPECT_EQ(verified.status, 0) << verified.out.toStdString();
    EXPECT_TRUE(verified.out.startsWith("2 runs, 0 decisions")) << verified.out.toStdString();
}

TEST_F(Commands, ImportNamesEveryFileThatCannotBeUsedAndStoresNothing)
{
    const QString path = m_folder.filePath(u"bench.plateau"_s);
    const Outcome outcome =
        runProgram({u"import"_s, path, m_folder.filePath(u"no-such.json"_s), sample(u"clean-run.json"_s),
                    write(u"broken.json"_s, "{}"), m_folder.filePath(u"nor-this.json"_s)});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_TRUE(outcome.out.isEmpty()) << outcome.out.toStdString();
    for (const char *name : {"no-such.json", "broken.json", "nor-this.json"})
        EXPECT_TRUE(outcome.error.contains(name)) << outcome.error.toStdString();
    EXPECT_FALSE(QFile::exists(path));
}

TEST_F(Commands, ImportDoesNotStoreARunTwiceUnlessToldTo)
{
    const QString path = m_folder.filePath(u"bench.plateau"_s);
    const QString clean = sample(u"clean-run.json"_s);
    const Outcome within = runProgram({u"import"_s, path, clean, clean});
    EXPECT_EQ(within.status, 1);
    EXPECT_TRUE(within.out.contains("clean-run.json was not stored: it is run 1 of the notebook"))
        << within.out.toStdString();
    EXPECT_TRUE(within.out.endsWith("1 run put on the bench\n")) << within.out.toStdString();
    const Outcome later = runProgram({u"import"_s, path, clean, sample(u"solid.json"_s)});
    EXPECT_EQ(later.status, 1);
    EXPECT_TRUE(runProgram({u"verify"_s, path}).out.startsWith("2 runs, 0 decisions"));
    EXPECT_EQ(runProgram({u"import"_s, path, clean}).out.count('\n'), 1);
    EXPECT_EQ(runProgram({u"import"_s, u"--again"_s, path, clean}).status, 0);
    EXPECT_TRUE(runProgram({u"verify"_s, path}).out.startsWith("3 runs, 0 decisions"));
}

namespace {

/// A shipped method with another text in place of one it has.
QByteArray changedMethod(const QString &name, const QByteArray &before, const QByteArray &after)
{
    QFile file(QStringLiteral(PLATEAU_SOURCE_DIR "/resources/methods/") + name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QByteArray bytes = file.readAll();
    EXPECT_TRUE(bytes.contains(before)) << before.toStdString();
    return bytes.replace(before, after);
}

} // namespace

TEST_F(Commands, ImportTakesMethodsAndSaysWhatBecameOfThem)
{
    const QString path = m_folder.filePath(u"methods.plateau"_s);
    const QString next =
        write(u"next.json"_s, changedMethod(u"glycerol.json"_s, "\"version\": 1", "\"version\": 2"));
    const Outcome first = runProgram({u"import"_s, path, next, sample(u"clean-run.json"_s)});
    EXPECT_EQ(first.status, 0) << first.error.toStdString();
    EXPECT_EQ(first.out.trimmed().split('\n').size(), 2) << first.out.toStdString();
    EXPECT_TRUE(first.out.contains(", version 2, is stored.\n1 run put on the bench\n"))
        << first.out.toStdString();
    const Outcome again = runProgram({u"import"_s, path, next});
    EXPECT_EQ(again.status, 0);
    EXPECT_TRUE(again.out.startsWith("Nothing was stored: ")) << again.out.toStdString();
    EXPECT_EQ(runProgram({u"verify"_s, path}).status, 0);
}

TEST_F(Commands, ImportOfAnotherMethodOfTheSameVersionNeedsAttention)
{
    const QString path = m_folder.filePath(u"methods.plateau"_s);
    const QString other = write(
        u"other.json"_s, changedMethod(u"glycerol.json"_s, "\"pathLength_mm\": 10", "\"pathLength_mm\": 20"));
    const Outcome outcome = runProgram({u"import"_s, path, other});
    EXPECT_EQ(outcome.status, 1) << outcome.error.toStdString();
    EXPECT_EQ(outcome.out.trimmed().split('\n').size(), 1);
    EXPECT_TRUE(outcome.out.contains("kept apart")) << outcome.out.toStdString();
    EXPECT_TRUE(outcome.out.contains("differ in Path length.")) << outcome.out.toStdString();
    // A run that names it only by its id would now be worked out with one of two.
    const QString run =
        write(u"run.json"_s, R"({"format": "plateau-run/1", "title": "x", "method": "glycerol",
        "samples": [{"id": "S", "form": "liquid"}], "tubes": [{"role": "sample", "sample": "S"}]})");
    const Outcome refused = runProgram({u"import"_s, path, run});
    EXPECT_EQ(refused.status, 2);
    ASSERT_EQ(refused.errorLines().size(), 1) << refused.error.toStdString();
    EXPECT_TRUE(refused.error.contains("run.json: /method: 2 methods with the id \"glycerol\" are in use"))
        << refused.error.toStdString();
    const QString fresh = m_folder.filePath(u"fresh.plateau"_s);
    EXPECT_EQ(runProgram({u"import"_s, fresh, run}).status, 0);
}

TEST_F(Commands, ImportOfABrokenMethodStoresNothing)
{
    const QString path = m_folder.filePath(u"methods.plateau"_s);
    const QString broken =
        write(u"broken.json"_s, changedMethod(u"glycerol.json"_s, "\"pathLength_mm\"", "\"pathLength\""));
    const Outcome outcome = runProgram({u"import"_s, path, sample(u"clean-run.json"_s), broken});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_TRUE(outcome.error.contains("broken.json: /pathLength")) << outcome.error.toStdString();
    EXPECT_FALSE(QFile::exists(path));
}

TEST_F(Commands, VerifyRefusesWhatIsNoNotebookAndMakesNone)
{
    const QString absent = m_folder.filePath(u"absent.plateau"_s);
    EXPECT_EQ(runProgram({u"verify"_s, absent}).status, 2);
    EXPECT_FALSE(QFile::exists(absent));
    const Outcome garbage = runProgram({u"verify"_s, write(u"garbage.plateau"_s, QByteArray(5000, 'x'))});
    EXPECT_EQ(garbage.status, 2);
    EXPECT_EQ(garbage.errorLines().size(), 1) << garbage.error.toStdString();
    EXPECT_TRUE(garbage.error.startsWith("The file ")) << garbage.error.toStdString();
    EXPECT_EQ(garbage.error.count("garbage.plateau"), 1) << "the file is named once";
}

TEST_F(Commands, FullDeviceIsNoticed)
{
    QProcess process;
    process.setStandardOutputFile(u"/dev/full"_s);
    process.start(QStringLiteral(PLATEAU_PROGRAM), {u"evaluate"_s, sample(u"clean-run.json"_s)});
    ASSERT_TRUE(process.waitForFinished(60000));
    EXPECT_EQ(process.exitCode(), 2);
    EXPECT_FALSE(process.readAllStandardError().isEmpty());
}
