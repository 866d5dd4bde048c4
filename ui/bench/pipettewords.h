// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/pipettesheet.h"

namespace plateau::ui {

/// "Tube 7: add 20 µL starter", or with what stands in: "Tube 1: add 100 µL water". Empty where the tube gets
/// nothing.
QString additionWords(const PipetteSheet &sheet, const Dosing &dosing);
/// The same of a rack: "Rack B, tube 7: add 20 µL starter".
QString stripWords(const QString &rackLetter, const PipetteSheet &sheet, const Dosing &dosing);
/// What is pipetted: the sample, standard or stand-in by name, else the component.
QString contentWords(const PipetteSheet &sheet, const Dosing &dosing);
/// The same amid a sentence, where a component has no capital that it does not need.
QString contentInSentence(const PipetteSheet &sheet, const Dosing &dosing);
/// What goes in is the tube's sample, standard or spike, not a reagent.
bool isTubesOwn(const PipetteSheet &sheet, const Dosing &dosing);
/// What the tube holds, and of the sample how it is diluted: "sample P-104, 2 of 2, diluted 5 mL to 50 mL".
QString tubeWords(const PipetteSheet &sheet, const Dosing &dosing);
/// What is unlike the other tubes: "200 µL, where most tubes get 100 µL", "in place of sample". Empty where
/// nothing is.
QString oddWords(const PipetteSheet &sheet, const Dosing &dosing);
/// How it stands with that addition: "20 µL", "150, not 100 µL", "spoilt: dropped", "nothing".
QString stateWords(const PipetteSheet &sheet, const Dosing &dosing);
/// What a cell shows of the addition: "100 µL", below it "water", "as planned" or "noted, not 1 mL".
struct CellWords {
    QString volume;
    QString detail;
    bool operator==(const CellWords &) const = default;
};
CellWords cellWords(const PipetteSheet &sheet, const Dosing &dosing);
/// What a cell shows while tubes are read: "0.123", "to read", "spoilt: dropped".
QString readingWords(const PipetteSheet &sheet, int tube, const QString &reading);
/// The mixing and waiting between what comes before that step and the step: "mix, wait 3 to 10 min". Empty
/// where there is none.
QString wordsBefore(const PipetteSheet &sheet, int step);
/// "tubes 6 of 14"
QString countWords(const StepCount &count);

} // namespace plateau::ui
