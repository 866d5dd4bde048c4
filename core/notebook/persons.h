// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/ids.h"

#include <QDateTime>
#include <QString>

#include <map>
#include <optional>
#include <vector>

namespace plateau::notebook {

class OpenNotebook;

/// What a signature may do: the head also keeps the list of persons.
enum class PersonRole { Analyst, Reviewer, Head };

struct Person {
    PersonId id;
    QString name;
    PersonRole role = PersonRole::Analyst;
    /// Signs nothing any more; what was signed stays.
    bool retired = false;
    QDateTime addedAt;
};

/// Somebody who says who they are and proves it.
struct Proof {
    QString name;
    QString passphrase;
};

/// The persons of a notebook. While there are none, everything is done with a typed name and decisions are
/// unsigned; from the first on decisions are signed. Every function that adds something is one act, as
/// Pipetting's are. Of a passphrase only its Argon2id hash is kept, and shown nowhere.
///
/// A wrong passphrase is refused and put on record. After the third within an hour the person waits before
/// the next try, at first 5 s, each time twice as long, at most 5 min; a right one ends that. Nothing but
/// signing waits. (Common practice, no source.)
class Persons
{
public:
    explicit Persons(OpenNotebook &open)
        : m_open(open)
    {
    }

    /// In the order they came, retired ones too.
    std::vector<Person> all() const;
    bool areSetUp() const { return !all().empty(); }
    /// By the name they have now, as names are compared; nothing where there is none.
    std::optional<Person> find(const QString &name) const;

    /// The first one, who is the head. Refused once there are persons.
    PersonId addFirst(const QString &name, const QString &passphrase);
    /// Refused unless the proof is a head's, as are change, retire and reinstate. Names are used once, those
    /// that somebody had before too.
    PersonId add(const QString &name, PersonRole role, const QString &passphrase, const Proof &head);
    /// Another name or another role. The last head keeps the role.
    void change(PersonId person, const QString &name, PersonRole role, const Proof &head);
    /// Their own passphrase; or, where they lost it, a head gives them another one.
    void changePassphrase(PersonId person, const QString &passphrase, const Proof &proof);
    /// With a reason; never the last head.
    void retire(PersonId person, const Proof &head, const QString &reason);
    void reinstate(PersonId person, const Proof &head, const QString &reason);

    /// The person whose passphrase it is. Throws Failure(Refused) for an unknown or retired person, a wrong
    /// passphrase, and while the person has to wait.
    Person check(const Proof &proof);

private:
    Person requireHead(const Proof &proof);
    void requireWaited(const Person &person, const QDateTime &now) const;

    OpenNotebook &m_open;
    /// Since when a person's wrong passphrases count: they gave the right one then.
    std::map<PersonId, QDateTime> m_since;
};

/// For a person: why it cannot be a passphrase, as a sentence part; nothing if it can. At least 8 characters
/// (from memory of NIST SP 800-63B), at most 500.
std::optional<QString> passphraseFault(const QString &passphrase);

} // namespace plateau::notebook
