// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/chartseries.h"

#include "core/notebook/statement.h"
#include "core/notebook/text.h"
#include "core/planning/inputowner.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QSet>

#include <algorithm>
#include <map>
#include <span>
#include <vector>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using charts::Quantity;

namespace {

// What each quantity is read from. Named values: run, name, value, unit, uncertainty, accepted, age, made,
// loss, measurand; name_key is what a name is found by.
// A standard that calibrates its own run recovers itself to the last digit and is no finding.
QString standardsSource(const QString &value, const QString &unit)
{
    return u"(SELECT s.run, s.measurand, s.name, s.name AS name_key, %1 AS value, '%2' AS unit, NULL AS "
           "uncertainty, 1 AS accepted, s.age_h AS age, standard.concentration_g_per_L AS made, "
           "standard.loss_per_hour AS loss FROM search_standard AS s JOIN standard ON standard.run = s.run "
           "AND standard.name = s.name WHERE %1 IS NOT NULL AND s.measurand <> '' AND "
           "coalesce(abs(s.recovery_percent - 100) "
           "> 1e-6, 1))"_s.arg(value, unit);
}

QString resultsSource(const QString &name, const QString &key, const QString &value, const QString &unit,
                      const QString &condition)
{
    return u"(SELECT s.run, s.measurand, %1 AS name, %2 AS name_key, %3 AS value, %4 AS unit, "
           "s.expanded_uncertainty AS uncertainty, s.kind = 'accepted' AS accepted, NULL AS age, NULL AS "
           "made, NULL AS loss FROM search_result AS s %5)"_s.arg(name, key, value, unit, condition);
}

QString sourceOf(Quantity quantity)
{
    const QString ofSample = u"s.sample"_s;
    const QString key = u"s.sample_key"_s;
    switch (quantity) {
    case Quantity::StandardRecovery:
        return standardsSource(u"s.recovery_percent"_s, u"%"_s);
    case Quantity::StandardStrength:
        return standardsSource(u"s.found_g_per_L"_s, u"g/L"_s);
    case Quantity::ControlMaterial:
        return resultsSource(
            ofSample, ofSample, u"s.value"_s, u"s.unit"_s,
            u"WHERE s.value IS NOT NULL AND s.bound IS NULL AND EXISTS (SELECT 1 FROM tube "
            "WHERE tube.run = s.run AND tube.sample = s.sample AND tube.role = 'control')"_s);
    case Quantity::Blank:
        return u"(SELECT s.run, s.measurand, '' AS name, '' AS name_key, s.mean AS value, '' AS unit, NULL "
               u"AS "
               "uncertainty, 1 AS accepted, NULL AS age, NULL AS made, NULL AS loss FROM search_blank AS s)"_s;
    case Quantity::DuplicateRange:
        return resultsSource(ofSample, ofSample, u"s.spread"_s, u"s.unit"_s,
                             u"WHERE s.n = 2 AND s.spread IS NOT NULL"_s);
    case Quantity::RelativeDuplicateRange:
        return resultsSource(ofSample, ofSample, u"s.spread / s.value * 100"_s, u"'%'"_s,
                             u"WHERE s.n = 2 AND s.spread IS NOT NULL AND s.value > 0"_s);
    case Quantity::SampleResult:
        return resultsSource(ofSample, key, u"s.value"_s, u"s.unit"_s,
                             u"WHERE s.value IS NOT NULL AND s.bound IS NULL"_s);
    case Quantity::ProductResult:
        return resultsSource(ofSample, u"p.product_key"_s, u"s.value"_s, u"s.unit"_s,
                             u"JOIN search_sample AS p ON p.run = s.run AND p.name = s.sample WHERE s.value "
                             "IS NOT NULL AND s.bound IS NULL AND p.product_key <> ''"_s);
    }
    return {};
}

/// The same texts and lists stand in a hundred thousand runs: each is kept once.
template <class Value> class Kept
{
public:
    const Value &operator()(const Value &value)
    {
        if (const auto found = m_values.constFind(value); found != m_values.cend())
            return *found;
        if (m_values.size() >= most)
            m_values.clear();
        return *m_values.insert(value);
    }

private:
    static constexpr qsizetype most = 10'000;
    QSet<Value> m_values;
};

/// Of all runs of a method, in one piece: a hundred thousand single ones would cost more than what they hold.
class Facts
{
public:
    /// In the order of runs.
    void append(charts::RunFacts facts) { m_runs->push_back(std::move(facts)); }
    /// nullptr: not of this method, or not decided.
    charts::RunFacts *find(qint64 run)
    {
        const auto found = std::ranges::lower_bound(*m_runs, run, {}, &charts::RunFacts::run);
        return found == m_runs->end() || found->run != run ? nullptr : &*found;
    }
    std::shared_ptr<const charts::RunFacts> at(qint64 run)
    {
        return std::shared_ptr<const charts::RunFacts>(m_runs, find(run));
    }
    std::vector<charts::RunFacts> &all() { return *m_runs; }

private:
    std::shared_ptr<std::vector<charts::RunFacts>> m_runs = std::make_shared<std::vector<charts::RunFacts>>();
};

Facts loadFacts(const Database &database, const QString &method, const std::map<QString, QString> &componentNames)
{
    const auto nameOf = [&](const QString &component) {
        const auto named = componentNames.find(component);
        return named == componentNames.end() ? component : named->second;
    };
    Facts facts;
    Kept<QString> text;
    Statement runs(database, u"SELECT run, title, started_utc, started_offset_min FROM search_run WHERE "
                             "method_id = ? AND state <> 'onBench' ORDER BY run"_s);
    runs.run(method);
    while (runs.next()) {
        charts::RunFacts run;
        run.run = runs.integer(0);
        run.titleUtf8 = runs.text(1).toUtf8();
        run.at = runs.time(2);
        facts.append(std::move(run));
    }
    Statement lots(database,
                   u"SELECT DISTINCT search_lot.run, component, name FROM search_lot JOIN search_run "
                   "USING (run) WHERE method_id = ? ORDER BY search_lot.run, component, name"_s);
    lots.run(method);
    while (lots.next()) {
        if (charts::RunFacts *run = facts.find(lots.integer(0)))
            run->lots.push_back({text(nameOf(lots.text(1))), text(lots.text(2))});
    }
    Statement persons(database, u"SELECT search_person.run, person FROM search_person JOIN search_run USING "
                                "(run) WHERE method_id = ? ORDER BY search_person.run, person"_s);
    persons.run(method);
    while (persons.next()) {
        if (charts::RunFacts *run = facts.find(persons.integer(0)))
            run->persons.append(text(persons.text(1)));
    }
    Statement photometers(
        database,
        u"SELECT plan.run, owner FROM plan_owner JOIN plan ON plan.id = plan_owner.plan JOIN search_run "
        "ON search_run.run = plan.run WHERE input = ? AND method_id = ?"_s);
    photometers.run(planning::inputWord(planning::UncertaintyInput::Absorbance), method);
    while (photometers.next()) {
        if (charts::RunFacts *run = facts.find(photometers.integer(0)))
            run->photometer = text(photometers.text(1));
    }
    Kept<QList<charts::LotOf>> list;
    Kept<QStringList> names;
    for (charts::RunFacts &run : facts.all()) {
        run.lots = list(run.lots);
        run.persons = names(run.persons);
    }
    return facts;
}

charts::Point pointOf(const Statement &row, Facts &facts, Kept<QString> &text)
{
    charts::Point point;
    point.run = facts.at(row.integer(0));
    point.name = text(row.text(1));
    point.value = row.real(2);
    point.unit = text(row.text(3));
    point.expandedUncertainty = row.optionalReal(4);
    point.isAccepted = row.integer(5) != 0;
    if (!row.isNull(6))
        point.standard = charts::StandardUse{row.real(6), row.real(7), row.real(8)};
    return point;
}

/// A series has one unit: what was measured of a solid and of a liquid does not stand on one line.
void keepUnitOfNewest(charts::Series &series)
{
    if (!series.empty())
        std::erase_if(series,
                      [unit = series.back().unit](const charts::Point &point) { return point.unit != unit; });
}

/// By the keys of the names of the standards in the book, what each was made of.
using Substances = std::map<QString, QString>;

/// None where the quantity depends on how much was weighed in.
Substances substancesOf(const Database &database, Quantity quantity)
{
    Substances substances;
    if (quantity != Quantity::StandardRecovery)
        return substances;
    Statement query(database,
                    u"SELECT p.name_key, s.name FROM preparation AS p JOIN substance_version AS s ON s.id = "
                    "p.substance_version"_s);
    query.run();
    while (query.next())
        substances.emplace(query.text(0), query.text(1));
    return substances;
}

/// Of one method and measurand, the substances of what is offered.
std::vector<ChartOffer> offersOfSubstances(std::span<const ChartOffer> offers, const Substances &substances)
{
    std::map<QString, ChartOffer> byKey;
    for (const ChartOffer &offer : offers) {
        const auto substance = substances.find(comparisonKey(offer.subject.name));
        if (substance == substances.end())
            continue;
        ChartOffer &joint = byKey[comparisonKey(substance->second)];
        joint.subject = offer.subject;
        joint.subject.name = substance->second;
        joint.methodName = offer.methodName;
        joint.values += offer.values;
        ++joint.preparations;
    }
    std::vector<ChartOffer> joint;
    for (auto &[key, offer] : byKey)
        joint.push_back(std::move(offer));
    return joint;
}

std::vector<ChartOffer> withSubstances(const std::vector<ChartOffer> &offers, const Substances &substances)
{
    std::vector<ChartOffer> all;
    for (auto first = offers.begin(); first != offers.end();) {
        const auto last = std::find_if(first, offers.end(), [&](const ChartOffer &offer) {
            return offer.subject.methodId != first->subject.methodId ||
                   offer.subject.measurand != first->subject.measurand;
        });
        for (ChartOffer &joint : offersOfSubstances({first, last}, substances))
            all.push_back(std::move(joint));
        all.insert(all.end(), first, last);
        first = last;
    }
    return all;
}

/// Of the standards that were in use the one of that name, and those made of the substance of that name.
QStringList standardsOf(const Database &database, const charts::Subject &subject, const Substances &substances)
{
    const QString key = comparisonKey(subject.name);
    QStringList names{subject.name};
    Statement measured(database, u"SELECT DISTINCT name FROM search_standard"_s);
    measured.run();
    while (measured.next()) {
        const QString name = measured.text(0);
        const auto substance = substances.find(comparisonKey(name));
        if (name != subject.name && substance != substances.end() && comparisonKey(substance->second) == key)
            names << name;
    }
    return names;
}

/// By what the values of a subject are found; empty: all of them.
QStringList keysOf(const Database &database, const charts::Subject &subject)
{
    if (subject.name.isEmpty())
        return {};
    const Substances substances = substancesOf(database, subject.quantity);
    if (!substances.empty())
        return standardsOf(database, subject, substances);
    return {charts::isTrend(subject.quantity) ? comparisonKey(subject.name) : subject.name};
}

} // namespace

