// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/runfilterfields.h"

#include "core/assay/localday.h"
#include "core/evaluation/checkfacts.h"
#include "core/evaluation/format.h"
#include "ui/books/lotwords.h"
#include "ui/books/runsmodel.h"
#include "ui/shared/dayexample.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/theme.h"

#include <QComboBox>
#include <QCompleter>
#include <QGridLayout>
#include <QLabel>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr int pairsInARow = 4;
constexpr int namesShown = 24;

void offer(QLineEdit *field, const QStringList &names)
{
    auto *completer = new QCompleter(names, field);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    delete field->completer();
    field->setCompleter(completer);
}

} // namespace

RunFilterFields::RunFilterFields(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins({});
    m_grid->setSpacing(theme.gap());
    m_sample = addText(tr("Sample"), u"findSample"_s);
    m_product = addText(tr("Product"), u"findProduct"_s);
    m_method = addText(tr("Method"), u"findMethod"_s);
    m_person = addText(tr("Person"), u"findPerson"_s);
    m_lot = addText(tr("Lot"), u"findLot"_s);
    m_standard = addText(tr("Standard"), u"findStandard"_s);
    m_from = addText(tr("From"), u"findFrom"_s);
    m_to = addText(tr("To"), u"findTo"_s);
    for (QLineEdit *day : {m_from, m_to})
        showDayExample(*day);
    m_state = addChoice(tr("State"), u"findState"_s);
    m_state->addItem(tr("any"));
    for (const auto state :
         {notebook::RunState::OnBench, notebook::RunState::Accepted, notebook::RunState::Rejected})
        m_state->addItem(stateText(state), static_cast<int>(state));
    m_flag = addChoice(tr("Failed check"), u"findFlag"_s);
    m_flag->addItem(tr("any or none"));
    for (const evaluation::CheckId check : notebook::allChecks())
        m_flag->addItem(evaluation::checkTitle(check), static_cast<int>(check));
    m_measurand = addChoice(tr("Result of"), u"findMeasurand"_s);
    m_measurand->addItem(tr("any"));
    m_least = new NumberEntry(theme, this);
    m_most = new NumberEntry(theme, this);
    m_least->setPlaceholderText(tr("at least"));
    m_most->setPlaceholderText(tr("at most"));
    m_least->setAccessibleName(tr("Result at least"));
    m_most->setAccessibleName(tr("Result at most"));
    m_least->setObjectName(u"findLeast"_s);
    m_most->setObjectName(u"findMost"_s);
    auto *range = new QHBoxLayout;
    range->addWidget(m_least);
    range->addWidget(m_most);
    m_grid->addLayout(range, m_fields / pairsInARow, 2 * (m_fields % pairsInARow), 1, 2);
    for (NumberEntry *entry : {m_least, m_most}) {
        entry->setMinimumHeight(theme.target());
        connect(entry, &NumberEntry::judged, this, &RunFilterFields::changed);
    }
    for (int pair = 0; pair < pairsInARow; ++pair)
        m_grid->setColumnStretch(2 * pair + 1, 1);
}

QLineEdit *RunFilterFields::addText(const QString &caption, const QString &objectName)
{
    auto *field = new QLineEdit(this);
    field->setClearButtonEnabled(true);
    add(caption, field, objectName);
    connect(field, &QLineEdit::textChanged, this, &RunFilterFields::changed);
    return field;
}

QComboBox *RunFilterFields::addChoice(const QString &caption, const QString &objectName)
{
    auto *field = new QComboBox(this);
    field->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    field->setMinimumContentsLength(namesShown / 2);
    add(caption, field, objectName);
    connect(field, &QComboBox::currentIndexChanged, this, &RunFilterFields::changed);
    return field;
}

void RunFilterFields::add(const QString &caption, QWidget *field, const QString &objectName)
{
    auto *label = new QLabel(caption, this);
    label->setBuddy(field);
    field->setObjectName(objectName);
    field->setAccessibleName(caption);
    field->setMinimumHeight(m_theme.target());
    const int row = m_fields / pairsInARow;
    const int column = 2 * (m_fields % pairsInARow);
    m_grid->addWidget(label, row, column);
    m_grid->addWidget(field, row, column + 1);
    ++m_fields;
}

