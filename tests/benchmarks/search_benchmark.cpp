// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// What the first page of a search costs, against the same statement in the sqlite3 shell, and how the engine
// goes about it. Run by hand: cmake -DPLATEAU_BENCHMARKS=ON, then search_benchmark 100000 (or 1000000, which
// takes a few minutes and 2 GB of disk) FILE; a file that is there is taken as it is.
#include "core/notebook/database.h"
#include "core/notebook/notebook.h"
#include "core/notebook/runquery.h"
#include "tests/support/largenotebook.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cstdio>

using namespace Qt::StringLiterals;
using namespace plateau;
using namespace plateau::notebook;

namespace {

constexpr int turns = 15;
constexpr int shellTurns = 50;
constexpr int pageSize = 100;

template <class Work> double median_ms(Work work)
{
    std::vector<double> all;
    for (int turn = 0; turn < turns; ++turn) {
        const auto before = std::chrono::steady_clock::now();
        work();
        all.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - before).count());
    }
    std::ranges::sort(all);
    return all[all.size() / 2];
}

QString literal(const Cell &cell)
{
    if (const auto *whole = std::get_if<qint64>(&cell))
        return QString::number(*whole);
    if (const auto *real = std::get_if<double>(&cell))
        return QString::number(*real, 'g', 17);
    if (const auto *text = std::get_if<QString>(&cell))
        return u'\'' + QString(*text).replace(u'\'', u"''"_s) + u'\'';
    return u"NULL"_s;
}

QString writtenOut(const Query &query)
{
    QString sql = query.sql;
    qsizetype place = 0;
    for (const Cell &value : query.values) {
        place = sql.indexOf(u'?', place);
        const QString text = literal(value);
        sql.replace(place, 1, text);
        place += text.size();
    }
    return sql;
}

/// How long the shell takes for a script, from its start to its end.
double script_ms(const QString &file, const QString &script)
{
    const auto before = std::chrono::steady_clock::now();
    QProcess shell;
    shell.setProcessChannelMode(QProcess::MergedChannels);
    shell.start(u"sqlite3"_s, {u"-readonly"_s, file});
    shell.write(script.toUtf8());
    shell.closeWriteChannel();
    shell.waitForFinished(-1);
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - before).count();
}

/// Of one statement: its own timer shows whole milliseconds, so it runs many times over.
double shell_ms(const QString &file, const QString &sql)
{
    const QString head = u".output /dev/null\n"_s;
    const QString once = head + sql + u";\n"_s;
    QString often = once;
    for (int turn = 0; turn < shellTurns; ++turn)
        often += sql + u";\n"_s;
    script_ms(file, once); // what the system keeps of the file by now
    return (script_ms(file, often) - script_ms(file, once)) / shellTurns;
}

std::vector<std::pair<const char *, RunFilter>> filters()
{
    RunFilter value;
    value.value = ValueRange{u"malic"_s, u"g/L"_s, 0.1, 0.11};
    RunFilter flag;
    flag.flag = evaluation::CheckId::BlankHigh;
    RunFilter days;
    days.from = QDate(2018, 5, 1);
    days.to = QDate(2018, 5, 31);
    RunFilter bench;
    bench.state = RunState::OnBench;
    RunFilter many;
    many.text = u"tank"_s;
    many.person = u"ines"_s;
    many.state = RunState::Accepted;
    many.value = ValueRange{u"malic"_s, u"g/L"_s, {}, {}};
    RunFilter old;
    old.to = QDate(2016, 2, 1);
    old.text = u"malic"_s;
    RunFilter none;
    none.sample = u"C-1"_s;
    none.product = u"nothing of the sort"_s;
    return {{"nothing asked", {}},
            {"one letter", {.text = u"m"_s}},
            {"a word of every fifth run", {.text = u"morning"_s}},
            {"two words", {.text = u"cuvette wet"_s}},
            {"a sample", {.sample = u"C-17"_s}},
            {"a product", {.product = u"perry"_s}},
            {"a method", {.method = u"acetic"_s}},
            {"a person", {.person = u"okoro"_s}},
            {"a lot", {.lot = u"B-1"_s}},
            {"a standard", {.standard = u"STD-3"_s}},
            {"a month", days},
            {"what is on the bench", bench},
            {"a value", value},
            {"a failed check", flag},
            {"five at once", many},
            {"a word, long ago", old},
            {"nothing found", none}};
}

/// The same rows through the program's own connection, none of their values looked at: what is beyond that in a page
/// is to make values of a hundred runs.
double stepped_ms(const Database &database, const QString &sql)
{
    return median_ms([&] {
        Statement rows(database, sql);
        rows.run();
        while (rows.next()) {
        }
    });
}

void plan(const Database &database, const QString &sql)
{
    Statement rows(database, u"EXPLAIN QUERY PLAN "_s + sql);
    rows.run();
    while (rows.next())
        std::printf("        %s\n", qPrintable(rows.text(3)));
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const int runs = argc > 1 ? QString::fromLocal8Bit(argv[1]).toInt() : 100'000;
    const QTemporaryDir folder;
    const QString file = argc > 2 ? QString::fromLocal8Bit(argv[2]) : folder.filePath(u"large.plateau"_s);
    if (!QFileInfo::exists(file))
        test::makeLargeNotebook(file, {.runs = runs, .made = 120, .searchOnly = true});
    const double opened_ms = [&file] {
        const auto before = std::chrono::steady_clock::now();
        Notebook::open(file, Access::ReadOnly)->search().onBench();
        return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - before).count();
    }();
    const auto book = Notebook::open(file, Access::ReadOnly);
    const Database database(file, Access::ReadOnly);
    std::printf("%d runs, opened for reading and asked for the bench in %.1f ms\n",
                book->search().count({}).runs, opened_ms);
    std::printf("%-28s %10s %10s %10s %7s %10s\n", "", "page ms", "rows ms", "shell ms", "ratio", "count ms");
    for (const auto &[name, filter] : filters()) {
        const Query query = pageQuery(database, filter, RunOrder::NewestFirst, pageSize + 1, {});
        const QString sql = writtenOut(query);
        const double ours_ms =
            median_ms([&book, &filter] { book->search().page(filter, RunOrder::NewestFirst, pageSize); });
        const double shells_ms = shell_ms(file, sql);
        const double count_ms = median_ms([&book, &filter] { book->search().count(filter); });
        std::printf("%-28s %10.2f %10.2f %10.2f %7.2f %10.2f\n", name, ours_ms, stepped_ms(database, sql), shells_ms,
                    ours_ms / shells_ms, count_ms);
        plan(database, sql);
    }
    return 0;
}
