// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/receiveview.h"

#include "ui/books/lotlabelform.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/offerfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ReceiveView::ReceiveView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_notice(new Notice(theme, this))
{
    auto *heading = plainLabel(tr("Receive a container"), this);
    heading->setFont(theme.large());
    auto *back = button(theme, tr("Back to the list  Esc"), u"backFromReceive"_s, this);
    auto *head = new QHBoxLayout;
    head->addWidget(heading, 1);
    head->addWidget(back);
    auto *how = plainLabel(tr("Each bottle has a line of its own in the book; water and buffers count too. "
                              "Name the reagent as the methods do, so that plans find it."),
                           this);
    how->setWordWrap(true);
    auto *host = new QWidget(this);
    m_form = new QFormLayout(host);
    m_form->setContentsMargins({});
    m_dry = new QCheckBox(tr("It is dr&y and will be dissolved"), this);
    m_dry->setMinimumHeight(theme.target());
    m_dry->setObjectName(u"receivedDry"_s);
    m_form->addRow(QString(), m_dry);
    m_label = new LotLabelForm(theme, m_form, u"received"_s);
    // Made after the label's fields, for that is the order of the Tab key.
    m_volume_mL = new NumberField(theme, u"mL"_s, this);
    addFormRow(m_form, tr("Vol&ume in it (mL)"), m_volume_mL, u"receivedVolume"_s);
    m_mass_mg = new NumberField(theme, u"mg"_s, this);
    addFormRow(m_form, tr("&Mass in it (mg, may be empty)"), m_mass_mg, u"receivedMass"_s);
    m_place = new OfferField(this);
    m_place->setMinimumHeight(theme.target());
    addFormRow(m_form, tr("Storage place (may be empty)"), m_place, u"receivedPlace"_s);
    m_volume_mL->setOneLine();
    m_mass_mg->setOneLine();
    showFields();
    auto *store = button(theme, tr("&Store it in the book"), u"storeReceipt"_s, this);
    auto *row = new QHBoxLayout;
    row->addWidget(store);
    row->addStretch(1);
    host->setMaximumWidth(fontMetrics().averageCharWidth() * 90);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addLayout(head);
    layout->addWidget(how);
    layout->addWidget(m_notice);
    layout->addWidget(host);
    layout->addLayout(row);
    layout->addStretch(1);
    connect(back, &QPushButton::clicked, this, &ReceiveView::closed);
    connect(store, &QPushButton::clicked, this, &ReceiveView::receive);
    connect(m_label, &LotLabelForm::returnPressed, this, &ReceiveView::receive);
    connect(m_volume_mL->entry(), &QLineEdit::returnPressed, this, &ReceiveView::receive);
    connect(m_mass_mg->entry(), &QLineEdit::returnPressed, this, &ReceiveView::receive);
    connect(m_place, &QLineEdit::returnPressed, this, &ReceiveView::receive);
    connect(m_dry, &QCheckBox::toggled, this, &ReceiveView::showFields);
    connect(m_dry, &QCheckBox::toggled, this, &ReceiveView::dropAnsweredFault);
    connect(m_label, &LotLabelForm::edited, this, &ReceiveView::dropAnsweredFault);
    connect(m_volume_mL->entry(), &NumberEntry::judged, this, &ReceiveView::dropAnsweredFault);
    connect(m_mass_mg->entry(), &NumberEntry::judged, this, &ReceiveView::dropAnsweredFault);
}

void ReceiveView::setReagents(const QStringList &names)
{
    m_label->setReagents(names);
}

void ReceiveView::setPlaces(std::vector<planning::StoragePlace> known)
{
    m_places = std::move(known);
    QStringList names;
    for (const planning::StoragePlace &place : m_places)
        names << place.name;
    m_place->setOffers(names);
}

std::optional<planning::StoragePlace> ReceiveView::place() const
{
    const QString name = m_place->text().simplified();
    if (name.isEmpty())
        return std::nullopt;
    const auto known = std::ranges::find_if(m_places, [&](const planning::StoragePlace &place) {
        return place.name.compare(name, Qt::CaseInsensitive) == 0;
    });
    return known == m_places.end() ? planning::StoragePlace{name} : *known;
}

void ReceiveView::takeFocus()
{
    m_label->takeFocus();
}

bool ReceiveView::hasUnsavedChanges() const
{
    return !(m_dry->isChecked() ? m_mass_mg : m_volume_mL)->entry()->isBlank();
}

void ReceiveView::markReceived(State state, const QString &sentence)
{
    m_volume_mL->entry()->clear();
    m_mass_mg->entry()->clear();
    m_notice->say(state, sentence);
    m_label->focusLot();
}

void ReceiveView::receive()
{
    m_saidFault.clear();
    const auto label = m_label->label(m_saidFault);
    QWidget *where = nullptr;
    if (label)
        m_saidFault = faultOfAmount(where);
    if (where)
        where->setFocus();
    if (!m_saidFault.isEmpty()) {
        m_notice->say(State::Attention, m_saidFault);
        return;
    }
    m_notice->clear();
    if (m_dry->isChecked())
        Q_EMIT receivedDry(*label, m_mass_mg->entry()->value());
    else
        Q_EMIT received(*label, *m_volume_mL->entry()->value());
}

QString ReceiveView::faultOfAmount(QWidget *&where) const
{
    const NumberEntry *volume = m_volume_mL->entry();
    const NumberEntry *mass = m_mass_mg->entry();
    if (m_dry->isChecked()) {
        where = mass->fault().isEmpty() ? nullptr : m_mass_mg->entry();
        return mass->fault();
    }
    where = volume->value() ? nullptr : m_volume_mL->entry();
    return volume->value() ? QString() : tr("Say how much is in it, in mL.");
}

QString ReceiveView::fault() const
{
    QWidget *where = nullptr;
    const QString ofLabel = m_label->fault();
    return ofLabel.isEmpty() ? faultOfAmount(where) : ofLabel;
}

void ReceiveView::dropAnsweredFault()
{
    if (m_saidFault.isEmpty() || fault() == m_saidFault)
        return;
    if (m_notice->sentence() == m_saidFault)
        m_notice->clear();
    m_saidFault.clear();
}

void ReceiveView::showFields()
{
    showRow(*m_form, m_volume_mL, !m_dry->isChecked());
    showRow(*m_form, m_mass_mg, m_dry->isChecked());
    m_label->askForDissolved(m_dry->isChecked());
}

void ReceiveView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
