// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/mnemonics.h"

#include <QAbstractButton>
#include <QAction>
#include <QGroupBox>
#include <QKeySequence>
#include <QLabel>
#include <QMap>
#include <QMenu>
#include <QMenuBar>
#include <QTabBar>

using namespace Qt::StringLiterals;

namespace plateau::test {

namespace {

QStringList captionsOf(const QWidget &widget)
{
    QStringList captions;
    if (const auto *bar = qobject_cast<const QMenuBar *>(&widget)) {
        for (const QAction *menu : bar->actions())
            captions << menu->text();
    } else if (const auto *button = qobject_cast<const QAbstractButton *>(&widget)) {
        captions << button->text();
    } else if (const auto *label = qobject_cast<const QLabel *>(&widget); label && label->buddy()) {
        captions << label->text();
    } else if (const auto *group = qobject_cast<const QGroupBox *>(&widget)) {
        captions << group->title();
    } else if (const auto *tabs = qobject_cast<const QTabBar *>(&widget)) {
        for (int tab = 0; tab < tabs->count(); ++tab)
            captions << tabs->tabText(tab);
    }
    return captions;
}

} // namespace

std::vector<QStringList> captionsWithMnemonics(const QWidget &window)
{
    std::vector<QStringList> all(1);
    for (const QWidget *widget : window.findChildren<QWidget *>()) {
        // A dialog over the window has keys of its own.
        if (!widget->isVisible() || widget->window() != &window)
            continue;
        all.front() << captionsOf(*widget);
        const auto *bar = qobject_cast<const QMenuBar *>(widget);
        for (const QAction *menu : bar ? bar->actions() : QList<QAction *>()) {
            all.emplace_back();
            for (const QAction *entry : menu->menu() ? menu->menu()->actions() : QList<QAction *>())
                all.back() << entry->text();
        }
    }
    for (QStringList &list : all)
        list.removeIf([](const QString &caption) { return QKeySequence::mnemonic(caption).isEmpty(); });
    return all;
}

QStringList mnemonicClashes(const QWidget &window)
{
    QStringList clashes;
    for (const QStringList &captions : captionsWithMnemonics(window)) {
        QMap<QKeySequence, QStringList> owners;
        for (const QString &caption : captions)
            owners[QKeySequence::mnemonic(caption)] << caption;
        for (auto owner = owners.begin(); owner != owners.end(); ++owner) {
            if (owner.value().size() > 1)
                clashes << u"%1: %2"_s.arg(owner.key().toString(), owner.value().join(u" | "_s));
        }
    }
    return clashes;
}

} // namespace plateau::test
