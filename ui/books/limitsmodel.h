// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"
#include "ui/shared/columnsmodel.h"

namespace plateau::ui {

/// The limits of products, in the order of the list that was saved.
class LimitsModel : public ColumnsModel<evaluation::Specification>
{
    Q_OBJECT

public:
    enum Column { Product, Measurand, Kind, Limit, Rule, Source, Date, ColumnCount };

    using ColumnsModel::ColumnsModel;

    void setLimits(std::vector<evaluation::Specification> limits) { setRows(std::move(limits)); }

protected:
    int columns() const override { return ColumnCount; }
    QString text(const evaluation::Specification &limit, int column) const override;
    QString heading(int column) const override;
};

} // namespace plateau::ui
