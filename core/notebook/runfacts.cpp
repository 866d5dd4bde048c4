// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runfacts.h"

#include "core/notebook/decisionfacts.h"
#include "core/notebook/inputs.h"
#include "core/notebook/runfinder.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

using Row = std::vector<Cell>;
using Rows = std::vector<Row>;

Cell number(qint64 value)
{
    return value;
}

/// One row for each row of a query on the run.
Rows rowsOf(const Database &database, const QString &query, RunId run, int columns)
{
    Statement statement(database, query);
    statement.run(run.value);
    Rows rows;
    while (statement.next()) {
        Row row{number(run.value)};
        for (int column = 0; column < columns; ++column)
            row.push_back(statement.cell(column));
        rows.push_back(std::move(row));
    }
    return rows;
}

/// The texts of one column, a line each.
QString linesOf(const Rows &rows, std::size_t column)
{
    QStringList lines;
    for (const Row &row : rows) {
        const QString &text = std::get<QString>(row[column]);
        if (!text.isEmpty() && !lines.contains(text))
            lines.append(text);
    }
    return lines.join(u'\n');
}

/// Where it does not say when it was started: when it was put into the notebook.
Moment startOf(const Database &database, RunId run, const Moment &created)
{
    Statement query(database, u"SELECT started_utc, started_offset_min FROM run WHERE id = ?"_s);
    query.run(run.value);
    return query.next() && !query.isNull(0) ? Moment{query.text(0), int(query.integer(1))} : created;
}

QString stateWord(RunState state)
{
    return state == RunState::OnBench    ? u"onBench"_s
           : state == RunState::Accepted ? decisionWord(DecisionKind::Accepted)
                                         : decisionWord(DecisionKind::Rejected);
}

/// As the list says it, so that it may be typed.
QString spokenState(RunState state)
{
    return state == RunState::OnBench ? u"on the bench"_s : stateWord(state);
}

Rows runRow(const Database &database, const RunSummary &summary, const Inputs *inputs,
            const DecisionRow *decision)
{
    Statement query(database, u"SELECT method FROM run WHERE id = ?"_s);
    query.run(summary.id.value);
    const qint64 method = query.next() ? query.integer(0) : 0;
    const Moment created = momentOf(summary.createdAt);
    const Moment started = startOf(database, summary.id, created);
    const Moment decided = decision ? momentOf(summary.decidedAt) : Moment{u""_s, 0};
    return {{number(summary.id.value),
             summary.title,
             comparisonKey(summary.title),
             number(method),
             summary.methodId,
             summary.methodName,
             comparisonKey(summary.methodName),
             number(summary.methodVersion),
             inputs ? runCodeOf(*inputs) : QString(u""_s),
             created.utc,
             number(created.offset_min),
             started.utc,
             number(started.offset_min),
             timeOf(started).date().toString(Qt::ISODate),
             stateWord(summary.state),
             number(summary.revision),
             number(summary.tubes),
             number(summary.readingsTaken),
             number(summary.readingsPlanned),
             decision ? number(decision->id) : Cell(),
             summary.decidedBy,
             decided.utc,
             number(decided.offset_min),
             number(summary.acceptable),
             number(summary.isSigned),
             number(summary.samplesRejected),
             number(summary.samplesToRepeat)}};
}

Rows sampleRows(const Database &database, RunId run)
{
    Rows rows =
        rowsOf(database,
               u"SELECT sample.position, sample.name, '', coalesce(product, ''), coalesce(product_key, '') "
               "FROM sample LEFT JOIN plan_sample ON plan_sample.sample = sample.id "
               "LEFT JOIN sample_detail ON sample_detail.id = plan_sample.detail WHERE run = ? "
               "ORDER BY sample.position"_s,
               run, 5);
    for (Row &row : rows)
        row[3] = comparisonKey(std::get<QString>(row[2]));
    return rows;
}

Rows lotRows(const Database &database, RunId run)
{
    Rows rows = rowsOf(
        database, u"SELECT DISTINCT component, lot, 0 FROM lot_use WHERE run = ? AND lot <> ''"_s, run, 3);
    const Rows ticked = rowsOf(
        database,
        u"SELECT DISTINCT mark.component, lot_version.name, lot_version.lot FROM tube "
        "JOIN pipetting_mark AS mark ON mark.tube = tube.id "
        "JOIN lot_version ON lot_version.id = mark.lot_version "
        "WHERE tube.run = ? AND mark.kind = 'done' AND NOT EXISTS (SELECT 1 FROM pipetting_mark AS later "
        "WHERE later.tube = mark.tube AND later.component = mark.component AND later.spike = mark.spike "
        "AND later.id > mark.id)"_s,
        run, 3);
    rows.insert(rows.end(), ticked.begin(), ticked.end());
    std::ranges::sort(rows);
    return rows;
}

