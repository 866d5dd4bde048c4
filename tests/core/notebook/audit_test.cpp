// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

#include <QCryptographicHash>

#include <cstring>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;

namespace {

/// The recipe written down once more, so that the chain can be walked without the program.
class Recipe
{
public:
    void field(const QByteArray &bytes)
    {
        for (int shift = 56; shift >= 0; shift -= 8)
            m_bytes.append(char((quint64(bytes.size()) >> shift) & 0xff));
        m_bytes.append(bytes);
    }
    void field(const QVariant &value) { field(value.toString().toUtf8()); }
    QString sha256() const
    {
        return QString::fromLatin1(QCryptographicHash::hash(m_bytes, QCryptographicHash::Sha256).toHex());
    }

private:
    QByteArray m_bytes;
};

QByteArray bits(double number)
{
    quint64 pattern = 0;
    std::memcpy(&pattern, &number, sizeof pattern);
    QByteArray bytes;
    for (int shift = 56; shift >= 0; shift -= 8)
        bytes.append(char((pattern >> shift) & 0xff));
    return bytes;
}

QString recordHash(RawFile &raw, const QString &table, qint64 id)
{
    Recipe recipe;
    recipe.field(QByteArray("plateau-record/1"));
    recipe.field(table.toUtf8());
    for (const QVariantList &column :
         raw.rows(u"SELECT name FROM pragma_table_info('%1') ORDER BY cid"_s.arg(table))) {
        const QString name = column[0].toString();
        const QVariantList cell =
            raw.rows(u"SELECT typeof(%1), %1 FROM %2 WHERE id = %3"_s.arg(name, table).arg(id)).at(0);
        const QString type = cell[0].toString();
        recipe.field(name.toUtf8());
        recipe.field(type.toUtf8());
        if (type == u"real"_s)
            recipe.field(bits(cell[1].toDouble()));
        else
            recipe.field(cell[1]);
    }
    return recipe.sha256();
}

} // namespace

class AuditTest : public NotebookTest
{
};

TEST_F(AuditTest, EveryActAddsExactlyOneEntry)
{
    const auto notebook = create();
    EXPECT_EQ(notebook->auditHead().entries, entriesOfANewOne());
    fill(*notebook);
    EXPECT_EQ(notebook->auditHead().entries, entriesOfANewOne() + 16);
    fillBench(*notebook);
    constexpr int opened = 1; // by the first tick, which says so in an entry of its own
    EXPECT_EQ(notebook->auditHead().entries, entriesOfANewOne() + 16 + 43 + opened);
    fillReview(*notebook);
    EXPECT_EQ(notebook->auditHead().entries, entriesOfANewOne() + 16 + 43 + opened + 13);
}

TEST_F(AuditTest, RefusedActAddsNone)
{
    const auto notebook = create();
    fill(*notebook);
    const AuditHead before = notebook->auditHead();
    failureOf([&] { notebook->addReading({1}, 0, u"A1"_s, 0.1, {}, u"Ines"_s); });
    failureOf([&] { notebook->decide({3}, DecisionKind::Rejected, u"Ines"_s, {}); });
    EXPECT_EQ(notebook->auditHead().entries, before.entries);
    EXPECT_EQ(notebook->auditHead().hash, before.hash);
}

TEST_F(AuditTest, ChainFollowsTheWrittenRecipe)
{
    makeFilledFile();
    RawFile raw(file());
    QString previous = QString(64, u'0');
    const auto entries =
        raw.rows(u"SELECT previous_hash, id, at_utc, at_offset_min, person, account, host, "
                 "program_version, schema_version, action, run, details, hash FROM audit ORDER BY id"_s);
    for (const QVariantList &entry : entries) {
        EXPECT_EQ(entry[0].toString(), previous);
        Recipe recipe;
        recipe.field(QByteArray("plateau-audit/1"));
        for (int column = 0; column < 12; ++column)
            recipe.field(entry[column]);
        const auto records =
            raw.rows(u"SELECT record_table, record_id, content_hash FROM audit_record WHERE audit = %1 "
                     "ORDER BY position"_s.arg(entry[1].toLongLong()));
        recipe.field(QByteArray::number(qlonglong(records.size())));
        for (const QVariantList &record : records) {
            for (const QVariant &field : record)
                recipe.field(field);
            EXPECT_EQ(record[2].toString(), recordHash(raw, record[0].toString(), record[1].toLongLong()));
        }
        EXPECT_EQ(entry[12].toString(), recipe.sha256());
        previous = entry[12].toString();
    }
    EXPECT_EQ(previous, reopen()->auditHead().hash);
}

TEST_F(AuditTest, TwoNotebooksNeverShareAHead)
{
    m_now = QDateTime(QDate(2026, 3, 2), QTime(9, 10), Qt::OffsetFromUTC, 3600);
    const auto one = create();
    m_now = QDateTime(QDate(2026, 3, 2), QTime(9, 10), Qt::OffsetFromUTC, 3600);
    const auto two = Notebook::create(file(u"two.plateau"_s), surroundings());
    EXPECT_NE(one->auditHead().hash, two->auditHead().hash);
}

TEST_F(AuditTest, AccountAndHostStandBesideTheChosenPerson)
{
    const auto notebook = create();
    notebook->addRun(plainRun(), risingMethod(), u"Ines Kaddour"_s);
    const AuditEntry entry = notebook->history({1}).at(0);
    EXPECT_EQ(entry.person, u"Ines Kaddour"_s);
    EXPECT_EQ(entry.account, u"ines"_s);
    EXPECT_EQ(entry.host, u"bench-2"_s);
    const Surroundings real = Surroundings::ofThisProgram();
    EXPECT_FALSE(real.account.isEmpty());
    EXPECT_FALSE(real.host.isEmpty());
    EXPECT_EQ(real.programVersion.count(u'.'), 2);
    EXPECT_TRUE(real.now().isValid());
}

} // namespace plateau::test
