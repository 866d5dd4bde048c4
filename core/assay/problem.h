// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <vector>

namespace plateau::assay {

/// Something wrong with an input: where, and one sentence that says what would be right.
struct Problem {
    enum class Severity { Error, Warning };
    Severity severity = Severity::Error;
    /// JSON pointer (RFC 6901) into the document the input came from or would be written to; empty is the
    /// whole document.
    QString pointer;
    QString message;
    bool operator==(const Problem &) const = default;
};
using Problems = std::vector<Problem>;

Problem error(QString pointer, QString message);
Problem warning(QString pointer, QString message);
bool hasErrors(const Problems &problems);

/// Appends one token to a JSON pointer, escaped as RFC 6901 asks.
QString pointerTo(const QString &parent, const QString &key);
QString pointerTo(const QString &parent, qsizetype index);

} // namespace plateau::assay
