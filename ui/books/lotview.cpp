// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotview.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "ui/books/lotkeepingform.h"
#include "ui/books/lotlabelform.h"
#include "ui/books/lotledger.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

notebook::LotLabel labelOf(const planning::Lot &lot)
{
    return {lot.reagent, lot.lot, lot.expires, lot.keepsOpened_days, lot.keepsDissolved_days};
}

} // namespace

void LotView::show(const Facts &facts, const QDate &today)
{
    const planning::Lot &before = m_facts.lot;
    const bool another = facts.lot.id != before.id;
    const bool hasOtherChoices = facts.lot.opened.has_value() != before.opened.has_value() ||
                                 facts.lot.dissolved.has_value() != before.dissolved.has_value();
    if (another)
        m_notice->clear();
    m_facts = facts;
    m_today = today;
    m_title->setText(tr("%1, lot %2").arg(facts.lot.reagent, facts.lot.lot));
    const QStringList parts = factsInWords();
    m_subtitle->setText(withDecimalSigns(parts.join(tr("; "))));
    const int side = fontMetrics().height() * 5 / 4;
    m_shape->setPixmap(m_theme.icon(facts.standing.shape).pixmap(side, side));
    m_shape->setAccessibleName(m_subtitle->text());
    m_ledger->setMovements(facts.movements);
    m_takings->setTakings(facts.takings);
    m_ledgerTable->fit();
    m_takingsTable->setColumnHidden(TakingsModel::Through,
                                    std::ranges::all_of(facts.takings, &QString::isEmpty, &notebook::LotTaking::through));
    m_takingsTable->fit();
    m_takingsTable->setVisible(!facts.takings.empty());
    m_noTakings->setVisible(facts.takings.empty());
    m_trace->setEnabled(!facts.takings.empty());
    m_balance->setText(withDecimalSigns(balanceText()));
    m_keeping->setLots(m_lots, facts.lot.id);
    if (!another) {
        if (hasOtherChoices)
            renewChoices();
        return;
    }
    addChoices();
    resetFields();
}

QStringList LotView::factsInWords() const
{
    const planning::Lot &lot = m_facts.lot;
    QStringList parts{evaluation::capitalised(m_facts.standing.words)};
    if (lot.isDry)
        parts << (lot.dry_mg
                      ? tr("dry: %1").arg(evaluation::withUnit(evaluation::plainText(*lot.dry_mg), u"mg"_s))
                      : tr("dry"));
    else
        parts << tr("left: %1").arg(lotVolume(lot.remaining_mL));
    const std::optional<planning::UseBy> useBy = planning::useByOf(lot);
    if (useBy)
        parts << tr("use by: %1").arg(planning::useByText(*useBy));
    if (lot.expires && useBy->limit != planning::LotLimit::Label)
        parts << tr("the label says: %1").arg(dayText(lot.expires));
    if (lot.opened)
        parts << tr("opened on %1").arg(dayText(lot.opened));
    if (lot.keepsOpened_days)
        parts << tr("keeps once opened: %1 days").arg(*lot.keepsOpened_days);
    if (lot.dissolved)
        parts << tr("dissolved: %1, in %2").arg(dayText(lot.dissolved->day), lot.dissolved->solvent);
    if (lot.keepsDissolved_days)
        parts << tr("keeps once dissolved: %1 days").arg(*lot.keepsDissolved_days);
    if (lot.aliquot)
        parts << tr("filled: %1").arg(dayText(lot.aliquot->day));
    if (lot.aliquot && lot.aliquot->keeps_days)
        parts << tr("keeps as stored: %1 days").arg(*lot.aliquot->keeps_days);
    if (lot.place)
        parts << tr("storage: %1").arg(planning::placeText(*lot.place));
    return parts;
}

QString LotView::balanceText() const
{
    if (m_facts.lot.isDry)
        return tr("It is dry: its volume begins when it is dissolved.");
    double noted_mL = 0;
    double byHand_mL = 0;
    for (const notebook::LotMovement &movement : m_facts.movements) {
        noted_mL += movement.change_mL;
        byHand_mL -= movement.kind == notebook::LotMovementKind::Used ? movement.change_mL : 0;
    }
    double taken_mL = 0;
    for (const notebook::LotTaking &taking : m_facts.takings)
        taken_mL += taking.through.isEmpty() ? taking.volume_mL : 0; // that left it when it was divided
    if (taken_mL == 0 && byHand_mL > 0)
        return tr("Left according to the ledger: %1; taken, keyed by hand: %2; ticked in runs: none.")
            .arg(lotVolume(m_facts.lot.remaining_mL), lotVolume(byHand_mL));
    if (taken_mL == 0)
        return tr("Left according to the ledger: %1; ticked in runs: none.").arg(lotVolume(m_facts.lot.remaining_mL));
    return tr("According to the ledger: %1; ticked in runs: %2; left: %3.")
        .arg(lotVolume(noted_mL), lotVolume(taken_mL), lotVolume(m_facts.lot.remaining_mL));
}

