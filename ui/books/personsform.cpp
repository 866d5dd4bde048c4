// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/personsform.h"

#include "ui/books/personswords.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QHideEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using notebook::Person;
using notebook::PersonRole;

PersonsForm::PersonsForm(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_group(new QGroupBox(this))
    , m_form(new QFormLayout(m_group))
{
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_group);
    layout->addStretch(1);
    build();
}

QLineEdit *PersonsForm::addLine(const QString &caption, const QString &objectName, bool secret)
{
    auto *line = new QLineEdit(m_group);
    line->setMinimumHeight(m_theme.target());
    if (secret)
        line->setEchoMode(QLineEdit::Password);
    addFormRow(m_form, caption, line, objectName);
    connect(line, &QLineEdit::returnPressed, this, &PersonsForm::store);
    return line;
}

QComboBox *PersonsForm::addBox(const QString &caption, const QString &objectName)
{
    auto *box = new QComboBox(m_group);
    box->setMinimumHeight(m_theme.target());
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(18); // a long name widens no form
    addFormRow(m_form, caption, box, objectName);
    return box;
}

void PersonsForm::build()
{
    m_what = addBox(tr("Wh&at"), u"personsAct"_s);
    m_of = new ElidingLabel(m_group);
    m_of->setObjectName(u"personsChosen"_s);
    m_form->addRow(tr("Person"), m_of);
    m_name = addLine(tr("Na&me"), u"personName"_s, false);
    m_role = addBox(tr("Ro&le"), u"personRole"_s);
    for (const PersonRole role : {PersonRole::Analyst, PersonRole::Reviewer, PersonRole::Head})
        m_role->addItem(personRoleText(role), static_cast<int>(role));
    m_meaning = plainLabel({}, m_group);
    m_meaning->setObjectName(u"personRoleMeaning"_s);
    m_meaning->setWordWrap(true);
    m_form->addRow(QString(), m_meaning);
    m_passphrase = addLine(tr("N&ew passphrase"), u"personPassphrase"_s, true);
    m_again = addLine(tr("Repea&t passphrase"), u"personPassphraseAgain"_s, true);
    m_advice = plainLabel(tr("At least 8 characters; several words that only its owner would put together "
                             "make a good one. Its owner types it."),
                          m_group);
    m_advice->setWordWrap(true);
    m_form->addRow(QString(), m_advice);
    m_reason = addLine(tr("&Reason"), u"personReason"_s, false);
    m_signer = addBox(tr("Signed b&y"), u"personSigner"_s);
    m_proof = addLine(tr("S&igner's passphrase"), u"personProof"_s, true);
    m_store = button(m_theme, tr("&Store it"), u"storePerson"_s, m_group);
    m_form->addRow(QString(), m_store);
    connect(m_what, &QComboBox::currentIndexChanged, this, &PersonsForm::showFields);
    connect(m_role, &QComboBox::currentIndexChanged, this, &PersonsForm::sayRole);
    connect(m_signer, &QComboBox::currentIndexChanged, this, [this] { m_proof->setText({}); });
    connect(m_store, &QPushButton::clicked, this, &PersonsForm::store);
    offerActs();
}

const Person *PersonsForm::chosen() const
{
    const auto found = std::ranges::find_if(
        m_persons, [this](const Person &person) { return m_chosen && person.id == *m_chosen; });
    return found == m_persons.end() ? nullptr : &*found;
}

PersonsAct::Kind PersonsForm::kind() const
{
    return m_persons.empty() ? Kind::First : static_cast<Kind>(m_what->currentData().toInt());
}

PersonRole PersonsForm::role() const
{
    return static_cast<PersonRole>(m_role->currentData().toInt());
}

void PersonsForm::setPersons(const std::vector<Person> &persons, const QString &atBench)
{
    m_persons = persons;
    m_atBench = atBench;
    offerActs();
    if (kind() == Kind::First && m_name->text().isEmpty())
        m_name->setText(atBench);
}

void PersonsForm::setChosen(std::optional<notebook::PersonId> person)
{
    if (person == m_chosen)
        return;
    m_chosen = person;
    offerActs();
}

void PersonsForm::offerActs()
{
    const Kind before = kind();
    {
        const QSignalBlocker quiet(m_what);
        m_what->clear();
        const auto offer = [this](Kind kind, const QString &words) {
            m_what->addItem(words, static_cast<int>(kind));
        };
        offer(Kind::Add, tr("Add a person"));
        if (const Person *person = chosen(); person && person->retired) {
            offer(Kind::Reinstate, tr("Reinstate"));
        } else if (person) {
            offer(Kind::Change, tr("Change name or role"));
            offer(Kind::Passphrase, tr("Set another passphrase"));
            offer(Kind::Retire, tr("Retire"));
        }
        m_what->setCurrentIndex(std::max(0, m_what->findData(static_cast<int>(before))));
    }
    showFields();
}

void PersonsForm::offerSigners()
{
    const QSignalBlocker quiet(m_signer);
    const QString before = m_signer->currentText();
    m_signer->clear();
    const bool ownerToo = kind() == Kind::Passphrase;
    for (const Person &person : m_persons) {
        const bool owner = ownerToo && m_chosen && person.id == *m_chosen;
        if (!person.retired && (owner || person.role == PersonRole::Head))
            m_signer->addItem(person.name);
    }
    const Person *of = chosen();
    for (const QString &wanted : {ownerToo && of ? of->name : before, m_atBench}) {
        const int at = m_signer->findText(wanted, Qt::MatchFixedString);
        if (at < 0)
            continue;
        m_signer->setCurrentIndex(at);
        break;
    }
    if (m_signer->currentText() != before)
        m_proof->setText({});
}

