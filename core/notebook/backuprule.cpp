// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/backuprule.h"

#include "core/notebook/sentence.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <set>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

QString backupRuleText(const BackupRule &rule)
{
    return Sentence::tr("The newest %1 backups are kept, and the last of each of the latest %2 days and %3 "
                        "months that have one, and of every year.")
        .arg(rule.newest)
        .arg(rule.days)
        .arg(rule.months);
}

std::vector<QDateTime> outlived(std::vector<QDateTime> made, const BackupRule &rule)
{
    std::ranges::sort(made, std::ranges::greater{});
    std::set<QDateTime> kept;
    for (std::size_t i = 0; i < made.size() && i < static_cast<std::size_t>(rule.newest); ++i)
        kept.insert(made[i]);
    // Newest first: the first of each period is its last one.
    const auto keepLastOfEach = [&](const QString &period, std::size_t most) {
        std::set<QString> seen;
        for (const QDateTime &moment : made) {
            if (seen.size() == most)
                return;
            if (seen.insert(moment.toUTC().toString(period)).second)
                kept.insert(moment);
        }
    };
    keepLastOfEach(u"yyyyMMdd"_s, static_cast<std::size_t>(rule.days));
    keepLastOfEach(u"yyyyMM"_s, static_cast<std::size_t>(rule.months));
    keepLastOfEach(u"yyyy"_s, std::numeric_limits<std::size_t>::max());
    std::erase_if(made, [&kept](const QDateTime &moment) { return kept.contains(moment); });
    return made;
}

} // namespace plateau::notebook
