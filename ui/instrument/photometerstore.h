// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readingcolumn.h"
#include "core/exchange/readinglines.h"
#include "ui/instrument/link.h"

#include <vector>

class QSettings;

namespace plateau::ui {

/// A photometer by the name the laboratory calls it: how it is connected and how its lines are read.
struct Photometer {
    QString name;
    Link link;
    exchange::LinePattern pattern;
    bool operator==(const Photometer &) const = default;
};

/// How a pasted or filed column is read, by name.
struct NamedMapping {
    QString name;
    exchange::ColumnMapping mapping;
    bool operator==(const NamedMapping &) const = default;
};

/// What keeps it from being used or remembered, in one sentence; empty if nothing does.
QString faultOf(const Photometer &photometer);
/// The same of a name alone.
QString nameFault(const QString &name);

/// Photometers and mappings in the program's settings, the one that was kept last first. Whatever else stands
/// there, what comes out is sound: anyone can edit settings. No reading is ever kept here.
class PhotometerStore
{
public:
    /// At most so many of each; the oldest goes first.
    static constexpr int mostKept = 40;

    /// The settings outlive the store.
    explicit PhotometerStore(QSettings &settings);

    std::vector<Photometer> photometers() const;
    std::vector<NamedMapping> mappings() const;

    /// In place of the one of that name. False where the settings can't be written.
    bool keep(const Photometer &photometer);
    bool keep(const NamedMapping &mapping);
    bool forgetPhotometer(const QString &name);
    bool forgetMapping(const QString &name);

private:
    bool write(const std::vector<Photometer> &photometers);
    bool write(const std::vector<NamedMapping> &mappings);

    QSettings &m_settings;
};

} // namespace plateau::ui
