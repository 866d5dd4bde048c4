// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/notebook.h"

#include "core/assay/soundness.h"
#include "core/notebook/additions.h"
#include "core/notebook/basisstore.h"
#include "core/notebook/clockjumps.h"
#include "core/notebook/deciding.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/documentstore.h"
#include "core/notebook/history.h"
#include "core/notebook/files.h"
#include "core/notebook/inputs.h"
#include "core/notebook/laboratorystore.h"
#include "core/notebook/lotopening.h"
#include "core/notebook/markstore.h"
#include "core/notebook/methodacts.h"
#include "core/notebook/methodrecords.h"
#include "core/notebook/methodstore.h"
#include "core/notebook/opening.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/planstore.h"
#include "core/notebook/readingacts.h"
#include "core/notebook/readingstore.h"
#include "core/notebook/reportchoices.h"
#include "core/notebook/reportstore.h"
#include "core/notebook/runfinder.h"
#include "core/notebook/runlist.h"
#include "core/notebook/runstore.h"
#include "core/notebook/samerun.h"
#include "core/notebook/sentence.h"
#include "core/notebook/specificationstore.h"
#include "core/notebook/storedrun.h"
#include "core/notebook/text.h"
#include "core/notebook/verification.h"
#include "core/run/soundness.h"

#include <QFileInfo>

#include <algorithm>
#include <utility>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// What a run says of tubes that were pipetted otherwise or are spoilt, as marks.
void storeMarksOf(Act &act, RunId id, const run::Run &run, const assay::Method &method)
{
    for (int tube = 0; tube < int(run.tubes.size()); ++tube) {
        const run::Tube &said = run.tubes[size_t(tube)];
        for (const auto &[component, volume_mL] : said.pipetted_mL) {
            StoredMark mark;
            mark.dose = {tube, component, false};
            mark.volume_mL = volume_mL;
            mark.planned_mL = plannedVolume_mL(method, said, mark.dose).value_or(0);
            storeMark(act, id, mark, {});
        }
        if (!said.spoilt.isEmpty()) {
            StoredMark mark;
            mark.kind = MarkKind::Spoilt;
            mark.dose = {tube, {}, false};
            mark.note = said.spoilt;
            storeMark(act, id, mark, {});
        }
    }
}

/// What a run that is read or pipetted already took from was open when it began, and in the house by then.
void openLotsOf(Act &act, RunId id, const run::Run &run, const assay::Method &method)
{
    if (!namesClosedLot(act.database(), id))
        return;
    const QDate today = timeOf(act.at()).date();
    const QDate day = run.startedAt ? std::min(run.startedAt->date(), today) : today;
    openTaken(act, lotsTakenIn(act.database(), method, run, day), day);
}

void requireReasonToCorrect(const QString &reason)
{
    requireReason(reason,
                  Sentence::tr("The correction was not stored, since it needs a reason: say why the reading "
                               "is replaced."));
}

} // namespace

class Notebook::Private : public OpenNotebook
{
public:
    using OpenNotebook::OpenNotebook;

