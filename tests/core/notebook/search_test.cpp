// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runsearch.h"

#include "core/notebook/runhistory.h"
#include "core/notebook/runquery.h"
#include "core/notebook/searchindex.h"
#include "tests/core/notebook/fixture.h"
#include "tests/support/largenotebook.h"

#include <algorithm>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

/// The parts of a text between what is neither letter nor digit, caseless.
QStringList tokens(const QString &text)
{
    QStringList list;
    QString token;
    for (const uint sign : (text + u' ').normalized(QString::NormalizationForm_D).toLower().toUcs4()) {
        if (QChar::isLetterOrNumber(sign))
            token += QString::fromUcs4(reinterpret_cast<const char32_t *>(&sign), 1);
        else if (QChar::isMark(sign))
            continue;
        else if (!token.isEmpty())
            list.append(std::exchange(token, {}));
    }
    return list;
}

/// Whether the tokens of a word follow each other in one of the texts, the last one perhaps unfinished.
bool stands(const QString &word, const QStringList &texts)
{
    const QStringList wanted = tokens(word);
    return wanted.isEmpty() || std::ranges::any_of(texts, [&wanted](const QString &text) {
               const QStringList found = tokens(text);
               for (qsizetype from = 0; from + wanted.size() <= found.size(); ++from) {
                   bool same = true;
                   for (qsizetype i = 0; i < wanted.size(); ++i)
                       same = same && (i + 1 == wanted.size() ? found[from + i].startsWith(wanted[i])
                                                              : found[from + i] == wanted[i]);
                   if (same)
                       return true;
               }
               return false;
           });
}

bool allStand(const QString &words, const QStringList &texts)
{
    const QStringList list = words.simplified().split(u' ');
    return std::ranges::all_of(list, [&texts](const QString &word) { return stands(word, texts); });
}

/// What is known of a run without the search.
struct Known {
    RunId id;
    QString title;
    QStringList samples;
    QStringList products;
    QStringList method;
    QStringList persons;
    QStringList lots;
    QStringList standards;
    QStringList notes;
    QDate day;
    RunState state;
    std::vector<evaluation::Result> results;
    std::vector<evaluation::Check> checks;
};

Known knownOf(const Notebook &book, RunId id)
{
    const StoredRun stored = book.load(id);
    Known known;
    known.id = id;
    known.title = stored.run.title;
    known.method = {stored.method.name, stored.method.id};
    known.state = stored.summary.state;
    known.day = stored.run.startedAt.value_or(stored.summary.createdAt).date();
    for (const run::Sample &sample : stored.run.samples)
        known.samples.append(sample.id);
    if (stored.plan) {
        for (const planning::PlannedSample &sample : stored.plan->samples)
            known.products.append(sample.sample.product);
    }
    for (const AuditEntry &entry : book.history(id))
        known.persons.append(entry.person);
    for (const run::LotUse &use : stored.run.lots)
        known.lots.append(use.lot);
    for (const run::Standard &standard : stored.run.standards)
        known.standards.append(standard.id);
    for (const StoredReading &reading : stored.readings)
        known.notes.append(reading.reason);
    for (const Decision &decision : stored.decisions)
        known.notes.append(decision.reason);
    for (const Reopening &reopening : stored.reopenings)
        known.notes.append(reopening.reason);
    known.notes.append(known.state == RunState::OnBench    ? u"on the bench"_s
                       : known.state == RunState::Accepted ? u"accepted"_s
                                                           : u"rejected"_s);
    if (known.state != RunState::OnBench) {
        const evaluation::Evaluation evaluation = evaluationOf(stored);
        known.results = evaluation.results;
        known.checks = evaluation.checks;
    }
    return known;
}

/// The same question as the search answers, asked of one run after the other.
bool meets(const Known &run, const RunFilter &filter)
{
    QStringList everywhere{run.title};
    for (const QStringList &texts :
         {run.samples, run.products, run.method, run.persons, run.lots, run.standards, run.notes})
        everywhere.append(texts);
    const auto inRange = [&filter](const evaluation::Result &result) {
        return result.measurand == filter.value->measurand && result.unit == filter.value->unit &&
               result.value && *result.value >= filter.value->least.value_or(-1e300) &&
               *result.value <= filter.value->most.value_or(1e300);
    };
    const auto failed = [&filter](const evaluation::Check &check) {
        return !check.passed && check.id == *filter.flag;
    };
    return allStand(filter.text, everywhere) && allStand(filter.sample, run.samples) &&
           allStand(filter.product, run.products) && allStand(filter.method, run.method) &&
           allStand(filter.person, run.persons) && allStand(filter.lot, run.lots) &&
           allStand(filter.standard, run.standards) && (!filter.from || run.day >= *filter.from) &&
           (!filter.to || run.day <= *filter.to) && (!filter.state || run.state == *filter.state) &&
           (!filter.value || std::ranges::any_of(run.results, inRange)) &&
           (!filter.flag || std::ranges::any_of(run.checks, failed));
}

