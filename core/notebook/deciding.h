// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"
#include "core/notebook/personstore.h"
#include "core/notebook/records.h"

namespace plateau::notebook {

class OpenNotebook;

/// Who does something that is signed once persons are set up; unsigned while there are none. Throws
/// Failure(Refused) where Persons::check does, or nobody is named.
struct Signer {
    QString name;
    /// Absent: unsigned.
    std::optional<PersonRows> rows;
    std::optional<qint64> versionRow() const { return rows ? std::optional(rows->version) : std::nullopt; }
};
Signer signerOf(OpenNotebook &open, Persons &persons, const QString &person, const QString &passphrase);

/// False for an analyst where the laboratory wants a reviewer to decide.
bool mayReview(const Database &database, const Signer &signer);

/// Notebook::decide.
void decideRun(OpenNotebook &open, Persons &persons, RunId run, const RunDecision &decision);

/// Notebook::reopen.
struct WantedReopening {
    QString person;
    QString reason;
    QString passphrase;
};
void reopenRun(OpenNotebook &open, Persons &persons, RunId run, const WantedReopening &wanted);

} // namespace plateau::notebook
