// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The book of records: who did what, whether it is whole, and how it is kept.
#include "tests/ui/bench.h"
#include "ui/books/copiesview.h"
#include "ui/books/keeper.h"
#include "ui/books/trailmodel.h"
#include "ui/books/trailview.h"
#include "ui/books/verifying.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class Records : public Bench
{
protected:
    Records()
        : notice(theme)
    {
        run = addRun(exampleRun());
        book->addReading(run, 0, u"A1"_s, 0.914, u"0,914"_s, u"M. Lindqvist"_s);
        book->correctReading(run, 0, u"A1"_s, 0.194, u"0.194"_s, u"M. Lindqvist"_s, u"digits were swapped"_s);
    }
    std::unique_ptr<QSettings> settings() const
    {
        return std::make_unique<QSettings>(folder.filePath(u"settings.ini"_s), QSettings::IniFormat);
    }
    template <class T> static T *in(QWidget &widget, const QString &name)
    {
        T *found = widget.findChild<T *>(name);
        EXPECT_NE(found, nullptr) << name.toStdString();
        return found;
    }

    ui::Theme theme;
    ui::Notice notice;
    notebook::RunId run;
};

} // namespace

TEST_F(Records, ListsActsWithOldAndNewValueAndReason)
{
    ui::TrailView view(theme, *book, notice);
    view.refresh();
    auto *table = in<QTableView>(view, u"trail"_s);
    const QAbstractItemModelTester tester(table->model());
    const auto cell = [&](int column) { return table->model()->index(0, column).data().toString(); };
    EXPECT_EQ(cell(ui::TrailModel::What), u"reading corrected"_s);
    EXPECT_EQ(cell(ui::TrailModel::Of), u"tube 1, A1"_s);
    EXPECT_EQ(cell(ui::TrailModel::Before), u"0.914"_s);
    EXPECT_EQ(cell(ui::TrailModel::After), u"0.194"_s);
    EXPECT_EQ(cell(ui::TrailModel::Reason), u"digits were swapped"_s);
    EXPECT_EQ(table->model()->rowCount(), book->auditHead().entries);
    EXPECT_TRUE(in<QPlainTextEdit>(view, u"trailDetails"_s)->toPlainText().contains(book->auditHead().hash));
}

TEST_F(Records, AreFilteredByWordsActsDaysAndRun)
{
    ui::TrailView view(theme, *book, notice);
    view.refresh();
    const auto *model = in<QTableView>(view, u"trail"_s)->model();
    auto *act = in<QComboBox>(view, u"trailAct"_s);
    act->setCurrentIndex(act->findData(u"readingCorrected"_s));
    EXPECT_EQ(model->rowCount(), 1);
    act->setCurrentIndex(0);
    auto *from = in<QLineEdit>(view, u"trailFrom"_s);
    from->setText(u"2999-01-01"_s);
    view.refresh();
    EXPECT_EQ(model->rowCount(), 0);
    EXPECT_FALSE(in<QWidget>(view, u"trailEmpty"_s)->isHidden());
    from->setText(u"yesterday"_s);
    view.refresh();
    EXPECT_TRUE(notice.sentence().contains(u"year-month-day"_s));
    from->clear();
    view.showRun(run);
    EXPECT_EQ(model->rowCount(), static_cast<int>(book->history(run).size()));
    EXPECT_TRUE(notice.sentence().isEmpty());
}

TEST_F(Records, AreBackedUpByThemselvesOnlyWhereTheyHaveChanged)
{
    ui::Keeper keeper(*book, settings());
    keeper.setRoot(folder.filePath(u"kept"_s));
    keeper.backUpIfChanged();
    EXPECT_TRUE(keeper.backups().empty()); // nobody asked for it
    keeper.start();
    EXPECT_EQ(keeper.backups().size(), 1U);
    keeper.backUpIfChanged();
    EXPECT_EQ(keeper.backups().size(), 1U);
    book->addReading(run, 1, u"A1"_s, 0.1, u"0.1"_s, u"M. Lindqvist"_s);
    keeper.backUpIfChanged();
    EXPECT_EQ(keeper.backups().size(), 2U);

    writeFile(u"file"_s, "no folder");
    keeper.setRoot(folder.filePath(u"file"_s));
    const QSignalSpy failed(&keeper, &ui::Keeper::failed);
    keeper.backUpIfChanged();
    ASSERT_EQ(failed.size(), 1);
    EXPECT_TRUE(failed[0][0].toString().contains(u"the notebook itself is whole"_s));
}

TEST_F(Records, AreRestoredExportedAndImportedFromThePage)
{
    ui::Keeper keeper(*book, settings());
    keeper.setRoot(folder.filePath(u"kept"_s));
    QuietDialogs::Log log;
    QuietDialogs dialogs(log);
    ui::CopiesView view(theme, dialogs, keeper, notice);
    view.refresh();
    EXPECT_FALSE(in<QWidget>(view, u"backupsEmpty"_s)->isHidden());
    EXPECT_FALSE(in<QPushButton>(view, u"restoreBackup"_s)->isEnabled());
    in<QPushButton>(view, u"backUpNow"_s)->click();
    EXPECT_TRUE(notice.sentence().startsWith(u"Made and checked"_s)) << notice.sentence().toStdString();

    log.nextFile = folder.filePath(u"restored.plateau"_s);
    in<QPushButton>(view, u"restoreBackup"_s)->click();
    const auto headOf = [](const QString &path) {
        return notebook::Notebook::open(path, notebook::Access::ReadOnly)->auditHead().hash;
    };
    EXPECT_EQ(headOf(log.nextFile), book->auditHead().hash);
    in<QPushButton>(view, u"restoreBackup"_s)->click(); // the name is taken now
    EXPECT_TRUE(notice.sentence().contains(u"already"_s));

    log.nextFolder = folder.filePath(u"out"_s);
    QDir().mkpath(log.nextFolder);
    in<QPushButton>(view, u"exportAll"_s)->click();
    const QStringList made = QDir(log.nextFolder).entryList(QDir::Dirs | QDir::NoDotAndDotDot);
    ASSERT_EQ(made.size(), 1);
    log.nextFolder += u'/' + made.front();
    log.nextFile = folder.filePath(u"imported.plateau"_s);
    in<QPushButton>(view, u"importAll"_s)->click();
    EXPECT_EQ(headOf(log.nextFile), book->auditHead().hash);

    log.nextFile = folder.filePath(u"archive.plateau"_s);
    in<QPushButton>(view, u"archiveYear"_s)->click(); // nothing was done last year
    EXPECT_FALSE(QFile::exists(log.nextFile));
    EXPECT_TRUE(notice.sentence().contains(u"nothing of"_s)) << notice.sentence().toStdString();
}

TEST_F(Records, AreVerifiedBesideTheWork)
{
    ui::Verifying verifying(*book);
    const QSignalSpy progressed(&verifying, &ui::Verifying::progressed);
    QSignalSpy finished(&verifying, &ui::Verifying::finished);
    verifying.start();
    EXPECT_TRUE(verifying.isRunning());
    book->addReading(run, 1, u"A1"_s, 0.1, u"0.1"_s, u"M. Lindqvist"_s); // the bench goes on
    ASSERT_TRUE(finished.wait(30000));
    const auto verification = finished[0][0].value<notebook::Verification>();
    EXPECT_TRUE(verification.sound());
    EXPECT_EQ(verification.auditEntries, book->auditHead().entries - 1);
    EXPECT_GT(progressed.size(), 0);
}

} // namespace plateau::test
