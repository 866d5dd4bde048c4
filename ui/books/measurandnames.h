// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QStringList>

#include <map>
#include <vector>

namespace plateau::ui {

/// What the methods measure, by id and by name. A name may stand for several ids, one in each method.
class MeasurandNames
{
public:
    MeasurandNames() = default;
    explicit MeasurandNames(const std::vector<assay::Method> &methods);

    /// The ids that an id or a name stands for, without regard to case; else those of the methods so named that measure
    /// one thing, where a bracket at the end ("Example (template)") may be left out. None if there is no such measurand.
    std::vector<QString> idsOf(const QString &text) const;
    /// Of what is measured or worked out; the id itself where no method has it.
    QString nameOf(const QString &id) const;
    /// Each once, in alphabetical order.
    QStringList names() const;
    /// The same, the ones with most of the wanted text in one piece first.
    QStringList namesNearest(const QString &wanted) const;

private:
    std::map<QString, QString> m_names;
    /// What is worked out has a name, but is not asked for by it.
    std::map<QString, QString> m_derivedNames;
    /// Folded, of the methods that measure one thing: its id.
    std::multimap<QString, QString> m_ofMethods;
};

/// What the method measures or works out; the id itself where it has none of that.
QString measurandName(const assay::Method &method, const QString &id);

/// As names are compared in this program: compatibility forms, case and outer blanks do not count.
QString foldedName(const QString &text);

} // namespace plateau::ui
