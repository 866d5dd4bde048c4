// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"
#include "core/run/run.h"

#include <QDateTime>
#include <QString>

#include <map>
#include <optional>

namespace plateau::planning {

/// A sample as it stands on the shelf, before or after it was run.
struct ShelfSample {
    QString id;
    assay::Matrix matrix = assay::Matrix::Clear;
    /// What it is, as the laboratory groups it; samples of one product are expected to be alike.
    QString product;
    run::Form form = run::Form::Liquid;
    /// The midnight of a day of which nobody said the time.
    std::optional<QDateTime> receivedAt;
    QString receivedFrom;
    /// Expected in the sample as received, by measurand: g/L, of a solid g/100 g.
    std::map<QString, double> expected;
    bool operator==(const ShelfSample &) const = default;
};

/// Places are JSON pointers with the names of the members.
assay::Problems problemsOf(const ShelfSample &sample);

} // namespace plateau::planning
