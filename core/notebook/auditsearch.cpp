// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/auditsearch.h"

#include "core/assay/localday.h"

#include <QRegularExpression>

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// As it is compared: without case, with one kind of space, of minus and of decimal sign.
QString folded(const QString &text)
{
    static const QRegularExpression comma(u"(?<=\\d),(?=\\d)"_s);
    QString same = text.toCaseFolded();
    same.replace(QChar(0x2212), u'-');
    same.remove(QChar(0x2060)); // joins what may not be torn apart
    return same.replace(comma, u"."_s).simplified();
}

bool isWithinNumber(const QString &text, qsizetype at)
{
    return at > 0 && (text[at - 1].isDigit() || (text[at - 1] == u'.' && at > 1 && text[at - 2].isDigit()));
}

bool hasWord(const QString &text, const QString &word)
{
    if (!word.front().isDigit())
        return text.contains(word);
    for (qsizetype at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
        if (!isWithinNumber(text, at))
            return true;
    }
    return false;
}

/// A number by itself is not meant as an hour.
bool isOfMoment(const QString &word)
{
    return std::ranges::any_of(word, [](QChar sign) { return sign == u':' || sign == u'-'; });
}

void addValues(QStringList &texts, const std::vector<AuditValue> &values)
{
    for (const AuditValue &value : values)
        texts << value.field << value.value;
}

QString changedWords(const std::vector<AuditChange> &changes)
{
    QStringList texts;
    for (const AuditChange &change : changes) {
        texts << change.subject << change.reason;
        addValues(texts, change.before);
        addValues(texts, change.after);
    }
    return folded(texts.join(u'\n'));
}

} // namespace

AuditSearch::AuditSearch(const AuditFilter &filter)
    : m_words(folded(filter.text).split(u' ', Qt::SkipEmptyParts))
    , m_shown(filter.shown)
{
    // "mal lu, affichage": what ends a word in a sentence is none of it.
    for (QString &word : m_words) {
        while (word.size() > 1 && (word.endsWith(u',') || word.endsWith(u';')))
            word.chop(1);
    }
}

bool AuditSearch::finds(const Database &database, const AuditItem &item) const
{
    if (isEmpty())
        return true;
    QStringList own{item.entry.person, m_shown ? m_shown(item.entry) : item.entry.details};
    if (item.entry.run)
        own << u"%1: %2"_s.arg(item.entry.run->value).arg(item.runTitle);
    const QString text = folded(own.join(u'\n'));
    const QString moment = folded(assay::shownMoment(item.entry.at.toLocalTime()));
    QStringList missing = m_words;
    missing.removeIf([&](const QString &word) {
        return hasWord(text, word) || (isOfMoment(word) && moment.contains(word));
    });
    if (missing.isEmpty())
        return true;
    const QString changed = changedWords(auditChanges(database, item.entry.number));
    return std::ranges::all_of(missing, [&](const QString &word) { return hasWord(changed, word); });
}

} // namespace plateau::notebook
