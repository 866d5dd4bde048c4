// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;

struct Table {
    const char *name;
    /// A column to change and what to.
    const char *change;
};
void PrintTo(const Table &table, std::ostream *out)
{
    *out << table.name;
}

/// What any other program may try through SQL.
class ProtectionTest : public NotebookTest, public ::testing::WithParamInterface<std::tuple<Table, bool>>
{
protected:
    void SetUp() override
    {
        makeFilledFile();
        fillTheRest();
        m_raw = std::make_unique<RawFile>(file());
        m_raw->execute(u"PRAGMA recursive_triggers=%1"_s.arg(std::get<1>(GetParam()) ? "ON"_L1 : "OFF"_L1));
        m_before = m_raw->rows(u"SELECT * FROM "_s + table());
        ASSERT_FALSE(m_before.empty());
        for (const QVariantList &column :
             m_raw->rows(u"SELECT name FROM pragma_table_info('%1')"_s.arg(table())))
            m_columns << column[0].toString();
    }
    void TearDown() override
    {
        if (m_raw) {
            EXPECT_EQ(m_raw->rows(u"SELECT * FROM "_s + table()), m_before);
        }
    }

    /// Once for all tests.
    void fillTheRest()
    {
        static const QByteArray filled = [this] {
            {
                const auto notebook = reopen();
                fillDerived(*notebook);
                fillBench(*notebook);
                fillReview(*notebook);
            }
            return bytesOf(file());
        }();
        write(file(), filled);
    }
    QString table() const { return QString::fromLatin1(std::get<0>(GetParam()).name); }
    QString change() const { return QString::fromLatin1(std::get<0>(GetParam()).change); }
    /// All columns of row 1, the id as given.
    QString copyOfRow(const QString &id) const
    {
        QStringList values = m_columns;
        values[0] = id;
        return u"INTO %1 SELECT %2 FROM %1 WHERE id = 1"_s.arg(table(), values.join(u", "_s));
    }
    void expectRefused(const QString &sql)
    {
        EXPECT_FALSE(m_raw->tryExecute(sql)) << sql.toStdString();
        EXPECT_TRUE(m_raw->error().contains("only ever added"_L1))
            << sql.toStdString() << ": " << m_raw->error().toStdString();
    }

    std::unique_ptr<RawFile> m_raw;
    std::vector<QVariantList> m_before;
    QStringList m_columns;
};

TEST_P(ProtectionTest, RowsAreNeverDeleted)
{
    expectRefused(u"DELETE FROM %1"_s.arg(table()));
    expectRefused(u"DELETE FROM %1 WHERE id = 1"_s.arg(table()));
}

TEST_P(ProtectionTest, RowsAreNeverUpdated)
{
    for (const QString &way :
         {u"UPDATE"_s, u"UPDATE OR IGNORE"_s, u"UPDATE OR REPLACE"_s, u"UPDATE OR FAIL"_s}) {
        expectRefused(u"%1 %2 SET %3"_s.arg(way, table(), change()));
        expectRefused(u"%1 %2 SET id = 1000 WHERE id = 1"_s.arg(way, table()));
    }
}

TEST_P(ProtectionTest, RowsAreNeverReplaced)
{
    expectRefused(u"INSERT OR REPLACE "_s + copyOfRow(u"1"_s));
    expectRefused(u"REPLACE "_s + copyOfRow(u"1"_s));
    expectRefused(u"INSERT OR IGNORE "_s + copyOfRow(u"1"_s));
    expectRefused(u"INSERT %1 ON CONFLICT (id) DO UPDATE SET %2"_s.arg(copyOfRow(u"1"_s), change()));
}

TEST_P(ProtectionTest, RowsAreNeverPushedOutByTheirKey)
{
    const auto keys =
        m_raw->rows(u"SELECT name FROM pragma_index_list('%1') WHERE \"unique\""_s.arg(table()));
    if (!keys.empty())
        expectRefused(u"INSERT OR REPLACE "_s + copyOfRow(u"NULL"_s));
}

