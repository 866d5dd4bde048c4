// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

// None of these is ever used on a notebook that is open: closing any descriptor of a file drops the locks
// SQLite holds on it (https://www.sqlite.org/howtocorrupt.html, 2.2).

/// Whether nothing of that name is there. False where its folder may not be entered, so that nobody can tell: who opens it is
/// told so.
bool isMissing(const QString &path);
/// An empty file that only its owner may read and write. Throws Failure(Storage); a file of that name, too.
void createPrivateFile(const QString &path);
/// Its bytes, or a folder's names, onto the disk. Throws Failure(Storage).
void syncToDisk(const QString &path);
/// Onto the disk, then to its final name, unless there is a file of that name: then throws Failure(Refused).
void publishFile(const QString &from, const QString &to);
/// Throws Failure unless a notebook may be made under that name: nothing of it is there, its folder is.
void requireFreeName(const QString &path);
/// The file and the side files SQLite may have left with it; one that is not there is no error.
void removeWithSideFiles(const QString &path);
/// Names of side files of the path that are there although the file itself is not.
QString orphanedSideFile(const QString &path);

} // namespace plateau::notebook
