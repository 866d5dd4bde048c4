// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotkeepingform.h"

#include "core/assay/label.h"
#include "ui/books/lotplaces.h"
#include "ui/books/lotwords.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/proposals.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include <algorithm>
#include <functional>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

std::nullopt_t refuseField(QString &fault, QWidget *field, const QString &sentence)
{
    fault = sentence;
    field->setFocus();
    return std::nullopt;
}

QString daysText(const std::optional<int> &days)
{
    return days ? QString::number(*days) : QString();
}

/// Whole days, 0 or more; nothing for an empty field, which is no fault.
std::optional<int> daysIn(QLineEdit *field, const QString &caption, QString &fault)
{
    const QString typed = field->text().trimmed();
    if (typed.isEmpty())
        return std::nullopt;
    bool whole = false;
    const int days = typed.toInt(&whole);
    if (whole && days >= 0)
        return days;
    return refuseField(
        fault, field,
        LotKeepingForm::tr("%1: give whole days, 0 for that day only, or nothing where none is stated.")
            .arg(caption));
}

/// What the newest container of the same reagent says, where this one says nothing.
std::optional<int> lastSaidDays(const std::vector<planning::Lot> &lots, const planning::Lot &own,
                                const std::function<std::optional<int>(const planning::Lot &)> &daysOf)
{
    if (const auto said = daysOf(own))
        return said;
    for (auto lot = lots.rbegin(); lot != lots.rend(); ++lot) {
        if (const auto said = daysOf(*lot); said && planning::isSameReagent(lot->reagent, own.reagent))
            return said;
    }
    return std::nullopt;
}

} // namespace

LotKeepingForm::LotKeepingForm(const Theme &theme, QFormLayout *form)
    : QObject(form->parentWidget())
    , m_form(form)
    , m_solvent(addBox(theme, tr("&In what"), u"lotSolvent"_s))
    , m_count(addLine(theme, tr("Number of ali&quots"), u"lotAliquots"_s))
    , m_keeps_days(addLine(theme, tr("&Keeps dissolved (days)"), u"lotKeeps"_s))
    , m_thawed_days(addLine(theme, tr("Once &thawed (days)"), u"lotThawed"_s))
    , m_place(addBox(theme, tr("&Where it is stored"), u"lotPlace"_s))
    , m_coldest_C(addTemperature(theme, tr("Co&ldest there (°C)"), u"lotColdest"_s))
    , m_warmest_C(addTemperature(theme, tr("War&mest there (°C)"), u"lotWarmest"_s))
{
    const QString none = tr("Empty where none is stated.");
    m_keeps_days->setToolTip(none);
    m_thawed_days->setToolTip(none);
    m_coldest_C->entry()->setToolTip(
        tr("Empty where only the warmest counts, as in a freezer below −10 °C."));
    connect(m_place, &QComboBox::activated, this, [this](int index) {
        const auto &known = m_places.at(static_cast<std::size_t>(index));
        for (const auto &[field, limit] :
             {std::pair{m_coldest_C, known.lowest_C}, std::pair{m_warmest_C, known.highest_C}}) {
            field->entry()->clear();
            if (limit)
                field->entry()->setValue(*limit);
        }
    });
}

QLineEdit *LotKeepingForm::addLine(const Theme &theme, const QString &caption, const QString &objectName)
{
    auto *line = new QLineEdit(m_form->parentWidget());
    line->setMinimumHeight(theme.target());
    addFormRow(m_form, caption, line, objectName);
    connect(line, &QLineEdit::returnPressed, this, &LotKeepingForm::returnPressed);
    return line;
}

QComboBox *LotKeepingForm::addBox(const Theme &theme, const QString &caption, const QString &objectName)
{
    auto *box = new QComboBox(m_form->parentWidget());
    box->setEditable(true);
    box->setInsertPolicy(QComboBox::NoInsert);
    box->setMinimumHeight(theme.target());
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(12);
    box->completer()->setFilterMode(Qt::MatchContains);
    box->completer()->setCompletionMode(QCompleter::PopupCompletion);
    box->lineEdit()->setMaxLength(static_cast<int>(assay::maxLabelLength));
    addFormRow(m_form, caption, box, objectName);
    connectEnter(box, this, [this] { Q_EMIT returnPressed(); }, [] {});
    return box;
}

NumberField *LotKeepingForm::addTemperature(const Theme &theme, const QString &caption,
                                            const QString &objectName)
{
    auto *field = new NumberField(theme, u"°C"_s, m_form->parentWidget());
    field->setOneLine();
    addFormRow(m_form, caption, field, objectName);
    connect(field->entry(), &QLineEdit::returnPressed, this, &LotKeepingForm::returnPressed);
    return field;
}

