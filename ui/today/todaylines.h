// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/item.h"
#include "core/notebook/records.h"
#include "core/notebook/shelf.h"
#include "core/planning/reagents.h"
#include "core/planning/standardstock.h"
#include "ui/bookentries.h"
#include "ui/books/reagentnames.h"
#include "ui/shared/sentencelist.h"

#include <optional>
#include <vector>

namespace plateau::ui {

class BenchSession;

/// One line of the first page: what it says, and the run or the book it leads to.
struct TodayLine {
    Sentence sentence;
    std::optional<notebook::RunId> run{};
    std::optional<Book> book{};
    bool operator==(const TodayLine &) const = default;
};

/// Each rack, how far it is, and what is next for it.
std::vector<TodayLine> benchLines(const BenchSession &session);
/// Repeats that decided runs advise come first, as on the shelf.
std::vector<TodayLine> waitingLines(const std::vector<notebook::WaitingSample> &waiting);
/// What can be used still, with what it is worth now.
std::vector<TodayLine> standardLines(const std::vector<planning::HeldPreparation> &preparations,
                                     const QDateTime &now);
/// Checks that failed, are overdue, were never made or fall due soon; the worst first.
std::vector<TodayLine> equipmentLines(const std::vector<equipment::HeldItem> &items, const QDate &today);
/// Containers that something is to be done about, in the order they came. doses: the most a tube takes;
/// rackPlaces: how many tubes a rack has.
std::vector<TodayLine> lotLines(const std::vector<planning::Lot> &lots, const QDateTime &now,
                                const ReagentNames &doses, int rackPlaces);
/// Of the runs given, newest decision first, those that were decided: at most so many.
std::vector<TodayLine> decisionLines(std::vector<notebook::RunSummary> runs, std::size_t most);

} // namespace plateau::ui