/// What people wrote on the run.
Rows noteRows(const Database &database, RunId run)
{
    Rows rows = rowsOf(
        database,
        u"WITH of (id) AS (SELECT ?) SELECT reason FROM decision WHERE run = (SELECT id FROM of) UNION ALL "
        "SELECT decision_sample.reason FROM decision_sample JOIN decision ON decision.id = "
        "decision_sample.decision WHERE run = (SELECT id FROM of) UNION ALL "
        "SELECT reopening.reason FROM reopening JOIN decision ON decision.id = reopening.decision "
        "WHERE run = (SELECT id FROM of) UNION ALL "
        "SELECT reason FROM reading JOIN tube ON tube.id = reading.tube WHERE run = (SELECT id FROM of) AND "
        "corrects "
        "IS NOT NULL "
        "UNION ALL SELECT note FROM pipetting_mark JOIN tube ON tube.id = pipetting_mark.tube "
        "WHERE run = (SELECT id FROM of) AND note <> '' UNION ALL SELECT reason FROM repeat_waiver WHERE run = (SELECT id FROM of)"_s,
        run, 1);
    std::ranges::sort(rows);
    return rows;
}

std::optional<Inputs> readableInputs(const Database &database, RunId run)
{
    try {
        return loadInputs(database, run);
    } catch (const Failure &failure) {
        if (failure.kind() == Failure::Kind::Storage)
            throw;
        return std::nullopt;
    }
}

std::optional<DecisionRow> standingDecision(const Database &database, const RunSummary &summary)
{
    if (summary.state == RunState::OnBench)
        return std::nullopt;
    std::vector<DecisionRow> rows = loadDecisions(database, summary.id);
    return std::move(rows.back());
}

} // namespace

const std::vector<DerivedTable> &derivedTables()
{
    static const std::vector<DerivedTable> tables{
        {u"search_run"_s,
         {u"run"_s,
          u"title"_s,
          u"title_key"_s,
          u"method"_s,
          u"method_id"_s,
          u"method_name"_s,
          u"method_key"_s,
          u"method_version"_s,
          u"code"_s,
          u"created_utc"_s,
          u"created_offset_min"_s,
          u"started_utc"_s,
          u"started_offset_min"_s,
          u"day"_s,
          u"state"_s,
          u"revision"_s,
          u"tubes"_s,
          u"readings_taken"_s,
          u"readings_planned"_s,
          u"decision"_s,
          u"decided_by"_s,
          u"decided_utc"_s,
          u"decided_offset_min"_s,
          u"acceptable"_s,
          u"is_signed"_s,
          u"samples_rejected"_s,
          u"samples_to_repeat"_s}},
        {u"search_sample"_s,
         {u"run"_s, u"position"_s, u"name"_s, u"name_key"_s, u"product"_s, u"product_key"_s}},
        {u"search_person"_s, {u"run"_s, u"person"_s}},
        {u"search_lot"_s, {u"run"_s, u"component"_s, u"name"_s, u"lot"_s}},
        {u"search_result"_s,
         {u"run"_s, u"position"_s, u"sample"_s, u"sample_key"_s, u"measurand"_s, u"unit"_s, u"value"_s,
          u"expanded_uncertainty"_s, u"bound"_s, u"bound_value"_s, u"n"_s, u"spread"_s, u"verdict"_s,
          u"kind"_s}},
        {u"search_flag"_s, {u"run"_s, u"check_word"_s, u"scope"_s}},
        {u"search_standard"_s,
         {u"run"_s, u"name"_s, u"measurand"_s, u"prepared_utc"_s, u"age_h"_s, u"expected_g_per_L"_s,
          u"found_g_per_L"_s, u"recovery_percent"_s}},
        {u"search_blank"_s, {u"run"_s, u"measurand"_s, u"mean"_s, u"n"_s}},
        {u"search_words"_s,
         {u"run"_s, u"title"_s, u"sample"_s, u"product"_s, u"method"_s, u"person"_s, u"lot"_s, u"standard"_s,
          u"notes"_s}},
    };
    return tables;
}

RunFacts factsOf(const Database &database, const RunSummary &summary)
{
    const RunId run = summary.id;
    const std::optional<Inputs> inputs = readableInputs(database, run);
    const std::optional<DecisionRow> decision = standingDecision(database, summary);
    const DecisionFacts found = factsOf(run, inputs ? &*inputs : nullptr, decision ? &*decision : nullptr);

    const Rows samples = sampleRows(database, run);
    const Rows persons = rowsOf(
        database, u"SELECT person FROM audit WHERE run = ? GROUP BY person ORDER BY min(id)"_s, run, 1);
    const Rows lots = lotRows(database, run);
    const Rows words{{number(run.value), summary.title, linesOf(samples, 2), linesOf(samples, 4),
                      QString(summary.methodName + u'\n' + summary.methodId), linesOf(persons, 1),
                      linesOf(lots, 2), linesOf(found.standards, 1),
                      QString(linesOf(noteRows(database, run), 1) + u'\n' + spokenState(summary.state))}};

    RunFacts facts{runRow(database, summary, inputs ? &*inputs : nullptr, decision ? &*decision : nullptr),
                   samples,
                   persons,
                   lots,
                   found.results,
                   found.flags,
                   found.standards,
                   found.blanks,
                   words};
    for (Rows &rows : facts)
        std::ranges::sort(rows);
    return facts;
}

RunFacts storedFacts(const Database &database, RunId run)
{
    RunFacts facts;
    for (const DerivedTable &table : derivedTables()) {
        const QString columns = table.columns.mid(1).join(u", "_s);
        Rows rows = rowsOf(database, u"SELECT %1 FROM %2 WHERE run = ?"_s.arg(columns, table.name), run,
                           int(table.columns.size()) - 1);
        std::ranges::sort(rows);
        facts.push_back(std::move(rows));
    }
    return facts;
}

} // namespace plateau::notebook
