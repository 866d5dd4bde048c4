// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/method.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

/// What the shipped methods say of values that nobody published, in the languages of the window: a method that was
/// taken in one is read in all.
const QStringList unpublished{
    u"template:"_s,          u"common practice, no"_s,      u"from memory"_s,        u"our own:"_s,         u"our own arithmetic"_s,
    u"vorlage:"_s,           u"gängige praxis, ohne"_s,     u"aus dem gedächtnis"_s, u"eigenes:"_s,         u"nach eigener rechnung"_s,
    u"modèle :"_s,           u"usage courant, sans"_s,      u"de mémoire"_s,         u"de notre choix"_s,   u"notre propre calcul"_s,
    u"plantilla:"_s,         u"práctica habitual, sin"_s,   u"de memoria"_s,         u"decisión propia:"_s, u"cálculo propio"_s,
};

const QStringList remembered{u"from memory"_s, u"aus dem gedächtnis"_s, u"de mémoire"_s, u"de memoria"_s};

bool isUnpublished(const QString &clause)
{
    // Whatever space French puts before its colon.
    static const QRegularExpression spaces(u"\\s+"_s, QRegularExpression::UseUnicodePropertiesOption);
    const QString plain = QString(clause).replace(spaces, u" "_s).trimmed();
    return std::ranges::any_of(unpublished,
                               [&](const QString &mark) { return plain.contains(mark, Qt::CaseInsensitive); });
}

/// The clauses of a sentence that name something published, with its full stop; empty where none does.
QString publishedOf(const QString &sentence)
{
    QStringList kept; // each with its own spaces: what French puts before a semicolon stays there
    for (const QString &clause : sentence.split(u';')) {
        if (!isUnpublished(clause) && !clause.trimmed().isEmpty())
            kept << clause;
    }
    const QString text = kept.join(u';').trimmed();
    return text.isEmpty() || text.endsWith(u'.') ? text : text + u'.';
}

} // namespace

QString publishedSource(const Method &method)
{
    static const QRegularExpression betweenSentences(u"(?<=\\.)\\s+(?=\\p{Lu})"_s,
                                                     QRegularExpression::UseUnicodePropertiesOption);
    constexpr qsizetype shortestSource = 12;
    QStringList kept;
    for (const QString &sentence : method.source.trimmed().split(betweenSentences)) {
        const QString published = publishedOf(sentence);
        // The initials of an author, which a full stop parts as well, may come twice.
        if (!published.isEmpty() && (published.size() < shortestSource || !kept.contains(published)))
            kept << published;
    }
    return kept.join(u' ');
}

bool isPartlyFromMemory(const Method &method)
{
    return std::ranges::any_of(
        remembered, [&](const QString &mark) { return method.source.contains(mark, Qt::CaseInsensitive); });
}

} // namespace plateau::assay
