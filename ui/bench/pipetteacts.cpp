// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What is done on the worksheet. What is on show: pipettepage.cpp.
#include "ui/bench/pipettepage.h"

#include "core/evaluation/format.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/benchworksheet.h"
#include "ui/bench/pipettegrid.h"
#include "ui/bench/pipettekeys.h"
#include "ui/bench/pipettemodel.h"
#include "ui/bench/pipettesource.h"
#include "ui/bench/pipettesubject.h"
#include "ui/bench/pipettewords.h"
#include "ui/bench/volumewords.h"
#include "ui/shared/notice.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

notebook::DoneDose PipettePage::doneDose(const Dosing &dosing) const
{
    const PipettePanel::Source source = sourceOf(dosing);
    return {doseOf(m_sheet, dosing), std::nullopt, source.lot, source.pipette, {}};
}

bool PipettePage::mayTick(const std::vector<Dosing> &dosings)
{
    const std::pair key{m_id, m_round};
    for (const Dosing &dosing : dosings) {
        const QStringList missing = m_sheet.readingsMissingBefore(dosing);
        if (missing.isEmpty() || m_asked.contains(key))
            continue;
        m_asked.insert(key);
        m_panel->notice().say(
            State::Attention,
            tr("%1 of tube %2 is not read yet, and after %3 it cannot be. Read it first, or press the key "
               "again to tick all the same.")
                .arg(evaluation::andJoined(missing))
                .arg(dosing.tube + 1)
                .arg(m_sheet.round(dosing.round).name));
        return false;
    }
    return true;
}

bool PipettePage::mayTickTogether(const std::vector<Dosing> &dosings)
{
    const std::pair key{m_id, dosings.front().round};
    if (dosings.size() < 2 || !m_sheet.startsWait(key.second) || m_askedTogether.contains(key))
        return true;
    m_askedTogether.insert(key);
    m_panel->notice().say(
        State::Attention,
        tr("Ticked together, %1 tubes count as started at this moment, and their waits are timed from it. Tick "
           "each tube as %2 goes in, or press the key again if all of them got it at once.")
            .arg(dosings.size())
            .arg(m_sheet.round(key.second).name));
    return false;
}

QString PipettePage::lotName(const std::optional<notebook::LotId> &lot) const
{
    const planning::Lot *known = lotOf(lot, m_inHand);
    return known ? known->lot : QString();
}

QString PipettePage::shortWords(const PipettePanel::Source &source) const
{
    return tr("By the book lot %1 does not hold another tube of this, and no other lot is fit. Choose or receive "
              "one, or press the key again to take more of it all the same.")
        .arg(lotName(source.lot));
}

std::vector<Dosing> PipettePage::ofOneLot(const std::vector<Dosing> &dosings) const
{
    std::vector<Dosing> taken;
    const planning::Lot *lot = nullptr;
    double left_mL = 0;
    bool isLimited = false;
    for (const Dosing &dosing : dosings) {
        const PipettePanel::Source source = sourceOf(dosing);
        const planning::Lot *own = lotOf(source.lot, m_inHand);
        const double volume_mL = m_sheet.doseOf(dosing)->volume_mL;
        // Behind tubes that take from none (samples): what is to be asked or told of a lot comes first.
        if (!lot && !taken.empty() && (source.isShort || source.insteadOf))
            break;
        if (own && !lot) {
            lot = own;
            left_mL = own->remaining_mL;
            isLimited = planning::holds(*own, volume_mL); // else somebody knows better than the book
        }
        planning::Lot rest = lot ? *lot : planning::Lot();
        rest.remaining_mL = left_mL;
        if (own && (own->id != lot->id || (isLimited && !planning::holds(rest, volume_mL))))
            break;
        if (own)
            left_mL -= volume_mL;
        taken.push_back(dosing);
    }
    return taken;
}

bool PipettePage::mayTake(const Dosing &dosing)
{
    const PipettePanel::Source source = sourceOf(dosing);
    if (!source.isShort)
        return true;
    m_askedShort.insert({m_id, contentWords(m_sheet, dosing), *source.lot});
    m_panel->notice().say(State::Attention, shortWords(source));
    return false;
}

void PipettePage::confirmBeyondBook(const std::vector<Dosing> &dosings)
{
    for (const Dosing &dosing : dosings) {
        const PipettePanel::Source source = sourceOf(dosing);
        // Of a tube that was read without a tick nobody asked.
        if (m_sheet.stateOf(dosing) != PipetteSheet::State::Due || source.isShort ||
            isEnough(source.lot, dosing))
            continue;
        const LotChoice *choice = choiceFor(dosing);
        m_session.beyondBook().confirm(m_id, contentWords(m_sheet, dosing), *source.lot,
                                       choice && choice->isBeyondBook ? BeyondBook::Why::Chosen
                                                                      : BeyondBook::Why::NoOther);
    }
}

