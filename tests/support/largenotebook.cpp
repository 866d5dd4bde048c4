// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/largenotebook.h"

#include "core/notebook/audit.h"
#include "core/notebook/database.h"
#include "core/notebook/inputs.h"
#include "core/notebook/notebook.h"
#include "core/notebook/openrepeats.h"
#include "core/notebook/runfinder.h"
#include "core/notebook/schema.h"
#include "core/notebook/statement.h"
#include "tests/support/benches.h"

#include <algorithm>
#include <map>
#include <random>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;

namespace {

const QStringList persons{u"Ines Kaddour"_s, u"Tomas Brandl"_s, u"Mina Okoro"_s};
const QStringList products{u"Perry, tank 4"_s, u"Cider, dry"_s, u"Dried apricots"_s, u"Apple juice"_s, u""_s};
const QStringList occasions{u"Morning rack"_s, u"Tank round"_s, u"Before bottling"_s, u"Complaint"_s,
                            u"Éclair d'été"_s};
constexpr int daysOfCopies = 3650;

/// Makes runs one after the other; the same seed of the engine gives the same runs.
class Maker
{
public:
    Maker(Notebook &book, QDateTime &now, bool allDecided)
        : m_book(book)
        , m_now(now)
        , m_allDecided(allDecided)
    {
    }

    void make(int number)
    {
        m_now = m_now.addSecs(7 * 3600 + whole(0, 3600));
        const assay::Method method = methodOf(number);
        run::Run run = runOf(number, method);
        const QString &person = persons[number % persons.size()];
        const RunId id = m_book.addRun(run, method, person, planOf(run, number));
        m_now = m_now.addSecs(1800);
        if (number % 5 == 1)
            m_book.correctReading(id, 0, u"A1"_s, 0.101, u"0.101"_s, person, u"the cuvette was wet"_s);
        if (number % 20 == 9 && !m_allDecided)
            return;
        const bool rejected =
            number % 10 == 3 && !m_allDecided; // else they would wait to be repeated for ever
        m_book.decide(id, rejected ? DecisionKind::Rejected : DecisionKind::Accepted,
                      persons[(number / 3) % persons.size()],
                      rejected ? u"the lamp flickered"_s : u"looked at twice"_s);
        if (number % 15 == 7 && !m_allDecided)
            m_book.reopen(id, person, u"second thoughts"_s);
    }

private:
    int whole(int least, int most) { return least + int(m_engine() % unsigned(most - least + 1)); }
    double part(double least, double most)
    {
        return least + (most - least) * double(m_engine() % 10000) / 10000.0;
    }

    static assay::Method methodOf(int number)
    {
        static const QStringList names{u"L-Malic acid"_s, u"Acetic acid"_s, u"D-Glucose"_s, u"Ethanol"_s};
        static const QStringList ids{u"malic"_s, u"acetic"_s, u"glucose"_s, u"ethanol"_s};
        assay::Method method = risingMethod();
        const auto which = qsizetype(number % 4);
        method.id = ids[which];
        method.name = names[which];
        method.measurands[0].id = ids[which];
        method.measurands[0].name = names[which];
        return method;
    }

    run::Run runOf(int number, const assay::Method &method)
    {
        run::Run run;
        run.title = occasions[number % occasions.size()];
        run.method = method.id;
        run.uncertainty = uncertainties();
        if (number % 4 != 2)
            run.startedAt = m_now.addSecs(-3600);
        run.standards = {{u"STD-%1"_s.arg(number % 6),
                          0.2,
                          {},
                          m_now.addSecs(-7200 - whole(0, 7200)),
                          m_now.addSecs(-1800),
                          0.02}};
        run.lots = {{u"buffer"_s, u"B-%1"_s.arg(number / 7), QDate(2030, 1, 1)},
                    {u"starter"_s, u"E-%1"_s.arg(number / 11), {}}};
        const double high = number % 13 == 5 ? 0.2 : 0.0;
        run.tubes = {blank(0.100, 0.110 + part(0, 0.01) + high),
                     standardTube("x", 0.110, 0.70 + part(-0.02, 0.02))};
        run.tubes[1].standard = run.standards[0].id;
        for (int sample = 0; sample <= number % 3; ++sample) {
            run.samples.push_back(liquid(qPrintable(u"C-%1"_s.arg((number * 3 + sample) % 40))));
            const double signal = part(0.05, 1.1);
            for (int tube = 0; tube < 2; ++tube) {
                run.tubes.push_back(sampleTube("x", 0.120, 0.130 + high + signal + part(0, 0.01)));
                run.tubes.back().sample = run.samples.back().id;
            }
        }
        return run;
    }

