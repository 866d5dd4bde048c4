// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/nextstrip.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/pipettewords.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

NextStrip::NextStrip(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_next(plainLabel(tr("Next"), this))
    , m_action(new ElidingLabel(this))
    , m_progress(plainLabel({}, this))
    , m_go(button(theme, tr("&Go to it"), u"goToNext"_s, this))
{
    setAutoFillBackground(true);
    m_action->setObjectName(u"nextAction"_s);
    m_progress->setObjectName(u"nextProgress"_s);
    auto *layout = new QHBoxLayout(this);
    setGaps(theme, layout);
    layout->setSpacing(theme.wideGap());
    layout->addWidget(m_next);
    layout->addWidget(m_action, 1);
    layout->addWidget(m_progress);
    layout->addWidget(m_go);
    connect(m_go, &QPushButton::clicked, this, &NextStrip::wanted);
    connect(&session, &BenchSession::notebookChanged, this, &NextStrip::refresh);
    connect(&session, &BenchSession::nextChanged, this, &NextStrip::refresh);
    connect(&theme, &Theme::changed, this, &NextStrip::dress);
    dress();
    refresh();
}

void NextStrip::dress()
{
    m_next->setFont(m_theme.large());
    m_action->setFont(m_theme.huge());
    m_progress->setFont(m_theme.large());
    QPalette own;
    own.setColor(QPalette::Window, m_theme.tint(State::Info));
    setPalette(own);
}

void NextStrip::refresh()
{
    const auto next = m_session.next();
    m_go->setVisible(next.has_value());
    m_next->setVisible(next.has_value());
    // A count without its rack would be taken for that of the rack on show.
    m_progress->setVisible(next && next->kind != NextAction::Kind::Review);
    if (!next) {
        m_action->setText(tr("Nothing due"));
        return;
    }
    if (next->kind == NextAction::Kind::Pipette) {
        const PipetteSheet &sheet = m_session.find(next->run)->sheet;
        m_action->setText(stripWords(next->letter, sheet, next->dosing));
        m_progress->setText(tr("Rack %1: %2").arg(next->letter, countWords(next->count)));
        return;
    }
    m_progress->setText(
        tr("Rack %1: %2 of %3 read").arg(next->letter).arg(next->readingsTaken).arg(next->readingsPlanned));
    if (next->kind == NextAction::Kind::Read)
        m_action->setText(tr("Rack %1, tube %2: key %3")
                              .arg(next->letter)
                              .arg(tubeNumber(next->place))
                              .arg(next->place.reading));
    else
        m_action->setText(tr("Rack %1: review and decide").arg(next->letter));
}

} // namespace plateau::ui