std::vector<ChartOffer> loadChartOffers(const Database &database, Quantity quantity)
{
    // Of products the name is the product's, not the sample's.
    const bool ofProduct = quantity == Quantity::ProductResult;
    const QString name = ofProduct
                             ? u"(SELECT product FROM search_sample WHERE search_sample.run = v.run AND "
                               "search_sample.name = v.name)"_s
                             : u"v.name"_s;
    Statement query(
        database, u"SELECT r.method_id, max(r.method_name), v.measurand, max(%1), count(*) FROM %2 AS v JOIN "
                  "search_run AS r ON r.run = v.run WHERE r.state <> 'onBench' GROUP BY r.method_id, "
                  "v.measurand, v.name_key ORDER BY max(r.method_key), r.method_id, v.measurand, "
                  "v.name_key"_s.arg(name, sourceOf(quantity)));
    query.run();
    std::vector<ChartOffer> offers;
    while (query.next())
        offers.push_back({{quantity, query.text(0), query.text(2), query.text(3)},
                          query.text(1),
                          static_cast<int>(query.integer(4))});
    const Substances substances = substancesOf(database, quantity);
    return substances.empty() ? offers : withSubstances(offers, substances);
}

charts::Series loadChartSeries(const Database &database, const charts::Subject &subject,
                               const std::map<QString, QString> &componentNames)
{
    const QStringList keys = keysOf(database, subject);
    Facts facts = loadFacts(database, subject.methodId, componentNames);
    Statement query(
        database, u"SELECT v.run, v.name, v.value, v.unit, v.uncertainty, v.accepted AND r.state = "
                  "'accepted', v.age, v.made, v.loss FROM %1 AS v JOIN search_run AS r ON r.run = v.run "
                  "WHERE r.state <> 'onBench' AND r.method_id = ? AND v.measurand = ? AND (? OR "
                  "v.name_key IN (SELECT value FROM json_each(?))) ORDER BY r.started_utc, v.run, v.name"_s
                      .arg(sourceOf(subject.quantity)));
    query.run(subject.methodId, subject.measurand, keys.isEmpty(),
              QString::fromUtf8(QJsonDocument(QJsonArray::fromStringList(keys)).toJson(QJsonDocument::Compact)));
    charts::Series series;
    Kept<QString> text;
    while (query.next())
        series.push_back(pointOf(query, facts, text));
    keepUnitOfNewest(series);
    return series;
}

} // namespace plateau::notebook
