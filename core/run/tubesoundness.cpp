// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/tubesoundness.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"

#include <QCoreApplication>
#include <QSet>

namespace plateau::run {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct TubeSoundnessWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::run::TubeSoundness)
};

/// One tube at its place in the document.
class TubeCheck
{
public:
    TubeCheck(const Run &run, std::size_t index, Problems &problems)
        : m_run(run)
        , m_tube(run.tubes[index])
        , m_pointer(pointerTo(u"/tubes"_s, static_cast<qsizetype>(index)))
        , m_problems(problems)
    {
    }

    void check()
    {
        checkContent();
        checkVolumes();
        if (!m_tube.spoilt.isEmpty())
            checkLabel(m_problems, at(u"spoilt"_s), m_tube.spoilt, TubeSoundnessWording::tr("the reason"));
        checkTimes(u"addedAt_min"_s, m_tube.addedAt_min);
        checkTimes(u"readAt_min"_s, m_tube.readAt_min);
        for (const auto &[name, reading] : m_tube.readings)
            checkReading(pointerTo(at(u"readings"_s), name), reading);
    }

private:
    QString at(const QString &key) const { return pointerTo(m_pointer, key); }
    void complain(const QString &key, const QString &message)
    {
        m_problems.push_back(error(at(key), message));
    }

    void checkContent()
    {
        const bool namesSample = !m_tube.sample.isEmpty();
        const bool namesStandard = !m_tube.standard.isEmpty();
        switch (m_tube.role) {
        case Role::Blank:
            forbid(u"sample"_s, namesSample);
            forbid(u"standard"_s, namesStandard);
            forbid(u"sampleVolume_mL"_s, m_tube.sampleVolume_mL.has_value());
            break;
        case Role::Standard:
            forbid(u"sample"_s, namesSample);
            demand(u"standard"_s, namesStandard, TubeSoundnessWording::tr("the id of the standard in it"));
            break;
        case Role::Control:
            if (namesSample == namesStandard)
                complain(namesSample ? u"standard"_s : u"sample"_s,
                         TubeSoundnessWording::tr(
                             "a control names either a sample or a standard, exactly one of them"));
            break;
        case Role::SampleBlank:
        case Role::Sample:
        case Role::Spiked:
            demand(u"sample"_s, namesSample, TubeSoundnessWording::tr("the id of the sample in it"));
            forbid(u"standard"_s, namesStandard);
            break;
        }
        if (m_tube.role == Role::Spiked)
            demand(u"spike"_s, m_tube.spike.has_value(),
                   TubeSoundnessWording::tr("the standard added and its volume"));
        else
            forbid(u"spike"_s, m_tube.spike.has_value());
        checkNames();
    }

    void demand(const QString &key, bool given, const QString &what)
    {
        if (!given)
            complain(key, TubeSoundnessWording::tr("is missing: a tube with the role %1 needs %2")
                              .arg(quoted(roleWord(m_tube.role)), what));
    }

    void forbid(const QString &key, bool given)
    {
        if (given)
            complain(key, TubeSoundnessWording::tr(
                              "does not go with the role %1; leave it out or correct the role")
                              .arg(quoted(roleWord(m_tube.role))));
    }

    void checkNames()
    {
        if (!m_tube.sample.isEmpty() && !findSample(m_run, m_tube.sample))
            complain(u"sample"_s,
                     TubeSoundnessWording::tr("the run has no sample %1; add it to samples or correct the id")
                         .arg(quoted(m_tube.sample)));
        if (!m_tube.standard.isEmpty() && !findStandard(m_run, m_tube.standard))
            complain(u"standard"_s, noStandard(m_tube.standard));
        if (m_tube.spike && !findStandard(m_run, m_tube.spike->standard))
            m_problems.push_back(
                error(pointerTo(at(u"spike"_s), u"standard"_s), noStandard(m_tube.spike->standard)));
    }

