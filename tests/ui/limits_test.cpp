// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/keyboard.h"
#include "core/evaluation/format.h"
#include "ui/books/limitsmodel.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>

namespace plateau::test {
namespace {

using evaluation::LimitKind;
using evaluation::Specification;

Specification perryLimit()
{
    Specification limit;
    limit.product = u"perry"_s;
    limit.measurand = u"Example acid"_s;
    limit.upper = 200;
    limit.unit = evaluation::ReportUnit::MilligramPerLitre;
    limit.source = u"house specification 4"_s;
    limit.date = QDate(2026, 2, 1);
    return limit;
}

/// The book of limits.
class LimitsBook : public Keyboard
{
protected:
    void openBook()
    {
        openWindow();
        giveName();
        press(Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);
    }
    void beginOne()
    {
        press(Qt::Key_A, Qt::AltModifier);
        ASSERT_TRUE(waitFor([this] { return focusName() == u"limitProduct"_s; }));
        // The offscreen platform does not give the window back what a list of offers took.
        for (const QString &name : {u"limitProduct"_s, u"limitMeasurand"_s})
            find<QComboBox>(name)->setCompleter(nullptr);
    }
    void openFirst()
    {
        tabTo(u"limits"_s);
        press(Qt::Key_Home);
        press(Qt::Key_Return);
        ASSERT_EQ(labelText(u"limitHeading"_s), u"Change a limit"_s);
    }
    void fill(Qt::Key mnemonic, const QString &text)
    {
        press(mnemonic, Qt::AltModifier);
        press(Qt::Key_A, Qt::ControlModifier);
        type(text);
    }
    void choose(const QString &objectName, const QString &words)
    {
        // The list of what is offered, closed a moment ago, keeps the Tab key of the offscreen platform to
        // itself.
        auto *box = find<QComboBox>(objectName);
        box->setFocus();
        ASSERT_EQ(focusName(), objectName);
        ASSERT_GE(box->findText(words), 0) << words.toStdString();
        press(Qt::Key_Home);
        for (int step = 0; step < box->count() && box->currentText() != words; ++step)
            press(Qt::Key_Down);
        ASSERT_EQ(box->currentText(), words);
    }
    void save()
    {
        find<QPushButton>(u"saveLimit"_s)->click(); // its letter acts a moment later
    }
    void keyPerryLimit()
    {
        fill(Qt::Key_T, u"perry"_s);
        fill(Qt::Key_M, u"Example acid"_s);
        fill(Qt::Key_U, u"200"_s);
        choose(u"limitUnit"_s, u"mg/L"_s);
        fill(Qt::Key_C, u"house specification 4"_s);
        fill(Qt::Key_A, u"2026-02-01"_s);
    }
    QString problems() const
    {
        QStringList lines;
        const auto *list = window->findChild<QAbstractItemView *>(u"limitProblems"_s);
        for (int row = 0; list && row < list->model()->rowCount(); ++row)
            lines << list->model()->index(row, 0).data().toString();
        return lines.join(u'\n');
    }
    void expectSaid(const QString &part)
    {
        EXPECT_TRUE(noticeText().contains(part)) << noticeText().toStdString();
    }
};

TEST_F(LimitsBook, OpensAtItsListAndTakesOneMore)
{
    openBook();
    ASSERT_TRUE(find<QPushButton>(u"addLimit"_s));
    beginOne();
    EXPECT_EQ(labelText(u"limitHeading"_s), u"A limit of a product"_s);
    EXPECT_TRUE(book->specifications().empty());
    keyPerryLimit();
    EXPECT_TRUE(labelText(u"limitSummary"_s).startsWith(u"Judged: Example acid in perry, at most 200"_s))
        << labelText(u"limitSummary"_s).toStdString() << problems().toStdString();
    save();
    expectSaid(u"say why the list changes"_s);
    ASSERT_EQ(focusName(), u"limitReason"_s);
    type(u"new customer"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->specifications().size(), 1U);
    EXPECT_EQ(book->specifications()[0], perryLimit());
    EXPECT_EQ(book->specificationsSaving()->person, u"R. Okafor"_s);
    expectSaid(u"Saved: perry, Example acid"_s);
    EXPECT_TRUE(labelText(u"limitsOrigin"_s).startsWith(u"Version 1, saved by R. Okafor"_s));
}

TEST_F(LimitsBook, WhatIsMissingIsNamedAndNothingIsSaved)
{
    openBook();
    beginOne();
    fill(Qt::Key_U, u"2.0.0"_s);
    fill(Qt::Key_R, u"why not"_s);
    save();
    expectSaid(u"first put right what the list names"_s);
    ASSERT_EQ(focusName(), u"limitProblems"_s);
    EXPECT_TRUE(problems().contains(u"Product: is empty; say what it is a limit of"_s)) << problems().toStdString();
    EXPECT_TRUE(problems().contains(u"Measurand: is empty; say what is measured"_s)) << problems().toStdString();
    EXPECT_FALSE(problems().contains(u"cannot be used"_s)) << problems().toStdString();
    EXPECT_TRUE(labelText(u"limitSummary"_s).startsWith(u"Still to be put right"_s));
    press(Qt::Key_Return);
    EXPECT_NE(focusName(), u"limitProblems"_s) << "Enter goes to the first";
    EXPECT_TRUE(focusName().startsWith(u"limit"_s)) << focusName().toStdString();
    EXPECT_TRUE(book->specifications().empty());
}

TEST_F(LimitsBook, ARangeTakesBothEndsWithPointOrComma)
{
    openBook();
    beginOne();
    keyPerryLimit();
    choose(u"limitKind"_s, u"Range"_s);
    fill(Qt::Key_L, u"2,5"_s);
    fill(Qt::Key_U, u"4.5"_s);
    fill(Qt::Key_R, u"new customer"_s);
    save();
    ASSERT_EQ(book->specifications().size(), 1U);
    EXPECT_EQ(book->specifications()[0].kind, LimitKind::Range);
    EXPECT_EQ(book->specifications()[0].lower, 2.5);
    EXPECT_EQ(book->specifications()[0].upper, 4.5);
}

TEST_F(LimitsBook, AThresholdAndAGuardBandHaveTheirFields)
{
    openBook();
    beginOne();
    keyPerryLimit();
    choose(u"limitKind"_s, u"Label threshold"_s);
    fill(Qt::Key_L, u"10"_s); // the field has the lower limit's letter, which is not on show
    EXPECT_EQ(focusName(), u"limitUpper"_s);
    for (const QWidget *lower : window->findChildren<QWidget *>(u"limitLower"_s))
        EXPECT_FALSE(lower->isVisible());
    choose(u"limitRule"_s, u"guard band for acceptance"_s);
    EXPECT_TRUE(labelText(u"limitRuleMeaning"_s).contains(u"it cannot be decided"_s));
    choose(u"limitGuard"_s, u"fixed, in the unit of the limit"_s);
    fill(Qt::Key_Z, u"0,5"_s);
    fill(Qt::Key_R, u"the house wants it"_s);
    save();
    ASSERT_EQ(book->specifications().size(), 1U) << noticeText().toStdString();
    const Specification saved = book->specifications()[0];
    EXPECT_EQ(saved.kind, LimitKind::LabelThreshold);
    EXPECT_EQ(saved.upper, 10);
    EXPECT_EQ(saved.rule, evaluation::DecisionRule::GuardedAcceptance);
    EXPECT_EQ(saved.guard, (evaluation::GuardBand{evaluation::GuardBand::Kind::Absolute, 0.5}));
}

TEST_F(LimitsBook, AChangeIsAVersionMoreAndTheSameTwiceIsRefused)
{
    book->saveSpecifications({perryLimit()}, u"M. Lindqvist"_s, u"as agreed"_s);
    openBook();
    openFirst();
    EXPECT_EQ(find<QLineEdit>(u"limitUpper"_s)->text(), u"200"_s);
    fill(Qt::Key_U, u"180"_s);
    fill(Qt::Key_R, u"tightened"_s);
    save();
    EXPECT_EQ(book->specifications().at(0).upper, 180);
    EXPECT_EQ(book->specificationsSaving()->version, 2);
    beginOne();
    keyPerryLimit();
    EXPECT_TRUE(labelText(u"limitSummary"_s).startsWith(u"Still to be put right (1)"_s))
        << "the same product, measurand, kind and source";
}

TEST_F(LimitsBook, AMeasurandThatIsHeldByItsIdIsShownByItsNameAndKeepsTheId)
{
    Specification byId = perryLimit();
    byId.measurand = u"example-acid"_s;
    book->saveSpecifications({byId}, u"M. Lindqvist"_s, u"as agreed"_s);
    openBook();
    const QAbstractItemModel *list = find<QAbstractItemView>(u"limits"_s)->model();
    EXPECT_EQ(list->index(0, ui::LimitsModel::Measurand).data(), u"Example acid"_s);
    openFirst();
    EXPECT_EQ(find<QComboBox>(u"limitMeasurand"_s)->currentText(), u"Example acid"_s);
    EXPECT_TRUE(labelText(u"limitSummary"_s).contains(u"Judged: Example acid in perry,"_s))
        << labelText(u"limitSummary"_s).toStdString();
    press(Qt::Key_Escape);
    EXPECT_TRUE(find<QPushButton>(u"addLimit"_s)) << "nothing was changed by looking at it";
    openFirst();
    fill(Qt::Key_U, u"180"_s);
    fill(Qt::Key_R, u"tightened"_s);
    save();
    expectSaid(u"Saved: perry, Example acid, at most 180"_s);
    EXPECT_EQ(book->specifications().at(0).measurand, u"example-acid"_s) << "the same in every language";
    EXPECT_EQ(book->specifications().at(0).upper, 180);
}

TEST_F(LimitsBook, OneIsTakenAwayWithAReason)
{
    book->saveSpecifications({perryLimit()}, u"M. Lindqvist"_s, u"as agreed"_s);
    openBook();
    openFirst();
    find<QPushButton>(u"removeLimit"_s)->click();
    expectSaid(u"say why"_s);
    EXPECT_EQ(book->specifications().size(), 1U);
    type(u"customer gone"_s);
    find<QPushButton>(u"removeLimit"_s)->click();
    ASSERT_TRUE(waitFor([this] { return book->specifications().empty(); }));
    EXPECT_EQ(book->specificationsSaving()->version, 2);
}

TEST_F(LimitsBook, NobodyAtTheBenchIsAskedFor)
{
    openWindow();
    press(Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);
    beginOne();
    keyPerryLimit();
    fill(Qt::Key_R, u"new customer"_s);
    save();
    expectSaid(u"First say who is at the bench"_s);
    ASSERT_EQ(focusName(), u"person"_s);
    EXPECT_TRUE(book->specifications().empty());
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(find<QLineEdit>(u"limitReason"_s)->text(), u"new customer"_s);
    save();
    EXPECT_EQ(book->specifications().size(), 1U);
}

TEST_F(LimitsBook, WhatIsTypedIsDroppedAtTheSecondTryOnly)
{
    openBook();
    beginOne();
    fill(Qt::Key_T, u"perry"_s);
    dialogs.answer = false;
    EXPECT_FALSE(window->close());
    ASSERT_EQ(dialogs.questions.size(), 1);
    EXPECT_TRUE(dialogs.questions[0].contains(u"A limit of a product that is not saved yet"_s));
    press(Qt::Key_Escape);
    expectSaid(u"This is not saved"_s);
    EXPECT_EQ(find<QComboBox>(u"limitProduct"_s)->currentText(), u"perry"_s);
    press(Qt::Key_Escape);
    EXPECT_TRUE(find<QPushButton>(u"addLimit"_s));
    EXPECT_TRUE(window->close());
}

TEST_F(LimitsBook, TheListIsAModel)
{
    using Model = ui::LimitsModel;
    Model model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    QSignalSpy removed(&model, &QAbstractItemModel::rowsRemoved);
    model.setLimits({perryLimit()}, {});
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.index(0, Model::Product).data(), u"perry"_s);
    EXPECT_EQ(model.index(0, Model::Kind).data(), u"Maximum"_s);
    EXPECT_EQ(model.index(0, Model::Limit).data(), evaluation::limitText(perryLimit()));
    EXPECT_EQ(model.index(0, Model::Rule).data(), u"simple acceptance"_s);
    EXPECT_EQ(model.index(0, Model::Date).data(), u"2026-02-01"_s);
    evaluation::Specification threshold = perryLimit();
    threshold.kind = evaluation::LimitKind::LabelThreshold;
    threshold.upper = 10;
    Model ofThreshold;
    ofThreshold.setLimits({threshold}, {});
    EXPECT_EQ(ofThreshold.index(0, Model::Kind).data(), u"Label threshold"_s);
    EXPECT_EQ(ofThreshold.index(0, Model::Limit).data(),
              evaluation::withUnit(u"10"_s, evaluation::reportUnitWord(threshold.unit)))
        << "its kind is not said twice";
    model.setLimits({}, {});
    EXPECT_EQ(inserted.count(), 1);
    EXPECT_EQ(removed.count(), 1);
}

} // namespace
} // namespace plateau::test