    Pipetting pipetting{*this};
    Lots lots{*this};
    EquipmentBook equipment{*this};
    StandardBook standards{*this};
    Shelf shelf{*this};
    Persons persons{*this};
    RunSearch search{*this};
    RunHistory runHistory{*this};
    Charts charts{*this};
    Keeping keeping{*this};
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

void Notebook::createFilled(const QString &path, const Surroundings &surroundings,
                            const std::function<void(Notebook &)> &fill)
{
    createNotebookFile(path, schemaSteps(), surroundings, [&](std::unique_ptr<Database> database) {
        Notebook notebook(std::make_unique<Private>(std::move(database), surroundings));
        fill(notebook);
    });
}

std::unique_ptr<Notebook> Notebook::open(const QString &path, Access access, const Surroundings &surroundings)
{
    auto database = openNotebookFile(path, access, schemaSteps(), surroundings);
    auto inside = std::make_unique<Private>(std::move(database), surroundings);
    return std::unique_ptr<Notebook>(new Notebook(std::move(inside)));
}

std::unique_ptr<Notebook> Notebook::openOrCreate(const QString &path)
{
    return isMissing(path) ? create(path) : open(path);
}

QString Notebook::path() const
{
    return d->database->path();
}

RunId Notebook::addRun(const run::Run &run, const assay::Method &method, const QString &person,
                       const std::optional<planning::PlanRecord> &plan)
{
    requireUsable(assay::problemsOf(method), Sentence::tr("The method was not stored: %1: %2."));
    requireUsable(run::problemsOf(run, method), Sentence::tr("The run was not stored: %1: %2."));
    if (plan)
        requireUsable(planning::problemsOf(*plan, run), Sentence::tr("The plan was not stored: %1: %2."));
    Act act = d->act(person, u"runAdded"_s);
    const RunId id = storePlan(act, run, storeMethod(act, method));
    if (plan)
        storePlanRecord(act, id, *plan);
    storeMarksOf(act, id, run, method);
    for (int tube = 0; tube < int(run.tubes.size()); ++tube) {
        for (const auto &[name, value] : run.tubes[size_t(tube)].readings)
            storeReading(act, {tubeRow(act.database(), id, tube), name, value, {}});
    }
    act.concerns(id);
    openLotsOf(act, id, run, method);
    act.commit();
    return id;
}

ReadingId Notebook::addReading(RunId run, int tube, const QString &reading, const run::Reading &value,
                               const QString &typed, const QString &person, const ReadingOrigin &origin)
{
    Act act = d->act(person, u"readingAdded"_s);
    return notebook::addReading(act, {run, tube, reading}, {value, typed, origin});
}

ReadingId Notebook::readAgain(RunId run, int tube, const QString &reading, double absorbance,
                              const QString &typed, const QString &person, const ReadingOrigin &origin)
{
    Act act = d->act(person, u"readingAgain"_s);
    return notebook::readAgain(act, {run, tube, reading}, {absorbance, typed, origin});
}

ReadingId Notebook::correctReading(RunId run, int tube, const QString &reading, const run::Reading &value,
                                   const QString &typed, const QString &person, const QString &reason)
{
    requireReasonToCorrect(reason);
    Act act = d->act(person, u"readingCorrected"_s);
    return notebook::correctReading(act, {run, tube, reading}, {value, typed}, reason);
}

ReadingId Notebook::correctLastOfSeries(RunId run, int tube, const QString &reading, double absorbance,
                                        const QString &typed, const QString &person, const QString &reason)
{
    requireReasonToCorrect(reason);
    Act act = d->act(person, u"readingCorrected"_s);
    return notebook::correctLastOfSeries(act, {run, tube, reading}, {absorbance, typed}, reason);
}

void Notebook::addTubes(RunId run, const std::vector<run::Sample> &samples,
                        const std::vector<run::Tube> &tubes,
                        const std::vector<planning::PlannedSample> &planned, const QString &person)
{
    Act act = d->act(person, u"tubesAdded"_s);
    notebook::addTubes(act, run, samples, tubes, planned);
}

void Notebook::noteClockJump(qint64 shift_ms, const QString &person)
{
    if (shift_ms == 0)
        throw refused(Sentence::tr("Nothing was stored: a clock that was set by 0 s was not set."));
    Act act = d->act(person, u"clockJumped"_s);
    storeClockJump(act, shift_ms);
    act.commit();
}

void Notebook::decide(RunId run, const RunDecision &decision)
{
    decideRun(*d, d->persons, run, decision);
}

void Notebook::decide(RunId run, DecisionKind kind, const QString &person, const QString &reason)
{
    decide(run, RunDecision{kind, person, {}, reason, {}});
}

void Notebook::reopen(RunId run, const QString &person, const QString &reason, const QString &passphrase)
{
    reopenRun(*d, d->persons, run, {person, reason, passphrase});
}

DecisionBasis Notebook::decisionBasis(RunId run, std::optional<int> revision) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return loadDecisionBasis(*d->database, run, revision);
}

