// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QCoreApplication>

namespace plateau::notebook {

/// The translation context of everything the notebook says to a person.
struct Sentence {
    Q_DECLARE_TR_FUNCTIONS(plateau::notebook)
};

} // namespace plateau::notebook
