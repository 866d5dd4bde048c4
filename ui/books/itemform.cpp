// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/itemform.h"

#include "core/assay/label.h"
#include "core/evaluation/format.h"
#include "ui/books/equipmentwords.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/numberreader.h"
#include "ui/shared/offerfield.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <algorithm>
#include <array>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using equipment::Aspect;
using equipment::Kind;

/// Common practice, no source.
int usualDays(Aspect aspect)
{
    switch (aspect) {
    case Aspect::Wavelength:
    case Aspect::Absorbance:
        return 365;
    case Aspect::Noise:
        return 30;
    case Aspect::Weighing:
        return 30;
    case Aspect::Volume:
        return 90;
    default:
        return 365;
    }
}

constexpr std::array everyAspect{Aspect::Wavelength, Aspect::Absorbance,  Aspect::Noise, Aspect::Volume,
                                 Aspect::Weighing,   Aspect::Temperature, Aspect::Match};

bool isPistonOf(const planning::Pipette &pipette)
{
    return pipette.smallest_mL < pipette.largest_mL;
}

} // namespace

ItemForm::ItemForm(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_heading(plainLabel({}, this))
    , m_kind(new QComboBox(this))
    , m_name(new OfferField(this))
    , m_number(new QLineEdit(this))
    , m_nominal_mL(new NumberField(theme, u"mL"_s, this))
    , m_smallest_mL(new NumberField(theme, u"mL"_s, this))
    , m_inUse(new QCheckBox(tr("It &is in use"), this))
    , m_reason(new QLineEdit(this))
    , m_notice(new Notice(theme, this))
{
    m_heading->setFont(theme.large());
    auto *back = button(theme, tr("Back  Esc"), u"backFromItem"_s, this);
    auto *head = new QHBoxLayout;
    head->addWidget(m_heading, 1);
    head->addWidget(back);
    auto *how = plainLabel(
        tr("Give pipettes, flasks and the photometer the names they have in Laboratory: what a check finds "
           "then replaces the list's uncertainty, and a run that used one which failed or was overdue says so."),
        this);
    how->setWordWrap(true);
    auto *host = new QWidget(this);
    m_form = new QFormLayout(host);
    m_form->setContentsMargins({});
    for (const Kind known : equipment::allKinds())
        m_kind->addItem(evaluation::capitalised(equipment::kindName(known)), static_cast<int>(known));
    for (QWidget *line : std::initializer_list<QWidget *>{m_kind, m_name, m_number, m_inUse, m_reason})
        line->setMinimumHeight(theme.target());
    m_name->setMaxLength(static_cast<int>(assay::maxLabelLength));
    addFormRow(m_form, tr("&What it is"), m_kind, u"itemKind"_s);
    addFormRow(m_form, tr("N&ame"), m_name, u"itemName"_s);
    addFormRow(m_form, tr("Serial or inventory n&umber"), m_number, u"itemNumber"_s);
    addFormRow(m_form, tr("Volume, or the &largest (mL)"), m_nominal_mL, u"itemNominal"_s);
    addFormRow(m_form, tr("S&mallest volume it is used for (mL)"), m_smallest_mL, u"itemSmallest"_s);
    for (const Aspect aspect : everyAspect) {
        auto *days = new QLineEdit(host);
        days->setMinimumHeight(theme.target());
        days->setToolTip(tr("Whole days; empty where this is not checked."));
        addFormRow(m_form, tr("Check %1 every (days)").arg(equipment::aspectName(aspect)), days,
                   u"every_"_s + equipment::aspectWord(aspect));
        connect(days, &QLineEdit::returnPressed, this, &ItemForm::store);
        m_days[aspect] = days;
    }
    m_inUse->setObjectName(u"itemInUse"_s);
    m_form->addRow(QString(), m_inUse);
    addFormRow(m_form, tr("&Reason for the change"), m_reason, u"itemReason"_s);
    auto *keep = button(theme, tr("&Store it in the book"), u"storeItem"_s, this);
    auto *row = new QHBoxLayout;
    row->addWidget(keep);
    row->addStretch(1);
    host->setMaximumWidth(fontMetrics().averageCharWidth() * 100);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addLayout(head);
    layout->addWidget(how);
    layout->addWidget(m_notice);
    layout->addWidget(host);
    layout->addLayout(row);
    layout->addStretch(1);
    connect(back, &QPushButton::clicked, this, &ItemForm::closed);
    connect(keep, &QPushButton::clicked, this, &ItemForm::store);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &ItemForm::showFields);
    connect(m_name, &QLineEdit::textChanged, this, &ItemForm::takeFromList);
    for (QLineEdit *line : std::initializer_list<QLineEdit *>{m_number, m_nominal_mL->entry(),
                                                              m_smallest_mL->entry(), m_reason})
        connect(line, &QLineEdit::returnPressed, this, &ItemForm::store);
    startNew();
}

Kind ItemForm::kind() const
{
    return static_cast<Kind>(m_kind->currentData().toInt());
}

void ItemForm::setLaboratory(const planning::Laboratory &laboratory)
{
    m_laboratory = laboratory;
    showFields();
}

