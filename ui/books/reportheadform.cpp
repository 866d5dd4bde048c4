// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/reportheadform.h"

#include "ui/books/logofield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ReportHeadForm::ReportHeadForm(const Theme &theme, Dialogs &dialogs, QWidget *parent)
    : LaboratorySection(
          theme, tr("Name and report head"),
          tr("These stand at the head of every report. What is left empty becomes a line to write on."),
          parent)
    , m_name(new QLineEdit(this))
    , m_address(new QPlainTextEdit(this))
    , m_contact(new QLineEdit(this))
    , m_logo(new LogoField(theme, dialogs, this))
{
    m_address->setTabChangesFocus(true);
    m_address->setFixedHeight(m_address->fontMetrics().lineSpacing() * 4 + 2 * m_address->frameWidth() +
                              static_cast<int>(2 * m_address->document()->documentMargin()));
    m_contact->setPlaceholderText(tr("telephone, e-mail, a person"));
    for (QLineEdit *edit : {m_name, m_contact}) {
        edit->setMinimumHeight(theme.target());
        connect(edit, &QLineEdit::textChanged, this, &ReportHeadForm::edited);
    }
    connect(m_address, &QPlainTextEdit::textChanged, this, &ReportHeadForm::edited);
    connect(m_logo, &LogoField::changed, this, &ReportHeadForm::edited);
    QFormLayout *form = addForm();
    addField(form, tr("N&ame of the laboratory"), m_name, u"laboratoryName"_s);
    addField(form, tr("Address, line by line"), m_address, u"laboratoryAddress"_s);
    addField(form, tr("Contact, one line"), m_contact, u"laboratoryContact"_s);
    addField(form, tr("Logo"), m_logo, u"loadLogo"_s);
    m_logo->focusProxy()->setAccessibleName({}); // a button is known by its own words
    body()->addStretch(1); // all that is left: a form of many lines would share it
}

void ReportHeadForm::load(const LaboratoryDraft &draft)
{
    m_name->setText(draft.name);
    m_address->setPlainText(draft.address);
    m_contact->setText(draft.contact);
    m_logo->setLogo(draft.logo);
}

void ReportHeadForm::store(LaboratoryDraft &draft) const
{
    draft.name = m_name->text();
    draft.address = m_address->toPlainText();
    draft.contact = m_contact->text();
    draft.logo = m_logo->logo();
}

} // namespace plateau::ui
