// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/exporttables.h"
#include "core/notebook/records.h"

#include <QByteArray>

#include <vector>

namespace plateau::notebook {

/// What an export says of itself, in manifest.json.
struct ExportManifest {
    QString program;
    /// ISO 8601, as it was noted.
    QString exportedAt;
    /// The notebook's file name.
    QString notebook;
    int schema = 0;
    AuditHead head;
    std::vector<ExportedTable> tables;
};

inline constexpr char16_t exportFormat[] = u"plateau-export/1";

QByteArray manifestJson(const ExportManifest &manifest);
/// Throws Failure(NotANotebook) in one sentence that names what is wrong. path: for that sentence.
ExportManifest readManifest(const QByteArray &json, const QString &path);

} // namespace plateau::notebook
