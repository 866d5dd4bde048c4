// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/matrixtext.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct MatrixTextWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MatrixText)
};

} // namespace

QString matrixText(assay::Matrix matrix)
{
    using assay::Matrix;
    switch (matrix) {
    case Matrix::Clear:
        return MatrixTextWords::tr("Clear and colourless");
    case Matrix::Coloured:
        return MatrixTextWords::tr("Coloured");
    case Matrix::Turbid:
        return MatrixTextWords::tr("Turbid");
    case Matrix::Carbonated:
        return MatrixTextWords::tr("Carbonated");
    case Matrix::Fatty:
        return MatrixTextWords::tr("Fatty");
    case Matrix::ProteinRich:
        return MatrixTextWords::tr("Rich in protein");
    case Matrix::Solid:
        return MatrixTextWords::tr("Solid");
    }
    return {};
}

const std::vector<assay::Matrix> &allMatrices()
{
    using assay::Matrix;
    static const std::vector<Matrix> all{Matrix::Clear,      Matrix::Coloured, Matrix::Turbid,
                                         Matrix::Carbonated, Matrix::Fatty,    Matrix::ProteinRich,
                                         Matrix::Solid};
    return all;
}

} // namespace plateau::ui
