// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDateTime>
#include <QString>

#include <vector>

namespace plateau::notebook {

/// Which backups are kept: the newest ones; besides them the last of each of the latest days that have one,
/// the last of each of the latest months, and the last of every year for good. Days, months and years are
/// those of UTC. It counts backups, not the time that went by, so that a clock that is wrong takes none away.
/// Common practice, no source.
struct BackupRule {
    int newest = 10;
    int days = 30;
    int months = 24;
};
/// In one sentence for a person.
QString backupRuleText(const BackupRule &rule = {});

/// Those of the given moments, in any order, that the rule does not keep.
std::vector<QDateTime> outlived(std::vector<QDateTime> made, const BackupRule &rule = {});

} // namespace plateau::notebook
