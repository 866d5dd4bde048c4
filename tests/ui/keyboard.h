// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "tests/ui/bench.h"

#include <QTableView>

#include <functional>

namespace plateau::test {

using namespace Qt::StringLiterals;

/// Everything in its tests is done by keys alone.
class Keyboard : public WindowBench
{
protected:
    /// A button that is pressed by its letter is shown going down and up before it acts.
    static bool waitFor(const std::function<bool()> &happened) { return QTest::qWaitFor(happened); }
    void giveName()
    {
        press(Qt::Key_P, Qt::AltModifier);
        ASSERT_EQ(focusName(), u"person"_s);
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
    }
    void keyReading(const QString &text)
    {
        ASSERT_EQ(focusName(), u"readingEntry"_s);
        type(text);
        press(Qt::Key_Enter, Qt::KeypadModifier);
    }
    /// To that column of the samples' table, by its heading.
    void goToColumn(const QString &heading)
    {
        tabTo(u"samples"_s);
        const auto *table = find<QTableView>(u"samples"_s);
        for (int step = 0; step < table->model()->columnCount(); ++step) {
            const int column = table->currentIndex().column();
            if (table->model()->headerData(column, Qt::Horizontal).toString().replace(u'\n', u' ') == heading)
                return;
            press(Qt::Key_Right);
        }
        FAIL() << "no column " << heading.toStdString();
    }

    void keyWholeRun()
    {
        for (const QString &text :
             {u"0,100"_s, u"0.101"_s, u"0,120"_s, u".121"_s, u"0,110"_s, u"0.111"_s, u"0,630"_s, u"0.633"_s})
            keyReading(text);
    }
};

} // namespace plateau::test
