// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/openrepeats.h"
#include "core/notebook/runfacts.h"
#include "core/notebook/runlist.h"
#include "core/notebook/searchindex.h"
#include "core/notebook/sentence.h"
#include "core/notebook/sixthschemastep.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr auto otherwise = "is not as the records say, so that runs may not be found by it";

void checkRows(const Database &database, std::vector<Finding> &findings)
{
    for (const RunSummary &summary : loadSummaries(database)) {
        const RunFacts wanted = factsOf(database, summary);
        const RunFacts found = storedFacts(database, summary.id);
        for (std::size_t i = 0; i < wanted.size(); ++i) {
            if (wanted[i] != found[i])
                findings.push_back(
                    {u"%1 %2"_s.arg(derivedTables()[i].name).arg(summary.id.value), Sentence::tr(otherwise)});
        }
    }
}

/// Every word of the index in the order it keeps them, from a view of it that lives as long as this.
class WordList
{
public:
    explicit WordList(const Database &database)
        : m_database(database)
    {
        database.execute(u"CREATE VIRTUAL TABLE temp.search_word_list USING fts5vocab (main, search_text, "
                         "instance)"_s);
        m_words.emplace(database, u"SELECT term, doc, col, \"offset\" FROM temp.search_word_list"_s);
        m_words->run();
    }
    ~WordList()
    {
        m_words.reset();
        try {
            m_database.execute(u"DROP TABLE temp.search_word_list"_s);
        } catch (const Failure &failure) {
            qWarning("the view of the index of words stays: %s", failure.what());
        }
    }
    WordList(const WordList &) = delete;
    WordList &operator=(const WordList &) = delete;

    /// Empty behind the last one.
    std::vector<Cell> next()
    {
        if (!m_words->next())
            return {};
        return {m_words->cell(0), m_words->cell(1), m_words->cell(2), m_words->cell(3)};
    }

private:
    const Database &m_database;
    std::optional<Statement> m_words;
};

/// The index of words against one that is made of the same words beside the notebook.
void checkWords(const Database &database, std::vector<Finding> &findings)
{
    Database beside(Database::InMemory::Yes);
    beside.setForeignKeys(false);
    for (const QString &statement : searchPart().statements) {
        if (statement.contains("search_words"_L1) || statement.contains("search_text"_L1))
            beside.execute(statement);
    }
    const DerivedTable &table = derivedTables().back();
    const QString columns = table.columns.join(u", "_s);
    Statement rows(database, u"SELECT %1 FROM %2"_s.arg(columns, table.name));
    Statement insert(beside,
                     u"INSERT INTO %2 (%1) VALUES (%3)"_s.arg(
                         columns, table.name, QStringList(table.columns.size(), u"?"_s).join(u", "_s)));
    rows.run();
    while (rows.next()) {
        std::vector<Cell> row;
        for (int column = 0; column < int(table.columns.size()); ++column)
            row.push_back(rows.cell(column));
        insert.run(row);
    }
    beside.execute(u"INSERT INTO search_text (search_text) VALUES ('rebuild')"_s);

    WordList wanted(beside);
    WordList found(database);
    for (;;) {
        const std::vector<Cell> word = wanted.next();
        if (word != found.next()) {
            findings.push_back({u"search_text"_s, Sentence::tr(otherwise)});
            return;
        }
        if (word.empty())
            return;
    }
}

void checkRepeats(const Database &database, std::vector<Finding> &findings)
{
    for (const Finding &finding : openRepeatFindings(database))
        findings.push_back(finding);
}

} // namespace

std::vector<Finding> searchFindings(const Database &database)
{
    std::vector<Finding> findings;
    for (const auto check : {checkRows, checkWords, checkRepeats}) {
        try {
            check(database, findings);
        } catch (const Failure &failure) {
            findings.push_back({Sentence::tr("the search"), failure.details()});
        }
    }
    return findings;
}

} // namespace plateau::notebook
