// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "ui/print/reportcontent.h"

namespace plateau::ui {

/// Where a sample has several accepted results: which one is reported, by what rule and why, on every result
/// of the content.
void addChoices(ReportContent &content, const notebook::Notebook &notebook,
                const notebook::StoredRun &stored);
/// Each reported result against the limits of its product.
void addLimits(ReportContent &content, const std::vector<evaluation::Specification> &specifications);

} // namespace plateau::ui
