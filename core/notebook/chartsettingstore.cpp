// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/chartsettingstore.h"

#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using charts::ConstantsFrom;
using charts::EarlierRuns;
using charts::FixedLimits;
using quality::SpreadFrom;

namespace {

QString constantsWord(ConstantsFrom constants)
{
    return constants == ConstantsFrom::Computed ? u"computed"_s : u"printedTable"_s;
}

QString spreadWord(SpreadFrom spread)
{
    return spread == SpreadFrom::MovingRange ? u"movingRange"_s : u"standardDeviation"_s;
}

QString rulesText(const std::set<quality::RunRule> &rules)
{
    QStringList words;
    for (const quality::RunRule rule : rules)
        words << charts::ruleWord(rule);
    return words.join(u' ');
}

/// Of a word that has to be one of ours.
template <class Value> Value known(const std::optional<Value> &value, const QString &word)
{
    if (!value)
        throw Failure(Failure::Kind::Damaged,
                      Sentence::tr("The settings of a chart in the notebook are damaged; go back to the "
                                   "latest backup, or save them again."),
                      word);
    return *value;
}

std::set<quality::RunRule> rulesOf(const QString &text)
{
    std::set<quality::RunRule> rules;
    for (const QString &word : text.split(u' ', Qt::SkipEmptyParts))
        rules.insert(known(charts::ruleFromWord(word), word));
    return rules;
}

} // namespace

std::optional<StoredChartSettings> loadChartSettings(const Database &database, const charts::Subject &subject)
{
    Statement query(
        database,
        u"SELECT kind, first_run, earlier_values, spread, centre, deviation, source, source_day, "
        "constants, rules, subgroup, lambda, width, k, h, person, at_utc, at_offset_min, "
        "count(*) OVER () FROM chart_setting WHERE quantity = ? AND method_id = ? AND measurand = ? "
        "AND name = ? ORDER BY id DESC LIMIT 1"_s);
    query.run(charts::quantityWord(subject.quantity), subject.methodId, subject.measurand, subject.name);
    if (!query.next())
        return std::nullopt;
    StoredChartSettings stored{{}, query.text(15), query.time(16), static_cast<int>(query.integer(18))};
    charts::Settings &settings = stored.settings;
    settings.kind = known(charts::kindFromWord(query.text(0)), query.text(0));
    if (query.isNull(2))
        settings.limits = FixedLimits{query.real(4), query.real(5), query.text(6),
                                      QDate::fromString(query.text(7), Qt::ISODate)};
    else
        settings.limits = EarlierRuns{query.integer(1), static_cast<int>(query.integer(2)),
                                      query.text(3) == "movingRange"_L1 ? SpreadFrom::MovingRange
                                                                        : SpreadFrom::StandardDeviation};
    settings.constants =
        query.text(8) == "computed"_L1 ? ConstantsFrom::Computed : ConstantsFrom::PrintedTable;
    settings.rules = rulesOf(query.text(9));
    settings.subgroup = static_cast<int>(query.integer(10));
    settings.lambda = query.real(11);
    settings.width = query.real(12);
    settings.k = query.real(13);
    settings.h = query.real(14);
    return stored;
}

void storeChartSettings(Act &act, const charts::Subject &subject, const charts::Settings &settings)
{
    const auto *earlier = std::get_if<EarlierRuns>(&settings.limits);
    const auto *fixed = std::get_if<FixedLimits>(&settings.limits);
    const auto of = [](const auto *limits, const auto &member) {
        return limits ? std::optional(member(*limits)) : std::nullopt;
    };
    Statement insert(
        act.database(),
        u"INSERT INTO chart_setting (quantity, method_id, measurand, name, kind, first_run, "
        "earlier_values, spread, centre, deviation, source, source_day, constants, rules, "
        "subgroup, lambda, width, k, h, person, at_utc, at_offset_min) "
        "VALUES (?, ?, ?, ?, ?, nullif(?, 0), ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(charts::quantityWord(subject.quantity), subject.methodId, subject.measurand, subject.name,
               charts::kindWord(settings.kind), earlier ? earlier->firstRun : 0,
               of(earlier, [](const EarlierRuns &runs) { return runs.values; }),
               of(earlier, [](const EarlierRuns &runs) { return spreadWord(runs.spread); }),
               of(fixed, [](const FixedLimits &limits) { return limits.centre; }),
               of(fixed, [](const FixedLimits &limits) { return limits.deviation; }),
               of(fixed, [](const FixedLimits &limits) { return limits.source; }),
               of(fixed, [](const FixedLimits &limits) { return limits.date.toString(Qt::ISODate); }),
               constantsWord(settings.constants), rulesText(settings.rules), settings.subgroup,
               settings.lambda, settings.width, settings.k, settings.h, act.person(), act.at());
    act.covers(u"chart_setting"_s, insert.insertedId());
}

} // namespace plateau::notebook
