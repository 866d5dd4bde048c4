// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/localday.h"
#include "core/notebook/lots.h"
#include "core/planning/lotoutlook.h"
#include "ui/shared/theme.h"

#include <optional>
#include <variant>

namespace plateau::ui {

using planning::warnAhead_days;

/// How a container stands, in a shape and in words.
struct LotStanding {
    State shape = State::Info;
    QString words;
    bool operator==(const LotStanding &) const = default;
};

using LotUse = planning::LotDemand;

/// As every page has it, see planning::outlookOf.
LotStanding standingOf(const planning::Lot &lot, const QDateTime &now, const LotUse &use);
/// The same without any day, for where that stands beside it.
LotStanding listedStandingOf(const planning::Lot &lot, const QDateTime &now, const LotUse &use);
/// "12.5 mL", to the microlitre; what is overdrawn with a minus sign.
QString lotVolume(double volume_mL);
/// As assay::shownDay has it; empty for none.
QString dayText(const std::optional<QDate> &day);

/// Why a text is no day.
enum class DayFault { Empty, NotADay };
/// A day as it is keyed or printed on a label, see assay::readDay.
std::variant<QDate, DayFault> parseDay(const QString &text,
                                       assay::MonthAlone month = assay::MonthAlone::LastDay);
/// What would be right, for a sentence beside the field.
QString dayFaultSentence(DayFault fault, assay::MonthAlone month = assay::MonthAlone::LastDay);

/// "received", "taken, keyed by hand" and so on.
QString movementText(notebook::LotMovementKind kind);

} // namespace plateau::ui
