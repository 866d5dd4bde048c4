// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/measurandnames.h"

namespace plateau::ui {

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
    return ids;
}

QString MeasurandNames::nameOf(const QString &id) const
{
    const auto found = m_names.find(id);
    return found == m_names.end() ? id : found->second;
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

} // namespace plateau::ui
