// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The book of records: who did what, whether it is whole, and how it is kept.
#include "tests/ui/bench.h"
#include "ui/books/copiesview.h"
#include "ui/books/keeper.h"
#include "ui/books/longtask.h"
#include "ui/books/trailmodel.h"
#include "ui/books/trailview.h"
#include "ui/books/trailwords.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTableView>

#include <set>

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
    /// Until the backup that is being made, if one is, has ended.
    static void settle(const ui::Keeper &keeper)
    {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !keeper.isBackingUp(); }, 30000));
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
    ui::TrailView view(theme, *book);
    view.refresh();
    auto *table = in<QTableView>(view, u"trail"_s);
    const QAbstractItemModelTester tester(table->model());
    const auto cell = [&](int column) { return table->model()->index(0, column).data().toString(); };
    EXPECT_EQ(cell(ui::TrailModel::What), u"reading corrected"_s);
    EXPECT_EQ(cell(ui::TrailModel::Of), u"tube 1, A1"_s);
    EXPECT_EQ(cell(ui::TrailModel::Before), u"0.914"_s);
    EXPECT_EQ(cell(ui::TrailModel::After), u"0.194"_s);
    EXPECT_EQ(cell(ui::TrailModel::Reason), u"digits were swapped"_s);
    const int steps = static_cast<int>(book->keeping().audit({.actions = {u"schemaStep"_s}}).size());
    EXPECT_EQ(table->model()->rowCount(), book->auditHead().entries - steps);
    const int last = table->model()->rowCount() - 1;
    EXPECT_EQ(table->model()->index(last, ui::TrailModel::What).data().toString(), u"notebook made"_s);
    QStringList subjects;
    for (int row = 0; row <= last; ++row)
        subjects << table->model()->index(row, ui::TrailModel::Of).data().toString();
    EXPECT_FALSE(subjects.filter(u" tubes by "_s).isEmpty()) << subjects.join(u'\n').toStdString();
    EXPECT_TRUE(in<QPlainTextEdit>(view, u"trailDetails"_s)->toPlainText().contains(book->auditHead().hash));
}

