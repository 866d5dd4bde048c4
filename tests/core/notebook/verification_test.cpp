// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/checks.h"
#include "tests/core/notebook/fixture.h"

#include <QFile>

#include <random>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::Contains;
using ::testing::Field;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class VerificationTest : public NotebookTest
{
protected:
    /// What a reader finds after the change.
    std::vector<Finding> findingsAfter(const std::function<void(RawFile &)> &change)
    {
        {
            RawFile raw(file());
            raw.behindTheTriggers([&] { change(raw); });
        }
        return reopen(Access::ReadOnly)->verify().findings;
    }
    void expectNamed(const std::vector<Finding> &findings, const QString &place)
    {
        EXPECT_THAT(findings, Contains(Field(&Finding::place, place)));
    }
};

TEST_F(VerificationTest, UntouchedNotebookIsSoundAndCounted)
{
    const auto notebook = create();
    fill(*notebook);
    const Verification verification = notebook->verify();
    EXPECT_THAT(verification.findings, IsEmpty());
    EXPECT_EQ(verification.runsChecked, 3);
    EXPECT_EQ(verification.decisionsChecked, 3);
    EXPECT_EQ(verification.auditEntries, entriesOfANewOne() + 16);
    EXPECT_EQ(verification.auditHead, notebook->auditHead().hash);
}

TEST_F(VerificationTest, TheEndOfTheChainIsLookedAtAloneWhereThatIsAsked)
{
    int entries = 0;
    {
        const auto notebook = create();
        fill(*notebook);
        entries = notebook->auditHead().entries;
    }
    const auto lastEntriesWith = [&](int changedEntry, int looked) {
        {
            RawFile raw(file());
            raw.behindTheTriggers([&] {
                raw.execute(u"UPDATE audit SET person = person || 'x' WHERE id = %1"_s.arg(changedEntry));
            });
        }
        return lastChainFindings(Database(file(), Access::ReadOnly), looked);
    };
    EXPECT_THAT(lastChainFindings(Database(file(), Access::ReadOnly), 5), IsEmpty());
    EXPECT_THAT(lastChainFindings(Database(file(), Access::ReadOnly), 10 * entries), IsEmpty());
    EXPECT_THAT(lastEntriesWith(entries - 5, 5), IsEmpty()); // before what is looked at
    EXPECT_THAT(lastEntriesWith(entries - 4, 5), SizeIs(1));
    EXPECT_THAT(lastEntriesWith(entries, 10 * entries), SizeIs(3));
}

/// Another value of the same storage class; what was NULL becomes 1001 or a text.
QString changed(const QVariant &value, const QString &type, const QString &declared)
{
    if (type == u"null"_s)
        return declared == u"TEXT"_s ? u"'x'"_s : u"1001"_s;
    if (type == u"integer"_s)
        return QString::number(value.toLongLong() + 1000);
    if (type == u"real"_s)
        return QString::number(value.toDouble() * (1 + 1e-15) + 1e-300, 'g', 17);
    QString text = value.toString() + u'x';
    text.replace(u"'"_s, u"''"_s);
    return u'\'' + text + u'\'';
}

TEST_F(VerificationTest, EveryChangedColumnOfEveryTableIsNamed)
{
    int entries = 0;
    {
        const auto notebook = create();
        fill(*notebook);
        fillDerived(*notebook);
        fillBench(*notebook);
        fillReview(*notebook);
        entries = notebook->auditHead().entries;
    }
    const QByteArray original = bytesOf(file());
    std::vector<QVariantList> columns;
    {
        RawFile raw(file());
        columns = raw.rows(
            u"SELECT t.name, c.name, c.type FROM pragma_table_list t JOIN pragma_table_info(t.name) c "
            "WHERE t.schema = 'main' AND t.type = 'table' AND t.name NOT LIKE 'sqlite%' "
            "AND t.name NOT LIKE 'search%'"_s);
    }
    EXPECT_GE(columns.size(), 332U);
    for (const QVariantList &column : columns) {
        const QString table = column[0].toString();
        const QString name = column[1].toString();
        SCOPED_TRACE((table + u'.' + name).toStdString());
        write(file(), original);
        qint64 owner = 2; // the entry an audit_record belongs to
        const std::vector<Finding> findings = findingsAfter([&](RawFile &raw) {
            const QVariantList cell =
                raw.rows(u"SELECT %1, typeof(%1), max(id) FROM %2"_s.arg(name, table)).at(0);
            if (table == u"audit_record"_s)
                owner = raw.value(u"SELECT audit FROM audit_record ORDER BY id DESC LIMIT 1"_s).toLongLong();
            const QString last = cell[2].toString();
            const QString value =
                name == u"id"_s ? u"id + 1000"_s : changed(cell[0], cell[1].toString(), column[2].toString());
            raw.execute(u"UPDATE %1 SET %2 = %3 WHERE id = %4"_s.arg(table, name, value, last));
        });
        if (table == u"audit"_s)
            expectNamed(findings, u"audit entry %1"_s.arg(entries));
        else if (table == u"audit_record"_s && name == u"id"_s)
            continue; // no content: what an entry covers, and in which order, stays the same
        else if (table == u"audit_record"_s)
            expectNamed(findings, u"audit entry %1"_s.arg(owner));
        else
            EXPECT_TRUE(std::ranges::any_of(
                findings, [&](const Finding &finding) { return finding.place.startsWith(table + u' '); }));
    }
}

