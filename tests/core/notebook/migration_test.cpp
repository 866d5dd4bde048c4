// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audit.h"
#include "core/notebook/checks.h"
#include "core/notebook/migration.h"
#include "core/notebook/opening.h"
#include "core/notebook/schema.h"
#include "tests/core/notebook/fixture.h"

#include <QDir>
#include <QFile>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::Ge;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

/// The machinery with steps of the tests' own after the real ones.
class MigrationTest : public NotebookTest
{
protected:
    static std::vector<SchemaStep> stepsAnd(const std::vector<QStringList> &more)
    {
        std::vector<SchemaStep> steps = schemaSteps();
        for (const QStringList &statements : more)
            steps.push_back({steps.back().number + 1, u"a step of the tests"_s, statements});
        return steps;
    }
    std::unique_ptr<Database> openWith(const std::vector<SchemaStep> &steps)
    {
        return openNotebookFile(file(), Access::ReadWrite, steps, surroundings());
    }
    static int now() { return schemaSteps().back().number; }

    /// A column more, and a table rebuilt as SQLite's manual says for changes ALTER TABLE cannot make.
    const QStringList addColumn{u"ALTER TABLE tube ADD COLUMN note TEXT NOT NULL DEFAULT ''"_s};
    const QStringList rebuild{
        u"CREATE TABLE new_lot_use (id INTEGER PRIMARY KEY CHECK (id > 0), run INTEGER NOT NULL REFERENCES "
        u"run (id), "
        "position INTEGER NOT NULL, component TEXT NOT NULL, lot TEXT NOT NULL, expires TEXT, opened TEXT, "
        "UNIQUE (run, position)) STRICT"_s,
        u"INSERT INTO new_lot_use SELECT id, run, position, component, lot, expires, NULL FROM lot_use"_s,
        u"DROP TABLE lot_use"_s, u"ALTER TABLE new_lot_use RENAME TO lot_use"_s};
};

TEST_F(MigrationTest, StepsAreNumberedFromOneWithoutGaps)
{
    int number = 0;
    for (const SchemaStep &step : schemaSteps()) {
        EXPECT_EQ(step.number, ++number);
        EXPECT_FALSE(step.description.isEmpty());
        EXPECT_FALSE(step.statements.isEmpty());
    }
}

TEST_F(MigrationTest, EveryTableIsStrictAndProtected)
{
    create();
    RawFile raw(file());
    const auto tables =
        raw.rows(u"SELECT name, \"strict\" FROM pragma_table_list WHERE type = 'table' AND schema = 'main' "
                 "AND name NOT LIKE 'sqlite%'"_s);
    int records = 0;
    for (const QVariantList &table : tables) {
        if (isDerived(table[0].toString()))
            continue; // made anew from the records at any time
        ++records;
        EXPECT_EQ(table[1].toInt(), 1) << table[0].toString().toStdString();
        EXPECT_EQ(
            raw.value(
                   u"SELECT count(*) FROM sqlite_schema WHERE tbl_name = '%1' AND name IN ('%1_no_update', "
                   "'%1_no_delete', '%1_no_replace')"_s.arg(table[0].toString()))
                .toInt(),
            3);
    }
    EXPECT_EQ(records, 83);
}

TEST_F(MigrationTest, FingerprintIsThatOfAllSteps)
{
    const std::vector<SchemaStep> steps = schemaSteps(); // a copy, so that nothing is known of them yet
    EXPECT_EQ(fingerprintOf(layoutAfter(steps, now())).toStdString(), newestFingerprint.toString().toStdString())
        << "after a change of the newest step this is what stands in schema.cpp";
}

TEST_F(MigrationTest, AnythingElseInTheSchemaIsSeenBesideTheFingerprint)
{
    makeFilledFile();
    EXPECT_TRUE(hasNewestLayout(*openWith(schemaSteps())));
    RawFile(file()).execute(u"CREATE INDEX another ON run (title)"_s);
    const Database database(file(), Access::ReadOnly);
    EXPECT_FALSE(hasNewestLayout(database));
    EXPECT_EQ(failureOf([&] { reopen(); }).kind(), Failure::Kind::Damaged);
}

TEST_F(MigrationTest, CurrentFileIsOpenedWithoutACopy)
{
    makeFilledFile();
    const QByteArray before = bytesOf(file());
    EXPECT_EQ(schemaVersion(*openWith(schemaSteps())), now());
    EXPECT_THAT(filesInFolder(), ElementsAre(u"notebook.plateau"_s));
    EXPECT_EQ(bytesOf(file()), before);
}

