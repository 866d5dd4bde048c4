// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helptext.h"

#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString cellsOf(const QString &row)
{
    static const QRegularExpression ruled(u"^[|:\\s-]+$"_s);
    if (ruled.match(row).hasMatch())
        return {};
    QStringList cells;
    for (const QString &cell : row.split(u'|')) {
        if (!cell.trimmed().isEmpty())
            cells << cell.trimmed();
    }
    return cells.join(u"  "_s);
}

} // namespace

QString foldedText(const QString &text)
{
    QString folded;
    for (const QChar letter : text.normalized(QString::NormalizationForm_KD)) {
        if (letter == u'ß')
            folded += u"ss"_s;
        else if (letter.toLower() == u'æ')
            folded += u"ae"_s;
        else if (letter.toLower() == u'œ')
            folded += u"oe"_s;
        else if (letter.toLower() == u'ø')
            folded += u'o';
        else if (letter.category() != QChar::Mark_NonSpacing)
            folded += letter;
    }
    return folded.toCaseFolded();
}

QStringList foldedWords(const QString &text)
{
    static const QRegularExpression between(u"[^\\p{L}\\p{N}]+"_s,
                                            QRegularExpression::UseUnicodePropertiesOption);
    return foldedText(text).split(between, Qt::SkipEmptyParts);
}

QString plainLine(const QString &markdownLine)
{
    static const QRegularExpression lead(u"^\\s*(#{1,6}\\s+|([-*+]|\\d+[.)])\\s+|>\\s?)"_s);
    static const QRegularExpression link(u"!?\\[([^\\]]*)\\]\\([^)]*\\)"_s);
    static const QRegularExpression strong(u"(\\*\\*|__)(?=\\S)(.+?)(?<=\\S)\\1"_s);
    static const QRegularExpression leaning(u"(?<![\\w*])([*_])(?=\\S)(.+?)(?<=\\S)\\1(?![\\w*])"_s);
    static const QRegularExpression escaped(u"\\\\([\\\\`*_{}\\[\\]()#+.!|<>-])"_s);
    QString line = markdownLine;
    line.remove(lead);
    if (line.trimmed().startsWith(u'|'))
        line = cellsOf(line.trimmed());
    // What stands as code is taken as it is, wherever it stands.
    static const QRegularExpression code(u"`([^`]*)`"_s);
    constexpr ushort firstStandIn = 0xe000; // private use: in no text
    QStringList codes;
    for (auto found = code.match(line); found.hasMatch(); found = code.match(line)) {
        const QChar standIn(static_cast<ushort>(firstStandIn + codes.size()));
        codes << found.captured(1);
        line.replace(found.capturedStart(), found.capturedLength(), standIn);
    }
    line.replace(link, u"\\1"_s)
        .replace(strong, u"\\2"_s)
        .replace(leaning, u"\\2"_s)
        .replace(escaped, u"\\1"_s)
        .replace(u"&lt;"_s, u"<"_s)
        .replace(u"&gt;"_s, u">"_s)
        .replace(u"&amp;"_s, u"&"_s);
    for (qsizetype at = 0; at < codes.size(); ++at)
        line.replace(QChar(static_cast<ushort>(firstStandIn + at)), codes[at]);
    return line.trimmed();
}

QString HeadingAnchors::next(const QString &heading)
{
    static const QRegularExpression dropped(u"[^\\p{L}\\p{N}\\p{M} _-]"_s,
                                            QRegularExpression::UseUnicodePropertiesOption);
    const QString anchor = heading.trimmed().toLower().remove(dropped).replace(u' ', u'-');
    const int before = m_seen[anchor]++;
    return before == 0 ? anchor : u"%1-%2"_s.arg(anchor).arg(before);
}

} // namespace plateau::ui
