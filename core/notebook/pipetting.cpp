// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/pipetting.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/assay/listed.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/inputs.h"
#include "core/notebook/lotopening.h"
#include "core/notebook/lotstore.h"
#include "core/notebook/markstore.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/stampstore.h"
#include "core/notebook/text.h"
#include "core/run/soundness.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString nameOf(const assay::Method &method, const QString &component)
{
    const assay::Component *found = assay::findComponent(method, component);
    return found ? found->name : component;
}

/// "Buffer: tubes 1, 2, 3", "Buffer: tube 4"
template <class Range, class DoseOf>
QString detailsOf(const assay::Method &method, const Range &doses, DoseOf doseOf)
{
    QStringList parts;
    for (auto first = doses.begin(); first != doses.end();) {
        const QString component = doseOf(*first).component;
        QStringList tubes;
        for (; first != doses.end() && doseOf(*first).component == component; ++first)
            tubes << QString::number(doseOf(*first).tube + 1);
        parts << (tubes.size() == 1 ? Sentence::tr("%1: tube %2") : Sentence::tr("%1: tubes %2"))
                     .arg(nameOf(method, component), tubes.join(u", "_s));
    }
    return assay::listed(parts);
}

/// One dose after the other, against those before it.
class Ticking
{
public:
    Ticking(Act &act, RunId run)
        : m_act(act)
        , m_run(run)
    {
        act.concerns(run);
        methodRowOf(act.database(), run);
        requireOnBench(act.database(), run);
        m_inputs = loadInputs(act.database(), run);
    }

    const Inputs &inputs() const { return m_inputs; }

    void done(const DoneDose &what)
    {
        StoredMark mark;
        mark.dose = what.dose;
        mark.planned_mL = planned_mL(what);
        mark.volume_mL = what.volume_mL.value_or(mark.planned_mL);
        mark.lot = what.lot;
        mark.pipette = what.pipette;
        mark.note = what.note;
        requireTexts(mark);
        requireNews(mark);
        std::optional<LotVersion> version;
        if (what.lot)
            version = lotVersion(what);
        const MarkId id = add(mark, version ? std::optional(version->row) : std::nullopt);
        if (version)
            keepLotDay(id, what, mark.volume_mL, version->expires);
        requireSoundTube(what.dose.tube);
        if (mark.volume_mL > 0)
            take(what);
    }

    /// Comes last, after the act's own note.
    std::vector<LotId> openWhatWasTaken()
    {
        return openTaken(m_act, {m_taken.begin(), m_taken.end()}, today());
    }

    void undone(const Dose &dose)
    {
        if (!doneMark(m_inputs.marks, dose))
            throw refused(Sentence::tr("%1 of tube %2 is not ticked; nothing was stored.")
                              .arg(nameOf(m_inputs.method, dose.component))
                              .arg(dose.tube + 1));
        StoredMark mark;
        mark.kind = MarkKind::Undone;
        mark.dose = dose;
        add(mark, {});
    }

private:
    const run::Tube &tube(int index) const
    {
        tubeRow(m_act.database(), m_run, index); // refuses one that is not there
        return m_inputs.plan.tubes.at(size_t(index));
    }

    double planned_mL(const DoneDose &what) const
    {
        const Dose &dose = what.dose;
        const auto planned = plannedVolume_mL(m_inputs.method, tube(dose.tube), dose);
        if (!planned || (*planned <= 0 && !what.volume_mL))
            throw refused(Sentence::tr("Tube %1 gets no %2%3; nothing was stored.")
                              .arg(dose.tube + 1)
                              .arg(nameOf(m_inputs.method, dose.component),
                                   dose.spike ? Sentence::tr(" for a spike") : QString()));
        if (what.volume_mL && !(*what.volume_mL >= 0 && *what.volume_mL <= assay::limit::tubeVolume_mL))
            throw refused(
                Sentence::tr("Tube %1 was not ticked: the volume that went in must lie between 0 and "
                             "%2 mL, not %3.")
                    .arg(dose.tube + 1)
                    .arg(assay::shown(assay::limit::tubeVolume_mL), assay::shown(*what.volume_mL)));
        return *planned;
    }

