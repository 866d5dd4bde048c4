// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audittrail.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/notebook/auditcounts.h"
#include "core/notebook/database.h"
#include "core/notebook/moment.h"
#include "core/notebook/recordnames.h"
#include "core/notebook/recordnumbers.h"
#include "core/notebook/recordvalues.h"
#include "core/notebook/recordwords.h"
#include "core/notebook/sentence.h"
#include "core/notebook/statement.h"
#include "core/planning/standardstock.h"

#include <nlohmann/json.hpp>

#include <map>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using nlohmann::json;

namespace {

/// Acts that add more than this are told by counts.
constexpr int mostToldOneByOne = 12;

struct Covered {
    QString table;
    qint64 id = 0;
};

struct AuditField {
    QString column;
    /// Empty for NULL.
    QString text;
    bool isInteger = false;
    bool isReal = false;
};

/// In the order of its columns.
using AuditRow = std::vector<AuditField>;

AuditField fieldOf(const QString &column, const Statement &query, int place)
{
    if (query.isNull(place))
        return {column, {}};
    const QVariant value = query.value(place);
    const bool isReal = value.typeId() == QMetaType::Double;
    return {column, isReal ? evaluation::plainText(value.toDouble()) : value.toString(),
            value.typeId() == QMetaType::LongLong || value.typeId() == QMetaType::Int, isReal};
}

AuditRow rowOf(const Database &database, const QString &table, qint64 id)
{
    QStringList columns;
    Statement names(database, u"SELECT name FROM pragma_table_info(?) ORDER BY cid"_s);
    names.run(table);
    while (names.next())
        columns << names.text(0);
    AuditRow row;
    if (columns.isEmpty())
        return row;
    Statement query(database, u"SELECT %1 FROM %2 WHERE id = ?"_s.arg(columns.join(u", "_s), table));
    query.run(id);
    if (!query.next())
        return row;
    for (int i = 0; i < columns.size(); ++i)
        row.push_back(fieldOf(columns[i], query, i));
    return row;
}

QString valueOf(const AuditRow &row, const QString &column)
{
    for (const AuditField &field : row) {
        if (field.column == column)
            return field.text;
    }
    return {};
}

/// The row of the same subject before this one; 0 for none.
qint64 predecessorOf(const Database &database, const QString &table, qint64 id, const AuditRow &row)
{
    if (table == "reading"_L1)
        return valueOf(row, u"corrects"_s).toLongLong();
    static const QStringList documents{u"laboratory"_s, u"specifications"_s};
    if (documents.contains(table))
        return database.single(u"SELECT coalesce(max(id), 0) FROM %1 WHERE id < %2"_s.arg(table).arg(id))
            .toLongLong();
    static const QStringList chains{u"person_standing"_s, u"report_choice"_s};
    if ((!table.endsWith("_version"_L1) && !chains.contains(table)) || row.size() < 2)
        return 0;
    // A version follows the one before of what its first column names.
    Statement query(database,
                    u"SELECT coalesce(max(id), 0) FROM %1 WHERE id < ? AND %2 = ?"_s.arg(table, row[1].column));
    query.runWith({id, row[1].text});
    return query.next() ? query.integer(0) : 0;
}

json flat(const QString &document)
{
    const std::string text = document.toStdString();
    const json read = json::parse(text, nullptr, false);
    return read.is_discarded() || read.empty() ? json::object() : read.flatten();
}

/// Nothing where there is nothing to read.
std::optional<AuditValue> leafValue(const std::string &place, const json &leaf)
{
    constexpr qsizetype longest = 60;
    const QString pointer = QString::fromStdString(place);
    const QString key = pointer.section(u'/', -1);
    if (leaf.is_null() || key == "format"_L1)
        return std::nullopt;
    if (key == "base64"_L1)
        return AuditValue{placeWord(pointer.section(u'/', 0, -2)), Sentence::tr("a picture")};
    if (leaf.is_number())
        return AuditValue{placeWord(pointer), recordNumber(leaf.get<double>()), true};
    const QString text = QString::fromStdString(leaf.is_string() ? leaf.get<std::string>() : leaf.dump());
    static const QStringList days{u"date"_s, u"checkedOn"_s};
    if (const QDate day = QDate::fromString(text, Qt::ISODate); days.contains(key) && day.isValid())
        return AuditValue{placeWord(pointer), assay::shownDay(day)};
    const QString words = valueWord(key, text).value_or(text);
    return AuditValue{placeWord(pointer), words.size() > longest ? words.left(longest) + u"…"_s : words};
}

/// Of two documents what differs, place by place.
std::pair<std::vector<AuditValue>, std::vector<AuditValue>> documentChange(const QString &before, const QString &after)
{
    const json was = flat(before);
    const json is = flat(after);
    std::vector<AuditValue> old;
    std::vector<AuditValue> now;
    const auto tell = [](std::vector<AuditValue> &list, const std::string &place, const json &leaf) {
        if (auto value = leafValue(place, leaf))
            list.push_back(std::move(*value));
    };
    for (const auto &[place, leaf] : is.items()) {
        if (!was.contains(place)) {
            tell(now, place, leaf);
        } else if (was[place] != leaf) {
            tell(old, place, was[place]);
            tell(now, place, leaf);
        }
    }
    for (const auto &[place, leaf] : was.items()) {
        if (!is.contains(place))
            tell(old, place, leaf);
    }
    return {std::move(old), std::move(now)};
}

/// Tells the columns of the rows of one table.
class RowTeller
{
public:
    /// run: that the act concerned, which the entry names already; empty for none.
    RowTeller(const Database &database, const QString &table, QString run)
        : m_database(database)
        , m_references(referencesOf(database, table))
        , m_run(std::move(run))
    {
    }

