// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettewords.h"

#include "core/assay/insentence.h"
#include "core/assay/listed.h"
#include "core/evaluation/format.h"
#include "ui/bench/places.h"
#include "ui/bench/volumewords.h"
#include "ui/shared/shownnumbers.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct PipetteWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PipetteWords)
};

using Dose = planning::Round::Dose;
using SheetState = PipetteSheet::State;

const run::Tube &tubeOf(const PipetteSheet &sheet, const Dosing &dosing)
{
    return sheet.run().tubes.at(static_cast<std::size_t>(dosing.tube));
}

/// The sample that goes in, where it is diluted first; nullptr otherwise.
const run::Sample *dilutedIn(const PipetteSheet &sheet, const Dosing &dosing)
{
    const QString &id = tubeOf(sheet, dosing).sample;
    const Dose *dose = sheet.doseOf(dosing);
    const run::Sample *sample = run::findSample(sheet.run(), id);
    return sample && dose && dose->content == id && !sample->dilution.empty() ? sample : nullptr;
}

QString foldWords(const run::Sample &sample)
{
    return PipetteWords::tr("diluted %1-fold").arg(QString::number(run::dilutionFactor(sample.dilution), 'g', 3));
}

/// "P-104, diluted 10-fold"
QString dilutedContent(const PipetteSheet &sheet, const Dosing &dosing)
{
    const run::Sample *sample = dilutedIn(sheet, dosing);
    const QString content = contentInSentence(sheet, dosing);
    return sample ? PipetteWords::tr("%1, %2", "a sample, diluted so many times").arg(content, foldWords(*sample))
                  : content;
}

/// "150, not 100 µL"
QString differenceWords(const Pipetted &went)
{
    QString volume = volumeWords(went.volume_mL);
    if (volumeUnit(went.volume_mL) == volumeUnit(went.planned_mL))
        volume = shownNumber(volume.section(QChar(QChar::Nbsp), 0, 0)); // no unit tells there that it is a number
    return PipetteWords::tr("%1, not %2").arg(volume, volumeWords(went.planned_mL));
}

} // namespace

QString contentWords(const PipetteSheet &sheet, const Dosing &dosing)
{
    const Dose *dose = sheet.doseOf(dosing);
    const planning::Round &round = sheet.round(dosing.round);
    return dose ? planning::contentName(round, *dose) : round.name;
}

QString contentInSentence(const PipetteSheet &sheet, const Dosing &dosing)
{
    const QString content = contentWords(sheet, dosing);
    return isTubesOwn(sheet, dosing) ? content : assay::inSentence(content);
}

bool isTubesOwn(const PipetteSheet &sheet, const Dosing &dosing)
{
    const Dose *dose = sheet.doseOf(dosing);
    return dose && planning::isTubesOwn(*dose, tubeOf(sheet, dosing));
}

QString additionWords(const PipetteSheet &sheet, const Dosing &dosing)
{
    const Dose *dose = sheet.doseOf(dosing);
    if (!dose)
        return {};
    return PipetteWords::tr("Tube %1: add %2 %3")
        .arg(dosing.tube + 1)
        .arg(volumeWords(dose->volume_mL), dilutedContent(sheet, dosing));
}

QString stripWords(const QString &rackLetter, const PipetteSheet &sheet, const Dosing &dosing)
{
    const Dose *dose = sheet.doseOf(dosing);
    if (!dose)
        return {};
    return PipetteWords::tr("Rack %1, tube %2: add %3 %4")
        .arg(rackLetter)
        .arg(dosing.tube + 1)
        .arg(volumeWords(dose->volume_mL), dilutedContent(sheet, dosing));
}

QString tubeWords(const PipetteSheet &sheet, const Dosing &dosing)
{
    const QString contents = contentsText(sheet.run(), dosing.tube);
    const run::Sample *sample = dilutedIn(sheet, dosing);
    if (!sample)
        return contents;
    return PipetteWords::tr("%1, diluted %2").arg(contents, dilutionWords(*sample));
}

QString oddWords(const PipetteSheet &sheet, const Dosing &dosing)
{
    const Dose *dose = sheet.doseOf(dosing);
    if (!dose)
        return {};
    const planning::Round &round = sheet.round(dosing.round);
    QStringList words;
    if (dose->odd)
        words << PipetteWords::tr("%1, where most tubes get %2")
                     .arg(volumeWords(dose->volume_mL), volumeWords(round.usualVolume_mL));
    if (!dose->content.isEmpty() && !isTubesOwn(sheet, dosing))
        words << PipetteWords::tr("%1 in place of %2").arg(dose->content, assay::inSentence(round.name));
    return assay::listed(words);
}

QString stateWords(const PipetteSheet &sheet, const Dosing &dosing)
{
    const Dose *dose = sheet.doseOf(dosing);
    switch (sheet.stateOf(dosing)) {
    case SheetState::Nothing:
        return PipetteWords::tr("nothing");
    case SheetState::Spoilt:
        return PipetteWords::tr("spoilt: %1").arg(sheet.spoilt(dosing.tube));
    case SheetState::Ticked:
        if (sheet.isDifferent(dosing))
            return differenceWords(*sheet.pipetted(dosing));
        break;
    case SheetState::Passed:
    case SheetState::Due:
        break;
    }
    return volumeWords(dose->volume_mL);
}

CellWords cellWords(const PipetteSheet &sheet, const Dosing &dosing)
{
    const Dose *dose = sheet.doseOf(dosing);
    const SheetState state = sheet.stateOf(dosing);
    if (!dose || state == SheetState::Spoilt)
        return {stateWords(sheet, dosing), {}};
    QStringList details;
    if (!dose->content.isEmpty() && !isTubesOwn(sheet, dosing))
        details << dose->content;
    if (const run::Sample *sample = dilutedIn(sheet, dosing))
        details << foldWords(*sample);
    double volume_mL = dose->volume_mL;
    if (state == SheetState::Ticked && sheet.isDifferent(dosing)) {
        const Pipetted &went = *sheet.pipetted(dosing);
        volume_mL = went.volume_mL;
        details << PipetteWords::tr("noted, not %1").arg(volumeWords(went.planned_mL));
    } else if (dose->odd) {
        details << PipetteWords::tr("as planned");
    }
    return {volumeWords(volume_mL), details.join(PipetteWords::tr(", "))};
}

QString readingWords(const PipetteSheet &sheet, int tube, const QString &reading)
{
    if (const QString spoilt = sheet.spoilt(tube); !spoilt.isEmpty())
        return PipetteWords::tr("spoilt: %1").arg(spoilt);
    const run::Reading *read = readingAt(sheet.run(), {tube, reading});
    return read ? shownNumber(readingText(*read)) : PipetteWords::tr("to read");
}

QString wordsBefore(const PipetteSheet &sheet, int step)
{
    const auto &steps = sheet.steps();
    int first = step;
    while (first > 0 && (steps[static_cast<std::size_t>(first - 1)].kind == SheetStep::Kind::Mix ||
                         steps[static_cast<std::size_t>(first - 1)].kind == SheetStep::Kind::Wait))
        --first;
    QStringList words;
    for (int at = first; at < step; ++at) {
        const QString &word = steps[static_cast<std::size_t>(at)].words;
        words << word.left(1).toLower() + word.mid(1);
    }
    return words.join(u", "_s);
}

QString countWords(const StepCount &count)
{
    return PipetteWords::tr("tubes %1 of %2").arg(count.done).arg(count.planned);
}

} // namespace plateau::ui