/// Opening and dissolving are offered once, then what corrects an opening; what is dry has no volume to take.
void LotView::addChoices()
{
    m_what->clear();
    const auto add = [this](Event event, const QString &words) {
        m_what->addItem(words, static_cast<int>(event));
    };
    const planning::Lot &lot = m_facts.lot;
    if (lot.isDry)
        add(Event::Dissolved, tr("It was dissolved"));
    if (!lot.opened)
        add(Event::Opened, lot.aliquot ? tr("It was opened or thawed") : tr("It was opened"));
    if (!lot.isDry)
        add(Event::Used, tr("Some was taken, keyed by hand"));
    add(Event::Discarded, lot.isDry ? tr("It was discarded") : tr("Some was spilt or discarded"));
    if (!lot.isDry)
        add(Event::Corrected, tr("Another volume was found in it"));
    add(Event::Relabelled, tr("Its label was noted wrongly"));
    if (lot.opened)
        add(Event::OpenedOtherwise, tr("It was opened on another day"));
    if (lot.opened && !lot.dissolved)
        add(Event::NotOpened, tr("It was not opened after all"));
    if (!lot.isDry && !lot.aliquot)
        add(Event::Divided, tr("It was divided into aliquots"));
    add(Event::Placed, tr("It was moved"));
    add(Event::Noted, tr("There is something to note about it"));
    m_what->setMinimumWidth(m_what->sizeHint().width()); // what is chosen is read whole; the ledger gives way
}

/// Somebody took from it at the bench while it stood here. What is being keyed stays.
void LotView::renewChoices()
{
    {
        const QSignalBlocker quiet(m_what);
        const QVariant former = m_what->currentData();
        addChoices();
        m_what->setCurrentIndex(std::max(0, m_what->findData(former)));
    }
    showFields();
}

LotView::Event LotView::chosen() const
{
    return static_cast<Event>(m_what->currentData().toInt());
}

bool LotView::takesVolume(Event event) const
{
    return event == Event::Used || event == Event::Corrected || event == Event::Dissolved ||
           event == Event::Divided || (event == Event::Discarded && !m_facts.lot.isDry);
}

QString LotView::volumeCaption(Event event) const
{
    switch (event) {
    case Event::Corrected:
        return tr("Vol&ume found (mL)");
    case Event::Dissolved:
        return tr("Sol&ution (mL)");
    case Event::Divided:
        return tr("Vol&ume of each (mL)");
    default:
        return tr("Vol&ume (mL)");
    }
}

QString LotView::reasonCaption(Event event) const
{
    switch (event) {
    case Event::Used:
        return tr("What for (may b&e empty)");
    case Event::Dissolved:
    case Event::Divided:
    case Event::Placed:
        return tr("Not&e (may be empty)");
    case Event::Noted:
        return tr("Not&e");
    default:
        return tr("R&eason");
    }
}

void LotView::showFields()
{
    using Subject = LotKeepingForm::Subject;
    const Event event = chosen();
    const bool onADay = event == Event::Opened || event == Event::OpenedOtherwise ||
                         event == Event::Dissolved || event == Event::Divided;
    showRow(*m_form, m_day, onADay);
    showRow(*m_form, m_volume_mL, takesVolume(event));
    showRow(*m_form, m_reason, event != Event::Opened);
    m_label->setVisible(event == Event::Relabelled);
    m_keeping->show(event == Event::Dissolved ? Subject::Dissolving
                    : event == Event::Divided ? Subject::Dividing
                    : event == Event::Placed  ? Subject::Place
                                              : Subject::None);
    captionOf(*m_form, m_volume_mL)->setText(unitOnce(volumeCaption(event), m_volume_mL->unit()));
    m_volume_mL->entry()->setAccessibleName(volumeCaption(event).remove(u'&'));
    captionOf(*m_form, m_reason)->setText(reasonCaption(event));
    m_reason->setAccessibleName(reasonCaption(event).remove(u'&'));
}

