// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"
#include "core/evaluation/reportunit.h"

#include <QDate>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::evaluation {

/// Maximum and minimum allow the limit itself. From a label threshold on (at it or above it) something has to
/// be declared on a label; the program only says on which side the result lies.
enum class LimitKind { Maximum, Minimum, Range, LabelThreshold };
/// "maximum", "minimum", "range", "labelThreshold".
QString limitKindWord(LimitKind kind);
std::optional<LimitKind> limitKindFromWord(const QString &word);

/// How a result is held against a limit (Eurachem/CITAC Guide, Use of uncertainty information in compliance
/// assessment, 2nd ed. 2021, section 4). g is the guard band.
///   SimpleAcceptance     inside up to the limit, outside beyond it.
///   GuardedAcceptance    inside up to g before the limit, outside beyond the limit, between them undecided.
///   GuardedRejection     inside up to the limit, outside from more than g beyond it, between them undecided.
///   GuardedBoth          inside up to g before the limit, outside from more than g beyond it, else
///   undecided.
enum class DecisionRule { SimpleAcceptance, GuardedAcceptance, GuardedRejection, GuardedBoth };
/// "simpleAcceptance", "guardedAcceptance", "guardedRejection", "guardedBoth".
QString decisionRuleWord(DecisionRule rule);
std::optional<DecisionRule> decisionRuleFromWord(const QString &word);
/// For a person: "simple acceptance", "guard band for acceptance" and so on.
QString decisionRuleName(DecisionRule rule);

/// How wide a guard band is.
///   OneSided95           k u, k the one-sided 95 % point of Student's t (1.64 for very many degrees of
///   freedom) ExpandedUncertainty  size x U Absolute             size, in the limit's unit
struct GuardBand {
    enum class Kind { OneSided95, ExpandedUncertainty, Absolute } kind = Kind::OneSided95;
    /// Greater than 0; of OneSided95, which has none, 1.
    double size = 1;
    bool operator==(const GuardBand &) const = default;
};
/// "oneSided95", "expandedUncertainty", "absolute".
QString guardBandWord(GuardBand::Kind kind);

/// A limit for a product as the laboratory entered it: data with a source and a date, nothing the program
/// knows by itself.
struct Specification {
    /// As the shelf's samples name it (planning::ShelfSample::product).
    QString product;
    /// Id or name of a measurand or a derived quantity.
    QString measurand;
    LimitKind kind = LimitKind::Maximum;
    /// Of a minimum and a range.
    std::optional<double> lower{};
    /// Of a maximum and a range; of a label threshold the threshold.
    std::optional<double> upper{};
    ReportUnit unit = ReportUnit::GramPerLitre;
    /// Where the limit stands, and as of when.
    QString source;
    QDate date{};
    DecisionRule rule = DecisionRule::SimpleAcceptance;
    /// Set exactly where the rule has a guard band.
    std::optional<GuardBand> guard{};
    bool operator==(const Specification &) const = default;
};

/// "at most 200 mg/L", "at least 3 g/L", "3 to 5 g/L", "a label threshold of 10 mg/L".
QString limitText(const Specification &specification);

/// Places are JSON pointers in one entry of a plateau-specifications/1 document.
assay::Problems problemsOf(const Specification &specification);
/// Of the whole list: those of every entry, and the same limit given twice (product, measurand, kind and
/// source). Places are JSON pointers in the document.
assay::Problems problemsOf(const std::vector<Specification> &specifications);

/// A number outside is a slip of the pen. Common practice, no source; set wide on purpose.
inline constexpr double largestLimit = 1e7;
inline constexpr double mostExpandedUncertainties = 10;
inline constexpr std::size_t mostSpecifications = 1000;

/// Those for a measurand (or derived quantity) of this method in a sample of this product, in the list's
/// order. Product and measurand are compared without regard to capitals and blanks around them.
std::vector<Specification> specificationsFor(const std::vector<Specification> &all, const QString &product,
                                             const QString &measurandId, const assay::Method &method);

} // namespace plateau::evaluation
