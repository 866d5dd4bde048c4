// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// How much the engine has to do for what people wait for, counted: statements, preparations, steps of its machine. Neither
// may grow with the years that a notebook was kept. How long it takes is for the benchmarks to say.
#include "core/notebook/runsearch.h"
#include "tests/core/notebook/fixture.h"
#include "tests/support/largenotebook.h"

#include <QSqlDriver>

#include <sqlite3.h>

#include <map>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;

namespace {

/// Counts what the notebook that is open does while this lives.
class Work
{
public:
    Work()
        : m_connection(*static_cast<sqlite3 *const *>(notebookConnection().driver()->handle().constData()))
    {
        sqlite3_trace_v2(m_connection, SQLITE_TRACE_STMT | SQLITE_TRACE_PROFILE, &Work::trace, this);
        sqlite3_set_authorizer(m_connection, &Work::authorize, this);
    }
    ~Work()
    {
        sqlite3_trace_v2(m_connection, 0, nullptr, nullptr);
        sqlite3_set_authorizer(m_connection, nullptr, nullptr);
    }
    Work(const Work &) = delete;
    Work &operator=(const Work &) = delete;

    struct Counts {
        int statements = 0;
        /// Of the engine's virtual machine: what stands for rows looked at.
        qint64 steps = 0;
        /// Questions of the compiler of statements: none where all of them were prepared before.
        int preparing = 0;
    };
    const Counts &counts() const { return m_counts; }
    void startAnew() { m_counts = {}; }

private:
    static int trace(unsigned kind, void *self, void *statement, void *text)
    {
        Work &work = *static_cast<Work *>(self);
        auto *const prepared = static_cast<sqlite3_stmt *>(statement);
        // Parts of a trigger come as comments.
        if (kind == SQLITE_TRACE_STMT && !QByteArrayView(static_cast<const char *>(text)).startsWith("--"))
            ++work.m_counts.statements;
        if (kind == SQLITE_TRACE_PROFILE)
            work.m_counts.steps += sqlite3_stmt_status(prepared, SQLITE_STMTSTATUS_VM_STEP, 1);
        return 0;
    }
    static int authorize(void *self, int, const char *, const char *, const char *, const char *)
    {
        ++static_cast<Work *>(self)->m_counts.preparing;
        return SQLITE_OK;
    }

    sqlite3 *m_connection;
    Counts m_counts;
};

} // namespace

class CountedWorkTest : public NotebookTest
{
protected:
    static constexpr int few = 120;
    static constexpr int many = 960;

    /// Of that many runs, made once for all tests.
    std::unique_ptr<Notebook> notebookOf(int runs)
    {
        static std::map<int, QByteArray> bytes;
        if (!bytes.contains(runs)) {
            makeLargeNotebook(file(u"made.plateau"_s), {.runs = runs, .made = 60, .allDecided = true});
            bytes[runs] = bytesOf(file(u"made.plateau"_s));
            QFile::remove(file(u"made.plateau"_s));
        }
        write(file(), bytes[runs]);
        return reopen();
    }
    using Counts = Work::Counts;
    /// warmUp comes before it is counted: whoever asks the engine to tell makes it prepare everything anew.
    static Counts counted(const std::function<void()> &warmUp, const std::function<void()> &action)
    {
        Work work;
        warmUp();
        work.startAnew();
        action();
        return work.counts();
    }
    template <class Action> Counts countedIn(int runs, Action action)
    {
        const auto notebook = notebookOf(runs);
        return counted([&] { action(*notebook); }, [&] { action(*notebook); });
    }

    const QString person = u"Ines Kaddour"_s;
};