TEST(TrailWords, KnowEveryActThatTheNotebookWrites)
{
    const QDir sources(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/core/notebook"_s);
    const QRegularExpression begun(u"\\bact\\([^;]*;"_s, QRegularExpression::CaseInsensitiveOption);
    const QRegularExpression named(u"u\"([a-z]+[A-Z]\\w*)\"_s"_s);
    std::set<QString> acts;
    for (const QString &name : sources.entryList({u"*.cpp"_s})) {
        QFile file(sources.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(file.readAll());
        for (auto act = begun.globalMatch(text); act.hasNext();) {
            const QString statement = act.next().captured();
            for (auto word = named.globalMatch(statement); word.hasNext();)
                acts.insert(word.next().captured(1));
        }
    }
    EXPECT_GT(acts.size(), 50U);
    for (const QString &act : acts)
        EXPECT_TRUE(ui::hasActText(act)) << act.toStdString();
    EXPECT_FALSE(ui::hasActText(u"lotWeighed"_s));
    EXPECT_EQ(ui::actText(u"lotWeighed"_s), u"lot weighed"_s);
}

TEST(TrailWords, HaveTheDecimalSignOfTheWindowAndNothingOfTheFilesInside)
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    EXPECT_EQ(ui::valueText({{}, u"0.881"_s, true}), u"0,881"_s);
    EXPECT_EQ(ui::valueText({u"volume (mL)"_s, u"-1.5"_s, true}), u"volume (mL): \u22121,5"_s);
    EXPECT_EQ(ui::valueText({u"name"_s, u"2.104"_s}), u"name: 2.104"_s); // what somebody calls a sample
    notebook::AuditEntry entry;
    entry.action = u"schemaStep"_s;
    entry.details = u"schema 6: what stands behind a decision"_s;
    EXPECT_EQ(ui::detailsText(entry), u"form 6 of the file"_s);
    entry.action = u"notebookCreated"_s;
    EXPECT_TRUE(ui::detailsText(entry).isEmpty());
    entry.action = u"reportChosen"_s;
    entry.details = u"P-104, analyte: meanOfAccepted"_s;
    EXPECT_EQ(ui::detailsText(entry), u"P-104, analyte: the mean of the accepted results"_s);
    QLocale::setDefault(before);
}

TEST_F(Records, AreSearchedInWhatTheTableShowsAsOneTypes)
{
    ui::TrailView view(theme, *book);
    view.refresh();
    const auto *model = in<QTableView>(view, u"trail"_s)->model();
    const int all = model->rowCount();
    auto *words = in<QLineEdit>(view, u"trailWords"_s);
    const auto typed = [&](const QString &text) {
        words->setText(text);
        EXPECT_TRUE(QTest::qWaitFor([&] { return model->rowCount() != all; }, 3000)) << text.toStdString();
        const int rows = model->rowCount();
        words->clear();
        EXPECT_TRUE(QTest::qWaitFor([&] { return model->rowCount() == all; }, 3000));
        return rows;
    };
    EXPECT_EQ(typed(u"digits were swapped"_s), 1) << "the reason";
    EXPECT_EQ(typed(u"reading corrected"_s), 1) << "what was done";
    EXPECT_EQ(typed(u"0,194"_s), 1) << "after, with the other decimal sign";
    EXPECT_EQ(typed(u"0.914"_s), 2) << "stored, and before the correction";
    EXPECT_EQ(typed(u"nobody wrote this"_s), 0);
    EXPECT_TRUE(in<QWidget>(view, u"trailEmpty"_s)->isHidden());
}

TEST_F(Records, AreFilteredByWordsActsDaysAndRun)
{
    ui::TrailView view(theme, *book);
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
    const auto *said = view.findChild<ui::Notice *>();
    ASSERT_TRUE(said);
    EXPECT_TRUE(said->sentence().contains(u"2026-12-31"_s));
    from->clear();
    view.showRun(run);
    EXPECT_EQ(model->rowCount(), static_cast<int>(book->history(run).size()));
    EXPECT_TRUE(said->sentence().isEmpty());
}

TEST_F(Records, OfAnEarlierSearchAreNotShownBelowAFieldThatCannotBeRead)
{
    ui::TrailView view(theme, *book);
    view.resize(1200, 700);
    view.show();
    view.refresh();
    const auto *model = in<QTableView>(view, u"trail"_s)->model();
    const auto *details = in<QPlainTextEdit>(view, u"trailDetails"_s);
    const auto *older = in<QPushButton>(view, u"trailOlder"_s);
    const auto *said = view.findChild<ui::Notice *>();
    ASSERT_TRUE(said);
    const int all = model->rowCount();
    ASSERT_GT(all, 0);
    for (const auto &[name, typed] : {std::pair{u"trailFrom"_s, u"31/02/2026"_s},
                                      {u"trailTo"_s, u"2026-02-31"_s},
                                      {u"trailRun"_s, u"seven"_s}}) {
        auto *field = in<QLineEdit>(view, name);
        QApplication::processEvents();
        const QPoint before = field->mapTo(&view, QPoint());
        field->setText(typed);
        view.refresh();
        QApplication::processEvents();
        EXPECT_TRUE(said->sentence().contains(typed)) << said->sentence().toStdString();
        EXPECT_EQ(model->rowCount(), 0) << typed.toStdString();
        EXPECT_TRUE(details->toPlainText().isEmpty());
        EXPECT_FALSE(older->isEnabled());
        EXPECT_TRUE(in<QWidget>(view, u"trailEmpty"_s)->isHidden()) << "nothing was looked for";
        EXPECT_EQ(field->mapTo(&view, QPoint()), before) << "the filter moved";
        EXPECT_GE(said->mapTo(&view, QPoint()).y(), before.y() + field->height());
        field->clear();
        view.refresh();
        EXPECT_EQ(model->rowCount(), all);
        EXPECT_TRUE(said->isHidden());
    }
}

TEST_F(Records, AreBackedUpByThemselvesOnlyWhereTheyHaveChanged)
{
    ui::Keeper keeper(*book, settings());
    keeper.setRoot(folder.filePath(u"kept"_s));
    keeper.backUpIfChanged();
    EXPECT_TRUE(keeper.backups().empty()); // nobody asked for it
    keeper.start();
    settle(keeper);
    EXPECT_EQ(keeper.backups().size(), 1U);
    keeper.backUpIfChanged();
    EXPECT_FALSE(keeper.isBackingUp());
    book->addReading(run, 1, u"A1"_s, 0.1, u"0.1"_s, u"M. Lindqvist"_s);
    keeper.backUpIfChanged();
    keeper.backUpIfChanged(); // one at a time
    settle(keeper);
    EXPECT_EQ(keeper.backups().size(), 2U);

    writeFile(u"file"_s, "no folder");
    keeper.setRoot(folder.filePath(u"file"_s));
    const QSignalSpy failed(&keeper, &ui::Keeper::failed);
    keeper.backUpIfChanged();
    ASSERT_EQ(failed.size(), 1);
    EXPECT_TRUE(failed[0][0].toString().contains(u"the notebook itself is whole"_s));
}

TEST_F(Records, WhatIsKeptElsewhereStandsBelowTheBackupsThatThereAre)
{
    ui::Keeper keeper(*book, settings());
    keeper.setRoot(folder.filePath(u"kept"_s));
    QuietDialogs::Log log;
    QuietDialogs dialogs(log);
    ui::CopiesView view(theme, dialogs, keeper, notice);
    view.resize(1000, 900);
    view.show();
    view.refresh();
    const auto apart = [&view] {
        QApplication::processEvents();
        const auto *upper = in<QPushButton>(view, u"backUpNow"_s);
        const auto *lower = in<QPushButton>(view, u"exportAll"_s);
        return lower->mapTo(&view, QPoint()).y() - upper->mapTo(&view, QPoint()).y();
    };
    const int close = 10 * view.fontMetrics().height();
    EXPECT_LT(apart(), close);
    in<QPushButton>(view, u"backUpNow"_s)->click();
    settle(keeper);
    EXPECT_LT(apart(), close);
    const auto *table = in<QTableView>(view, u"backups"_s);
    EXPECT_LT(table->height(), 8 * table->rowHeight(0)) << "no higher than its one row needs";
    EXPECT_GT(table->viewport()->height(), table->rowHeight(0) - 1);
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
    EXPECT_TRUE(in<QTableView>(view, u"backups"_s)->isHidden());
    EXPECT_FALSE(in<QPushButton>(view, u"restoreBackup"_s)->isEnabled());
    in<QPushButton>(view, u"backUpNow"_s)->click();
    settle(keeper);
    EXPECT_TRUE(in<QWidget>(view, u"backupsEmpty"_s)->isHidden());
    EXPECT_FALSE(in<QTableView>(view, u"backups"_s)->isHidden());
    EXPECT_TRUE(notice.sentence().startsWith(u"Made and checked"_s)) << notice.sentence().toStdString();

    const auto clickAndWait = [&](const QString &name) {
        auto *starter = in<QPushButton>(view, name);
        starter->click();
        ASSERT_TRUE(QTest::qWaitFor([&] { return starter->isEnabled(); }, 30000));
    };
    log.nextFile = folder.filePath(u"restored.plateau"_s);
    clickAndWait(u"restoreBackup"_s);
    const auto headOf = [](const QString &path) {
        return notebook::Notebook::open(path, notebook::Access::ReadOnly)->auditHead().hash;
    };
    EXPECT_EQ(headOf(log.nextFile), book->auditHead().hash);
    clickAndWait(u"restoreBackup"_s); // the name is taken now
    EXPECT_TRUE(notice.sentence().contains(u"already"_s));

    log.nextFolder = folder.filePath(u"out"_s);
    QDir().mkpath(log.nextFolder);
    clickAndWait(u"exportAll"_s);
    const QStringList made = QDir(log.nextFolder).entryList(QDir::Dirs | QDir::NoDotAndDotDot);
    ASSERT_EQ(made.size(), 1);
    log.nextFolder += u'/' + made.front();
    log.nextFile = folder.filePath(u"imported.plateau"_s);
    clickAndWait(u"importAll"_s);
    EXPECT_EQ(headOf(log.nextFile), book->auditHead().hash);

    log.nextFile = folder.filePath(u"archive.plateau"_s);
    const auto *year = in<QComboBox>(view, u"yearToArchive"_s);
    ASSERT_EQ(year->count(), 1);
    clickAndWait(u"archiveYear"_s);
    EXPECT_EQ(headOf(log.nextFile), book->auditHead().hash); // everything is of this year
    clickAndWait(u"archiveYear"_s);                          // the name is taken now
    EXPECT_TRUE(notice.sentence().contains(u"already"_s)) << notice.sentence().toStdString();
}

TEST_F(Records, AreVerifiedBesideTheWork)
{
    ui::Keeper keeper(*book, settings());
    QuietDialogs::Log log;
    QuietDialogs dialogs(log);
    ui::CopiesView view(theme, dialogs, keeper, notice);
    auto *verify = in<QPushButton>(view, u"verifyNow"_s);
    verify->click();
    EXPECT_FALSE(verify->isEnabled());
    EXPECT_FALSE(in<QPushButton>(view, u"exportAll"_s)->isEnabled()); // one thing at a time
    EXPECT_TRUE(in<QPushButton>(view, u"stopTask"_s)->isEnabled());
    book->addReading(run, 1, u"A1"_s, 0.1, u"0.1"_s, u"M. Lindqvist"_s); // the bench goes on
    const int entries = book->auditHead().entries; // it came before the last page of the copy
    ASSERT_TRUE(QTest::qWaitFor([&] { return verify->isEnabled(); }, 30000));
    EXPECT_TRUE(notice.sentence().startsWith(u"Intact: %1 audit entries"_s.arg(entries)))
        << notice.sentence().toStdString();
}

TEST(LongTask, IsStoppedAtItsNextLookAndSaysSo)
{
    ui::LongTask task;
    const QSignalSpy progressed(&task, &ui::LongTask::progressed);
    const QSignalSpy failed(&task, &ui::LongTask::failed);
    QSignalSpy stopped(&task, &ui::LongTask::stopped);
    bool finished = false;
    const auto untilStopped = [&](const notebook::Watch &watch) -> std::function<void()> {
        while (watch(1, 4))
            QThread::yieldCurrentThread();
        throw notebook::Stopped();
    };
    task.start(untilStopped);
    task.start([&](const notebook::Watch &) { return [&] { finished = true; }; }); // not while another runs
    EXPECT_TRUE(task.isRunning());
    task.stop();
    ASSERT_TRUE(stopped.wait(30000));
    EXPECT_FALSE(task.isRunning());
    EXPECT_FALSE(finished);
    ASSERT_LE(progressed.size(), 1);

    task.start([&](const notebook::Watch &watch) {
        watch(1, 2);
        return [&] { finished = true; };
    });
    ASSERT_TRUE(QTest::qWaitFor([&] { return finished; }, 30000));
    EXPECT_EQ(progressed.back()[0].toInt(), 500);
    task.start([](const notebook::Watch &) -> std::function<void()> {
        throw notebook::Failure(notebook::Failure::Kind::Storage, u"The disk is full."_s);
    });
    ASSERT_TRUE(QTest::qWaitFor([&] { return !failed.isEmpty(); }, 30000));
    EXPECT_EQ(failed[0][0].toString(), u"The disk is full."_s);
    task.start(untilStopped); // what still runs is stopped with it
}

} // namespace plateau::test
