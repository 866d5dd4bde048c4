// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/checks.h"
#include "core/notebook/equipmentstore.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using equipment::HeldCheck;
using equipment::Outcome;

namespace {

std::map<qint64, bool> storedOutcomes(const Database &database)
{
    Statement query(database, u"SELECT id, passed FROM equipment_check"_s);
    query.run();
    std::map<qint64, bool> passed;
    while (query.next())
        passed[query.integer(0)] = query.integer(1) == 1;
    return passed;
}

/// The limits are the program's own, and another version may have others.
QString programOf(const Database &database, qint64 check)
{
    Statement query(database,
                    u"SELECT program_version FROM audit JOIN audit_record ON audit.id = "
                    "audit_record.audit WHERE record_table = 'equipment_check' AND record_id = ?"_s);
    query.run(check);
    return query.next() ? query.text(0) : QString();
}

QString failedFigures(const Outcome &outcome)
{
    QStringList failed;
    for (const equipment::Finding &finding : outcome.findings) {
        if (!finding.passed)
            failed << u"%1 %2 (%3)"_s.arg(finding.what, foundText(finding), limitText(finding));
    }
    return failed.join(u", "_s);
}

/// Empty where it comes to the same.
QString differenceOf(const HeldCheck &held, bool storedAsPassed)
{
    const std::optional<Outcome> outcome = equipment::outcomeOf(held.of, held.check);
    if (!outcome)
        return Sentence::tr("its outcome cannot be worked out again from its numbers");
    if (outcome->passed == storedAsPassed)
        return {};
    return outcome->passed
               ? Sentence::tr("it is stored as failed; worked out again from its numbers it is passed")
               : Sentence::tr("it is stored as passed; worked out again from its numbers it is failed: %1")
                     .arg(failedFigures(*outcome));
}

} // namespace

std::vector<Finding> equipmentFindings(const Database &database, const QString &programNow, int &checked)
{
    std::vector<Finding> findings;
    try {
        const std::map<qint64, bool> stored = storedOutcomes(database);
        for (const equipment::HeldItem &item : loadEquipment(database)) {
            for (const HeldCheck &held : item.checks) {
                ++checked;
                const QString difference = differenceOf(held, stored.at(held.id));
                if (difference.isEmpty())
                    continue;
                const QString then = programOf(database, held.id);
                findings.push_back(
                    {Sentence::tr("%1 of %2").arg(equipment::checkName(held), equipment::titleOf(held.of)),
                     then == programNow ? difference
                                        : Sentence::tr("%1 (stored with version %2, verified with %3)")
                                              .arg(difference, then, programNow)});
            }
        }
    } catch (const Failure &failure) {
        findings.push_back({Sentence::tr("the book of equipment"), failure.sentence()});
    }
    return findings;
}

} // namespace plateau::notebook
