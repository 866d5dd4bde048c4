// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/bench/stores.h"
#include "ui/books/cellsmodel.h"
#include "ui/books/laboratorydraft.h"
#include "ui/shared/fieldnote.h"
#include "ui/shared/notice.h"
#include "ui/shared/problemlist.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using Mode = QAbstractItemModelTester::FailureReportingMode;

const QByteArray svg =
    R"(<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><rect width="40" height="20"/></svg>)";

/// The laboratory page with somebody at the bench.
class LaboratoryWindow : public WindowBench
{
protected:
    void open()
    {
        openWindow();
        press(Qt::Key_P, Qt::AltModifier);
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
        press(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    }
    void goToSection(int number) { press(static_cast<Qt::Key>(Qt::Key_0 + number), Qt::AltModifier); }
    void save() { press(Qt::Key_S, Qt::ControlModifier); }
    /// By keys: to the field, all of its text away, the new one in.
    void key(const QString &field, const QString &text)
    {
        tabTo(field);
        press(Qt::Key_A, Qt::ControlModifier);
        press(Qt::Key_Delete);
        type(text);
    }
    void cell(const QString &table, int row, int column, const QString &text)
    {
        QAbstractItemModel &cells = model(table);
        EXPECT_TRUE(cells.setData(cells.index(row, column), text, Qt::EditRole)) << text.toStdString();
    }
    QAbstractItemModel &model(const QString &view) const { return *find<QAbstractItemView>(view)->model(); }
    QString shown(const QString &view, int row, int column) const
    {
        return model(view).index(row, column).data().toString();
    }
    /// What stands below the fields of the section on show.
    QStringList notes() const
    {
        QStringList texts;
        for (const ui::FieldNote *note : window->findChildren<ui::FieldNote *>()) {
            if (note->isVisible())
                texts << note->text();
        }
        return texts;
    }
    QStringList saidInThePage() const
    {
        QStringList sentences;
        for (const ui::Notice *notice : window->findChildren<ui::Notice *>()) {
            if (notice->isVisible())
                sentences << notice->sentence();
        }
        const auto *summary = window->findChild<QLabel *>(u"laboratorySummary"_s);
        if (summary->isVisible())
            sentences << summary->text();
        return sentences;
    }
};

TEST_F(LaboratoryWindow, StandsAtTheTopOfAHighWindow)
{
    open();
    window->setWindowState(Qt::WindowNoState);
    window->resize(1280, 1300);
    QApplication::processEvents();
    const auto *name = find<QLineEdit>(u"laboratoryName"_s);
    const auto *contact = find<QLineEdit>(u"laboratoryContact"_s);
    EXPECT_LT(contact->mapTo(window.get(), QPoint()).y() - name->mapTo(window.get(), QPoint()).y(), 10 * name->height());
}

TEST_F(LaboratoryWindow, IsCommonPracticeUntilSomebodySavesIt)
{
    open();
    EXPECT_THAT(
        saidInThePage(),
        ::testing::ElementsAre(u"Common practice, no source: replace it with your own. Nobody has saved this "
                               "laboratory yet; until then plans go by what stands here."_s));
    ASSERT_EQ(focusName(), u"laboratoryName"_s);
    type(u"Orchard bench"_s);
    goToSection(2);
    ASSERT_EQ(focusName(), u"rackRows"_s);
    key(u"rackRows"_s, u"1x"_s);
    ASSERT_EQ(model(u"laboratoryProblems"_s).rowCount(), 1);
    EXPECT_TRUE(shown(u"laboratoryProblems"_s, 0, 0).startsWith(u"Rows of a rack: "_s));
    save();
    EXPECT_FALSE(book->laboratorySaving().has_value());
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(dialogs.questions.value(0).contains(u"Changes to the laboratory that are not saved yet"_s));

    key(u"rackRows"_s, u"8"_s);
    key(u"rackColumns"_s, u"12"_s);
    save();
    const planning::Laboratory saved = book->laboratory();
    EXPECT_EQ(saved.name, u"Orchard bench"_s);
    EXPECT_EQ(saved.rackRows, 8);
    EXPECT_EQ(saved.rackColumns, 12);
    EXPECT_EQ(saved.glassware, planning::usualLaboratory().glassware);
    ASSERT_TRUE(book->laboratorySaving());
    EXPECT_EQ(book->laboratorySaving()->version, 1);
    EXPECT_EQ(book->laboratorySaving()->person, u"R. Okafor"_s);
}

TEST_F(LaboratoryWindow, OneSentenceSaysWhatWasStored)
{
    open();
    type(u"Orchard bench"_s);
    EXPECT_EQ(saidInThePage().size(), 2) << "where it comes from, and that it was changed";
    save();
    ASSERT_EQ(saidInThePage().size(), 1) << saidInThePage().join(u'\n').toStdString();
    EXPECT_TRUE(saidInThePage()[0].startsWith(u"Version 1, saved by R. Okafor, "_s));
    EXPECT_TRUE(saidInThePage()[0].contains(u" Stored: name and report head. "_s))
        << saidInThePage()[0].toStdString();
    save();
    EXPECT_THAT(saidInThePage(),
                ::testing::ElementsAre(u"There is nothing to save: version 1 says exactly this."_s));
    EXPECT_EQ(book->laboratorySaving()->version, 1) << "the same is not saved twice";
    type(u"es"_s);
    EXPECT_FALSE(saidInThePage()[0].contains(u"Stored:"_s)) << "that is history";
    press(Qt::Key_D, Qt::AltModifier);
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return find<QLineEdit>(u"laboratoryName"_s)->text() == u"Orchard bench"_s; }));
}

