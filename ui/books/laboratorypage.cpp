// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratorypage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/cellstable.h"
#include "ui/shared/guard.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/widgets.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScopedValueRollback>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString sayWhoIsThere()
{
    return LaboratoryPage::tr(
        "Say who is at the bench first: type your name on the left and press Enter, then do it again.");
}

} // namespace

void LaboratoryPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    if (!m_loaded)
        reload();
}

void LaboratoryPage::open()
{
    m_name->setFocus();
}

void LaboratoryPage::reload()
{
    m_loaded = guarded(*m_notice, [this] {
        m_keptLaboratory = m_stores.laboratory();
        load(draftOf(m_keptLaboratory));
        sayWhereItComesFrom();
    });
}

void LaboratoryPage::load(const LaboratoryDraft &draft)
{
    {
        const QScopedValueRollback<bool> loading(m_loading, true);
        m_name->setText(draft.name);
        m_rackRows->setText(draft.rackRows);
        m_rackColumns->setText(draft.rackColumns);
        m_addition_s->setText(draft.addition_s);
        m_mix_s->setText(draft.mix_s);
        m_reading_s->setText(draft.reading_s);
        m_overage_percent->setText(draft.overage_percent);
        m_pipettes->setRows(draft.pipettes);
        m_flasks->setRows(draft.flasks);
    }
    m_kept = collect();
    onEdited();
}

LaboratoryDraft LaboratoryPage::collect() const
{
    return {m_name->text(),  m_rackRows->text(),  m_rackColumns->text(),     m_addition_s->text(),
            m_mix_s->text(), m_reading_s->text(), m_overage_percent->text(), m_pipettes->rows(),
            m_flasks->rows()};
}

QString LaboratoryPage::unstored() const
{
    return m_loaded && collect() != m_kept ? tr("Changes of the laboratory that are not saved yet")
                                           : QString();
}

void LaboratoryPage::onEdited()
{
    if (m_loading)
        return;
    m_outcome = laboratoryOf(collect(), m_keptLaboratory);
    m_dropChanges->setEnabled(collect() != m_kept);
    showProblems();
}

void LaboratoryPage::sayWhereItComesFrom()
{
    if (const auto saving = m_stores.laboratorySaving())
        m_origin->say(State::Good,
                      tr("Version %1, saved by %2, %3. Plans made from now on go by it; racks on the "
                         "bench keep theirs.")
                          .arg(QString::number(saving->version), saving->person, momentText(saving->at)));
    else
        m_origin->say(State::Attention,
                      tr("Common practice, no source: put your own in its place. Nobody saved "
                         "this laboratory yet; until then plans go by what stands here."));
}

void LaboratoryPage::showProblems()
{
    assay::Problems inWords = m_outcome.problems;
    for (assay::Problem &problem : inWords)
        problem.pointer = laboratoryField(problem.pointer).words;
    const auto errors = static_cast<int>(m_outcome.problems.size());
    if (errors > 0)
        m_summary->setText(tr("Still to be put right (%1), Enter goes there:").arg(errors));
    else
        m_summary->setText(!unstored().isEmpty() ? tr("Nothing stands in the way of saving.")
                                                 : tr("Nothing was changed."));
    m_problems->setProblems(inWords);
    m_problems->setVisible(errors > 0);
}

void LaboratoryPage::goToProblem(int row)
{
    if (row < 0 || row >= static_cast<int>(m_outcome.problems.size()))
        return;
    const LaboratoryField field = laboratoryField(m_outcome.problems[static_cast<std::size_t>(row)].pointer);
    auto *widget = findChild<QWidget *>(field.objectName);
    if (!widget)
        return;
    widget->setFocus(Qt::OtherFocusReason);
    if (auto *table = qobject_cast<CellsTable *>(widget))
        table->goTo(std::max(0, field.row), field.column);
}

void LaboratoryPage::finishCell() const
{
    // The editor of a cell keeps its text to itself until it is left.
    for (auto *table : findChildren<CellsTable *>()) {
        if (table->isAncestorOf(QApplication::focusWidget()))
            table->setFocus();
    }
}

void LaboratoryPage::save()
{
    finishCell();
    if (!m_outcome.problems.empty()) {
        m_notice->say(State::Attention, tr("Nothing is saved yet: first put right what the list names."));
        m_problems->setFocus();
        m_problems->setCurrentIndex(m_problems->model()->index(0, 0));
        return;
    }
    if (m_session.person().isEmpty()) {
        m_notice->say(State::Info, sayWhoIsThere());
        Q_EMIT personWanted();
        return;
    }
    bool stored = false;
    if (!guarded(*m_notice, [&] { stored = m_stores.saveLaboratory(m_outcome.laboratory); }))
        return;
    reload();
    m_notice->say(stored ? State::Good : State::Info,
                  stored ? tr("Saved.") : tr("There is nothing to save: it was saved like this already."));
}

void LaboratoryPage::dropAnsweredQuestion()
{
    if (!m_session.person().isEmpty() && m_notice->sentence() == sayWhoIsThere())
        m_notice->clear();
}

} // namespace plateau::ui
