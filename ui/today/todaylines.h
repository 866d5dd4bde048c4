// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "core/notebook/shelf.h"
#include "ui/bookentries.h"
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
/// Of the runs given, newest decision first, those that were decided: at most so many.
std::vector<TodayLine> decisionLines(std::vector<notebook::RunSummary> runs, std::size_t most);

} // namespace plateau::ui
