// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrumentroute.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/rackpage.h"
#include "ui/bench/readpage.h"
#include "ui/bench/submission.h"
#include "ui/shared/notice.h"
#include "ui/windowactions.h"

#include <QAction>

namespace plateau::ui {

InstrumentRoute::InstrumentRoute(InstrumentIntake &intake, BenchSession &session,
                                 WhenWanted<RackPage> &rack,
                                 Notice &notice, QObject *parent)
    : QObject(parent)
    , m_intake(intake)
    , m_session(session)
    , m_rack(rack)
    , m_notice(notice)
{
    connect(&intake, &InstrumentIntake::readingTaken, this,
            [this](const TakenReading &reading) { take({reading}); });
    connect(&intake, &InstrumentIntake::columnTaken, this, &InstrumentRoute::take);
    connect(&intake, &InstrumentIntake::lineRefused, this, [this](const QString &raw, const QString &why) {
        m_notice.say(State::Attention, tr("The photometer sent “%1”: %2").arg(raw, why));
    });
}

void InstrumentRoute::connectActions(const WindowActions &actions, QWidget *window)
{
    connect(actions.pasteReadings, &QAction::triggered, this,
            [this, window] { m_intake.openPasteDialog(window); });
    connect(actions.fileReadings, &QAction::triggered, this,
            [this, window] { m_intake.openFileDialog(window); });
    connect(actions.listen, &QAction::triggered, this, [this, window] { m_intake.openListenDialog(window); });
    connect(actions.stopListening, &QAction::triggered, &m_intake, &InstrumentIntake::stopListening);
}

bool InstrumentRoute::isReadPageOnShow() const
{
    const RackPage *rack = m_rack.made();
    return rack && !rack->isHidden() && rack->stage() == RackPage::Read;
}

void InstrumentRoute::take(const std::vector<TakenReading> &readings)
{
    RackPage &rackPage = m_rack.page();
    ReadPage &page = rackPage.readPage();
    const auto next = m_session.next();
    // A column belongs to the rack and the tube somebody is at; what is sent belongs to what is due.
    const bool follows = readings.size() == 1 || !isReadPageOnShow();
    if (follows && next && next->kind == NextAction::Kind::Read && page.isIdle()) {
        rackPage.showRack(next->run, RackPage::Read);
        page.goTo(next->place);
        Q_EMIT rackPageWanted();
    }
    std::vector<Submission> submissions;
    for (const TakenReading &reading : readings)
        submissions.push_back(submissionOf(reading));
    page.take(submissions);
    if (!page.hasWaiting() || isReadPageOnShow())
        return;
    const Rack *rack = m_session.find(rackPage.rackId());
    m_notice.say(State::Attention, tr("A reading has come in that waits for an answer: go to Read of rack %1.")
                                       .arg(rack ? rack->letter : QString()));
}

} // namespace plateau::ui
