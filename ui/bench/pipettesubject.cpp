// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettesubject.h"

#include "core/assay/listed.h"
#include "core/evaluation/format.h"
#include "ui/bench/pipettewords.h"
#include "ui/bench/volumewords.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct PipetteSubjectWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PipetteSubject)
};

using SheetState = PipetteSheet::State;

/// Common practice, no source: a piston pipette set to another volume by mistake is off by less, a slip of
/// the decimal mark by more.
constexpr double largestFactor = 3;

QString actionOf(const PipetteSheet &sheet, const Dosing &dosing)
{
    const int number = dosing.tube + 1;
    switch (sheet.stateOf(dosing)) {
    case SheetState::Nothing:
        return PipetteSubjectWords::tr("Tube %1: nothing in this round").arg(number);
    case SheetState::Spoilt:
        return PipetteSubjectWords::tr("Tube %1: spoilt").arg(number);
    case SheetState::Ticked:
        return PipetteSubjectWords::tr("Tube %1: %2 %3 is in")
            .arg(number)
            .arg(volumeWords(sheet.pipetted(dosing)->volume_mL), contentInSentence(sheet, dosing));
    case SheetState::Passed:
        return PipetteSubjectWords::tr("Tube %1: read since").arg(number);
    case SheetState::Due:
        break;
    }
    return additionWords(sheet, dosing);
}

QString hintsOf(const PipetteSheet &sheet, const Dosing &dosing)
{
    QStringList hints;
    const auto step = static_cast<std::size_t>(sheet.stepOf(dosing.round));
    if (sheet.hasDilutionToMake())
        hints << PipetteSubjectWords::tr("First make the dilutions that head the steps; Tab leads there.");
    if (const QString before = wordsBefore(sheet, static_cast<int>(step));
        !before.isEmpty() && sheet.countOfRound(dosing.round).done == 0)
        hints << PipetteSubjectWords::tr("First: %1.").arg(before);
    const bool itself = contentWords(sheet, dosing) == sheet.round(dosing.round).name;
    if (sheet.round(dosing.round).suspension && itself)
        hints << PipetteSubjectWords::tr("Swirl before use.");
    const auto &steps = sheet.steps();
    if (step + 1 < steps.size() && steps[step + 1].kind == SheetStep::Kind::Mix)
        hints << PipetteSubjectWords::tr("Mix afterwards.");
    return hints.join(u' ');
}

} // namespace

PipettePanel::Subject subjectOf(const PipetteSheet &sheet, const Dosing &dosing)
{
    PipettePanel::Subject subject;
    subject.action = actionOf(sheet, dosing);
    subject.progress = PipetteSubjectWords::tr("Addition %1 of %2\n%3")
                           .arg(dosing.round + 1)
                           .arg(sheet.rounds().size())
                           .arg(evaluation::capitalised(countWords(sheet.countOfRound(dosing.round))));
    subject.contents = tubeWords(sheet, dosing);
    const SheetState state = sheet.stateOf(dosing);
    if (state == SheetState::Due)
        subject.hints = hintsOf(sheet, dosing);
    if (!sheet.spoilt(dosing.tube).isEmpty())
        subject.hints = spoiltHint(dosing.tube);
    subject.planned = state == SheetState::Due;
    if (subject.planned)
        subject.unlike = oddWords(sheet, dosing);
    else if (state == SheetState::Spoilt || sheet.isDifferent(dosing))
        subject.unlike = stateWords(sheet, dosing);
    if (const Pipetted *went = sheet.pipetted(dosing);
        went && !went->note.isEmpty() && state == SheetState::Ticked)
        subject.contents = assay::listed({subject.contents, went->note});
    return subject;
}

PipettePause pauseOf(const PipetteSheet &sheet, bool isWaiting)
{
    const int step = sheet.currentStep();
    if (step == static_cast<int>(sheet.steps().size()))
        return {PipetteSubjectWords::tr("Everything is pipetted and read"),
                PipetteSubjectWords::tr("Enter opens the review."),
                PipetteSubjectWords::tr("&Review this rack")};
    if (!sheet.isLed())
        return {PipetteSubjectWords::tr("Pipetted from paper"),
                PipetteSubjectWords::tr(
                    "Nothing was ticked on this worksheet. Enter goes on to the readings; to tick all the "
                    "same, choose an addition among the steps."),
                PipetteSubjectWords::tr("&Key readings")};
    const SheetStep &own = sheet.steps()[static_cast<std::size_t>(step)];
    const QString before = wordsBefore(sheet, step);
    const QString read = PipetteSubjectWords::tr("read %1 of every tube").arg(own.reading);
    const QString all = before.isEmpty() ? read : PipetteSubjectWords::tr("%1, then %2").arg(before, read);
    return {(isWaiting ? PipetteSubjectWords::tr("Wait, then read %1") : PipetteSubjectWords::tr("Now read %1"))
                .arg(own.reading),
            PipetteSubjectWords::tr("%1. Read so far: %2.")
                .arg(evaluation::capitalised(all), countWords(sheet.countOf(step))),
            PipetteSubjectWords::tr("&Key %1").arg(own.reading)};
}