Pipetting &Notebook::pipetting()
{
    return d->pipetting;
}

StandardBook &Notebook::standards()
{
    return d->standards;
}

const StandardBook &Notebook::standards() const
{
    return d->standards;
}

EquipmentBook &Notebook::equipment()
{
    return d->equipment;
}

const EquipmentBook &Notebook::equipment() const
{
    return d->equipment;
}

Lots &Notebook::lots()
{
    return d->lots;
}

const Lots &Notebook::lots() const
{
    return d->lots;
}

Shelf &Notebook::shelf()
{
    return d->shelf;
}

const Shelf &Notebook::shelf() const
{
    return d->shelf;
}

Persons &Notebook::persons()
{
    return d->persons;
}

const Persons &Notebook::persons() const
{
    return d->persons;
}

const RunSearch &Notebook::search() const
{
    return d->search;
}

const RunHistory &Notebook::runHistory() const
{
    return d->runHistory;
}

Charts &Notebook::charts()
{
    return d->charts;
}

const Charts &Notebook::charts() const
{
    return d->charts;
}

const Keeping &Notebook::keeping() const
{
    return d->keeping;
}

SampleResults Notebook::resultsOf(const QString &sample, const QString &measurand,
                                  std::optional<RunId> of) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return loadSampleResults(*d->database, sample, measurand, of);
}

void Notebook::chooseReported(const QString &sample, const QString &measurand, const WantedChoice &choice,
                              std::optional<RunId> of)
{
    notebook::chooseReported(*d, d->persons, sample, measurand, choice, of);
}

std::vector<evaluation::Specification> Notebook::specifications() const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return loadSpecifications(*d->database);
}

std::optional<LaboratorySaving> Notebook::specificationsSaving() const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return documentSaving(*d->database, Document::Specifications,
                          newestDocument(*d->database, Document::Specifications));
}

bool Notebook::saveSpecifications(const std::vector<evaluation::Specification> &specifications,
                                  const QString &person, const QString &reason)
{
    requireUsable(evaluation::problemsOf(specifications),
                  Sentence::tr("The limits were not stored: %1: %2."));
    requireReason(reason, Sentence::tr("The limits were not stored, since that needs a reason: say why."));
    Act act = d->act(person, u"specificationsSaved"_s);
    if (!storeSpecifications(act, specifications, reason))
        return false;
    act.commit();
    return true;
}

planning::Laboratory Notebook::laboratory() const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return loadLaboratory(*d->database);
}

std::optional<LaboratorySaving> Notebook::laboratorySaving() const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return documentSaving(*d->database, Document::Laboratory,
                          newestDocument(*d->database, Document::Laboratory));
}

bool Notebook::saveLaboratory(const planning::Laboratory &laboratory, const QString &person)
{
    requireUsable(planning::problemsOf(laboratory),
                  Sentence::tr("The laboratory's settings were not stored: %1: %2."));
    Act act = d->act(person, u"laboratorySaved"_s);
    if (!storeLaboratory(act, laboratory))
        return false;
    act.commit();
    return true;
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
    return loadStored(*d->database, run);
}

StoredRun Notebook::loadRevision(RunId run, int revision) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return loadStoredRevision(*d->database, run, revision);
}

std::optional<RunSummary> Notebook::findSameRun(const run::Run &run, const assay::Method &method) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return notebook::findSameRun(*d->database, run, method);
}

std::vector<RunId> Notebook::findRuns(const QString &runCode) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return notebook::findRuns(*d->database, runCode);
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

Verification Notebook::verify(const Watch &watch) const
{
    Transaction snapshot(*d->database, Transaction::Kind::Read);
    return verifyNotebook(d->session(), schemaSteps(), watch);
}

} // namespace plateau::notebook
