// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/passphrase.h"
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

class PersonsTest : public OpenNotebookTest
{
protected:
    Persons &persons() { return m_book->persons(); }
    PersonId idOf(const Proof &proof) { return persons().find(proof.name).value().id; }
    /// One more wrong passphrase, refused in these words.
    void expectWrong(const Proof &proof, QLatin1StringView words)
    {
        const Failure failure = failureOf([&] { persons().check({proof.name, u"not at all mine"_s}); });
        EXPECT_EQ(failure.kind(), Kind::Refused);
        EXPECT_TRUE(failure.sentence().contains(words)) << failure.what();
        expectOneSentence(failure);
    }
};

TEST_F(PersonsTest, ThereAreNoneUntilTheFirstIsAddedAsHead)
{
    EXPECT_FALSE(persons().areSetUp());
    EXPECT_FALSE(persons().find(theHead.name));
    const PersonId id = persons().addFirst(theHead.name, theHead.passphrase);
    EXPECT_TRUE(persons().areSetUp());
    const std::vector<Person> all = persons().all();
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_EQ(all[0].id, id);
    EXPECT_EQ(all[0].name, theHead.name);
    EXPECT_EQ(all[0].role, PersonRole::Head);
    EXPECT_FALSE(all[0].retired);
    EXPECT_EQ(all[0].addedAt, m_now);
    expectRefused([&] { persons().addFirst(u"Somebody"_s, u"quite long enough"_s); }, "set up already"_L1);
}

TEST_F(PersonsTest, OnlyAHeadKeepsTheList)
{
    fillPersons(*m_book);
    EXPECT_EQ(persons().find(u" tomas  BRANDL "_s)->role, PersonRole::Reviewer);
    EXPECT_EQ(persons().find(theAnalyst.name)->role, PersonRole::Analyst);
    for (const Proof &other : {theReviewer, theAnalyst}) {
        expectRefused([&] { persons().add(u"New"_s, PersonRole::Head, u"long enough"_s, other); },
                      "only a head"_L1);
        expectRefused([&] { persons().change(idOf(other), other.name, PersonRole::Head, other); },
                      "only a head"_L1);
        expectRefused([&] { persons().retire(idOf(theAnalyst), other, u"why"_s); }, "only a head"_L1);
        expectRefused([&] { persons().reinstate(idOf(theAnalyst), other, u"why"_s); }, "only a head"_L1);
    }
    EXPECT_THAT(persons().all(), SizeIs(3));
}

TEST_F(PersonsTest, ANameIsUsedOnceAlsoAfterItWasChanged)
{
    fillPersons(*m_book);
    const auto add = [&](const QString &name) {
        persons().add(name, PersonRole::Analyst, u"long enough"_s, theHead);
    };
    expectRefused([&] { add(u"TOMAS brandl"_s); }, "somebody has or had the name"_L1);
    expectRefused([&] { add(u" "_s); }, "no person is named"_L1);
    expectRefused([&] { add(u"a\nb"_s); }, "cannot be used"_L1);
    persons().change(idOf(theReviewer), u"Tomas Weber"_s, PersonRole::Reviewer, theHead);
    EXPECT_FALSE(persons().find(theReviewer.name));
    EXPECT_EQ(persons().check({u"Tomas Weber"_s, theReviewer.passphrase}).name, u"Tomas Weber"_s);
    expectRefused([&] { add(theReviewer.name); }, "somebody has or had the name"_L1);
    expectRefused([&] { persons().change(idOf(theAnalyst), u"tomas weber"_s, PersonRole::Analyst, theHead); },
                  "somebody has or had the name"_L1);
    persons().change(persons().find(u"Tomas Weber"_s)->id, theReviewer.name, PersonRole::Reviewer, theHead);
    expectRefused(
        [&] { persons().change(idOf(theReviewer), theReviewer.name, PersonRole::Reviewer, theHead); },
        "already"_L1);
    expectRefused([&] { persons().change({77}, u"Nobody"_s, PersonRole::Reviewer, theHead); },
                  "no person number 77"_L1);
}

TEST_F(PersonsTest, TheLastHeadStaysHead)
{
    fillPersons(*m_book);
    const PersonId first = idOf(theHead);
    expectRefused([&] { persons().change(first, theHead.name, PersonRole::Reviewer, theHead); },
                  "no other one"_L1);
    expectRefused([&] { persons().retire(first, theHead, u"leaves"_s); }, "no other head"_L1);
    persons().change(idOf(theReviewer), theReviewer.name, PersonRole::Head, theHead);
    persons().retire(first, theReviewer, u"leaves"_s);
    EXPECT_TRUE(persons().find(theHead.name)->retired);
    expectRefused([&] { persons().retire(idOf(theReviewer), theReviewer, u"leaves too"_s); },
                  "no other head"_L1);
}

