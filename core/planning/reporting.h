// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/evaluation/reportunit.h"

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace plateau::planning {

struct Laboratory;

/// Who may decide a run, and the words a rejection is given a reason in.
struct ReviewRules {
    /// An analyst's signature does not decide: a reviewer's or the head's does. Says nothing while no persons
    /// are set up, since a typed name has no role.
    bool reviewerDecides = false;
    /// Nobody decides on a run in which they put it on the bench, keyed, corrected, ticked or spoilt
    /// anything.
    bool secondPersonReviews = false;
    /// Offered where a sample or a run is rejected; another one may be typed.
    QStringList rejectionReasons;
    bool operator==(const ReviewRules &) const = default;
};

enum class LogoKind { Png, Svg };
struct Logo {
    LogoKind kind = LogoKind::Png;
    QByteArray bytes;
    bool operator==(const Logo &) const = default;
};

/// What stands at the head of a report below the laboratory's name.
struct ReportHead {
    /// Line by line.
    QStringList address;
    /// Telephone, e-mail, a person: one line. May be empty.
    QString contact;
    std::optional<Logo> logo;
    bool operator==(const ReportHead &) const = default;
};

/// The unit in which results are reported: of a product, a measurand, or the one in the other.
struct ProductUnit {
    /// Empty: of whatever product.
    QString product;
    /// Empty: of every measurand of the product.
    QString measurand;
    evaluation::ReportUnit unit = evaluation::ReportUnit::GramPerLitre;
    bool operator==(const ProductUnit &) const = default;
};
/// The unit for that measurand of a sample of the product: what names both before what names the measurand alone, and that
/// before what names the product alone; nothing where none is kept. A measurand alone may have one unit for liquids and one
/// for solids, and its unit holds for samples of that form. Products are compared without regard to case and spaces at the
/// ends.
std::optional<evaluation::ReportUnit> reportUnitOf(const Laboratory &laboratory, const QString &product,
                                                   const QString &measurand, run::Form form);

/// Common practice, no source.
inline constexpr qsizetype largestLogo_bytes = 256 * 1024;
inline constexpr int largestLogo_px = 4096;
inline constexpr qsizetype mostAddressLines = 8;
inline constexpr qsizetype mostRejectionReasons = 100;
inline constexpr std::size_t mostProductUnits = 1000;

/// Why the bytes are no logo of that kind, as a sentence part; nothing if they are one. A PNG begins as one
/// and is at most largestLogo_px wide and high; an SVG is well-formed and takes in nothing from outside.
std::optional<QString> logoFault(const Logo &logo);

/// Of these parts of a laboratory, with places in its document. Called by problemsOf(Laboratory).
void checkReporting(const Laboratory &laboratory, assay::Problems &problems);

} // namespace plateau::planning
