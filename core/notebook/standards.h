// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/series.h"
#include "core/notebook/ids.h"
#include "core/planning/standardstock.h"

namespace plateau::notebook {

class OpenNotebook;

/// The substances that standards are made of, and what was made of them. Every function that adds something
/// is one act.
class StandardBook
{
public:
    explicit StandardBook(OpenNotebook &open)
        : m_open(open)
    {
    }

    SubstanceId addSubstance(const planning::Substance &substance, const QString &person);
    /// With a reason; what was made of it keeps what was known then.
    void changeSubstance(SubstanceId id, const planning::Substance &substance, const QString &person,
                         const QString &reason);
    /// Refused where the book has one of that name already, alive or not: runs name it.
    PreparationId prepare(SubstanceId of, const planning::Preparation &preparation, const QString &person);
    /// Thrown away, once, with a reason.
    void discard(PreparationId id, const QString &person, const QString &reason);

    /// In the order they came; of the preparations the newest first.
    std::vector<planning::HeldSubstance> substances() const;
    std::vector<planning::HeldPreparation> preparations() const;
    /// The runs whose standard is this preparation (planning::isStandardOf), newest first.
    std::vector<RunId> runsOf(PreparationId id) const;
    /// What decided runs recovered, in %, of this preparation and of every other of the same substance for
    /// the same measurand; each standard by itself, oldest first (Charts::series).
    charts::Series recoveriesOfItsKind(PreparationId id) const;

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
