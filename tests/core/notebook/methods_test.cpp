// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/methodcatalogue.h"
#include "tests/core/notebook/fixture.h"

#include <algorithm>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

class MethodsTest : public NotebookTest
{
protected:
    const QString m_person = u"Ines Kaddour"_s;

    void SetUp() override { m_notebook = create(); }
    void TearDown() override { EXPECT_THAT(m_notebook->verify().findings, IsEmpty()); }

    MethodOutcome save(const assay::Method &method, const std::vector<assay::Method> &shipped = {})
    {
        return m_notebook->saveMethod(method, m_person, {}, shipped);
    }
    MethodOutcome import(const assay::Method &method, const std::vector<assay::Method> &shipped = {})
    {
        return m_notebook->importMethod(method, u"/home/ines/rising.json"_s, m_person, shipped);
    }
    void retire(const assay::Method &method) { m_notebook->retireMethod(method, m_person, u"old"_s); }
    std::vector<StoredMethod> catalogue(const std::vector<assay::Method> &shipped = {}) const
    {
        return catalogueOf(m_notebook->methods(), shipped);
    }
    /// "rising 2 saved" and so on.
    QStringList offered(const std::vector<assay::Method> &shipped = {}) const
    {
        QStringList lines;
        for (const StoredMethod &method : offeredOf(catalogue(shipped))) {
            const char *const origins[] = {"shipped", "saved", "imported", "on record"};
            lines << u"%1 %2 %3"_s.arg(method.method.id)
                         .arg(method.method.version)
                         .arg(QLatin1StringView(origins[int(method.origin)]));
        }
        return lines;
    }
    void expectRefused(const std::function<void()> &action)
    {
        const AuditHead before = m_notebook->auditHead();
        const Failure failure = failureOf(action);
        EXPECT_EQ(failure.kind(), Kind::Refused) << failure.what();
        expectOneSentence(failure);
        EXPECT_EQ(m_notebook->auditHead().entries, before.entries);
    }

    static assay::Method version(assay::Method method, int number)
    {
        method.version = number;
        return method;
    }
    static assay::Method withVolume(double volume_mL)
    {
        assay::Method method = risingMethod();
        method.components[0].volume_mL = volume_mL;
        return method;
    }

    std::unique_ptr<Notebook> m_notebook;
};

TEST_F(MethodsTest, FirstSavingMakesVersionOne)
{
    const MethodOutcome outcome =
        m_notebook->saveMethod(version(risingMethod(), 7), m_person, u"our kit"_s, {});
    EXPECT_TRUE(outcome.stored);
    EXPECT_FALSE(outcome.needsAttention);
    EXPECT_EQ(outcome.method, risingMethod());
    EXPECT_EQ(outcome.sentence, u"Rising, version 1, is saved."_s);
    const std::vector<StoredMethod> methods = m_notebook->methods();
    ASSERT_THAT(methods, SizeIs(1));
    EXPECT_EQ(methods[0].method, risingMethod());
    EXPECT_EQ(methods[0].origin, MethodOrigin::Saved);
    EXPECT_FALSE(methods[0].retired);
    EXPECT_EQ(methods[0].runs, 0);
    ASSERT_THAT(methods[0].acts, SizeIs(1));
    ASSERT_EQ(methods[0].arrival(), &methods[0].acts[0]);
    EXPECT_EQ(methods[0].acts[0].kind, MethodActKind::Saved);
    EXPECT_EQ(methods[0].acts[0].person, m_person);
    EXPECT_EQ(methods[0].acts[0].note, u"our kit"_s);
    EXPECT_EQ(methods[0].acts[0].at, m_now);
    EXPECT_EQ(methods[0].acts[0].at.offsetFromUtc(), 3600);
    EXPECT_EQ(methods[0].mark(), methods[0].contentHash.left(8));
}

TEST_F(MethodsTest, SavingMakesTheNextVersionAndRunsKeepTheirs)
{
    save(risingMethod());
    const RunId run = m_notebook->addRun(plainRun(), risingMethod(), m_person);
    const MethodOutcome outcome = save(withVolume(1.5));
    EXPECT_EQ(outcome.method.version, 2);
    EXPECT_EQ(m_notebook->load(run).method, risingMethod());
    const std::vector<StoredMethod> methods = m_notebook->methods();
    ASSERT_THAT(methods, SizeIs(2));
    EXPECT_EQ(methods[0].runs, 1);
    EXPECT_EQ(methods[1].runs, 0);
    EXPECT_EQ(methods[1].method, version(withVolume(1.5), 2));
    EXPECT_EQ(offered(), QStringList{u"rising 2 saved"_s});
}

