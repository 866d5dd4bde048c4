// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/lotnotes.h"

#include "core/planning/lotoutlook.h"

#include <algorithm>
#include <map>

namespace plateau::ui {

std::vector<Sentence> lotSentences(const notebook::StoredRun &stored, const std::vector<planning::Lot> &lots,
                                   const QDate &today)
{
    // The last dose of each: a lot only gets worse.
    std::map<qint64, QDateTime> takenAt;
    for (const notebook::StoredMark &mark : stored.marks) {
        if (mark.lot && notebook::doneMark(stored.marks, mark.dose) == &mark)
            takenAt[mark.lot->value] = std::max(takenAt[mark.lot->value], mark.at);
    }
    std::vector<Sentence> sentences;
    for (const planning::Lot &lot : lots) {
        const auto taken = takenAt.find(lot.id);
        if (taken == takenAt.end())
            continue;
        const QString text = planning::usedLotText(lot, taken->second, today);
        const std::optional<QDate> last = planning::lastGoodDay(lot);
        if (!text.isEmpty())
            sentences.push_back({last && *last < taken->second.date() ? State::Bad : State::Info, text});
    }
    return sentences;
}

} // namespace plateau::ui