    static planning::PlanRecord planOf(const run::Run &run, int number)
    {
        planning::PlanRecord plan;
        for (const run::Sample &sample : run.samples) {
            planning::ShelfSample told;
            told.id = sample.id;
            told.product = products[number % products.size()];
            plan.samples.push_back({told, {}, {}});
        }
        return plan;
    }

    Notebook &m_book;
    QDateTime &m_now;
    bool m_allDecided;
    std::mt19937 m_engine{1};
};

/// Copies the rows of every table that hangs on runs, with their numbers shifted by as many as there were.
class Copier
{
public:
    Copier(Database &database, const LargeNotebook &wanted)
        : m_database(database)
        , m_searchOnly(wanted.searchOnly)
        , m_copies((wanted.runs - 1) / wanted.made)
    {
    }

    void copy()
    {
        m_database.setForeignKeys(false);
        for (const QString &pragma : {u"synchronous=OFF"_s, u"cache_size=-400000"_s})
            m_database.execute(u"PRAGMA "_s + pragma);
        Transaction transaction(m_database, Transaction::Kind::Write);
        std::vector<QString> triggers = takeTriggers();
        for (const QString &table : tables())
            m_strides[table] = strideOf(table);
        for (const auto &[table, stride] : m_strides)
            copyTable(table);
        m_database.execute(u"INSERT INTO search_text (search_text) VALUES ('rebuild')"_s);
        if (!m_searchOnly) {
            renewCodes();
            renewChain();
            rebuildOpenRepeats(m_database); // the copies settle what they are copies of
        }
        for (const QString &trigger : triggers)
            m_database.execute(trigger);
        transaction.commit();
    }

private:
    QStringList texts(const QString &query) const
    {
        Statement rows(m_database, query);
        rows.run();
        QStringList all;
        while (rows.next())
            all.append(rows.text(0));
        return all;
    }

    std::vector<QString> takeTriggers()
    {
        const QStringList names = texts(u"SELECT name FROM sqlite_schema WHERE type = 'trigger'"_s);
        const QStringList sql = texts(u"SELECT sql FROM sqlite_schema WHERE type = 'trigger'"_s);
        for (const QString &name : names)
            m_database.execute(u"DROP TRIGGER "_s + name);
        return {sql.begin(), sql.end()};
    }

    QStringList tables() const
    {
        const QStringList all = texts(u"SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = "
                                      "'table' AND name NOT LIKE 'sqlite%' AND name NOT IN ('method', "
                                      "'method_act', 'search_repeat') ORDER BY name"_s);
        QStringList wanted;
        for (const QString &table : all) {
            if (!m_searchOnly || isDerived(table) || table == "run"_L1)
                wanted.append(table);
        }
        return wanted;
    }

    /// Of a derived table, whose rows have no number of their own, that of runs.
    qint64 strideOf(const QString &table) const
    {
        const QString numbered = isDerived(table) ? u"run"_s : table;
        return m_database.single(u"SELECT coalesce(max(id), 0) FROM "_s + numbered).toLongLong();
    }

    QString shifted(const QString &column, const QString &by) const
    {
        const auto stride = m_strides.find(by);
        return stride == m_strides.end() || stride->second == 0
                   ? column
                   : u"CASE WHEN %1 > 0 THEN %1 + turn * %2 ELSE %1 END"_s.arg(column).arg(stride->second);
    }

