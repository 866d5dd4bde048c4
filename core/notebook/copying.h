// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/progress.h"
#include "core/notebook/records.h"

#include <QString>

#include <functional>
#include <memory>

namespace plateau::notebook {

class Database;
class Failure;
class PageCopy;

/// Makes a file beside the target, readable by its owner alone, and gives it the target's name when make has
/// returned and it is on the disk. Throws what make throws; then there is no file of either name. What a
/// program that was killed left of an earlier attempt is taken away.
void makeWhole(const QString &target, const std::function<void(const QString &part)> &make);

/// What is said in place of a failure of a copy.
using Explain = std::function<Failure(const Failure &)>;

/// All pages of a copy, in a file beside the target. It needs the notebook no more and goes to any thread;
/// what has no name when it is destroyed is taken away.
class CopyToCheck
{
public:
    /// original: the notebook, for the sentences. head: of the notebook when its last page was copied.
    CopyToCheck(QString part, QString target, QString original, AuditHead head, Explain explain);
    ~CopyToCheck();
    CopyToCheck(const CopyToCheck &) = delete;
    CopyToCheck &operator=(const CopyToCheck &) = delete;

    const AuditHead &head() const { return m_head; }
    const QString &target() const { return m_target; }
    /// Opens it and looks through all of it: file, chain, the same head. Throws Failure(Damaged) where what
    /// was copied is damaged, Failure(Storage) where it did not come out as it was, and Stopped.
    void check(const Watch &watch = {});
    /// On the disk, and only then of the target's name. Throws Failure.
    void publish();
    /// Of the target's name at once, for a copy that is thrown away before the program ends.
    void nameForNow();

private:
    [[noreturn]] void fail(const Failure &failure);

    QString m_part;
    QString m_target;
    QString m_original;
    AuditHead m_head;
    Explain m_explain;
};

/// A copy of the notebook that is being made in the thread of its connection, a few pages at a time, with
/// whatever else the connection does in between (pagecopy.h). One that is destroyed on the way leaves
/// nothing. The connection outlives it.
class CopyUnderWay
{
public:
    /// target: its folder is there. Throws Failure.
    CopyUnderWay(const Database &database, const QString &target, Explain explain = {});
    ~CopyUnderWay();
    CopyUnderWay(const CopyUnderWay &) = delete;
    CopyUnderWay &operator=(const CopyUnderWay &) = delete;

    /// True when all pages are there. Throws Failure; then nothing is left of it, and it can only be
    /// destroyed.
    bool advance(int pages);
    qint64 donePages() const;
    qint64 allPages() const;
    /// Once, when advance has said true.
    std::unique_ptr<CopyToCheck> take();

private:
    [[noreturn]] void fail(const Failure &failure);

    const Database &m_database;
    QString m_part;
    QString m_target;
    Explain m_explain;
    std::unique_ptr<PageCopy> m_pages;
    std::unique_ptr<CopyToCheck> m_made;
};

/// So much of a copy's time goes into its pages, in thousandths; the rest into looking through them.
inline constexpr int copiedPart = 300;
/// Pages at a time where nobody waits in between.
inline constexpr int pagesAtATime = 512;

/// All pages at once, of one moment, by whomever the notebook is written to. Throws Failure and Stopped.
std::unique_ptr<CopyToCheck> allPagesOf(CopyUnderWay &copy, const Database &database, const Watch &watch);

/// A copy of the notebook, complete and in one file that only its owner may read; checked, with the same
/// audit head, and on the disk before it gets its name. Throws Failure and Stopped; then there is no file of
/// that name.
void backUp(const Database &database, const QString &target, const Watch &watch = {});

/// What is wrong with the file as a notebook, from its bytes to its chain, in one Failure(Damaged); nothing.
void requireWholeNotebook(const Database &database, const Watch &watch = {});

} // namespace plateau::notebook
