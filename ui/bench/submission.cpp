// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/submission.h"

#include "ui/bench/places.h"
#include "ui/instrument/takenreading.h"

namespace plateau::ui {

namespace {

notebook::ReadingOrigin::Kind kindOf(TakenReading::Origin origin)
{
    switch (origin) {
    case TakenReading::Origin::Pasted:
        return notebook::ReadingOrigin::Kind::Pasted;
    case TakenReading::Origin::File:
        return notebook::ReadingOrigin::Kind::File;
    case TakenReading::Origin::Serial:
        return notebook::ReadingOrigin::Kind::Serial;
    case TakenReading::Origin::Network:
        break;
    }
    return notebook::ReadingOrigin::Kind::Network;
}

} // namespace

Submission submissionOf(const TakenReading &taken)
{
    Submission submission;
    submission.absorbance = taken.absorbance;
    submission.typed = readingText(taken.absorbance);
    submission.origin = {kindOf(taken.origin), taken.source, taken.raw};
    submission.tube = taken.tube;
    return submission;
}

std::optional<int> tubeNamed(const run::Run &run, const QString &name, const QString &reading)
{
    const QString wanted = name.trimmed();
    bool isNumber = false;
    const int number = wanted.toInt(&isNumber);
    if (isNumber && number >= 1 && number <= static_cast<int>(run.tubes.size()))
        return number - 1;
    for (std::size_t at = 0; at < run.tubes.size(); ++at) {
        const run::Tube &tube = run.tubes[at];
        const QString &contents = tube.standard.isEmpty() ? tube.sample : tube.standard;
        if (!contents.isEmpty() && contents.compare(wanted, Qt::CaseInsensitive) == 0 &&
            tube.spoilt.isEmpty() && !tube.readings.contains(reading))
            return static_cast<int>(at);
    }
    return std::nullopt;
}

} // namespace plateau::ui