void LotKeepingForm::setLots(const std::vector<planning::Lot> &lots, qint64 own)
{
    m_lots = lots;
    m_solvents.clear();
    m_places = placesOf(lots);
    for (const planning::Lot &lot : lots) {
        if (lot.id != own && lot.remaining_mL > 0)
            m_solvents.emplace_back(
                tr("%1, lot %2 (%3 left)").arg(lot.reagent, lot.lot, lotVolume(lot.remaining_mL)),
                notebook::LotId{lot.id});
    }
    std::ranges::sort(m_solvents, {}, &std::pair<QString, notebook::LotId>::first);
    const auto fill = [](QComboBox *box, const QStringList &offers) {
        const QString typed = box->currentText();
        const QSignalBlocker quiet(box);
        box->clear();
        box->addItems(offers);
        box->setEditText(typed);
        box->lineEdit()->setCursorPosition(0);
    };
    QStringList solvents;
    for (const auto &[words, lot] : m_solvents)
        solvents << words;
    fill(m_solvent, solvents);
    QStringList places;
    for (const planning::StoragePlace &place : m_places)
        places << place.name;
    fill(m_place, places);
}

void LotKeepingForm::show(Subject subject)
{
    m_subject = subject;
    const bool dissolving = subject == Subject::Dissolving;
    const bool dividing = subject == Subject::Dividing;
    showRow(*m_form, m_solvent, dissolving);
    showRow(*m_form, m_count, dividing);
    showRow(*m_form, m_keeps_days, dissolving || dividing);
    showRow(*m_form, m_thawed_days, dividing);
    for (QWidget *field : std::initializer_list<QWidget *>{m_place, m_coldest_C, m_warmest_C})
        showRow(*m_form, field, dividing || subject == Subject::Place);
    const QString caption = dividing ? tr("&Keep as stored (days)") : tr("&Keeps dissolved (days)");
    captionOf(*m_form, m_keeps_days)->setText(caption);
    m_keeps_days->setAccessibleName(QString(caption).remove(u'&'));
}

void LotKeepingForm::reset(const planning::Lot &lot)
{
    for (QLineEdit *line : {m_count, m_solvent->lineEdit(), m_place->lineEdit()})
        line->clear();
    m_coldest_C->entry()->clear();
    m_warmest_C->entry()->clear();
    using Days = std::optional<int>;
    const Days dissolved =
        lastSaidDays(m_lots, lot, [](const planning::Lot &one) -> Days { return one.keepsDissolved_days; });
    const Days stored = lastSaidDays(m_lots, lot, [](const planning::Lot &one) -> Days {
        return one.aliquot ? one.aliquot->keeps_days : std::nullopt;
    });
    m_keeps_days->setText(daysText(lot.isDry ? dissolved : stored));
    // A solution that keeps a fortnight keeps no longer because its bottle would have.
    Days thawed = lot.keepsOpened_days;
    if (lot.keepsDissolved_days && (!thawed || *lot.keepsDissolved_days < *thawed))
        thawed = lot.keepsDissolved_days;
    m_thawed_days->setText(daysText(thawed));
}

bool LotKeepingForm::hasInput() const
{
    return m_subject != Subject::None &&
           !(m_count->text() + m_solvent->currentText() + m_place->currentText()).trimmed().isEmpty();
}

std::optional<notebook::LotDissolving> LotKeepingForm::dissolving(QString &fault) const
{
    notebook::LotDissolving how;
    how.solvent = m_solvent->currentText().simplified();
    if (how.solvent.isEmpty())
        return refuseField(fault, m_solvent,
                           tr("Say in what it was dissolved: choose a container, or key it, such as water."));
    for (const auto &[words, lot] : m_solvents) {
        if (words == m_solvent->currentText())
            how.solventLot = lot;
    }
    how.keeps_days = daysIn(m_keeps_days, tr("Keeps dissolved"), fault);
    return fault.isEmpty() ? std::optional(how) : std::nullopt;
}

std::optional<notebook::LotDivision> LotKeepingForm::division(QString &fault) const
{
    notebook::LotDivision how;
    bool whole = false;
    how.aliquots = m_count->text().trimmed().toInt(&whole);
    if (!whole || how.aliquots < 1)
        return refuseField(fault, m_count, tr("Say how many aliquots there are: a whole number, 1 or more."));
    how.keeps_days = daysIn(m_keeps_days, tr("Keep as stored"), fault);
    if (fault.isEmpty())
        how.keepsOpened_days = daysIn(m_thawed_days, tr("Once thawed"), fault);
    if (fault.isEmpty() && how.keepsOpened_days == 0)
        return refuseField(fault, m_thawed_days,
                           tr("Once thawed: give whole days, 1 or more, or nothing where none is stated."));
    if (fault.isEmpty() && !m_place->currentText().trimmed().isEmpty())
        how.place = place(fault);
    return fault.isEmpty() ? std::optional(how) : std::nullopt;
}

std::optional<planning::StoragePlace> LotKeepingForm::place(QString &fault) const
{
    planning::StoragePlace place;
    place.name = m_place->currentText().simplified();
    if (place.name.isEmpty())
        return refuseField(fault, m_place, tr("Say where it is kept, as freezer 2, upper drawer."));
    for (const auto &[field, limit] :
         {std::pair{m_coldest_C, &place.lowest_C}, std::pair{m_warmest_C, &place.highest_C}}) {
        if (!field->entry()->fault().isEmpty())
            return refuseField(fault, field->entry(), field->entry()->fault());
        *limit = field->entry()->value();
    }
    return place;
}

} // namespace plateau::ui
