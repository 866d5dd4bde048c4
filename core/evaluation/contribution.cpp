// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/contribution.h"

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

const TubeValue &valueAt(const Evaluation &evaluation, const Layout &layout, int tube, size_t measurand)
{
    return evaluation.tubes[static_cast<size_t>(tube) * layout.measurands().size() + measurand];
}

QString unitOf(const run::Sample &sample)
{
    return sample.form == run::Form::Solid ? u"g/100 g"_s : u"g/L"_s;
}

Contribution contributionOf(const Layout &layout, const Evaluation &evaluation, size_t measurand,
                            const run::Sample &sample)
{
    Contribution contribution;
    contribution.terms = &layout.measurands()[measurand];
    for (const int tube : layout.resultTubes(sample.id)) {
        const auto &concentration = valueAt(evaluation, layout, tube, measurand).concentration_g_per_L;
        if (!concentration)
            continue;
        contribution.tubes.push_back(tube);
        contribution.values.push_back(*concentration * run::reportedPer_g_per_L(sample));
    }
    return contribution;
}

} // namespace plateau::evaluation
