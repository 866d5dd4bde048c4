// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/appraisalwords.h"

#include "core/evaluation/format.h"
#include "ui/shared/shownnumbers.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct AppraisalWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Appraisal)
};

const QString unknown = u"–"_s;

QString figures(double value, int count)
{
    return evaluation::significantText(value, count);
}

/// Sums of decimal fractions would else show what binary ones made of them.
QString volume(double volume_mL)
{
    return evaluation::roundedText(volume_mL, 6);
}

QStringList withMeasurands(QStringList titles, const assay::Method &method)
{
    for (const assay::Measurand &measurand : method.measurands)
        titles << (measurand.name.isEmpty() ? unknown : measurand.name);
    return titles;
}

} // namespace

FactsTable factorFacts(const assay::Method &method, const evaluation::Appraisal &appraisal)
{
    FactsTable table{withMeasurands({AppraisalWords::tr("Wavelength")}, method), {}};
    for (const evaluation::WavelengthFactor &row : appraisal.factors) {
        QStringList texts{AppraisalWords::tr("%1 nm").arg(row.wavelength_nm)};
        for (const auto &factor : row.factors_g_per_L)
            texts << (factor ? figures(*factor, 4) : unknown);
        table.rows.push_back(texts);
    }
    return table;
}

FactsTable rangeFacts(const assay::Method &method, const evaluation::Appraisal &appraisal)
{
    // A tube of the same volume throughout need not be said in every row.
    const bool sayTube = !std::ranges::all_of(appraisal.volumes, &evaluation::VolumeRange::madeUp);
    QStringList titles{AppraisalWords::tr("Sample")};
    if (sayTube)
        titles << AppraisalWords::tr("Tube");
    FactsTable table{withMeasurands(titles, method), {}};
    for (const evaluation::VolumeRange &row : appraisal.volumes) {
        QStringList texts{AppraisalWords::tr("%1 mL").arg(volume(row.sampleVolume_mL))};
        if (sayTube)
            texts << (row.madeUp ? AppraisalWords::tr("%1 mL").arg(volume(row.tubeVolume_mL))
                                 : AppraisalWords::tr("%1 mL, not made up").arg(volume(row.tubeVolume_mL)));
        for (const auto &range : row.ranges)
            texts << (range ? AppraisalWords::tr("%1 to %2").arg(figures(range->lower_g_per_L, 2),
                                                                figures(range->upper_g_per_L, 3))
                            : unknown);
        table.rows.push_back(texts);
    }
    return table;
}

FactsTable limitFacts(const assay::Method &method, const evaluation::Appraisal &appraisal)
{
    FactsTable table{{AppraisalWords::tr("Measurand"), AppraisalWords::tr("Detection"),
                      AppraisalWords::tr("Quantification")},
                     {}};
    for (std::size_t i = 0; i < appraisal.limits.size(); ++i) {
        const auto &limits = appraisal.limits[i];
        const QString &name = method.measurands[i].name;
        table.rows.push_back({name.isEmpty() ? unknown : name,
                              limits ? figures(limits->detection_g_per_L, 2) : unknown,
                              limits ? figures(limits->quantification_g_per_L, 2) : unknown});
    }
    return table;
}

QString limitRule(const evaluation::Appraisal &appraisal, double smallestAbsorbance)
{
    QStringList sentences{
        AppraisalWords::tr("Detection: a difference of %1 in the largest sample volume, undiluted.")
            .arg(shownNumber(evaluation::plainText(smallestAbsorbance)))};
    if (smallestAbsorbance == evaluation::AppraisalInputs{}.smallestAbsorbance)
        sentences << AppraisalWords::tr(
            "That difference is common practice, no source; enter your photometer's instead.");
    const QString signal = shownNumber(figures(appraisal.quantificationSignal, 2));
    sentences
        << (appraisal.quantificationByWindow
                ? AppraisalWords::tr("Quantification: the window's smallest net signal, %1.").arg(signal)
                : AppraisalWords::tr(
                      "Quantification: 10/3.3 of that difference, %1 (common practice, no source), "
                      "as the window names no smallest net signal.")
                      .arg(signal));
    return sentences.join(u' ');
}

std::vector<QString> filledTexts(const evaluation::Appraisal &appraisal)
{
    std::vector<QString> texts;
    for (const double volume_mL : appraisal.volumeAfterStep_mL)
        texts.push_back(volume(volume_mL));
    return texts;
}

} // namespace plateau::ui