TEST_F(MigrationTest, OlderFileIsBroughtUpToDateAfterADatedCopy)
{
    AuditHead head;
    {
        const auto notebook = create();
        fill(*notebook);
        head = notebook->auditHead();
    }
    m_now = QDateTime(QDate(2026, 4, 1), QTime(7, 58), Qt::OffsetFromUTC, 3600);
    {
        const auto steps = stepsAnd({addColumn, rebuild});
        const auto database = openWith(steps);
        EXPECT_EQ(schemaVersion(*database), now() + 2);
        EXPECT_EQ(readAuditHead(*database).entries, head.entries + 2);
        EXPECT_THAT(fileFindings(*database), IsEmpty());
        EXPECT_THAT(chainFindings(*database), IsEmpty());
        EXPECT_EQ(database->single(u"PRAGMA foreign_keys"_s).toInt(), 1);
        EXPECT_EQ(database->single(u"SELECT details FROM audit ORDER BY id DESC LIMIT 1"_s).toString(),
                  u"schema %1: a step of the tests"_s.arg(now() + 2));
    }
    const QString copy = u"notebook-20260401-075900-schema%1.plateau"_s.arg(now());
    EXPECT_THAT(filesInFolder(), ElementsAre(copy, u"notebook.plateau"_s));
    EXPECT_EQ(QFile::permissions(file(copy)) & ~(QFile::ReadUser | QFile::WriteUser),
              QFile::ReadOwner | QFile::WriteOwner);
    const auto old = Notebook::open(file(copy), Access::ReadWrite, surroundings());
    EXPECT_EQ(old->auditHead().hash, head.hash);
    EXPECT_THAT(old->runs(), SizeIs(3));
    EXPECT_THAT(old->verify().findings, IsEmpty());
}

TEST_F(MigrationTest, RecordsHashedUnderAnOlderSchemaStaySound)
{
    makeFilledFile();
    const auto steps = stepsAnd({addColumn});
    {
        const auto database = openWith(steps);
        EXPECT_THAT(recordFindings(*database, steps, now() + 1), IsEmpty());
    }
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE tube SET role = 'blank' WHERE id = 3"_s); });
    }
    const Database database(file(), Access::ReadOnly);
    const std::vector<Finding> findings = recordFindings(database, steps, now() + 1);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].place, u"tube 3"_s);
}

TEST_F(MigrationTest, FailingStepLeavesTheFileAsItWas)
{
    makeFilledFile();
    const QString dump = u"SELECT group_concat(sql) FROM sqlite_schema"_s;
    const QVariant before = RawFile(file()).value(dump);
    const auto steps =
        stepsAnd({{u"CREATE TABLE half (id INTEGER PRIMARY KEY)"_s, u"CREATE TABLE run (id)"_s}});
    const Failure failure = failureOf([&] { openWith(steps); });
    expectOneSentence(failure);
    EXPECT_EQ(RawFile(file()).value(dump), before);
    EXPECT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), now());
    EXPECT_THAT(reopen()->verify().findings, IsEmpty());
}

TEST_F(MigrationTest, StepBeforeTheFailingOneStays)
{
    makeFilledFile();
    failureOf([&] { openWith(stepsAnd({addColumn, {u"CREATE UNIQUE INDEX one ON tube (role)"_s}})); });
    EXPECT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), now() + 1);
    const auto database = openWith(stepsAnd({addColumn, rebuild}));
    EXPECT_EQ(schemaVersion(*database), now() + 2);
    EXPECT_THAT(chainFindings(*database), IsEmpty());
}

TEST_F(MigrationTest, StepThatBreaksForeignKeysIsTakenBack)
{
    makeFilledFile();
    const Failure failure = failureOf([&] {
        openWith(stepsAnd(
            {{u"CREATE TABLE orphan (id INTEGER PRIMARY KEY, run INTEGER REFERENCES run (id)) STRICT"_s,
              u"INSERT INTO orphan VALUES (1, 999)"_s}}));
    });
    EXPECT_EQ(failure.kind(), Kind::Damaged);
    EXPECT_TRUE(failure.details().contains("orphan 1"_L1)) << failure.details().toStdString();
    EXPECT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), now());
}