std::vector<RunFilter> filters()
{
    RunFilter values;
    values.value = ValueRange{u"malic"_s, u"g/L"_s, 0.1, 0.25};
    RunFilter atMost;
    atMost.value = ValueRange{u"acetic"_s, u"g/L"_s, {}, 0.2};
    RunFilter flag;
    flag.flag = evaluation::CheckId::BlankHigh;
    RunFilter days;
    days.from = QDate(2016, 1, 10);
    days.to = QDate(2016, 1, 20);
    RunFilter since;
    since.from = QDate(2020, 1, 1);
    RunFilter bench;
    bench.state = RunState::OnBench;
    RunFilter rejected;
    rejected.state = RunState::Rejected;
    RunFilter many;
    many.text = u"tank"_s;
    many.person = u"ines"_s;
    many.method = u"malic"_s;
    many.state = RunState::Accepted;
    many.from = QDate(2016, 1, 1);
    many.value = ValueRange{u"malic"_s, u"g/L"_s, {}, {}};
    RunFilter none;
    none.sample = u"C-1"_s;
    none.product = u"nothing of the sort"_s;
    return {{},
            {.text = u"morning"_s},
            {.text = u"MORN rack"_s},
            {.text = u"eclair"_s},
            {.text = u"cuvette wet"_s},
            {.text = u"second thoughts"_s},
            {.text = u"C-1"_s},
            {.text = u"lamp flick"_s},
            {.text = u"complaint rejected"_s},
            {.text = u"on the bench"_s},
            {.sample = u"C-17"_s},
            {.sample = u"c"_s},
            {.product = u"perry 4"_s},
            {.method = u"acetic"_s},
            {.person = u"okoro"_s},
            {.lot = u"B-1"_s},
            {.standard = u"STD-3"_s},
            values,
            atMost,
            flag,
            days,
            since,
            bench,
            rejected,
            many,
            none};
}

const std::vector<RunOrder> orders{RunOrder::NewestFirst, RunOrder::OldestFirst, RunOrder::ByDay,
                                   RunOrder::ByDecision,  RunOrder::ByTitle,     RunOrder::ByMethod};

std::vector<qint64> numbersOf(const std::vector<FoundRun> &runs)
{
    std::vector<qint64> numbers;
    for (const FoundRun &run : runs)
        numbers.push_back(run.summary.id.value);
    return numbers;
}

} // namespace

class SearchTest : public NotebookTest
{
protected:
    void SetUp() override
    {
        static const QByteArray bytes = [this] {
            makeLargeNotebook(file(), {.runs = 120, .made = 60, .searchOnly = false});
            return bytesOf(file());
        }();
        write(file(), bytes);
        m_book = reopen(Access::ReadOnly);
    }

    const std::vector<Known> &known()
    {
        static const std::vector<Known> all = [this] {
            std::vector<Known> runs;
            for (qint64 id = 1; id <= 120; ++id)
                runs.push_back(knownOf(*m_book, {id}));
            return runs;
        }();
        return all;
    }

    std::vector<qint64> expected(const RunFilter &filter)
    {
        std::vector<qint64> numbers;
        for (const Known &run : known()) {
            if (meets(run, filter))
                numbers.insert(numbers.begin(), run.id.value);
        }
        return numbers;
    }

    std::unique_ptr<Notebook> m_book;
};

TEST_F(SearchTest, EveryFilterFindsWhatALoopOverAllRunsFinds)
{
    const std::vector<RunFilter> all = filters();
    for (std::size_t i = 0; i < all.size(); ++i) {
        SCOPED_TRACE(i);
        const std::vector<qint64> wanted = expected(all[i]);
        EXPECT_EQ(wanted.empty(), i + 1 == all.size()) << "a filter that finds nothing tries nothing";
        EXPECT_EQ(numbersOf(m_book->search().page(all[i], RunOrder::NewestFirst, 1000).runs), wanted);
        EXPECT_EQ(m_book->search().count(all[i]).runs, int(wanted.size()));
        EXPECT_FALSE(m_book->search().count(all[i]).atLeast);
    }
}