    std::vector<AuditValue> told(const AuditRow &row, const AuditRow &other, bool onlyChanged) const
    {
        std::vector<AuditValue> values;
        for (const AuditField &field : row) {
            if (!isFieldTold(field.column) || field.text.isEmpty() ||
                (onlyChanged && valueOf(other, field.column) == field.text))
                continue;
            if (const auto text = textOf(row, field))
                values.push_back({wordOf(field), *text, field.isReal || field.column == "shift_ms"_L1});
        }
        return values;
    }

private:
    QString wordOf(const AuditField &field) const
    {
        const auto of = m_references.find(field.column);
        if (field.column != "version"_L1 || of == m_references.end())
            return fieldWord(field.column);
        return fieldWord(of->second == "lot_version"_L1 ? u"lot"_s : u"item"_s);
    }

    /// Nothing where a row is meant that has no name.
    std::optional<QString> textOf(const AuditRow &row, const AuditField &field) const
    {
        if (field.column == "run"_L1)
            return field.text == m_run ? std::nullopt : std::optional(field.text);
        if (const auto of = m_references.find(field.column); of != m_references.end())
            return nameOf(row, field, of->second);
        if (field.column == "method_id"_L1)
            return nameOfMethodId(m_database, field.text);
        if (field.column == "component"_L1)
            return nameOfComponent(m_database, runOf(row), field.text);
        if (field.column == "measurand"_L1)
            return nameOfMeasurand(m_database, runOf(row), valueOf(row, u"method_id"_s), field.text);
        if (field.column.endsWith("_utc"_L1))
            return assay::shownMoment(timeOf({field.text, 0}).toLocalTime());
        static const QStringList days{u"day"_s, u"expires"_s, u"source_day"_s};
        if (days.contains(field.column))
            return assay::shownDay(QDate::fromString(field.text, Qt::ISODate));
        static const QStringList fromNought{u"position"_s, u"place"_s, u"column_place"_s};
        if (field.isInteger && fromNought.contains(field.column))
            return QString::number(field.text.toLongLong() + 1);
        if (field.column == "shift_ms"_L1)
            return evaluation::plainText(field.text.toDouble() / 1000);
        if (field.isReal)
            return numberOf(row, field);
        return valueWord(field.column, field.text).value_or(field.text);
    }

    static QString numberOf(const AuditRow &row, const AuditField &field)
    {
        static const std::map<QString, QString> beside{{u"purity"_s, u"purity_half_width"_s},
                                                       {u"purity_half_width"_s, u"purity"_s},
                                                       {u"water"_s, u"water_half_width"_s},
                                                       {u"water_half_width"_s, u"water"_s}};
        const double value = field.text.toDouble();
        if (!isKeyedInPercent(field.column))
            return recordNumber(value);
        const auto other = beside.find(field.column);
        return recordPercent(value, other == beside.end() ? 0 : valueOf(row, other->second).toDouble());
    }

    /// The run that the row is of; 0 for none.
    qint64 runOf(const AuditRow &row) const
    {
        const QString own = valueOf(row, u"run"_s);
        return (own.isEmpty() ? m_run : own).toLongLong();
    }

