// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/charts.h"
#include "core/notebook/database.h"

namespace plateau::notebook {

std::vector<ChartOffer> loadChartOffers(const Database &database, charts::Quantity quantity);
/// Without what was left out.
charts::Series loadChartSeries(const Database &database, const charts::Subject &subject,
                               const std::map<QString, QString> &componentNames);

} // namespace plateau::notebook