TEST_F(SearchTest, PagesTogetherAreWhatOnePageWouldBeInEveryOrder)
{
    for (const RunOrder order : orders) {
        for (const RunFilter &filter : filters()) {
            SCOPED_TRACE(int(order));
            const std::vector<qint64> whole = numbersOf(m_book->search().page(filter, order, 1000).runs);
            std::vector<qint64> pages;
            std::optional<PageEnd> end;
            do {
                const RunPage page = m_book->search().page(filter, order, 7, end);
                EXPECT_LE(page.runs.size(), 7U);
                for (const qint64 number : numbersOf(page.runs))
                    pages.push_back(number);
                end = page.end;
            } while (end);
            EXPECT_EQ(pages, whole);
            std::vector<qint64> sorted = whole;
            std::ranges::sort(sorted, std::greater());
            EXPECT_EQ(sorted, expected(filter));
        }
    }
}

TEST_F(SearchTest, OrdersAreAsTheySay)
{
    const auto page = [this](RunOrder order) { return m_book->search().page({}, order, 1000).runs; };
    const auto inOrder = [](const std::vector<FoundRun> &runs, auto key) {
        return std::ranges::is_sorted(runs, {}, key);
    };
    const auto title = [](const FoundRun &run) { return run.summary.title.toCaseFolded(); };
    const auto method = [](const FoundRun &run) { return run.summary.methodName.toCaseFolded(); };
    EXPECT_TRUE(inOrder(page(RunOrder::ByTitle), title));
    EXPECT_TRUE(inOrder(page(RunOrder::ByMethod), method));
    std::vector<FoundRun> days = page(RunOrder::ByDay);
    std::ranges::reverse(days);
    EXPECT_TRUE(inOrder(days, [](const FoundRun &run) { return run.startedAt.date(); }));
    const std::vector<FoundRun> decisions = page(RunOrder::ByDecision);
    EXPECT_EQ(decisions.back().summary.state, RunState::OnBench);
    EXPECT_EQ(decisions.front().summary.state != RunState::OnBench, true);
    EXPECT_GE(decisions[0].summary.decidedAt, decisions[1].summary.decidedAt);
}

TEST_F(SearchTest, LineOfTheListIsTheOneOfTheRecords)
{
    std::vector<RunSummary> records = m_book->runs();
    const std::vector<FoundRun> found = m_book->search().page({}, RunOrder::NewestFirst, 1000).runs;
    ASSERT_EQ(found.size(), records.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        const RunSummary &a = found[i].summary;
        const RunSummary &b = records[i];
        EXPECT_EQ(std::tie(a.id, a.title, a.methodId, a.methodName, a.methodVersion, a.createdAt, a.state,
                           a.decidedBy, a.decidedAt, a.samples, a.tubes, a.readingsTaken),
                  std::tie(b.id, b.title, b.methodId, b.methodName, b.methodVersion, b.createdAt, b.state,
                           b.decidedBy, b.decidedAt, b.samples, b.tubes, b.readingsTaken));
        EXPECT_EQ(std::tie(a.readingsPlanned, a.revision, a.acceptable, a.isSigned, a.samplesRejected,
                           a.samplesToRepeat),
                  std::tie(b.readingsPlanned, b.revision, b.acceptable, b.isSigned, b.samplesRejected,
                           b.samplesToRepeat));
    }
}

