// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/standing.h"
#include "ui/shared/theme.h"

namespace plateau::ui {

State stateOf(equipment::Standing standing);
/// "1 mL", "100 µL"; empty for what holds no volume.
QString sizeText(const equipment::Item &item);
/// "volume every 90 days; …"
QString dutiesText(const equipment::Item &item);
/// What the check is worth to a budget: "a volume: 0.12 %"; empty where it says nothing.
QString figuresText(const equipment::Figures &figures);
/// The sentence for a problem of a check or an item: its place in words, then what is wrong.
QString placedSentence(const equipment::Item &item, const equipment::Check &check,
                       const assay::Problem &problem);
QString placedSentence(const assay::Problem &problemOfAnItem);

} // namespace plateau::ui
