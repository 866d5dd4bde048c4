// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/verification.h"

#include "core/exchange/evaluationcomparison.h"
#include "core/exchange/writers.h"
#include "core/notebook/checks.h"
#include "core/notebook/companions.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/inputs.h"
#include "core/notebook/searchindex.h"
#include "core/notebook/sentence.h"
#include "core/notebook/stopping.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

void append(std::vector<Finding> &all, const std::vector<Finding> &more)
{
    all.insert(all.end(), more.begin(), more.end());
}

/// One decision after the other, each from the readings that counted then.
class DecisionCheck
{
public:
    DecisionCheck(const Session &session, Verification &verification)
        : m_session(session)
        , m_verification(verification)
    {
    }

    void check(RunId run)
    {
        try {
            ++m_verification.runsChecked;
            const Inputs inputs = loadInputs(m_session.database, run);
            for (const DecisionRow &row : loadDecisions(m_session.database, run)) {
                m_place = Sentence::tr("decision %1 on run %2").arg(row.id).arg(run.value);
                check(row, inputs.method, inputs.runAsOf(row.lastSeen));
            }
        } catch (const Failure &failure) {
            m_verification.findings.push_back({Sentence::tr("run %1").arg(run.value), failure.sentence()});
        }
    }

private:
    void check(const DecisionRow &row, const assay::Method &method, const run::Run &run)
    {
        ++m_verification.decisionsChecked;
        if (reviewHash(run, method) != row.decision.contentHash)
            complain(row, Sentence::tr("what was reviewed is not what is stored now"));
        const std::vector<evaluation::Companion> companions =
            loadCompanions(m_session.database, loadCompanionRows(m_session.database, row.id), row.id);
        const evaluation::Evaluation evaluation = evaluation::evaluate(method, run, {}, companions);
        const auto difference =
            exchange::differenceOf(row.decision.evaluation, exchange::writeEvaluation(evaluation));
        if (difference)
            complain(row,
                     Sentence::tr("evaluated again, it gives another result: %1 was %2, is %3")
                         .arg(difference->place.isEmpty() ? Sentence::tr("the document") : difference->place,
                              difference->before, difference->after));
        else if (evaluation.acceptable != row.decision.acceptable)
            complain(row,
                     Sentence::tr("evaluated again, it gives another answer to whether it is acceptable"));
    }

    void complain(const DecisionRow &row, const QString &message)
    {
        const QString &then = row.decision.programVersion;
        const QString &now = m_session.surroundings.programVersion;
        const QString versions =
            then == now ? QString()
                        : Sentence::tr(" (decided with version %1, verified with %2)").arg(then, now);
        m_verification.findings.push_back({m_place, message + versions});
    }

    const Session &m_session;
    Verification &m_verification;
    QString m_place;
};

/// To evaluate a run again takes as long as to hash so many rows, about.
constexpr int rowsOfOneRun = 64;

/// Entries, the rows they cover, and runs.
qint64 workIn(const Database &database)
{
    try {
        return database
            .single(u"SELECT (SELECT count(*) FROM audit) + (SELECT count(*) FROM audit_record) + "
                    "%1 * (SELECT count(*) FROM run)"_s.arg(rowsOfOneRun))
            .toLongLong();
    } catch (const Failure &) {
        return 0; // what is damaged is found below, and said there
    }
}

std::vector<RunId> allRuns(const Database &database)
{
    Statement query(database, u"SELECT id FROM run ORDER BY id"_s);
    query.run();
    std::vector<RunId> runs;
    while (query.next())
        runs.push_back({query.integer(0)});
    return runs;
}

void checkDecisions(const Session &session, Verification &verification, Progress &progress)
{
    DecisionCheck check(session, verification);
    try {
        for (const RunId run : allRuns(session.database)) {
            check.check(run);
            for (int i = 0; i < rowsOfOneRun; ++i)
                progress.advance();
        }
        const AuditHead head = readAuditHead(session.database);
        verification.auditEntries = head.entries;
        verification.auditHead = head.hash;
    } catch (const Failure &failure) {
        verification.findings.push_back({Sentence::tr("the list of runs"), failure.details()});
    }
}

} // namespace

Verification verifyNotebook(const Session &session, const std::vector<SchemaStep> &steps, const Watch &watch)
{
    Verification verification;
    const Database &database = session.database;
    Progress progress(watch, workIn(database));
    const StopsStatements stops(database, [&progress] { return progress.goesOn(); });
    append(verification.findings, fileFindings(database));
    append(verification.findings, schemaFindings(database, session.layout));
    append(verification.findings, chainFindings(database, &progress));
    append(verification.findings, recordFindings(database, steps, session.schemaVersion, &progress));
    // What is found by records that are not sound says nothing more.
    if (verification.sound())
        append(verification.findings, searchFindings(database));
    checkDecisions(session, verification, progress);
    append(verification.findings,
           equipmentFindings(database, session.surroundings.programVersion, verification.equipmentChecked));
    return verification;
}

} // namespace plateau::notebook
