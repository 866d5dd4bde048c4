// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"

#include <algorithm>
#include <string>

namespace plateau::test {

/// All problems, one a line, for the message of a failed test.
inline std::string listed(const assay::Problems &problems)
{
    std::string text = "problems:";
    for (const assay::Problem &problem : problems)
        text += "\n  " + problem.pointer.toStdString() + ": " + problem.message.toStdString();
    return text;
}

/// True if a problem of that severity stands at the pointer and its sentence holds the fragment.
inline bool names(const assay::Problems &problems, const char *pointer, const char *fragment,
                  assay::Problem::Severity severity = assay::Problem::Severity::Error)
{
    return std::ranges::any_of(problems, [&](const assay::Problem &problem) {
        return problem.severity == severity && problem.pointer == QString::fromUtf8(pointer) &&
               problem.message.contains(QString::fromUtf8(fragment));
    });
}

inline std::ptrdiff_t errorsIn(const assay::Problems &problems)
{
    return std::ranges::count(problems, assay::Problem::Severity::Error, &assay::Problem::severity);
}

} // namespace plateau::test
