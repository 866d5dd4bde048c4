// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/firststart.h"
#include "ui/help/helpwindow.h"
#include "ui/instrument/columndialog.h"
#include "ui/shared/table.h"
#include "ui/shared/theme.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QKeyEvent>
#include <QPushButton>
#include <QSettings>
#include <QWindow>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// The one that is open, whoever opened it.
ui::HelpWindow *openHelp()
{
    ui::HelpWindow *open = nullptr;
    for (QWidget *candidate : QApplication::topLevelWidgets()) {
        auto *help = qobject_cast<ui::HelpWindow *>(candidate);
        if (!help || !help->isVisible())
            continue;
        EXPECT_EQ(open, nullptr) << "there is one help";
        open = help;
    }
    return open;
}

QString pageOnShow()
{
    const ui::HelpWindow *help = openHelp();
    return help ? help->place().page : QString();
}

/// Where no menu takes the key.
void pressF1In(QWidget &widget)
{
    QKeyEvent press(QEvent::KeyPress, Qt::Key_F1, Qt::NoModifier);
    QApplication::sendEvent(&widget, &press);
}

class HelpRoute : public WindowBench
{
protected:
    void trigger(const QString &action) const { window->findChild<QAction *>(action)->trigger(); }
    /// F1 as it is pressed in a window that has the focus, then away with the help.
    QString pageOfF1() const
    {
        window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
        QTest::keyClick(window.get(), Qt::Key_F1);
        const QString page = pageOnShow();
        if (ui::HelpWindow *help = openHelp())
            help->close();
        return page;
    }
};

struct Destination {
    const char *action;
    const char *page;
};
void PrintTo(const Destination &destination, std::ostream *out)
{
    *out << destination.action;
}

class HelpOfDestination : public HelpRoute, public ::testing::WithParamInterface<Destination>
{
};

TEST_P(HelpOfDestination, F1OpensThePageOfWhatIsInFront)
{
    addRun(exampleRun());
    openWindow();
    trigger(u"actionNext"_s);
    trigger(QString::fromLatin1(GetParam().action));
    EXPECT_EQ(pageOfF1(), QString::fromLatin1(GetParam().page));
    // The same while the keys are in the list beside it.
    window->findChild<QWidget *>(u"newRun"_s)->setFocus();
    EXPECT_EQ(pageOfF1(), QString::fromLatin1(GetParam().page));
}

INSTANTIATE_TEST_SUITE_P(
    Window, HelpOfDestination,
    ::testing::Values(Destination{"actionToday", "today"}, Destination{"actionNewRun", "plan"},
                      Destination{"actionPipette", "pipette"}, Destination{"actionRead", "read"},
                      Destination{"actionReview", "review"}, Destination{"actionNotebook", "notebook"},
                      Destination{"actionCharts", "charts"}, Destination{"actionMethods", "methods"},
                      Destination{"actionSamples", "samples"}, Destination{"actionLots", "lots"},
                      Destination{"actionStandards", "standards"},
                      Destination{"actionEquipment", "equipment"},
                      Destination{"actionLaboratory", "laboratory"}, Destination{"actionPersons", "persons"},
                      Destination{"actionLimits", "limits"}, Destination{"actionRecords", "records"}),
    [](const auto &destination) { return std::string(destination.param.page); });

TEST_F(HelpRoute, ThereIsOneWindowAndTheMenuLeadsToItsPages)
{
    openWindow();
    trigger(u"actionFirstRack"_s);
    EXPECT_EQ(pageOnShow(), u"first-rack"_s);
    const ui::HelpWindow *first = openHelp();
    trigger(u"actionAboutChecks"_s);
    EXPECT_EQ(openHelp(), first);
    EXPECT_EQ(pageOnShow(), u"checks"_s);
    window->openHelp({u"safety"_s, {}});
    EXPECT_EQ(pageOnShow(), u"safety"_s);
    EXPECT_FALSE(first->isModal());
    EXPECT_FALSE(first->testAttribute(Qt::WA_QuitOnClose)) << "the program must not outlive its window";
}

