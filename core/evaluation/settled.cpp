// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/settled.h"

#include <algorithm>

namespace plateau::evaluation {

bool isReportableBut(const Evaluation &evaluation, const QStringList &samples)
{
    bool any = false;
    for (const Result &result : evaluation.results) {
        if (samples.contains(result.sample))
            continue;
        if (result.verdict != Verdict::Reportable)
            return false;
        any = true;
    }
    return any;
}

} // namespace plateau::evaluation
