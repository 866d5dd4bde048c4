// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/listed.h"
#include "core/assay/matrix.h"
#include "core/evaluation/format.h"
#include "ui/books/shelfdraft.h"
#include "ui/shared/matrixtext.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ShelfWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ShelfDraft)
};

} // namespace

QString shelfColumnName(int column)
{
    switch (column) {
    case shelf::Id:
        return ShelfWords::tr("Sample");
    case shelf::Product:
        return ShelfWords::tr("Product");
    case shelf::Matrix:
        return ShelfWords::tr("Matrix");
    case shelf::Form:
        return ShelfWords::tr("Form");
    case shelf::Received:
        return ShelfWords::tr("Received");
    case shelf::From:
        return ShelfWords::tr("Received from");
    case shelf::Expected:
        return ShelfWords::tr("Expected");
    default:
        return {};
    }
}

QString formText(run::Form form)
{
    return form == run::Form::Solid ? ShelfWords::tr("Solid") : ShelfWords::tr("Liquid");
}

QString matrixValue(assay::Matrix matrix)
{
    return assay::matrixWord(matrix);
}

QString formValue(run::Form form)
{
    return form == run::Form::Solid ? u"solid"_s : u"liquid"_s;
}

std::optional<assay::Matrix> matrixOf(const QString &text)
{
    const QString wanted = foldedName(text);
    for (const assay::Matrix matrix : allMatrices()) {
        if (wanted == foldedName(matrixValue(matrix)) || wanted == foldedName(matrixText(matrix)))
            return matrix;
    }
    if (wanted == foldedName(ShelfWords::tr("clear")))
        return assay::Matrix::Clear;
    if (wanted == foldedName(ShelfWords::tr("protein")))
        return assay::Matrix::ProteinRich;
    return std::nullopt;
}

std::optional<run::Form> formOf(const QString &text)
{
    const QString wanted = foldedName(text);
    for (const run::Form form : {run::Form::Liquid, run::Form::Solid}) {
        if (wanted == foldedName(formValue(form)) || wanted == foldedName(formText(form)))
            return form;
    }
    return std::nullopt;
}

QString expectedText(const planning::ShelfSample &sample, const MeasurandNames &measurands, bool withUnits)
{
    const QString unit = sample.form == run::Form::Solid ? u"g/100 g"_s : u"g/L"_s;
    QStringList parts;
    for (const auto &[id, amount] : sample.expected) {
        const QString number = evaluation::plainText(amount);
        const QString part =
            u"%1 %2"_s.arg(measurands.nameOf(id), withUnits ? evaluation::withUnit(number, unit) : number);
        if (!parts.contains(part))
            parts << part;
    }
    return withUnits ? assay::listed(parts) : parts.join(u"; "_s); // without them it is typed
}

std::vector<QString> shelfCells(const planning::ShelfSample &sample, const MeasurandNames &measurands)
{
    std::vector<QString> cells(shelf::ColumnCount);
    cells[shelf::Id] = sample.id;
    cells[shelf::Product] = sample.product;
    cells[shelf::Matrix] = matrixValue(sample.matrix);
    cells[shelf::Form] = formValue(sample.form);
    if (sample.receivedAt)
        cells[shelf::Received] = exchange::dayOrMomentText(*sample.receivedAt);
    cells[shelf::From] = sample.receivedFrom;
    cells[shelf::Expected] = expectedText(sample, measurands, false);
    return cells;
}

} // namespace plateau::ui