void PipettePage::tick(const std::vector<Dosing> &all)
{
    if (all.empty())
        return;
    const std::vector<Dosing> dosings = ofOneLot(all);
    if (!mayTick(dosings) || !mayTickTogether(dosings) || !mayTake(dosings.front()))
        return;
    withName([this, dosings] {
        std::vector<notebook::DoneDose> doses;
        for (const Dosing &dosing : dosings)
            doses.push_back(doneDose(dosing));
        std::vector<notebook::LotId> opened;
        confirmBeyondBook(dosings);
        if (!store([&] { opened = m_session.tick(m_id, doses); }))
            return;
        moveOnFrom(dosings.back());
        sayOfLots(opened, dosings.back());
    });
}

void PipettePage::sayOfLots(const std::vector<notebook::LotId> &opened, const Dosing &ticked)
{
    QStringList sentences;
    for (const planning::Lot &lot : m_inHand) {
        if (lot.keepsOpened_days && std::ranges::find(opened, notebook::LotId{lot.id}) != opened.end())
            sentences << tr("Lot %1 is noted as opened today; it keeps %n days from now.", nullptr,
                            *lot.keepsOpened_days)
                             .arg(lot.lot);
    }
    const Dosing next = atCursor();
    const PipettePanel::Source source =
        !m_paused && next.round == ticked.round ? sourceOf(next) : PipettePanel::Source();
    const Pipetted *went = m_sheet.pipetted(ticked);
    if (source.insteadOf && went && went->lot == source.insteadOf) {
        sentences << tr("By the book lot %1 is used up: what comes now is noted on lot %2. Take that one.")
                         .arg(lotName(source.insteadOf), lotName(source.lot));
        m_panel->notice().say(State::Attention, sentences.join(u' '));
    } else if (source.isShort) {
        sentences << shortWords(source);
        m_panel->notice().say(State::Attention, sentences.join(u' '));
    } else if (!sentences.isEmpty()) {
        m_panel->notice().sayDone(sentences.join(u' '));
    }
}

void PipettePage::tickAtCursor()
{
    if (!rack())
        return;
    if (m_dilution) {
        tickDilution();
        return;
    }
    if (m_paused) {
        goOn();
        return;
    }
    const Dosing at = atCursor();
    if (m_sheet.stateOf(at) == PipetteSheet::State::Due)
        tick({at});
    else
        moveOnFrom(at);
}

void PipettePage::tickRow()
{
    if (!rack() || m_paused || m_dilution)
        return;
    const auto [first, last] = m_tubes->rowOf(atCursor().tube);
    tick(m_sheet.dueIn(m_round, first, last));
}

void PipettePage::tickRound()
{
    if (rack() && m_dilution)
        tickDilutions();
    else if (rack() && !m_paused)
        tick(m_sheet.dueIn(m_round, 0, m_sheet.tubes() - 1));
}

void PipettePage::undo()
{
    if (!rack() || !m_note->isHidden())
        return;
    const auto last = lastAct(rack()->stored);
    if (!last)
        return;
    withName([this, last] {
        if (!store([&] { takeBack(*last); }))
            return;
        goToUndone(*last);
        m_panel->notice().say(State::Info, takenBackWords(m_sheet, *last));
    });
}

void PipettePage::goToUndone(const WorksheetAct &act)
{
    if (act.isOfDilutions()) {
        const auto &steps = m_sheet.steps();
        const auto at = std::ranges::find_if(steps, [&act](const SheetStep &step) {
            return step.kind == SheetStep::Kind::Dilute && step.dilution == act.dilutions.front();
        });
        goToDilution(static_cast<int>(at - steps.begin()));
        return;
    }
    const notebook::Dose &first = act.changes.front().dose;
    const Dosing at = dosingOf(m_sheet, first).value_or(Dosing{m_round, first.tube});
    if (m_sheet.stateOf(at) == PipetteSheet::State::Due)
        goTo(at);
    else
        takeUp();
}

void PipettePage::takeBack(const WorksheetAct &act)
{
    if (act.isOfDilutions()) {
        if (act.isTick)
            m_session.untickDilutions(m_id, act.dilutions);
        else
            m_session.tickDilutions(m_id, act.dilutions);
        return;
    }
    const WorksheetAct::Change &first = act.changes.front();
    if (act.isOfTube() && first.before) {
        m_session.spoilTube(m_id, first.dose.tube, first.before->note);
    } else if (act.isOfTube()) {
        m_session.restoreTube(m_id, first.dose.tube, tr("taken back at once"));
    } else if (first.before) {
        std::vector<notebook::DoneDose> doses;
        for (const WorksheetAct::Change &change : act.changes)
            doses.push_back({change.dose, change.before->volume_mL, change.before->lot,
                             change.before->pipette, change.before->note});
        m_session.tick(m_id, doses);
    } else {
        std::vector<notebook::Dose> doses;
        for (const WorksheetAct::Change &change : act.changes)
            doses.push_back(change.dose);
        m_session.untick(m_id, doses);
    }
}

