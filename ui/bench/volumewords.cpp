// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/volumewords.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct VolumeWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::VolumeWords)
};

constexpr double oneMillilitre = 1 - 1e-9;

QString intervalWords(const assay::Interval &interval, const QString &unit)
{
    const QString upper = evaluation::withUnit(evaluation::plainText(interval.upper), unit);
    if (interval.lower == interval.upper)
        return upper;
    return VolumeWords::tr("%1 to %2").arg(evaluation::plainText(interval.lower), upper);
}

} // namespace

double volumeUnitsPer_mL(double volume_mL)
{
    return volume_mL < oneMillilitre ? 1000 : 1;
}

QString volumeUnit(double volume_mL)
{
    return volume_mL < oneMillilitre ? u"µL"_s : u"mL"_s;
}

QString volumeWords(double volume_mL)
{
    // What is left behind the sixth decimal is arithmetic: 0.07 mL times 1000 is not quite 70.
    const double number = std::round(volume_mL * volumeUnitsPer_mL(volume_mL) * 1e6) / 1e6;
    return evaluation::withUnit(evaluation::plainText(number), volumeUnit(volume_mL));
}

QString dilutionWords(const run::Sample &sample)
{
    QStringList steps;
    for (const run::DilutionStep &step : sample.dilution)
        steps << VolumeWords::tr("%1 to %2", "a dilution step: a volume made up to another")
                     .arg(volumeWords(step.take_mL), volumeWords(step.makeUpTo_mL));
    return steps.join(VolumeWords::tr(", then "));
}

QString waitWords(const assay::WaitStep &wait)
{
    const QString time = intervalWords(wait.wait_min, u"min"_s);
    return wait.temperature_C
               ? VolumeWords::tr("Wait %1 at %2").arg(time, intervalWords(*wait.temperature_C, u"°C"_s))
               : VolumeWords::tr("Wait %1").arg(time);
}

} // namespace plateau::ui