INSTANTIATE_TEST_SUITE_P(
    EveryTable, ProtectionTest,
    ::testing::Combine(
        ::testing::Values(
            Table{"method", "version = 2"}, Table{"run", "title = ''"},
            Table{"uncertainty", "absorbance = 0"}, Table{"standard", "loss_per_hour = 0"},
            Table{"sample", "name = 'x'"}, Table{"dilution", "take_mL = 1"}, Table{"tube", "role = 'blank'"},
            Table{"lot_use", "lot = 'x'"}, Table{"reading", "absorbance = 0.5"},
            Table{"reading_point", "absorbance = 0.5"}, Table{"decision", "kind = 'rejected'"},
            Table{"reopening", "reason = 'x'"}, Table{"method_act", "note = 'x'"},
            Table{"decision_companion", "run = 1"}, Table{"sample_detail", "name = 'x'"},
            Table{"sample_expected", "amount = 7"}, Table{"shelf_sample", "last_run = 9"},
            Table{"shelf_version", "person = 'x'"}, Table{"shelf_withdrawal", "reason = 'x'"},
            Table{"decision_repeat", "sample = 'x'"}, Table{"repeat_waiver", "reason = 'x'"},
            Table{"plan", "rack_rows = 9"}, Table{"plan_sample", "repeats = 1"},
            Table{"plan_step", "flask = 'x'"}, Table{"dilution_uncertainty", "percent = 9"},
            Table{"laboratory", "person = 'x'"}, Table{"lot", "id = 9"}, Table{"lot_version", "name = 'x'"},
            Table{"lot_opening", "day = '2026-03-02'"}, Table{"lot_opening_change", "day = '2026-03-02'"},
            Table{"mark_lot_day", "day = '2026-03-02'"}, Table{"lot_movement", "note = 'x'"},
            Table{"pipetting_mark", "note = 'x'"}, Table{"dilution_mark", "last_mark = 9"},
            Table{"decision_mark", "last_mark = 9"},
            Table{"person", "id = 9"}, Table{"person_version", "role = 'head'"},
            Table{"person_passphrase", "hash = '$argon2id$'"}, Table{"person_standing", "reason = 'x'"},
            Table{"wrong_passphrase", "person = 1"}, Table{"decision_signature", "person_version = 1"},
            Table{"decision_sample", "reason = 'x'"}, Table{"decision_step", "take_mL = 1"},
            Table{"report_choice", "reason = 'x'"}, Table{"specifications", "reason = 'x'"},
            Table{"standard_uncertainty", "percent = 9"}, Table{"bench_stamp", "boot_ms = 9"},
            Table{"tube_time", "at_min = 9"}, Table{"clock_jump", "shift_ms = 9"},
            Table{"clock_jump_run", "run = 9"}, Table{"reading_again", "reading = 9"},
            Table{"reading_origin", "line = 'x'"}, Table{"tube_addition", "tubes_before = 9"},
            Table{"sample_repeat", "repeats = 9"}, Table{"decision_size", "tubes = 9"},
            Table{"plan_owner", "owner = 'x'"}, Table{"substance", "id = 9"},
            Table{"substance_version", "name = 'x'"}, Table{"preparation", "name = 'x'"},
            Table{"preparation_portion", "mass_mg = 9"}, Table{"preparation_disposal", "reason = 'x'"},
            Table{"equipment_item", "id = 9"}, Table{"equipment_version", "name = 'x'"},
            Table{"equipment_duty", "every_days = 9"}, Table{"equipment_check", "passed = 0"},
            Table{"equipment_condition", "value = 9"}, Table{"equipment_value", "value = 9"},
            Table{"equipment_extent", "row_count = 9"}, Table{"equipment_withdrawal", "reason = 'x'"},
            Table{"decision_basis", "laboratory = 9"}, Table{"reopening_signature", "person_version = 1"},
            Table{"chart_setting", "rules = ''"}, Table{"chart_omission", "reason = 'x'"},
            Table{"lot_dry", "mass_mg = 9"}, Table{"lot_dry_disposal", "reason = 'x'"},
            Table{"lot_keeping", "dissolved_days = 9"}, Table{"lot_dissolving", "volume_mL = 9"},
            Table{"lot_division", "aliquots = 9"}, Table{"lot_aliquot", "number = 9"},
            Table{"lot_place", "place = 'x'"}, Table{"lot_note", "note = 'x'"},
            Table{"audit", "person = 'x'"}, Table{"audit_record", "record_id = 1"}),
        ::testing::Bool()),
    [](const auto &row) {
        return std::string(std::get<0>(row.param).name) + (std::get<1>(row.param) ? "Recursive" : "Plain");
    });

