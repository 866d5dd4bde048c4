// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "ui/shared/barchart.h"
#include "ui/shared/boxsearch.h"
#include "ui/shared/guard.h"
#include "ui/shared/notice.h"
#include "ui/shared/offerfield.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/roomystyle.h"
#include "ui/shared/widgets.h"

#include <QAbstractItemModelTester>
#include <QAbstractItemView>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QSpinBox>
#include <QStyleOptionComboBox>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <QtTest/QTest>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::ui {
namespace {

TEST(ProblemList, NamesErrorsBeforeWarningsEachWithItsPlace)
{
    const Theme theme;
    ProblemList list(theme, u"problems"_s);
    const QAbstractItemModelTester tester(list.model(),
                                          QAbstractItemModelTester::FailureReportingMode::Warning);
    list.setProblems({assay::warning(u"/samples/1"_s, u"used by no tube"_s),
                      assay::error(u"/tubes/0"_s, u"no role"_s), assay::error({}, u"not JSON"_s)});
    const auto &rows = list.sentences().rows();
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0], (Sentence{State::Bad, u"/tubes/0: no role"_s}));
    EXPECT_EQ(rows[1], (Sentence{State::Bad, u"not JSON"_s}));
    EXPECT_EQ(rows[2], (Sentence{State::Attention, u"/samples/1: used by no tube"_s}));
}

TEST(RoomyStyle, WhatABoxCannotShowEndsInDots)
{
    const RoomyStyle roomy(u"Fusion"_s);
    const QComboBox box;
    QStyleOptionComboBox option;
    option.initFrom(&box);
    option.subControls = QStyle::SC_All;
    option.currentText = u"potassium metabisulfite (all standards of it)"_s;
    const int words = option.fontMetrics.horizontalAdvance(option.currentText);
    option.rect = {0, 0, words + 80, 30};
    EXPECT_EQ(roomy.elidedIn(option, &box), option.currentText);
    option.rect.setWidth(words);
    const QString shown = roomy.elidedIn(option, &box);
    EXPECT_TRUE(shown.endsWith(u'…')) << shown.toStdString();
    EXPECT_TRUE(shown.startsWith(u"potassium"_s)) << shown.toStdString();
    option.currentIcon = QIcon(QPixmap(16, 16));
    option.iconSize = {16, 16};
    EXPECT_LT(roomy.elidedIn(option, &box).size(), shown.size()) << "the icon takes of the room";
}

