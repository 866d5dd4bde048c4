// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "ui/bench/labelsheetdialog.h"
#include "ui/bench/labelsheetpicture.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"

#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include <gtest/gtest.h>

#include <set>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using ui::LabelChoice;
using ui::LabelSheet;
using ui::LabelSheetDialog;
using ui::Paper;
using ui::usualLabels;

/// 3 x 8 labels of 60 x 30 mm.
const LabelSheet flasks{Paper::A4, 3, 8, 60, 30, 10, 20, 2.5, 1.5};

class LabelForm : public ::testing::Test
{
protected:
    /// Ten labels to print.
    void open(const LabelChoice &choice)
    {
        form = std::make_unique<LabelSheetDialog>(theme, 10, choice);
        form->show();
        form->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(form.get()));
    }
    void SetUp() override { open({flasks, 5, u"M. Keel"_s}); }

    void retype(const QString &field, const QString &text) const
    {
        form->findChild<QLineEdit *>(field)->setText(text);
    }
    bool canSave() const { return form->findChild<QPushButton *>(u"saveLabels"_s)->isEnabled(); }
    QString words() const { return form->findChild<QLabel *>(u"labelSheetWords"_s)->text(); }
    QString sentence() const
    {
        const auto *notice = form->findChild<ui::Notice *>();
        return notice->isVisible() ? notice->sentence() : QString();
    }

    ui::Theme theme;
    std::unique_ptr<LabelSheetDialog> form;
};

TEST_F(LabelForm, GivesBackWhatItWasFilledInWith)
{
    EXPECT_EQ(form->choice(), (LabelChoice{flasks, 5, u"M. Keel"_s}));
    EXPECT_EQ(sentence(), QString());
    EXPECT_TRUE(canSave());
}

TEST_F(LabelForm, EveryFieldReachesItsPartOfTheSheet)
{
    const std::pair<QString, QString> typed[] = {
        {u"labelColumns"_s, u"2"_s},       {u"labelRows"_s, u"4"_s},   {u"labelWidth"_s, u"70,5"_s},
        {u"labelHeight"_s, u"35.5"_s},     {u"labelLeft"_s, u"7"_s},   {u"labelTop"_s, u"9"_s},
        {u"labelColumnGap"_s, u"3"_s},     {u"labelRowGap"_s, u"0"_s}, {u"labelFirstFree"_s, u"8"_s},
        {u"labelBy"_s, u"  R.  Okafor "_s}};
    for (const auto &[field, text] : typed)
        retype(field, text);
    EXPECT_EQ(form->choice(), (LabelChoice{{Paper::A4, 2, 4, 70.5, 35.5, 7, 9, 3, 0}, 8, u"R. Okafor"_s}));
    EXPECT_TRUE(canSave());
}

struct Wrong {
    QString field;
    QString text;
    QString said;
};

TEST_F(LabelForm, WhatCannotBePrintedIsSaidAtOnceAndCannotBeAccepted)
{
    const Wrong wrong[] = {
        {u"labelColumns"_s, u"0"_s, u"Columns: type a whole number"_s},
        {u"labelColumns"_s, u"2.5"_s, u"Columns: type a whole number"_s},
        {u"labelColumns"_s, u"1e12"_s, u"Columns: "_s},
        {u"labelRows"_s, u""_s, u"Rows: type a number."_s},
        {u"labelWidth"_s, u"6o"_s, u"Width of a label: "_s},
        {u"labelWidth"_s, u"70"_s, u"The labels take 225\u00a0mm by"_s},
        {u"labelHeight"_s, u"5"_s, u"can't be read"_s},
        {u"labelTop"_s, u"-1"_s, u"0 mm or more"_s},
        {u"labelRowGap"_s, u"20"_s, u"but the paper has only 210\u00a0mm by 297\u00a0mm"_s},
        {u"labelFirstFree"_s, u"25"_s, u"the sheet has labels 1 to 24"_s},
        {u"labelFirstFree"_s, u"0"_s, u"First free label: type a whole number"_s},
    };
    for (const Wrong &row : wrong) {
        const QString before = form->findChild<QLineEdit *>(row.field)->text();
        retype(row.field, row.text);
        EXPECT_TRUE(sentence().contains(row.said))
            << row.field.toStdString() << ": " << sentence().toStdString();
        EXPECT_FALSE(canSave()) << row.field.toStdString() << ' ' << row.text.toStdString();
        form->accept();
        EXPECT_TRUE(form->isVisible());
        EXPECT_NE(form->result(), QDialog::Accepted);
        retype(row.field, before);
        EXPECT_EQ(sentence(), QString());
        EXPECT_TRUE(canSave());
    }
}

