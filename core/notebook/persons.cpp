// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/persons.h"

#include "core/assay/label.h"
#include "core/notebook/checks.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/passphrase.h"
#include "core/notebook/personstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using assay::quoted;

namespace {

constexpr qsizetype shortestPassphrase = 8;
constexpr qsizetype longestPassphrase = 500;

constexpr int triesWithoutWaiting = 3;
constexpr qint64 countedFor_s = 3600;
constexpr qint64 firstWait_s = 5;
constexpr qint64 longestWait_s = 300;

qint64 waitAfter_s(qsizetype wrong)
{
    qint64 wait_s = wrong < triesWithoutWaiting ? 0 : firstWait_s;
    for (qsizetype tries = triesWithoutWaiting; tries < wrong && wait_s < longestWait_s; ++tries)
        wait_s *= 2;
    return std::min(wait_s, longestWait_s);
}

void requirePassphrase(const QString &passphrase)
{
    if (const auto fault = passphraseFault(passphrase))
        throw refused(
            Sentence::tr("Nothing was stored, since the passphrase cannot be used: %1.").arg(*fault));
}

void requireFreeName(const Database &database, const QString &name, std::optional<PersonId> besides)
{
    if (isNameTaken(database, name, besides))
        throw refused(Sentence::tr("Nothing was stored, since somebody has or had the name %1: give this "
                                   "person another one, with a second given name, say.")
                          .arg(quoted(name)));
}

/// Whether a head is left besides that person.
bool isHeadLeft(const Database &database, PersonId besides)
{
    return std::ranges::any_of(loadPersons(database), [&](const PersonRows &rows) {
        return rows.person.role == PersonRole::Head && !rows.person.retired && rows.person.id != besides;
    });
}

/// Nobody signs by a row that came, went or was changed from outside.
void requireUnchangedPersons(const Session &session)
{
    const std::vector<Finding> findings =
        recordFindings(session.database, schemaSteps(), session.schemaVersion,
                       {u"person"_s, u"person_version"_s, u"person_passphrase"_s, u"person_standing"_s});
    if (!findings.empty())
        throw Failure(Failure::Kind::Damaged,
                      Sentence::tr("The list of people was changed from outside the program (%1); nothing "
                                   "was stored: have the notebook verified and go back to the latest backup.")
                          .arg(findings.front().place),
                      findingLines(findings));
}

} // namespace

std::optional<QString> passphraseFault(const QString &passphrase)
{
    const qsizetype length = passphrase.toUcs4().size();
    if (!isVisible(passphrase))
        return Sentence::tr("it is blank; several words that only you would put together make a good one");
    if (length < shortestPassphrase)
        return Sentence::tr("it has %1 characters; at least %2 are needed, such as several words make")
            .arg(length)
            .arg(shortestPassphrase);
    if (length > longestPassphrase)
        return Sentence::tr("it has %1 characters; at most %2 are allowed")
            .arg(length)
            .arg(longestPassphrase);
    return std::nullopt;
}

std::vector<Person> Persons::all() const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    std::vector<Person> persons;
    for (const PersonRows &rows : loadPersons(*m_open.database))
        persons.push_back(rows.person);
    return persons;
}

std::optional<Person> Persons::find(const QString &name) const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    const auto rows = findPerson(*m_open.database, name);
    return rows ? std::optional(rows->person) : std::nullopt;
}

PersonId Persons::addFirst(const QString &name, const QString &passphrase)
{
    requirePassphrase(passphrase);
    const QString hash = passphraseHash(passphrase, m_open.surroundings.passphraseWork);
    Act act = m_open.act(name, u"personAdded"_s);
    if (arePersonsSetUp(act.database()))
        throw refused(
            Sentence::tr("People are set up already; nothing was stored: a head adds further ones."));
    const PersonId id = storePerson(act);
    storePersonVersion(act, id, name, PersonRole::Head);
    storePassphrase(act, id, hash);
    act.note(name);
    act.commit();
    return id;
}

PersonId Persons::add(const QString &name, PersonRole role, const QString &passphrase, const Proof &head)
{
    requirePerson(name);
    requirePassphrase(passphrase);
    const Person by = requireHead(head);
    const QString hash = passphraseHash(passphrase, m_open.surroundings.passphraseWork);
    Act act = m_open.act(by.name, u"personAdded"_s);
    requireFreeName(act.database(), name, std::nullopt);
    const PersonId id = storePerson(act);
    storePersonVersion(act, id, name, role);
    storePassphrase(act, id, hash);
    act.note(name);
    act.commit();
    return id;
}

void Persons::change(PersonId person, const QString &name, PersonRole role, const Proof &head)
{
    requirePerson(name);
    const Person by = requireHead(head);
    Act act = m_open.act(by.name, u"personChanged"_s);
    const Person before = loadPerson(act.database(), person).person;
    if (before.name == name && before.role == role)
        throw refused(
            Sentence::tr("%1 has this name and this role already; nothing was stored.").arg(quoted(name)));
    requireFreeName(act.database(), name, person);
    if (role != PersonRole::Head && !before.retired && !isHeadLeft(act.database(), person))
        throw refused(Sentence::tr("%1 stays head, since there is no other one; nothing was stored: make "
                                   "somebody else a head first.")
                          .arg(quoted(before.name)));
    storePersonVersion(act, person, name, role);
    act.note(name);
    act.commit();
}

