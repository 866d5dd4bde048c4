// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/basisstore.h"

#include "core/notebook/decisionstore.h"
#include "core/notebook/documentstore.h"
#include "core/notebook/laboratorystore.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/specificationstore.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

struct BasisRows {
    std::optional<qint64> laboratory;
    std::optional<qint64> specifications;
};

BasisRows presentRows(const Database &database)
{
    return {newestDocument(database, Document::Laboratory),
            newestDocument(database, Document::Specifications)};
}

BasisRows rowsOf(const Database &database, qint64 decisionRow)
{
    Statement query(database, u"SELECT laboratory, specifications FROM decision_basis WHERE decision = ?"_s);
    query.run(decisionRow);
    if (!query.next())
        return {documentBefore(database, Document::Laboratory, u"decision"_s, decisionRow),
                documentBefore(database, Document::Specifications, u"decision"_s, decisionRow)};
    BasisRows rows;
    if (!query.isNull(0))
        rows.laboratory = query.integer(0);
    if (!query.isNull(1))
        rows.specifications = query.integer(1);
    return rows;
}

BasisRows rowsOf(const Database &database, RunId run, std::optional<int> revision)
{
    const std::vector<DecisionRow> decisions = loadDecisions(database, run);
    if (!revision)
        return stateOf(database, run) == RunState::OnBench ? presentRows(database)
                                                           : rowsOf(database, decisions.back().id);
    if (*revision < 1 || *revision > int(decisions.size()))
        throw refused(Sentence::tr("Run %1 has no revision %2: choose one of 1 to %3.")
                          .arg(run.value)
                          .arg(*revision)
                          .arg(decisions.size()));
    return rowsOf(database, decisions[std::size_t(*revision - 1)].id);
}

} // namespace

void storeDecisionBasis(Act &act, qint64 decisionRow)
{
    const BasisRows rows = presentRows(act.database());
    Statement insert(act.database(),
                     u"INSERT INTO decision_basis (decision, laboratory, specifications) VALUES (?, ?, ?)"_s);
    insert.run(decisionRow, rows.laboratory, rows.specifications);
    act.covers(u"decision_basis"_s, insert.insertedId());
}

DecisionBasis loadDecisionBasis(const Database &database, RunId run, std::optional<int> revision)
{
    const BasisRows rows = rowsOf(database, run, revision);
    return {loadLaboratory(database, rows.laboratory), loadSpecifications(database, rows.specifications),
            documentSaving(database, Document::Specifications, rows.specifications)};
}

} // namespace plateau::notebook
