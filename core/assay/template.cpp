// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/soundness.h"

#include <QCoreApplication>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

struct TemplateWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Template)
};

bool saysSoInItsName(const Method &method)
{
    return method.name.contains("(template)"_L1, Qt::CaseInsensitive);
}

bool saysSoInItsSource(const Method &method)
{
    return method.source.trimmed().startsWith("Template:"_L1, Qt::CaseInsensitive);
}

} // namespace

bool isTemplate(const Method &method)
{
    return saysSoInItsName(method) || saysSoInItsSource(method);
}

Problems templateRemarks(const Method &method)
{
    Problems remarks;
    if (saysSoInItsSource(method))
        remarks.push_back(
            warning(u"/source"_s,
                    TemplateWording::tr("still begins with \"Template:\"; begin it with where the volumes "
                                        "used here come from (document, section, date). Until then its "
                                        "results are marked as those of a template")));
    if (saysSoInItsName(method))
        remarks.push_back(warning(
            u"/name"_s,
            TemplateWording::tr("still says \"(template)\"; take that out once the volumes are yours")));
    return remarks;
}

} // namespace plateau::assay