TEST_F(MigrationTest, OlderFileIsNotTouchedWhenOnlyRead)
{
    create();
    const QByteArray before = bytesOf(file());
    const Failure failure =
        failureOf([&] { openNotebookFile(file(), Access::ReadOnly, stepsAnd({addColumn}), surroundings()); });
    EXPECT_EQ(failure.kind(), Kind::Refused);
    expectOneSentence(failure);
    EXPECT_EQ(bytesOf(file()), before);
    EXPECT_THAT(filesInFolder(), ElementsAre(u"notebook.plateau"_s));
}

TEST_F(MigrationTest, DamagedOlderFileIsNeitherCopiedNorMigrated)
{
    makeFilledFile();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"DELETE FROM audit WHERE id = 2"_s); });
    }
    const Failure failure = failureOf([&] { openWith(stepsAnd({addColumn})); });
    EXPECT_EQ(failure.kind(), Kind::Damaged);
    EXPECT_THAT(filesInFolder(), ElementsAre(u"notebook.plateau"_s));
    EXPECT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), now());
}

TEST_F(MigrationTest, CopyThatCannotBeMadeStopsTheMigration)
{
    makeFilledFile();
    m_now = QDateTime(QDate(2026, 4, 1), QTime(7, 58), Qt::OffsetFromUTC, 3600);
    // Something that is no file stands where the copy is made.
    const QString part = u"notebook-20260401-075900-schema%1.plateau.part"_s.arg(now());
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(part));
    const Failure failure = failureOf([&] { openWith(stepsAnd({addColumn})); });
    EXPECT_EQ(failure.kind(), Kind::Storage) << failure.what();
    expectOneSentence(failure);
    EXPECT_THAT(filesInFolder(), ElementsAre(u"notebook.plateau"_s));
    EXPECT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), now());
}

TEST_F(MigrationTest, CopyUnderATakenNameGetsANumberAndLeavesTheOther)
{
    makeFilledFile();
    m_now = QDateTime(QDate(2026, 4, 1), QTime(7, 58), Qt::OffsetFromUTC, 3600);
    const QString stem = u"notebook-20260401-075900-schema%1"_s.arg(now());
    write(file(stem + u".plateau"_s), "somebody else's");
    openWith(stepsAnd({addColumn}));
    EXPECT_EQ(bytesOf(file(stem + u".plateau"_s)), "somebody else's");
    EXPECT_EQ(RawFile(file(stem + u"-2.plateau"_s)).value(u"PRAGMA user_version"_s).toInt(), now());
    EXPECT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), now() + 1);
}

/// A file as the program of some time wrote it: data/README.md says how they were made.
class OldFileTest : public MigrationTest
{
protected:
    void takeFile(int schema)
    {
        const QString packed = QStringLiteral(PLATEAU_NOTEBOOK_DATA "/schema%1.plateau.z").arg(schema);
        write(file(), qUncompress(bytesOf(packed)));
        m_now = QDateTime(QDate(2026, 4, 1), QTime(7, 58), Qt::OffsetFromUTC, 3600);
    }
    /// All rows of every table but the audit trail, by table.
    std::map<QString, std::vector<QVariantList>> rowsOfAllTables()
    {
        RawFile raw(file());
        std::map<QString, std::vector<QVariantList>> rows;
        for (const QVariantList &table :
             raw.rows(u"SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'audit%' AND "
                      "name NOT LIKE 'search%'"_s))
            rows[table[0].toString()] = raw.rows(u"SELECT * FROM "_s + table[0].toString());
        return rows;
    }
    /// What is found wrong with file, schema, chain and rows; not with what an evaluation of today says.
    std::vector<Finding> recordedFindings()
    {
        const Database database(file(), Access::ReadOnly);
        std::vector<Finding> all = fileFindings(database);
        for (const auto &more : {schemaFindings(database, layoutAfter(schemaSteps(), now())),
                                 chainFindings(database), recordFindings(database, schemaSteps(), now())})
            all.insert(all.end(), more.begin(), more.end());
        return all;
    }
};

class SchemaOneTest : public OldFileTest
{
protected:
    void SetUp() override { takeFile(1); }
};

