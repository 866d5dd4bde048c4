// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"

#include <vector>

namespace plateau::ui {

/// A limit of a product as it is being filled in: the texts that were typed, and what was chosen.
struct LimitDraft {
    QString product;
    QString measurand;
    evaluation::LimitKind kind = evaluation::LimitKind::Maximum;
    /// Those that the kind has no use for stay, in case it is chosen again.
    QString lower;
    QString upper;
    evaluation::ReportUnit unit = evaluation::ReportUnit::MilligramPerLitre;
    QString source;
    QString date;
    evaluation::DecisionRule rule = evaluation::DecisionRule::SimpleAcceptance;
    evaluation::GuardBand::Kind guard = evaluation::GuardBand::Kind::OneSided95;
    QString guardSize;
    bool operator==(const LimitDraft &) const = default;
};

LimitDraft draftOf(const evaluation::Specification &limit);

struct LimitOutcome {
    evaluation::Specification limit;
    /// Texts that cannot be read, and what evaluation::problemsOf finds, by JSON pointer in the entry.
    assay::Problems problems;
};
/// others: the rest of the list, in which the same limit must not stand.
LimitOutcome limitOf(const LimitDraft &draft, const std::vector<evaluation::Specification> &others);

/// Where a problem's field is, and what to call it.
struct LimitField {
    QString objectName;
    QString words;
};
LimitField limitField(const QString &pointer, evaluation::LimitKind kind);

} // namespace plateau::ui
