// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QStringList>

#include <map>
#include <optional>
#include <vector>

namespace plateau::ui {

/// The reagents that the methods take: every component but the sample, water and buffers too.
class ReagentNames
{
public:
    ReagentNames() = default;
    explicit ReagentNames(const std::vector<assay::Method> &methods);

    /// Each once, in alphabetical order.
    QStringList names() const;
    /// The most that a tube of any method takes of it; nothing where no method takes it. Without regard to
    /// case.
    std::optional<double> largestDose_mL(const QString &reagent) const;

private:
    struct Known {
        QString name;
        double largestDose_mL = 0;
    };
    std::map<QString, Known> m_known;
};

} // namespace plateau::ui
