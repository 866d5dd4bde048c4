// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/placewords.h"

#include "core/evaluation/format.h"
#include "core/run/controls.h"
#include "ui/bench/places.h"

#include <QCoreApplication>

#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct PlaceWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PlaceWords)
};

QString fieldWord(const QString &field)
{
    static const std::map<QString, QString> words{
        {u"title"_s, PlaceWords::tr("title")},
        {u"method"_s, PlaceWords::tr("method")},
        {u"wavelength_nm"_s, PlaceWords::tr("wavelength")},
        {u"pathLength_mm"_s, PlaceWords::tr("path length")},
        {u"calibration"_s, PlaceWords::tr("calibration")},
        {u"id"_s, PlaceWords::tr("name")},
        {u"mass_g"_s, PlaceWords::tr("mass")},
        {u"extract_mL"_s, PlaceWords::tr("extract")},
        {u"take_mL"_s, PlaceWords::tr("take")},
        {u"makeUpTo_mL"_s, PlaceWords::tr("make up to")},
        {u"sampleVolume_mL"_s, PlaceWords::tr("volume in the tube")},
        {u"concentration_g_per_L"_s, PlaceWords::tr("concentration")},
        {u"preparedAt"_s, PlaceWords::tr("prepared at")},
        {u"usedAt"_s, PlaceWords::tr("used at")},
        {u"lossPerHour"_s, PlaceWords::tr("loss per hour")},
        {u"replicates"_s, PlaceWords::tr("tubes")},
        {u"spike"_s, PlaceWords::tr("spike")},
        {u"expected"_s, PlaceWords::tr("expected")},
        {u"received"_s, PlaceWords::tr("received")},
        {u"uncertainty"_s, PlaceWords::tr("standard uncertainties")},
        {u"absorbance"_s, PlaceWords::tr("absorbance")},
        {u"absorptivity_percent"_s, PlaceWords::tr("absorptivity")},
        {u"pathLength_percent"_s, PlaceWords::tr("path length")},
        {u"totalVolume_percent"_s, PlaceWords::tr("total volume")},
        {u"sampleVolume_percent"_s, PlaceWords::tr("sample volume")},
        {u"dilution_percent"_s, PlaceWords::tr("each dilution step")},
        {u"uncertainty_percent"_s, PlaceWords::tr("standard uncertainty")},
        {u"extract_percent"_s, PlaceWords::tr("extract of a solid")},
        {u"samples"_s, PlaceWords::tr("samples")},
        {u"standards"_s, PlaceWords::tr("standard")},
        {u"tubes"_s, PlaceWords::tr("tubes")},
    };
    const auto word = words.find(field);
    return word == words.end() ? field : word->second;
}

/// "samples", "2" is one thing: the third sample.
QString memberWord(const QString &list, int index, const run::Run &run)
{
    const auto has = [index](const auto &members) {
        return index >= 0 && index < static_cast<int>(members.size());
    };
    const auto at = static_cast<std::size_t>(index);
    if (list == "samples"_L1 && has(run.samples))
        return withRoleWord(PlaceWords::tr("sample %1"), run.samples[at].id);
    if (list == "standards"_L1 && has(run.standards))
        return withRoleWord(run::isControl(run, run.standards[at].id) ? PlaceWords::tr("control %1")
                                                                      : PlaceWords::tr("standard %1"),
                            run.standards[at].id);
    if (list == "tubes"_L1 && has(run.tubes))
        return PlaceWords::tr("tube %1 (%2)").arg(index + 1).arg(contentsText(run, index));
    if (list == "dilution"_L1)
        return PlaceWords::tr("dilution step %1").arg(index + 1);
    return {};
}

QString words(const QString &pointer, const run::Run &run)
{
    const QStringList tokens = pointer.split(u'/', Qt::SkipEmptyParts);
    QStringList parts;
    for (qsizetype token = 0; token < tokens.size(); ++token) {
        bool numbered = false;
        const int index = token + 1 < tokens.size() ? tokens[token + 1].toInt(&numbered) : -1;
        const QString member = numbered ? memberWord(tokens[token], index, run) : QString();
        if (member.isEmpty()) {
            parts << fieldWord(tokens[token]);
        } else {
            parts << member;
            ++token;
        }
    }
    return parts.join(u", "_s);
}

} // namespace

assay::Problems inWordsOfTheForm(assay::Problems problems, const run::Run &run)
{
    for (assay::Problem &problem : problems)
        problem.pointer = evaluation::capitalised(words(problem.pointer, run));
    return problems;
}

} // namespace plateau::ui
