// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What becomes of a number that is keyed or sent. Where the entry stands: readpage.cpp.
#include "core/evaluation/doubts.h"
#include "core/evaluation/format.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/readingsmodel.h"
#include "ui/bench/readpage.h"
#include "ui/bench/repeatoffer.h"
#include "ui/bench/stores.h"
#include "ui/bench/timewords.h"
#include "ui/shared/guard.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/table.h"

#include <QScopedValueRollback>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

void ReadPage::withName(const QString &sentence, const std::function<void()> &step)
{
    if (!m_session.person().isEmpty()) {
        step();
        return;
    }
    m_panel->notice().say(
        State::Info,
        tr("First say who is at the bench: type your name on the left and press Enter. %1").arg(sentence));
    m_waitsForName = step;
    Q_EMIT personWanted();
}

void ReadPage::onPerson()
{
    if (m_session.person().isEmpty() || !m_waitsForName)
        return;
    const std::function<void()> step = std::exchange(m_waitsForName, nullptr);
    m_panel->notice().clear();
    if (rack())
        step();
}

/// Asked of the notebook only while nothing in the rack is beside it.
std::optional<double> ReadPage::usualBlankOf(const Place &place)
{
    const bool isFirst = std::ranges::none_of(rack()->stored.run.tubes, [&](const run::Tube &tube) {
        return tube.readings.contains(place.reading);
    });
    std::optional<double> usual;
    if (isFirst)
        guarded(m_panel->notice(), [&] { usual = m_session.usualBlank(m_id, place.reading); });
    return usual;
}

void ReadPage::takeOver(Submission submission)
{
    if (!rack() || !m_place)
        return;
    // Enter on what an instrument sent and the page asked about.
    if (m_questioned && m_questioned->absorbance == submission.absorbance)
        submission.origin = m_questioned->origin;
    if (m_session.person().isEmpty()) {
        withName(tr("The reading waits for it, and is then stored unless there is something against it."),
                 [this, submission] { takeOver(submission); });
        return;
    }
    const Place place = *m_place;
    if (!submission.asked) {
        const notebook::StoredRun &stored = rack()->stored;
        QStringList doubts{earlyWords(place),
                           evaluation::doubtAbout(stored.method, stored.run, place.tube, place.reading,
                                                  submission.absorbance, {}, usualBlankOf(place))};
        doubts.removeAll(QString());
        if (!doubts.isEmpty()) {
            m_panel->question(tr("%1 Press Enter again to store it as read.").arg(doubts.join(u' ')));
            return;
        }
    }
    store(place, submission);
}

QString ReadPage::earlyWords(const Place &place) const
{
    const double now_min = m_session.now_min(*rack());
    const auto due = timedDue(place);
    // To the second, as it is judged and shown.
    constexpr double slack_min = 0.5 / 60;
    if (!due || !timing::isEarly(*due, now_min + slack_min))
        return {};
    return tr("Tube %1: it is too early for %2. The method waits %3, of which %4 are left: read it after "
              "that.")
        .arg(place.tube + 1)
        .arg(place.reading, countText(std::round((*due->opens_min - *due->since_min) * 60)),
             countText(std::ceil((*due->opens_min - now_min) * 60)));
}

void ReadPage::store(const Place &place, const Submission &submission)
{
    const EntryPanel::Mode mode = m_panel->mode();
    const bool stored = guarded(m_panel->notice(), [&] {
        if (mode == EntryPanel::Mode::Correct)
            m_session.correctReading(m_id, place, submission.absorbance, submission.typed, submission.reason);
        else if (mode == EntryPanel::Mode::Again)
            m_session.readAgain(m_id, place, submission.absorbance, submission.typed, submission.origin);
        else
            m_session.storeReading(m_id, place, submission.absorbance, submission.typed, submission.origin);
    });
    if (!stored)
        return;
    m_questioned.reset();
    m_panel->forget();
    keepDraft();
    goOn();
    if (mode == EntryPanel::Mode::Correct)
        m_table->fit(); // a correction shows two values
    // The tube still stands in the rack: say at once what is wrong with it. Whoever was asked knows.
    if (const QString fault = submission.asked ? QString() : faultOf(place.tube); !fault.isEmpty())
        m_panel->notice().say(State::Attention, fault);
    takeWaiting();
}

QString ReadPage::faultOf(int tube) const
{
    for (const evaluation::Check &check : rack()->evaluation.checks) {
        const bool here = std::find(check.tubes.begin(), check.tubes.end(), tube) != check.tubes.end();
        if (here && !check.passed && check.id != evaluation::CheckId::ReadingMissing)
            return evaluation::capitalised(check.message());
    }
    return {};
}