TEST_F(MethodsTest, NextVersionIsAboveTheShippedAndTheRunsOnes)
{
    EXPECT_EQ(save(withVolume(1.5), {version(risingMethod(), 4)}).method.version, 5);
    m_notebook->addRun(plainRun(), version(risingMethod(), 9), m_person);
    EXPECT_EQ(save(withVolume(1.6)).method.version, 10);
    assay::Method other = risingMethod();
    other.id = u"other"_s;
    EXPECT_EQ(save(other).method.version, 1);
}

TEST_F(MethodsTest, SavingTheNewestOnceMoreStoresNothingAndSaysSo)
{
    save(risingMethod());
    save(withVolume(1.5));
    const AuditHead before = m_notebook->auditHead();
    const MethodOutcome outcome = save(version(withVolume(1.5), 1));
    EXPECT_FALSE(outcome.stored);
    EXPECT_FALSE(outcome.needsAttention);
    EXPECT_EQ(outcome.method.version, 2);
    EXPECT_EQ(outcome.sentence, u"Nothing was stored: Rising, version 2, has this content already."_s);
    EXPECT_EQ(m_notebook->auditHead().hash, before.hash);
    // An older content coming back is a version of its own.
    EXPECT_EQ(save(risingMethod()).method.version, 3);
}

TEST_F(MethodsTest, SavingWhatShippedStoresNothing)
{
    const MethodOutcome outcome = save(risingMethod(), {risingMethod()});
    EXPECT_FALSE(outcome.stored);
    EXPECT_THAT(m_notebook->methods(), IsEmpty());
}

TEST_F(MethodsTest, SavingARetiredNewestSaysThatItIsRetired)
{
    save(risingMethod());
    retire(risingMethod());
    const MethodOutcome outcome = save(risingMethod());
    EXPECT_FALSE(outcome.stored);
    EXPECT_TRUE(outcome.needsAttention);
    EXPECT_EQ(outcome.sentence,
              u"Nothing was stored: Rising, version 1, has this content already and is retired; "
              "reinstate it to use it."_s);
    EXPECT_EQ(save(withVolume(1.5)).method.version, 2);
    EXPECT_EQ(offered(), QStringList{u"rising 2 saved"_s});
}

TEST_F(MethodsTest, UnsoundMethodIsNotStored)
{
    assay::Method method = risingMethod();
    method.diluent = u"nothing"_s;
    expectRefused([&] { save(method); });
    expectRefused([&] { import(method); });
    expectRefused([&] { retire(method); });
    expectRefused([&] { m_notebook->saveMethod(risingMethod(), u" "_s, {}, {}); });
    expectRefused([&] { m_notebook->saveMethod(risingMethod(), m_person, u" \t"_s, {}); });
    EXPECT_THAT(m_notebook->methods(), IsEmpty());
}

TEST_F(MethodsTest, ImportKeepsTheVersionAndTheNameOfTheFile)
{
    const MethodOutcome outcome = import(version(risingMethod(), 3));
    EXPECT_TRUE(outcome.stored);
    EXPECT_FALSE(outcome.needsAttention);
    EXPECT_EQ(outcome.sentence, u"Rising, version 3, is stored."_s);
    const std::vector<StoredMethod> methods = m_notebook->methods();
    ASSERT_THAT(methods, SizeIs(1));
    EXPECT_EQ(methods[0].origin, MethodOrigin::Imported);
    EXPECT_EQ(methods[0].acts[0].fileName, u"rising.json"_s);
    EXPECT_EQ(originText(methods[0]), u"imported from rising.json on 2026-03-02"_s);
    EXPECT_EQ(offered(), QStringList{u"rising 3 imported"_s});
}

