// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStringList>

namespace plateau::app {

/// plateau sample NOTEBOOK [--runs N] [--seed S] [--until DAY]
int makeSample(const QStringList &arguments);

} // namespace plateau::app
