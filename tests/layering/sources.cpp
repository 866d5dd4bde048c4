// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/layering/sources.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>

namespace plateau::layering {

namespace fs = std::filesystem;

namespace {

bool startsWith(const std::string &text, const std::string &start)
{
    return text.compare(0, start.size(), start) == 0;
}

/// <QString>, <QtCore/QString> and <qglobal.h>, but not <quality.h>-like names of our own: those stand in
/// quotes.
bool isQtHeader(const std::string &include)
{
    static const std::regex pattern("(Qt[A-Za-z0-9]*/.*|Q[A-Za-z0-9_]+|q[a-z0-9_]+\\.h)");
    return std::regex_match(include, pattern);
}

} // namespace

std::vector<Source> sourcesBelow(const std::string &folder)
{
    const fs::path top = PLATEAU_SOURCE_DIR;
    std::vector<Source> sources;
    for (const auto &entry : fs::recursive_directory_iterator(top / folder)) {
        const auto extension = entry.path().extension();
        if (!entry.is_regular_file() || (extension != ".h" && extension != ".cpp"))
            continue;
        std::ifstream file(entry.path());
        sources.push_back({fs::relative(entry.path(), top).generic_string(),
                           {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()}});
    }
    std::sort(sources.begin(), sources.end(), [](const auto &a, const auto &b) { return a.path < b.path; });
    return sources;
}

std::vector<std::string> includesOf(const std::string &text)
{
    static const std::regex pattern("(^|\n)[ \t]*#[ \t]*include[ \t]*[<\"]([^>\"\n]+)[>\"]");
    std::vector<std::string> includes;
    for (std::sregex_iterator match(text.begin(), text.end(), pattern), end; match != end; ++match)
        includes.push_back((*match)[2]);
    return includes;
}

std::string roomOf(const std::string &path)
{
    static const std::regex pattern("(core/[a-z]+|sampledata/maker|ui|app|tests)/.*");
    std::smatch match;
    return std::regex_match(path, match, pattern) ? match[1].str() : path;
}

std::set<std::string> reachableFrom(const std::string &room)
{
    // Arrows run downwards only: app -> ui -> core; notebook -> charts, exchange -> planning -> equipment ->
    // evaluation, quality -> run -> assay.
    static const std::map<std::string, std::vector<std::string>> below{
        {"core/assay", {}},
        {"core/run", {"core/assay"}},
        {"core/quality", {"core/run"}},
        {"core/evaluation", {"core/quality"}},
        {"core/charts", {"core/evaluation"}},
        {"core/equipment", {"core/evaluation"}},
        {"core/planning", {"core/equipment"}},
        {"core/timing", {"core/run"}},
        {"core/exchange", {"core/planning"}},
        {"core/notebook", {"core/charts", "core/exchange", "core/timing"}},
        {"ui", {"core/notebook"}},
        {"sampledata/maker", {"core/notebook"}},
        {"app", {"ui", "sampledata/maker"}},
    };
    std::set<std::string> reachable;
    std::vector<std::string> open{room};
    while (!open.empty()) {
        const std::string next = open.back();
        open.pop_back();
        const auto found = below.find(next);
        if (found == below.end() || !reachable.insert(next).second)
            continue;
        open.insert(open.end(), found->second.begin(), found->second.end());
    }
    return reachable;
}

std::vector<std::string> upwardIncludes(const Source &source)
{
    const auto allowed = reachableFrom(roomOf(source.path));
    std::vector<std::string> found;
    for (const auto &include : includesOf(source.text)) {
        const bool ours = startsWith(include, "core/") || startsWith(include, "ui/") ||
                          startsWith(include, "app/") || startsWith(include, "sampledata/") ||
                          startsWith(include, "tests/") || startsWith(include, "..");
        if (ours && allowed.count(roomOf(include)) == 0)
            found.push_back(source.path + " includes " + include);
    }
    return found;
}

std::vector<std::string> foreignQtIncludes(const Source &source, const std::vector<std::string> &qtFolders)
{
    std::vector<std::string> found;
    for (const auto &include : includesOf(source.text)) {
        if (!isQtHeader(include))
            continue;
        const fs::path header = include;
        const bool known = std::any_of(qtFolders.begin(), qtFolders.end(), [&](const std::string &folder) {
            const fs::path directory = folder;
            if (header.has_parent_path())
                return header.parent_path() == directory.filename() &&
                       fs::is_regular_file(directory / header.filename());
            return fs::is_regular_file(directory / header);
        });
        if (!known)
            found.push_back(source.path + " includes " + include);
    }
    return found;
}

std::vector<std::string> tracesOfSql(const Source &source)
{
    static const std::regex pattern("QSql[A-Z][A-Za-z]*|QtSql|sqlite3[_.]|"
                                    "\"[ \t]*(SELECT|INSERT (OR [A-Z]+ )?INTO|UPDATE|DELETE FROM|PRAGMA|"
                                    "(CREATE|DROP|ALTER) (TABLE|INDEX|TRIGGER|VIEW)|BEGIN IMMEDIATE) ");
    std::vector<std::string> found;
    for (std::sregex_iterator match(source.text.begin(), source.text.end(), pattern), end; match != end;
         ++match)
        found.push_back(source.path + " has " + match->str());
    return found;
}

} // namespace plateau::layering