    std::optional<QString> nameOf(const AuditRow &row, const AuditField &field, const QString &table) const
    {
        const qint64 id = field.text.toLongLong();
        if (table == "decision"_L1) {
            const QString run = valueOf(rowOf(m_database, table, id), u"run"_s);
            return field.column == "named"_L1 ? recordName(m_database, u"run"_s, run.toLongLong()) : std::nullopt;
        }
        const std::optional<QString> name = recordName(m_database, table, id);
        return name == valueOf(row, u"name"_s) ? std::nullopt : name; // a version of what has this name
    }

    const Database &m_database;
    std::map<QString, QString> m_references;
    QString m_run;
};

/// As the book of standards says it: by the loss of strength and by the rule that was given.
std::optional<AuditValue> goodUntilOf(const AuditRow &row)
{
    planning::Preparation made;
    made.madeAt = timeOf({valueOf(row, u"made_utc"_s), 0});
    made.lossPerHour = valueOf(row, u"loss_per_hour"_s).toDouble();
    if (const QString rule = valueOf(row, u"use_by_utc"_s); !rule.isEmpty())
        made.useBy = timeOf({rule, 0});
    const std::optional<QDateTime> last = planning::goodUntil(made);
    if (!last)
        return std::nullopt;
    return AuditValue{Sentence::tr("use by"), assay::shownMoment(last->toLocalTime())};
}

/// With its three decimals; more where it was keyed to more.
QString keptAbsorbance(double absorbance)
{
    const QString three = evaluation::absorbanceText(absorbance);
    return three.toDouble() == absorbance ? three : evaluation::plainText(absorbance);
}

std::vector<AuditValue> seriesValues(const Database &database, qint64 reading)
{
    Statement query(database,
                    u"SELECT at_min, absorbance FROM reading_point WHERE reading = ? ORDER BY position"_s);
    query.run(reading);
    std::vector<AuditValue> points;
    while (query.next())
        points.push_back({evaluation::withUnit(evaluation::plainText(query.real(0)), u"min"_s),
                          keptAbsorbance(query.real(1)), true});
    return points;
}

std::vector<AuditValue> readingValues(const Database &database, qint64 id, const AuditRow &row)
{
    const QString single = valueOf(row, u"absorbance"_s);
    if (single.isEmpty())
        return seriesValues(database, id);
    return {{{}, keptAbsorbance(single.toDouble()), true}};
}

QString openingText(const QString &day)
{
    return day.isEmpty() ? Sentence::tr("not opened")
                         : Sentence::tr("opened on %1").arg(assay::shownDay(QDate::fromString(day, Qt::ISODate)));
}

AuditChange openingChange(const Database &database, qint64 id, const AuditRow &row)
{
    const qint64 lot = valueOf(row, u"lot"_s).toLongLong();
    Statement before(database,
                     u"SELECT day FROM (SELECT 0 AS id, lot, day FROM lot_opening UNION ALL SELECT id, lot, day FROM "
                     "lot_opening_change) WHERE lot = ? AND id < ? ORDER BY id DESC LIMIT 1"_s);
    before.run(lot, id);
    const QString was = before.next() ? before.text(0) : QString();
    return {Sentence::tr("lot %1").arg(recordName(database, u"lot"_s, lot).value_or(QString())),
            {{{}, openingText(was)}},
            {{{}, openingText(valueOf(row, u"day"_s))}},
            valueOf(row, u"reason"_s)};
}

AuditChange readingChange(const Database &database, qint64 id, const AuditRow &row)
{
    const qint64 old = predecessorOf(database, u"reading"_s, id, row);
    const int number = numberOfTube(database, valueOf(row, u"tube"_s).toLongLong());
    return {Sentence::tr("tube %1, %2").arg(number).arg(valueOf(row, u"name"_s)),
            old ? readingValues(database, old, rowOf(database, u"reading"_s, old)) : std::vector<AuditValue>(),
            readingValues(database, id, row), valueOf(row, u"reason"_s)};
}

QString decisionText(const QString &kind)
{
    return kind == "accepted"_L1 ? Sentence::tr("accepted") : Sentence::tr("rejected");
}

AuditChange decisionChange(const QString &before, const QString &after, const QString &why)
{
    return {Sentence::tr("the run"), {{{}, before}}, {{{}, after}}, why};
}

AuditChange changeOf(const Database &database, const Covered &covered, const QString &run)
{
    const AuditRow row = rowOf(database, covered.table, covered.id);
    if (covered.table == "reading"_L1)
        return readingChange(database, covered.id, row);
    if (covered.table == "lot_opening_change"_L1)
        return openingChange(database, covered.id, row);
    const QString why =
        valueOf(row, u"reason"_s).isEmpty() ? valueOf(row, u"note"_s) : valueOf(row, u"reason"_s);
    const QString onBench = Sentence::tr("on the bench");
    if (covered.table == "decision"_L1)
        return decisionChange(onBench, decisionText(valueOf(row, u"kind"_s)), why);
    if (covered.table == "reopening"_L1) {
        const AuditRow decision = rowOf(database, u"decision"_s, valueOf(row, u"decision"_s).toLongLong());
        return decisionChange(decisionText(valueOf(decision, u"kind"_s)), onBench, why);
    }
    const QString name = valueOf(row, u"name"_s);
    if (covered.table == "equipment_condition"_L1)
        return {recordWord(covered.table), {}, {{conditionWord(name), valueOf(row, u"value"_s), true}}, why};
    const QString subject =
        name.isEmpty() ? recordWord(covered.table) : Sentence::tr("%1: %2").arg(recordWord(covered.table), name);
    const qint64 old = predecessorOf(database, covered.table, covered.id, row);
    const AuditRow before = old ? rowOf(database, covered.table, old) : AuditRow();
    const QString content = valueOf(row, u"content"_s);
    if (!content.isEmpty() && (covered.table != "method"_L1)) {
        auto [was, is] = documentChange(valueOf(before, u"content"_s), content);
        return {subject, std::move(was), std::move(is), why};
    }
    const RowTeller teller(database, covered.table, run);
    AuditChange change{subject, old ? teller.told(before, row, true) : std::vector<AuditValue>(),
                       teller.told(row, before, old != 0), why};
    if (covered.table == "preparation"_L1) {
        if (auto last = goodUntilOf(row))
            change.after.push_back(std::move(*last));
    }
    return change;
}

/// Parts of something else, which say nothing by themselves.
bool isPart(const QString &table)
{
    static const QStringList parts{u"bench_stamp"_s,   u"reading_point"_s, u"decision_mark"_s,
                                   u"decision_size"_s, u"reading_again"_s, u"decision_repeat"_s,
                                   u"mark_lot_day"_s};
    return parts.contains(table);
}

RecordCounts countsOf(const std::vector<Covered> &records)
{
    RecordCounts counts;
    for (const Covered &record : records)
        ++counts[record.table];
    return counts;
}

/// What became of a run is told all the same.
std::vector<AuditChange> toldByCounts(const Database &database, const std::vector<Covered> &records, const QString &run)
{
    static const QStringList verdicts{u"decision"_s, u"reopening"_s};
    std::vector<AuditChange> changes;
    std::vector<Covered> others;
    for (const Covered &record : records) {
        if (verdicts.contains(record.table))
            changes.push_back(changeOf(database, record, run));
        else
            others.push_back(record);
    }
    const std::vector<AuditChange> counted = countedChanges(countsOf(others));
    changes.insert(changes.end(), counted.begin(), counted.end());
    return changes;
}

/// The steps that made the tables of a new file, which the list leaves out.
std::vector<AuditChange> makingChanges(const Database &database)
{
    const qint64 last = lastOfMaking(database);
    if (last < 2)
        return {};
    return {AuditChange{Sentence::tr("with entries 2 to %1, which made the tables of the file").arg(last), {}, {}, {}}};
}

} // namespace

std::vector<AuditChange> auditChanges(const Database &database, qint64 entry)
{
    Statement concerned(database, u"SELECT action, run FROM audit WHERE id = ?"_s);
    concerned.run(entry);
    if (!concerned.next())
        return {};
    const QString action = concerned.text(0);
    const QString run = concerned.text(1);
    if (action == "notebookCreated"_L1)
        return makingChanges(database);
    Statement query(database,
                    u"SELECT record_table, record_id FROM audit_record WHERE audit = ? ORDER BY position"_s);
    query.run(entry);
    std::vector<Covered> records;
    while (query.next()) {
        if (!isPart(query.text(0)))
            records.push_back({query.text(0), query.integer(1)});
    }
    if (action == "runAdded"_L1)
        return {benchChange(database, run.toLongLong(), countsOf(records))};
    if (records.size() > mostToldOneByOne)
        return toldByCounts(database, records, run);
    std::vector<AuditChange> changes;
    for (const Covered &record : records)
        changes.push_back(changeOf(database, record, run));
    return changes;
}

} // namespace plateau::notebook