TEST_F(LabelForm, TheSheetSaysWhichLabelComesFirst)
{
    EXPECT_EQ(
        words(),
        u"Labels to print: 10, from label 5 of 24 on (row 2, column 2). Sheets needed: 1. Hatched: used."_s);
    retype(u"labelFirstFree"_s, u"16"_s); // 16 to 24 are nine
    EXPECT_EQ(
        words(),
        u"Labels to print: 10, from label 16 of 24 on (row 6, column 1). Sheets needed: 2. Hatched: used."_s);
    auto *picture = form->findChild<ui::LabelSheetPicture *>();
    QAccessibleInterface *interface = QAccessible::queryAccessibleInterface(picture);
    EXPECT_EQ(interface->text(QAccessible::Name), u"The sheet of labels"_s);
    EXPECT_EQ(interface->text(QAccessible::Description), words());
    retype(u"labelFirstFree"_s, u"1"_s);
    EXPECT_EQ(words(), u"Labels to print: 10, from label 1 of 24 on (row 1, column 1). Sheets needed: 1."_s)
        << "nothing is hatched";
    retype(u"labelFirstFree"_s, u"25"_s);
    EXPECT_FALSE(words().contains(u"25"_s));
}

TEST_F(LabelForm, TheDrawingFollowsTheFirstFreeLabel)
{
    auto *picture = form->findChild<ui::LabelSheetPicture *>();
    const QImage fifth = picture->grab().toImage();
    retype(u"labelFirstFree"_s, u"6"_s);
    const QImage sixth = picture->grab().toImage();
    EXPECT_NE(fifth, sixth);
    retype(u"labelFirstFree"_s, u"5"_s);
    EXPECT_EQ(picture->grab().toImage(), fifth);
}

TEST_F(LabelForm, AnotherPaperTakesItsUsualSheetButKeepsOneThatWasTyped)
{
    auto *paper = form->findChild<QComboBox *>(u"labelPaper"_s);
    paper->setCurrentIndex(1);
    LabelSheet typed = flasks;
    typed.paper = Paper::Letter;
    EXPECT_EQ(form->choice().sheet, typed);
    form->findChild<QPushButton *>(u"usualLabels"_s)->click();
    EXPECT_EQ(form->choice().sheet, usualLabels(Paper::Letter));
    paper->setCurrentIndex(0);
    EXPECT_EQ(form->choice().sheet, usualLabels(Paper::A4));
}

TEST_F(LabelForm, IsFilledInAndAcceptedByTheKeyboardAlone)
{
    std::set<QString> passed;
    for (int step = 0; step < 20; ++step) {
        QWidget *focus = QApplication::focusWidget();
        ASSERT_NE(focus, nullptr);
        passed.insert(focus->objectName());
        if (focus->objectName() == "labelRows"_L1) {
            QTest::keyClick(focus, Qt::Key_A, Qt::ControlModifier);
            QTest::keyClicks(focus, u"7"_s);
        }
        QTest::keyClick(focus, Qt::Key_Tab);
    }
    EXPECT_EQ(passed.size(), 14u); // paper, nine numbers, the name, three buttons
    QTest::keyClick(form->findChild<QLineEdit *>(u"labelRows"_s), Qt::Key_Return);
    EXPECT_EQ(form->result(), QDialog::Accepted);
    EXPECT_EQ(form->choice().sheet.rows, 7);
}

