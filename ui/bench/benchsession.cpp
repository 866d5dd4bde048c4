// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchsession.h"

#include "ui/bench/benchworksheet.h"

#include <algorithm>
#include <set>

namespace plateau::ui {

BenchSession::BenchSession(notebook::Notebook &notebook, QObject *parent)
    : QObject(parent)
    , m_notebook(notebook)
{
}

void BenchSession::reload()
{
    std::vector<Rack> racks;
    std::vector<notebook::RunSummary> summaries = m_notebook.runs();
    std::reverse(summaries.begin(), summaries.end());
    std::set<notebook::RunId> present;
    for (const notebook::RunSummary &summary : summaries) {
        if (summary.state == notebook::RunState::OnBench)
            present.insert(summary.id);
    }
    std::erase_if(m_letters, [&present](const auto &entry) { return !present.contains(entry.first); });
    for (const notebook::RunSummary &summary : summaries) {
        if (present.contains(summary.id))
            racks.push_back(rackOf(summary.id));
    }
    m_racks = std::move(racks);
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
    std::optional<NextAction> review;
    for (const Rack &rack : m_racks) {
        NextAction action;
        action.run = rack.id;
        action.letter = rack.letter;
        action.readingsTaken = rack.stored.summary.readingsTaken;
        action.readingsPlanned = rack.stored.summary.readingsPlanned;
        if (const auto dosing = rack.sheet.next()) {
            action.kind = NextAction::Kind::Pipette;
            action.dosing = *dosing;
            action.count = rack.sheet.countOfRound(dosing->round);
            return action;
        }
        if (const auto place = nextUnread(rack.stored.method, rack.stored.run)) {
            action.place = *place;
            return action;
        }
        action.kind = NextAction::Kind::Review;
        if (!review || rack.id == m_inHand)
            review = action;
    }
    return review;
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
                                const QString &typed)
{
    m_notebook.addReading(id, place.tube, place.reading, absorbance, typed, m_person);
    refresh(id);
}

void BenchSession::correctReading(notebook::RunId id, const Place &place, double absorbance,
                                  const QString &typed, const QString &reason)
{
    m_notebook.correctReading(id, place.tube, place.reading, absorbance, typed, m_person, reason);
    refresh(id);
}

void BenchSession::tick(notebook::RunId id, const std::vector<notebook::DoneDose> &doses)
{
    m_notebook.pipetting().markDone(id, doses, m_person);
    refresh(id);
}

void BenchSession::untick(notebook::RunId id, const std::vector<notebook::Dose> &doses)
{
    m_notebook.pipetting().markUndone(id, doses, m_person);
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

void BenchSession::takeFromPaper(notebook::RunId id)
{
    m_fromPaper.insert(id);
    refresh(id);
}

void BenchSession::decide(notebook::RunId id, notebook::DecisionKind kind, const QString &person,
                          const QString &reason)
{
    m_notebook.decide(id, kind, person, reason);
    reload();
}

void BenchSession::reopen(notebook::RunId id, const QString &reason)
{
    m_notebook.reopen(id, m_person, reason);
    reload();
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
    run.tubes.at(static_cast<std::size_t>(place.tube)).readings[place.reading] = absorbance;
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
