// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/helpcall.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace plateau::ui {

/// A heading and what stands below it up to the next one.
struct HelpSection {
    QString title;
    int level = 1;
    /// By which links lead to it (HeadingAnchors).
    QString anchor;
    /// What the program calls it in every language: "blank-high" of the line "Identifier: `blank-high`" below
    /// the heading. Empty for most.
    QString identifier;
    /// Line by line as it is read.
    QStringList lines;
};

struct HelpPage {
    /// Its file's name without the ending: "first-rack".
    QString id;
    QString title;
    /// "en", "de": what it is written in, which is English where it is not translated.
    QString language;
    QString markdown;
    /// The first one begins with the page's title.
    std::vector<HelpSection> sections;
};

/// A line of the list of contents: the name of a group, or a page.
struct HelpEntry {
    QString group;
    QString page;
    bool operator==(const HelpEntry &) const = default;
};

/// The pages of the help in one language, English where a page is not translated. folder holds a folder for
/// each language, with a file for each page. The order is that in which index.md links to them; what it
/// leaves out comes last.
class HelpPages
{
public:
    HelpPages(const QString &folder, const QString &language);

    /// The page that everything begins with.
    static QString indexPage();

    const QString &folder() const { return m_folder; }
    const QString &language() const { return m_language; }
    /// In the order of the contents.
    const std::vector<HelpPage> &pages() const { return m_pages; }
    const std::vector<HelpEntry> &contents() const { return m_contents; }
    /// nullptr: there is none.
    const HelpPage *find(const QString &id) const;

private:
    void arrange();

    QString m_folder;
    QString m_language;
    std::vector<HelpPage> m_pages;
    std::vector<HelpEntry> m_contents;
};

HelpPage helpPage(const QString &id, const QString &language, const QString &markdown);
/// Of that anchor, else of that identifier; nullptr: none. An empty word is none.
const HelpSection *sectionOf(const HelpPage &page, const QString &word);
/// Where a link of a page leads: "read.md", "checks.md#blank-high", "#series". Nothing: out of the help.
std::optional<HelpPlace> placeOfLink(const QString &link, const QString &page);

} // namespace plateau::ui