TEST_F(LaboratoryWindow, EveryFieldIsKeyedSavedAndThereAgain)
{
    dialogs.nextFile = writeFile(u"logo.svg"_s, svg);
    open();
    key(u"laboratoryName"_s, u"Orchard bench"_s);
    tabTo(u"laboratoryAddress"_s);
    type(u"Orchard Lane 4"_s);
    press(Qt::Key_Return);
    type(u"Threnholt"_s);
    key(u"laboratoryContact"_s, u"bench@threnholt.example"_s);
    tabTo(u"loadLogo"_s);
    press(Qt::Key_Space);
    goToSection(4);
    ASSERT_EQ(focusName(), u"photometerName"_s);
    type(u"P1"_s);
    key(u"photometerAbsorbance"_s, u"0,0012"_s);
    key(u"photometerPathLength"_s, u"0.1"_s);
    tabTo(u"photometerSource"_s);
    type(u"check record 7"_s);
    key(u"photometerCheckedOn"_s, u"2026-09-14"_s);
    goToSection(5);
    ASSERT_EQ(focusName(), u"methodUncertainties"_s);
    const QAbstractItemModelTester methods(&model(u"methodUncertainties"_s), Mode::Warning);
    cell(u"methodUncertainties"_s, 0, ui::methodUncertainty::Method, u"example-acid"_s);
    cell(u"methodUncertainties"_s, 0, ui::methodUncertainty::Absorptivity_percent, u"0,3"_s);
    cell(u"methodUncertainties"_s, 0, ui::methodUncertainty::Source, u"validation of 2026"_s);
    EXPECT_EQ(shown(u"methodUncertainties"_s, 0, 0), u"Example acid"_s) << "by its name";
    goToSection(6);
    const QAbstractItemModelTester units(&model(u"reportUnits"_s), Mode::Warning);
    cell(u"reportUnits"_s, 0, ui::reportUnit::Product, u"Perry"_s);
    cell(u"reportUnits"_s, 0, ui::reportUnit::Measurand, u"example-acid"_s);
    cell(u"reportUnits"_s, 0, ui::reportUnit::Unit, u"mg/L"_s);
    goToSection(7);
    ASSERT_EQ(focusName(), u"reviewerDecides"_s);
    press(Qt::Key_Space);
    press(Qt::Key_Tab);
    press(Qt::Key_Space);
    const QAbstractItemModelTester reasons(&model(u"rejectionReasons"_s), Mode::Warning);
    cell(u"rejectionReasons"_s, 0, 0, u"spilt"_s);
    EXPECT_FALSE(window->findChild<ui::ProblemList *>(u"laboratoryProblems"_s)->isVisible())
        << "nothing is wrong";
    save();

    planning::Laboratory wanted = planning::usualLaboratory();
    wanted.name = u"Orchard bench"_s;
    wanted.reportHead = {{u"Orchard Lane 4"_s, u"Threnholt"_s},
                         u"bench@threnholt.example"_s,
                         planning::Logo{planning::LogoKind::Svg, svg}};
    wanted.photometer = planning::Photometer{u"P1"_s, 0.0012, 0.1, u"check record 7"_s, QDate(2026, 9, 14)};
    wanted.methodUncertainties = {{u"example-acid"_s, u"validation of 2026"_s, {}, 0.3, {}, {}, {}, {}, {}}};
    wanted.reportUnits = {{u"Perry"_s, u"example-acid"_s, evaluation::ReportUnit::MilligramPerLitre}};
    wanted.review.reviewerDecides = true;
    wanted.review.secondPersonReviews = true;
    wanted.review.rejectionReasons[0] = u"spilt"_s;
    EXPECT_EQ(book->laboratory(), wanted) << noticeText().toStdString();

    window.reset();
    open();
    EXPECT_EQ(find<QLineEdit>(u"laboratoryName"_s)->text(), u"Orchard bench"_s);
    EXPECT_EQ(find<QPlainTextEdit>(u"laboratoryAddress"_s)->toPlainText(), u"Orchard Lane 4\nThrenholt"_s);
    EXPECT_TRUE(labelText(u"logoText"_s).startsWith(u"SVG, 1 kB."_s));
    goToSection(4);
    EXPECT_EQ(find<QLineEdit>(u"photometerAbsorbance"_s)->text(), u"0.0012"_s);
    EXPECT_EQ(find<QPlainTextEdit>(u"photometerSource"_s)->toPlainText(), u"check record 7"_s);
    goToSection(5);
    EXPECT_EQ(shown(u"methodUncertainties"_s, 0, ui::methodUncertainty::Absorptivity_percent), u"0.3"_s);
    goToSection(6);
    EXPECT_EQ(shown(u"reportUnits"_s, 0, ui::reportUnit::Measurand), u"Example acid"_s);
    goToSection(7);
    EXPECT_TRUE(find<QCheckBox>(u"secondPersonReviews"_s)->isChecked());
    EXPECT_EQ(book->laboratorySaving()->version, 1) << "looking changes nothing";
}

