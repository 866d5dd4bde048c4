// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/copying.h"

#include "core/notebook/audit.h"
#include "core/notebook/checks.h"
#include "core/notebook/files.h"
#include "core/notebook/sentence.h"

#include <QDir>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

void requireSameHead(const Database &original, const Database &copy)
{
    const AuditHead wanted = readAuditHead(original);
    const AuditHead found = readAuditHead(copy);
    if (wanted.hash != found.hash || wanted.entries != found.entries || !fileFindings(copy).empty() ||
        !chainFindings(copy).empty())
        throw Failure(
            Failure::Kind::Storage,
            Sentence::tr("The copy of the notebook %1 did not come out whole and was taken away again; see "
                         "that the disk is sound and has room.")
                .arg(QDir::toNativeSeparators(original.path())));
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

void backUp(const Database &database, const QString &target)
{
    makeWhole(target, [&database](const QString &part) {
        Statement(database, u"VACUUM INTO ?"_s).run(part);
        requireSameHead(database, Database(part, Access::ReadOnly));
    });
}

void requireWholeNotebook(const Database &database)
{
    std::vector<Finding> findings = fileFindings(database);
    if (findings.empty())
        findings = chainFindings(database);
    if (!findings.empty())
        throw Failure(Failure::Kind::Damaged,
                      Sentence::tr("The notebook %1 is damaged (%2: %3); nothing was made of it: choose "
                                   "another backup.")
                          .arg(QDir::toNativeSeparators(database.path()), findings.front().place,
                               findings.front().message),
                      findingLines(findings));
}

} // namespace plateau::notebook
