// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/spelling.h"

#include <algorithm>
#include <numeric>
#include <vector>

namespace plateau::exchange {

namespace {

constexpr qsizetype longestWord = 64;

QString plain(const QString &word)
{
    QString letters;
    for (const QChar letter : word) {
        if (letter.isLetterOrNumber())
            letters.append(letter.toLower());
    }
    return letters;
}

/// Letters to insert, delete or replace (Levenshtein).
qsizetype distance(const QString &a, const QString &b)
{
    std::vector<qsizetype> row(static_cast<std::size_t>(b.size()) + 1);
    std::iota(row.begin(), row.end(), 0);
    for (qsizetype i = 0; i < a.size(); ++i) {
        qsizetype diagonal = row[0];
        row[0] = i + 1;
        for (qsizetype j = 0; j < b.size(); ++j) {
            const auto at = static_cast<std::size_t>(j);
            const qsizetype replaced = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[at + 1];
            row[at + 1] = std::min({replaced, row[at] + 1, row[at + 1] + 1});
        }
    }
    return row.back();
}

} // namespace

QString nearest(const QString &written, const QStringList &known)
{
    if (written.size() > longestWord)
        return {};
    const QString word = plain(written);
    QString best;
    const qsizetype most = std::clamp<qsizetype>(word.size() / 3, word.size() > 1 ? 1 : 0, 3);
    qsizetype fewest = most + 1;
    for (const QString &candidate : known) {
        const qsizetype letters = distance(word, plain(candidate));
        if (letters < fewest) {
            fewest = letters;
            best = candidate;
        }
    }
    return best;
}

} // namespace plateau::exchange
