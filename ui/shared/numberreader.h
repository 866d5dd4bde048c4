// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"

#include <QString>

#include <optional>

namespace plateau::ui {

/// Reads the numbers of a form's texts; one that cannot be read goes to the problems with its place. The
/// problems outlive it.
class NumberReader
{
public:
    explicit NumberReader(assay::Problems &problems)
        : m_problems(problems)
    {
    }

    /// 0 where it cannot be read, or is blank.
    double number(const QString &text, const QString &pointer) const;
    /// As number; one that is not whole, or is larger than a million, is a problem too.
    int whole(const QString &text, const QString &pointer) const;
    /// Nothing while blank, or where it cannot be read.
    std::optional<double> optionalNumber(const QString &text, const QString &pointer) const;
    void complain(const QString &pointer, const QString &sentence) const;

protected:
    assay::Problems &m_problems;
};

/// In its shortest form, to three figures at most: uncertainties come from divisions, and three figures tell
/// all there is to know of them.
QString threeFigures(double value);

} // namespace plateau::ui