/// Rules that reach over more than one row hold for any other program, too.
class RulesTest : public NotebookTest
{
protected:
    void SetUp() override { makeFilledFile(); }
    void expectRefused(const QString &sql, QLatin1StringView why)
    {
        RawFile raw(file());
        raw.execute(u"PRAGMA foreign_keys=ON"_s);
        EXPECT_FALSE(raw.tryExecute(sql)) << sql.toStdString();
        EXPECT_TRUE(raw.error().contains(why)) << raw.error().toStdString();
    }
    static QString reading(const QString &values)
    {
        return u"INSERT INTO reading (tube, name, absorbance, points, typed, person, at_utc, at_offset_min, "
               u"corrects, "
               "reason) VALUES (%1)"_s.arg(values);
    }
    QString mark(const QString &values) const
    {
        return u"INSERT INTO pipetting_mark (tube, kind, component, spike, volume_mL, planned_mL, note, "
               "pipette, person, at_utc, at_offset_min) VALUES (%1, '', 'x', %2)"_s.arg(values, m_now);
    }
    static QString methodAct(const QString &values)
    {
        return u"INSERT INTO method_act (method, kind, person, at_utc, at_offset_min, note, file_name) "
               "VALUES (%1)"_s.arg(values);
    }
    const QString m_now = u"'2026-03-02T08:10:00.000Z', 60"_s;
};

TEST_F(RulesTest, DecidedRunTakesNoReading)
{
    expectRefused(reading(u"5, 'A3', 0.5, 0, '', 'x', %1, NULL, ''"_s.arg(m_now)), "the run is decided"_L1);
}

TEST_F(RulesTest, DecidedRunTakesNoTickOfADilution)
{
    // The run that has dilutions is rejected.
    expectRefused(u"INSERT INTO dilution_mark (dilution, kind, last_mark, person, at_utc, at_offset_min) "
                  "VALUES (1, 'done', 0, 'x', %1)"_s.arg(m_now),
                  "the run is decided"_L1);
}

TEST_F(RulesTest, CorrectionStaysInItsTube)
{
    // Tubes 11 to 14 are those of the run on the bench.
    expectRefused(reading(u"12, 'A1', 0.5, 0, '', 'x', %1, 1, 'why'"_s.arg(m_now)),
                  "its own tube and point"_L1);
}

TEST_F(RulesTest, ReadingWithoutANumberIsRefused)
{
    expectRefused(reading(u"12, 'A1', NULL, 0, '', 'x', %1, NULL, ''"_s.arg(m_now)), "CHECK"_L1);
    expectRefused(reading(u"12, 'A1', 9e999, 0, '', 'x', %1, NULL, ''"_s.arg(m_now)), "CHECK"_L1);
    expectRefused(reading(u"12, 'A1', '0,5', 0, '', 'x', %1, NULL, ''"_s.arg(m_now)), "REAL"_L1);
}

TEST_F(RulesTest, BlankPersonOrReasonIsRefused)
{
    expectRefused(reading(u"12, 'A1', 0.5, 0, '', ' ' || char(9), %1, NULL, ''"_s.arg(m_now)), "CHECK"_L1);
    expectRefused(
        u"INSERT INTO reopening (decision, person, reason, at_utc, at_offset_min) VALUES (2, 'x', ' ', %1)"_s
            .arg(m_now),
        "CHECK"_L1);
}

