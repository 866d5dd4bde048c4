// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/notebook/lotstore.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// One line for every row of a container, in the order of the audit, which is that of the acts: kind, change,
// what the row says (up to four values), the note, who and when.
constexpr auto everythingOfALot =
    // clang-format off
    "SELECT kind, change_mL, '', NULL, NULL, NULL, note, 'lot_movement' AS of_table, id AS of_row, "
    "person, at_utc, at_offset_min FROM lot_movement WHERE lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT 'dry', 0, '', mass_mg, NULL, NULL, '', 'lot_dry', id, person, at_utc, "
    "at_offset_min FROM lot_dry WHERE lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT 'discarded', 0, '', NULL, NULL, NULL, reason, 'lot_dry_disposal', id, person, "
    "at_utc, at_offset_min FROM lot_dry_disposal WHERE lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT 'opened', 0, day, NULL, NULL, NULL, '', 'lot_opening', id, person, at_utc, "
    "at_offset_min FROM lot_opening WHERE lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT CASE WHEN reason = '' THEN 'opened' WHEN day IS NULL THEN 'closed' ELSE 'redated' END, 0, "
    "coalesce(day, ''), NULL, NULL, NULL, reason, 'lot_opening_change', id, person, at_utc, at_offset_min FROM "
    "lot_opening_change WHERE lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT 'dissolved', volume_mL, solvent, NULL, NULL, NULL, note, 'lot_dissolving', id, "
    "person, at_utc, at_offset_min FROM lot_dissolving WHERE lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT 'solvent', -volume_mL, (SELECT reagent || ', ' || name FROM lot_version AS "
    "made WHERE made.lot = lot_dissolving.lot ORDER BY id DESC LIMIT 1), NULL, NULL, NULL, '', "
    "'lot_dissolving', lot_dissolving.id, lot_dissolving.person, lot_dissolving.at_utc, "
    "lot_dissolving.at_offset_min FROM lot_dissolving JOIN lot_version AS solvent ON solvent.id = "
    "solvent_version WHERE solvent.lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT 'divided', -aliquots * volume_mL, '', aliquots, volume_mL, NULL, note, "
    "'lot_division', id, person, at_utc, at_offset_min FROM lot_division WHERE source = (SELECT "
    "wanted FROM own) "
    "UNION ALL SELECT 'filled', volume_mL, (SELECT reagent || ', ' || name FROM lot_version WHERE "
    "lot = source ORDER BY id DESC LIMIT 1), keeps_days, NULL, NULL, note, 'lot_aliquot', "
    "lot_aliquot.id, person, at_utc, at_offset_min FROM lot_aliquot JOIN lot_division ON "
    "lot_division.id = division WHERE lot_aliquot.lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT 'stored', 0, place, lowest_C, highest_C, NULL, note, 'lot_place', id, person, "
    "at_utc, at_offset_min FROM lot_place WHERE lot = (SELECT wanted FROM own) "
    "UNION ALL SELECT 'noted', 0, '', NULL, NULL, NULL, note, 'lot_note', id, person, at_utc, "
    "at_offset_min FROM lot_note WHERE lot = (SELECT wanted FROM own)"_L1;
// clang-format on

QString lotLineTold(const QString &what, const QString &note)
{
    return note.isEmpty() ? what : Sentence::tr("%1; %2").arg(what, note);
}

/// day: as the notebook keeps it.
QString lotDayTold(const QString &day)
{
    return Sentence::tr("on %1").arg(assay::shownDay(QDate::fromString(day, Qt::ISODate)));
}

/// Column 2: a text, 3 and 4: numbers, 6: what was keyed.
LotMovement lotLineOf(const Statement &row)
{
    using Kind = LotMovementKind;
    const QString kind = row.text(0);
    const QString text = row.text(2);
    const QString note = row.text(6);
    LotMovement line{Kind::Received, row.real(1), note, row.text(9), row.time(10)};
    const auto as = [&line](Kind of, const QString &words) {
        line.kind = of;
        line.note = words;
    };
    if (kind == "used"_L1) {
        line.kind = Kind::Used;
    } else if (kind == "discarded"_L1) {
        line.kind = Kind::Discarded;
    } else if (kind == "corrected"_L1) {
        line.kind = Kind::Corrected;
    } else if (kind == "dry"_L1) {
        as(Kind::ReceivedDry,
           row.isNull(3) ? QString() : evaluation::withUnit(evaluation::plainText(row.real(3)), u"mg"_s));
    } else if (kind == "opened"_L1) {
        as(Kind::Opened, lotDayTold(text));
    } else if (kind == "redated"_L1) {
        as(Kind::OpeningCorrected, lotLineTold(lotDayTold(text), note));
    } else if (kind == "closed"_L1) {
        as(Kind::OpeningCorrected, lotLineTold(Sentence::tr("not opened"), note));
    } else if (kind == "dissolved"_L1) {
        as(Kind::Dissolved, lotLineTold(Sentence::tr("in %1").arg(text), note));
    } else if (kind == "solvent"_L1) {
        as(Kind::GaveSolvent, text);
    } else if (kind == "divided"_L1) {
        as(Kind::Divided,
           lotLineTold(Sentence::tr("aliquots: %1, of %2 each")
                           .arg(QString::number(row.integer(3)),
                                evaluation::withUnit(evaluation::plainText(row.real(4)), u"mL"_s)),
                       note));
    } else if (kind == "filled"_L1) {
        as(Kind::Filled,
           lotLineTold(row.isNull(3)
                           ? Sentence::tr("from %1").arg(text)
                           : Sentence::tr("from %1, keeps as stored: %2 days").arg(text).arg(row.integer(3)),
                       note));
    } else if (kind == "stored"_L1) {
        as(Kind::Stored,
           lotLineTold(placeText(planning::StoragePlace{text, row.optionalReal(3), row.optionalReal(4)}),
                       note));
    } else if (kind == "noted"_L1) {
        line.kind = Kind::Noted;
    }
    return line;
}

} // namespace

std::vector<LotMovement> loadMovements(const Database &database, LotId lot)
{
    currentLotVersion(database, lot);
    Statement query(database, u"WITH own (wanted) AS (VALUES (?)) SELECT * FROM (%1) ORDER BY (SELECT "
                              u"min(id) FROM audit_record WHERE record_table = "
                              "of_table AND record_id = of_row)"_s.arg(everythingOfALot));
    query.run(lot.value);
    std::vector<LotMovement> movements;
    while (query.next())
        movements.push_back(lotLineOf(query));
    return movements;
}

} // namespace plateau::notebook
