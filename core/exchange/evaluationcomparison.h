// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

namespace plateau::exchange {

struct EvaluationDifference {
    /// JSON pointer; empty for the whole document.
    QString place;
    /// As JSON; "nothing" where only the other has it.
    QString before;
    QString after;
};

/// The first place in which two plateau-evaluation/1 documents say another thing: a number, a word of the
/// contract, an id, a flag, an advice. What only words a sentence for a person (the message of a check, the
/// name of a budget's term) may differ, and so may the order of fields; a field that is null is one that is
/// not there. Numbers are compared to the last bit. A text that is no JSON differs from every other.
std::optional<EvaluationDifference> differenceOf(const QByteArray &before, const QByteArray &after);

} // namespace plateau::exchange
