// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/soundness.h"

#include <QCoreApplication>
#include <QStringList>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

struct TemplateWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Template)
};

/// As the shipped methods say it in the languages of the window: a method that was taken in one is read in all.
const QStringList marks{u"template"_s, u"Vorlage"_s, u"modèle"_s, u"plantilla"_s};

/// What of its name says so, "(template)"; empty where nothing does.
QString markInName(const Method &method)
{
    for (const QString &mark : marks) {
        const qsizetype at = method.name.indexOf(u'(' + mark + u')', 0, Qt::CaseInsensitive);
        if (at >= 0)
            return method.name.mid(at, mark.size() + 2);
    }
    return {};
}

/// "Template:", in French with a space before the colon.
QString markInSource(const Method &method)
{
    const QString source = method.source.trimmed();
    for (const QString &mark : marks) {
        qsizetype end = mark.size();
        if (!source.startsWith(mark, Qt::CaseInsensitive))
            continue;
        while (end < source.size() && source[end].isSpace())
            ++end;
        if (end < source.size() && source[end] == u':')
            return source.left(end + 1);
    }
    return {};
}

} // namespace

bool isTemplate(const Method &method)
{
    return !markInName(method).isEmpty() || !markInSource(method).isEmpty();
}

Problems templateRemarks(const Method &method)
{
    Problems remarks;
    if (const QString mark = markInSource(method); !mark.isEmpty())
        remarks.push_back(
            warning(u"/source"_s,
                    TemplateWording::tr("still begins with \"%1\"; begin it with where the volumes "
                                        "used here come from (document, section, date). Until then its "
                                        "results are marked as those of a template")
                        .arg(mark)));
    if (const QString mark = markInName(method); !mark.isEmpty())
        remarks.push_back(warning(
            u"/name"_s,
            TemplateWording::tr("still says \"%1\"; take that out once the volumes are yours").arg(mark)));
    return remarks;
}

} // namespace plateau::assay
