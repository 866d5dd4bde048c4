// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/records.h"

namespace plateau::notebook {

/// What the laboratory saves as a whole, again and again: each saving is a row, and none goes away.
enum class Document { Laboratory, Specifications };

/// The row of the last saving; nothing where there was none.
std::optional<qint64> newestDocument(const Database &database, Document document);
/// The row of the last saving ahead of a record, by the audit trail; nothing where there was none.
std::optional<qint64> documentBefore(const Database &database, Document document, const QString &recordTable,
                                     qint64 recordId);
/// What that row holds; nothing for no row.
std::optional<QString> documentText(const Database &database, Document document, std::optional<qint64> row);
/// By whom and when that row was saved, and its number among the savings; nothing for no row.
std::optional<LaboratorySaving> documentSaving(const Database &database, Document document,
                                               std::optional<qint64> row);
/// False where exactly this was saved last. reason: only of Specifications, where it is needed.
bool storeDocument(Act &act, Document document, const QByteArray &content, const QString &reason = {});

} // namespace plateau::notebook