TEST_F(SearchTest, WhateverIsTypedIsOnlyWords)
{
    const QString rightToLeft = QString::fromUtf8("\u202Eتفاح\u202C");
    for (const QString &typed : {u"\""_s,
                                 u"\"\""_s,
                                 u"a\" OR \"b"_s,
                                 u"NOT"_s,
                                 u"NEAR(a b)"_s,
                                 u"title:tank"_s,
                                 u"tank*"_s,
                                 u"^tank"_s,
                                 u"tank AND"_s,
                                 u"(tank"_s,
                                 u"tank)"_s,
                                 u"{title}: x"_s,
                                 u"%"_s,
                                 u"_"_s,
                                 u"'; DROP TABLE run; --"_s,
                                 u"- + ^ *"_s,
                                 u"\U0001F9EA"_s,
                                 rightToLeft,
                                 QString(QChar(0xD800)),
                                 QString(QChar(0)),
                                 QString(100'000, u'x'),
                                 u"tank "_s.repeated(1000),
                                 u"tank\ttank\ntank"_s,
                                 u"e\u0301clair"_s}) {
        SCOPED_TRACE(typed.left(40).toStdString());
        EXPECT_EQ(numbersOf(m_book->search().page({.text = typed}, RunOrder::NewestFirst, 1000).runs),
                  expected({.text = typed.left(1000).replace(QChar(0xD800), u' ').replace(QChar(0), u' ')}));
    }
}

TEST_F(SearchTest, CountStopsWhereItIsTold)
{
    const RunCount count = m_book->search().count({.sample = u"C"_s}, 10);
    EXPECT_EQ(count.runs, 10);
    EXPECT_TRUE(count.atLeast);
}

TEST_F(SearchTest, ChoicesAreWhatThereIs)
{
    const RunSearch &search = m_book->search();
    EXPECT_THAT(search.methods(),
                ElementsAre(u"Acetic acid"_s, u"D-Glucose"_s, u"Ethanol"_s, u"L-Malic acid"_s));
    EXPECT_THAT(search.persons(), ElementsAre(u"Ines Kaddour"_s, u"Mina Okoro"_s, u"Tomas Brandl"_s));
    EXPECT_THAT(search.products(),
                ElementsAre(u"Apple juice"_s, u"Cider, dry"_s, u"Dried apricots"_s, u"Perry, tank 4"_s));
    EXPECT_THAT(search.measurands(),
                ElementsAre(KnownMeasurand{u"acetic"_s, u"g/L"_s}, KnownMeasurand{u"ethanol"_s, u"g/L"_s},
                            KnownMeasurand{u"glucose"_s, u"g/L"_s}, KnownMeasurand{u"malic"_s, u"g/L"_s}));
    std::vector<qint64> bench;
    for (const RunId run : search.onBench())
        bench.insert(bench.begin(), run.value);
    EXPECT_EQ(bench, expected({.state = RunState::OnBench}));
    EXPECT_EQ(numbersOf(search.of({{3}, {999}, {7}})), (std::vector<qint64>{7, 3}));
}

TEST_F(SearchTest, HistoryIsWhatTheRunsSay)
{
    HistoryFilter filter;
    filter.measurand = u"malic"_s;
    std::size_t results = 0;
    std::size_t blanks = 0;
    double sum = 0;
    for (const Known &run : known()) {
        if (run.state != RunState::Accepted || run.method[1] != u"malic"_s)
            continue;
        ++blanks;
        for (const evaluation::Result &result : run.results) {
            if (result.value && result.verdict != evaluation::Verdict::Repeat) {
                ++results;
                sum += *result.value;
            }
        }
    }
    const std::vector<ResultPoint> points = m_book->runHistory().results(filter);
    EXPECT_EQ(points.size(), results);
    double found = 0;
    for (const ResultPoint &point : points)
        found += point.value;
    EXPECT_NEAR(found, sum, 1e-9);
    EXPECT_EQ(m_book->runHistory().blanks(filter).size(), blanks);
    EXPECT_EQ(m_book->runHistory().duplicates(filter).size(), results);
    const std::vector<RecoveryPoint> recoveries = m_book->runHistory().recoveries(filter);
    ASSERT_EQ(recoveries.size(), blanks);
    EXPECT_TRUE(
        std::ranges::is_sorted(recoveries, {}, [](const RecoveryPoint &point) { return point.of.at; }));
    for (const RecoveryPoint &point : recoveries) {
        EXPECT_NEAR(point.recovery_percent, 100 * point.found_g_per_L / point.expected_g_per_L, 1e-9);
        ASSERT_TRUE(point.age_h);
        EXPECT_GE(*point.age_h, 1.5);
        EXPECT_LE(*point.age_h, 3.5);
    }
}

TEST_F(SearchTest, CopiesHaveTheRowsThatActsGive)
{
    m_book.reset();
    const Database database(file(), Access::ReadOnly);
    const Transaction snapshot(database, Transaction::Kind::Read);
    EXPECT_THAT(searchFindings(database), IsEmpty());
}

/// What every act leaves behind.
class SearchIndexTest : public NotebookTest
{
protected:
    std::vector<std::vector<QVariantList>> rows()
    {
        RawFile raw(file());
        std::vector<std::vector<QVariantList>> all;
        for (const QVariantList &table :
             raw.rows(u"SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name "
                      "LIKE 'search%' ORDER BY name"_s))
            all.push_back(raw.rows(u"SELECT * FROM %1 ORDER BY 1, 2"_s.arg(table[0].toString())));
        return all;
    }
    std::vector<Finding> findings()
    {
        const Database database(file(), Access::ReadOnly);
        const Transaction snapshot(database, Transaction::Kind::Read);
        return searchFindings(database);
    }
    void fillAll()
    {
        const auto book = create();
        fill(*book);
        fillDerived(*book);
        fillBench(*book);
        fillReview(*book);
        RunDecision again{DecisionKind::Accepted, theReviewer.name, theReviewer.passphrase, u"T again"_s, {}};
        again.samples = {{u"T"_s, SampleDecisionKind::Repeat, u"foamed over"_s, {}}};
        book->decide(book->addRun(twoSampleRun(), risingMethod(), theAnalyst.name), again);
    }
};

TEST_F(SearchIndexTest, IsTheSameAfterEveryKindOfActAsMadeAnew)
{
    fillAll();
    EXPECT_THAT(findings(), IsEmpty());
    const auto before = rows();
    EXPECT_THAT(before, SizeIs(10));
    for (const auto &table : before)
        EXPECT_FALSE(table.empty());
    {
        const Database database(file(), Access::ReadWrite);
        Transaction transaction(database, Transaction::Kind::Write);
        rebuildSearch(database);
        transaction.commit();
    }
    EXPECT_EQ(rows(), before);
    EXPECT_THAT(findings(), IsEmpty());
}

TEST_F(SearchIndexTest, EveryChangedColumnIsNamed)
{
    fillAll();
    const QByteArray original = bytesOf(file());
    std::vector<QVariantList> columns;
    {
        RawFile raw(file());
        columns =
            raw.rows(u"SELECT t.name, c.name, c.type FROM pragma_table_list t JOIN pragma_table_info(t.name) "
                     "c WHERE t.schema = 'main' AND t.type = 'table' AND t.name LIKE 'search%' AND c.name "
                     "<> 'run'"_s);
    }
    EXPECT_EQ(columns.size(), 70U);
    for (const QVariantList &column : columns) {
        const QString table = column[0].toString();
        SCOPED_TRACE((table + u'.' + column[1].toString()).toStdString());
        write(file(), original);
        {
            RawFile raw(file());
            raw.behindTheTriggers([&] {
                raw.execute(u"UPDATE %1 SET %2 = %3 WHERE run = (SELECT max(run) FROM %1)"_s.arg(
                    table, column[1].toString(),
                    column[2] == u"TEXT"_s ? u"coalesce(%1, '') || 'x'"_s.arg(column[1].toString())
                                           : u"coalesce(%1, 0) + 9"_s.arg(column[1].toString())));
            });
        }
        const std::vector<Finding> found = findings();
        EXPECT_TRUE(std::ranges::any_of(
            found, [&table](const Finding &finding) { return finding.place.startsWith(table + u' '); }));
    }
}

TEST_F(SearchIndexTest, WordTheIndexLostIsNamed)
{
    fillAll();
    {
        RawFile raw(file());
        raw.execute(
            u"INSERT INTO search_text (search_text, rowid, title, sample, product, method, person, lot, "
            "standard, notes) SELECT 'delete', * FROM search_words WHERE run = 1"_s);
    }
    const std::vector<Finding> found = findings();
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].place, u"search_text"_s);
}

