// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/evaluation/evaluation.h"
#include "core/planning/standardrecipe.h"
#include "core/run/run.h"

#include <QDate>
#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// A container of what standards are made of.
struct Substance {
    QString name;
    QString supplier{};
    QString lot{};
    /// Number or kind of the certificate; may be empty.
    QString certificate{};
    /// Fraction, of the substance without its water content; half the width that the certificate states.
    double purity = 1;
    double purityHalfWidth = 0;
    /// Fraction of water as it is weighed, beyond what the formula holds; half the width.
    double water = 0;
    double waterHalfWidth = 0;
    /// As the formula says, crystal water included.
    double molarMass_g_per_mol = 0;
    /// Of a liquid; says the volume of a mass.
    std::optional<double> density_g_per_mL{};
    std::optional<QDate> expires{};
    bool operator==(const Substance &) const = default;
};

/// A standard as it was made of a substance: weighed in, made up in a flask.
struct Preparation {
    /// As it stands on the flask and in the runs: their standard of this name, made at this time, is this.
    QString name;
    /// Of the method it is for, by its id; empty: any. What it says of the analyte follows.
    QString measurand{};
    double analyteMolarMass_g_per_mol = 0;
    double analytePerMolecule = 1;
    /// One or more portions.
    std::vector<double> masses_mg{};
    /// Of one weighing (k = 1): from the balance's check.
    double mass_u_mg = 0;
    double flask_mL = 0;
    QString flask{};
    /// Of the flask and its filling (k = 1).
    double flask_u_mL = 0;
    QDateTime madeAt;
    double lossPerHour = 0;
    /// A rule of the laboratory beside the loss; absent: none.
    std::optional<QDateTime> useBy{};
    QString note{};
    bool operator==(const Preparation &) const = default;
};

/// What is wrong with it, with pointers as the members are called: something blank, a number outside of what
/// can be, a time to come.
assay::Problems problemsOf(const Substance &substance);
assay::Problems problemsOf(const Preparation &preparation, const QDateTime &now);

/// As run::Weighing has it: the masses together, purity less water.
run::Weighing weighingOf(const Substance &substance, const Preparation &preparation);
/// Both without problems. Purity and water as rectangular half-widths, each weighing independent, and 4 °C to
/// both sides of 20 °C for the flask (common practice, no source).
StrengthMade strengthOf(const Substance &substance, const Preparation &preparation);

/// c0 (1 - p)^h; before it was made, c0.
double strengthAt_g_per_L(double made_g_per_L, const Preparation &preparation, const QDateTime &when);
/// The last moment that it may be used: the earlier of the rule and of what its loss leaves
/// (standardlife.h). Nothing where neither says.
std::optional<QDateTime> goodUntil(const Preparation &preparation, const evaluation::Rules &rules = {});

/// What makes that moment the last one: the laboratory's own rule, the loss of strength, or the greatest age that the
/// checks allow of what loses any.
enum class StandardLimit { OwnRule, Loss, Age };
/// Of equal ones the rule counts. Nothing where there is no last moment.
std::optional<StandardLimit> limitOf(const Preparation &preparation, const evaluation::Rules &rules = {});

/// A preparation in the book.
struct HeldPreparation {
    qint64 id = 0;
    /// As it was when this was made.
    Substance of;
    Preparation preparation;
    QString person{};
    /// Why it was thrown away; absent: it was not.
    std::optional<QString> discarded{};
    bool operator==(const HeldPreparation &) const = default;
};
struct HeldSubstance {
    qint64 id = 0;
    Substance substance;
    bool operator==(const HeldSubstance &) const = default;
};

/// Not thrown away, and not past its last moment.
bool isAlive(const HeldPreparation &held, const QDateTime &now);
/// For a run: its strength when made with its uncertainty, its time and its loss.
run::Standard standardOf(const HeldPreparation &held);
/// Whether a run's standard is this preparation: by name, and by the minute where the run says when it was
/// made.
bool isStandardOf(const HeldPreparation &held, const run::Standard &standard);

} // namespace plateau::planning
