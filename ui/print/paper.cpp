// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/paper.h"

#include <QLocale>

#include <algorithm>
#include <array>

using namespace Qt::StringLiterals;

namespace plateau::ui {

Paper usualPaper(const QLocale &locale)
{
    constexpr std::array onLetter{
        QLocale::Belize,    QLocale::Canada,       QLocale::Chile,      QLocale::Colombia,
        QLocale::CostaRica, QLocale::Guatemala,    QLocale::Mexico,     QLocale::Nicaragua,
        QLocale::Panama,    QLocale::Philippines,  QLocale::PuertoRico, QLocale::ElSalvador,
        QLocale::Venezuela, QLocale::UnitedStates,
    };
    // The C locale counts as American English to Qt, but says nothing of where the paper is.
    if (locale.language() == QLocale::C)
        return Paper::A4;
    return std::ranges::find(onLetter, locale.territory()) != onLetter.end() ? Paper::Letter : Paper::A4;
}

std::optional<Paper> paperFromWord(const QString &word)
{
    if (word.compare("a4"_L1, Qt::CaseInsensitive) == 0)
        return Paper::A4;
    if (word.compare("letter"_L1, Qt::CaseInsensitive) == 0)
        return Paper::Letter;
    return std::nullopt;
}

QPageLayout sheetOf(Paper paper, QPageLayout::Orientation orientation)
{
    const QPageSize size(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
    return QPageLayout(size, orientation, QMarginsF(), QPageLayout::Millimeter);
}

} // namespace plateau::ui