void ReadPage::remark()
{
    const auto typed = m_place && rack() ? m_panel->entry()->value() : std::nullopt;
    if (!typed) {
        m_remarkedEarly = false;
        m_panel->remark({});
        return;
    }
    const notebook::StoredRun &stored = rack()->stored;
    QStringList sentences;
    const QString early = earlyWords(*m_place);
    m_remarkedEarly = !early.isEmpty();
    if (m_remarkedEarly)
        sentences << early;
    for (const evaluation::Doubt &doubt :
         evaluation::doubtsAbout(stored.method, stored.run, m_place->tube, m_place->reading, *typed, {},
                                 usualBlankOf(*m_place)))
        sentences << doubt.sentence;
    // More than two at a glance is none.
    m_panel->remark(sentences.mid(0, 2));
}

void ReadPage::changeSpoilt(const QString &reason)
{
    if (!rack() || !m_place)
        return;
    withName(tr("The tube waits for it."), [this, reason, tube = m_place->tube] {
        const bool spoilt = !rack()->stored.run.tubes[static_cast<std::size_t>(tube)].spoilt.isEmpty();
        const bool kept = guarded(m_panel->notice(), [&] {
            if (spoilt)
                m_session.restoreTube(m_id, tube, reason);
            else
                m_session.spoilTube(m_id, tube, reason);
        });
        if (!kept)
            return;
        m_questioned.reset();
        m_panel->forget();
        keepDraft();
        goOn();
        m_panel->notice().say(State::Info, spoilt
                                               ? tr("Tube %1 counts again.").arg(tube + 1)
                                               : tr("Tube %1 does not count: %2. To take that back, go to it "
                                                    "in the table and press /.")
                                                     .arg(tube + 1)
                                                     .arg(reason));
        takeWaiting();
    });
}

void ReadPage::offerRepeat()
{
    guarded(m_panel->notice(), [this] { m_repeat->show(*rack(), m_stores.laboratory()); });
}

void ReadPage::addRepeat(const planning::RackRepeat &repeat)
{
    withName(tr("The repeat waits for it."), [this, repeat] {
        if (!guarded(m_panel->notice(), [&] { m_session.addRepeat(m_id, repeat); }))
            return;
        m_readings->show(rack()->stored, rack()->evaluation);
        m_table->fit();
        goOn();
        m_panel->notice().say(State::Good,
                              tr("%1 is in the rack now, from tube %2 on: pipette it as the strip says.")
                                  .arg(repeat.sample.id)
                                  .arg(rack()->stored.run.tubes.size() - repeat.tubes.size() + 1));
    });
}

void ReadPage::take(const std::vector<Submission> &readings)
{
    m_taken.insert(m_taken.end(), readings.begin(), readings.end());
    takeWaiting();
}

void ReadPage::takeWaiting()
{
    if (m_taking)
        return;
    const QScopedValueRollback<bool> taking(m_taking, true);
    // One at a time, and none over what somebody types or is asked about.
    while (!m_taken.empty() && rack()) {
        if (m_questioned || m_panel->mode() == EntryPanel::Mode::Spoilt)
            return;
        if (!m_panel->draft().isEmpty()) {
            m_panel->notice().say(State::Info,
                                  tr("%1 came from the photometer and waits until what stands here is stored "
                                     "or left with Esc (waiting in all: %2).")
                                      .arg(readingText(m_taken.front().absorbance))
                                      .arg(m_taken.size()));
            return;
        }
        if (!m_place) {
            m_panel->notice().say(State::Attention,
                                  tr("No tube waits for the readings that came in (%1 in all, the first of "
                                     "them %2); none of them was stored. Go to the tube in the table first.")
                                      .arg(m_taken.size())
                                      .arg(readingText(m_taken.front().absorbance)));
            m_taken.clear();
            return;
        }
        const Submission next = m_taken.front();
        m_taken.pop_front();
        if (next.tube) {
            const auto tube = tubeNamed(rack()->stored.run, *next.tube, m_place->reading);
            if (!tube) {
                m_panel->notice().say(
                    State::Attention,
                    tr("%1 came for tube “%2”, which is not in this rack; it was not stored.")
                        .arg(readingText(next.absorbance), *next.tube));
                continue;
            }
            goTo({*tube, m_place->reading});
        }
        m_panel->entry()->setText(keyedText(readingText(next.absorbance)));
        m_questioned = next;
        takeOver(next);
    }
}

} // namespace plateau::ui