    /// The column in the n-th copy.
    QString copied(const QString &table, const QString &column,
                   const std::map<QString, QString> &references) const
    {
        if (column == "id"_L1)
            return shifted(column, table);
        if (const auto reference = references.find(column); reference != references.end())
            return shifted(column, reference->second);
        if (column == "last_reading"_L1)
            return shifted(column, u"reading"_s);
        if (column == "last_mark"_L1)
            return shifted(column, u"pipetting_mark"_s);
        const double days = double(daysOfCopies) / double(m_copies + 1);
        const QString later = u"'+' || CAST(turn * %1 AS INTEGER) || ' days'"_s.arg(days);
        if (column.endsWith("_utc"_L1))
            return u"CASE WHEN %1 <> '' THEN strftime('%Y-%m-%dT%H:%M:%fZ', %1, %2) ELSE %1 END"_s.arg(column,
                                                                                                       later);
        if (column == "day"_L1)
            return u"date(day, %1)"_s.arg(later);
        const bool ofRun = table == "run"_L1 || table == "search_run"_L1 || table == "search_words"_L1;
        if (ofRun && (column == "title"_L1 || column == "title_key"_L1))
            return column + u" || ' ' || turn"_s;
        if (column == "code"_L1)
            return u"code || turn"_s;
        return column;
    }

    void copyTable(const QString &table)
    {
        std::map<QString, QString> references;
        Statement keys(m_database,
                       u"SELECT \"from\", \"table\" FROM pragma_foreign_key_list(?) WHERE \"to\" = 'id'"_s);
        keys.run(table);
        while (keys.next())
            references[keys.text(0)] = keys.text(1);
        const QStringList columns =
            texts(u"SELECT name FROM pragma_table_info('%1') ORDER BY cid"_s.arg(table));
        QStringList values;
        for (const QString &column : columns)
            values.append(copied(table, column, references));
        const QString first = isDerived(table) ? u"run"_s : u"id"_s;
        m_database.execute(
            u"INSERT INTO %1 (%2) WITH RECURSIVE copies (turn) AS (SELECT 1 WHERE %4 >= 1 UNION ALL "
            "SELECT turn + 1 FROM copies WHERE turn < %4) "
            "SELECT %3 FROM copies CROSS JOIN (SELECT * FROM %1 ORDER BY %5)"_s.arg(
                table, columns.join(u", "_s), values.join(u", "_s), QString::number(m_copies), first));
    }

    /// What a sheet says of a run depends on its title.
    void renewCodes()
    {
        Statement runs(m_database, u"SELECT id FROM run ORDER BY id"_s);
        Statement set(m_database, u"UPDATE search_run SET code = ? WHERE run = ?"_s);
        runs.run();
        while (runs.next())
            set.run(runCodeOf(loadInputs(m_database, {runs.integer(0)})), runs.integer(0));
    }

    /// Each entry continues the one before it, as when they were written one after the other.
    void renewChain()
    {
        Statement entries(m_database,
                          u"SELECT id, at_utc, at_offset_min, person, account, host, program_version, "
                          "schema_version, action, run, details FROM audit ORDER BY id"_s);
        Statement records(m_database,
                          u"SELECT record_table, record_id, content_hash FROM audit_record WHERE audit = ? "
                          "ORDER BY position"_s);
        Statement set(m_database, u"UPDATE audit SET previous_hash = ?, hash = ? WHERE id = ?"_s);
        QString last = noHash();
        entries.run();
        while (entries.next()) {
            AuditFields entry{last,
                              entries.integer(0),
                              Moment{entries.text(1), int(entries.integer(2))},
                              entries.text(3),
                              entries.text(4),
                              entries.text(5),
                              entries.text(6),
                              entries.integer(7),
                              entries.text(8),
                              std::nullopt,
                              entries.text(10)};
            if (!entries.isNull(9))
                entry.run = entries.integer(9);
            std::vector<AuditedRecord> covered;
            records.run(entry.id);
            while (records.next())
                covered.push_back({records.text(0), records.integer(1), records.text(2)});
            const QString hash = auditHash(entry, covered);
            set.run(last, hash, entry.id);
            last = hash;
        }
    }

    Database &m_database;
    bool m_searchOnly;
    int m_copies;
    std::map<QString, qint64> m_strides;
};

} // namespace

void makeLargeNotebook(const QString &path, const LargeNotebook &wanted)
{
    QDateTime now(QDate(2016, 1, 4), QTime(8, 0), Qt::OffsetFromUTC, 3600);
    {
        const auto book =
            Notebook::create(path, {u"1.0.0"_s, u"bench"_s, u"bench-2"_s, [&now] { return now; }});
        Maker maker(*book, now, wanted.allDecided);
        for (int number = 0; number < std::min(wanted.made, wanted.runs); ++number)
            maker.make(number);
    }
    Database database(path, Access::ReadWrite);
    Copier(database, wanted).copy();
}

} // namespace plateau::test
