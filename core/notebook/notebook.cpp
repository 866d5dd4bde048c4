// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/notebook.h"

#include "core/assay/soundness.h"
#include "core/exchange/writers.h"
#include "core/notebook/companions.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/history.h"
#include "core/notebook/inputs.h"
#include "core/notebook/methodacts.h"
#include "core/notebook/methodrecords.h"
#include "core/notebook/methodstore.h"
#include "core/notebook/opening.h"
#include "core/notebook/readingstore.h"
#include "core/notebook/runlist.h"
#include "core/notebook/runstore.h"
#include "core/notebook/samerun.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"
#include "core/notebook/verification.h"
#include "core/run/soundness.h"

#include <QDir>
#include <QFileInfo>

#include <utility>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

Failure refused(const QString &sentence)
{
    return Failure(Failure::Kind::Refused, sentence);
}

/// sentence: with places for the pointer and the message.
void requireUsable(const assay::Problems &problems, const QString &sentence)
{
    for (const assay::Problem &problem : problems) {
        if (problem.severity == assay::Problem::Severity::Error)
            throw refused(sentence.arg(problem.pointer, problem.message));
    }
}

} // namespace

class Notebook::Private
{
public:
    Private(std::unique_ptr<Database> connection, const Surroundings &around)
        : database(std::move(connection))
        , surroundings(around)
        , version(schemaSteps().back().number)
        , layout(layoutAfter(schemaSteps(), version))
    {
    }

    Session session() { return {*database, version, layout, surroundings}; }
    Act act(const QString &person, const QString &action)
    {
        if (database->access() == Access::ReadOnly)
            throw Failure(Failure::Kind::Storage,
                          Sentence::tr("The notebook %1 is open for reading only; nothing was stored.")
                              .arg(QDir::toNativeSeparators(database->path())));
        requirePerson(person);
        return Act(session(), person, action);
    }

    std::unique_ptr<Database> database;
    Surroundings surroundings;
    int version;
    Layout layout;
};

Notebook::Notebook(std::unique_ptr<Private> p)
    : d(std::move(p))
{
}

Notebook::~Notebook() = default;

std::unique_ptr<Notebook> Notebook::create(const QString &path, const Surroundings &surroundings)
{
    createNotebookFile(path, schemaSteps(), surroundings);
    return open(path, Access::ReadWrite, surroundings);
}

std::unique_ptr<Notebook> Notebook::open(const QString &path, Access access, const Surroundings &surroundings)
{
    auto database = openNotebookFile(path, access, schemaSteps(), surroundings);
    auto inside = std::make_unique<Private>(std::move(database), surroundings);
    return std::unique_ptr<Notebook>(new Notebook(std::move(inside)));
}

std::unique_ptr<Notebook> Notebook::openOrCreate(const QString &path)
{
    if (QFileInfo::exists(path))
        return open(path);
    return create(path);
}

QString Notebook::path() const
{
    return d->database->path();
}

RunId Notebook::addRun(const run::Run &run, const assay::Method &method, const QString &person)
{
    requireUsable(assay::problemsOf(method), Sentence::tr("The method was not stored: %1: %2."));
    requireUsable(run::problemsOf(run, method), Sentence::tr("The run was not stored: %1: %2."));
    Act act = d->act(person, u"runAdded"_s);
    const RunId id = storePlan(act, run, storeMethod(act, method));
    for (int tube = 0; tube < int(run.tubes.size()); ++tube) {
        for (const auto &[name, value] : run.tubes[size_t(tube)].readings)
            storeReading(act, {tubeRow(act.database(), id, tube), name, value, {}, {}, {}});
    }
    act.concerns(id);
    act.commit();
    return id;
}

ReadingId Notebook::addReading(RunId run, int tube, const QString &reading, const run::Reading &value,
                               const QString &typed, const QString &person)
{
    Act act = d->act(person, u"readingAdded"_s);
    act.concerns(run);
    const qint64 row = tubeRow(act.database(), run, tube);
    requireOnBench(act.database(), run);
    const Inputs inputs = loadInputs(act.database(), run);
    requireReading(inputs.plan, inputs.method, tube, reading, value);
    if (currentReading(inputs.readings, tube, reading))
        throw refused(
            Sentence::tr("Tube %1 has a reading %2 already; nothing was stored: correct it, with a reason.")
                .arg(tube + 1)
                .arg(reading));
    const ReadingId id = storeReading(act, {row, reading, value, typed, {}, {}});
    act.commit();
    return id;
}

ReadingId Notebook::correctReading(RunId run, int tube, const QString &reading, const run::Reading &value,
                                   const QString &typed, const QString &person, const QString &reason)
{
    requireReason(reason,
                  Sentence::tr("The correction was not stored, since it needs a reason: say why the reading "
                               "is replaced."));
    Act act = d->act(person, u"readingCorrected"_s);
    act.concerns(run);
    const qint64 row = tubeRow(act.database(), run, tube);
    requireOnBench(act.database(), run);
    const Inputs inputs = loadInputs(act.database(), run);
    requireReading(inputs.plan, inputs.method, tube, reading, value);
    const StoredReading *current = currentReading(inputs.readings, tube, reading);
    if (!current)
        throw refused(
            Sentence::tr("Tube %1 has no reading %2 to correct; nothing was stored: add it instead.")
                .arg(tube + 1)
                .arg(reading));
    const ReadingId id = storeReading(act, {row, reading, value, typed, current->id, reason});
    act.commit();
    return id;
}

