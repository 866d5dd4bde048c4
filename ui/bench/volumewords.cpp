// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/volumewords.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>
#include <QStringList>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct VolumeWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::VolumeWords)
};

QString intervalWords(const assay::Interval &interval, const QString &unit)
{
    const QString upper = evaluation::withUnit(evaluation::plainText(interval.upper), unit);
    if (interval.lower == interval.upper)
        return upper;
    return VolumeWords::tr("%1 to %2").arg(evaluation::plainText(interval.lower), upper);
}

} // namespace

QString dilutionStepWords(const run::DilutionStep &step)
{
    return VolumeWords::tr("%1 to %2", "a dilution step: a volume made up to another")
        .arg(volumeWords(step.take_mL), volumeWords(step.makeUpTo_mL));
}

QString dilutionWords(const run::Sample &sample)
{
    QStringList steps;
    for (const run::DilutionStep &step : sample.dilution)
        steps << dilutionStepWords(step);
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