TEST_F(LaboratoryWindow, TablesAreFilledByKeysAlone)
{
    open();
    goToSection(6);
    ASSERT_EQ(focusName(), u"reportUnits"_s);
    type(u"Perry"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(find<QTableView>(u"reportUnits"_s)->currentIndex().column(), int{ui::reportUnit::Measurand});
    press(Qt::Key_Right);
    press(Qt::Key_F2);
    auto *box = qobject_cast<QComboBox *>(QApplication::focusWidget());
    ASSERT_NE(box, nullptr);
    press(Qt::Key_M); // mg/L
    press(Qt::Key_Return);
    EXPECT_EQ(shown(u"reportUnits"_s, 0, ui::reportUnit::Unit), u"mg/L"_s);
    save();
    EXPECT_EQ(
        book->laboratory().reportUnits,
        (std::vector<planning::ProductUnit>{{u"Perry"_s, {}, evaluation::ReportUnit::MilligramPerLitre}}));
}

TEST_F(LaboratoryWindow, GlasswareIsEditedInItsTables)
{
    open();
    goToSection(3);
    QAbstractItemModel &flasks = model(u"flasks"_s);
    const QAbstractItemModelTester tester(&flasks, Mode::Warning);
    const int before = flasks.rowCount();
    cell(u"flasks"_s, before - 1, 0, u"flask 500 mL"_s);
    EXPECT_EQ(model(u"laboratoryProblems"_s).rowCount(), 2) << "volume and uncertainty";
    cell(u"flasks"_s, before - 1, 1, u"500"_s);
    cell(u"flasks"_s, before - 1, 2, u"0,03"_s);
    save();
    EXPECT_EQ(book->laboratory().glassware.flasks.back(), (planning::Flask{u"flask 500 mL"_s, 500, 0.03}));
    cell(u"flasks"_s, 0, 0, u"other"_s);
    find<QPushButton>(u"dropLaboratoryChanges"_s)->click();
    EXPECT_EQ(shown(u"flasks"_s, 0, 0), u"flask 10 mL"_s);
}

TEST_F(LaboratoryWindow, WhatIsWrongStandsBelowItsFieldAndMarksItsSection)
{
    open();
    goToSection(4);
    type(u"P1"_s);
    key(u"photometerAbsorbance"_s, u"0.0012"_s);
    EXPECT_THAT(notes(),
                ::testing::ElementsAre(u"Is blank; say which record or certificate the numbers come from"_s));
    EXPECT_EQ(find<QPlainTextEdit>(u"photometerSource"_s)->accessibleDescription(), notes().value(0));
    const auto *sections = find<QListWidget>(u"laboratorySections"_s);
    EXPECT_FALSE(sections->item(3)->icon().isNull());
    EXPECT_TRUE(sections->item(0)->icon().isNull());
    EXPECT_TRUE(sections->item(3)->data(Qt::AccessibleTextRole).toString().endsWith(u"to be put right: 1"_s));
    goToSection(1);
    save();
    EXPECT_EQ(focusName(), u"laboratoryProblems"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(focusName(), u"photometerSource"_s) << "Enter goes there";
    type(u"check record 7"_s);
    EXPECT_TRUE(notes().isEmpty());
    EXPECT_TRUE(sections->item(3)->icon().isNull());
    save();
    EXPECT_EQ(book->laboratory().photometer->absorbance, 0.0012);
}

TEST_F(LaboratoryWindow, ARefusedRowNamesItsCell)
{
    open();
    goToSection(5);
    cell(u"methodUncertainties"_s, 0, ui::methodUncertainty::Method, u"example-acid"_s);
    EXPECT_THAT(
        notes(),
        ::testing::ElementsAre(::testing::AllOf(
            ::testing::ResultOf([](const QString &n) { return n.contains(u"Row 1, source: "_s); }, true),
            ::testing::ResultOf([](const QString &n) { return n.contains(u"at least one"_s); }, true))));
    cell(u"methodUncertainties"_s, 0, ui::methodUncertainty::Extract_percent, u"1x"_s);
    save();
    EXPECT_FALSE(book->laboratorySaving().has_value());
    EXPECT_EQ(shown(u"methodUncertainties"_s, 0, ui::methodUncertainty::Extract_percent), u"1x"_s)
        << "nothing typed is lost";
}

TEST_F(LaboratoryWindow, ALogoIsLoadedReplacedAndRemovedAndNoLogoIsRefused)
{
    open();
    EXPECT_FALSE(find<QPushButton>(u"removeLogo"_s)->isEnabled());
    find<QPushButton>(u"loadLogo"_s)->click();
    EXPECT_TRUE(labelText(u"logoText"_s).startsWith(u"A PNG or SVG picture"_s)) << "thought better of it";

    dialogs.nextFile = writeFile(u"notes.txt"_s, "Orchard Lane 4");
    find<QPushButton>(u"loadLogo"_s)->click();
    ASSERT_EQ(notes().size(), 1);
    EXPECT_TRUE(notes()[0].startsWith(u"notes.txt was not taken: it is neither a PNG nor an SVG picture."_s));
    EXPECT_EQ(saidInThePage().size(), 1) << "nothing was changed";

    dialogs.nextFile = writeFile(u"logo.svg"_s, svg);
    find<QPushButton>(u"loadLogo"_s)->click();
    EXPECT_TRUE(notes().isEmpty());
    EXPECT_FALSE(find<QLabel>(u"logoPicture"_s)->pixmap().isNull());
    dialogs.nextFile = writeFile(u"page.html"_s, "<html/>");
    find<QPushButton>(u"loadLogo"_s)->click();
    EXPECT_EQ(notes().size(), 1);
    EXPECT_TRUE(labelText(u"logoText"_s).startsWith(u"SVG, 1 kB."_s)) << "what was there stays";
    save();
    ASSERT_TRUE(book->laboratory().reportHead.logo);
    EXPECT_EQ(book->laboratory().reportHead.logo->bytes, svg);

    find<QPushButton>(u"removeLogo"_s)->click();
    EXPECT_EQ(focusName(), u"loadLogo"_s);
    save();
    EXPECT_FALSE(book->laboratory().reportHead.logo);
}

TEST_F(LaboratoryWindow, WithoutANameNothingIsSavedAndNothingIsLost)
{
    openWindow();
    press(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    type(u"Orchard bench"_s);
    save();
    EXPECT_FALSE(book->laboratorySaving().has_value());
    EXPECT_EQ(focusName(), u"person"_s);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(find<QLineEdit>(u"laboratoryName"_s)->text(), u"Orchard bench"_s);
    find<QPushButton>(u"saveLaboratory"_s)->click();
    EXPECT_EQ(book->laboratory().name, u"Orchard bench"_s);
}

TEST_F(LaboratoryWindow, WhatIsSavedElsewhereMeanwhileIsNotOverwritten)
{
    open();
    type(u"Orchard bench"_s);
    planning::Laboratory other = planning::usualLaboratory();
    other.photometer = planning::Photometer{u"P2"_s, 0.0015, {}, u"check record 8"_s, {}};
    EXPECT_TRUE(window->findChild<ui::Stores *>()->saveLaboratory(other));
    EXPECT_EQ(find<QLineEdit>(u"laboratoryName"_s)->text(), u"Orchard bench"_s) << "what was typed stays";
    goToSection(4);
    EXPECT_EQ(find<QLineEdit>(u"photometerName"_s)->text(), u"P2"_s);
    save();
    other.name = u"Orchard bench"_s;
    EXPECT_EQ(book->laboratory(), other);
    EXPECT_TRUE(saidInThePage().value(0).contains(u"Stored: name and report head."_s));
}

TEST_F(LaboratoryWindow, AMethodThatIsGoneKeepsItsRow)
{
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.methodUncertainties = {{u"of-old"_s, u"validation of 2020"_s, 0.001, {}, {}, {}, {}, {}, {}}};
    laboratory.reportUnits = {{u"Perry"_s, u"of-old"_s, evaluation::ReportUnit::GramPerLitre}};
    book->saveLaboratory(laboratory, u"M. Lindqvist"_s);
    open();
    goToSection(5);
    EXPECT_EQ(shown(u"methodUncertainties"_s, 0, 0), u"of-old"_s);
    goToSection(6);
    EXPECT_EQ(shown(u"reportUnits"_s, 0, ui::reportUnit::Measurand), u"of-old"_s);
    goToSection(1);
    key(u"laboratoryName"_s, u"Orchard bench"_s);
    save();
    laboratory.name = u"Orchard bench"_s;
    EXPECT_EQ(book->laboratory(), laboratory);
}

} // namespace
} // namespace plateau::test
