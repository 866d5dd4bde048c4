// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/actionwords.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/pipettewords.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct ActionWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ActionWords)
};

} // namespace

QString actionWords(const NextAction &action, const Rack &rack)
{
    switch (action.kind) {
    case NextAction::Kind::Pipette:
        return stripWords(action.letter, rack.sheet, action.dosing);
    case NextAction::Kind::Read:
        return (action.readBefore > 0 ? ActionWords::tr("Rack %1, tube %2: key %3 again")
                                      : ActionWords::tr("Rack %1, tube %2: key %3"))
            .arg(action.letter)
            .arg(action.place.tube + 1)
            .arg(action.place.reading);
    case NextAction::Kind::Review:
        break;
    }
    return ActionWords::tr("Rack %1: review and decide").arg(action.letter);
}

State stateOf(const NextAction &action)
{
    if (!action.times)
        return State::Info;
    switch (action.times->phase()) {
    case timing::Phase::Open:
        return State::Good;
    case timing::Phase::Late:
        return State::Attention;
    case timing::Phase::Waiting:
    case timing::Phase::Free:
        break;
    }
    return State::Info;
}

} // namespace plateau::ui