void PipettePage::takeFromPaper()
{
    m_session.takeFromPaper(m_id);
    m_paused = true;
    Q_EMIT readWanted();
}

void PipettePage::beginVolume(const QString &text)
{
    if (!rack() || m_paused || m_dilution)
        return;
    const Dosing at = atCursor();
    const auto *dose = m_sheet.doseOf(at);
    if (!dose || !m_sheet.spoilt(at.tube).isEmpty())
        return;
    m_noted = at;
    openNote({PipetteNote::Kind::Volume, text, {}});
}

void PipettePage::beginSpoilt()
{
    if (!rack() || m_dilution || m_grid->currentTube() < 0)
        return;
    if (!m_grid->isMarked()) {
        m_panel->notice().say(State::Info, tr("Go to the tube with the arrow keys and press / there."));
        m_grid->setFocus();
        return;
    }
    m_noted = atCursor();
    const bool isSpoilt = !m_sheet.spoilt(m_noted.tube).isEmpty();
    openNote({isSpoilt ? PipetteNote::Kind::Restored : PipetteNote::Kind::Spoilt, {}, {}});
}

void PipettePage::openNote(const PipetteNote::Draft &draft)
{
    m_keys->hide();
    m_note->show();
    if (draft.kind == PipetteNote::Kind::Volume)
        m_note->askVolume(volumeQuestion(m_sheet, m_noted), volumeUnit(m_sheet.doseOf(m_noted)->volume_mL),
                          draft);
    else
        m_note->askReason(spoiltQuestion(m_sheet, m_noted), draft);
}

void PipettePage::keepDraft()
{
    m_drafts.erase(m_id);
    if (!m_note->isHidden() && !m_note->draft().isEmpty())
        m_drafts[m_id] = {m_noted, m_note->draft()};
}

QStringList PipettePage::unstored(notebook::RunId id) const
{
    auto drafts = m_drafts;
    drafts.erase(m_id);
    if (!m_note->isHidden() && !m_note->draft().isEmpty())
        drafts[m_id] = {m_noted, m_note->draft()};
    const auto own = drafts.find(id);
    if (own == drafts.end())
        return {};
    const auto &[dosing, draft] = own->second;
    return {tr("tube %1: %2").arg(dosing.tube + 1).arg(draft.number.isEmpty() ? draft.reason : draft.number)};
}

void PipettePage::keepNote()
{
    if (m_note->kind() == PipetteNote::Kind::Volume)
        keepVolume();
    else
        keepSpoilt();
}

void PipettePage::keepVolume()
{
    const auto typed = m_note->volume();
    if (!typed) { // the field itself says why
        m_note->resume();
        return;
    }
    const double planned_mL = m_sheet.doseOf(m_noted)->volume_mL;
    const double volume_mL = *typed / volumeUnitsPer_mL(planned_mL);
    if (const QString doubt = doubtAbout(volume_mL, planned_mL); !doubt.isEmpty() && m_doubted != volume_mL) {
        m_doubted = volume_mL;
        m_panel->notice().say(State::Attention, doubt);
        return;
    }
    if (!mayTick({m_noted}) || !mayTake(m_noted))
        return;
    withName([this, volume_mL] {
        notebook::DoneDose dose = doneDose(m_noted);
        dose.volume_mL = volume_mL;
        dose.note = m_note->reason();
        std::vector<notebook::LotId> opened;
        confirmBeyondBook({m_noted});
        if (!store([&] { opened = m_session.tick(m_id, {dose}); }))
            return;
        closeNote();
        moveOnFrom(m_noted);
        sayOfLots(opened, m_noted);
    });
}

void PipettePage::keepSpoilt()
{
    const QString reason = m_note->reason();
    const bool restored = m_note->kind() == PipetteNote::Kind::Restored;
    if (reason.isEmpty()) {
        m_panel->notice().say(State::Info, restored
                                               ? tr("Say why the tube counts after all, then press Enter.")
                                               : tr("Say what happened to the tube, then press Enter."));
        m_note->resume();
        return;
    }
    withName([this, reason, restored] {
        const bool kept = store([&] {
            if (restored)
                m_session.restoreTube(m_id, m_noted.tube, reason);
            else
                m_session.spoilTube(m_id, m_noted.tube, reason);
        });
        if (!kept)
            return;
        closeNote();
        if (m_paused || restored)
            takeUp();
        else
            moveOnFrom(m_noted);
        if (!restored)
            m_panel->notice().say(State::Info,
                                  tr("Tube %1 is marked as spoilt: %2. Undo (−) takes that back.")
                                      .arg(m_noted.tube + 1)
                                      .arg(reason));
    });
}

void PipettePage::closeNote()
{
    m_doubted.reset();
    m_waiting = nullptr;
    m_panel->notice().clear();
    m_note->hide();
    m_keys->show();
    takeFocus();
}

} // namespace plateau::ui
