// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The dilutions ahead of the additions: chosen and ticked among the steps, by the keys of the grid.
#include "ui/bench/pipettepage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/pipettegrid.h"
#include "ui/bench/pipettekeys.h"
#include "ui/bench/pipettestepsmodel.h"
#include "ui/bench/pipettesubject.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/table.h"

#include <QKeyEvent>

using namespace Qt::StringLiterals;

namespace plateau::ui {

void PipettePage::showDilutionOf(int row)
{
    std::optional<int> dilution;
    if (rack() && row >= 0 && row < m_steps->rowCount() && m_steps->step(row).kind == SheetStep::Kind::Dilute)
        dilution = row;
    if (dilution == m_dilution)
        return;
    m_dilution = dilution;
    refresh();
}

void PipettePage::goToDilution(int step)
{
    m_dilution = step;
    m_stepsTable->setCurrentIndex(m_steps->index(step, PipetteStepsModel::Step));
    refresh();
    takeFocus();
}

void PipettePage::showDilution()
{
    const PipettePause said = dilutionSubject(m_sheet, *m_dilution);
    m_panel->pause(withDecimalSigns(said.title), said.text, {});
    const notebook::DilutionPlace &place = m_steps->step(*m_dilution).dilution;
    m_keys->showDiluting(m_sheet.dilutionState(place) == PipetteSheet::State::Ticked);
}

bool PipettePage::actOnDilution(const QString &text)
{
    if (text == " "_L1 || text == "\r"_L1 || text == "\n"_L1)
        tickDilution();
    else if (text == "*"_L1)
        tickDilutions();
    else if (text == "-"_L1 || text == "\b"_L1)
        undo();
    else
        return false;
    return true;
}

bool PipettePage::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::FocusIn && watched == m_grid)
        showDilutionOf(-1);
    else if (event->type() == QEvent::FocusIn && watched == m_stepsTable)
        showDilutionOf(m_stepsTable->currentIndex().row());
    if (event->type() != QEvent::KeyPress || watched != m_stepsTable || !m_dilution)
        return QWidget::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    // A key that is held down must not tick one after the other.
    const bool held = key->isAutoRepeat() && !key->text().isEmpty();
    return held || (plain && actOnDilution(key->text())) || QWidget::eventFilter(watched, event);
}

void PipettePage::tickDilution()
{
    const notebook::DilutionPlace place = m_steps->step(*m_dilution).dilution;
    if (m_sheet.dilutionState(place) != PipetteSheet::State::Ticked) {
        storeDilutions({place});
        return;
    }
    withName([this, place] {
        if (store([&] { m_session.untickDilutions(m_id, {place}); }))
            takeFocus();
    });
}

void PipettePage::tickDilutions()
{
    if (const std::vector<notebook::DilutionPlace> due = m_sheet.dilutionsDue(); !due.empty())
        storeDilutions(due);
}

void PipettePage::storeDilutions(const std::vector<notebook::DilutionPlace> &steps)
{
    withName([this, steps] {
        if (!store([&] { m_session.tickDilutions(m_id, steps); }))
            return;
        if (const auto next = m_sheet.nextDilution(m_dilution.value_or(0)))
            goToDilution(*next);
        else
            takeUp();
    });
}

} // namespace plateau::ui