TEST_F(SchemaOneTest, IsBroughtUpToDateWithAllItHolds)
{
    ASSERT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), 1);
    const auto before = RawFile(file()).rows(u"SELECT * FROM reading"_s);
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->auditHead().entries, 10 + now() - 1);
        EXPECT_THAT(notebook->runs(), SizeIs(3));
        EXPECT_THAT(notebook->load({1}).decisions, SizeIs(2));
        const std::vector<StoredMethod> methods = notebook->methods();
        ASSERT_THAT(methods, SizeIs(2));
        EXPECT_EQ(methods[0].runs, 2);
        EXPECT_EQ(methods[1].runs, 1);
        for (const StoredMethod &method : methods) {
            EXPECT_EQ(method.origin, MethodOrigin::OnRecord);
            EXPECT_FALSE(method.retired);
        }
    }
    EXPECT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), now());
    EXPECT_EQ(RawFile(file()).rows(u"SELECT * FROM reading"_s), before);
    EXPECT_EQ(RawFile(file()).value(u"SELECT details FROM audit WHERE id = 11"_s).toString(),
              u"schema 2: the laboratory's methods, and the runs that derived results come from"_s);
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

TEST_F(SchemaOneTest, CopyMadeBeforeIsStillOfSchemaOne)
{
    const QByteArray head = RawFile(file()).value(u"SELECT hash FROM audit WHERE id = 10"_s).toByteArray();
    reopen();
    const QString copy = u"notebook-20260401-075900-schema1.plateau"_s;
    EXPECT_THAT(filesInFolder(), ElementsAre(copy, u"notebook.plateau"_s));
    RawFile raw(file(copy));
    EXPECT_EQ(raw.value(u"PRAGMA user_version"_s).toInt(), 1);
    EXPECT_EQ(raw.value(u"SELECT hash FROM audit ORDER BY id DESC LIMIT 1"_s).toByteArray(), head);
}

TEST_F(SchemaOneTest, TakesMethodsAndRunsAfterwards)
{
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->saveMethod(otherRisingMethod(), u"Ines"_s, {}, {}).method.version, 2);
        EXPECT_TRUE(notebook->importMethod(risingMethod(), u"r.json"_s, u"Ines"_s, {}).stored);
        notebook->retireMethod(risingMethod(), u"Ines"_s, u"old"_s);
        notebook->addReading({3}, 0, u"A1"_s, 0.1, u"0.1"_s, u"Ines"_s);
        notebook->decide({3}, DecisionKind::Rejected, u"Ines"_s, u"not needed"_s);
    }
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

TEST_F(SchemaOneTest, RowChangedSinceIsNamedAndNothingIsDecidedOnIt)
{
    reopen();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE tube SET role = 'blank' WHERE id = 12"_s); });
    }
    const std::vector<Finding> findings = recordedFindings();
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].place, u"tube 12"_s);
    const auto notebook = reopen();
    EXPECT_EQ(
        failureOf([&] { notebook->decide({3}, DecisionKind::Rejected, u"Ines"_s, u"not needed"_s); }).kind(),
        Kind::Damaged);
}

TEST_F(SchemaOneTest, IsNotTouchedWhenOnlyRead)
{
    const QByteArray before = bytesOf(file());
    EXPECT_EQ(failureOf([&] { reopen(Access::ReadOnly); }).kind(), Kind::Refused);
    EXPECT_EQ(bytesOf(file()), before);
}

TEST_F(SchemaOneTest, NothingIsLost)
{
    const auto before = rowsOfAllTables();
    reopen();
    const auto after = rowsOfAllTables();
    EXPECT_THAT(before, SizeIs(12));
    for (const auto &[table, rows] : before)
        EXPECT_EQ(after.at(table), rows) << table.toStdString();
    EXPECT_THAT(after, SizeIs(Ge(52)));
}

class SchemaTwoTest : public OldFileTest
{
protected:
    void SetUp() override { takeFile(2); }
};

TEST_F(SchemaTwoTest, IsBroughtUpToDateWithAllItHolds)
{
    ASSERT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), 2);
    const auto before = rowsOfAllTables();
    EXPECT_THAT(before, SizeIs(14));
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->auditHead().entries, 21 + now() - 2);
        EXPECT_THAT(notebook->runs(), SizeIs(6));
        EXPECT_THAT(notebook->methods(), SizeIs(5));
        const StoredRun total = notebook->load({5});
        EXPECT_THAT(total.companions, SizeIs(1));
        EXPECT_FALSE(total.plan);
        EXPECT_THAT(total.marks, IsEmpty());
        const StoredRun full = notebook->load({2});
        EXPECT_TRUE(full.run.samples == fullRun().samples);
        EXPECT_EQ(full.readings.back().typed, u"0.50 0.51"_s);
    }
    const auto after = rowsOfAllTables();
    for (const auto &[table, rows] : before)
        EXPECT_EQ(after.at(table), rows) << table.toStdString();
    EXPECT_EQ(RawFile(file()).value(u"SELECT details FROM audit WHERE id = 22"_s).toString(),
              u"schema 3: the shelf, plans, lots, and what was done at the bench"_s);
    EXPECT_THAT(recordedFindings(), IsEmpty());
    EXPECT_THAT(filesInFolder(),
                ElementsAre(u"notebook-20260401-075900-schema2.plateau"_s, u"notebook.plateau"_s));
}