void ItemForm::showFields()
{
    QStringList names;
    if (kind() == Kind::Photometer && m_laboratory.photometer)
        names << m_laboratory.photometer->name;
    for (const planning::Pipette &pipette : m_laboratory.glassware.pipettes) {
        if (kind() == (isPistonOf(pipette) ? Kind::PistonPipette : Kind::BulbPipette))
            names << pipette.name;
    }
    for (const planning::Flask &flask : m_laboratory.glassware.flasks) {
        if (kind() == Kind::Flask)
            names << flask.name;
    }
    m_name->setOffers(names);
    showRow(*m_form, m_nominal_mL, equipment::holdsVolume(kind()));
    showRow(*m_form, m_smallest_mL, kind() == Kind::PistonPipette);
    const std::vector<Aspect> possible = equipment::aspectsOf(kind());
    for (const auto &[aspect, days] : m_days) {
        const bool asked = std::ranges::find(possible, aspect) != possible.end();
        showRow(*m_form, days, asked);
        if (asked && !m_changed && days->text().isEmpty())
            days->setText(QString::number(usualDays(aspect)));
    }
    showRow(*m_form, m_inUse, m_changed.has_value());
    showRow(*m_form, m_reason, m_changed.has_value());
}

void ItemForm::takeFromList()
{
    if (m_changed)
        return;
    for (const planning::Pipette &pipette : m_laboratory.glassware.pipettes) {
        if (pipette.name != m_name->text() || kind() == Kind::Flask)
            continue;
        m_nominal_mL->entry()->setValue(pipette.largest_mL);
        m_smallest_mL->entry()->setValue(pipette.smallest_mL);
    }
    for (const planning::Flask &flask : m_laboratory.glassware.flasks) {
        if (flask.name == m_name->text() && kind() == Kind::Flask)
            m_nominal_mL->entry()->setValue(flask.volume_mL);
    }
}

void ItemForm::fill(const equipment::Item &item)
{
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(item.kind)));
    m_name->setText(item.name);
    m_number->setText(item.number);
    m_nominal_mL->entry()->clear();
    m_smallest_mL->entry()->clear();
    if (item.nominal_mL > 0)
        m_nominal_mL->entry()->setValue(item.nominal_mL);
    if (item.smallest_mL > 0)
        m_smallest_mL->entry()->setValue(item.smallest_mL);
    for (const auto &[aspect, days] : m_days) {
        const auto every = item.every_days.find(aspect);
        days->setText(every == item.every_days.end() ? QString() : QString::number(every->second));
    }
    m_inUse->setChecked(item.inUse);
    m_reason->clear();
    showFields();
}

void ItemForm::startNew()
{
    m_changed.reset();
    m_before = {};
    m_kind->setEnabled(true);
    m_heading->setText(tr("Add an item"));
    m_notice->clear();
    const Kind last = kind(); // the next one is often of the same kind
    equipment::Item blank;
    blank.kind = last;
    fill(blank);
}

void ItemForm::startChange(const equipment::HeldItem &held)
{
    m_changed = held.id;
    m_before = held.item;
    m_kind->setEnabled(false);
    m_heading->setText(tr("Change %1").arg(held.item.name));
    m_notice->clear();
    fill(held.item);
}

equipment::Item ItemForm::keyed(assay::Problems &problems) const
{
    const NumberReader reader(problems);
    equipment::Item item;
    item.kind = kind();
    item.name = m_name->text().simplified();
    item.number = m_number->text().simplified();
    if (equipment::holdsVolume(item.kind))
        item.nominal_mL = reader.number(m_nominal_mL->entry()->text(), u"/nominal_mL"_s);
    if (item.kind == Kind::PistonPipette)
        item.smallest_mL = reader.number(m_smallest_mL->entry()->text(), u"/smallest_mL"_s);
    for (const Aspect aspect : equipment::aspectsOf(item.kind)) {
        const QString text = m_days.at(aspect)->text();
        if (!text.trimmed().isEmpty())
            item.every_days[aspect] = reader.whole(text, u"/every_days/"_s + equipment::aspectWord(aspect));
    }
    item.inUse = !m_changed || m_inUse->isChecked();
    return item;
}

bool ItemForm::hasUnsavedChanges() const
{
    if (!m_changed)
        return !m_name->text().trimmed().isEmpty();
    assay::Problems problems;
    return keyed(problems) != m_before || !m_reason->text().trimmed().isEmpty();
}

void ItemForm::markStored()
{
    m_reason->clear();
    startNew();
}

void ItemForm::takeFocus()
{
    if (m_changed)
        m_name->setFocus();
    else
        m_kind->setFocus();
}

void ItemForm::store()
{
    assay::Problems problems;
    const equipment::Item item = keyed(problems);
    const assay::Problems more = equipment::problemsOf(item);
    if (problems.empty())
        problems = more;
    if (!problems.empty()) {
        m_notice->say(State::Attention, placedSentence(problems.front()));
        const QString first = problems.front().pointer;
        if (first == "/nominal_mL"_L1)
            m_nominal_mL->entry()->setFocus();
        else if (first == "/smallest_mL"_L1)
            m_smallest_mL->entry()->setFocus();
        else if (first.startsWith("/every_days"_L1))
            m_days.at(equipment::aspectsOf(item.kind).front())->setFocus();
        else
            m_name->setFocus();
        return;
    }
    if (m_changed && m_reason->text().trimmed().isEmpty()) {
        m_notice->say(State::Attention, tr("Say why it is changed; the book keeps it."));
        m_reason->setFocus();
        return;
    }
    m_notice->clear();
    Q_EMIT wanted(item, m_reason->text().simplified());
}

void ItemForm::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
