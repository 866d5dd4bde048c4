// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodchoices.h"

#include <algorithm>
#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Names by id.
std::vector<CellChoice> choicesOf(const std::map<QString, QString> &names)
{
    std::map<QString, int> bearers;
    for (const auto &[id, name] : names)
        ++bearers[name];
    std::vector<CellChoice> choices;
    for (const auto &[id, name] : names)
        choices.push_back({id, bearers[name] > 1 ? u"%1 (%2)"_s.arg(name, id) : name});
    std::ranges::stable_sort(choices, [](const CellChoice &one, const CellChoice &other) {
        return one.words.compare(other.words, Qt::CaseInsensitive) < 0;
    });
    return choices;
}

} // namespace

MethodChoices methodChoices(const std::vector<notebook::StoredMethod> &catalogue)
{
    std::map<QString, QString> methods;
    std::map<QString, QString> measurands;
    for (const notebook::StoredMethod &stored : catalogue) { // by id, newest first
        if (stored.retired)
            continue;
        methods.try_emplace(stored.method.id, stored.method.name);
        for (const assay::Measurand &measurand : stored.method.measurands)
            measurands.try_emplace(measurand.id, measurand.name);
        for (const assay::Derived &derived : stored.method.derived)
            measurands.try_emplace(derived.id, derived.name);
    }
    return {choicesOf(methods), choicesOf(measurands)};
}

} // namespace plateau::ui
