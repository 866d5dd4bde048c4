// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"

#include <QString>
#include <QStringList>

#include <initializer_list>
#include <vector>

namespace plateau::exchange {

/// Where one part's broken shape makes nonsense of judging the meaning of another. Patterns are JSON
/// pointers:
/// "*" stands for any token, "#" for any token too, but the same one in cause and effect; a last token "$"
/// says that the effect is that place alone and nothing below it.
struct Consequence {
    QString cause;
    QString effect;
    /// Only warnings about the effect are nonsense.
    bool warningsOnly = false;
};
using Consequences = std::vector<Consequence>;

/// Gathers what is wrong with a document: first the shape of its parts, then the meaning of those whose shape
/// is sound.
class Findings
{
public:
    /// A part that cannot be used as it stands; its place is remembered.
    void broken(const QString &pointer, const QString &message);
    /// The same where another problem says it already.
    void unreadable(const QString &pointer);
    /// A problem that leaves the rest as usable as it was.
    void remark(assay::Problem problem);
    /// Problems of meaning, their pointers below prefix; those that are only consequences of a broken shape
    /// are left out.
    void meaning(const assay::Problems &problems, const QString &prefix, const Consequences &consequences);

    bool hasErrors() const { return assay::hasErrors(m_problems); }
    /// True once so many problems have been gathered that more help nobody.
    bool full() const;
    const assay::Problems &problems() const { return m_problems; }

private:
    bool followsFromBroken(const assay::Problem &problem, const QString &prefix,
                           const Consequences &consequences) const;

    assay::Problems m_problems;
    std::vector<QStringList> m_broken;
};

} // namespace plateau::exchange
