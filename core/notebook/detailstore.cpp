// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/detailstore.h"

#include "core/notebook/sentence.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

std::map<QString, double> loadExpected(const Database &database, qint64 detail)
{
    Statement query(database, u"SELECT measurand, amount FROM sample_expected WHERE detail = ?"_s);
    query.run(detail);
    std::map<QString, double> expected;
    while (query.next())
        expected[query.text(0)] = query.real(1);
    return expected;
}

} // namespace

qint64 storeDetail(Act &act, const planning::ShelfSample &sample)
{
    Statement insert(
        act.database(),
        u"INSERT INTO sample_detail (name, name_key, matrix, product, product_key, form, "
        "received_utc, received_offset_min, received_from) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(sample.id, comparisonKey(sample.id), matrixWord(sample.matrix), sample.product,
               comparisonKey(sample.product), formWord(sample.form), optionalMoment(sample.receivedAt),
               sample.receivedFrom);
    const qint64 row = insert.insertedId();
    act.covers(u"sample_detail"_s, row);
    Statement insertExpected(act.database(),
                             u"INSERT INTO sample_expected (detail, measurand, amount) VALUES (?, ?, ?)"_s);
    for (const auto &[measurand, amount] : sample.expected) {
        insertExpected.run(row, measurand, amount);
        act.covers(u"sample_expected"_s, insertExpected.insertedId());
    }
    return row;
}

planning::ShelfSample loadDetail(const Database &database, qint64 row)
{
    Statement query(database, u"SELECT name, matrix, product, form, received_utc, received_offset_min, "
                              "received_from FROM sample_detail WHERE id = ?"_s);
    query.run(row);
    if (!query.next())
        throw Failure(
            Failure::Kind::Damaged,
            Sentence::tr(
                "The notebook is damaged: details of a sample are gone; go back to the latest backup."),
            u"sample_detail %1"_s.arg(row));
    return {query.text(0),
            matrixOf(query.text(1)),
            query.text(2),
            formOf(query.text(3)),
            query.optionalTime(4),
            query.text(6),
            loadExpected(database, row)};
}

} // namespace plateau::notebook
