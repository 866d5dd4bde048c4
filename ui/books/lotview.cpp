// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotview.h"

#include "ui/books/lotlabelform.h"
#include "ui/books/lotledger.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/table.h"

#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

notebook::LotLabel labelOf(const planning::Lot &lot)
{
    return {lot.reagent, lot.lot, lot.expires, lot.keepsOpened_days};
}

} // namespace

void LotView::show(const Facts &facts, const std::vector<notebook::RunSummary> &runs, const QDate &today)
{
    const bool another = facts.lot.id != m_facts.lot.id;
    if (another)
        m_notice->clear();
    m_facts = facts;
    m_title->setText(tr("%1, lot %2").arg(facts.lot.reagent, facts.lot.lot));
    QStringList parts{facts.standing.words, tr("left: %1").arg(lotVolume(facts.lot.remaining_mL))};
    if (facts.lot.expires)
        parts << tr("last good day: %1").arg(dayText(facts.lot.expires));
    if (facts.lot.opened)
        parts << tr("opened: %1").arg(dayText(facts.lot.opened));
    if (facts.lot.keepsOpened_days)
        parts << tr("keeps once opened: %1 days").arg(*facts.lot.keepsOpened_days);
    m_subtitle->setText(parts.join(tr("; ")));
    const int side = fontMetrics().height() * 5 / 4;
    m_shape->setPixmap(m_theme.icon(facts.standing.shape).pixmap(side, side));
    m_ledger->setMovements(facts.movements);
    m_takings->setTakings(facts.takings, runs);
    m_ledgerTable->fit();
    m_takingsTable->fit();
    m_takingsTable->setVisible(!facts.takings.empty());
    m_noTakings->setVisible(facts.takings.empty());
    m_trace->setEnabled(!facts.takings.empty());
    m_balance->setText(balanceText());
    if (!another)
        return;
    m_day->setText(today.toString(Qt::ISODate));
    addChoices();
    resetFields();
}

QString LotView::balanceText() const
{
    double noted_mL = 0;
    for (const notebook::LotMovement &movement : m_facts.movements)
        noted_mL += movement.change_mL;
    double taken_mL = 0;
    for (const notebook::LotTaking &taking : m_facts.takings)
        taken_mL += taking.volume_mL;
    return tr("By the ledger %1, of which runs took %2; left: %3.")
        .arg(lotVolume(noted_mL), lotVolume(taken_mL), lotVolume(m_facts.lot.remaining_mL));
}

/// Opening is offered once; what is used up has nothing to take.
void LotView::addChoices()
{
    m_what->clear();
    const auto add = [this](Event event, const QString &words) {
        m_what->addItem(words, static_cast<int>(event));
    };
    if (!m_facts.lot.opened)
        add(Event::Opened, tr("It was opened"));
    add(Event::Used, tr("Some was taken outside a run"));
    add(Event::Discarded, tr("Some was spilt or thrown away"));
    add(Event::Corrected, tr("Another volume was found in it"));
    add(Event::Relabelled, tr("Its label was noted wrongly"));
}

LotView::Event LotView::chosen() const
{
    return static_cast<Event>(m_what->currentData().toInt());
}

void LotView::showFields()
{
    const Event event = chosen();
    m_form->setRowVisible(m_day, event == Event::Opened);
    m_form->setRowVisible(m_volume_mL,
                          event == Event::Used || event == Event::Discarded || event == Event::Corrected);
    m_form->setRowVisible(m_reason, event != Event::Opened);
    m_label->setVisible(event == Event::Relabelled);
    auto *caption = static_cast<QLabel *>(m_form->labelForField(m_volume_mL));
    caption->setText(event == Event::Corrected ? tr("Vol&ume found (mL)") : tr("Vol&ume (mL)"));
    auto *reasonCaption = static_cast<QLabel *>(m_form->labelForField(m_reason));
    reasonCaption->setText(event == Event::Used ? tr("What for (may b&e empty)") : tr("R&eason"));
}

void LotView::resetFields()
{
    m_volume_mL->entry()->clear();
    m_reason->clear();
    m_label->setLabel(labelOf(m_facts.lot));
    showFields();
}

void LotView::setReagents(const QStringList &names)
{
    m_label->setReagents(names);
}

void LotView::takeFocus()
{
    m_what->setFocus();
}

bool LotView::hasUnsavedChanges() const
{
    return !m_volume_mL->entry()->isBlank() || !m_reason->text().trimmed().isEmpty();
}

void LotView::markStored(const QString &sentence)
{
    addChoices();
    resetFields();
    m_notice->say(State::Good, sentence);
    m_what->setFocus();
}

void LotView::ask(QWidget *field, const QString &sentence)
{
    m_notice->say(State::Attention, sentence);
    field->setFocus();
}

std::optional<double> LotView::volume_mL()
{
    if (!m_volume_mL->entry()->value())
        ask(m_volume_mL->entry(), tr("Say how much it is, in mL."));
    return m_volume_mL->entry()->value();
}

std::optional<QString> LotView::reason(bool needed)
{
    const QString text = m_reason->text().simplified();
    if (!needed || !text.isEmpty())
        return text;
    ask(m_reason, tr("Say why; the ledger keeps it."));
    return std::nullopt;
}

void LotView::storeOpening()
{
    const auto day = parseDay(m_day->text());
    if (const QDate *read = std::get_if<QDate>(&day))
        Q_EMIT openWanted(*read);
    else
        ask(m_day, dayFaultSentence(std::get<DayFault>(day)));
}

void LotView::storeLabel()
{
    QString fault;
    const auto label = m_label->label(fault);
    if (!label) {
        m_notice->say(State::Attention, fault);
        return;
    }
    if (const auto why = reason(true))
        Q_EMIT relabelWanted(*label, *why);
}

void LotView::store()
{
    const Event event = chosen();
    if (event == Event::Opened) {
        storeOpening();
        return;
    }
    if (event == Event::Relabelled) {
        storeLabel();
        return;
    }
    const auto volume = volume_mL();
    const auto why = volume ? reason(event != Event::Used) : std::nullopt;
    if (!why)
        return;
    if (event == Event::Used)
        Q_EMIT useWanted(*volume, *why);
    else if (event == Event::Discarded)
        Q_EMIT discardWanted(*volume, *why);
    else
        Q_EMIT correctWanted(*volume, *why);
}

void LotView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