TEST_F(CountedWorkTest, ReadingIsTheSameWorkInALargeNotebook)
{
    std::map<int, Counts> counts;
    for (const int runs : {few, many}) {
        const auto notebook = notebookOf(runs);
        // Tubes spoilt over the years are none of the rack's business.
        for (int spoilt = 0; spoilt < runs / 20; ++spoilt)
            notebook->pipetting().markSpoilt(notebook->addRun(unreadRun(), risingMethod(), person), 0, person, u"dropped"_s);
        const RunId run = notebook->addRun(unreadRun(), risingMethod(), person);
        const auto read = [&](int tube, const QString &name) {
            notebook->addReading(run, tube, name, 0.1, u"0.1"_s, person);
        };
        // The first of a person takes that person into the search.
        read(0, u"A1"_s);
        counts[runs] = counted([&] { read(1, u"A1"_s); }, [&] { read(2, u"A1"_s); });
        const Counts last = counted([&] { read(0, u"A2"_s); read(1, u"A2"_s); }, [&] { read(2, u"A2"_s); });
        EXPECT_EQ(last.statements, counts[runs].statements);
        EXPECT_LE(last.steps, counts[runs].steps * 3 / 2) << "the last of a rack";
    }
    EXPECT_LE(counts[few].statements, 25);
    EXPECT_EQ(counts[many].statements, counts[few].statements);
    EXPECT_EQ(counts[few].preparing, 0);
    EXPECT_EQ(counts[many].preparing, 0);
    EXPECT_LE(counts[many].steps, counts[few].steps * 11 / 10);
}

TEST_F(CountedWorkTest, TickIsTheSameWorkInALargeNotebook)
{
    std::map<int, Counts> counts;
    for (const int runs : {few, many}) {
        const auto notebook = notebookOf(runs);
        const RunId run = notebook->addRun(unreadRun(), risingMethod(), person);
        const auto tick = [&](int tube) {
            notebook->pipetting().markDone(run, {{{tube, u"starter"_s, false}}}, person);
        };
        counts[runs] = counted([&] { tick(0); tick(1); }, [&] { tick(2); });
    }
    EXPECT_EQ(counts[many].statements, counts[few].statements);
    EXPECT_LE(counts[many].steps, counts[few].steps * 11 / 10);
}

TEST_F(CountedWorkTest, FirstPageOfASearchDoesNotGrowWithTheYears)
{
    // Up to some two thousand rows are counted to begin with the rarest of what is asked: larger than that.
    for (const int runs : {4'000, 12'000}) {
        const QString path = file(u"search-%1.plateau"_s.arg(runs));
        makeLargeNotebook(path, {.runs = runs, .made = 60, .searchOnly = true});
    }
    std::vector<RunFilter> filters(4);
    filters[1].state = RunState::Accepted;
    filters[2].person = u"Ines"_s;
    filters[3].text = u"rack"_s;
    for (const RunFilter &filter : filters) {
        std::map<int, Counts> counts;
        for (const int runs : {4'000, 12'000}) {
            const auto notebook = Notebook::open(file(u"search-%1.plateau"_s.arg(runs)), Access::ReadOnly);
            const auto search = [&] {
                EXPECT_EQ(notebook->search().page(filter, RunOrder::NewestFirst, 20).runs.size(), 20U);
            };
            counts[runs] = counted(search, search);
        }
        EXPECT_EQ(counts[12'000].statements, counts[4'000].statements);
        EXPECT_LE(counts[12'000].steps, counts[4'000].steps * 5 / 4);
    }
}

TEST_F(CountedWorkTest, WhatWaitsIsNotAskedOfAllRuns)
{
    const auto ask = [](Notebook &notebook) { notebook.shelf().waiting(); };
    const Counts small = countedIn(few, ask);
    const Counts large = countedIn(many, ask);
    EXPECT_LE(large.steps, small.steps * 11 / 10 + 100);
}

TEST_F(CountedWorkTest, RunOfAFileIsLookedForByItsCode)
{
    const auto look = [](Notebook &notebook) {
        EXPECT_FALSE(notebook.findSameRun(unreadRun(), risingMethod()));
    };
    const Counts small = countedIn(few, look);
    const Counts large = countedIn(many, look);
    EXPECT_LE(small.statements, 3);
    EXPECT_LE(large.steps, small.steps + 20);
}

} // namespace plateau::test
