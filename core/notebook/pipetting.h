// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

namespace plateau::notebook {

class OpenNotebook;

/// The worksheet of a run on the bench. Every function is one act: all of it is on disk with its audit entry
/// when it returns, or it throws Failure and nothing is. What a run looks like with its marks is
/// StoredRun::run; the marks themselves are StoredRun::marks and dilutionMarks.
class Pipetting
{
public:
    explicit Pipetting(OpenNotebook &open)
        : m_open(open)
    {
    }

    /// Doses of one component or several, a row of tubes with one key. A dose that is done already takes
    /// other details. Refused: a dose the tube does not get, a lot of another reagent, what is so already.
    /// Gives the lots that were not opened yet and are noted as opened today by this; of a dose without a lot
    /// the one counts that the run names for it.
    std::vector<LotId> markDone(RunId run, const std::vector<DoneDose> &doses, const QString &person);
    /// Takes back the ticks of doses that are done.
    void markUndone(RunId run, const std::vector<Dose> &doses, const QString &person);
    /// The tube does not count, with a reason; its marks and readings stay.
    void markSpoilt(RunId run, int tube, const QString &person, const QString &reason);
    void markUnspoilt(RunId run, int tube, const QString &person, const QString &reason);
    /// Dilution steps that were made, of one sample or several; one that is so already is refused.
    void markDilutionsDone(RunId run, const std::vector<DilutionPlace> &steps, const QString &person);
    /// Takes back the ticks of steps that are made.
    void markDilutionsUndone(RunId run, const std::vector<DilutionPlace> &steps, const QString &person);

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
