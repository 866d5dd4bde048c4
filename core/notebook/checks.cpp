// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/checks.h"

#include "core/notebook/sentence.h"
#include "core/notebook/statement.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

void checkIntegrity(const Database &database, std::vector<Finding> &findings)
{
    Statement query(database, u"PRAGMA integrity_check"_s);
    query.run();
    while (query.next()) {
        if (query.text(0) != "ok"_L1)
            findings.push_back({Sentence::tr("the file"), query.text(0)});
    }
}

void checkForeignKeys(const Database &database, std::vector<Finding> &findings)
{
    Statement query(database, u"PRAGMA foreign_key_check"_s);
    query.run();
    while (query.next())
        findings.push_back({u"%1 %2"_s.arg(query.text(0), query.text(1)),
                            Sentence::tr("names a row of %1 that is not there").arg(query.text(2))});
}

QString placeOf(const Layout::Name &object)
{
    return u"%1 %2"_s.arg(object.type, object.name);
}

} // namespace

std::vector<Finding> fileFindings(const Database &database)
{
    std::vector<Finding> findings;
    for (const auto check : {checkIntegrity, checkForeignKeys}) {
        try {
            check(database, findings);
        } catch (const Failure &failure) {
            findings.push_back({Sentence::tr("the file"), failure.details()});
        }
    }
    return findings;
}

std::vector<Finding> schemaFindings(const Database &database, const Layout &expected)
{
    std::vector<Finding> findings;
    try {
        std::map<Layout::Name, QString> found = layoutOf(database).objects;
        for (const auto &[object, sql] : expected.objects) {
            const auto match = found.find(object);
            if (match == found.end())
                findings.push_back({placeOf(object), Sentence::tr("is missing from the schema")});
            else if (match->second != sql)
                findings.push_back({placeOf(object), Sentence::tr("is not as this program makes it")});
            found.erase(object);
        }
        for (const auto &[object, sql] : found)
            findings.push_back({placeOf(object), Sentence::tr("does not belong in a notebook")});
    } catch (const Failure &failure) {
        findings.push_back({Sentence::tr("the schema"), failure.details()});
    }
    return findings;
}

QString findingLines(const std::vector<Finding> &findings)
{
    QStringList lines;
    for (const Finding &finding : findings)
        lines.append(finding.place + u": "_s + finding.message);
    return lines.join(u'\n');
}

} // namespace plateau::notebook