TEST_F(SchemaTwoTest, TakesEveryActOfTheBenchAfterwards)
{
    {
        const auto notebook = reopen();
        fillBench(*notebook);
        notebook->pipetting().markDone({3}, {{{0, u"buffer"_s, false}, {}, LotId{1}}}, u"Ines"_s);
        notebook->decide({3}, DecisionKind::Rejected, u"Ines"_s, u"not needed"_s);
        notebook->reopen({1}, u"Ines"_s, u"look again"_s);
        notebook->pipetting().markSpoilt({1}, 2, u"Ines"_s, u"scratched"_s);
        notebook->decide({1}, DecisionKind::Accepted, u"Ines"_s, u"one tube is left"_s);
        EXPECT_THAT(notebook->load({1}).decisions, SizeIs(3));
    }
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

/// Decisions of that time do not say in rows which samples are to be repeated; their evaluation does.
TEST_F(SchemaTwoTest, RepeatsThatWereAdvisedBeforeWaitToo)
{
    const auto notebook = reopen();
    const std::vector<WaitingSample> waiting = notebook->shelf().waiting();
    ASSERT_THAT(waiting, SizeIs(1));
    EXPECT_EQ(waiting[0].sample.id, u"S"_s);
    EXPECT_EQ(waiting[0].repeat->run, RunId{6});
    ASSERT_THAT(waiting[0].repeat->advice, SizeIs(1));
    EXPECT_EQ(waiting[0].repeat->advice[0].advice.factor, 2);
    notebook->addRun(plainRun(), risingMethod(), u"Ines"_s);
    EXPECT_THAT(notebook->shelf().waiting(), IsEmpty());
}

class SchemaThreeTest : public OldFileTest
{
protected:
    void SetUp() override { takeFile(3); }
};

TEST_F(SchemaThreeTest, IsBroughtUpToDateWithAllItHolds)
{
    ASSERT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), 3);
    const int entries = RawFile(file()).value(u"SELECT count(*) FROM audit"_s).toInt();
    const auto before = rowsOfAllTables();
    EXPECT_THAT(before, SizeIs(32));
    for (const auto &[table, rows] : before)
        EXPECT_FALSE(rows.empty()) << table.toStdString();
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->auditHead().entries, entries + now() - 3);
        EXPECT_THAT(notebook->runs(), SizeIs(7));
        const StoredRun first = notebook->load({1});
        EXPECT_EQ(first.summary.revision, 2);
        EXPECT_FALSE(first.summary.isSigned);
        EXPECT_THAT(first.decisions.at(0).samples, IsEmpty());
        EXPECT_EQ(notebook->loadRevision({1}, 1).readings.size() + 1, first.readings.size());
        EXPECT_EQ(notebook->laboratory().name, u"Kaddour cidery"_s);
        EXPECT_TRUE(notebook->laboratory().review == planning::ReviewRules());
        EXPECT_FALSE(notebook->persons().areSetUp());
        EXPECT_THAT(notebook->specifications(), IsEmpty());
        EXPECT_THAT(notebook->load({6}).marks, SizeIs(5));
    }
    const auto after = rowsOfAllTables();
    for (const auto &[table, rows] : before)
        EXPECT_EQ(after.at(table), rows) << table.toStdString();
    EXPECT_EQ(
        RawFile(file()).value(u"SELECT details FROM audit WHERE id = %1"_s.arg(entries + 1)).toString(),
        u"schema 4: persons who sign, what is decided of single samples, which result is reported, limits"_s);
    EXPECT_THAT(recordedFindings(), IsEmpty());
    EXPECT_THAT(filesInFolder(),
                ElementsAre(u"notebook-20260401-075900-schema3.plateau"_s, u"notebook.plateau"_s));
}

