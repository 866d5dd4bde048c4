// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/keysdialog.h"
#include "ui/keyslist.h"
#include "ui/shared/table.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QFile>
#include <QKeySequence>
#include <QMap>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class Keys : public WindowBench
{
protected:
    void SetUp() override { openWindow(); }
    std::vector<ui::KeyEntry> entries() const { return ui::keyEntries(*window->menuBar()); }
};

TEST_F(Keys, EveryShortcutOfTheWindowStandsOnThePageOnce)
{
    const auto all = entries();
    int shortcuts = 0;
    for (const QAction *action : window->findChildren<QAction *>()) {
        if (action->shortcut().isEmpty() || !action->objectName().startsWith(u"action"_s))
            continue;
        ++shortcuts;
        const QString keys = action->shortcut().toString(QKeySequence::NativeText);
        EXPECT_EQ(std::ranges::count_if(all,
                                        [&](const ui::KeyEntry &entry) {
                                            return entry.keys == keys && entry.where.endsWith(u" menu"_s);
                                        }),
                  1)
            << keys.toStdString();
    }
    EXPECT_GE(shortcuts, 25);
}

TEST_F(Keys, NoShortcutIsThereTwiceAndNoneIsALineEditsOwn)
{
    QMap<QKeySequence, int> seen;
    for (const QAction *action : window->findChildren<QAction *>()) {
        if (!action->shortcut().isEmpty() && action->objectName().startsWith(u"action"_s))
            ++seen[action->shortcut()];
    }
    for (auto key = seen.begin(); key != seen.end(); ++key)
        EXPECT_EQ(key.value(), 1) << key.key().toString().toStdString();
    for (const QString &taken : {u"Ctrl+E"_s, u"Ctrl+D"_s, u"Ctrl+K"_s, u"Ctrl+U"_s, u"Ctrl+Shift+A"_s})
        EXPECT_FALSE(seen.contains(QKeySequence(taken))) << taken.toStdString();
}

TEST_F(Keys, EveryMenuHasALetterAndF10OpensTheFirst)
{
    for (const QAction *menu : window->menuBar()->actions())
        EXPECT_FALSE(QKeySequence::mnemonic(menu->text()).isEmpty()) << menu->text().toStdString();
    press(Qt::Key_F10);
    auto *open = qobject_cast<QMenu *>(QApplication::activePopupWidget());
    ASSERT_TRUE(open);
    EXPECT_EQ(open, window->menuBar()->actions().front()->menu());
    EXPECT_EQ(open->activeAction(), window->findChild<QAction *>(u"actionNewRun"_s));
    open->close();
}

TEST_F(Keys, EveryRowIsWhole)
{
    for (const ui::KeyEntry &entry : entries()) {
        EXPECT_FALSE(entry.where.isEmpty() || entry.keys.isEmpty() || entry.does.isEmpty())
            << entry.keys.toStdString();
        EXPECT_FALSE(entry.does.contains(u'&')) << entry.does.toStdString();
    }
}

TEST_F(Keys, ThePageIsShownAndSavedToBePrinted)
{
    dialogs.nextFile = folder.filePath(u"keys.pdf"_s);
    int rows = 0;
    dialogs.fillIn = [&](QDialog &page) {
        auto *table = page.findChild<ui::Table *>(u"keys"_s);
        const QAbstractItemModelTester tester(table->model(),
                                              QAbstractItemModelTester::FailureReportingMode::Warning);
        rows = table->model()->rowCount();
        page.findChild<QPushButton *>(u"saveKeys"_s)->click();
        return true;
    };
    window->findChild<QAction *>(u"actionKeys"_s)->trigger();
    EXPECT_EQ(rows, static_cast<int>(entries().size()));
    QFile pdf(dialogs.nextFile);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
}

} // namespace
} // namespace plateau::test
