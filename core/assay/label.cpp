// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/label.h"

#include <QCoreApplication>
#include <QList>

#include <algorithm>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

struct LabelWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Label)
};

bool reordersLine(char32_t sign)
{
    return (sign >= 0x202A && sign <= 0x202E) || (sign >= 0x2066 && sign <= 0x2069);
}

bool breaksLine(char32_t sign)
{
    const auto category = QChar::category(sign);
    return category == QChar::Other_Control || category == QChar::Separator_Line ||
           category == QChar::Separator_Paragraph;
}

QString code(char32_t sign)
{
    return "U+"_L1 + QString::number(static_cast<uint>(sign), 16).toUpper().rightJustified(4, u'0');
}

template <class Welcome>
std::optional<QString> fault(const QString &text, qsizetype maxLength, Welcome welcome)
{
    const QList<uint> signs = text.toUcs4();
    for (const uint sign : signs) {
        if (reordersLine(sign))
            return LabelWording::tr("it holds the character %1, which reorders the line; write it without")
                .arg(code(sign));
        if (breaksLine(sign) && !welcome(sign))
            return LabelWording::tr("it holds the control character %1; write it without").arg(code(sign));
    }
    if (signs.size() > maxLength)
        return LabelWording::tr("it has %1 characters; at most %2 are allowed")
            .arg(signs.size())
            .arg(maxLength);
    return std::nullopt;
}

} // namespace

std::optional<QString> labelFault(const QString &text)
{
    if (text.trimmed().isEmpty())
        return LabelWording::tr("it is blank; give it at least one letter or digit");
    return fault(text, maxLabelLength, [](char32_t) { return false; });
}

std::optional<QString> proseFault(const QString &text)
{
    return fault(text, maxProseLength, [](char32_t sign) { return sign == U'\n' || sign == U'\t'; });
}

QString named(const QString &text)
{
    constexpr qsizetype longest = 60;
    const QList<uint> signs = text.toUcs4();
    QString inside;
    for (const char32_t sign : signs.first(std::min(longest, signs.size())))
        inside +=
            breaksLine(sign) || reordersLine(sign) ? u'<' + code(sign) + u'>' : QString::fromUcs4(&sign, 1);
    if (signs.size() > longest)
        inside += u'…';
    return inside;
}

QString quoted(const QString &text)
{
    return LabelWording::tr("\"%1\"", "a name in quotation marks").arg(named(text));
}

QString shown(double value)
{
    return QString::number(value, 'g', 6);
}

} // namespace plateau::assay
