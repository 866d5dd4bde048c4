// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/companions.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/shelfstore.h"
#include "core/notebook/text.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

struct Place {
    RunId run;
    QString sample;
};

/// Where accepted runs hold a sample of the product, newest decision first: by the run's plan, and where it
/// has none, by the shelf.
std::vector<Place> placesOf(const Database &database, const QString &product)
{
    Statement query(
        database,
        u"SELECT of_product.run, of_product.name FROM ("
        "SELECT sample.run, sample.name FROM sample_detail JOIN plan_sample ON plan_sample.detail = "
        "sample_detail.id JOIN sample ON sample.id = plan_sample.sample WHERE product_key = ? "
        "UNION SELECT sample.run, sample.name FROM sample_detail JOIN shelf_version ON shelf_version.detail "
        "= "
        "sample_detail.id JOIN shelf_sample ON shelf_sample.id = shelf_version.sample "
        "JOIN sample ON sample.name = sample_detail.name AND sample.run > shelf_sample.last_run "
        "WHERE product_key = ? AND shelf_version.id = (SELECT max(id) FROM shelf_version AS any_version "
        "WHERE any_version.sample = shelf_sample.id) "
        "AND sample.id NOT IN (SELECT sample FROM plan_sample)) AS of_product "
        "JOIN decision ON decision.run = of_product.run WHERE decision.kind = 'accepted' "
        "AND decision.id NOT IN (SELECT decision FROM reopening) ORDER BY decision.id DESC"_s);
    const QString key = comparisonKey(product);
    query.run(key, key);
    std::vector<Place> places;
    while (query.next())
        places.push_back({{query.integer(0)}, query.text(1)});
    return places;
}

bool says(const evaluation::Result &result)
{
    return result.value || result.lessThan;
}

} // namespace

std::vector<PastResult> pastResults(const Database &database, const QString &product,
                                    const QString &measurand, int most)
{
    std::vector<PastResult> found;
    if (comparisonKey(product).isEmpty())
        return found;
    for (const Place &place : placesOf(database, product)) {
        if (int(found.size()) >= most)
            break;
        const DecisionRow decision = loadDecisions(database, place.run).back();
        for (const evaluation::Result &result : evaluationAt(database, place.run, decision).results) {
            if (result.sample == place.sample && result.measurand == measurand && says(result) &&
                acceptsResult(decision.decision, result))
                found.push_back({place.run, decision.decision.at, result});
        }
    }
    return found;
}

} // namespace plateau::notebook
