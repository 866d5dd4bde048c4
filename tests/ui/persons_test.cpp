// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/reviewbench.h"
#include "ui/books/personsmodel.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QSignalSpy>

namespace plateau::test {
namespace {

/// The book of persons.
class PersonsBook : public Decisions
{
protected:
    void openBook()
    {
        openWindow();
        giveName();
        press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    }
    void fill(Qt::Key mnemonic, const QString &objectName, const QString &text)
    {
        press(mnemonic, Qt::AltModifier);
        ASSERT_EQ(focusName(), objectName);
        press(Qt::Key_A, Qt::ControlModifier);
        type(text);
    }
    void fillPassphrases(const QString &first, const QString &second)
    {
        fill(Qt::Key_E, u"personPassphrase"_s, first);
        fill(Qt::Key_T, u"personPassphraseAgain"_s, second);
    }
    void prove(const QString &passphrase) { fill(Qt::Key_I, u"personProof"_s, passphrase); }
    void store()
    {
        find<QPushButton>(u"storePerson"_s)->click(); // its letter acts a moment later
    }
    /// "Change name or role" and so on, as the box offers it.
    void chooseAct(const QString &words)
    {
        press(Qt::Key_A, Qt::AltModifier);
        ASSERT_EQ(focusName(), u"personsAct"_s);
        const auto *box = find<QComboBox>(u"personsAct"_s);
        ASSERT_GE(box->findText(words), 0) << words.toStdString();
        press(Qt::Key_Home);
        while (box->currentText() != words)
            press(Qt::Key_Down);
    }
    void chooseRow(int row)
    {
        find<QTableView>(u"persons"_s)->setFocus();
        find<QTableView>(u"persons"_s)->selectRow(row);
    }
    void expectSaid(const QString &part)
    {
        EXPECT_TRUE(noticeText().contains(part)) << noticeText().toStdString();
    }
    std::vector<Person> persons() const { return std::as_const(*book).persons().all(); }
};

TEST_F(PersonsBook, TheFirstPersonIsTheHeadAndTypesThePassphraseTwice)
{
    openBook();
    EXPECT_TRUE(labelText(u"personsEmpty"_s).contains(u"there is no way back to unsigned decisions"_s));
    EXPECT_EQ(find<QLineEdit>(u"personName"_s)->text(), u"R. Okafor"_s) << "whoever is at the bench";
    EXPECT_EQ(find<QLineEdit>(u"personPassphrase"_s)->echoMode(), QLineEdit::Password);
    fillPassphrases(u"short"_s, u"short"_s);
    store();
    expectSaid(u"This passphrase cannot be used"_s);
    EXPECT_EQ(focusName(), u"personPassphrase"_s);
    fillPassphrases(secret, u"four plain garden wards"_s);
    store();
    expectSaid(u"differ"_s);
    EXPECT_TRUE(persons().empty());
    fillPassphrases(secret, secret);
    store();
    ASSERT_EQ(persons().size(), 1U);
    EXPECT_EQ(persons()[0].name, u"R. Okafor"_s);
    EXPECT_EQ(persons()[0].role, PersonRole::Head);
    expectSaid(u"from now on decisions are signed"_s);
    EXPECT_EQ(focusName(), u"persons"_s) << "the list has come into view";
    EXPECT_TRUE(find<QLineEdit>(u"personPassphrase"_s)->text().isEmpty());
}

TEST_F(PersonsBook, AddingIsSignedByAHead)
{
    book->persons().addFirst(u"H. Ahlgren"_s, secret);
    openBook();
    fill(Qt::Key_M, u"personName"_s, u"M. Lindqvist"_s);
    press(Qt::Key_L, Qt::AltModifier);
    press(Qt::Key_Down); // reviewer
    EXPECT_EQ(labelText(u"personRoleMeaning"_s), u"Signs decisions."_s);
    fillPassphrases(u"three brown tall trees"_s, u"three brown tall trees"_s);
    store();
    expectSaid(u"It needs the passphrase of H. Ahlgren"_s);
    EXPECT_EQ(focusName(), u"personProof"_s);
    prove(u"wrong words altogether"_s);
    store();
    expectSaid(u"This is not the passphrase"_s);
    EXPECT_EQ(focusName(), u"personProof"_s);
    EXPECT_EQ(find<QLineEdit>(u"personName"_s)->text(), u"M. Lindqvist"_s) << "nothing else is lost";
    EXPECT_EQ(persons().size(), 1U);
    prove(secret);
    store();
    ASSERT_EQ(persons().size(), 2U);
    EXPECT_EQ(persons()[1].role, PersonRole::Reviewer);
    EXPECT_EQ(book->persons().check({u"M. Lindqvist"_s, u"three brown tall trees"_s}).name,
              u"M. Lindqvist"_s);
    expectSaid(u"M. Lindqvist is on the list."_s);
    EXPECT_TRUE(find<QLineEdit>(u"personName"_s)->text().isEmpty());
}

TEST_F(PersonsBook, ANameIsThereOnce)
{
    setPersons();
    openBook();
    fill(Qt::Key_M, u"personName"_s, u"r. okafor"_s);
    fillPassphrases(secret, secret);
    prove(secret);
    store();
    EXPECT_EQ(persons().size(), 3U);
    EXPECT_FALSE(noticeText().isEmpty());
    EXPECT_EQ(find<QLineEdit>(u"personName"_s)->text(), u"r. okafor"_s);
}

TEST_F(PersonsBook, ARoleIsChangedAndWhatWasSignedKeepsItsOwn)
{
    setPersons();
    id = addRun(runOf({good}));
    book->decide(id, {DecisionKind::Accepted, u"R. Okafor"_s, secret, {}, {}});
    openBook();
    chooseRow(1);
    chooseAct(u"Change name or role"_s);
    EXPECT_EQ(find<QLineEdit>(u"personName"_s)->text(), u"R. Okafor"_s);
    press(Qt::Key_L, Qt::AltModifier);
    press(Qt::Key_Down);
    prove(secret);
    store();
    EXPECT_EQ(persons()[1].role, PersonRole::Reviewer);
    EXPECT_EQ(decision().signedAs, PersonRole::Analyst);
    expectSaid(u"keeps the name and role of its time"_s);
}

TEST_F(PersonsBook, RetiringNeedsAReasonAndTheLastHeadStays)
{
    setPersons();
    openBook();
    chooseRow(2);
    chooseAct(u"Retire"_s);
    prove(secret);
    store();
    expectSaid(u"Say why"_s);
    EXPECT_EQ(focusName(), u"personReason"_s);
    type(u"left the house"_s);
    store();
    ASSERT_TRUE(persons()[2].retired);
    chooseRow(2);
    chooseAct(u"Reinstate"_s);
    fill(Qt::Key_R, u"personReason"_s, u"is back"_s);
    prove(secret);
    store();
    EXPECT_FALSE(persons()[2].retired);
    chooseRow(0);
    chooseAct(u"Retire"_s);
    fill(Qt::Key_R, u"personReason"_s, u"no head any more"_s);
    prove(secret);
    store();
    EXPECT_FALSE(persons()[0].retired);
    EXPECT_EQ(find<QLineEdit>(u"personReason"_s)->text(), u"no head any more"_s);
}

TEST_F(PersonsBook, AnOwnerSetsAnotherPassphraseWithTheOldOne)
{
    setPersons();
    openBook();
    chooseRow(1);
    chooseAct(u"Set another passphrase"_s);
    EXPECT_EQ(find<QComboBox>(u"personSigner"_s)->currentText(), u"R. Okafor"_s);
    fillPassphrases(u"five red apple boxes"_s, u"five red apple boxes"_s);
    prove(secret);
    store();
    expectSaid(u"The new passphrase holds from now on."_s);
    EXPECT_EQ(book->persons().check({u"R. Okafor"_s, u"five red apple boxes"_s}).name, u"R. Okafor"_s);
    EXPECT_THROW(book->persons().check({u"R. Okafor"_s, secret}), Failure);
}

TEST_F(PersonsBook, WhatIsTypedIsAskedAboutAndPassphrasesGoWithThePage)
{
    setPersons();
    openBook();
    fill(Qt::Key_M, u"personName"_s, u"A. New"_s);
    fillPassphrases(secret, secret);
    dialogs.answer = false;
    EXPECT_FALSE(window->close());
    ASSERT_EQ(dialogs.questions.size(), 1);
    EXPECT_TRUE(dialogs.questions[0].contains(u"A change to the list of people"_s));
    press(Qt::Key_B, Qt::ControlModifier);
    press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(find<QLineEdit>(u"personName"_s)->text(), u"A. New"_s);
    EXPECT_TRUE(find<QLineEdit>(u"personPassphrase"_s)->text().isEmpty());
}

TEST_F(PersonsBook, TheListIsAModel)
{
    using Model = ui::PersonsModel;
    ui::Theme theme;
    Model model(theme);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    model.setPersons({});
    EXPECT_EQ(model.rowCount(), 0);
    setPersons();
    model.setPersons(persons());
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(inserted.count(), 1);
    EXPECT_EQ(model.index(0, Model::Role).data(), u"Head"_s);
    EXPECT_EQ(model.index(2, Model::Standing).data(), u"may sign"_s);
    EXPECT_EQ(model.rowOf(persons()[2].id), 2);
    book->persons().retire(persons()[2].id, {u"H. Ahlgren"_s, secret}, u"left"_s);
    model.setPersons(persons());
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(model.index(2, Model::Standing).data(), u"retired, may not sign"_s);
}

} // namespace
} // namespace plateau::test
