// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/copying.h"

#include "core/notebook/audit.h"
#include "core/notebook/checks.h"
#include "core/notebook/files.h"
#include "core/notebook/pagecopy.h"
#include "core/notebook/sentence.h"
#include "core/notebook/stopping.h"

#include <QDir>
#include <QFile>

#include <utility>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

std::vector<Finding> findingsOf(const Database &database, const Watch &watch)
{
    qint64 entries = 0;
    try {
        entries = readAuditHead(database).entries;
    } catch (const Failure &) {
        // what cannot be read is found below, and said there
    }
    Progress progress(watch, entries);
    const auto look = [&progress] {
        if (!progress.goesOn())
            throw Stopped();
    };
    const StopsStatements stops(database, [&progress] { return progress.goesOn(); });
    look(); // of a small one the engine never asks
    std::vector<Finding> findings = fileFindings(database);
    look();
    if (findings.empty())
        findings = chainFindings(database, &progress);
    return findings;
}

Failure copiedDamage(const QString &original, const std::vector<Finding> &findings)
{
    return Failure(
        Failure::Kind::Damaged,
        Sentence::tr("The copy of the notebook %1 is damaged (%2: %3), so the notebook itself may be as "
                     "well; the copy was taken away: have plateau verify list all that is wrong, and "
                     "keep the backups there are.")
            .arg(QDir::toNativeSeparators(original), findings.front().place, findings.front().message),
        findingLines(findings));
}

Failure notAsItWas(const QString &original)
{
    return Failure(
        Failure::Kind::Storage,
        Sentence::tr("The copy of the notebook %1 did not come out whole and was taken away again; "
                     "see that the disk is sound and has room.")
            .arg(QDir::toNativeSeparators(original)));
}

} // namespace

void makeWhole(const QString &target, const std::function<void(const QString &part)> &make)
{
    const QString part = target + u".part"_s;
    removeWithSideFiles(part);
    createPrivateFile(part); // VACUUM INTO takes an empty file and keeps its permissions
    try {
        make(part);
        publishFile(part, target);
    } catch (...) {
        removeWithSideFiles(part);
        throw;
    }
}

CopyToCheck::CopyToCheck(QString part, QString target, QString original, AuditHead head, Explain explain)
    : m_part(std::move(part))
    , m_target(std::move(target))
    , m_original(std::move(original))
    , m_head(std::move(head))
    , m_explain(std::move(explain))
{
}

CopyToCheck::~CopyToCheck()
{
    if (!m_part.isEmpty())
        removeWithSideFiles(m_part);
}

void CopyToCheck::fail(const Failure &failure)
{
    throw m_explain ? m_explain(failure) : failure;
}

void CopyToCheck::check(const Watch &watch)
{
    try {
        const Database copy(m_part, Access::ReadOnly);
        const std::vector<Finding> findings = findingsOf(copy, watch);
        if (!findings.empty())
            throw copiedDamage(m_original, findings);
        const AuditHead found = readAuditHead(copy);
        if (found.hash != m_head.hash || found.entries != m_head.entries)
            throw notAsItWas(m_original);
    } catch (const Failure &failure) {
        fail(failure);
    }
}

void CopyToCheck::publish()
{
    try {
        publishFile(m_part, m_target);
        m_part.clear();
    } catch (const Failure &failure) {
        fail(failure);
    }
}

void CopyToCheck::nameForNow()
{
    if (!QFile::rename(m_part, m_target))
        fail(notAsItWas(m_original));
    m_part.clear();
}

CopyUnderWay::CopyUnderWay(const Database &database, const QString &target, Explain explain)
    : m_database(database)
    , m_part(target + u".part"_s)
    , m_target(target)
    , m_explain(std::move(explain))
{
    try {
        removeWithSideFiles(m_part); // of a program that was killed
        createPrivateFile(m_part);
        m_pages = std::make_unique<PageCopy>(database, m_part);
    } catch (const Failure &failure) {
        fail(failure);
    }
}

CopyUnderWay::~CopyUnderWay()
{
    if (m_pages) {
        m_pages.reset();
        removeWithSideFiles(m_part);
    }
}

void CopyUnderWay::fail(const Failure &failure)
{
    m_pages.reset();
    removeWithSideFiles(m_part);
    throw m_explain ? m_explain(failure) : failure;
}

bool CopyUnderWay::advance(int pages)
{
    try {
        if (!m_pages->step(pages))
            return false;
        // No act comes between the last page and this.
        AuditHead head = readAuditHead(m_database);
        m_pages.reset();
        m_made =
            std::make_unique<CopyToCheck>(m_part, m_target, m_database.path(), std::move(head), m_explain);
        return true;
    } catch (const Failure &failure) {
        fail(failure);
    }
}

qint64 CopyUnderWay::donePages() const
{
    return m_pages ? m_pages->donePages() : 0;
}

qint64 CopyUnderWay::allPages() const
{
    return m_pages ? m_pages->allPages() : 0;
}

std::unique_ptr<CopyToCheck> CopyUnderWay::take()
{
    return std::move(m_made);
}

std::unique_ptr<CopyToCheck> allPagesOf(CopyUnderWay &copy, const Database &database, const Watch &watch)
{
    // To a notebook that is only read another program may write between two steps.
    const Transaction snapshot(database, Transaction::Kind::Read);
    readAuditHead(database); // only now the snapshot is taken
    while (!copy.advance(pagesAtATime)) {
        if (watch && !watch(copy.donePages(), copy.allPages()))
            throw Stopped();
    }
    return copy.take();
}

void backUp(const Database &database, const QString &target, const Watch &watch)
{
    CopyUnderWay copy(database, target);
    const std::unique_ptr<CopyToCheck> made = allPagesOf(copy, database, partOf(watch, 0, copiedPart));
    made->check(partOf(watch, copiedPart, 1000));
    made->publish();
}

void requireWholeNotebook(const Database &database, const Watch &watch)
{
    const std::vector<Finding> findings = findingsOf(database, watch);
    if (!findings.empty())
        throw Failure(
            Failure::Kind::Damaged,
            Sentence::tr(
                "The notebook %1 is damaged (%2: %3); nothing was made from it: choose another backup.")
                .arg(QDir::toNativeSeparators(database.path()), findings.front().place,
                     findings.front().message),
            findingLines(findings));
}

} // namespace plateau::notebook