void Persons::changePassphrase(PersonId person, const QString &passphrase, const Proof &proof)
{
    requirePassphrase(passphrase);
    const Person by = check(proof);
    if (by.id != person && by.role != PersonRole::Head)
        throw refused(
            Sentence::tr("The passphrase was not changed: only its owner or a head may, and %1 is neither.")
                .arg(quoted(by.name)));
    const QString hash = passphraseHash(passphrase, m_open.surroundings.passphraseWork);
    Act act = m_open.act(by.name, u"passphraseChanged"_s);
    const Person of = loadPerson(act.database(), person).person;
    storePassphrase(act, person, hash);
    act.note(of.name);
    act.commit();
    m_since[person] = timeOf(act.at());
}

void Persons::retire(PersonId person, const Proof &head, const QString &reason)
{
    requireReason(reason, Sentence::tr("The person was not retired, since that needs a reason: say why."));
    const Person by = requireHead(head);
    Act act = m_open.act(by.name, u"personRetired"_s);
    const Person before = loadPerson(act.database(), person).person;
    if (before.retired)
        throw refused(Sentence::tr("%1 is retired already; nothing was stored.").arg(quoted(before.name)));
    if (!isHeadLeft(act.database(), person))
        throw refused(
            Sentence::tr("%1 was not retired, since there is no other head; nothing was stored: make "
                         "somebody else a head first.")
                .arg(quoted(before.name)));
    storeStanding(act, person, true, reason);
    act.note(before.name);
    act.commit();
}

void Persons::reinstate(PersonId person, const Proof &head, const QString &reason)
{
    requireReason(reason, Sentence::tr("The person was not reinstated, since that needs a reason: say why."));
    const Person by = requireHead(head);
    Act act = m_open.act(by.name, u"personReinstated"_s);
    const Person before = loadPerson(act.database(), person).person;
    if (!before.retired)
        throw refused(Sentence::tr("%1 is not retired; nothing was stored.").arg(quoted(before.name)));
    storeStanding(act, person, false, reason);
    act.note(before.name);
    act.commit();
}

Person Persons::check(const Proof &proof)
{
    const Database &database = *m_open.database;
    requirePerson(proof.name);
    requireUnchangedPersons(m_open.session());
    const auto rows = findPerson(database, proof.name);
    if (!rows)
        // What was typed is not said again: it may be a passphrase in the wrong field.
        throw refused(Sentence::tr("Nobody who is set up is called so; nothing was stored: choose somebody "
                                   "from the list (↓), or have a head add them."));
    const Person &person = rows->person;
    if (person.retired)
        throw refused(Sentence::tr("%1 is retired and signs nothing; nothing was stored: choose another "
                                   "person, or have a head reinstate them.")
                          .arg(quoted(person.name)));
    if (proof.passphrase.isEmpty())
        throw refused(Sentence::tr("Nothing was stored, since it needs the passphrase of %1: type it.")
                          .arg(quoted(person.name)));
    const QDateTime now = m_open.surroundings.now();
    requireWaited(person, now);
    if (passphraseFits(proof.passphrase, rows->hash)) {
        m_since[person.id] = now;
        return person;
    }
    if (database.access() == Access::ReadWrite) {
        Act act = m_open.act(person.name, u"passphraseRefused"_s);
        storeWrongPassphrase(act, person.id);
        act.note(person.name);
        act.commit();
    }
    throw WrongPassphrase(
        Sentence::tr(
            "This is not the passphrase of %1; nothing was stored except the attempt: type it again.")
            .arg(quoted(person.name)));
}

void Persons::requireWaited(const Person &person, const QDateTime &now) const
{
    QDateTime since = now.addSecs(-countedFor_s);
    if (const auto right = m_since.find(person.id); right != m_since.end() && right->second > since)
        since = right->second;
    const std::vector<QDateTime> wrong = loadWrongPassphrases(*m_open.database, person.id, momentOf(since));
    if (wrong.empty())
        return;
    const qint64 passed_s = wrong.back().secsTo(now);
    const qint64 wait_s = waitAfter_s(qsizetype(wrong.size())) - passed_s;
    if (passed_s >= 0 && wait_s > 0) // a clock that was set back keeps nobody out
        throw WrongPassphrase(Sentence::tr("The passphrase was not tried, since the last %1 were wrong: wait %2 s, "
                                   "then type it again, or ask a head for another one.")
                          .arg(wrong.size())
                          .arg(wait_s));
}

Person Persons::requireHead(const Proof &proof)
{
    Person person = check(proof);
    if (person.role != PersonRole::Head)
        throw refused(
            Sentence::tr("Nothing was stored: only a head keeps the list of people, and %1 is not one.")
                .arg(quoted(person.name)));
    return person;
}

} // namespace plateau::notebook
