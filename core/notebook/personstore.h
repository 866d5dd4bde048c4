// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/persons.h"

namespace plateau::notebook {

/// A person, and the rows in which what counts of them stands.
struct PersonRows {
    Person person;
    qint64 version = 0;
    qint64 passphrase = 0;
    QString hash;
};
/// In the order they came.
std::vector<PersonRows> loadPersons(const Database &database);
bool arePersonsSetUp(const Database &database);
/// Throws Failure(Refused) if there is no such person.
PersonRows loadPerson(const Database &database, PersonId id);
/// By the name they have now.
std::optional<PersonRows> findPerson(const Database &database, const QString &name);
/// Every name they ever had, as names are compared.
QStringList nameKeysOf(const Database &database, PersonId person);
/// Whether anybody has or had the name, but for that person.
bool isNameTaken(const Database &database, const QString &name, std::optional<PersonId> besides);

PersonId storePerson(Act &act);
void storePersonVersion(Act &act, PersonId person, const QString &name, PersonRole role);
void storePassphrase(Act &act, PersonId person, const QString &hash);
void storeStanding(Act &act, PersonId person, bool retired, const QString &reason);
void storeWrongPassphrase(Act &act, PersonId person);
/// When, oldest first.
std::vector<QDateTime> loadWrongPassphrases(const Database &database, PersonId person, const Moment &since);

} // namespace plateau::notebook
