// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audittrail.h"

#include "core/evaluation/format.h"
#include "core/notebook/database.h"
#include "core/notebook/recordwords.h"
#include "core/notebook/sentence.h"
#include "core/notebook/statement.h"

#include <nlohmann/json.hpp>

#include <array>
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

/// A row as texts, in the order of its columns; empty for NULL.
using Row = std::vector<std::pair<QString, QString>>;

QString textOf(const QVariant &value)
{
    return value.typeId() == QMetaType::Double ? evaluation::plainText(value.toDouble()) : value.toString();
}

Row rowOf(const Database &database, const QString &table, qint64 id)
{
    QStringList columns;
    Statement names(database, u"SELECT name FROM pragma_table_info(?) ORDER BY cid"_s);
    names.run(table);
    while (names.next())
        columns << names.text(0);
    Row row;
    if (columns.isEmpty())
        return row;
    Statement query(database, u"SELECT %1 FROM %2 WHERE id = ?"_s.arg(columns.join(u", "_s), table));
    query.run(id);
    if (!query.next())
        return row;
    for (int i = 0; i < columns.size(); ++i)
        row.emplace_back(columns[i], query.isNull(i) ? QString() : textOf(query.value(i)));
    return row;
}

QString valueOf(const Row &row, const QString &column)
{
    for (const auto &[name, text] : row) {
        if (name == column)
            return text;
    }
    return {};
}

/// Who and when stand with the entry, the reason apart; what names are compared by says nothing more.
bool isTold(const QString &column)
{
    static const QStringList left{u"id"_s,           u"person"_s,     u"at_utc"_s,  u"at_offset_min"_s,
                                  u"changed_by"_s,   u"reason"_s,     u"boot_id"_s, u"boot_ms"_s,
                                  u"content_hash"_s, u"evaluation"_s, u"hash"_s,    u"note"_s};
    return !left.contains(column) && !column.endsWith("_key"_L1) && !column.endsWith("_offset_min"_L1);
}

/// The row of the same subject before this one; 0 for none.
qint64 predecessorOf(const Database &database, const QString &table, qint64 id, const Row &row)
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
    const auto &[owner, of] = row[1];
    Statement query(database,
                    u"SELECT coalesce(max(id), 0) FROM %1 WHERE id < ? AND %2 = ?"_s.arg(table, owner));
    query.runWith({id, of});
    return query.next() ? query.integer(0) : 0;
}

json flat(const QString &document)
{
    const std::string text = document.toStdString();
    const json read = json::parse(text, nullptr, false);
    return read.is_discarded() || read.empty() ? json::object() : read.flatten();
}

QString leafText(const json &leaf)
{
    constexpr qsizetype longest = 60;
    const QString text = QString::fromStdString(leaf.is_string() ? leaf.get<std::string>() : leaf.dump());
    return text.size() > longest ? text.left(longest) + u"…"_s : text;
}

