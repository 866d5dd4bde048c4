// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audittrail.h"

namespace plateau::notebook {

/// Looks for the words of a filter in entries; see AuditFilter::text.
class AuditSearch
{
public:
    explicit AuditSearch(const AuditFilter &filter);

    /// Without words, which every entry has.
    bool isEmpty() const { return m_words.isEmpty(); }
    /// Reads what the entry changed only where its own words do not have it all.
    bool finds(const Database &database, const AuditItem &item) const;

private:
    QStringList m_words;
    std::function<QString(const AuditEntry &)> m_shown;
};

} // namespace plateau::notebook
