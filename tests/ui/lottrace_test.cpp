// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/books/lottrace.h"

#include <QFile>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class LotTraceWindow : public WindowBench
{
protected:
    /// An accepted run and one on the bench that took 1 mL each for their first tube.
    void fill()
    {
        const notebook::LotId lot =
            book->lots().receive({u"Buffer pH 9"_s, u"4711"_s, {}, {}}, 500, u"R. Okafor"_s);
        run::Run read = exampleRun();
        read.title = u"=Perry, \"old\""_s;
        for (run::Tube &tube : read.tubes)
            tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.6}};
        for (const run::Run &run : {read, exampleRun()}) {
            const notebook::RunId id = addRun(run);
            book->pipetting().markDone(id, {{{0, method().components[0].id, false}, 1, lot}}, u"R. Okafor"_s);
            if (!run.tubes[0].readings.empty())
                book->decide(id, notebook::DecisionKind::Accepted, u"M. Lindqvist"_s, u"for the record"_s);
        }
    }
};

TEST_F(LotTraceWindow, EveryRunAndResultThatItTouchedIsWritten)
{
    fill();
    openWindow();
    press(Qt::Key_L, Qt::ControlModifier);
    press(Qt::Key_Return);
    dialogs.nextFile = folder.filePath(u"lot.csv"_s);
    find<QPushButton>(u"traceLot"_s)->click();
    QFile file(dialogs.nextFile);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << noticeText().toStdString();
    const QStringList lines = QString::fromUtf8(file.readAll()).split(u"\r\n"_s);
    ASSERT_EQ(lines.size(), 4) << "head, two results, and the end";
    EXPECT_TRUE(lines[0].startsWith(u"reagent,lot,run,title,"_s));
    EXPECT_EQ(lines[0].count(u','), 21);
    EXPECT_TRUE(lines[1].startsWith(u"Buffer pH 9,4711,1,\"'=Perry, \"\"old\"\"\",example-acid,1,"_s))
        << lines[1].toStdString();
    EXPECT_TRUE(lines[1].contains(u",accepted,"_s));
    EXPECT_TRUE(lines[1].contains(u",1,1,P-104,"_s)) << "1 mL into one tube";
    EXPECT_TRUE(lines[2].contains(u",on bench,"_s)) << lines[2].toStdString();
    EXPECT_TRUE(noticeText().contains(u"every run that took from it"_s));
}

TEST_F(LotTraceWindow, AnUntouchedContainerHasNothingToWrite)
{
    book->lots().receive({u"Buffer pH 9"_s, u"4711"_s, {}, {}}, 500, u"R. Okafor"_s);
    openWindow();
    press(Qt::Key_L, Qt::ControlModifier);
    press(Qt::Key_Return);
    EXPECT_FALSE(find<QPushButton>(u"traceLot"_s)->isEnabled());
}

} // namespace
} // namespace plateau::test
