// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QCoreApplication>

namespace plateau::charts {

/// The translation context of what charts say to a person.
struct Wording {
    Q_DECLARE_TR_FUNCTIONS(plateau::charts)
};

} // namespace plateau::charts
