// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/placewords.h"

#include "core/evaluation/format.h"
#include "ui/bench/places.h"

#include <QCoreApplication>

#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PlaceWords)
};

QString fieldWord(const QString &field)
{
    static const std::map<QString, QString> words{
        {u"title"_s, Words::tr("title")},
        {u"method"_s, Words::tr("method")},
        {u"wavelength_nm"_s, Words::tr("wavelength")},
        {u"pathLength_mm"_s, Words::tr("path length")},
        {u"calibration"_s, Words::tr("calibration")},
        {u"id"_s, Words::tr("name")},
        {u"mass_g"_s, Words::tr("mass")},
        {u"extract_mL"_s, Words::tr("extract")},
        {u"take_mL"_s, Words::tr("take")},
        {u"makeUpTo_mL"_s, Words::tr("make up to")},
        {u"sampleVolume_mL"_s, Words::tr("volume in the tube")},
        {u"concentration_g_per_L"_s, Words::tr("concentration")},
        {u"preparedAt"_s, Words::tr("prepared at")},
        {u"usedAt"_s, Words::tr("used at")},
        {u"lossPerHour"_s, Words::tr("loss per hour")},
        {u"replicates"_s, Words::tr("tubes")},
        {u"spike"_s, Words::tr("spike")},
        {u"expected"_s, Words::tr("expected")},
        {u"received"_s, Words::tr("received")},
        {u"uncertainty"_s, Words::tr("standard uncertainties")},
        {u"absorbance"_s, Words::tr("absorbance")},
        {u"absorptivity_percent"_s, Words::tr("absorptivity")},
        {u"pathLength_percent"_s, Words::tr("path length")},
        {u"totalVolume_percent"_s, Words::tr("total volume")},
        {u"sampleVolume_percent"_s, Words::tr("sample volume")},
        {u"dilution_percent"_s, Words::tr("each dilution step")},
        {u"uncertainty_percent"_s, Words::tr("standard uncertainty")},
        {u"extract_percent"_s, Words::tr("extract of a solid")},
        {u"samples"_s, Words::tr("samples")},
        {u"standards"_s, Words::tr("standard")},
        {u"tubes"_s, Words::tr("tubes")},
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
        return Words::tr("sample %1").arg(run.samples[at].id);
    if (list == "standards"_L1 && has(run.standards))
        return Words::tr("standard %1").arg(run.standards[at].id);
    if (list == "tubes"_L1 && has(run.tubes))
        return Words::tr("tube %1 (%2)").arg(index + 1).arg(contentsText(run, index));
    if (list == "dilution"_L1)
        return Words::tr("dilution step %1").arg(index + 1);
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