TEST_F(RulesTest, ReadingOfNoTubeIsRefused)
{
    expectRefused(reading(u"999, 'A1', 0.5, 0, '', 'x', %1, NULL, ''"_s.arg(m_now)), "FOREIGN KEY"_L1);
}

TEST_F(RulesTest, SeriesTakesNoFurtherPoint)
{
    expectRefused(u"INSERT INTO reading_point (reading, position, at_min, absorbance) "
                  "SELECT reading, max(position) + 1, 99, 0.5 FROM reading_point"_s,
                  "complete"_L1);
}

TEST_F(RulesTest, SecondDecisionWithoutReopeningIsRefused)
{
    expectRefused(
        u"INSERT INTO decision (run, kind, person, reason, at_utc, at_offset_min, last_reading, "
        u"content_hash, "
        "acceptable, evaluation, program_version) SELECT run, kind, person, reason, at_utc, at_offset_min, "
        "last_reading, content_hash, acceptable, evaluation, program_version FROM decision WHERE id = 2"_s,
        "the run is decided"_L1);
}

TEST_F(RulesTest, MethodIsRetiredAndReinstatedByTurns)
{
    // Method 2 was retired and reinstated, method 1 neither.
    expectRefused(methodAct(u"2, 'reinstated', 'x', %1, 'why', NULL"_s.arg(m_now)), "so already"_L1);
    expectRefused(methodAct(u"1, 'reinstated', 'x', %1, 'why', NULL"_s.arg(m_now)), "so already"_L1);
    RawFile(file()).execute(methodAct(u"1, 'retired', 'x', %1, 'why', NULL"_s.arg(m_now)));
    expectRefused(methodAct(u"1, 'retired', 'x', %1, 'why', NULL"_s.arg(m_now)), "so already"_L1);
}

TEST_F(RulesTest, MethodComesOnce)
{
    expectRefused(methodAct(u"1, 'saved', 'x', %1, '', NULL"_s.arg(m_now)), "only ever added"_L1);
    expectRefused(methodAct(u"1, 'imported', 'x', %1, '', 'a.json'"_s.arg(m_now)), "only ever added"_L1);
}

TEST_F(RulesTest, MethodActWithoutWhatItNeedsIsRefused)
{
    expectRefused(methodAct(u"1, 'retired', 'x', %1, ' ', NULL"_s.arg(m_now)), "CHECK"_L1);
    expectRefused(methodAct(u"1, 'retired', ' ', %1, 'why', NULL"_s.arg(m_now)), "CHECK"_L1);
    expectRefused(methodAct(u"1, 'retired', 'x', %1, 'why', 'a.json'"_s.arg(m_now)), "CHECK"_L1);
    expectRefused(methodAct(u"3, 'imported', 'x', %1, '', NULL"_s.arg(m_now)), "CHECK"_L1);
    expectRefused(methodAct(u"3, 'burnt', 'x', %1, 'why', NULL"_s.arg(m_now)), "CHECK"_L1);
    expectRefused(methodAct(u"999, 'retired', 'x', %1, 'why', NULL"_s.arg(m_now)), "FOREIGN KEY"_L1);
}

TEST_F(RulesTest, DecidedRunTakesNoMark)
{
    expectRefused(mark(u"5, 'done', 'buffer', 0, 1, 1, ''"_s), "the run is decided"_L1);
    expectRefused(mark(u"5, 'spoilt', NULL, 0, NULL, NULL, 'fell over'"_s), "the run is decided"_L1);
}

TEST_F(RulesTest, MarkChangesSomething)
{
    expectRefused(mark(u"12, 'undone', 'buffer', 0, NULL, NULL, ''"_s), "so already"_L1);
    expectRefused(mark(u"12, 'unspoilt', NULL, 0, NULL, NULL, 'why'"_s), "so already"_L1);
    RawFile(file()).execute(mark(u"12, 'spoilt', NULL, 0, NULL, NULL, 'fell over'"_s));
    expectRefused(mark(u"12, 'spoilt', NULL, 0, NULL, NULL, 'fell over'"_s), "so already"_L1);
}

