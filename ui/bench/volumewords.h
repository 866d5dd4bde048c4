// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"
#include "ui/print/volumeunit.h"

#include <QString>

namespace plateau::ui {

/// "Wait 3 to 10 min at 20 to 25 °C".
QString waitWords(const assay::WaitStep &wait);
/// "5 mL to 50 mL"
QString dilutionStepWords(const run::DilutionStep &step);
/// "5 mL to 50 mL, then 10 mL to 100 mL"; empty for none.
QString dilutionWords(const run::Sample &sample);

} // namespace plateau::ui
