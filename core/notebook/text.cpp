// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/text.h"

#include "core/assay/label.h"
#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

#include <algorithm>
#include <vector>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

bool isInvisible(char32_t sign)
{
    switch (QChar::category(sign)) {
    case QChar::Other_Control:
    case QChar::Other_Format:
    case QChar::Other_Surrogate:
    case QChar::Other_NotAssigned:
    case QChar::Separator_Line:
    case QChar::Separator_Paragraph:
    case QChar::Separator_Space:
        return true;
    default:
        return QChar::isSpace(sign);
    }
}

bool comesBackAnother(char32_t sign, bool first)
{
    return sign == 0 || sign == 0xFFFE || sign == 0xFFFF || QChar::isSurrogate(sign) ||
           (first && sign == 0xFEFF);
}

// QString::toUcs4 replaces lone surrogates, so the pairs are joined here.
std::vector<char32_t> signsOf(const QString &text)
{
    std::vector<char32_t> signs;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar unit = text[i];
        if (unit.isHighSurrogate() && i + 1 < text.size() && text[i + 1].isLowSurrogate())
            signs.push_back(QChar::surrogateToUcs4(unit, text[++i]));
        else
            signs.push_back(unit.unicode());
    }
    return signs;
}

} // namespace

bool isVisible(const QString &text)
{
    return !std::ranges::all_of(signsOf(text), isInvisible);
}

QString comparisonKey(const QString &name)
{
    return name.normalized(QString::NormalizationForm_KC).toCaseFolded().simplified();
}

void requireStorable(const QString &text)
{
    bool first = true;
    for (const char32_t sign : signsOf(text)) {
        if (comesBackAnother(sign, first)) {
            const QString code = QString::number(uint(sign), 16).toUpper().rightJustified(4, u'0');
            throw Failure(Failure::Kind::Refused,
                          Sentence::tr("A text holds the character U+%1, which cannot be kept; nothing was "
                                       "stored: type the text again without it.")
                              .arg(code));
        }
        first = false;
    }
}

void requirePerson(const QString &person)
{
    if (!isVisible(person))
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("Nothing was stored, since no person is named: say who does this."));
    if (const auto fault = assay::labelFault(person))
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("Nothing was stored, since the name %1 cannot be used: %2.")
                          .arg(assay::quoted(person), *fault));
    requireStorable(person);
}

void requireReason(const QString &reason, const QString &sentence)
{
    if (!isVisible(reason))
        throw Failure(Failure::Kind::Refused, sentence);
    if (const auto fault = assay::proseFault(reason))
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("Nothing was stored, since the reason cannot be used: %1.").arg(*fault));
}

} // namespace plateau::notebook
