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
    /// Of what comes dry.
    std::optional<int> keepsDissolved_days{};
    bool operator==(const LotLabel &) const = default;
};

enum class LotMovementKind {
    Received,
    Used,
    Discarded,
    Corrected,
    ReceivedDry,
    Opened,
    /// The day of opening, or that it is not opened after all.
    OpeningCorrected,
    Dissolved,
    /// Something else was dissolved in it.
    GaveSolvent,
    Divided,
    /// As an aliquot.
    Filled,
    Stored,
    Noted
};

/// One line of a container's ledger.
struct LotMovement {
    LotMovementKind kind = LotMovementKind::Received;
    /// What it did to the volume: received, dissolved and filled more than 0; used, discarded, given as
    /// solvent and divided less; corrected either; 0 what leaves the volume as it is.
    double change_mL = 0;
    /// As it was keyed, after what the row says besides: "in water; mixed gently".
    QString note;
    QString person;
    QDateTime at;
};

/// What the doses of a run took from a container.
struct LotTaking {
    RunId run;
    double volume_mL = 0;
    int tubes = 0;
    /// Where it was taken from an aliquot of the container, or from what was dissolved in it: its name.
    QString through{};
    /// Of the run, and when it came into the notebook.
    QString title{};
    QDateTime begun{};
    bool operator==(const LotTaking &) const = default;
};

/// How a container that came dry is dissolved.
struct LotDissolving {
    /// Of the solution.
    double volume_mL = 0;
    /// In what; where that is a container of the book, solventLot says which one gives that volume.
    QString solvent;
    std::optional<LotId> solventLot{};
    QDate day;
    /// How long it keeps; another number than the label's goes into the label.
    std::optional<int> keeps_days{};
    QString note{};
};

/// How a container is divided.
struct LotDivision {
    int aliquots = 0;
    /// Of each.
    double volume_mL = 0;
    QDate day;
    /// How long they keep as they are stored; absent: the days of the container go on.
    std::optional<int> keeps_days{};
    /// Once opened or thawed; absent: as the container.
    std::optional<int> keepsOpened_days{};
    std::optional<planning::StoragePlace> place{};
    QString note{};
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
    /// One that is to be dissolved; its ledger begins with that. mass_mg: as the label says.
    LotId receiveDry(const LotLabel &label, std::optional<double> mass_mg, const QString &person);
    /// Another label in place of the one that was noted, with a reason. What was decided on the old one keeps
    /// it.
    void relabel(LotId lot, const LotLabel &label, const QString &person, const QString &reason);
    /// Once, on a day that is not to come. Who takes from one that is not opened opens it by that: doses and
    /// readings of a run (Pipetting::markDone, Notebook::addReading), use, and dissolving in it.
    void open(LotId lot, const QDate &day, const QString &person);
    /// It was opened on another day, or, without one, it is not opened after all, with a reason. Refused: a
    /// day after one on which something was taken from it by a tick or by hand, it was dissolved or divided, or
    /// another was dissolved in it. What was pipetted keeps what was known then.
    void correctOpening(LotId lot, const std::optional<QDate> &day, const QString &person,
                        const QString &reason);
    /// Once, of one that came dry; it counts as opened then.
    void dissolve(LotId lot, const LotDissolving &how, const QString &person);
    /// Into aliquots, which are containers of the same reagent; the lot counts as opened then. In the order
    /// of their numbers.
    std::vector<LotId> divide(LotId lot, const LotDivision &how, const QString &person);
    /// To another place; the note may be empty.
    void store(LotId lot, const planning::StoragePlace &place, const QString &person, const QString &note);
    void note(LotId lot, const QString &text, const QString &person);
    /// Taken outside a run; the note may be empty.
    void use(LotId lot, double volume_mL, const QString &person, const QString &note);
    void discard(LotId lot, double volume_mL, const QString &person, const QString &reason);
    /// A dry one, as it came.
    void discardDry(LotId lot, const QString &person, const QString &reason);
    /// The volume that was really found in it.
    void correct(LotId lot, double found_mL, const QString &person, const QString &reason);

    /// Every container, in the order they came; remaining_mL is rounded to the nanolitre.
    std::vector<planning::Lot> all() const;
    /// Those that are not used up exactly: also dry ones, and those of which more was taken than they held.
    std::vector<planning::Lot> inHand() const;
    /// Everything that was noted of it, oldest first. Throws Failure(Refused) if there is no such lot; so
    /// does takings.
    std::vector<LotMovement> movements(LotId lot) const;
    /// What runs took from it, and from everything that it went into: its aliquots, and what was dissolved in
    /// it.
    std::vector<LotTaking> takings(LotId lot) const;

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
