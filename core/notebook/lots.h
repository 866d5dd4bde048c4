// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/ids.h"
#include "core/planning/reagents.h"

#include <QDateTime>

#include <vector>

namespace plateau::notebook {

class OpenNotebook;

/// What stands on a container.
struct LotLabel {
    /// As the component is named in the method.
    QString reagent;
    QString lot;
    /// Last good day.
    std::optional<QDate> expires;
    std::optional<int> keepsOpened_days;
    bool operator==(const LotLabel &) const = default;
};

enum class LotMovementKind { Received, Used, Discarded, Corrected };

/// One line of a container's ledger.
struct LotMovement {
    LotMovementKind kind = LotMovementKind::Received;
    /// What it did to the volume: received more than 0, used and discarded less, corrected either.
    double change_mL = 0;
    QString note;
    QString person;
    QDateTime at;
};

/// What the doses of a run took from a container.
struct LotTaking {
    RunId run;
    double volume_mL = 0;
    int tubes = 0;
    bool operator==(const LotTaking &) const = default;
};

/// The containers of reagents of a notebook. What is left in one follows from its ledger, less what the
/// ticked doses that name it took. Every function that adds something is one act, as Pipetting's are.
///
/// By hand nothing is taken that the ledger does not hold. Pipetting may take more: what is in the tubes
/// cannot be refused. The lot then has less than nothing left until it is corrected.
class Lots
{
public:
    explicit Lots(OpenNotebook &open)
        : m_open(open)
    {
    }

    LotId receive(const LotLabel &label, double volume_mL, const QString &person);
    /// Another label in place of the one that was noted, with a reason. What was decided on the old one keeps
    /// it.
    void relabel(LotId lot, const LotLabel &label, const QString &person, const QString &reason);
    /// Once, on a day that is not to come.
    void open(LotId lot, const QDate &day, const QString &person);
    /// Taken outside a run; the note may be empty.
    void use(LotId lot, double volume_mL, const QString &person, const QString &note);
    void discard(LotId lot, double volume_mL, const QString &person, const QString &reason);
    /// The volume that was really found in it.
    void correct(LotId lot, double found_mL, const QString &person, const QString &reason);

    /// Every container, in the order they came; remaining_mL is rounded to the nanolitre.
    std::vector<planning::Lot> all() const;
    /// Those that are not used up exactly: also those of which more was taken than they held.
    std::vector<planning::Lot> inHand() const;
    /// Oldest first. Throws Failure(Refused) if there is no such lot; so does takings.
    std::vector<LotMovement> movements(LotId lot) const;
    std::vector<LotTaking> takings(LotId lot) const;

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
