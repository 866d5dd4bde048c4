// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/nextstrip.h"

#include "ui/bench/actionwords.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/benchsettings.h"
#include "ui/bench/pipettewords.h"
#include "ui/bench/timewords.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

NextStrip::NextStrip(const Theme &theme, BenchSession &session, BenchSettings &settings, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_settings(settings)
    , m_next(plainLabel(tr("Next"), this))
    , m_action(new ElidingLabel(this))
    , m_progress(plainLabel({}, this))
    , m_countdown(plainLabel({}, this))
    , m_done(button(theme, tr("Done now  F9"), u"doneNow"_s, this))
    , m_go(button(theme, tr("&Go to it"), u"goToNext"_s, this))
    , m_sound(button(theme, {}, u"soundSwitch"_s, this))
{
    build();
    connect(m_done, &QPushButton::clicked, this, &NextStrip::doneWanted);
    connect(m_go, &QPushButton::clicked, this, &NextStrip::wanted);
    connect(m_sound, &QPushButton::clicked, this, [this] {
        BenchChoice choice = m_settings.choice();
        choice.muted = !choice.muted;
        m_settings.setChoice(choice);
    });
    connect(&session, &BenchSession::notebookChanged, this, &NextStrip::refresh);
    connect(&session, &BenchSession::nextChanged, this, &NextStrip::refresh);
    connect(&session, &BenchSession::ticked, this, &NextStrip::refresh);
    connect(&settings, &BenchSettings::changed, this, &NextStrip::showSound);
    connect(&theme, &Theme::changed, this, &NextStrip::dress);
    showSound();
    dress();
    refresh();
}

void NextStrip::build()
{
    setAutoFillBackground(true);
    m_action->setObjectName(u"nextAction"_s);
    m_progress->setObjectName(u"nextProgress"_s);
    m_countdown->setObjectName(u"nextCountdown"_s);
    // Pressing them must not take the focus from the number that is being keyed.
    for (QPushButton *push : {m_done, m_go, m_sound})
        push->setFocusPolicy(Qt::TabFocus);
    auto *layout = new QHBoxLayout(this);
    setGaps(m_theme, layout);
    layout->setSpacing(m_theme.wideGap());
    auto *head = new QVBoxLayout;
    head->setSpacing(0);
    head->addWidget(m_next);
    head->addWidget(m_progress);
    layout->addLayout(head);
    layout->addWidget(m_action, 1);
    layout->addWidget(m_countdown);
    layout->addWidget(m_done);
    layout->addWidget(m_go);
    layout->addWidget(m_sound);
}

void NextStrip::showSound()
{
    const bool muted = m_settings.choice().muted;
    m_sound->setText(muted ? tr("Sound is off") : tr("Sound is on"));
    m_sound->setAccessibleDescription(muted ? tr("Press to hear when something is due")
                                            : tr("Press to silence it"));
}

void NextStrip::dress()
{
    m_next->setFont(m_theme.bold());
    // Smaller words rather than some of them: with a large font they would not say which tube.
    QFont hand = m_theme.huge();
    const double smallest_pt = m_theme.large().pointSizeF();
    // Letters do not grow in proportion: what is all but narrow enough is made smaller still.
    while (hand.pointSizeF() > smallest_pt &&
           QFontMetrics(hand).horizontalAdvance(m_action->text()) > m_action->width())
        hand.setPointSizeF(std::max(smallest_pt, hand.pointSizeF() - 0.5));
    m_action->setFont(hand);
    // What is too long even so stands in two lines.
    m_action->setMinimumHeight(2 * QFontMetrics(m_theme.large()).lineSpacing());
    m_countdown->setFont(m_theme.huge());
    m_progress->setFont(font());
    const auto next = m_session.next();
    QPalette own;
    own.setColor(QPalette::Window, m_theme.tint(next ? stateOf(*next) : State::Info));
    setPalette(own);
}

void NextStrip::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    dress();
}

void NextStrip::refresh()
{
    const auto next = m_session.next();
    m_go->setVisible(next.has_value());
    m_next->setVisible(next.has_value());
    m_done->setVisible(next && next->kind == NextAction::Kind::Pipette);
    // A count without its rack would be taken for that of the rack on show.
    m_progress->setVisible(next && next->kind != NextAction::Kind::Review);
    m_countdown->setVisible(next && next->times);
    if (next)
        say(*next);
    else
        m_action->setText(tr("Nothing due"));
    dress();
}

void NextStrip::say(const NextAction &next)
{
    m_countdown->setText(next.times ? countdownText(next.times->opens_s, next.times->closes_s) : QString());
    m_action->setText(withDecimalSigns(actionWords(next, *m_session.find(next.run))));
    m_progress->setText(next.kind == NextAction::Kind::Pipette
                            ? tr("Rack %1: %2").arg(next.letter, countWords(next.count))
                            : tr("Rack %1: %2 of %3 read")
                                  .arg(next.letter)
                                  .arg(next.readingsTaken)
                                  .arg(next.readingsPlanned));
}

} // namespace plateau::ui