TEST_F(HelpRoute, TheChosenCheckIsExplainedByItsButtonAndByF1InTheTable)
{
    run::Run run = exampleRun();
    for (run::Tube &tube : run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.6}};
    run.tubes[1].readings[u"A2"_s] = 0.3; // blanks apart, and too high
    addRun(run);
    openWindow();
    trigger(u"actionNext"_s);
    trigger(u"actionReview"_s);
    auto *checks = find<ui::Table>(u"checks"_s);
    auto *explain = find<QPushButton>(u"explainCheck"_s);
    explain->click(); // the first that failed is told without being chosen
    ASSERT_NE(openHelp(), nullptr);
    EXPECT_EQ(openHelp()->place(), (ui::HelpPlace{u"checks"_s, u"blank-signal"_s}));
    for (int row = 0; row < checks->model()->rowCount(); ++row) {
        if (checks->model()->index(row, 0).data().toString().startsWith(u"Difference between blanks"_s))
            checks->selectRow(row);
    }
    checks->setFocus();
    EXPECT_EQ(pageOfF1(), u"checks"_s);
    explain->click();
    EXPECT_EQ(openHelp()->place(), (ui::HelpPlace{u"checks"_s, u"difference-between-blanks"_s}));
    openHelp()->close();
    find<ui::Table>(u"results"_s)->setFocus();
    EXPECT_EQ(pageOfF1(), u"review"_s);
}

TEST_F(HelpRoute, ADialogThatComesUpLaterDoesNotShutTheHelpThatIsOpen)
{
    openWindow();
    trigger(u"actionAboutChecks"_s);
    ASSERT_NE(openHelp(), nullptr);
    QDialog later(window.get());
    later.setModal(true);
    later.show();
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return openHelp()->windowHandle()->transientParent() == later.windowHandle(); }));
    EXPECT_TRUE(openHelp()->isVisible());
    later.close();
}

TEST_F(HelpRoute, ADialogHasItsOwnPageAndTheHelpIsUsableOverIt)
{
    addRun(exampleRun());
    openWindow();
    trigger(u"actionNext"_s);
    trigger(u"actionRead"_s);
    trigger(u"actionPasteReadings"_s);
    auto *dialog = window->findChild<ui::ColumnDialog *>();
    ASSERT_NE(dialog, nullptr);
    pressF1In(*dialog);
    EXPECT_EQ(pageOnShow(), u"instrument"_s);
    EXPECT_EQ(openHelp()->windowHandle()->transientParent(), dialog->windowHandle())
        << "a window that does not belong to the dialog is blocked by it";
    dialog->reject();
    QApplication::processEvents();
    EXPECT_EQ(pageOfF1(), u"read"_s);
    dialogs.fillIn = [](QDialog &form) {
        form.open(); // the window's own F1 rests while a dialog waits
        pressF1In(form);
        form.reject();
        return false;
    };
    trigger(u"actionKeys"_s);
    EXPECT_EQ(pageOnShow(), u"keys"_s);
    trigger(u"actionSaveReport"_s);
    EXPECT_EQ(pageOnShow(), u"reports"_s);
}

TEST_F(HelpRoute, TheHelpClosesWithItsWindow)
{
    openWindow();
    trigger(u"actionHelp"_s);
    ASSERT_NE(openHelp(), nullptr);
    window.reset();
    EXPECT_EQ(openHelp(), nullptr);
}

TEST(HelpOfFirstStart, LeadsToTheFirstRackAndSaysWhatIsRead)
{
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QuietDialogs::Log log;
    QuietDialogs dialogs(log);
    const ui::Theme theme;
    ui::FirstStart page(theme, dialogs, {u"/nowhere/new.plateau"_s});
    page.show();
    EXPECT_TRUE(page.helpOnShow().page.isEmpty());
    page.findChild<QPushButton *>(u"firstRackHelp"_s)->click();
    EXPECT_EQ(pageOnShow(), u"first-rack"_s);
    EXPECT_EQ(page.helpOnShow().page, u"first-rack"_s);
    openHelp()->close();
    EXPECT_TRUE(page.helpOnShow().page.isEmpty());
    pressF1In(page);
    EXPECT_EQ(pageOnShow(), u"first-rack"_s);
}

} // namespace
} // namespace plateau::test
