// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "ui/shared/helpcall.h"

#include <vector>

namespace plateau::ui {

/// What is said of a plan, each with the place in the help that explains it; a problem without one says all there is
/// to say.
class PlanWarnings
{
public:
    /// Problems of the run, by their places in its document; words: the same ones in the words of the form.
    void addRun(const assay::Problems &problems, const assay::Problems &words);
    void addReagents(const assay::Problems &problems) { add(problems, QStringLiteral("plan-lots")); }
    void addEquipment(const assay::Problems &problems) { add(problems, QStringLiteral("plan-equipment")); }

    const assay::Problems &problems() const { return m_problems; }
    /// As many as problems.
    const std::vector<HelpPlace> &places() const { return m_places; }

private:
    void add(const assay::Problems &problems, const QString &section);

    assay::Problems m_problems;
    std::vector<HelpPlace> m_places;
};

} // namespace plateau::ui
