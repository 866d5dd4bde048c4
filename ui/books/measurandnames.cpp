// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/measurandnames.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString withoutBracket(const QString &name)
{
    static const QRegularExpression bracket(u"\\s*\\([^()]*\\)\\s*$"_s);
    return QString(name).remove(bracket);
}

/// Of the longest text that stands in both.
int commonLength(const QString &one, const QString &other)
{
    int longest = 0;
    std::vector<int> ending(static_cast<std::size_t>(other.size()) + 1); // in both, by where it ends in the other
    for (const QChar sign : one) {
        for (auto i = ending.size() - 1; i > 0; --i) {
            ending[i] = other[static_cast<qsizetype>(i) - 1] == sign ? ending[i - 1] + 1 : 0;
            longest = std::max(longest, ending[i]);
        }
    }
    return longest;
}

} // namespace

QString measurandName(const assay::Method &method, const QString &id)
{
    for (const assay::Measurand &one : method.measurands) {
        if (one.id == id)
            return one.name;
    }
    for (const assay::Derived &one : method.derived) {
        if (one.id == id)
            return one.name;
    }
    return id;
}

QString foldedName(const QString &text)
{
    return text.normalized(QString::NormalizationForm_KC).toCaseFolded().simplified();
}

MeasurandNames::MeasurandNames(const std::vector<assay::Method> &methods)
{
    for (const assay::Method &method : methods) {
        for (const assay::Measurand &measurand : method.measurands)
            m_names.try_emplace(measurand.id, measurand.name);
        for (const assay::Derived &derived : method.derived)
            m_derivedNames.try_emplace(derived.id, derived.name);
        if (method.measurands.size() != 1)
            continue;
        const QString whole = foldedName(method.name);
        const QString bare = foldedName(withoutBracket(method.name));
        m_ofMethods.emplace(whole, method.measurands.front().id);
        if (bare != whole)
            m_ofMethods.emplace(bare, method.measurands.front().id);
    }
}

std::vector<QString> MeasurandNames::idsOf(const QString &text) const
{
    const QString wanted = foldedName(text);
    std::vector<QString> ids;
    for (const auto &[id, name] : m_names) {
        if (foldedName(id) == wanted || foldedName(name) == wanted)
            ids.push_back(id);
    }
    if (!ids.empty() || wanted.isEmpty())
        return ids;
    for (auto [named, end] = m_ofMethods.equal_range(wanted); named != end; ++named) {
        if (std::ranges::find(ids, named->second) == ids.end())
            ids.push_back(named->second);
    }
    return ids;
}

QString MeasurandNames::nameOf(const QString &id) const
{
    for (const auto *names : {&m_names, &m_derivedNames}) {
        if (const auto found = names->find(id); found != names->end())
            return found->second;
    }
    return id;
}

QStringList MeasurandNames::names() const
{
    QStringList names;
    for (const auto &[id, name] : m_names) {
        if (!names.contains(name))
            names << name;
    }
    names.sort(Qt::CaseInsensitive);
    return names;
}

QStringList MeasurandNames::namesNearest(const QString &wanted) const
{
    const QString folded = foldedName(wanted);
    QStringList names = this->names();
    std::ranges::stable_sort(names, std::ranges::greater(),
                             [&](const QString &name) { return commonLength(folded, foldedName(name)); });
    return names;
}

} // namespace plateau::ui