PipettePause dilutionSubject(const PipetteSheet &sheet, int step)
{
    const notebook::DilutionPlace &place = sheet.steps().at(static_cast<std::size_t>(step)).dilution;
    const run::Sample &sample = sheet.run().samples.at(static_cast<std::size_t>(place.sample));
    const QString volumes = dilutionStepWords(sample.dilution.at(static_cast<std::size_t>(place.step)));
    const StepCount count = sheet.countOfDilutions();
    QStringList text{PipetteSubjectWords::tr("Dilution %1 of %2; %3 made so far.")
                         .arg(QString::number(step + 1), QString::number(count.planned), QString::number(count.done))};
    const SheetState state = sheet.dilutionState(place);
    if (state == SheetState::Ticked)
        text << PipetteSubjectWords::tr("Space takes the tick back.");
    else if (state == SheetState::Passed)
        text << PipetteSubjectWords::tr("Not ticked, but pipetted since.");
    return {(state == SheetState::Ticked ? PipetteSubjectWords::tr("%1: diluted %2", "a sample and the volumes of its dilution")
                                         : PipetteSubjectWords::tr("%1: dilute %2", "a sample and the volumes of its dilution"))
                .arg(dilutionName(sheet.run(), place), volumes),
            text.join(u' '),
            {}};
}

QString volumeQuestion(const PipetteSheet &sheet, const Dosing &dosing)
{
    return PipetteSubjectWords::tr("Tube %1: how much %2 actually went in? The worksheet says %3.")
        .arg(dosing.tube + 1)
        .arg(contentInSentence(sheet, dosing), volumeWords(sheet.doseOf(dosing)->volume_mL));
}

QString spoiltQuestion(const PipetteSheet &sheet, const Dosing &dosing)
{
    const QString spoilt = sheet.spoilt(dosing.tube);
    if (spoilt.isEmpty())
        return PipetteSubjectWords::tr("Tube %1 is spoilt and will not count. What happened to it?")
            .arg(dosing.tube + 1);
    return PipetteSubjectWords::tr("Tube %1 is marked as spoilt (%2). Why does it count after all?")
        .arg(dosing.tube + 1)
        .arg(spoilt);
}

QString spoiltHint(int tube)
{
    return PipetteSubjectWords::tr("Tube %1 does not count. Press / to let it count again.").arg(tube + 1);
}

QString takenBackWords(const PipetteSheet &sheet, const WorksheetAct &act)
{
    if (act.isOfDilutions()) {
        QStringList names;
        for (const notebook::DilutionPlace &place : act.dilutions)
            names << dilutionName(sheet.run(), place);
        return (act.isTick ? PipetteSubjectWords::tr("Taken back: the dilution of %1.")
                           : PipetteSubjectWords::tr("Ticked again: the dilution of %1."))
            .arg(assay::listed(names));
    }
    const WorksheetAct::Change &first = act.changes.front();
    const int number = first.dose.tube + 1;
    if (act.isOfTube())
        return first.before
                   ? PipetteSubjectWords::tr("Taken back: tube %1 is marked as spoilt again (%2).")
                         .arg(number)
                         .arg(first.before->note)
                   : PipetteSubjectWords::tr("Taken back: tube %1 is not marked as spoilt any more (%2).")
                         .arg(number)
                         .arg(first.now->note);
    QStringList tubes;
    for (const WorksheetAct::Change &change : act.changes)
        tubes << QString::number(change.dose.tube + 1);
    const notebook::StoredMark &said = first.now ? *first.now : *first.before;
    const auto dosing = dosingOf(sheet, first.dose);
    const QString content = dosing ? contentInSentence(sheet, *dosing) : first.dose.component;
    const QString what = PipetteSubjectWords::tr("%1 %2").arg(volumeWords(said.volume_mL), content);
    if (first.now && first.before)
        return PipetteSubjectWords::tr("Taken back: %1 in tube %2; %3 counts again.")
            .arg(what)
            .arg(number)
            .arg(volumeWords(first.before->volume_mL));
    if (!first.now)
        return PipetteSubjectWords::tr("Ticked again: %1 in tube %2.")
            .arg(what, tubes.join(PipetteSubjectWords::tr(", ")));
    return act.changes.size() == 1
               ? PipetteSubjectWords::tr("Taken back: %1 in tube %2.").arg(what).arg(number)
               : PipetteSubjectWords::tr("Taken back: %1 in tubes %2.")
                     .arg(what, tubes.join(PipetteSubjectWords::tr(", ")));
}

QString doubtAbout(double volume_mL, double planned_mL)
{
    if (planned_mL <= 0 ||
        (volume_mL <= planned_mL * largestFactor && volume_mL * largestFactor >= planned_mL))
        return {};
    return PipetteSubjectWords::tr("%1 is far from %2. Check unit and decimal mark; Enter again keeps it.")
        .arg(volumeWords(volume_mL), volumeWords(planned_mL));
}

} // namespace plateau::ui
