// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

#include <map>
#include <optional>

namespace plateau::ui {

/// What a report has to say and the program cannot know, by name: given by the laboratory, else a line to
/// write on. A name with a sample behind it ("received/P-104") is for that sample alone.
class ReportFields
{
public:
    /// Every name there is, in the order they stand on the page.
    static QStringList names();
    /// Those of one sample each.
    static QStringList sampleNames();
    /// "customer=Threnholt Cider", "received/P-104=2026-03-01". Empty, or in one sentence why it cannot be
    /// used: no name that there is, no value, or given before.
    QString add(const QString &assignment);

    bool isEmpty() const { return m_values.empty(); }
    /// Empty where nobody gave it.
    QString value(const QString &name) const;
    /// The sample's own, else the one for all.
    QString value(const QString &name, const QString &sample) const;
    /// The samples that fields were given for.
    QStringList samples() const;

private:
    std::map<QString, QString> m_values;
};

} // namespace plateau::ui
