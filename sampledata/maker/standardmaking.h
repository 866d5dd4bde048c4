// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "sampledata/maker/chance.h"
#include "sampledata/maker/house.h"

#include <map>

namespace plateau::sampledata {

/// A standard in its flask: what the book says of it, and what is true.
struct FlaskOfStandard {
    planning::HeldPreparation held;
    double trueLossPerHour = 0;
    double trueStrengthAt_g_per_L(const QDateTime &when) const;
};

/// Substances and what is made of them: a standard that loses strength anew on every day, the others when the
/// last one is past its days.
class StandardMaking
{
public:
    StandardMaking(notebook::Notebook &notebook, quint64 seed)
        : m_notebook(notebook)
        , m_chance(seed, 3)
    {
    }

    /// Alive now, made if need be (which moves the clock on).
    const FlaskOfStandard &take(const StandardRecipe &recipe, const assay::Measurand &measurand,
                                QDateTime &now, const QString &person);

private:
    struct Held {
        notebook::SubstanceId substance;
        planning::Substance described;
        std::optional<FlaskOfStandard> flask;
    };
    Held &substanceOf(const StandardRecipe &recipe, const QDateTime &now, const QString &person);
    void make(Held &held, const StandardRecipe &recipe, const assay::Measurand &measurand, QDateTime &now,
              const QString &person);

    notebook::Notebook &m_notebook;
    Chance m_chance;
    /// By name of the substance.
    std::map<QString, Held> m_held;
};

} // namespace plateau::sampledata
