// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helpsearch.h"

#include "ui/help/helptext.h"

#include <QRegularExpression>

#include <algorithm>
#include <set>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr int contextLength = 90;

/// What a word is worth: begun or whole in a title, in the page's title, in the text.
struct Worth {
    int begun;
    int whole;
};
constexpr Worth inTitle{30, 40};
constexpr Worth inPageTitle{10, 14};
constexpr Worth inText{2, 3};
/// A long section is not better for saying it once more.
constexpr int countedAtMost = 4;

int worthOf(const QString &typed, const QStringList &words, Worth worth, int most)
{
    int sum = 0;
    int found = 0;
    for (const QString &word : words) {
        if (!word.startsWith(typed))
            continue;
        sum += word == typed ? worth.whole : worth.begun;
        if (++found == most)
            break;
    }
    return sum;
}

/// A line around its first found word.
QString cutAround(const QString &line, int position)
{
    if (line.size() <= contextLength)
        return line;
    int from = std::max(0, position - contextLength / 4);
    if (from > 0)
        from = static_cast<int>(line.indexOf(u' ', from)) + 1; // the found word lies further on
    from = std::min(from, position);
    QString part = line.mid(from, contextLength);
    if (from + part.size() < line.size())
        part = part.left(std::max<qsizetype>(part.lastIndexOf(u' '), 1)) + u" …"_s;
    return from > 0 ? u"… "_s + part : part;
}

QString contextOf(const HelpSection &section, const QStringList &typed)
{
    // The word for the program says nothing to a reader.
    const QStringList lines = section.lines.mid(section.identifier.isEmpty() ? 0 : 1);
    QString best = lines.isEmpty() ? QString() : cutAround(lines.front(), 0);
    std::size_t most = 0;
    for (const QString &line : lines) {
        const auto found = wordsFound(line, typed);
        std::set<QString> distinct;
        for (const auto &[position, length] : found) {
            const QString word = foldedText(line.mid(position, length));
            for (const QString &start : typed) {
                if (word.startsWith(start))
                    distinct.insert(start);
            }
        }
        if (distinct.size() > most) {
            most = distinct.size();
            best = cutAround(line, found.front().first);
        }
    }
    return best;
}

} // namespace

std::vector<std::pair<int, int>> wordsFound(const QString &text, const QStringList &foldedStarts)
{
    static const QRegularExpression word(u"[\\p{L}\\p{N}\\p{M}]+"_s,
                                         QRegularExpression::UseUnicodePropertiesOption);
    std::vector<std::pair<int, int>> found;
    for (auto at = word.globalMatch(text); at.hasNext();) {
        const auto match = at.next();
        const QString folded = foldedText(match.captured());
        if (std::ranges::any_of(foldedStarts, [&](const QString &start) { return folded.startsWith(start); }))
            found.emplace_back(static_cast<int>(match.capturedStart()),
                               static_cast<int>(match.capturedLength()));
    }
    return found;
}

std::vector<HelpHit> searchHelp(const HelpPages &pages, const QString &typed)
{
    const QStringList starts = foldedWords(typed);
    std::vector<HelpHit> hits;
    if (starts.isEmpty())
        return hits;
    for (const HelpPage &page : pages.pages()) {
        if (page.id == HelpPages::indexPage())
            continue; // says nothing that the pages do not say, and stands beside the search anyway
        const QStringList pageTitle = foldedWords(page.title);
        for (const HelpSection &section : page.sections) {
            const QStringList title = foldedWords(section.title);
            const QStringList text = foldedWords(section.lines.join(u'\n'));
            int score = 0;
            bool isHere = false;
            const bool hasAll = std::ranges::all_of(starts, [&](const QString &start) {
                const int here =
                    worthOf(start, title, inTitle, 1) + worthOf(start, text, inText, countedAtMost);
                const int around = worthOf(start, pageTitle, inPageTitle, 1);
                isHere = isHere || here > 0;
                score += here + around;
                return here + around > 0;
            });
            if (hasAll && isHere)
                hits.push_back(
                    {page.id, page.title, section.anchor, section.title, contextOf(section, starts), score});
        }
    }
    std::ranges::stable_sort(hits, std::greater(), &HelpHit::score);
    return hits;
}

} // namespace plateau::ui