TEST_F(SearchIndexTest, RunThatItDoesNotKnowIsFoundAgainWhenOpened)
{
    fillAll();
    const auto before = rows();
    {
        RawFile raw(file());
        raw.execute(u"DELETE FROM search_flag WHERE run = 2"_s);
        raw.execute(u"DELETE FROM search_run WHERE run = (SELECT max(id) FROM run)"_s);
    }
    reopen();
    EXPECT_EQ(rows(), before);
}

TEST_F(SearchIndexTest, LotTickedAtTheBenchFindsItsRunByContainerAndName)
{
    const auto book = create();
    fillStores(*book);
    const RunId run = book->addRun(unreadRun(), risingMethod(), u"Ines"_s);
    EXPECT_THAT(book->search().page({.container = LotId{1}}).runs, IsEmpty());
    book->pipetting().markDone(run, {{{0, u"buffer"_s, false}, {}, LotId{1}}}, u"Ines"_s);
    EXPECT_THAT(book->search().page({.container = LotId{1}}).runs, SizeIs(1));
    EXPECT_THAT(book->search().page({.lot = u"b-17"_s}).runs, SizeIs(1));
    book->pipetting().markUndone(run, {{0, u"buffer"_s, false}}, u"Ines"_s);
    EXPECT_THAT(book->search().page({.container = LotId{1}}).runs, IsEmpty());
}

} // namespace plateau::test
