// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/keyedmoment.h"
#include "core/planning/shelf.h"
#include "ui/books/cellsmodel.h"
#include "ui/books/measurandnames.h"

#include <QDateTime>

#include <variant>
#include <vector>

namespace plateau::ui {

/// The cells of a sample as it is filled in for the shelf.
namespace shelf {
enum Column { Id, Product, Matrix, Form, Received, From, Expected, ColumnCount };
} // namespace shelf

/// As they are offered and read: "Sample", "Received at" and so on.
QString shelfColumnName(int column);

struct ShelfProblem {
    int row = 0;
    int column = 0;
    QString message;
    bool operator==(const ShelfProblem &) const = default;
};

struct ShelfReading {
    /// Of every row, also of those with problems.
    std::vector<planning::ShelfSample> samples;
    /// In the order of the rows.
    std::vector<ShelfProblem> problems;
};

/// What rows of texts say. A matrix or form that is left out is clear and liquid; a solid matrix is a solid.
/// A time is as exchange::parseKeyedDayOrMoment reads it; expected is "measurand 3.5; other 10", or
/// the number alone where there is one measurand.
ShelfReading readShelf(const std::vector<CellRow> &rows, const MeasurandNames &measurands,
                       const QDateTime &now);
/// The cells of a sample, as readShelf reads them back.
std::vector<QString> shelfCells(const planning::ShelfSample &sample, const MeasurandNames &measurands);
/// "Example acid 3.5 g/L; other 10 g/L"; one name once.
QString expectedText(const planning::ShelfSample &sample, const MeasurandNames &measurands, bool withUnits);
QString formText(run::Form form);
/// The values of the choices.
QString matrixValue(assay::Matrix matrix);
QString formValue(run::Form form);
/// What a word means, as it is offered or as a part of that: "coloured", "turbid". Nothing where it means
/// none.
std::optional<assay::Matrix> matrixOf(const QString &text);
std::optional<run::Form> formOf(const QString &text);

} // namespace plateau::ui
