// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QString>

#include <optional>

namespace plateau::ui {

struct MethodFile {
    std::optional<assay::Method> method;
    /// Why there is none, for a person: the first problems, a line each.
    QString fault;
};
/// A plateau-method/1 file through the strict reader.
MethodFile readMethodFile(const QString &path);

/// The whole file or nothing. Empty, or why it was not written.
QString writeMethodFile(const QString &path, const assay::Method &method);

/// "glycerol-2.json"
QString methodFileName(const assay::Method &method);

} // namespace plateau::ui