TEST_F(VerificationTest, DeletedRowIsNamed)
{
    makeFilledFile();
    expectNamed(findingsAfter([](RawFile &raw) { raw.execute(u"DELETE FROM reading WHERE id = 6"_s); }),
                u"reading 6"_s);
}

TEST_F(VerificationTest, AddedRowIsNamed)
{
    makeFilledFile();
    expectNamed(
        findingsAfter([](RawFile &raw) {
            raw.execute(
                u"INSERT INTO reading SELECT 500, 12, name, absorbance, points, typed, person, at_utc, "
                "at_offset_min, corrects, reason FROM reading WHERE id = 1"_s);
        }),
        u"reading 500"_s);
}

TEST_F(VerificationTest, RowsThatSwappedTheirContentAreNamed)
{
    makeFilledFile();
    const std::vector<Finding> findings = findingsAfter([](RawFile &raw) {
        raw.execute(u"UPDATE reading SET absorbance = 0.63 WHERE id = 3"_s);
        raw.execute(u"UPDATE reading SET absorbance = 0.12 WHERE id = 4"_s);
    });
    expectNamed(findings, u"reading 3"_s);
    expectNamed(findings, u"reading 4"_s);
}

TEST_F(VerificationTest, EntryTakenOffTheEndLeavesItsRecordsUncovered)
{
    makeFilledFile();
    const std::vector<Finding> findings = findingsAfter([](RawFile &raw) {
        raw.execute(u"DELETE FROM audit_record WHERE audit = (SELECT max(id) FROM audit)"_s);
        raw.execute(u"DELETE FROM audit WHERE id = (SELECT max(id) FROM audit)"_s);
    });
    expectNamed(findings, u"chart_omission 1"_s);
}

TEST_F(VerificationTest, EndTakenOffWithItsRecordsShowsInTheHead)
{
    // Inside the file nothing is left to notice it by; the head on a report is.
    AuditHead printed;
    {
        const auto notebook = create();
        fill(*notebook);
        printed = notebook->auditHead();
    }
    findingsAfter([](RawFile &raw) {
        raw.execute(u"DELETE FROM audit_record WHERE audit = (SELECT max(id) FROM audit)"_s);
        raw.execute(u"DELETE FROM audit WHERE id = (SELECT max(id) FROM audit)"_s);
        raw.execute(u"DELETE FROM chart_omission WHERE id = (SELECT max(id) FROM chart_omission)"_s);
    });
    const auto notebook = reopen();
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
    EXPECT_NE(notebook->auditHead().hash, printed.hash);
    EXPECT_EQ(notebook->auditHead().entries, printed.entries - 1);
}

TEST_F(VerificationTest, EntryTakenOutOfTheMiddleIsNamed)
{
    makeFilledFile();
    const std::vector<Finding> findings = findingsAfter([](RawFile &raw) {
        raw.execute(u"DELETE FROM audit_record WHERE audit = 5"_s);
        raw.execute(u"DELETE FROM audit WHERE id = 5"_s);
    });
    expectNamed(findings, u"audit entry 5"_s);
}

TEST_F(VerificationTest, ForeignObjectsAndMissingTriggersAreNamed)
{
    makeFilledFile();
    {
        RawFile raw(file());
        raw.execute(u"CREATE VIEW theirs AS SELECT * FROM run"_s);
        raw.execute(u"DROP TRIGGER reading_no_delete"_s);
        raw.execute(u"DROP TRIGGER audit_no_update"_s);
        raw.execute(u"CREATE TRIGGER audit_no_update BEFORE UPDATE ON audit BEGIN SELECT 1; END"_s);
    }
    const std::vector<Finding> findings = reopen(Access::ReadOnly)->verify().findings;
    EXPECT_THAT(findings, SizeIs(3));
    expectNamed(findings, u"view theirs"_s);
    expectNamed(findings, u"trigger reading_no_delete"_s);
    expectNamed(findings, u"trigger audit_no_update"_s);
}

TEST_F(VerificationTest, EvaluationThatComesOutAnotherIsNamedWithTheVersions)
{
    m_version = u"0.0.9"_s;
    {
        const auto notebook = create();
        const RunId id = notebook->addRun(plainRun(), risingMethod(), u"Ines"_s);
        notebook->decide(id, DecisionKind::Accepted, u"Tomas"_s, {});
    }
    m_version = u"0.1.0"_s;
    EXPECT_THAT(reopen()->verify().findings, IsEmpty()); // another version that agrees is no finding
    const std::vector<Finding> findings = findingsAfter([](RawFile &raw) {
        raw.execute(
            u"UPDATE decision SET evaluation = replace(evaluation, '\"acceptable\": true', '\"acceptable\": false')"_s);
    });
    expectNamed(findings, u"decision 1"_s);
    const auto finding = std::ranges::find(findings, u"decision 1 on run 1"_s, &Finding::place);
    ASSERT_NE(finding, findings.end());
    EXPECT_TRUE(finding->message.contains("/acceptable was false, is true"_L1))
        << finding->message.toStdString();
    EXPECT_TRUE(finding->message.contains("0.0.9"_L1) && finding->message.contains("0.1.0"_L1))
        << finding->message.toStdString();
}

