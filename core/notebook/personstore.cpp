// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/personstore.h"

#include "core/notebook/opennotebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

std::vector<PersonRows> loadPersons(const Database &database)
{
    Statement query(
        database,
        u"SELECT person.id, last.name, last.role, coalesce((SELECT kind = 'retired' FROM person_standing "
        "WHERE person_standing.person = person.id ORDER BY id DESC LIMIT 1), 0), first.at_utc, "
        "first.at_offset_min, last.id, secret.id, secret.hash FROM person "
        "JOIN person_version AS first ON first.id = (SELECT min(id) FROM person_version AS any_version "
        "WHERE any_version.person = person.id) "
        "JOIN person_version AS last ON last.id = (SELECT max(id) FROM person_version AS any_version "
        "WHERE any_version.person = person.id) "
        "JOIN person_passphrase AS secret ON secret.id = (SELECT max(id) FROM person_passphrase AS "
        "any_secret "
        "WHERE any_secret.person = person.id) ORDER BY person.id"_s);
    query.run();
    std::vector<PersonRows> persons;
    while (query.next())
        persons.push_back({{{query.integer(0)},
                            query.text(1),
                            personRoleOf(query.text(2)),
                            query.integer(3) != 0,
                            query.time(4)},
                           query.integer(6),
                           query.integer(7),
                           query.text(8)});
    return persons;
}

bool arePersonsSetUp(const Database &database)
{
    return database.single(u"SELECT EXISTS (SELECT 1 FROM person)"_s).toBool();
}

PersonRows loadPerson(const Database &database, PersonId id)
{
    for (PersonRows &rows : loadPersons(database)) {
        if (rows.person.id == id)
            return rows;
    }
    throw refused(
        Sentence::tr("The notebook holds no person number %1; nothing was stored: choose one from its list.")
            .arg(id.value));
}

std::optional<PersonRows> findPerson(const Database &database, const QString &name)
{
    for (PersonRows &rows : loadPersons(database)) {
        if (comparisonKey(rows.person.name) == comparisonKey(name))
            return rows;
    }
    return std::nullopt;
}

QStringList nameKeysOf(const Database &database, PersonId person)
{
    Statement query(database, u"SELECT DISTINCT name_key FROM person_version WHERE person = ?"_s);
    query.run(person.value);
    QStringList keys;
    while (query.next())
        keys.append(query.text(0));
    return keys;
}

bool isNameTaken(const Database &database, const QString &name, std::optional<PersonId> besides)
{
    Statement query(database, u"SELECT 1 FROM person_version WHERE name_key = ? AND person <> ? LIMIT 1"_s);
    query.run(comparisonKey(name), besides.value_or(PersonId()).value);
    return query.next();
}

PersonId storePerson(Act &act)
{
    Statement insert(act.database(), u"INSERT INTO person DEFAULT VALUES"_s);
    insert.run();
    act.covers(u"person"_s, insert.insertedId());
    return {insert.insertedId()};
}

void storePersonVersion(Act &act, PersonId person, const QString &name, PersonRole role)
{
    Statement insert(act.database(), u"INSERT INTO person_version (person, name, name_key, role, changed_by, "
                                     "at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(person.value, name, comparisonKey(name), personRoleWord(role), act.person(), act.at());
    act.covers(u"person_version"_s, insert.insertedId());
}

void storePassphrase(Act &act, PersonId person, const QString &hash)
{
    Statement insert(act.database(), u"INSERT INTO person_passphrase (person, hash, changed_by, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(person.value, hash, act.person(), act.at());
    act.covers(u"person_passphrase"_s, insert.insertedId());
}

void storeStanding(Act &act, PersonId person, bool retired, const QString &reason)
{
    Statement insert(act.database(),
                     u"INSERT INTO person_standing (person, kind, reason, changed_by, at_utc, "
                     "at_offset_min) VALUES (?, ?, ?, ?, ?, ?)"_s);
    insert.run(person.value, retired ? u"retired"_s : u"reinstated"_s, reason, act.person(), act.at());
    act.covers(u"person_standing"_s, insert.insertedId());
}

void storeWrongPassphrase(Act &act, PersonId person)
{
    Statement insert(act.database(),
                     u"INSERT INTO wrong_passphrase (person, at_utc, at_offset_min) VALUES (?, ?, ?)"_s);
    insert.run(person.value, act.at());
    act.covers(u"wrong_passphrase"_s, insert.insertedId());
}

std::vector<QDateTime> loadWrongPassphrases(const Database &database, PersonId person, const Moment &since)
{
    Statement query(database, u"SELECT at_utc, at_offset_min FROM wrong_passphrase WHERE person = ? "
                              "AND at_utc >= ? ORDER BY at_utc, id"_s);
    query.run(person.value, since.utc);
    std::vector<QDateTime> times;
    while (query.next())
        times.push_back(query.time(0));
    return times;
}

} // namespace plateau::notebook
