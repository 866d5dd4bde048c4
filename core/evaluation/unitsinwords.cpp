// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/unitsinwords.h"

#include "core/evaluation/format.h"

#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

QString inUnit(const QString &sentence, ReportUnit from, ReportUnit to)
{
    const std::optional<double> factor = conversionFactor(from, to).value;
    const double places = factor ? std::log10(*factor) : 0;
    const int shift = static_cast<int>(std::lround(places));
    if (shift == 0 || std::abs(places - shift) > 1e-9)
        return sentence;
    // Numbers and units in sentences are joined by a no-break space (withUnit).
    const QRegularExpression amounts(
        u"(?<number>\\d+(?:\\.(?<decimals>\\d+))?)\u00a0%1(?![\\w/])"_s.arg(
            QRegularExpression::escape(withUnit(QString(), reportUnitWord(from)).trimmed())));
    QString written;
    qsizetype at = 0;
    for (auto found = amounts.globalMatch(sentence); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        const int decimals = static_cast<int>(match.capturedLength(u"decimals"_s)) - shift;
        const double amount = match.captured(u"number"_s).toDouble() * *factor;
        written += sentence.mid(at, match.capturedStart() - at) +
                   withUnit(QString::number(amount, 'f', std::max(decimals, 0)), reportUnitWord(to));
        at = match.capturedEnd();
    }
    return written + sentence.mid(at);
}

CheckLine inUnit(CheckLine line, ReportUnit from, ReportUnit to)
{
    for (QString *text : {&line.found, &line.limit, &line.message})
        *text = inUnit(*text, from, to);
    return line;
}

} // namespace plateau::evaluation