void RunFilterFields::setChoices(const Choices &choices)
{
    offer(m_method, choices.methods);
    offer(m_person, choices.persons);
    offer(m_product, choices.products);
    if (m_measurands == choices.measurands)
        return;
    const notebook::RunFilter kept = filter();
    const QSignalBlocker quiet(m_measurand);
    m_measurands = choices.measurands;
    while (m_measurand->count() > 1)
        m_measurand->removeItem(1);
    for (const notebook::KnownMeasurand &known : m_measurands)
        m_measurand->addItem(tr("%1 in %2").arg(known.measurand, known.unit));
    if (kept.value) {
        const auto at = std::ranges::find(m_measurands,
                                          notebook::KnownMeasurand{kept.value->measurand, kept.value->unit});
        m_measurand->setCurrentIndex(
            at == m_measurands.end() ? 0 : static_cast<int>(at - m_measurands.begin()) + 1);
    }
}

std::optional<QDate> RunFilterFields::dayIn(const QLineEdit *field, assay::MonthAlone month) const
{
    return assay::readDay(field->text(), month);
}

notebook::RunFilter RunFilterFields::filter() const
{
    notebook::RunFilter filter;
    filter.sample = m_sample->text();
    filter.product = m_product->text();
    filter.method = m_method->text();
    filter.person = m_person->text();
    filter.lot = m_lot->text();
    filter.standard = m_standard->text();
    filter.from = dayIn(m_from, assay::MonthAlone::FirstDay);
    filter.to = dayIn(m_to, assay::MonthAlone::LastDay);
    if (m_state->currentIndex() > 0)
        filter.state = static_cast<notebook::RunState>(m_state->currentData().toInt());
    if (m_flag->currentIndex() > 0)
        filter.flag = static_cast<evaluation::CheckId>(m_flag->currentData().toInt());
    if (m_measurand->currentIndex() > 0) {
        const notebook::KnownMeasurand &known =
            m_measurands[static_cast<std::size_t>(m_measurand->currentIndex() - 1)];
        filter.value = notebook::ValueRange{known.measurand, known.unit, m_least->value(), m_most->value()};
    }
    return filter;
}

void RunFilterFields::setFilter(const notebook::RunFilter &filter)
{
    const QSignalBlocker quiet(this);
    m_sample->setText(filter.sample);
    m_product->setText(filter.product);
    m_method->setText(filter.method);
    m_person->setText(filter.person);
    m_lot->setText(filter.lot);
    m_standard->setText(filter.standard);
    m_from->setText(dayText(filter.from));
    m_to->setText(dayText(filter.to));
    m_state->setCurrentIndex(filter.state ? m_state->findData(static_cast<int>(*filter.state)) : 0);
    m_flag->setCurrentIndex(filter.flag ? m_flag->findData(static_cast<int>(*filter.flag)) : 0);
    m_measurand->setCurrentIndex(0);
    m_least->clear();
    m_most->clear();
    if (!filter.value)
        return;
    const notebook::KnownMeasurand wanted{filter.value->measurand, filter.value->unit};
    const auto at = std::ranges::find(m_measurands, wanted);
    if (at == m_measurands.end())
        return;
    m_measurand->setCurrentIndex(static_cast<int>(at - m_measurands.begin()) + 1);
    if (filter.value->least)
        m_least->setValue(*filter.value->least);
    if (filter.value->most)
        m_most->setValue(*filter.value->most);
}

QString RunFilterFields::fault() const
{
    for (const QLineEdit *day : {m_from, m_to}) {
        const auto parsed = parseDay(day->text());
        if (std::holds_alternative<DayFault>(parsed) && std::get<DayFault>(parsed) == DayFault::NotADay)
            return tr("%1: %2").arg(day->accessibleName(),
                                    evaluation::afterColon(dayFaultSentence(
                                        DayFault::NotADay, day == m_from ? assay::MonthAlone::FirstDay : assay::MonthAlone::LastDay)));
    }
    for (const NumberEntry *entry : {m_least, m_most}) {
        if (!entry->fault().isEmpty())
            return tr("%1: %2").arg(entry->accessibleName(), evaluation::afterColon(entry->fault()));
    }
    const notebook::RunFilter asked = filter();
    if (asked.from && asked.to && *asked.from > *asked.to)
        return tr("The first day is after the last, so no run can be found: exchange them.");
    if (!asked.value && (m_least->value() || m_most->value()))
        return tr("Choose what the result is for, so that its value counts.");
    return {};
}

} // namespace plateau::ui