TEST_F(SchemaThreeTest, TakesEveryActOfAReviewAfterwards)
{
    {
        const auto notebook = reopen();
        EXPECT_THAT(notebook->resultsOf(u"S"_s, u"bound"_s).accepted, SizeIs(1));
        fillReview(*notebook);
        notebook->reopen({1}, theHead.name, u"look again"_s, theHead.passphrase);
        notebook->decide({1}, {DecisionKind::Rejected, theHead.name, theHead.passphrase, u"the lamp"_s, {}});
        EXPECT_EQ(notebook->load({1}).decisions.back().signedAs, PersonRole::Head);
    }
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

class SchemaFourTest : public OldFileTest
{
protected:
    void SetUp() override { takeFile(4); }
};

TEST_F(SchemaFourTest, IsBroughtUpToDateWithAllItHolds)
{
    ASSERT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), 4);
    const int entries = RawFile(file()).value(u"SELECT count(*) FROM audit"_s).toInt();
    const auto before = rowsOfAllTables();
    EXPECT_THAT(before, SizeIs(43));
    for (const auto &[table, rows] : before)
        EXPECT_FALSE(rows.empty()) << table.toStdString();
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->auditHead().entries, entries + now() - 4);
        const StoredRun worked = notebook->load({6});
        EXPECT_EQ(worked.marks.at(0).boot, timing::BootTime{});
        EXPECT_FALSE(worked.clock.isEmpty()) << "what was ticked then has the time of the wall";
        EXPECT_EQ(worked.run.tubes[0].addedAt_min, (std::map<QString, double>{{u"buffer"_s, 0}}));
        EXPECT_THAT(worked.clockJumps, IsEmpty());
        EXPECT_EQ(worked.plannedTubes, int(worked.run.tubes.size()));
    }
    const auto after = rowsOfAllTables();
    for (const auto &[table, rows] : before)
        EXPECT_EQ(after.at(table), rows) << table.toStdString();
    EXPECT_EQ(RawFile(file()).value(u"SELECT details FROM audit WHERE id = %1"_s.arg(entries + 1)).toString(),
              u"schema 5: when things were done at the bench, series, and racks that grew"_s);
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

/// Times at the bench were kept then, too, but no decision rests on them.
TEST_F(SchemaFourTest, WhatWasReviewedThenIsStillThat)
{
    const auto notebook = reopen();
    const Verification verification = notebook->verify();
    EXPECT_GE(verification.decisionsChecked, 6);
    for (const Finding &finding : verification.findings)
        EXPECT_FALSE(finding.message.contains("reviewed"_L1)) << finding.place.toStdString();
    const StoredRun keyed = notebook->load({1});
    EXPECT_FALSE(keyed.readings.back().typed.isEmpty());
}

TEST_F(SchemaFourTest, TakesEveryActOfTheBenchAfterwards)
{
    {
        const auto notebook = reopen();
        fillReadAtTheBench(*notebook);
        notebook->pipetting().markDone({3}, {{{0, u"starter"_s, false}}}, u"Ines"_s);
        notebook->addReading({3}, 0, u"A2"_s, 0.1, u"0.1"_s, u"Ines"_s);
        notebook->readAgain({3}, 0, u"A2"_s, 0.11, u"0.11"_s, u"Ines"_s);
    }
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

class SchemaFiveTest : public OldFileTest
{
protected:
    void SetUp() override { takeFile(5); }
};

TEST_F(SchemaFiveTest, IsBroughtUpToDateWithAllItHolds)
{
    ASSERT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), 5);
    const int entries = RawFile(file()).value(u"SELECT count(*) FROM audit"_s).toInt();
    const auto before = rowsOfAllTables();
    EXPECT_THAT(before, SizeIs(52));
    for (const auto &[table, rows] : before)
        EXPECT_FALSE(rows.empty()) << table.toStdString();
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->auditHead().entries, entries + now() - 5);
        EXPECT_EQ(notebook->search().count({}).runs, int(notebook->runs().size()));
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
    }
    const auto after = rowsOfAllTables();
    for (const auto &[table, rows] : before)
        EXPECT_EQ(after.at(table), rows) << table.toStdString();
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

class SchemaSixTest : public OldFileTest
{
protected:
    void SetUp() override { takeFile(6); }
};