void Notebook::decide(RunId run, DecisionKind kind, const QString &person, const QString &reason)
{
    Act act = d->act(person, kind == DecisionKind::Accepted ? u"runAccepted"_s : u"runRejected"_s);
    act.concerns(run);
    const Inputs inputs = loadInputs(act.database(), run);
    requireOnBench(act.database(), run);
    requireUnchanged(d->session(), run);
    const run::Run current = inputs.run();
    const std::vector<CompanionRow> companions = findCompanions(act.database(), run, inputs);
    for (const CompanionRow &companion : companions)
        requireUnchanged(d->session(), companion.run);
    const evaluation::Evaluation evaluation =
        evaluation::evaluate(inputs.method, current, {}, loadCompanions(act.database(), companions));
    if (kind == DecisionKind::Rejected)
        requireReason(reason, Sentence::tr("The run was not rejected, since that needs a reason: say why."));
    else if (!evaluation.acceptable)
        requireReason(reason,
                      Sentence::tr("The run was not accepted: not everything in it passed, so accepting it "
                                   "needs a reason."));
    else if (!reason.isEmpty())
        requireReason(
            reason, Sentence::tr("The run was not accepted: its reason is blank; leave it out or say why."));
    Decision decision{kind,
                      person,
                      reason,
                      timeOf(act.at()),
                      reviewHash(current, inputs.method),
                      exchange::writeEvaluation(evaluation),
                      evaluation.acceptable,
                      act.programVersion()};
    storeCompanions(act, storeDecision(act, run, decision, inputs.newest()), companions);
    act.commit();
}

void Notebook::reopen(RunId run, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("The run was not reopened, since that needs a reason: say why."));
    Act act = d->act(person, u"runReopened"_s);
    act.concerns(run);
    methodRowOf(act.database(), run);
    if (stateOf(act.database(), run) == RunState::OnBench)
        throw refused(Sentence::tr("Run %1 is on the bench already; nothing was stored.").arg(run.value));
    storeReopening(act, loadDecisions(act.database(), run).back().id, reason);
    act.commit();
}

MethodOutcome Notebook::saveMethod(const assay::Method &method, const QString &person, const QString &note,
                                   const std::vector<assay::Method> &shipped)
{
    requireUsable(assay::problemsOf(method), Sentence::tr("The method was not stored: %1: %2."));
    if (!note.isEmpty())
        requireReason(note, Sentence::tr("The method was not stored: its note is blank; leave it out or say "
                                         "what changed."));
    Act act = d->act(person, u"methodSaved"_s);
    return notebook::saveMethod(act, method, note, shipped);
}

MethodOutcome Notebook::importMethod(const assay::Method &method, const QString &fileName,
                                     const QString &person, const std::vector<assay::Method> &shipped)
{
    requireUsable(assay::problemsOf(method), Sentence::tr("The method was not stored: %1: %2."));
    Act act = d->act(person, u"methodImported"_s);
    return notebook::importMethod(act, method, fileName, shipped);
}

void Notebook::retireMethod(const assay::Method &method, const QString &person, const QString &reason)
{
    requireUsable(assay::problemsOf(method), Sentence::tr("The method was not retired: %1: %2."));
    requireReason(reason, Sentence::tr("The method was not retired, since that needs a reason: say why."));
    Act act = d->act(person, u"methodRetired"_s);
    notebook::retireMethod(act, method, reason);
}

void Notebook::reinstateMethod(const assay::Method &method, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("The method was not reinstated, since that needs a reason: say why."));
    Act act = d->act(person, u"methodReinstated"_s);
    notebook::reinstateMethod(act, method, reason);
}

std::vector<StoredMethod> Notebook::methods() const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return loadMethods(*d->database);
}

std::vector<RunSummary> Notebook::runs() const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return loadSummaries(*d->database);
}

StoredRun Notebook::load(RunId run) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    const Inputs inputs = loadInputs(*d->database, run);
    const std::vector<DecisionRow> decisions = loadDecisions(*d->database, run);
    StoredRun stored;
    stored.summary = loadSummary(*d->database, run);
    stored.run = inputs.run();
    stored.method = inputs.method;
    stored.companions =
        loadCompanions(*d->database, stored.summary.state == RunState::OnBench
                                         ? findCompanions(*d->database, run, inputs)
                                         : loadCompanionRows(*d->database, decisions.back().id));
    stored.readings = inputs.readings;
    for (const DecisionRow &row : decisions)
        stored.decisions.push_back(row.decision);
    stored.reopenings = loadReopenings(*d->database, run);
    return stored;
}

std::optional<RunSummary> Notebook::findSameRun(const run::Run &run, const assay::Method &method) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return notebook::findSameRun(*d->database, run, method);
}

std::vector<AuditEntry> Notebook::history(RunId run) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return loadHistory(*d->database, run);
}

AuditHead Notebook::auditHead() const
{
    return readAuditHead(*d->database);
}

Verification Notebook::verify() const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return verifyNotebook(d->session(), schemaSteps());
}

} // namespace plateau::notebook