TEST_F(RulesTest, MarkWithoutWhatItNeedsIsRefused)
{
    expectRefused(mark(u"12, 'done', 'buffer', 0, NULL, 1, ''"_s), "CHECK"_L1);
    expectRefused(mark(u"12, 'done', NULL, 0, 1, 1, ''"_s), "CHECK"_L1);
    expectRefused(mark(u"12, 'done', 'buffer', 0, -1, 1, ''"_s), "CHECK"_L1);
    expectRefused(mark(u"12, 'spoilt', NULL, 0, NULL, NULL, ' '"_s), "CHECK"_L1);
    expectRefused(mark(u"999, 'done', 'buffer', 0, 1, 1, ''"_s), "FOREIGN KEY"_L1);
}

TEST_F(RulesTest, MovementThatIsNoneIsRefused)
{
    RawFile(file()).execute(u"INSERT INTO lot DEFAULT VALUES"_s);
    const auto movement = [this](const QString &values) {
        return u"INSERT INTO lot_movement (lot, kind, change_mL, note, person, at_utc, at_offset_min) "
               "VALUES (%1, 'x', %2)"_s.arg(values, m_now);
    };
    expectRefused(movement(u"1, 'received', -1, ''"_s), "CHECK"_L1);
    expectRefused(movement(u"1, 'used', 1, ''"_s), "CHECK"_L1);
    expectRefused(movement(u"1, 'corrected', 0, 'why'"_s), "CHECK"_L1);
    expectRefused(movement(u"1, 'discarded', -1, ' '"_s), "CHECK"_L1);
    expectRefused(movement(u"9, 'used', -1, ''"_s), "FOREIGN KEY"_L1);
}

TEST_F(RulesTest, OnlyWhatCameDryIsDissolvedAndNoAliquotIsDivided)
{
    fillStores(*reopen());
    const auto dissolving = [this](const QString &lot) {
        return u"INSERT INTO lot_dissolving (lot, volume_mL, solvent, day, note, person, at_utc, "
               u"at_offset_min) "
               "VALUES (%1, 1, 'water', '2026-03-02', '', 'x', %2)"_s.arg(lot, m_now);
    };
    expectRefused(dissolving(u"1"_s), "only what came dry"_L1);
    expectRefused(dissolving(u"5"_s), "only what came dry"_L1); // thrown away
    expectRefused(
        u"INSERT INTO lot_dry_disposal (lot, person, reason, at_utc, at_offset_min) VALUES (2, 'x', 'x', "
        "%1)"_s.arg(m_now),
        "it is dissolved"_L1);
    expectRefused(
        u"INSERT INTO lot_division (source, aliquots, volume_mL, day, note, person, at_utc, at_offset_min) "
        "SELECT lot, 1, 1, '2026-03-02', '', 'x', %1 FROM lot_aliquot LIMIT 1"_s.arg(m_now),
        "an aliquot is not divided"_L1);
    expectRefused(u"INSERT INTO lot_aliquot (division, lot, number) VALUES (1, 1, 9)"_s,
                  "division is complete"_L1);
    expectRefused(
        u"INSERT INTO lot_place (lot, place, lowest_C, highest_C, note, person, at_utc, at_offset_min) "
        "VALUES (1, 'x', 9, 8, '', 'x', %1)"_s.arg(m_now),
        "CHECK"_L1);
}

TEST_F(RulesTest, AuditEntryHasToContinueTheChain)
{
    expectRefused(
        u"INSERT INTO audit (id, previous_hash, at_utc, at_offset_min, person, account, host, "
        u"program_version, "
        "schema_version, action, details, hash) SELECT id + 2, hash, at_utc, at_offset_min, person, account, "
        "host, program_version, schema_version, action, details, hash FROM audit ORDER BY id DESC LIMIT 1"_s,
        "continues the chain"_L1);
}

} // namespace plateau::test
