// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/reagentnames.h"

#include "ui/books/measurandnames.h"

#include <algorithm>

namespace plateau::ui {

ReagentNames::ReagentNames(const std::vector<assay::Method> &methods)
{
    for (const assay::Method &method : methods) {
        for (const assay::Component &component : method.components) {
            if (component.id == method.sample)
                continue;
            Known &known =
                m_known.try_emplace(foldedName(component.name), Known{component.name, 0}).first->second;
            known.largestDose_mL = std::max(known.largestDose_mL, component.volume_mL);
        }
    }
}

QStringList ReagentNames::names() const
{
    QStringList names;
    for (const auto &[key, known] : m_known)
        names << known.name;
    names.sort(Qt::CaseInsensitive);
    return names;
}

std::optional<double> ReagentNames::largestDose_mL(const QString &reagent) const
{
    const auto found = m_known.find(foldedName(reagent));
    return found == m_known.end() ? std::nullopt : std::optional(found->second.largestDose_mL);
}

} // namespace plateau::ui
