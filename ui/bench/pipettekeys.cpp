// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettekeys.h"

#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PipetteKeys::PipetteKeys(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_goOn(key({}, u"pipetteGoOn"_s, &PipetteKeys::goOnWanted))
    , m_tick(key(tr("&Tick  Space"), u"pipetteTick"_s, &PipetteKeys::tickWanted))
    , m_row(key(tr("Ro&w  +"), u"pipetteRow"_s, &PipetteKeys::rowWanted))
    , m_round(key(tr("&All tubes  *"), u"pipetteRound"_s, &PipetteKeys::roundWanted))
    , m_undo(key(tr("&Undo  −"), u"pipetteUndo"_s, &PipetteKeys::undoWanted))
    , m_volume(key(tr("Other volum&e  0–9"), u"pipetteVolume"_s, &PipetteKeys::volumeWanted))
    , m_spoilt(key(tr("&Spoilt  /"), u"pipetteSpoilt"_s, &PipetteKeys::spoiltWanted))
    , m_fromPaper(key(tr("Pipette&d from paper"), u"pipetteFromPaper"_s, &PipetteKeys::fromPaperWanted))
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    for (QPushButton *push : {m_goOn, m_tick, m_row, m_round, m_undo, m_volume, m_spoilt})
        layout->addWidget(push);
    layout->addStretch();
    layout->addWidget(m_fromPaper);
}

QPushButton *PipetteKeys::key(const QString &text, const QString &name, void (PipetteKeys::*signal)())
{
    QPushButton *push = button(m_theme, text, name, this);
    push->setMinimumHeight(m_theme.target() * 3 / 2); // for a glove
    connect(push, &QPushButton::clicked, this, signal);
    return push;
}

void PipetteKeys::showAdding(bool spoilt, bool untouched)
{
    for (QPushButton *push : {m_tick, m_row, m_round, m_volume, m_spoilt})
        push->show();
    m_tick->setText(tr("&Tick  Space"));
    m_round->setText(tr("&All tubes  *"));
    m_volume->setEnabled(!spoilt);
    sayWhetherSpoilt(spoilt);
    m_goOn->hide();
    m_fromPaper->setVisible(untouched);
}

void PipetteKeys::showDiluting(bool isTicked)
{
    m_tick->setText(isTicked ? tr("&Take the tick back  Space") : tr("&Tick  Space"));
    m_round->setText(tr("&All dilutions  *"));
    m_tick->show();
    m_round->show();
    for (QPushButton *push : {m_goOn, m_row, m_volume, m_spoilt, m_fromPaper})
        push->hide();
}

void PipetteKeys::sayWhetherSpoilt(bool spoilt)
{
    m_spoilt->setText(spoilt ? tr("Not &spoilt  /") : tr("&Spoilt  /"));
}

void PipetteKeys::showPause(const QString &goOn, bool spoilt)
{
    sayWhetherSpoilt(spoilt);
    m_spoilt->show();
    for (QPushButton *push : {m_tick, m_row, m_round, m_volume, m_fromPaper})
        push->hide();
    m_goOn->setText(goOn);
    m_goOn->setVisible(!goOn.isEmpty());
}

void PipetteKeys::setUndoable(bool undoable)
{
    m_undo->setEnabled(undoable);
}

bool PipetteKeys::focusGoOn()
{
    if (m_goOn->isHidden())
        return false;
    m_goOn->setFocus();
    return true;
}

} // namespace plateau::ui