TEST_F(PersonsTest, WhoIsRetiredSignsNothingUntilReinstated)
{
    fillPersons(*m_book);
    const PersonId id = idOf(theReviewer);
    expectRefused([&] { persons().retire(id, theHead, u"\u200B"_s); }, "needs a reason"_L1);
    expectRefused([&] { persons().reinstate(id, theHead, u"back"_s); }, "is not retired"_L1);
    persons().retire(id, theHead, u"leaves"_s);
    expectRefused([&] { persons().retire(id, theHead, u"leaves"_s); }, "is retired already"_L1);
    expectRefused([&] { persons().check(theReviewer); }, "is retired and signs nothing"_L1);
    expectRefused([&] { persons().reinstate(id, theHead, u" "_s); }, "needs a reason"_L1);
    persons().reinstate(id, theHead, u"back from leave"_s);
    EXPECT_EQ(persons().check(theReviewer).id, id);
}

TEST_F(PersonsTest, APassphraseHasToBeLongEnough)
{
    struct Row {
        QString passphrase;
        QLatin1StringView words;
    };
    for (const Row &row : {Row{{}, "is blank"_L1}, Row{QString(9, u' '), "is blank"_L1},
                           Row{u"seven77"_s, "has 7 characters; at least 8"_L1},
                           Row{QString(501, u'x'), "has 501 characters; at most 500"_L1}})
        expectRefused([&] { persons().addFirst(theHead.name, row.passphrase); }, row.words);
    persons().addFirst(theHead.name, u"eight888"_s);
    persons().changePassphrase({1}, QString(500, u'x'), {theHead.name, u"eight888"_s});
    EXPECT_EQ(persons().check({theHead.name, QString(500, u'x')}).id, PersonId{1});
}

TEST_F(PersonsTest, ThePassphraseIsTheSameHoweverItsLettersAreMade)
{
    persons().addFirst(theHead.name, u"caf\u00e9 au lait"_s);
    EXPECT_EQ(persons().check({theHead.name, u"cafe\u0301 au lait"_s}).id, PersonId{1});
    expectWrong({theHead.name, {}}, "This is not the passphrase"_L1);
    expectRefused([&] { persons().check({theHead.name, {}}); }, "needs the passphrase"_L1);
    expectRefused([&] { persons().check({u"Nobody"_s, u"caf\u00e9 au lait"_s}); }, "is set up"_L1);
}

TEST_F(PersonsTest, OwnerOrHeadChangesAPassphrase)
{
    fillPersons(*m_book);
    const PersonId id = idOf(theAnalyst);
    expectRefused([&] { persons().changePassphrase(id, u"another one"_s, theReviewer); },
                  "only its owner or a head"_L1);
    expectRefused([&] { persons().changePassphrase(id, u"short"_s, theAnalyst); }, "at least 8"_L1);
    persons().changePassphrase(id, u"another one"_s, theAnalyst);
    expectWrong(theAnalyst, "This is not the passphrase"_L1);
    EXPECT_EQ(persons().check({theAnalyst.name, u"another one"_s}).id, id);
    persons().changePassphrase(id, u"forgotten, so anew"_s, theHead);
    EXPECT_EQ(persons().check({theAnalyst.name, u"forgotten, so anew"_s}).id, id);
}

TEST_F(PersonsTest, WrongPassphrasesAreCountedAndSlowDown)
{
    fillPersons(*m_book);
    const auto setBack = [this](int seconds) {
        m_now = m_now.addSecs(seconds - 60);
    }; // the clock adds a minute
    const QDateTime start = m_now;
    // The clock stands while the first three are tried, so that only the rule makes the difference.
    for (int i = 0; i < 3; ++i) {
        m_now = start;
        expectWrong(theReviewer, "This is not the passphrase"_L1);
    }
    const QDateTime last = m_now;
    m_now = last;
    setBack(4);
    const AuditHead before = m_book->auditHead();
    EXPECT_TRUE(failureOf([&] { persons().check(theReviewer); }).sentence().contains("wait 1 s"_L1));
    EXPECT_EQ(m_book->auditHead().hash, before.hash) << "it was not even tried";
    EXPECT_EQ(persons().check(theHead).name, theHead.name) << "others do not wait";
    m_now = last;
    setBack(5);
    EXPECT_EQ(persons().check(theReviewer).name, theReviewer.name);
    m_now = last;
    setBack(6);
    expectWrong(theReviewer, "This is not the passphrase"_L1); // counted anew since the right one
    m_book.reset();
    EXPECT_EQ(RawFile(file()).value(u"SELECT count(*) FROM wrong_passphrase"_s).toInt(), 4);
}

TEST_F(PersonsTest, TheWaitDoublesUpToFiveMinutesAndEndsInAnHour)
{
    fillPersons(*m_book);
    // In the trail as the program itself puts them there; ten within a minute.
    for (int i = 0; i < 10; ++i) {
        const QDateTime before = m_now;
        if (i >= 3)
            m_now = before.addSecs(300);
        expectWrong(theReviewer, "This is not the passphrase"_L1);
    }
    const QDateTime last = m_now;
    m_now = last.addSecs(299 - 60);
    expectRefused([&] { persons().check(theReviewer); }, "wait 1 s"_L1);
    {
        // What was tried before is known to a program that is started anew.
        m_book.reset();
        m_book = reopen();
        m_now = last.addSecs(200 - 60);
        expectRefused([&] { persons().check(theReviewer); }, "wait 100 s"_L1);
    }
    m_now = last.addSecs(-3600);
    EXPECT_EQ(persons().check(theReviewer).name, theReviewer.name) << "a clock set back keeps nobody out";
    m_book.reset();
    m_book = reopen();
    m_now = last.addSecs(3600);
    expectWrong(theReviewer, "This is not the passphrase"_L1);
    m_now = m_now.addSecs(-60);
    EXPECT_EQ(persons().check(theReviewer).name, theReviewer.name) << "one wrong one costs no wait";
}

