// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchsession.h"

#include "ui/bench/benchworksheet.h"
#include "ui/bench/reportsource.h"

#include <algorithm>
#include <set>

namespace plateau::ui {

namespace {

/// Where nobody ticks, what is read was pipetted.
std::vector<timing::Due> dueIn(const Rack &rack)
{
    const PipetteSheet &sheet = rack.sheet;
    return timing::dueOf(rack.stored.method, rack.stored.run, [&sheet](int tube, const QString &component) {
        for (int round = 0; round < static_cast<int>(sheet.rounds().size()); ++round) {
            if (sheet.isLed() && sheet.round(round).component == component &&
                sheet.stateOf({round, tube}) == PipetteSheet::State::Due)
                return false;
        }
        return true;
    });
}

/// The newest thing that somebody marked in any of the racks since that start of the machine.
std::optional<timing::Stamp> newestStamp(const std::vector<Rack> &racks, const QString &bootId)
{
    std::optional<timing::Stamp> newest;
    const auto look = [&newest, &bootId](const timing::Stamp &stamp) {
        if (stamp.boot.id == bootId && (!newest || stamp.boot.ms > newest->boot.ms))
            newest = stamp;
    };
    for (const Rack &rack : racks) {
        for (const notebook::StoredReading &reading : rack.stored.readings)
            look({reading.at, reading.boot});
        for (const notebook::StoredMark &mark : rack.stored.marks)
            look({mark.at, mark.boot});
    }
    return newest;
}

} // namespace

BenchSession::BenchSession(notebook::Notebook &notebook, QObject *parent)
    : BenchSession(notebook, Clock::ofSystem(), parent)
{
}

BenchSession::BenchSession(notebook::Notebook &notebook, const Clock &clock, QObject *parent)
    : QObject(parent)
    , m_notebook(notebook)
    , m_clock(clock)
{
}

void BenchSession::reload()
{
    std::vector<Rack> racks;
    const std::vector<notebook::RunId> onBench = search().onBench();
    const std::set<notebook::RunId> present(onBench.begin(), onBench.end());
    std::erase_if(m_letters, [&present](const auto &entry) { return !present.contains(entry.first); });
    for (const notebook::RunId id : onBench)
        racks.push_back(rackOf(id));
    m_racks = std::move(racks);
    m_hands.times = m_notebook.laboratory().handling;
    Q_EMIT racksChanged();
    Q_EMIT notebookChanged();
}

const Rack *BenchSession::find(notebook::RunId id) const
{
    const auto found =
        std::find_if(m_racks.begin(), m_racks.end(), [id](const Rack &rack) { return rack.id == id; });
    return found == m_racks.end() ? nullptr : &*found;
}

std::optional<NextAction> BenchSession::next() const
{
    return nextAction(m_racks, nowOfRacks_min(), m_inHand, m_hands);
}

std::optional<NextAction> BenchSession::nextOf(const Rack &rack) const
{
    const double now = now_min(rack);
    return nextAction({&rack, 1}, {&now, 1}, rack.id, m_hands);
}

std::vector<NextAction> BenchSession::timed() const
{
    return timedActions(m_racks, nowOfRacks_min());
}

double BenchSession::now_min(const Rack &rack) const
{
    return rack.stored.clock.minutesOf(m_clock.stamp());
}

std::vector<double> BenchSession::nowOfRacks_min() const
{
    const timing::Stamp stamp = m_clock.stamp(); // one moment for all
    std::vector<double> all_min;
    for (const Rack &rack : m_racks)
        all_min.push_back(rack.stored.clock.minutesOf(stamp));
    return all_min;
}

void BenchSession::setLead(int lead_s)
{
    m_hands.lead_s = lead_s;
    Q_EMIT nextChanged();
}

void BenchSession::setHandling(const planning::HandlingTimes &times)
{
    m_hands.times = times;
    Q_EMIT nextChanged();
}

void BenchSession::tick()
{
    noteJump();
    Q_EMIT ticked();
}

void BenchSession::noteJump()
{
    const timing::Stamp stamp = m_clock.stamp();
    const std::optional<timing::Stamp> before = m_lastTick ? m_lastTick : newestStamp(m_racks, stamp.boot.id);
    m_lastTick = stamp;
    const auto shift_ms = before ? timing::jump_ms(*before, stamp) : std::nullopt;
    if (!shift_ms)
        return;
    // Nobody did it at the bench; where nobody has given a name yet, the program answers for what it saw.
    m_notebook.noteClockJump(*shift_ms, m_person.isEmpty() ? tr("the program") : m_person);
    reload();
    Q_EMIT clockSet(*shift_ms);
}

void BenchSession::keepBeat(notebook::RunId id, const std::optional<Beat> &beat)
{
    if (beat)
        m_beats[id] = *beat;
    else
        m_beats.erase(id);
    refresh(id);
}

void BenchSession::takeInHand(notebook::RunId id)
{
    if (id == m_inHand)
        return;
    m_inHand = id;
    Q_EMIT nextChanged();
}

void BenchSession::setPerson(const QString &person)
{
    const QString name = person.simplified();
    if (name == m_person)
        return;
    m_person = name;
    Q_EMIT personChanged();
}

notebook::RunId BenchSession::addRun(const run::Run &run, const assay::Method &method,
                                     const std::optional<planning::PlanRecord> &plan)
{
    const notebook::RunId id = m_notebook.addRun(run, method, m_person, plan);
    reload();
    return id;
}

void BenchSession::storeReading(notebook::RunId id, const Place &place, double absorbance,
                                const QString &typed, const notebook::ReadingOrigin &origin)
{
    m_notebook.addReading(id, place.tube, place.reading, absorbance, typed, m_person, origin);
    refresh(id);
}

void BenchSession::readAgain(notebook::RunId id, const Place &place, double absorbance, const QString &typed,
                             const notebook::ReadingOrigin &origin)
{
    m_notebook.readAgain(id, place.tube, place.reading, absorbance, typed, m_person, origin);
    refresh(id);
}

void BenchSession::correctReading(notebook::RunId id, const Place &place, double absorbance,
                                  const QString &typed, const QString &reason)
{
    m_notebook.correctLastOfSeries(id, place.tube, place.reading, absorbance, typed, m_person, reason);
    refresh(id);
}

std::vector<notebook::LotId> BenchSession::tick(notebook::RunId id,
                                                const std::vector<notebook::DoneDose> &doses)
{
    std::vector<notebook::LotId> opened = m_notebook.pipetting().markDone(id, doses, m_person);
    refresh(id);
    return opened;
}

void BenchSession::untick(notebook::RunId id, const std::vector<notebook::Dose> &doses)
{
    m_notebook.pipetting().markUndone(id, doses, m_person);
    refresh(id);
}

void BenchSession::tickDilutions(notebook::RunId id, const std::vector<notebook::DilutionPlace> &steps)
{
    m_notebook.pipetting().markDilutionsDone(id, steps, m_person);
    refresh(id);
}

void BenchSession::untickDilutions(notebook::RunId id, const std::vector<notebook::DilutionPlace> &steps)
{
    m_notebook.pipetting().markDilutionsUndone(id, steps, m_person);
    refresh(id);
}

void BenchSession::spoilTube(notebook::RunId id, int tube, const QString &reason)
{
    m_notebook.pipetting().markSpoilt(id, tube, m_person, reason);
    refresh(id);
}

void BenchSession::restoreTube(notebook::RunId id, int tube, const QString &reason)
{
    m_notebook.pipetting().markUnspoilt(id, tube, m_person, reason);
    refresh(id);
}

void BenchSession::addRepeat(notebook::RunId id, const planning::RackRepeat &repeat)
{
    m_notebook.addTubes(id, {repeat.sample}, repeat.tubes, {repeat.planned}, m_person);
    refresh(id);
}

void BenchSession::takeFromPaper(notebook::RunId id)
{
    m_fromPaper.insert(id);
    refresh(id);
}

void BenchSession::decide(notebook::RunId id, notebook::DecisionKind kind, const QString &person,
                          const QString &reason)
{
    m_notebook.decide(id, kind, person, reason);
    m_usualBlanks.clear();
    reload();
}

void BenchSession::decide(notebook::RunId id, const notebook::RunDecision &decision)
{
    m_notebook.decide(id, decision);
    m_usualBlanks.clear();
    reload();
}

void BenchSession::chooseReported(notebook::RunId of, const QString &sample, const QString &measurand,
                                  const notebook::WantedChoice &choice)
{
    m_notebook.chooseReported(sample, measurand, choice, of);
    Q_EMIT notebookChanged();
}

std::optional<double> BenchSession::usualBlank(notebook::RunId id, const QString &reading) const
{
    const Rack *rack = find(id);
    if (!rack)
        return std::nullopt;
    const auto [kept, isNew] = m_usualBlanks.try_emplace({rack->stored.method.id, reading});
    if (isNew)
        kept->second = m_notebook.runHistory().usualBlank(rack->stored.method.id, reading);
    return kept->second;
}

QString BenchSession::methodName(const QString &id) const
{
    const assay::Method *newest = nullptr;
    const std::vector<notebook::StoredMethod> stored = m_notebook.methods();
    for (const notebook::StoredMethod &known : stored) {
        if (known.method.id == id && (!newest || known.method.version > newest->version))
            newest = &known.method;
    }
    if (newest)
        return newest->name;
    const auto known = m_methodNames.find(id);
    return known == m_methodNames.end() ? id : known->second;
}

void BenchSession::reopen(notebook::RunId id, const QString &person, const QString &reason,
                          const QString &passphrase)
{
    m_notebook.reopen(id, person, reason, passphrase);
    m_usualBlanks.clear();
    reload();
}

ReportContent BenchSession::report(notebook::RunId id) const
{
    return reportOf(m_notebook, id);
}

void BenchSession::refresh(notebook::RunId id)
{
    const auto found =
        std::find_if(m_racks.begin(), m_racks.end(), [id](const Rack &rack) { return rack.id == id; });
    if (found == m_racks.end())
        return;
    *found = rackOf(id);
    Q_EMIT rackChanged(id);
    Q_EMIT notebookChanged();
}

Rack BenchSession::rackOf(notebook::RunId id)
{
    Rack rack;
    rack.id = id;
    rack.letter = letterFor(id);
    rack.stored = m_notebook.load(id);
    rack.evaluation = notebook::evaluationOf(rack.stored);
    rack.sheet = sheetOf(rack.stored, {}, m_fromPaper.contains(id));
    rack.due = dueIn(rack);
    if (const auto beat = m_beats.find(id); beat != m_beats.end())
        rack.beat = beat->second;
    return rack;
}

QString BenchSession::letterFor(notebook::RunId id)
{
    const auto known = m_letters.find(id);
    if (known != m_letters.end())
        return known->second;
    const auto taken = [this](const QString &letter) {
        return std::any_of(m_letters.begin(), m_letters.end(),
                           [&letter](const auto &entry) { return entry.second == letter; });
    };
    int index = 0;
    while (taken(rackLetter(index)))
        ++index;
    return m_letters[id] = rackLetter(index);
}

evaluation::Evaluation preview(const notebook::StoredRun &stored, const Place &place, double absorbance)
{
    run::Run run = stored.run;
    run::Reading &reading = run.tubes.at(static_cast<std::size_t>(place.tube)).readings[place.reading];
    auto *series = std::get_if<run::ReadingSeries>(&reading);
    if (series)
        series->back().absorbance = absorbance;
    else
        reading = absorbance;
    return evaluation::evaluate(stored.method, run, {}, stored.companions);
}

QString rackLetter(int index)
{
    QString letters;
    for (int rest = index; rest >= 0; rest = rest / 26 - 1)
        letters.prepend(QChar(u'A' + rest % 26));
    return letters;
}

} // namespace plateau::ui
