// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "tests/support/benches.h"

namespace plateau::test {

/// Two blanks, two standards, the rest samples in duplicate, each diluted in two steps; uncertainties stated.
inline run::Run rackOf(int tubes)
{
    run::Run run = plainRun();
    run.uncertainty = uncertainties();
    run.standards = {{QStringLiteral("STD"), 0.168, {}, {}, {}, 0}};
    run.samples.clear();
    run.tubes = {blank(0.100, 0.110), blank(0.101, 0.111), standardTube("STD", 0.1, 0.61),
                 standardTube("STD", 0.1, 0.611)};
    for (int i = 4; i < tubes; ++i) {
        const QByteArray id = "S" + QByteArray::number(i / 2);
        if (i % 2 == 0)
            run.samples.push_back(liquid(id.constData(), {{5, 50}, {10, 25}}));
        run.tubes.push_back(sampleTube(id.constData(), 0.120, 0.5 + 0.001 * (i % 2)));
    }
    return run;
}

/// The same with the time of every starter and reading, a minute apart from tube to tube.
inline run::Run timedRackOf(int tubes)
{
    run::Run run = rackOf(tubes);
    for (int i = 0; i < tubes; ++i) {
        run::Tube &tube = run.tubes[static_cast<size_t>(i)];
        tube.addedAt_min = {{QStringLiteral("sample"), i}, {QStringLiteral("starter"), i + 7.0}};
        tube.readAt_min = {{QStringLiteral("A1"), i + 6.5}, {QStringLiteral("A2"), i + 24.0}};
    }
    return run;
}

/// The timed rack read through a line of three levels, in two measurands, every third sample with a blank of
/// its own.
inline run::Run hardestRackOf(int tubes)
{
    run::Run run = timedRackOf(tubes);
    run.method = sequentialMethod().id;
    run.calibration = run::Calibration::Line;
    run.tubes[2].sampleVolume_mL = 0.05;
    run.tubes[3].sampleVolume_mL = 0.1;
    run.tubes.erase(run.tubes.begin() + 4, run.tubes.begin() + 6);
    run.samples.erase(run.samples.begin());
    for (const double volume_mL : {0.2, 0.2}) {
        run.tubes.insert(run.tubes.begin() + 4, standardTube("STD", 0.1, 1.1));
        run.tubes[4].sampleVolume_mL = volume_mL;
    }
    for (size_t i = 6; i < run.tubes.size(); i += 6)
        run.tubes[i].role = run::Role::SampleBlank;
    for (run::Tube &tube : run.tubes) {
        tube.readings[QStringLiteral("A3")] = std::get<double>(tube.readings[QStringLiteral("A2")]) + 0.2;
        tube.addedAt_min[QStringLiteral("second")] = 120;
        tube.readAt_min[QStringLiteral("A3")] = 140;
    }
    return run;
}

} // namespace plateau::test