TEST_F(MethodsTest, ImportOfWhatIsThereStoresNothing)
{
    save(risingMethod());
    EXPECT_EQ(import(risingMethod()).sentence,
              u"Nothing was stored: Rising, version 1, has this content already."_s);
    EXPECT_FALSE(import(fallingMethod(), {fallingMethod()}).stored);
    EXPECT_THAT(m_notebook->methods(), SizeIs(1));
    // What only came with a run joins the laboratory's methods by being imported.
    m_notebook->addRun(plainRun(), version(risingMethod(), 2), m_person);
    EXPECT_TRUE(import(version(risingMethod(), 2)).stored);
    EXPECT_EQ(m_notebook->methods().back().origin, MethodOrigin::Imported);
    EXPECT_EQ(m_notebook->methods().back().runs, 1);
}

TEST_F(MethodsTest, SameVersionWithOtherContentIsKeptApartAndToldApart)
{
    save(risingMethod());
    const MethodOutcome outcome = import(withVolume(2));
    EXPECT_TRUE(outcome.stored);
    EXPECT_TRUE(outcome.needsAttention);
    EXPECT_EQ(outcome.sentence,
              u"Rising, version 1, is stored and kept apart from the one of that id and version that is "
              "saved by Ines Kaddour on 2026-03-02: they differ in Volume of Buffer."_s);
    const std::vector<StoredMethod> all = catalogue();
    ASSERT_THAT(all, SizeIs(2));
    EXPECT_TRUE(isKeptApart(all, all[0]));
    EXPECT_NE(versionText(all, all[0]), versionText(all, all[1]));
    EXPECT_EQ(versionText(all, all[1]),
              u"version 1, imported from rising.json on 2026-03-02, "_s + all[1].mark());
    EXPECT_EQ(offered(), (QStringList{u"rising 1 saved"_s, u"rising 1 imported"_s}));
    const QString third = import(withVolume(3)).sentence;
    EXPECT_TRUE(third.contains(u"kept apart from 2 others"_s)) << third.toStdString();
}

TEST_F(MethodsTest, ImportOfAShippedVersionWithOtherContentIsKeptApart)
{
    const MethodOutcome outcome = import(withVolume(2), {risingMethod()});
    EXPECT_TRUE(outcome.needsAttention);
    EXPECT_TRUE(outcome.sentence.contains(u"shipped with the program"_s)) << outcome.sentence.toStdString();
    EXPECT_EQ(offered({risingMethod()}), (QStringList{u"rising 1 imported"_s, u"rising 1 shipped"_s}));
}

TEST_F(MethodsTest, OlderImportIsKeptButNotOffered)
{
    save(risingMethod());
    save(withVolume(1.5));
    const MethodOutcome outcome = import(version(withVolume(3), 1));
    EXPECT_TRUE(outcome.stored);
    EXPECT_TRUE(outcome.needsAttention);
    EXPECT_EQ(offered(), QStringList{u"rising 2 saved"_s});
}

TEST_F(MethodsTest, NameOfAFileThatWouldForgeALineIsKeptOnOneLine)
{
    m_notebook->importMethod(risingMethod(), u"/tmp/a\nb.json"_s, m_person, {});
    const QString name = m_notebook->methods()[0].acts[0].fileName;
    EXPECT_FALSE(name.contains(u'\n'));
    EXPECT_TRUE(name.contains(u"b.json"_s)) << name.toStdString();
}

TEST_F(MethodsTest, RetiredMethodIsNotOfferedAndItsRunsKeepIt)
{
    save(risingMethod());
    const RunId run = m_notebook->addRun(plainRun(), risingMethod(), m_person);
    m_notebook->retireMethod(risingMethod(), u"Tomas Brandl"_s, u"the kit is discontinued"_s);
    EXPECT_THAT(offered(), IsEmpty());
    EXPECT_EQ(m_notebook->load(run).method, risingMethod());
    const StoredMethod retired = m_notebook->methods()[0];
    EXPECT_TRUE(retired.retired);
    EXPECT_EQ(retired.acts.back().kind, MethodActKind::Retired);
    EXPECT_EQ(retired.acts.back().person, u"Tomas Brandl"_s);
    EXPECT_EQ(retired.acts.back().note, u"the kit is discontinued"_s);
    m_notebook->reinstateMethod(risingMethod(), m_person, u"a new supplier"_s);
    EXPECT_FALSE(m_notebook->methods()[0].retired);
    EXPECT_THAT(m_notebook->methods()[0].acts, SizeIs(3));
    EXPECT_EQ(offered(), QStringList{u"rising 1 saved"_s});
}

