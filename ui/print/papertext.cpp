// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/papertext.h"

#include <QRegularExpression>

#include <utility>

using namespace Qt::StringLiterals;

namespace plateau::ui {

QString withWholeUnits(QString text)
{
    // Behind a word joiner nothing is broken, and it has no width.
    static const QRegularExpression unit(
        u"(?<![\\w/])([kmµn]?g|m?mol|[mµ]?L|U)/(?:(100)[ \u00a0])?(?=(?:[kmµn]?g|[mµ]?L|m?mol|h|min)\\b|\\()"_s,
        QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression prefix(u"(?<![\\w-])([DL]|\\d)-(?=\\p{L})"_s,
                                           QRegularExpression::UseUnicodePropertiesOption);
    if (text.contains(u'/')) {
        QString joined;
        qsizetype from = 0;
        for (auto found = unit.globalMatch(text); found.hasNext();) {
            const QRegularExpressionMatch match = found.next();
            joined += text.mid(from, match.capturedStart() - from) + match.captured(1) + u"/\u2060"_s;
            if (match.hasCaptured(2))
                joined += u"100\u00a0"_s;
            from = match.capturedEnd();
        }
        text = joined + text.mid(from);
    }
    if (text.contains(u'-'))
        text.replace(prefix, u"\\1-\u2060"_s);
    return text;
}

QString unbroken(QString text)
{
    static const QRegularExpression unit(
        u"(?<=\\d) (?=(?:[kmµn]?g|[mµ]?L|m?mol|[cmn]?m|min|h|s|U|°C|ppm)(?![\\w-])|%)"_s,
        QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression coverage(u"\\bk = (?=\\d)"_s, QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression fold(u"(?<![\\w.,-])(\\d+(?:[.,]\\d+)?-)(?=\\p{L})"_s,
                                         QRegularExpression::UseUnicodePropertiesOption);
    if (text.contains(u' ')) {
        const QString noBreak(QChar::Nbsp);
        text.replace(unit, noBreak).replace(coverage, u"k\u00a0=\u00a0"_s);
        text.replace(u"(mol cm)"_s, u"(mol\u00a0cm)"_s);
    }
    if (text.contains(u'-'))
        text.replace(fold, u"\\1\u2060"_s);
    return withWholeUnits(std::move(text));
}

QString withMinusSigns(QString text)
{
    static const QRegularExpression minus(u"(?<![\\w.,)-])-(?=\\d)"_s);
    return text.contains(u'-') ? text.replace(minus, u"\u2212"_s) : text;
}

QString withPrintedSigns(const QString &formula)
{
    QString shown = formula;
    shown.replace(u" x "_s, u" \u00d7 "_s).replace(u" - "_s, u" \u2212 "_s);
    if (shown.startsWith(u"- "_s))
        shown[0] = u'\u2212';
    return withMinusSigns(shown);
}

} // namespace plateau::ui
