// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "app/runfile.h"
#include "core/evaluation/evaluation.h"

#include <set>
#include <utility>
#include <vector>

namespace plateau::app {

/// The other runs of --with, each held against the first one and those before it.
class Companions
{
public:
    /// Both outlive it.
    Companions(const exchange::RunDocument &document, const exchange::MethodLookup &methods);

    /// False after a line on standard error for each problem.
    bool add(const QString &path);
    const std::vector<evaluation::Companion> &all() const { return m_companions; }

private:
    std::optional<assay::Problem> problemOf(const exchange::RunDocument &document);

    const exchange::MethodLookup &m_lookup;
    const assay::Method &m_method;
    QStringList m_takenFrom;
    std::set<QString> m_samples;
    /// Method and sample of what was added.
    std::set<std::pair<QString, QString>> m_held;
    std::vector<evaluation::Companion> m_companions;
};

} // namespace plateau::app