TEST_F(MethodsTest, OlderVersionDoesNotComeBackWhenTheNewestIsRetired)
{
    save(risingMethod());
    save(withVolume(1.5));
    retire(version(withVolume(1.5), 2));
    EXPECT_THAT(offered(), IsEmpty());
}

TEST_F(MethodsTest, RetiringAndReinstatingNeedAReasonAndAChange)
{
    save(risingMethod());
    expectRefused([&] { m_notebook->retireMethod(risingMethod(), m_person, u"  "_s); });
    expectRefused([&] { m_notebook->retireMethod(risingMethod(), u""_s, u"old"_s); });
    expectRefused([&] { m_notebook->reinstateMethod(risingMethod(), m_person, u"why"_s); });
    expectRefused([&] { m_notebook->reinstateMethod(fallingMethod(), m_person, u"why"_s); });
    retire(risingMethod());
    expectRefused([&] { retire(risingMethod()); });
    expectRefused([&] { m_notebook->reinstateMethod(risingMethod(), m_person, u"\n"_s); });
}

TEST_F(MethodsTest, ShippedMethodCanBeRetiredAndReinstated)
{
    const std::vector<assay::Method> shipped{risingMethod(), fallingMethod()};
    EXPECT_EQ(offered(shipped), (QStringList{u"falling 1 shipped"_s, u"rising 1 shipped"_s}));
    retire(risingMethod());
    EXPECT_EQ(offered(shipped), QStringList{u"falling 1 shipped"_s});
    const std::vector<StoredMethod> all = catalogue(shipped);
    ASSERT_THAT(all, SizeIs(2));
    EXPECT_TRUE(all[1].retired);
    EXPECT_EQ(all[1].origin, MethodOrigin::Shipped);
    EXPECT_EQ(all[0].id.value, 0);
    EXPECT_NE(all[1].id.value, 0);
    m_notebook->reinstateMethod(risingMethod(), m_person, u"why not"_s);
    EXPECT_EQ(offered(shipped), (QStringList{u"falling 1 shipped"_s, u"rising 1 shipped"_s}));
    // A newer one that ships later is a method of its own.
    EXPECT_EQ(offered({version(risingMethod(), 2)}), QStringList{u"rising 2 shipped"_s});
}

TEST_F(MethodsTest, ShippedOneNeverTakesThePlaceOfTheLaboratorysUnasked)
{
    save(withVolume(1.5), {risingMethod()});
    EXPECT_EQ(offered({risingMethod()}), QStringList{u"rising 2 saved"_s});
    EXPECT_EQ(offered({version(withVolume(9), 2)}),
              (QStringList{u"rising 2 saved"_s, u"rising 2 shipped"_s}));
    EXPECT_EQ(offered({version(risingMethod(), 3)}),
              (QStringList{u"rising 3 shipped"_s, u"rising 2 saved"_s}));
}

TEST_F(MethodsTest, MethodThatOnlyCameWithARunIsListedButNotOffered)
{
    m_notebook->addRun(plainRun(), risingMethod(), m_person);
    const std::vector<StoredMethod> all = catalogue();
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_EQ(all[0].origin, MethodOrigin::OnRecord);
    EXPECT_EQ(all[0].arrival(), nullptr);
    EXPECT_EQ(originText(all[0]), u"from its runs"_s);
    EXPECT_THAT(offered(), IsEmpty());
    EXPECT_EQ(catalogue({risingMethod()})[0].origin, MethodOrigin::Shipped);
    EXPECT_EQ(catalogue({risingMethod()})[0].runs, 1);
}

TEST_F(MethodsTest, SavingWhatCameWithARunKeepsItsVersion)
{
    m_notebook->addRun(plainRun(), version(risingMethod(), 3), m_person);
    const MethodOutcome outcome = save(risingMethod());
    EXPECT_TRUE(outcome.stored);
    EXPECT_EQ(outcome.method.version, 3);
    ASSERT_THAT(m_notebook->methods(), SizeIs(1));
    EXPECT_EQ(m_notebook->methods()[0].origin, MethodOrigin::Saved);
    EXPECT_FALSE(save(risingMethod()).stored);
}

