// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"
#include "ui/books/measurandnames.h"
#include "ui/shared/columnsmodel.h"

namespace plateau::ui {

/// The limits of products, in the order of the list that was saved.
class LimitsModel : public ColumnsModel<evaluation::Specification>
{
    Q_OBJECT

public:
    enum Column { Product, Measurand, Kind, Limit, Rule, Source, Date, ColumnCount };

    using ColumnsModel::ColumnsModel;

    /// names: of the measurands, which a limit may name by id.
    void setLimits(std::vector<evaluation::Specification> limits, MeasurandNames names)
    {
        m_names = std::move(names);
        setRows(std::move(limits));
        touchAll();
    }

protected:
    int columns() const override { return ColumnCount; }
    QString text(const evaluation::Specification &limit, int column) const override;
    QString heading(int column) const override;

private:
    MeasurandNames m_names;
};

} // namespace plateau::ui
