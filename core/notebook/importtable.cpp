// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/importtable.h"

#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/statement.h"

#include <QDir>
#include <QFile>

#include <fstream>

#include <nlohmann/json.hpp>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using nlohmann::json;

namespace {

/// Takes the parser's events: a table may be larger than what one would hold as a tree.
class Rows
{
public:
    using number_integer_t = json::number_integer_t;
    using number_unsigned_t = json::number_unsigned_t;
    using number_float_t = json::number_float_t;
    using string_t = json::string_t;
    using binary_t = json::binary_t;

    Rows(const Database &database, const ExportedTable &table, Progress &progress)
        : m_table(table)
        , m_insert(database, u"INSERT INTO %1 (%2) VALUES (%3)"_s.arg(
                                 table.name, table.columns.join(u", "_s),
                                 QStringList(table.columns.size(), u"?"_s).join(u", "_s)))
        , m_progress(progress)
    {
    }

    qint64 count() const { return m_count; }

    bool null() { return add(QVariant()); }
    bool boolean(bool) { return false; }
    bool number_integer(number_integer_t value) { return add(qlonglong(value)); }
    bool number_unsigned(number_unsigned_t value)
    {
        return std::in_range<qlonglong>(value) && add(qlonglong(value));
    }
    bool number_float(number_float_t value, const string_t &) { return add(value); }
    bool string(string_t &value)
    {
        // Of the head only its rows are wanted; the manifest says table and columns, and is checked.
        return m_depth < rowDepth || add(QString::fromStdString(value));
    }
    bool binary(binary_t &) { return false; }
    bool start_object(std::size_t) { return m_depth++ == 0; }
    bool end_object() { return --m_depth == 0; }
    bool key(string_t &value)
    {
        m_inRows = value == "rows";
        return true;
    }
    bool start_array(std::size_t)
    {
        ++m_depth;
        m_row.clear();
        return m_depth <= rowDepth;
    }
    bool end_array()
    {
        const bool isRow = m_inRows && m_depth == rowDepth;
        --m_depth;
        return !isRow || insert();
    }
    bool parse_error(std::size_t, const std::string &, const nlohmann::detail::exception &) { return false; }

private:
    /// The document, its list of rows, a row.
    static constexpr int rowDepth = 3;

    bool add(const QVariant &value)
    {
        if (!m_inRows || m_depth != rowDepth)
            return false;
        m_row << value;
        return true;
    }
    bool insert()
    {
        if (m_row.size() != m_table.columns.size())
            return false;
        m_insert.runWith(m_row);
        ++m_count;
        m_progress.advance();
        return true;
    }

    const ExportedTable &m_table;
    Statement m_insert;
    Progress &m_progress;
    int m_depth = 0;
    bool m_inRows = false;
    QVariantList m_row;
    qint64 m_count = 0;
};

} // namespace

qint64 importTable(const Database &database, const ExportedTable &table, const QString &jsonPath,
                   Progress &progress)
{
    std::ifstream file(QFile::encodeName(jsonPath).constData(), std::ios::binary);
    Rows rows(database, table, progress);
    if (!file || !json::sax_parse(file, &rows))
        throw Failure(Failure::Kind::Damaged,
                      Sentence::tr("The file %1 is not a table as an export writes it; nothing was imported: "
                                   "take the export from where it was kept unchanged.")
                          .arg(QDir::toNativeSeparators(jsonPath)));
    return rows.count();
}

} // namespace plateau::notebook