TEST_F(MethodsTest, TheSameAsTheNewestIsKnownBeforeItIsSaved)
{
    EXPECT_EQ(sameAsNewest({}, risingMethod()), nullptr);
    save(risingMethod());
    const std::vector<StoredMethod> one = catalogue();
    ASSERT_NE(sameAsNewest(one, version(risingMethod(), 7)), nullptr) << "whatever version it states";
    EXPECT_EQ(sameAsNewest(one, withVolume(2)), nullptr);
    save(withVolume(2));
    const std::vector<StoredMethod> two = catalogue();
    EXPECT_EQ(sameAsNewest(two, risingMethod()), nullptr) << "it would bring the first version back";
    ASSERT_NE(sameAsNewest(two, withVolume(2)), nullptr);
    EXPECT_EQ(sameAsNewest(two, withVolume(2))->method.version, 2);
    EXPECT_EQ(newestVersion(two, u"rising"_s), 2);
    EXPECT_EQ(newestVersion(two, u"absent"_s), 0);
}

TEST_F(MethodsTest, AnIdMeansTheOneMethodInUseOrSaysWhyNot)
{
    const auto meant = [this](const QString &id) { return lookupIn(catalogue({fallingMethod()}))(id); };
    const QString falling = fallingMethod().id;
    EXPECT_EQ(meant(falling).method, fallingMethod());
    EXPECT_EQ(meant(u"absent"_s).method, std::nullopt);
    EXPECT_TRUE(
        meant(u"absent"_s)
            .obstacle.startsWith(u"there is no method \"absent\", neither shipped nor in the notebook;"_s));
    save(risingMethod());
    save(withVolume(2));
    EXPECT_EQ(meant(u"rising"_s).method, version(withVolume(2), 2)) << "the newest";
    import(version(withVolume(3), 2));
    const exchange::NamedMethod torn = meant(u"rising"_s);
    EXPECT_FALSE(torn.method);
    EXPECT_TRUE(torn.obstacle.contains(
        u"2 methods with the id \"rising\" are in use: version 2, saved by Ines Kaddour on "_s))
        << torn.obstacle.toStdString();
    EXPECT_TRUE(torn.obstacle.contains(u"; version 2, imported from rising.json on "_s));
    retire(version(withVolume(2), 2));
    EXPECT_EQ(meant(u"rising"_s).method, version(withVolume(3), 2));
    retire(version(withVolume(3), 2));
    EXPECT_TRUE(meant(u"rising"_s).obstacle.startsWith(u"the method \"rising\" is not in use;"_s));
}

TEST_F(MethodsTest, AMethodReadFromAFileCountsBeforeItIsStored)
{
    std::vector<StoredMethod> known = catalogue();
    addImported(known, risingMethod(), u"/home/ines/rising.json"_s);
    EXPECT_EQ(lookupIn(known)(u"rising"_s).method, risingMethod());
    addImported(known, risingMethod(), u"again.json"_s);
    EXPECT_THAT(known, SizeIs(1));
    addImported(known, withVolume(2), u"other.json"_s);
    EXPECT_TRUE(lookupIn(known)(u"rising"_s).obstacle.contains(u"imported from other.json on "_s));
    EXPECT_THAT(m_notebook->methods(), IsEmpty());
}

TEST_F(MethodsTest, EveryActHasItsAuditEntry)
{
    fillMethods(*m_notebook);
    m_notebook.reset();
    const auto entries = RawFile(file()).rows(
        u"SELECT action, person, details, (SELECT group_concat(record_table, ' ') FROM "
        "audit_record WHERE audit = audit.id) FROM audit WHERE action LIKE 'method%' ORDER BY id"_s);
    ASSERT_THAT(entries, SizeIs(4));
    const QVariantList first{u"methodSaved"_s, m_person, u"Rising, version 1"_s, u"method method_act"_s};
    EXPECT_EQ(entries[0], first);
    EXPECT_EQ(entries[1][0].toString(), u"methodImported"_s);
    EXPECT_EQ(entries[2][0].toString(), u"methodRetired"_s);
    EXPECT_EQ(entries[2][3].toString(), u"method_act"_s);
    EXPECT_EQ(entries[3][0].toString(), u"methodReinstated"_s);
    m_notebook = reopen();
}

TEST_F(MethodsTest, ReadOnlyNotebookTakesNoMethod)
{
    m_notebook.reset();
    m_notebook = reopen(Access::ReadOnly);
    EXPECT_EQ(failureOf([&] { save(risingMethod()); }).kind(), Kind::Storage);
    EXPECT_THAT(m_notebook->methods(), IsEmpty());
}

} // namespace plateau::test