/// Of two documents what differs, place by place.
std::pair<QString, QString> documentChange(const QString &before, const QString &after)
{
    const json was = flat(before);
    const json is = flat(after);
    QStringList old;
    QStringList now;
    const auto tell = [](QStringList &list, const std::string &place, const json &leaf) {
        list << u"%1: %2"_s.arg(QString::fromStdString(place), leafText(leaf));
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
    return {old.join(u'\n'), now.join(u'\n')};
}

QString toldColumns(const Row &row, const Row &other, bool onlyChanged)
{
    QStringList texts;
    for (const auto &[column, text] : row) {
        if (!isTold(column) || text.isEmpty() || (onlyChanged && valueOf(other, column) == text))
            continue;
        texts << Sentence::tr("%1: %2").arg(fieldWord(column), text);
    }
    return texts.join(u'\n');
}

/// With its three decimals; more where it was keyed to more.
QString keptAbsorbance(double absorbance)
{
    const QString three = evaluation::absorbanceText(absorbance);
    return three.toDouble() == absorbance ? three : evaluation::plainText(absorbance);
}

QString seriesText(const Database &database, qint64 reading)
{
    Statement query(database,
                    u"SELECT at_min, absorbance FROM reading_point WHERE reading = ? ORDER BY position"_s);
    query.run(reading);
    QStringList points;
    while (query.next())
        points << Sentence::tr("%1 min: %2")
                      .arg(evaluation::plainText(query.real(0)), keptAbsorbance(query.real(1)));
    return points.join(u"; "_s);
}

QString readingText(const Database &database, qint64 id, const Row &row)
{
    const QString single = valueOf(row, u"absorbance"_s);
    return single.isEmpty() ? seriesText(database, id) : keptAbsorbance(single.toDouble());
}

/// In the rack, from 1; 0 where there is no such tube.
int numberOfTube(const Database &database, const QString &id)
{
    Statement tube(database, u"SELECT position + 1 FROM tube WHERE id = ?"_s);
    tube.run(id.toLongLong());
    return tube.next() ? int(tube.integer(0)) : 0;
}

/// What stands on the container, as it was last told.
QString nameOfLot(const Database &database, const QString &id)
{
    Statement lot(database, u"SELECT name FROM lot_version WHERE lot = ? ORDER BY id DESC LIMIT 1"_s);
    lot.run(id.toLongLong());
    return lot.next() ? lot.text(0) : id;
}

/// What refers to a tube or a container does so by its row, which says nothing at the bench.
Row withNames(const Database &database, Row row)
{
    for (auto &[column, text] : row) {
        if (text.isEmpty())
            continue;
        if (column == "tube"_L1)
            text = QString::number(numberOfTube(database, text));
        else if (column == "lot"_L1)
            text = nameOfLot(database, text);
    }
    return row;
}

QString openingText(const QString &day)
{
    return day.isEmpty() ? Sentence::tr("not opened") : Sentence::tr("opened on %1").arg(day);
}

AuditChange openingChange(const Database &database, qint64 id, const Row &row)
{
    const QString lot = valueOf(row, u"lot"_s);
    Statement before(database,
                     u"SELECT day FROM (SELECT 0 AS id, lot, day FROM lot_opening UNION ALL SELECT id, lot, day FROM "
                     "lot_opening_change) WHERE lot = ? AND id < ? ORDER BY id DESC LIMIT 1"_s);
    before.run(lot.toLongLong(), id);
    const QString was = before.next() ? before.text(0) : QString();
    return {Sentence::tr("lot %1").arg(nameOfLot(database, lot)), openingText(was),
            openingText(valueOf(row, u"day"_s)), valueOf(row, u"reason"_s)};
}

AuditChange readingChange(const Database &database, qint64 id, const Row &row)
{
    const qint64 old = predecessorOf(database, u"reading"_s, id, row);
    const int number = numberOfTube(database, valueOf(row, u"tube"_s));
    return {Sentence::tr("tube %1, %2").arg(number).arg(valueOf(row, u"name"_s)),
            old ? readingText(database, old, rowOf(database, u"reading"_s, old)) : QString(),
            readingText(database, id, row), valueOf(row, u"reason"_s)};
}

QString decisionText(const QString &kind)
{
    return kind == "accepted"_L1 ? Sentence::tr("accepted") : Sentence::tr("rejected");
}

AuditChange changeOf(const Database &database, const Covered &covered)
{
    const Row row = rowOf(database, covered.table, covered.id);
    if (covered.table == "reading"_L1)
        return readingChange(database, covered.id, row);
    if (covered.table == "lot_opening_change"_L1)
        return openingChange(database, covered.id, row);
    const QString why =
        valueOf(row, u"reason"_s).isEmpty() ? valueOf(row, u"note"_s) : valueOf(row, u"reason"_s);
    if (covered.table == "decision"_L1)
        return {Sentence::tr("the run"), Sentence::tr("on the bench"), decisionText(valueOf(row, u"kind"_s)),
                why};
    if (covered.table == "reopening"_L1) {
        const Row decision = rowOf(database, u"decision"_s, valueOf(row, u"decision"_s).toLongLong());
        return {Sentence::tr("the run"), decisionText(valueOf(decision, u"kind"_s)),
                Sentence::tr("on the bench"), why};
    }
    const QString subject = Sentence::tr("%1 (number %2)").arg(recordWord(covered.table)).arg(covered.id);
    const qint64 old = predecessorOf(database, covered.table, covered.id, row);
    const Row before = old ? rowOf(database, covered.table, old) : Row();
    const QString content = valueOf(row, u"content"_s);
    if (!content.isEmpty() && (covered.table != "method"_L1)) {
        const auto [was, is] = documentChange(valueOf(before, u"content"_s), content);
        return {subject, was, is, why};
    }
    const Row was = withNames(database, before);
    const Row now = withNames(database, row);
    return {subject, old ? toldColumns(was, now, true) : QString(), toldColumns(now, was, old != 0), why};
}

/// Parts of something else, which say nothing by themselves.
bool isPart(const QString &table)
{
    static const QStringList parts{u"bench_stamp"_s,   u"reading_point"_s, u"decision_mark"_s,
                                   u"decision_size"_s, u"reading_again"_s, u"decision_repeat"_s,
                                   u"mark_lot_day"_s};
    return parts.contains(table);
}

std::vector<AuditChange> counted(const std::vector<Covered> &records)
{
    std::map<QString, int> counts;
    for (const Covered &record : records)
        ++counts[record.table];
    std::vector<AuditChange> changes;
    for (const auto &[table, count] : counts)
        changes.push_back({recordWord(table), {}, QString::number(count), {}});
    return changes;
}

} // namespace

std::vector<AuditChange> auditChanges(const Database &database, qint64 entry)
{
    Statement query(database,
                    u"SELECT record_table, record_id FROM audit_record WHERE audit = ? ORDER BY position"_s);
    query.run(entry);
    std::vector<Covered> records;
    while (query.next()) {
        if (!isPart(query.text(0)))
            records.push_back({query.text(0), query.integer(1)});
    }
    if (records.size() > mostToldOneByOne)
        return counted(records);
    std::vector<AuditChange> changes;
    for (const Covered &record : records)
        changes.push_back(changeOf(database, record));
    return changes;
}

} // namespace plateau::notebook