    static void requireTexts(const StoredMark &mark)
    {
        const auto pipetteFault = mark.pipette.isEmpty() ? std::nullopt : assay::labelFault(mark.pipette);
        if (pipetteFault)
            throw refused(Sentence::tr("Tube %1 was not ticked, since the pipette %2 cannot be used: %3.")
                              .arg(mark.dose.tube + 1)
                              .arg(assay::quoted(mark.pipette), *pipetteFault));
        if (const auto noteFault = assay::proseFault(mark.note))
            throw refused(Sentence::tr("Tube %1 was not ticked, since the note cannot be used: %2.")
                              .arg(mark.dose.tube + 1)
                              .arg(*noteFault));
    }

    void requireNews(const StoredMark &mark) const
    {
        const StoredMark *before = doneMark(m_inputs.marks, mark.dose);
        if (before && before->volume_mL == mark.volume_mL && before->lot == mark.lot &&
            before->pipette == mark.pipette && before->note == mark.note)
            throw refused(Sentence::tr("%1 of tube %2 is ticked already; nothing was stored.")
                              .arg(nameOf(m_inputs.method, mark.dose.component))
                              .arg(mark.dose.tube + 1));
    }

    LotVersion lotVersion(const DoneDose &what) const
    {
        const LotVersion version = currentLotVersion(m_act.database(), *what.lot);
        const QString component = takenFrom(m_inputs.method, tube(what.dose.tube), what.dose);
        const QString reagent = nameOf(m_inputs.method, component);
        if (component.isEmpty())
            throw refused(
                Sentence::tr("Tube %1 was not ticked: what it gets there is a sample or a standard, "
                             "which comes from no lot; leave the lot out.")
                    .arg(what.dose.tube + 1));
        if (comparisonKey(reagent) != comparisonKey(version.reagent))
            throw refused(
                Sentence::tr("Tube %1 was not ticked: the lot %2 is of %3, not of %4; choose a lot of "
                             "that reagent.")
                    .arg(what.dose.tube + 1)
                    .arg(assay::quoted(version.lot), version.reagent, reagent));
        return version;
    }

    QDate today() const { return timeOf(m_act.at()).date(); }

    /// The mark names the day that counts from now on, the lot having been opened by this dose or one before;
    /// a dose of nothing opens none.
    void keepLotDay(MarkId mark, const DoneDose &what, double volume_mL, const std::optional<QDate> &onLabel)
    {
        const bool isTaken = volume_mL > 0 || m_taken.contains(*what.lot);
        auto found = m_lastGood.find({*what.lot, isTaken});
        if (found == m_lastGood.end()) {
            planning::Lot stored = loadLots(m_act.database(), *what.lot).at(0);
            if (isTaken && !stored.opened && !stored.isDry)
                stored.opened = today();
            found = m_lastGood.emplace(std::pair(*what.lot, isTaken), planning::lastGoodDay(stored)).first;
        }
        if (found->second && found->second != onLabel)
            storeLotDay(m_act, mark, *found->second);
    }

    void take(const DoneDose &what)
    {
        if (what.lot) {
            m_taken.insert(*what.lot);
            return;
        }
        const QString component = takenFrom(m_inputs.method, tube(what.dose.tube), what.dose);
        if (component.isEmpty() || !m_asked.insert(component).second ||
            !namesClosedLot(m_act.database(), m_run))
            return;
        if (const auto lot = plannedLot(m_act.database(), m_inputs.method, m_inputs.plan, component))
            m_taken.insert(*lot);
    }

