// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/personspage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/personsform.h"
#include "ui/books/personsmodel.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using Kind = PersonsAct::Kind;

QString storedSentence(const PersonsAct &act)
{
    switch (act.kind) {
    case Kind::First:
        return PersonsPage::tr("People are set up: from now on decisions are signed. Add a second head, so "
                               "that a lost passphrase can be replaced.");
    case Kind::Add:
        return PersonsPage::tr("%1 is on the list.").arg(act.name);
    case Kind::Change:
        return PersonsPage::tr("%1 is changed; what was signed keeps the name and role of its time.")
            .arg(act.name);
    case Kind::Passphrase:
        return PersonsPage::tr("The new passphrase holds from now on.");
    case Kind::Retire:
        return PersonsPage::tr("Retired; what was signed stays.");
    case Kind::Reinstate:
        break;
    }
    return PersonsPage::tr("Reinstated, with the passphrase as it was.");
}

} // namespace

PersonsPage::PersonsPage(const Theme &theme, const BenchSession &session, Stores &stores, QWidget *parent)
    : BookPage(parent)
    , m_session(session)
    , m_stores(stores)
    , m_model(new PersonsModel(theme, this))
    , m_notice(new Notice(theme, this))
    , m_intro(plainLabel(tr("Decisions are signed by these people, each with a passphrase. Choose one to "
                            "change; every change is signed."),
                         this))
    , m_empty(plainLabel(
          tr("Nobody is set up yet.\n\nUntil then a decision carries the name that was typed and is "
             "unsigned, and reports say so. From the first person on, every decision on a run, and every "
             "choice of the result that is reported, is signed with a passphrase; there is no way back to "
             "unsigned decisions.\n\nThe first person is the head, who adds the others. Passphrases are kept "
             "only as a hash: nobody can look one up, and a head replaces one that is lost."),
          this))
    , m_table(new Table(theme, m_model, tr("People"), u"persons"_s, this))
    , m_form(new PersonsForm(theme, this))
{
    auto *heading = plainLabel(tr("People"), this);
    heading->setFont(theme.large());
    m_intro->setWordWrap(true);
    m_empty->setObjectName(u"personsEmpty"_s);
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setFlexibleColumn(PersonsModel::Name);
    auto *left = new QVBoxLayout;
    left->addWidget(m_intro);
    left->addWidget(m_empty, 1);
    left->addWidget(m_table, 1);
    auto *body = new QHBoxLayout;
    body->setSpacing(theme.wideGap());
    body->addLayout(left, 3);
    body->addWidget(m_form, 2);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(heading);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) { chooseRow(current.row()); });
    connect(m_table, &Table::activated, m_form, &PersonsForm::takeFocus);
    connect(m_form, &PersonsForm::wanted, this, &PersonsPage::store);
    connect(m_form, &PersonsForm::complained, this,
            [this](const QString &sentence) { m_notice->say(State::Attention, sentence); });
    connect(&stores, &Stores::personsChanged, this, &PersonsPage::refresh);
    connect(&session, &BenchSession::personChanged, this, &PersonsPage::refresh);
}

void PersonsPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    refresh();
}

void PersonsPage::open()
{
    m_notice->clear();
    if (m_model->rowCount() == 0) {
        m_form->takeFocus();
        return;
    }
    if (!m_table->selectionModel()->hasSelection())
        m_table->selectRow(std::max(0, m_table->currentIndex().row()));
    m_table->setFocus();
}

QString PersonsPage::unstored() const
{
    return m_form->hasUnsavedChanges() ? tr("A change to the list of people, not stored yet") : QString();
}

void PersonsPage::chooseRow(int row)
{
    m_form->setChosen(row < 0 ? std::nullopt : std::optional(m_model->row(row).id));
}

void PersonsPage::refresh()
{
    if (!isVisible())
        return; // it is read when it is shown next
    guarded(*m_notice, [this] {
        const std::vector<notebook::Person> persons = m_stores.persons();
        m_model->setPersons(persons);
        m_form->setPersons(persons, m_session.person());
    });
    const bool none = m_model->rowCount() == 0;
    m_intro->setVisible(!none);
    m_table->setVisible(!none);
    m_empty->setVisible(none);
    m_table->fit();
}

void PersonsPage::carryOut(const PersonsAct &act)
{
    switch (act.kind) {
    case Kind::First:
        return m_stores.addFirstPerson(act.name, act.passphrase);
    case Kind::Add:
        return m_stores.addPerson(act.name, act.role, act.passphrase, act.proof);
    case Kind::Change:
        return m_stores.changePerson(act.person, act.name, act.role, act.proof);
    case Kind::Passphrase:
        return m_stores.changePassphrase(act.person, act.passphrase, act.proof);
    case Kind::Retire:
        return m_stores.retirePerson(act.person, act.proof, act.reason);
    case Kind::Reinstate:
        return m_stores.reinstatePerson(act.person, act.proof, act.reason);
    }
}

void PersonsPage::store(const PersonsAct &act)
{
    m_notice->clear();
    if (!guarded(*m_notice, [&] { carryOut(act); })) {
        m_form->askProofAgain();
        return;
    }
    m_form->markStored();
    if (act.kind == Kind::First)
        open(); // the list has come into view
    m_notice->say(State::Good, storedSentence(act));
}

} // namespace plateau::ui