TEST(RoomyStyle, ACaptionHoldsItsLastLetter)
{
    RoomyStyle roomy(u"Fusion"_s);
    QLineEdit field;
    QLabel caption(u"&Type"_s);
    caption.setBuddy(&field);
    QLabel words(u"Type"_s);
    for (QLabel *label : {&caption, &words}) {
        label->setStyle(&roomy);
        label->ensurePolished();
        roomy.polish(label); // as when the colours change
    }
    EXPECT_EQ(caption.contentsMargins().right(), 2);
    EXPECT_EQ(words.contentsMargins().right(), 0) << "nothing is underlined in it";
    const auto drawn = [&](int width) {
        QImage image(120, 30, QImage::Format_ARGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setFont(caption.font());
        roomy.drawItemText(&painter, {0, 0, width, 30}, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextShowMnemonic,
                           QPalette(), true, caption.text());
        return image;
    };
    const int asked = caption.sizeHint().width() - caption.contentsMargins().right();
    EXPECT_EQ(drawn(asked), drawn(110)) << "as wide as the caption asks for, nothing is cut";
}

TEST(SentenceList, ChangesRowByRow)
{
    const Theme theme;
    SentenceList list(theme, u"Checks"_s, u"checks"_s);
    const QAbstractItemModelTester tester(list.model(),
                                          QAbstractItemModelTester::FailureReportingMode::Warning);
    list.setSentences({{State::Good, u"a"_s}, {State::Good, u"b"_s}});
    const QSignalSpy inserted(list.model(), &QAbstractItemModel::rowsInserted);
    const QSignalSpy removed(list.model(), &QAbstractItemModel::rowsRemoved);
    const QSignalSpy changed(list.model(), &QAbstractItemModel::dataChanged);
    const QSignalSpy reset(list.model(), &QAbstractItemModel::modelReset);
    list.setSentences({{State::Good, u"a"_s}, {State::Bad, u"B"_s}, {State::Good, u"c"_s}});
    EXPECT_EQ(inserted.count(), 1);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(changed.at(0).at(0).toModelIndex().row(), 1);
    list.setSentences({{State::Good, u"a"_s}});
    EXPECT_EQ(removed.count(), 1);
    EXPECT_EQ(reset.count(), 0);
    EXPECT_EQ(list.model()->rowCount(), 1);
}

TEST(SentenceList, CopiesWhatIsChosen)
{
    const Theme theme;
    SentenceList list(theme, u"Checks"_s, u"checks"_s);
    list.setSentences({{State::Good, u"first"_s}, {State::Bad, u"second"_s}});
    list.selectAll();
    QTest::keySequence(&list, QKeySequence::Copy);
    EXPECT_EQ(QApplication::clipboard()->text(), u"first\nsecond"_s);
}

TEST(SentenceList, GrowsALineForWhatDoesNotFitOnOne)
{
    const Theme theme;
    SentenceList list(theme, u"Checks"_s, u"checks"_s);
    list.resize(300, 400);
    list.show();
    list.setSentences({{State::Good, u"short"_s}, {State::Good, u"long "_s.repeated(40)}});
    QApplication::processEvents();
    EXPECT_GT(list.visualRect(list.model()->index(1, 0)).height(),
              2 * list.visualRect(list.model()->index(0, 0)).height());
}

TEST(SentenceList, IsAsHighAsItsSentencesNeedUpToABound)
{
    const Theme theme;
    QWidget page;
    auto *layout = new QVBoxLayout(&page);
    auto *list = new SentenceList(theme, u"Checks"_s, u"checks"_s, &page);
    auto *rest = new QWidget(&page);
    layout->addWidget(list);
    layout->addWidget(rest, 1);
    constexpr int most = 200;
    list->fitSentences(most);
    const Sentence sentence{State::Info, u"The wave length scale was looked at and is well within what is allowed."_s};
    list->setSentences({sentence, sentence, sentence});
    page.resize(300, 600);
    page.show();
    QApplication::processEvents();
    EXPECT_EQ(list->height(), 3 * list->sizeHintForRow(0) + 2 * list->frameWidth());
    EXPECT_FALSE(list->verticalScrollBar()->isVisible());
    page.resize(900, 600);
    QApplication::processEvents();
    EXPECT_EQ(list->height(), 3 * list->sizeHintForRow(0) + 2 * list->frameWidth()) << "fewer lines";
    list->setSentences(std::vector<Sentence>(20, sentence));
    QApplication::processEvents();
    EXPECT_LE(list->height(), most);
    EXPECT_GT(list->height(), most - list->fontMetrics().lineSpacing() - 2 * theme.gap());
    EXPECT_TRUE(list->verticalScrollBar()->isVisible());
}

TEST(FormRow, TheWheelTurnsNoBoxInPassing)
{
    QWidget page;
    auto *form = new QFormLayout(&page);
    auto *box = new QSpinBox(&page);
    auto *other = new QLineEdit(&page);
    addFormRow(form, u"&Blanks"_s, box, u"blanks"_s);
    addFormRow(form, u"&Title"_s, other, u"title"_s);
    box->setValue(2);
    page.show();
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    const auto wheel = [box] {
        QWheelEvent event(QPointF(4, 4), QPointF(4, 4), {}, QPoint(0, 120), Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(box, &event);
    };
    other->setFocus();
    wheel();
    EXPECT_EQ(box->value(), 2);
    box->setFocus();
    wheel();
    EXPECT_EQ(box->value(), 3);
}

TEST(Guard, SaysWhatTheNotebookRefuses)
{
    const Theme theme;
    Notice notice(theme);
    EXPECT_FALSE(guarded(
        notice, [] { throw notebook::Failure(notebook::Failure::Kind::Refused, u"The run is locked."_s); }));
    EXPECT_EQ(notice.sentence(), u"The run is locked."_s);
    EXPECT_FALSE(notice.isHidden());
    notice.clear();
    EXPECT_TRUE(guarded(notice, [] {}));
    EXPECT_TRUE(notice.isHidden());
}

TEST(Notice, WhatIsDoneLeavesWithTheNextActOnceItCouldBeRead)
{
    const Theme theme;
    QWidget page;
    Notice notice(theme, &page);
    QLineEdit field(&page);
    const auto pressKey = [&] {
        QTest::keyClick(&field, Qt::Key_A);
        QApplication::processEvents();
    };
    notice.say(State::Bad, u"The disk is full."_s);
    pressKey();
    EXPECT_EQ(notice.sentence(), u"The disk is full."_s) << "it is to be acted on";
    notice.sayDone(u"a.pdf was written."_s, 60'000);
    pressKey();
    EXPECT_EQ(notice.sentence(), u"a.pdf was written."_s) << "nobody can have read it";
    notice.sayDone(u"b.pdf was written."_s, 0);
    QKeyEvent alt(QEvent::KeyPress, Qt::Key_Alt, Qt::AltModifier);
    QApplication::sendEvent(&field, &alt);
    QApplication::processEvents();
    EXPECT_EQ(notice.sentence(), u"b.pdf was written."_s) << "who goes to another window with Alt and Tab comes back to it";
    pressKey();
    EXPECT_TRUE(notice.isHidden());
    notice.sayDone(u"c.pdf was written."_s, 0);
    notice.say(State::Attention, u"Look here."_s);
    pressKey();
    EXPECT_EQ(notice.sentence(), u"Look here."_s) << "it is another sentence";
}

TEST(Notice, WhatStandsBelowStaysWhereItIsUntilThePageIsLeft)
{
    const Theme theme;
    QWidget window;
    auto *page = new QWidget(&window);
    auto *notice = new Notice(theme, page);
    auto *field = new QLineEdit(page);
    auto *column = new QVBoxLayout(page);
    column->addWidget(notice);
    column->addWidget(field);
    column->addStretch();
    page->resize(600, 400);
    window.resize(600, 400);
    window.show();
    QApplication::processEvents();
    const int without = field->y();
    notice->sayDone(u"a.pdf was written."_s, 0);
    QApplication::processEvents();
    const int with = field->y();
    ASSERT_GT(with, without);
    QTest::keyClick(field, Qt::Key_A);
    QApplication::processEvents();
    EXPECT_TRUE(notice->isHidden());
    EXPECT_EQ(field->y(), with) << "it would leave the hand that is about to click it";
    page->hide();
    page->show();
    QApplication::processEvents();
    EXPECT_EQ(field->y(), without) << "no gap stays behind";
    notice->sayDone(u"b.pdf was written."_s, 0);
    notice->moveOn();
    QApplication::processEvents();
    EXPECT_EQ(field->y(), with);
    notice->clear();
    QApplication::processEvents();
    EXPECT_EQ(field->y(), without);
}

/// A field as it stands in a window, with the keys in it.
class AnOfferField : public ::testing::Test
{
protected:
    AnOfferField()
        : field(&page)
    {
        field.setOffers({u"Anna Berg"_s, u"Arne Holm"_s});
        page.show();
        QApplication::setActiveWindow(&page);
        field.setFocus();
        QApplication::processEvents();
    }
    QAbstractItemView *list() { return field.findChild<QCompleter *>()->popup(); }

    QWidget page;
    OfferField field;
};

TEST_F(AnOfferField, NeverPutsALetterInThatNobodyTyped)
{
    field.completeWhileTyping();
    QTest::keyClicks(&field, u"a"_s);
    EXPECT_TRUE(field.completion().isEmpty()) << "it may be either";
    QTest::keyClicks(&field, u"n"_s);
    EXPECT_EQ(field.completion(), u"Anna Berg"_s);
    EXPECT_EQ(field.text(), u"an"_s);
    QSignalSpy entered(&field, &QLineEdit::returnPressed);
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(entered.size(), 1);
    EXPECT_EQ(field.text(), u"an"_s) << "Enter takes what was typed";
    QTest::keyClick(&field, Qt::Key_Left);
    EXPECT_TRUE(field.completion().isEmpty()) << "something goes in before the end";
    field.setText(u"anna berg"_s);
    EXPECT_TRUE(field.completion().isEmpty()) << "there is nothing to add";
}

TEST_F(AnOfferField, TakesTheOnlyOfferWithDownAndSaysSo)
{
    field.setAccessibleDescription(u"beside it"_s);
    field.completeWhileTyping();
    QTest::keyClicks(&field, u"an"_s);
    EXPECT_EQ(field.accessibleDescription(), u"↓ takes Anna Berg"_s);
    QSignalSpy edited(&field, &QLineEdit::textEdited);
    QTest::keyClick(&field, Qt::Key_Down);
    EXPECT_EQ(field.text(), u"Anna Berg"_s);
    EXPECT_EQ(edited.size(), 1) << "as if it had been typed";
    EXPECT_FALSE(list()->isVisible());
    EXPECT_EQ(field.accessibleDescription(), u"beside it"_s);
    QTest::keyClick(&field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(field.text(), u"an"_s);
}

TEST_F(AnOfferField, OfAClosedListEnterAndTabTakeTheOnlyOneThatBeginsSo)
{
    QLineEdit next(&page);
    next.show();
    field.completeWhileTyping();
    field.setClosed({u"Anna Berg"_s, u"Arne Holm"_s, u"Arn"_s});
    QTest::keyClicks(&field, u"a"_s);
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(field.text(), u"a"_s) << "it may be either";
    QTest::keyClicks(&field, u"n"_s);
    QSignalSpy edited(&field, &QLineEdit::textEdited);
    QSignalSpy entered(&field, &QLineEdit::returnPressed);
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(field.text(), u"Anna Berg"_s);
    EXPECT_EQ(edited.size(), 1) << "as if it had been typed";
    EXPECT_EQ(entered.size(), 1);
    field.clear();
    QTest::keyClicks(&field, u"arn"_s);
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(field.text(), u"arn"_s) << "that is somebody who is not offered";
    field.clear();
    QTest::keyClicks(&field, u"arne"_s);
    QTest::keyClick(&field, Qt::Key_Tab);
    EXPECT_FALSE(field.hasFocus());
    EXPECT_EQ(field.text(), u"Arne Holm"_s);
    field.setFocus();
    field.clear();
    QTest::keyClicks(&field, u"nobody"_s);
    QTest::keyClick(&field, Qt::Key_Tab);
    EXPECT_EQ(field.text(), u"nobody"_s);
}

TEST_F(AnOfferField, SaysWhatDownTakesAlsoOfOffersThatCameLater)
{
    field.completeWhileTyping();
    QTest::keyClicks(&field, u"an"_s);
    field.setOffers({u"Anders Lund"_s, u"Arne Holm"_s});
    EXPECT_EQ(field.accessibleDescription(), u"↓ takes Anders Lund"_s);
    field.setOffers({});
    EXPECT_TRUE(field.accessibleDescription().isEmpty());
}

TEST_F(AnOfferField, LeavesTheWordsOfAReasonAlone)
{
    QTest::keyClicks(&field, u"an"_s);
    EXPECT_TRUE(field.completion().isEmpty());
    QTest::keyClick(&field, Qt::Key_Down);
    EXPECT_TRUE(list()->isVisible()) << "all of it is offered";
    EXPECT_EQ(list()->model()->rowCount(), 2);
    EXPECT_EQ(field.text(), u"an"_s);
}

TEST_F(AnOfferField, EnterTakesWhatIsMarkedAndElseWhatIsTyped)
{
    QSignalSpy entered(&field, &QLineEdit::returnPressed);
    QTest::keyClick(&field, Qt::Key_Down);
    QTest::keyClick(list(), Qt::Key_Down);
    QTest::keyClick(list(), Qt::Key_Return);
    EXPECT_EQ(field.text(), u"Anna Berg"_s);
    EXPECT_EQ(entered.size(), 0) << "that was the list's Enter";
    field.clear();
    QTest::keyClick(&field, Qt::Key_Down);
    QTest::keyClick(list(), Qt::Key_Down);
    QTest::keyClick(list(), Qt::Key_X);
    EXPECT_FALSE(list()->isVisible()) << "what was marked is not meant any more";
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(field.text(), u"x"_s);
    EXPECT_EQ(entered.size(), 1);
}

TEST_F(AnOfferField, EscClosesTheListAndLeavesTheText)
{
    field.setText(u"late"_s);
    QTest::keyClick(&field, Qt::Key_Down);
    ASSERT_TRUE(list()->isVisible());
    EXPECT_FALSE(list()->accessibleName().isEmpty());
    QTest::keyClick(list(), Qt::Key_Down);
    QTest::keyClick(list(), Qt::Key_Escape);
    EXPECT_FALSE(list()->isVisible());
    EXPECT_EQ(field.text(), u"late"_s);
    field.setReadOnly(true);
    QTest::keyClick(&field, Qt::Key_Down);
    EXPECT_FALSE(list()->isVisible()) << "nothing can be chosen for it";
}

TEST(BoxSearch, ASpaceWithinANameIsSearchedForAndByItselfOpensTheList)
{
    QWidget page;
    const BoxSearch search(&page);
    auto *box = new QComboBox(&page);
    box->addItems({u"Citric acid"_s, u"Lactic acid"_s, u"L-malic acid"_s, u"L malic acid"_s});
    page.show();
    box->setFocus();
    QTest::keyClicks(box, u"l m"_s);
    EXPECT_EQ(box->currentText(), u"L malic acid"_s);
    EXPECT_FALSE(box->view()->isVisible());
    QTest::qWait(QApplication::keyboardInputInterval() + 100);
    QTest::keyClick(box, Qt::Key_Space);
    EXPECT_TRUE(box->view()->isVisible());
    box->hidePopup();
}

TEST(BarChart, TellsItsBarsToAScreenReader)
{
    const Theme theme;
    BarChart chart(theme, u"Uncertainty budget"_s);
    chart.setBars({{u"absorptivity: 60 %"_s, 60}, {u"sample volume: 40 %"_s, 40}}, u"Share (%)"_s);
    bool found = false;
    for (const QWidget *child : chart.findChildren<QWidget *>())
        found = found || (child->accessibleName() == u"Uncertainty budget"_s &&
                          child->accessibleDescription() == u"absorptivity: 60 %\nsample volume: 40 %"_s);
    EXPECT_TRUE(found);
}

TEST(BarChart, CutsNoLabelHoweverNarrowItIs)
{
    const Theme theme;
    BarChart chart(theme, u"Uncertainty budget"_s);
    const QString longest = u"36.4 % concentration of the standard (L-malic acid)"_s;
    chart.setBars({{longest, 36.4}, {u"12.0 % blank"_s, 12}}, u"Share (%)"_s);
    chart.resize(120, 200);
    chart.show();
    QTest::qWait(0);
    const auto *scroll = chart.findChild<QScrollArea *>();
    ASSERT_NE(scroll, nullptr);
    EXPECT_GE(scroll->widget()->width(), scroll->widget()->fontMetrics().horizontalAdvance(longest));
    EXPECT_GT(scroll->horizontalScrollBar()->maximum(), 0);
}

} // namespace
TEST(FormRows, OfSeveralFormsHaveTheirFieldsInOneLine)
{
    QWidget page;
    auto *layout = new QVBoxLayout(&page);
    QList<QWidget *> hosts;
    QList<QLineEdit *> fields;
    for (const QString &caption : {u"Day"_s, u"Source of limits and standards"_s}) {
        auto *host = new QWidget(&page);
        auto *form = new QFormLayout(host);
        form->setContentsMargins({});
        fields << new QLineEdit(host);
        addFormRow(form, caption, fields.back(), u"field%1"_s.arg(fields.size()));
        layout->addWidget(host);
        hosts << host;
    }
    const auto left = [&](int field) { return fields[field]->mapTo(&page, QPoint()).x(); };
    page.resize(600, 200);
    page.show();
    QApplication::processEvents();
    EXPECT_LT(left(0), left(1));
    alignCaptions(hosts);
    QApplication::processEvents();
    EXPECT_EQ(left(0), left(1));
}

TEST(FormRows, ComeBackWhereTheyWere)
{
    QWidget host;
    auto *form = new QFormLayout(&host);
    const auto add = [&](const QString &name) {
        auto *field = new QLineEdit(&host);
        ui::addFormRow(form, name, field, name);
        return field;
    };
    QLineEdit *first = add(u"first"_s);
    ui::showRow(*form, first, false); // before the others are there
    QLineEdit *second = add(u"second"_s);
    QLineEdit *third = add(u"third"_s);
    QLineEdit *fourth = add(u"fourth"_s);
    ui::showRow(*form, second, false);
    ui::showRow(*form, third, false);
    EXPECT_EQ(form->rowCount(), 1);
    EXPECT_TRUE(first->isHidden());
    ASSERT_TRUE(ui::captionOf(*form, third));
    EXPECT_EQ(ui::captionOf(*form, third)->text(), u"third"_s) << "also while its row is out";
    EXPECT_TRUE(ui::captionOf(*form, third)->isHidden());
    for (QLineEdit *field : {third, first, second, second})
        ui::showRow(*form, field, true);
    ASSERT_EQ(form->rowCount(), 4);
    int row = 0;
    for (QLineEdit *field : {first, second, third, fourth}) {
        EXPECT_EQ(form->itemAt(row, QFormLayout::FieldRole)->widget(), field) << row;
        EXPECT_FALSE(field->isHidden());
        EXPECT_EQ(static_cast<QLabel *>(form->itemAt(row++, QFormLayout::LabelRole)->widget())->buddy(), field);
    }
}

} // namespace plateau::ui
