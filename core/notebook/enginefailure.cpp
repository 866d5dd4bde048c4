// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/enginefailure.h"

#include "core/notebook/sentence.h"

#include <QDir>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// Primary result codes of SQLite; the extended ones carry them in their lowest byte.
enum Code {
    busy = 5,
    locked = 6,
    outOfMemory = 7,
    readOnly = 8,
    interrupted = 9,
    inputOutput = 10,
    corrupt = 11,
    full = 13,
    cannotOpen = 14,
    constraint = 19,
    notADatabase = 26
};
constexpr int extendedReadOnlyRollback =
    776; // a journal waits to be rolled back, but the file may only be read

struct Words {
    Failure::Kind kind;
    QString sentence;
};

Words storageWords(int code)
{
    using enum Failure::Kind;
    switch (code & 0xff) {
    case full:
        return {Storage,
                Sentence::tr("There is no room left for the notebook %1; nothing of this step was stored: "
                             "make room on the disk and do it again.")};
    case readOnly:
        if (code == extendedReadOnlyRollback)
            return {Storage,
                    Sentence::tr("The notebook %1 was left in the middle of a step and has to be opened for "
                                 "writing once, so that the half step is taken back.")};
        return {Storage,
                Sentence::tr("The notebook %1 may only be read; nothing was stored: allow writing to the "
                             "file and its folder, or work on a copy.")};
    case cannotOpen:
        return {Storage,
                Sentence::tr("The notebook %1 could not be opened; nothing was stored: see that its folder "
                             "is there and may be written to.")};
    case outOfMemory:
        return {Storage,
                Sentence::tr("The computer has no memory left to work on the notebook %1; nothing of this "
                             "step was stored: close other programs and do it again.")};
    default:
        return {Storage,
                Sentence::tr("The disk did not take what was written to the notebook %1; nothing of this "
                             "step was stored: see that the disk is there, sound and not full.")};
    }
}

Words wordsFor(int code)
{
    using enum Failure::Kind;
    switch (code & 0xff) {
    case busy:
    case locked:
        return {Locked,
                Sentence::tr("The notebook %1 is in use by another program; nothing was stored: close it "
                             "there first.")};
    case outOfMemory:
    case readOnly:
    case inputOutput:
    case full:
    case cannotOpen:
        return storageWords(code);
    case constraint:
        return {Refused, Sentence::tr("A rule of the notebook %1 forbids this; nothing was stored.")};
    case notADatabase:
        return {NotANotebook, Sentence::tr("The file %1 is not a Plateau notebook; it was left as it is.")};
    default:
        return {Damaged,
                Sentence::tr("The notebook %1 is damaged; nothing was stored: go back to the latest backup "
                             "and keep this file for a closer look.")};
    }
}

} // namespace

Failure inUseElsewhere(const QString &path)
{
    const Words words = wordsFor(busy);
    return {words.kind, words.sentence.arg(QDir::toNativeSeparators(path))};
}

bool wasStopped(const QSqlError &error)
{
    return (error.nativeErrorCode().toInt() & 0xff) == interrupted;
}

Failure engineFailure(const QSqlError &error, const QString &path, const QString &statement)
{
    const Words words = wordsFor(error.nativeErrorCode().toInt());
    const QString details =
        u"SQLite %1: %2 [%3]"_s.arg(error.nativeErrorCode(), error.databaseText(), statement.simplified());
    return {words.kind, words.sentence.arg(QDir::toNativeSeparators(path)), details};
}

} // namespace plateau::notebook