    static QString noStandard(const QString &id)
    {
        return TubeSoundnessWording::tr("the run has no standard %1; add it to standards or correct the id")
            .arg(quoted(id));
    }

    void checkVolumes()
    {
        if (m_tube.sampleVolume_mL)
            checkWithin(m_problems, at(u"sampleVolume_mL"_s), *m_tube.sampleVolume_mL,
                        limit::smallestVolume_mL, limit::tubeVolume_mL, u"mL"_s);
        if (m_tube.spike)
            checkWithin(m_problems, pointerTo(at(u"spike"_s), u"volume_mL"_s), m_tube.spike->volume_mL,
                        limit::smallestVolume_mL, limit::tubeVolume_mL, u"mL"_s);
        for (const auto &[component, volume_mL] : m_tube.pipetted_mL)
            checkWithin(m_problems, pointerTo(at(u"pipetted_mL"_s), component), volume_mL, 0,
                        limit::tubeVolume_mL, u"mL"_s);
    }

    void checkTimes(const QString &key, const std::map<QString, double> &times_min)
    {
        for (const auto &[name, time_min] : times_min)
            checkWithin(m_problems, pointerTo(at(key), name), time_min, 0, limit::clock_min, u"min"_s);
    }

    void checkAbsorbance(const QString &pointer, double absorbance)
    {
        checkWithin(m_problems, pointer, absorbance, -limit::absorbance, limit::absorbance, {});
    }

    void checkReading(const QString &pointer, const Reading &reading)
    {
        if (const auto *single = std::get_if<double>(&reading)) {
            checkAbsorbance(pointer, *single);
            return;
        }
        const auto &series = std::get<ReadingSeries>(reading);
        if (series.empty())
            m_problems.push_back(
                error(pointer, TubeSoundnessWording::tr(
                                   "a series needs at least one reading; leave out what is not read yet")));
        for (std::size_t i = 0; i < series.size(); ++i) {
            const QString place = pointerTo(pointer, static_cast<qsizetype>(i));
            checkAbsorbance(pointerTo(place, u"absorbance"_s), series[i].absorbance);
            const QString time = pointerTo(place, u"at_min"_s);
            checkWithin(m_problems, time, series[i].at_min, 0, limit::wait_min, u"min"_s);
            if (i > 0 && !(series[i].at_min > series[i - 1].at_min))
                m_problems.push_back(error(
                    time, TubeSoundnessWording::tr("must be later than the reading before: %1 min is not "
                                                   "later than %2 min")
                              .arg(shown(series[i].at_min), shown(series[i - 1].at_min))));
        }
    }

    const Run &m_run;
    const Tube &m_tube;
    QString m_pointer;
    Problems &m_problems;
};

void checkUse(const Run &run, Problems &problems)
{
    QSet<QString> used;
    for (const Tube &tube : run.tubes)
        used.insert(tube.sample);
    for (std::size_t i = 0; i < run.samples.size(); ++i) {
        const QString &id = run.samples[i].id;
        if (!run.tubes.empty() && !id.trimmed().isEmpty() && !used.contains(id))
            problems.push_back(
                warning(pointerTo(u"/samples"_s, static_cast<qsizetype>(i)),
                        TubeSoundnessWording::tr("no tube holds the sample %1").arg(quoted(id))));
    }
}

} // namespace

void checkTubes(const Run &run, Problems &problems)
{
    if (run.tubes.empty())
        problems.push_back(error(u"/tubes"_s, TubeSoundnessWording::tr("a run needs at least one tube")));
    if (run.tubes.size() > maxTubes)
        problems.push_back(error(
            u"/tubes"_s, TubeSoundnessWording::tr("a rack holds at most %1 tubes, not %2; split the run")
                             .arg(maxTubes)
                             .arg(run.tubes.size())));
    for (std::size_t i = 0; i < run.tubes.size(); ++i)
        TubeCheck(run, i, problems).check();
    checkUse(run, problems);
}

} // namespace plateau::run
