// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/matrix.h"

#include <algorithm>

namespace plateau::assay {

using namespace Qt::StringLiterals;

const std::vector<std::pair<QString, Matrix>> &matrixWords()
{
    static const std::vector<std::pair<QString, Matrix>> words{
        {u"clear"_s, Matrix::Clear},   {u"coloured"_s, Matrix::Coloured},
        {u"turbid"_s, Matrix::Turbid}, {u"carbonated"_s, Matrix::Carbonated},
        {u"fatty"_s, Matrix::Fatty},   {u"proteinRich"_s, Matrix::ProteinRich},
        {u"solid"_s, Matrix::Solid},
    };
    return words;
}

QString matrixWord(Matrix matrix)
{
    return std::ranges::find(matrixWords(), matrix, &std::pair<QString, Matrix>::second)->first;
}

} // namespace plateau::assay