TEST_F(LabelForm, EveryFieldHasANameAndEveryMnemonicIsThereOnce)
{
    std::set<QString> mnemonics;
    int fields = 0;
    const auto take = [&](const QString &text) {
        const QString keys = QKeySequence::mnemonic(text).toString();
        EXPECT_TRUE(keys.isEmpty() || mnemonics.insert(keys).second) << text.toStdString();
    };
    for (const QLabel *label : form->findChildren<QLabel *>()) {
        if (label->buddy())
            take(label->text());
    }
    for (const QPushButton *push : form->findChildren<QPushButton *>())
        take(push->text());
    for (QLineEdit *edit : form->findChildren<QLineEdit *>()) {
        EXPECT_FALSE(QAccessible::queryAccessibleInterface(edit)->text(QAccessible::Name).isEmpty())
            << edit->objectName().toStdString();
        EXPECT_GE(edit->height(), 24);
        ++fields;
    }
    EXPECT_EQ(fields, 10);
    EXPECT_EQ(mnemonics.size(), 13u); // all but Cancel, which has Escape
}

class LabelSettings : public ::testing::Test
{
protected:
    QSettings settings() const { return {path, QSettings::IniFormat}; }
    void keep(const LabelChoice &choice) const
    {
        QSettings written(path, QSettings::IniFormat);
        ASSERT_TRUE(ui::keepLabels(written, choice));
    }

    QTemporaryDir folder;
    QString path = folder.filePath(u"plateau.ini"_s);
};

TEST_F(LabelSettings, KeepTheSheetAndTheFirstFreeLabelButNobodysName)
{
    keep({flasks, 5, u"M. Keel"_s});
    EXPECT_EQ(ui::keptLabels(settings(), Paper::Letter), (LabelChoice{flasks, 5, {}}));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_FALSE(file.readAll().contains("Keel"));
}

TEST_F(LabelSettings, GiveTheUsualSheetWhereTheyHoldNothingOrNonsense)
{
    const LabelChoice usual{usualLabels(Paper::Letter), 1, {}};
    EXPECT_EQ(ui::keptLabels(settings(), Paper::Letter), usual);
    const std::pair<QString, QVariant> nonsense[] = {
        {u"paper"_s, u"papyrus"_s},
        {u"columns"_s, u"three"_s},
        {u"columns"_s, 2147483647},
        {u"rows"_s, 0},
        {u"rows"_s, u"8.5"_s},
        {u"width_mm"_s, u"nan"_s},
        {u"height_mm"_s, u"1e300"_s},
        {u"left_mm"_s, -4},
        {u"top_mm"_s, u"inf"_s},
        {u"columnGap_mm"_s, u""_s},
        {u"rowGap_mm"_s, QStringList{u"1"_s, u"5"_s}},
        {u"firstFree"_s, 25},
        {u"firstFree"_s, u"x"_s},
    };
    for (const auto &[key, value] : nonsense) {
        keep({flasks, 5, {}});
        QSettings spoilt(path, QSettings::IniFormat);
        spoilt.setValue(u"labels/"_s + key, value);
        spoilt.sync();
        EXPECT_EQ(ui::keptLabels(settings(), Paper::Letter), usual) << key.toStdString();
    }
}

TEST_F(LabelSettings, ThatCannotBeWrittenAreNotTakenForKept)
{
    QSettings nowhere(u"/proc/no/such/plateau.ini"_s, QSettings::IniFormat);
    EXPECT_FALSE(ui::keepLabels(nowhere, {flasks, 5, {}}));
}

TEST(LabelChoices, TheNextFirstFreeLabelComesAfterTheLastPrintedOne)
{
    EXPECT_EQ(ui::firstFreeAfter({flasks, 5, {}}, 10), 15);
    EXPECT_EQ(ui::firstFreeAfter({flasks, 15, {}}, 10), 1); // to the last of the sheet
    EXPECT_EQ(ui::firstFreeAfter({flasks, 16, {}}, 10), 2); // one on the second sheet
    EXPECT_EQ(ui::firstFreeAfter({flasks, 1, {}}, 50), 3);
}

} // namespace
} // namespace plateau::test