void PersonsForm::showFields()
{
    const Kind now = kind();
    const Person *person = chosen();
    const bool first = now == Kind::First;
    const bool names = first || now == Kind::Add || now == Kind::Change;
    const bool secret = first || now == Kind::Add || now == Kind::Passphrase;
    m_group->setTitle(first ? tr("The first person") : tr("Change the list"));
    m_store->setText(first ? tr("&Set up people") : tr("&Store it"));
    showRow(*m_form, m_what, !first);
    showRow(*m_form, m_of, !first && now != Kind::Add);
    showRow(*m_form, m_name, names);
    showRow(*m_form, m_role, now == Kind::Add || now == Kind::Change);
    showRow(*m_form, m_meaning, names);
    showRow(*m_form, m_passphrase, secret);
    showRow(*m_form, m_again, secret);
    showRow(*m_form, m_advice, secret);
    showRow(*m_form, m_reason, now == Kind::Retire || now == Kind::Reinstate);
    showRow(*m_form, m_signer, !first);
    showRow(*m_form, m_proof, !first);
    m_of->setText(person ? tr("%1, %2").arg(person->name, personRoleText(person->role)) : QString());
    if (now == Kind::Change && person) {
        m_name->setText(person->name);
        m_role->setCurrentIndex(m_role->findData(static_cast<int>(person->role)));
    } else if (now != Kind::First && now != Kind::Add) {
        m_name->setText({});
    }
    offerSigners();
    sayRole();
}

void PersonsForm::sayRole()
{
    m_meaning->setText(kind() == Kind::First ? tr("Is the head, who signs decisions and keeps this list.")
                                             : personRoleMeaning(role()));
}

bool PersonsForm::hasUnsavedChanges() const
{
    const bool secret = !m_passphrase->text().isEmpty() || !m_again->text().isEmpty();
    const Person *person = chosen();
    switch (kind()) {
    case Kind::First:
        return secret;
    case Kind::Add:
        return secret || !m_name->text().trimmed().isEmpty();
    case Kind::Change:
        return person && (m_name->text() != person->name || role() != person->role);
    case Kind::Passphrase:
        return secret;
    default:
        return !m_reason->text().trimmed().isEmpty();
    }
}

void PersonsForm::takeFocus()
{
    if (kind() == Kind::First)
        (m_name->text().isEmpty() ? m_name : m_passphrase)->setFocus();
    else
        m_what->setFocus();
}

void PersonsForm::clearPassphrases()
{
    // Not clear(): that could be taken back.
    for (QLineEdit *secret : {m_passphrase, m_again, m_proof})
        secret->setText({});
}

void PersonsForm::markStored()
{
    clearPassphrases();
    m_name->setText({});
    m_reason->setText({});
    m_role->setCurrentIndex(0);
    {
        const QSignalBlocker quiet(m_what);
        m_what->setCurrentIndex(0);
    }
    showFields();
}

void PersonsForm::askProofAgain()
{
    m_proof->setText({});
    if (kind() != Kind::First)
        m_proof->setFocus();
}

void PersonsForm::hideEvent(QHideEvent *event)
{
    QWidget::hideEvent(event);
    if (!event->spontaneous())
        clearPassphrases();
}

void PersonsForm::ask(QWidget *field, const QString &sentence)
{
    field->setFocus();
    Q_EMIT complained(sentence);
}

bool PersonsForm::passphraseIsSound()
{
    if (const auto fault = notebook::passphraseFault(m_passphrase->text())) {
        ask(m_passphrase, tr("This passphrase cannot be used: %1.").arg(*fault));
        return false;
    }
    if (m_passphrase->text() == m_again->text())
        return true;
    m_passphrase->setText({});
    m_again->setText({});
    ask(m_passphrase, tr("The two new passphrases differ: type the new one again, and once more below it."));
    return false;
}

void PersonsForm::store()
{
    PersonsAct act;
    act.kind = kind();
    act.name = m_name->text().simplified();
    act.role = act.kind == Kind::First ? PersonRole::Head : role();
    act.reason = m_reason->text().simplified();
    const Person *person = chosen();
    if (person)
        act.person = person->id;
    if (m_name->isVisibleTo(this) && act.name.isEmpty())
        return ask(m_name, tr("Say who it is: the name that stands beside what is signed."));
    if (m_passphrase->isVisibleTo(this) && !passphraseIsSound())
        return;
    if (m_reason->isVisibleTo(this) && act.reason.isEmpty())
        return ask(m_reason, tr("Say why: the reason stands in the record."));
    if (act.kind != Kind::First) {
        if (m_proof->text().isEmpty())
            return ask(m_proof, tr("It needs the passphrase of %1: type it.").arg(m_signer->currentText()));
        act.proof = {m_signer->currentText(), m_proof->text()};
    }
    if (act.kind == Kind::First || act.kind == Kind::Add || act.kind == Kind::Passphrase)
        act.passphrase = m_passphrase->text();
    Q_EMIT wanted(act);
}

} // namespace plateau::ui
