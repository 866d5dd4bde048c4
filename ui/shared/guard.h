// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "ui/shared/notice.h"

namespace plateau::ui {

/// Runs a step that talks to the notebook. What the notebook refuses or cannot do is said in the page, and
/// false comes back; a failure never leaves a slot.
template <class Step> bool guarded(Notice &notice, Step &&step)
{
    try {
        step();
        return true;
    } catch (const notebook::Failure &failure) {
        notice.say(State::Bad, failure.sentence());
        return false;
    }
}

} // namespace plateau::ui
