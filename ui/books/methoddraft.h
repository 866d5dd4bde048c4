// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"
#include "ui/books/cellsmodel.h"

#include <QString>

#include <array>
#include <vector>

namespace plateau::ui {

/// The cells of the rows of a method's tables. A choice holds its value: words of the file contract, the key
/// of another row.
namespace component {
enum Column { Name, Volume_mL, Part, From_mL, To_mL, Suspension, Count };
}
namespace step {
enum Column { Kind, Component, From_min, To_min, From_C, To_C, Reading, InTube_mL, Count };
inline const QString add = QStringLiteral("add");
inline const QString mix = QStringLiteral("mix");
inline const QString wait = QStringLiteral("wait");
inline const QString read = QStringLiteral("read");
} // namespace step
namespace part {
inline const QString reagent;
inline const QString sample = QStringLiteral("sample");
inline const QString diluent = QStringLiteral("diluent");
inline const QString starter = QStringLiteral("starter");
} // namespace part
namespace measurand {
enum Column { Name, MolarMass, PerMolecule, From_g_per_L, To_g_per_L, Signal, First, Middle, Last, Count };
inline const QString difference = QStringLiteral("difference");
inline const QString coupled = QStringLiteral("coupledIndicator");
} // namespace measurand
namespace absorptivity {
enum Column { Wavelength_nm, Value, Count };
}
namespace derived {
/// One row a term; rows below each other of the same name make one quantity. Method empty: this one.
enum Column { Name, Method, Measurand, Factor, Count };
} // namespace derived

/// Texts of which each line is one, as the method has them.
struct LinesDraft {
    QString text;
    /// What the text was made of: a line feed within one is not lost while nothing is changed.
    std::vector<QString> original;
    bool operator==(const LinesDraft &other) const { return text == other.text; }
};

/// A method as it is being written. Numbers are the texts that were typed, so that nothing typed is lost.
struct MethodDraft {
    /// Empty: made from the name.
    QString id;
    int version = 1;
    QString name;
    QString source;
    QString principle;
    QString chromophore;
    QString wavelength_nm;
    QString pathLength_mm;
    QString direction;
    QString volumeCorrection;
    std::vector<CellRow> absorptivities;
    std::vector<CellRow> components;
    std::vector<CellRow> steps;
    std::vector<CellRow> measurands;
    std::vector<CellRow> derived;
    QString minSignal;
    QString maxSignal;
    QString maxAbsorbance;
    QString reserveAbsorbance;
    QString maxBlankSignal;
    std::array<QString, 2> standardRecovery_percent;
    std::array<QString, 2> spikeRecovery_percent;
    QString repeatabilityConstant_g_per_L;
    QString repeatabilityProportional_percent;
    QString standard_g_per_L;
    QString standardLoss_percent_per_h;
    /// Empty: no series is extrapolated.
    QString extrapolatedReading;
    QString lastReadings;
    LinesDraft reactions;
    LinesDraft interferences;
    LinesDraft cautions;
    /// In the order of assay::Matrix.
    std::array<QString, 7> preparation;
    /// Blanks, replicates of each sample, standards; all empty: the method has no rule.
    std::array<QString, 3> usualTubes;
    bool operator==(const MethodDraft &) const = default;
};

/// What every method has: a sample, a diluent and a starter by name, NADH at 340 nm in 1 cm, one measurand.
MethodDraft newMethodDraft();
MethodDraft draftOf(const assay::Method &method);

struct MethodOutcome {
    assay::Method method;
    assay::Problems problems;
};
/// The method that the draft stands for. problems holds every text that cannot be read and what
/// assay::problemsOf finds, each at its place in a plateau-method/1 document. Ids of what is new are made
/// from the names.
MethodOutcome methodOf(const MethodDraft &draft);

/// The usual order for these components: all but the starter, wait, first reading, starter, wait, second
/// reading. The waits stay open. Common practice, no source.
std::vector<CellRow> usualSteps(const std::vector<CellRow> &components);
/// What is read in the steps, in their order.
std::vector<QString> readingsOf(const std::vector<CellRow> &steps);
/// "A1" and on: the first that no step takes yet.
QString nextReading(const std::vector<CellRow> &steps);
/// Key of the first component that no step adds yet; empty if there is none.
QString nextComponent(const std::vector<CellRow> &components, const std::vector<CellRow> &steps);
/// An id made of a name: small letters and figures, joined by hyphens. Empty if the name has neither.
QString idFrom(const QString &name);

} // namespace plateau::ui