TEST_F(PersonsTest, OnlyTheHashIsKeptAndItIsShownNowhere)
{
    fillReview(*m_book);
    m_book.reset();
    const QByteArray bytes = bytesOf(file());
    for (const Proof &proof : {theHead, theReviewer, theAnalyst})
        EXPECT_FALSE(bytes.contains(proof.passphrase.toUtf8()));
    EXPECT_FALSE(bytes.contains("for yesterday"));
    RawFile raw(file());
    for (const QVariantList &row : raw.rows(u"SELECT hash FROM person_passphrase"_s))
        EXPECT_TRUE(row[0].toString().startsWith("$argon2id$v=19$"_L1))
            << row[0].toString().toStdString();
    EXPECT_EQ(raw.value(u"SELECT count(DISTINCT hash) FROM person_passphrase"_s).toInt(), 5);
    EXPECT_EQ(raw.value(u"SELECT count(*) FROM audit WHERE instr(details, '$argon2') > 0"_s).toInt(), 0);
}

TEST_F(PersonsTest, ARealPassphrasesHashIsAsHardAsTheLibrarySaysForInteractiveUse)
{
    EXPECT_EQ(Surroundings::ofThisProgram().passphraseWork, PassphraseWork::Interactive);
    const QString hash = passphraseHash(u"pears before noon"_s, PassphraseWork::Interactive);
    EXPECT_TRUE(hash.startsWith("$argon2id$v=19$m=65536,t=2,p=1$"_L1)) << hash.toStdString();
    EXPECT_TRUE(passphraseFits(u"pears before noon"_s, hash));
    EXPECT_FALSE(passphraseFits(u"pears before Noon"_s, hash));
}

TEST_F(PersonsTest, EveryActIsOnRecord)
{
    fillReview(*m_book);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    m_book.reset();
    QStringList acts;
    RawFile raw(file());
    for (
        const QVariantList &row : raw.rows(
            u"SELECT action, person, details FROM audit WHERE action LIKE 'person%' OR action LIKE 'pass%'"_s))
        acts << u"%1 by %2: %3"_s.arg(row[0].toString(), row[1].toString(), row[2].toString());
    EXPECT_EQ(acts.join(u'\n'), u"personAdded by Ines Kaddour: Ines Kaddour\n"
                                "personAdded by Ines Kaddour: Tomas Brandl\n"
                                "personAdded by Ines Kaddour: Mina Okoro\n"
                                "personAdded by Ines Kaddour: Guest\n"
                                "personChanged by Ines Kaddour: Guest analyst\n"
                                "passphraseChanged by Ines Kaddour: Guest analyst\n"
                                "passphraseRefused by Guest analyst: Guest analyst\n"
                                "personRetired by Ines Kaddour: Guest analyst"_s);
}

TEST_F(PersonsTest, NobodySignsByAListThatWasChangedFromOutside)
{
    fillPersons(*m_book);
    m_book.reset();
    const QByteArray original = bytesOf(file());
    const char *const changes[] = {
        // The analyst's own passphrase for the head, once over the old one, once as a new row.
        "UPDATE person_passphrase SET hash = (SELECT hash FROM person_passphrase WHERE person = 3) WHERE "
        "person = 1",
        "INSERT INTO person_passphrase (person, hash, changed_by, at_utc, at_offset_min) "
        "SELECT 1, hash, changed_by, at_utc, at_offset_min FROM person_passphrase WHERE person = 3",
        "UPDATE person_version SET role = 'head' WHERE person = 3",
    };
    for (const char *const change : changes) {
        SCOPED_TRACE(change);
        write(file(), original);
        {
            RawFile raw(file());
            raw.behindTheTriggers([&] { raw.execute(QString::fromLatin1(change)); });
        }
        const auto notebook = reopen();
        const Failure failure = failureOf([&] {
            notebook->persons().check({theHead.name, theAnalyst.passphrase});
        });
        EXPECT_EQ(failure.kind(), Kind::Damaged) << failure.what();
        EXPECT_TRUE(failure.sentence().contains("changed from outside"_L1));
        expectOneSentence(failure);
    }
}

TEST_F(PersonsTest, ANotebookOpenForReadingKeepsNoTries)
{
    fillPersons(*m_book);
    m_book.reset();
    const QByteArray before = bytesOf(file());
    {
        m_book = reopen(Access::ReadOnly);
        EXPECT_EQ(persons().check(theAnalyst).name, theAnalyst.name);
        expectWrong(theAnalyst, "This is not the passphrase"_L1);
        m_book.reset();
    }
    EXPECT_EQ(bytesOf(file()), before);
}

} // namespace plateau::test
