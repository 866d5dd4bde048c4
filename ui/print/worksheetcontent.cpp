// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetcontent.h"

#include "core/evaluation/format.h"
#include "ui/print/decimalsign.h"
#include "ui/print/volumeunit.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct WorksheetcontentWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

QString rangeText(const assay::Interval &interval)
{
    return interval.lower == interval.upper ? plainText(interval.lower)
                                            : WorksheetcontentWords::tr("%1 to %2")
                                                  .arg(plainText(interval.lower), plainText(interval.upper));
}

QString preparationOf(const run::Sample &sample)
{
    QStringList parts;
    if (sample.form == run::Form::Solid && sample.mass_g && sample.extract_mL)
        parts << WorksheetcontentWords::tr("%1 in %2")
                     .arg(withUnit(plainText(*sample.mass_g), u"g"_s),
                          withUnit(plainText(*sample.extract_mL), u"mL"_s));
    if (!sample.dilution.empty())
        parts << dilutionOnPaper(sample.dilution);
    return localNumbers(parts.join(u", "_s));
}

TubeGroup groupOf(const run::Run &run, int index)
{
    const run::Tube &tube = run.tubes[static_cast<std::size_t>(index)];
    TubeGroup group{index, 1, {}, {}, {}};
    if (tube.role == run::Role::Blank) {
        group.name = evaluation::capitalised(roleOnPaper(tube.role));
        return group;
    }
    group.name = tube.sample.isEmpty() ? tube.standard : tube.sample;
    group.role = roleOnPaper(tube.role);
    if (const run::Sample *sample = run::findSample(run, tube.sample))
        group.preparation = preparationOf(*sample);
    else if (const run::Standard *standard = run::findStandard(run, tube.standard))
        group.preparation = strengthOnPaper(*standard);
    return group;
}

} // namespace

WorksheetContent worksheetOf(const assay::Method &method, const run::Run &run,
                             const planning::Glassware &glassware)
{
    WorksheetContent content;
    content.method = method;
    content.run = run;
    content.rounds = planning::roundsOf(method, run, glassware);
    return content;
}

std::vector<TubeGroup> tubeGroups(const run::Run &run)
{
    std::vector<TubeGroup> groups;
    for (std::size_t i = 0; i < run.tubes.size(); ++i) {
        const run::Tube &tube = run.tubes[i];
        const bool joins = i > 0 && tube.role == run.tubes[i - 1].role &&
                           tube.sample == run.tubes[i - 1].sample &&
                           tube.standard == run.tubes[i - 1].standard;
        if (joins)
            ++groups.back().tubes;
        else
            groups.push_back(groupOf(run, static_cast<int>(i)));
    }
    return groups;
}

QString roleOnPaper(run::Role role)
{
    switch (role) {
    case run::Role::Blank:
        return WorksheetcontentWords::tr("blank");
    case run::Role::SampleBlank:
        return WorksheetcontentWords::tr("sample blank");
    case run::Role::Standard:
        return WorksheetcontentWords::tr("standard");
    case run::Role::Control:
        return WorksheetcontentWords::tr("control");
    case run::Role::Spiked:
        return WorksheetcontentWords::tr("spiked");
    case run::Role::Sample:
        break;
    }
    return WorksheetcontentWords::tr("sample");
}

QString strengthOnPaper(const run::Standard &standard)
{
    const QString strength = evaluation::strengthText(standard.concentration_g_per_L, standard.uncertainty_percent);
    return withUnit(localNumbers(strength), u"g/L"_s);
}

QString dilutionOnPaper(const std::vector<run::DilutionStep> &steps)
{
    QStringList parts;
    for (const run::DilutionStep &step : steps) {
        const bool hasOneUnit = volumeUnit(step.take_mL) == volumeUnit(step.makeUpTo_mL);
        parts << WorksheetcontentWords::tr("%1 → %2", "millilitres taken, made up to")
                     .arg(hasOneUnit ? plainText(volumeInUnitOf(step.take_mL, step.take_mL))
                                     : volumeWords(step.take_mL),
                          volumeWords(step.makeUpTo_mL));
    }
    return parts.join(u", "_s);
}

QString waitOnPaper(const assay::WaitStep &wait)
{
    const QString time = withUnit(rangeText(wait.wait_min), u"min"_s);
    return wait.temperature_C ? WorksheetcontentWords::tr("%1 at %2")
                                    .arg(time, withUnit(rangeText(*wait.temperature_C), u"°C"_s))
                              : time;
}

} // namespace plateau::ui
