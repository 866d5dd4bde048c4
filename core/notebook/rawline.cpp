// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/rawline.h"

#include <QByteArray>
#include <QList>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr auto cutSign = "..."_L1;
constexpr qsizetype longestSequence = 4;

/// How many bytes the character takes that begins there in UTF-8; 0 where none does.
qsizetype sequenceLength(unsigned char first)
{
    if (first < 0x80)
        return 1;
    if (first >= 0xC2 && first <= 0xDF)
        return 2;
    if (first >= 0xE0 && first <= 0xEF)
        return 3;
    return first >= 0xF0 && first <= 0xF4 ? longestSequence : 0;
}

bool isPrintable(const QString &character)
{
    const QList<uint> codes = character.toUcs4();
    // One that is malformed decodes to replacement characters; U+FFFD itself is not worth telling apart.
    return codes.size() == 1 && codes.front() != QChar::ReplacementCharacter &&
           QChar::isPrint(codes.front()) && QChar::category(codes.front()) != QChar::Other_Format &&
           (codes.front() == u' ' || !QChar::isSpace(codes.front()));
}

QString escaped(unsigned char byte)
{
    switch (byte) {
    case '\t':
        return u"\\t"_s;
    case '\r':
        return u"\\r"_s;
    case '\n':
        return u"\\n"_s;
    case '\\':
        return u"\\\\"_s;
    default:
        return u"\\x"_s + QString::number(byte, 16).toUpper().rightJustified(2, u'0');
    }
}

} // namespace

QString rawLine(const QByteArray &bytes)
{
    QString line;
    qsizetype kept = 0; // to the end of a character, with room for the sign behind it
    for (qsizetype at = 0; at < bytes.size();) {
        const auto first = static_cast<unsigned char>(bytes[at]);
        const qsizetype length = sequenceLength(first);
        const QString character = QString::fromUtf8(bytes.sliced(at, qMin(length, bytes.size() - at)));
        const bool plain = length > 0 && first != '\\' && isPrintable(character);
        line += plain ? character : escaped(first);
        at += plain ? length : 1;
        if (line.size() > longestRawLine)
            return line.first(kept) + cutSign;
        if (line.size() <= longestRawLine - cutSign.size())
            kept = line.size();
    }
    return line;
}

} // namespace plateau::notebook
