// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/standardstock.h"
#include "ui/print/labels.h"
#include "ui/shared/theme.h"

namespace plateau::ui {

/// How a preparation stands, in a shape and in words.
struct PreparationStanding {
    State shape = State::Info;
    QString words;
    bool operator==(const PreparationStanding &) const = default;
};
/// "good for 2 h 10 min", "good for 5 days", "past its time since 2026-03-02 14:20", "keeps its strength",
/// "thrown away".
PreparationStanding standingOf(const planning::HeldPreparation &held, const QDateTime &now);
/// "0.1984 ± 0.0012 g/L" (k = 2), when it was made.
QString strengthText(const planning::StrengthMade &made);
/// "0.1875 g/L", now, to as many decimals; a dash once it is thrown away.
QString strengthNowText(const planning::HeldPreparation &held, const QDateTime &now);
/// For its flask; made by is filled in when it is printed.
Label labelOf(const planning::HeldPreparation &held);
/// "99.5 ± 0.5 %"
/// Why goodUntil is what it is, a sentence to stand behind that moment; empty for what keeps its strength.
QString whyGoodUntil(const planning::Preparation &made);
/// "24 h, until 2026-03-03 08:10": the laboratory's own rule; empty where there is none.
QString ownRuleText(const planning::Preparation &made);
QString purityText(const planning::Substance &substance);
/// The sentence for a problem of a substance or a preparation.
QString standardSentence(const assay::Problem &problem);

} // namespace plateau::ui
