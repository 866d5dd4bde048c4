// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helppages.h"

#include "ui/help/helptext.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QUrl>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

const QString english = QStringLiteral("en");

QStringList pageIdsIn(const QString &folder)
{
    QStringList ids;
    for (const QString &name : QDir(folder).entryList({u"*.md"_s}, QDir::Files, QDir::Name))
        ids << name.chopped(3);
    return ids;
}

std::optional<HelpPage> readPage(const QString &folder, const QString &language, const QString &id)
{
    QFile file(u"%1/%2/%3.md"_s.arg(folder, language, id));
    if (!file.open(QIODevice::ReadOnly))
        return std::nullopt;
    return helpPage(id, language, QString::fromUtf8(file.readAll()).remove(u'\r'));
}

/// What the line below a heading says the program calls the section.
QString identifierIn(const QString &line)
{
    static const QRegularExpression named(u"^[^`:]+:\\s*`([a-z0-9-]+)`\\.?$"_s);
    return named.match(line.trimmed()).captured(1);
}

/// Pages in the order of the links, each once, below the headings they stand under.
std::vector<HelpEntry> linkedFrom(const HelpPage &index)
{
    static const QRegularExpression heading(u"^##+\\s+(.+)$"_s);
    static const QRegularExpression link(u"\\]\\(([^)#/]+)\\.md[)#]"_s);
    std::vector<HelpEntry> entries;
    for (const QString &line : index.markdown.split(u'\n')) {
        if (heading.match(line).hasMatch())
            entries.push_back({plainLine(line), {}});
        for (auto found = link.globalMatch(line); found.hasNext();) {
            const HelpEntry entry{{}, found.next().captured(1)};
            if (std::ranges::find(entries, entry) == entries.end())
                entries.push_back(entry);
        }
    }
    return entries;
}

} // namespace

HelpPage helpPage(const QString &id, const QString &language, const QString &markdown)
{
    static const QRegularExpression heading(u"^(#{1,6})\\s+(.+?)\\s*$"_s);
    HelpPage page{id, {}, language, markdown, {}};
    HeadingAnchors anchors;
    bool isCode = false;
    for (const QString &line : markdown.split(u'\n')) {
        if (line.startsWith("```"_L1)) {
            isCode = !isCode;
            continue;
        }
        const auto found = heading.match(line);
        if (!isCode && found.hasMatch()) {
            const QString title = plainLine(line);
            page.sections.push_back(
                {title, static_cast<int>(found.capturedLength(1)), anchors.next(title), {}, {}});
            continue;
        }
        const QString plain = isCode ? line.trimmed() : plainLine(line);
        if (plain.isEmpty() || page.sections.empty())
            continue;
        HelpSection &section = page.sections.back();
        if (section.lines.isEmpty())
            section.identifier = identifierIn(line);
        section.lines << plain;
    }
    page.title = page.sections.empty() ? id : page.sections.front().title;
    return page;
}

const HelpSection *sectionOf(const HelpPage &page, const QString &word)
{
    if (word.isEmpty())
        return nullptr;
    for (const auto member : {&HelpSection::anchor, &HelpSection::identifier}) {
        const auto at = std::ranges::find(page.sections, word, member);
        if (at != page.sections.end())
            return &*at;
    }
    return nullptr;
}

std::optional<HelpPlace> placeOfLink(const QString &link, const QString &page)
{
    static const QRegularExpression within(u"^(?:([A-Za-z0-9_-]+)\\.md)?(?:#(.+))?$"_s);
    const auto found = within.match(QUrl::fromPercentEncoding(link.toUtf8()));
    if (link.isEmpty() || !found.hasMatch())
        return std::nullopt;
    return HelpPlace{found.captured(1).isEmpty() ? page : found.captured(1), found.captured(2)};
}

HelpPages::HelpPages(const QString &folder, const QString &language)
    : m_folder(folder)
    , m_language(language)
{
    QStringList ids = pageIdsIn(folder + u'/' + english);
    ids << pageIdsIn(folder + u'/' + language);
    ids.sort();
    ids.removeDuplicates();
    for (const QString &id : ids) {
        std::optional<HelpPage> page = readPage(folder, language, id);
        if (!page)
            page = readPage(folder, english, id);
        if (page)
            m_pages.push_back(std::move(*page));
    }
    arrange();
}

QString HelpPages::indexPage()
{
    return u"index"_s;
}

const HelpPage *HelpPages::find(const QString &id) const
{
    const auto at = std::ranges::find(m_pages, id, &HelpPage::id);
    return at == m_pages.end() ? nullptr : &*at;
}

void HelpPages::arrange()
{
    std::vector<HelpPage> arranged;
    const auto take = [&](const QString &id) {
        const auto at = std::ranges::find(m_pages, id, &HelpPage::id);
        if (at == m_pages.end())
            return;
        m_contents.push_back({{}, id});
        arranged.push_back(std::move(*at));
        m_pages.erase(at);
    };
    const HelpPage *index = find(indexPage());
    const std::vector<HelpEntry> linked = index ? linkedFrom(*index) : std::vector<HelpEntry>();
    take(indexPage());
    for (const HelpEntry &entry : linked) {
        if (entry.page.isEmpty())
            m_contents.push_back(entry);
        else
            take(entry.page);
    }
    while (!m_pages.empty())
        take(QString(m_pages.front().id));
    m_pages = std::move(arranged);
    // A group whose pages are not there yet has no line.
    for (std::size_t at = m_contents.size(); at-- > 0;) {
        const bool isLast = at + 1 == m_contents.size();
        if (m_contents[at].page.isEmpty() && (isLast || m_contents[at + 1].page.isEmpty()))
            m_contents.erase(m_contents.begin() + static_cast<std::ptrdiff_t>(at));
    }
}

} // namespace plateau::ui
