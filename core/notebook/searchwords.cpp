// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/searchwords.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr qsizetype mostSigns = 1000;
constexpr qsizetype mostWords = 32;

/// What cannot be in a stored text (half a surrogate pair, U+0000 …) parts words.
QString storable(const QString &text)
{
    QString result;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar sign = text[i];
        const bool pair = sign.isHighSurrogate() && i + 1 < text.size() && text[i + 1].isLowSurrogate();
        if (pair) {
            result += sign;
            result += text[++i];
        } else if (sign.isSurrogate() || sign.isNull() || sign.isNonCharacter() || sign == QChar(0xFEFF)) {
            result += u' ';
        } else {
            result += sign;
        }
    }
    return result;
}

bool hasLetterOrDigit(const QString &word)
{
    const QList<uint> signs = word.toUcs4();
    return std::ranges::any_of(signs, [](uint sign) { return QChar::isLetterOrNumber(sign); });
}

/// As they stand between blanks; "P-104" is one, whose parts have to follow each other.
QStringList wordsIn(const QString &text)
{
    QStringList words;
    for (const QString &word : storable(text.left(mostSigns)).simplified().split(u' ')) {
        if (hasLetterOrDigit(word) && words.size() < mostWords)
            words.append(word);
    }
    return words;
}

void append(QStringList &parts, const QString &text, QLatin1StringView column = {})
{
    for (QString word : wordsIn(text)) {
        word.replace(u'"', u"\"\""_s);
        const QString part = u'"' + word + u"\" *"_s;
        parts.append(column.isEmpty() ? part : column + u" : "_s + part);
    }
}

} // namespace

bool hasWords(const QString &text)
{
    return !wordsIn(text).isEmpty();
}

QString matchOf(const RunFilter &filter)
{
    QStringList parts;
    append(parts, filter.text);
    append(parts, filter.sample, "sample"_L1);
    append(parts, filter.product, "product"_L1);
    append(parts, filter.method, "method"_L1);
    append(parts, filter.person, "person"_L1);
    append(parts, filter.lot, "lot"_L1);
    append(parts, filter.standard, "standard"_L1);
    return parts.join(u" AND "_s);
}

} // namespace plateau::notebook