void LotView::resetFields()
{
    m_volume_mL->entry()->clear();
    m_reason->clear();
    m_day->setText(assay::shownDay(m_today));
    m_label->setLabel(labelOf(m_facts.lot));
    const planning::Lot &lot = m_facts.lot;
    m_label->askForDissolved(lot.isDry || lot.dissolved || lot.keepsDissolved_days);
    m_keeping->reset(lot);
    showFields();
}

void LotView::setReagents(const QStringList &names)
{
    m_label->setReagents(names);
}

void LotView::setLots(const std::vector<planning::Lot> &lots)
{
    m_lots = lots;
}

void LotView::takeFocus()
{
    m_what->setFocus();
}

bool LotView::hasUnsavedChanges() const
{
    return !m_volume_mL->entry()->isBlank() || !m_reason->text().trimmed().isEmpty() || m_keeping->hasInput();
}

void LotView::markStored(const QString &sentence)
{
    addChoices();
    resetFields();
    m_notice->say(State::Good, sentence);
    m_what->setFocus();
}

void LotView::ask(QLineEdit *field, const QString &sentence)
{
    m_notice->say(State::Attention, sentence);
    field->setFocus();
    // What was asked for is being given.
    connect(
        field, &QLineEdit::textChanged, m_notice,
        [this, sentence] {
            if (m_notice->sentence() == sentence)
                m_notice->clear();
        },
        Qt::SingleShotConnection);
}

std::optional<double> LotView::volume_mL()
{
    if (!m_volume_mL->entry()->value())
        ask(m_volume_mL->entry(), m_volume_mL->entry()->fault().isEmpty() ? tr("Say how much it is, in mL.")
                                                                          : m_volume_mL->entry()->fault());
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

std::optional<QDate> LotView::day()
{
    const auto typed = parseDay(m_day->text());
    if (const QDate *read = std::get_if<QDate>(&typed))
        return *read;
    ask(m_day, dayFaultSentence(std::get<DayFault>(typed)));
    return std::nullopt;
}

void LotView::storeOpening()
{
    if (const auto on = day())
        Q_EMIT openWanted(*on);
}

void LotView::storeOpeningOtherwise(Event event)
{
    const auto on = event == Event::NotOpened ? std::optional<QDate>() : day();
    if (event != Event::NotOpened && !on)
        return;
    if (const auto why = reason(true))
        Q_EMIT openingWanted(on, *why);
}

void LotView::storeDissolving()
{
    const auto on = day();
    const auto volume = on ? volume_mL() : std::nullopt;
    if (!volume)
        return;
    QString fault;
    auto how = m_keeping->dissolving(fault);
    if (!how) {
        m_notice->say(State::Attention, fault);
        return;
    }
    how->day = *on;
    how->volume_mL = *volume;
    how->note = m_reason->text().simplified();
    Q_EMIT dissolveWanted(*how);
}

void LotView::storeDivision()
{
    const auto on = day();
    const auto volume = on ? volume_mL() : std::nullopt;
    if (!volume)
        return;
    QString fault;
    auto how = m_keeping->division(fault);
    if (!how) {
        m_notice->say(State::Attention, fault);
        return;
    }
    how->day = *on;
    how->volume_mL = *volume;
    how->note = m_reason->text().simplified();
    Q_EMIT divideWanted(*how);
}

void LotView::storePlace()
{
    QString fault;
    if (const auto place = m_keeping->place(fault))
        Q_EMIT placeWanted(*place, m_reason->text().simplified());
    else
        m_notice->say(State::Attention, fault);
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
    switch (event) {
    case Event::Opened:
        storeOpening();
        return;
    case Event::OpenedOtherwise:
    case Event::NotOpened:
        storeOpeningOtherwise(event);
        return;
    case Event::Dissolved:
        storeDissolving();
        return;
    case Event::Divided:
        storeDivision();
        return;
    case Event::Placed:
        storePlace();
        return;
    case Event::Relabelled:
        storeLabel();
        return;
    case Event::Noted:
        if (const auto text = reason(true))
            Q_EMIT noteWanted(*text);
        return;
    default:
        break;
    }
    const auto volume = takesVolume(event) ? volume_mL() : std::optional(0.0);
    const auto why = volume ? reason(event != Event::Used) : std::nullopt;
    if (!why)
        return;
    if (event == Event::Used)
        Q_EMIT useWanted(*volume, *why);
    else if (event == Event::Corrected)
        Q_EMIT correctWanted(*volume, *why);
    else if (m_facts.lot.isDry)
        Q_EMIT discardDryWanted(*why);
    else
        Q_EMIT discardWanted(*volume, *why);
}

void LotView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