TEST_F(SchemaSixTest, IsBroughtUpToDateWithAllItHolds)
{
    ASSERT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), 6);
    const int entries = RawFile(file()).value(u"SELECT count(*) FROM audit"_s).toInt();
    const auto before = rowsOfAllTables();
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->auditHead().entries, entries + now() - 6);
        const std::vector<planning::Lot> lots = notebook->lots().all();
        ASSERT_THAT(lots, SizeIs(1));
        EXPECT_EQ(lots[0].expires, QDate(2027, 9, 30));
        EXPECT_FALSE(lots[0].isDry) << "it came as a solution";
        EXPECT_FALSE(lots[0].keepsDissolved_days);
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
    }
    const auto after = rowsOfAllTables();
    for (const auto &[table, rows] : before)
        EXPECT_EQ(after.at(table), rows) << table.toStdString();
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

TEST_F(SchemaSixTest, TakesEveryActOnContainersAfterwards)
{
    {
        const auto notebook = reopen();
        fillLotKeeping(*notebook);
        EXPECT_THAT(notebook->lots().all(), SizeIs(5));
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
    }
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

class SchemaSevenTest : public OldFileTest
{
protected:
    void SetUp() override { takeFile(7); }
};

TEST_F(SchemaSevenTest, IsBroughtUpToDateWithAllItHolds)
{
    ASSERT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), 7);
    const int entries = RawFile(file()).value(u"SELECT count(*) FROM audit"_s).toInt();
    const auto openings = RawFile(file()).rows(u"SELECT lot, day FROM lot_opening"_s);
    ASSERT_FALSE(openings.empty());
    const auto before = rowsOfAllTables();
    EXPECT_THAT(before, SizeIs(78));
    for (const auto &[table, rows] : before)
        EXPECT_FALSE(rows.empty()) << table.toStdString();
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->auditHead().entries, entries + now() - 7);
        const std::vector<planning::Lot> lots = notebook->lots().all();
        for (const QVariantList &opening : openings) {
            const auto lot = std::ranges::find(lots, opening[0].toLongLong(),
                                               &planning::Lot::id);
            ASSERT_NE(lot, lots.end());
            EXPECT_EQ(lot->opened, QDate::fromString(opening[1].toString(), Qt::ISODate));
        }
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
    }
    const auto after = rowsOfAllTables();
    for (const auto &[table, rows] : before)
        EXPECT_EQ(after.at(table), rows) << table.toStdString();
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

class SchemaEightTest : public OldFileTest
{
protected:
    void SetUp() override { takeFile(8); }
};

TEST_F(SchemaEightTest, IsBroughtUpToDateWithAllItHolds)
{
    ASSERT_EQ(RawFile(file()).value(u"PRAGMA user_version"_s).toInt(), 8);
    const int entries = RawFile(file()).value(u"SELECT count(*) FROM audit"_s).toInt();
    const auto before = rowsOfAllTables();
    EXPECT_THAT(before, SizeIs(80));
    for (const auto &[table, rows] : before)
        EXPECT_FALSE(rows.empty()) << table.toStdString();
    {
        const auto notebook = reopen();
        EXPECT_EQ(notebook->auditHead().entries, entries + now() - 8);
        const StoredRun worked = notebook->load({6});
        EXPECT_THAT(worked.marks, SizeIs(5));
        EXPECT_THAT(worked.dilutionMarks, IsEmpty()) << "nobody could tick one then";
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
    }
    const auto after = rowsOfAllTables();
    for (const auto &[table, rows] : before)
        EXPECT_EQ(after.at(table), rows) << table.toStdString();
    EXPECT_EQ(RawFile(file()).value(u"SELECT details FROM audit WHERE id = %1"_s.arg(entries + 1)).toString(),
              u"schema 9: dilutions that were ticked as made"_s);
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

TEST_F(SchemaEightTest, TakesTicksOfItsDilutionsAfterwards)
{
    {
        const auto notebook = reopen();
        notebook->pipetting().markDilutionsDone({6}, {{0, 0}, {1, 0}}, u"Ines"_s);
        notebook->pipetting().markDilutionsUndone({6}, {{1, 0}}, u"Ines"_s);
        const std::vector<StoredDilutionMark> marks = notebook->load({6}).dilutionMarks;
        ASSERT_THAT(marks, SizeIs(3));
        EXPECT_EQ(marks[0].after, notebook->load({6}).marks.back().id);
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
    }
    EXPECT_THAT(recordedFindings(), IsEmpty());
}

} // namespace plateau::test
