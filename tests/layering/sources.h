// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <set>
#include <string>
#include <vector>

namespace plateau::layering {

/// A source file: its path from the top of the project, and its text.
struct Source {
    std::string path;
    std::string text;
};

/// All .h and .cpp files below a folder of the project, in the order of their paths.
std::vector<Source> sourcesBelow(const std::string &folder);

/// The names between the quotes or angle brackets of the #include lines.
std::vector<std::string> includesOf(const std::string &text);

/// "core/run" of "core/run/run.h", "ui" of "ui/bench/readpage.cpp"; the whole of what it can't place.
std::string roomOf(const std::string &path);

/// The rooms that a room may include from, itself among them; empty for an unknown room.
std::set<std::string> reachableFrom(const std::string &room);

/// One line for each include that goes where the room may not look.
std::vector<std::string> upwardIncludes(const Source &source);

/// One line for each included Qt header that lies in none of the folders (of QtCore, QtSql and the like).
std::vector<std::string> foreignQtIncludes(const Source &source, const std::vector<std::string> &qtFolders);

/// One line for each trace of SQL: Qt SQL or SQLite headers and classes, a string that is a statement.
std::vector<std::string> tracesOfSql(const Source &source);

} // namespace plateau::layering