    /// The run with its marks is as sound as it was planned, so far as this tube goes.
    void requireSoundTube(int index) const
    {
        const QString place = u"/tubes/%1/"_s.arg(index);
        for (const assay::Problem &problem : run::problemsOf(m_inputs.run(), m_inputs.method)) {
            if (problem.severity == assay::Problem::Severity::Error &&
                (problem.pointer + u'/').startsWith(place))
                throw Failure(Failure::Kind::Refused,
                              Sentence::tr("Tube %1 was not ticked: %2.").arg(index + 1).arg(problem.message),
                              problem.pointer);
        }
    }

    MarkId add(const StoredMark &mark, std::optional<qint64> version)
    {
        const MarkId id = storeMark(m_act, m_run, mark, version);
        storeStamp(m_act, id);
        m_inputs.marks = loadMarks(m_act.database(), m_run);
        return id;
    }

    Act &m_act;
    RunId m_run;
    Inputs m_inputs;
    std::set<LotId> m_taken;
    /// Components of which it is known from which planned lot they come.
    std::set<QString> m_asked;
    /// By lot, and whether something was taken from it.
    std::map<std::pair<LotId, bool>, std::optional<QDate>> m_lastGood;
};

void requireSome(bool some)
{
    if (!some)
        throw refused(Sentence::tr("Nothing was stored, since no tube is named: choose at least one."));
}

void changeSpoiling(Act &act, RunId run, int tube, MarkKind kind, const QString &reason)
{
    act.concerns(run);
    tubeRow(act.database(), run, tube);
    requireOnBench(act.database(), run);
    const bool spoilt = spoiltMark(loadMarks(act.database(), run), tube) != nullptr;
    if (spoilt == (kind == MarkKind::Spoilt))
        throw refused((spoilt ? Sentence::tr("Tube %1 is marked as spoilt already; nothing was stored.")
                              : Sentence::tr("Tube %1 is not marked as spoilt; nothing was stored."))
                          .arg(tube + 1));
    StoredMark mark;
    mark.kind = kind;
    mark.dose = {tube, {}, false};
    mark.note = reason;
    storeStamp(act, storeMark(act, run, mark, {}));
    act.note(Sentence::tr("tube %1").arg(tube + 1));
    act.commit();
}

} // namespace

std::vector<LotId> Pipetting::markDone(RunId run, const std::vector<DoneDose> &doses, const QString &person)
{
    requireSome(!doses.empty());
    Act act = m_open.act(person, u"dosesDone"_s);
    Ticking ticking(act, run);
    for (const DoneDose &dose : doses)
        ticking.done(dose);
    act.note(detailsOf(ticking.inputs().method, doses, [](const DoneDose &done) { return done.dose; }));
    std::vector<LotId> opened = ticking.openWhatWasTaken();
    act.commit();
    return opened;
}

void Pipetting::markUndone(RunId run, const std::vector<Dose> &doses, const QString &person)
{
    requireSome(!doses.empty());
    Act act = m_open.act(person, u"dosesUndone"_s);
    Ticking ticking(act, run);
    for (const Dose &dose : doses)
        ticking.undone(dose);
    act.note(detailsOf(ticking.inputs().method, doses, [](const Dose &dose) { return dose; }));
    act.commit();
}

void Pipetting::markSpoilt(RunId run, int tube, const QString &person, const QString &reason)
{
    requireReason(reason,
                  Sentence::tr("The tube was not marked as spoilt, since that needs a reason: say why."));
    if (const auto fault = assay::labelFault(reason))
        throw refused(Sentence::tr("The tube was not marked as spoilt, since the reason cannot be used: %1.")
                          .arg(*fault));
    Act act = m_open.act(person, u"tubeSpoilt"_s);
    changeSpoiling(act, run, tube, MarkKind::Spoilt, reason);
}

void Pipetting::markUnspoilt(RunId run, int tube, const QString &person, const QString &reason)
{
    requireReason(
        reason,
        Sentence::tr("The tube still counts as spoilt, since taking that back needs a reason: say why."));
    Act act = m_open.act(person, u"tubeUnspoilt"_s);
    changeSpoiling(act, run, tube, MarkKind::Unspoilt, reason);
}

} // namespace plateau::notebook
