// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/decimalsign.h"

#include <QLocale>
#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString withCommas(const QString &text)
{
    static const QRegularExpression number(u"(?<![\\w.])(\\d++)\\.(\\d++(?:e[+-]?\\d++)?)(?!\\w|\\.\\d)"_s);
    QString local = text;
    return local.replace(number, u"\\1,\\2"_s);
}

/// The first of the names in the text, of several at one place the longest.
std::pair<qsizetype, qsizetype> firstName(const QString &text, qsizetype from, const QStringList &names)
{
    std::pair<qsizetype, qsizetype> first(-1, 0);
    for (const QString &name : names) {
        const qsizetype at = name.isEmpty() ? -1 : text.indexOf(name, from);
        if (at < 0)
            continue;
        const bool better =
            first.first < 0 || at < first.first || (at == first.first && name.size() > first.second);
        if (better)
            first = {at, name.size()};
    }
    return first;
}

} // namespace

DecimalSign usualDecimalSign(const QLocale &locale)
{
    return locale.decimalPoint() == u","_s ? DecimalSign::Comma : DecimalSign::Point;
}

std::optional<DecimalSign> decimalSignFromWord(const QString &word)
{
    if (word.compare("point"_L1, Qt::CaseInsensitive) == 0)
        return DecimalSign::Point;
    if (word.compare("comma"_L1, Qt::CaseInsensitive) == 0)
        return DecimalSign::Comma;
    return std::nullopt;
}

QString localNumbers(const QString &text, DecimalSign sign, const QStringList &names)
{
    if (sign == DecimalSign::Point)
        return text;
    QString local;
    for (qsizetype at = 0; at < text.size();) {
        const auto [name, length] = firstName(text, at, names);
        const qsizetype end = name < 0 ? text.size() : name;
        local += withCommas(text.sliced(at, end - at)) + text.sliced(end, length);
        at = end + length;
    }
    return local;
}

QString localNumbers(const QString &text)
{
    return localNumbers(text, usualDecimalSign(QLocale()));
}

} // namespace plateau::ui