TEST_F(VerificationTest, SameEvaluationInOtherWordsIsNoFinding)
{
    {
        const auto notebook = create();
        const RunId id = notebook->addRun(plainRun(), risingMethod(), u"Ines"_s);
        notebook->decide(id, DecisionKind::Accepted, u"Tomas"_s, {});
    }
    const auto decisionFindings = [&](const QString &from, const QString &to) {
        std::vector<Finding> findings = findingsAfter([&](RawFile &raw) {
            raw.execute(u"UPDATE decision SET evaluation = replace(evaluation, '%1', '%2')"_s.arg(from, to));
            ASSERT_TRUE(raw.value(u"SELECT evaluation FROM decision"_s).toString().contains(to));
        });
        // The row itself was changed, which its audit entry says.
        std::erase_if(findings,
                      [](const Finding &finding) { return !finding.place.startsWith(u"decision 1 on"_s); });
        return findings;
    };
    EXPECT_THAT(decisionFindings(u"Absorbance rose, as it should."_s, u"It rose."_s), IsEmpty());
    const std::vector<Finding> verdict =
        decisionFindings(u"\"verdict\": \"reportable\""_s, u"\"verdict\": \"repeat\""_s);
    ASSERT_THAT(verdict, SizeIs(1));
    EXPECT_TRUE(verdict[0].message.contains(u"/results/0/verdict was \"repeat\", is \"reportable\""_s))
        << verdict[0].message.toStdString();
}

TEST_F(VerificationTest, ChangedReadingOfADecidedRunShowsInItsDecision)
{
    makeFilledFile();
    const std::vector<Finding> findings = findingsAfter(
        [](RawFile &raw) { raw.execute(u"UPDATE reading SET absorbance = 0.64 WHERE id = 7"_s); });
    expectNamed(findings, u"reading 7"_s);           // the correction of run 1 ...
    expectNamed(findings, u"decision 2 on run 1"_s); // ... which the second decision was made on,
    for (const Finding &finding : findings)          // but not the first
        EXPECT_NE(finding.place, u"decision 1 on run 1"_s);
}

TEST_F(VerificationTest, EarlierDecisionIsCheckedWithTheReadingsOfItsTime)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(plainRun(), risingMethod(), u"Ines"_s);
    notebook->decide(id, DecisionKind::Accepted, u"Tomas"_s, {});
    notebook->reopen(id, u"Tomas"_s, u"a digit"_s);
    notebook->correctReading(id, 1, u"A2"_s, 0.9, {}, u"Ines"_s, u"a digit"_s);
    const Verification verification = notebook->verify();
    EXPECT_THAT(verification.findings, IsEmpty());
    EXPECT_EQ(verification.decisionsChecked, 1);
}

/// Rows of all tables, as any program reads them.
std::vector<std::vector<QVariantList>> contentOf(const QString &path)
{
    RawFile raw(path);
    std::vector<std::vector<QVariantList>> content;
    for (const char *table :
         {"method", "run", "uncertainty", "standard", "sample", "dilution", "tube", "lot_use", "reading",
          "reading_point", "decision", "reopening", "method_act", "audit", "audit_record"})
        content.push_back(
            raw.rows(u"SELECT * FROM %1 NOT INDEXED ORDER BY id"_s.arg(QString::fromLatin1(table))));
    return content;
}

TEST_F(VerificationTest, FlippedBitThatChangesAStoredValueIsAlwaysNoticed)
{
    makeFilledFile();
    const QByteArray original = bytesOf(file());
    const auto content = contentOf(file());
    std::mt19937 random(20260302);
    std::uniform_int_distribution<qsizetype> place(100, original.size() - 1);
    std::uniform_int_distribution<int> bit(0, 7);
    int noticed = 0;
    int silent = 0;
    for (int round = 0; round < 150; ++round) {
        QByteArray flipped = original;
        const qsizetype at = place(random);
        flipped[at] = char(flipped[at] ^ (1 << bit(random)));
        write(file(), flipped);
        bool sound = false;
        try {
            sound = reopen(Access::ReadOnly)->verify().sound();
        } catch (const Failure &failure) {
            EXPECT_FALSE(failure.sentence().isEmpty());
        }
        if (!sound) {
            ++noticed;
            continue;
        }
        ++silent;
        EXPECT_EQ(contentOf(file()), content) << "byte " << at;
    }
    EXPECT_GT(noticed, 20);
    EXPECT_GT(silent, 0); // bits of free space
}

} // namespace plateau::test
