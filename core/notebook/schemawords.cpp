// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schemawords.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// Written into the statements where they say @UTC and so on, so that the tables read as tables.
const QList<std::pair<QString, QString>> &abbreviations()
{
    static const QList<std::pair<QString, QString>> list{
        {u"@ID"_s, u"INTEGER PRIMARY KEY CHECK (id > 0)"_s},
        {u"@UTC"_s,
         u"GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-5][0-9].[0-9][0-9][0-9]Z'"_s},
        {u"@DAY"_s, u"GLOB '[0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]'"_s},
        {u"@OFFSET"_s, u"BETWEEN -1439 AND 1439"_s},
        {u"@HASH"_s, u"GLOB replace(hex(zeroblob(32)), '0', '[0-9a-f]')"_s},
        // json_valid would say more, but SQLite 3.40 does not allow it where the schema is not trusted.
        {u"@DOCUMENT"_s, u"GLOB '{*}*'"_s},
        {u"@FINITE"_s, u"BETWEEN -1e300 AND 1e300"_s},
        {u"@NOTNEGATIVE"_s, u"BETWEEN 0 AND 1e300"_s},
        // A measured amount is more than nothing; the smallest bound only has to be above zero.
        {u"@POSITIVE"_s, u"BETWEEN 1e-300 AND 1e300"_s},
        {u"@BLANKS"_s, u"char(9, 10, 11, 12, 13, 32, 133, 160, 8195, 8203, 8239, 12288)"_s},
    };
    return list;
}

} // namespace

QString writtenOut(const char *statement)
{
    QString text = QString::fromUtf8(statement);
    for (const auto &[shortForm, longForm] : abbreviations())
        text.replace(shortForm, longForm);
    return text;
}

} // namespace plateau::notebook
