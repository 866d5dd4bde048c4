// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/archive.h"

#include "core/notebook/checks.h"
#include "core/notebook/copying.h"
#include "core/notebook/files.h"
#include "core/notebook/recordtables.h"
#include "core/notebook/searchindex.h"
#include "core/notebook/sentence.h"
#include "core/notebook/stopping.h"
#include "core/notebook/triggers.h"

#include <QDir>
#include <QFile>

#include <set>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// SQLite's own modifiers; the offset of an act is in minutes.
const QString yearOfAct =
    QStringLiteral("CAST(strftime('%Y', at_utc, at_offset_min || ' minutes') AS INTEGER)");

AuditHead headAt(const Database &database, int year)
{
    Statement query(
        database,
        u"SELECT id, hash FROM audit WHERE id = (SELECT max(id) FROM audit WHERE %1 = ?)"_s.arg(yearOfAct));
    query.run(year);
    if (!query.next())
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("The notebook has nothing of %1, so no archive of it was made; choose a "
                                   "year in which something was done.")
                          .arg(year));
    return {int(query.integer(0)), query.text(1)};
}

/// Halves the acts until both ends of a part are of one year, so that a few dozen of some hundred thousand
/// are read.
class YearFinder
{
public:
    YearFinder(const Database &database, std::set<int> &years)
        : m_act(database, u"SELECT %1 FROM audit WHERE id >= ? ORDER BY id LIMIT 1"_s.arg(yearOfAct))
        , m_years(years)
    {
    }
    void look(qint64 first, qint64 last)
    {
        const std::optional<int> begin = yearOf(first);
        const std::optional<int> end = yearOf(last);
        for (const std::optional<int> &year : {begin, end}) {
            if (year)
                m_years.insert(*year);
        }
        if (begin == end || last - first < 2)
            return;
        const qint64 middle = first + (last - first) / 2;
        look(first, middle);
        look(middle, last);
    }

private:
    std::optional<int> yearOf(qint64 act)
    {
        m_act.run(act);
        return m_act.next() ? std::optional(int(m_act.integer(0))) : std::nullopt;
    }

    Statement m_act;
    std::set<int> &m_years;
};

/// Four steps, none of which tells how far it has come.
class ArchiveSteps
{
public:
    explicit ArchiveSteps(const Watch &watch)
        : m_watch(watch)
    {
    }
    bool goesOn() const { return !m_watch || m_watch(m_done, all); }
    void next()
    {
        ++m_done;
        if (!goesOn())
            throw Stopped();
    }

private:
    static constexpr qint64 all = 4;

    const Watch &m_watch;
    qint64 m_done = 0;
};

/// Everything that later acts added goes, in the copy.
void cutAfter(Database &copy, const Layout &layout, qint64 lastEntry)
{
    copy.setForeignKeys(false); // rows go table by table; what is left is checked as a whole
    Transaction transaction(copy, Transaction::Kind::Write);
    WithoutTriggers triggers(copy);
    for (const QString &table : recordTables(layout)) {
        Statement(copy,
                  u"DELETE FROM %1 WHERE id IN (SELECT record_id FROM audit_record WHERE record_table = ? "
                  "AND audit > ?)"_s.arg(table))
            .run(table, lastEntry);
    }
    Statement(copy, u"DELETE FROM audit_record WHERE audit > ?"_s).run(lastEntry);
    Statement(copy, u"DELETE FROM audit WHERE id > ?"_s).run(lastEntry);
    rebuildSearch(copy); // what follows from the records was of the later state
    triggers.putBack();
    transaction.commit();
    copy.setForeignKeys(true);
}

void requireSound(const Database &copy, const Session &session, const AuditHead &wanted)
{
    std::vector<Finding> findings = fileFindings(copy);
    for (const auto &more : {schemaFindings(copy, session.layout), chainFindings(copy),
                             recordFindings(copy, schemaSteps(), session.schemaVersion)})
        findings.insert(findings.end(), more.begin(), more.end());
    const AuditHead found = readAuditHead(copy);
    if (!findings.empty() || found.hash != wanted.hash)
        throw Failure(Failure::Kind::Storage,
                      Sentence::tr("The archive did not come out whole and was taken away again; nothing was "
                                   "changed in the notebook %1: verify it, and see that the disk has room.")
                          .arg(QDir::toNativeSeparators(session.database.path())),
                      findingLines(findings));
}

} // namespace

std::vector<int> yearsIn(const Database &database)
{
    const qint64 last = database.single(u"SELECT max(id) FROM audit"_s).toLongLong();
    std::set<int> years;
    YearFinder(database, years).look(1, last);
    return {years.begin(), years.end()};
}

AuditHead archiveYear(const Session &session, int year, const QString &target, const Watch &watch)
{
    const AuditHead head = headAt(session.database, year);
    requireFreeName(target);
    makeWhole(target, [&](const QString &part) {
        ArchiveSteps steps(watch);
        const auto goesOn = [&steps] { return steps.goesOn(); };
        {
            const StopsStatements stops(session.database, goesOn);
            Statement(session.database, u"VACUUM INTO ?"_s).run(part);
        }
        steps.next();
        Database copy(part, Access::ReadWrite);
        const StopsStatements stops(copy, goesOn);
        copy.setJournal();
        cutAfter(copy, session.layout, head.entries);
        steps.next();
        copy.execute(u"VACUUM"_s);
        steps.next();
        requireSound(copy, session, head);
        steps.next();
    });
    QFile::setPermissions(target, QFileDevice::ReadOwner);
    return head;
}

} // namespace plateau::notebook
