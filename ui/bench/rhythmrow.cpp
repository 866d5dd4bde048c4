// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/rhythmrow.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/timewords.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QScopedValueRollback>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Two hands need a few seconds, and an hour is no rhythm.
constexpr int shortest_s = 5;
constexpr int longest_s = 3600;
/// Where no plan says otherwise. Common practice, no source.
constexpr int usual_s = 30;

} // namespace

bool startsClock(const PipetteSheet &sheet, int round)
{
    const auto &steps = sheet.steps();
    auto step = std::ranges::find(steps, round, &SheetStep::round);
    if (step == steps.end())
        return false;
    for (++step; step != steps.end() && step->kind != SheetStep::Kind::Add; ++step) {
        if (step->kind == SheetStep::Kind::Wait)
            return true;
    }
    return false;
}

RhythmRow::RhythmRow(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_keep(new QCheckBox(tr("Keep a &rhythm: a tube every"), this))
    , m_interval(new NumberField(theme, tr("s"), this))
    , m_words(plainLabel({}, this))
{
    m_keep->setObjectName(u"keepRhythm"_s);
    m_interval->entry()->setObjectName(u"rhythmInterval"_s);
    m_interval->entry()->setAccessibleName(tr("Seconds from tube to tube"));
    m_words->setObjectName(u"rhythmWords"_s);
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_keep);
    layout->addWidget(m_interval);
    layout->addWidget(m_words, 1);
    connect(m_keep, &QCheckBox::toggled, this, &RhythmRow::take);
    connect(m_interval->entry(), &NumberEntry::judged, this, &RhythmRow::take);
    connect(&session, &BenchSession::ticked, this, &RhythmRow::refresh);
}

std::optional<Beat> RhythmRow::typed() const
{
    const auto interval_s = m_interval->entry()->value();
    if (!m_keep->isChecked() || !interval_s || *interval_s < shortest_s || *interval_s > longest_s)
        return std::nullopt;
    return Beat{m_round, static_cast<int>(std::lround(*interval_s))};
}

void RhythmRow::showRound(notebook::RunId id, int round)
{
    const Rack *rack = m_session.find(id);
    const bool shown = rack && round >= 0 && startsClock(rack->sheet, round);
    setVisible(shown);
    if (!shown)
        return;
    const bool another = id != m_id || round != m_round;
    m_id = id;
    m_round = round;
    const QScopedValueRollback<bool> filling(m_filling, true);
    m_keep->setChecked(rack->beat && rack->beat->round == round);
    if (another) {
        int interval_s = usual_s;
        if (rack->beat && rack->beat->round == round)
            interval_s = rack->beat->interval_s;
        else if (rack->stored.plan && rack->stored.plan->interval_s)
            interval_s = *rack->stored.plan->interval_s;
        m_interval->entry()->setText(QString::number(std::clamp(interval_s, shortest_s, longest_s)));
    }
    refresh();
}

void RhythmRow::take()
{
    if (m_filling)
        return;
    if (m_session.find(m_id))
        m_session.keepBeat(m_id, typed());
    refresh();
}

void RhythmRow::refresh()
{
    const Rack *rack = m_session.find(m_id);
    if (isHidden() || !rack)
        return;
    if (m_keep->isChecked() && !typed()) {
        m_words->setText(
            tr("Enter seconds from %1 to %2: no rhythm is kept.").arg(shortest_s).arg(longest_s));
        return;
    }
    if (!m_keep->isChecked()) {
        m_words->clear();
        return;
    }
    for (const NextAction &action : m_session.timed()) {
        if (action.run == m_id && action.kind == NextAction::Kind::Pipette &&
            action.dosing.round == m_round) {
            m_words->setText(tr("Tube %1 %2")
                                 .arg(action.dosing.tube + 1)
                                 .arg(countdownText(action.times->opens_s, action.times->closes_s)));
            return;
        }
    }
    m_words->setText(tr("It begins with the first tube that is ticked."));
}

} // namespace plateau::ui
