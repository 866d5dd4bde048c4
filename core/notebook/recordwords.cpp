// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/recordwords.h"

#include "core/notebook/sentence.h"

#include <QStringList>

#include <map>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

using WordsByName = std::map<QString, QString>;

QString wordIn(const WordsByName &words, QString name)
{
    const auto found = words.find(name);
    return found == words.end() ? name.replace(u'_', u' ') : found->second;
}

const WordsByName &wordsOfRecords()
{
    static const WordsByName words{
        {u"chart_omission"_s, Sentence::tr("value left out of control charts")},
        {u"chart_setting"_s, Sentence::tr("settings of a control chart")},
        {u"clock_jump"_s, Sentence::tr("clock that was set")},
        {u"clock_jump_run"_s, Sentence::tr("rack on the bench when a clock was set")},
        {u"decision"_s, Sentence::tr("decision")},
        {u"decision_basis"_s, Sentence::tr("settings and limits of a decision")},
        {u"decision_companion"_s, Sentence::tr("other run that a decision rests on")},
        {u"decision_sample"_s, Sentence::tr("decision of a sample")},
        {u"decision_signature"_s, Sentence::tr("signature")},
        {u"decision_step"_s, Sentence::tr("dilution advised for a repeat")},
        {u"dilution"_s, Sentence::tr("dilution step")},
        {u"dilution_mark"_s, Sentence::tr("mark of a dilution")},
        {u"dilution_uncertainty"_s, Sentence::tr("uncertainty of a dilution step")},
        {u"equipment_check"_s, Sentence::tr("check of equipment")},
        {u"equipment_condition"_s, Sentence::tr("condition of a check")},
        {u"equipment_duty"_s, Sentence::tr("what is checked, and how often")},
        {u"equipment_extent"_s, Sentence::tr("number of values of a check")},
        {u"equipment_item"_s, Sentence::tr("equipment")},
        {u"equipment_value"_s, Sentence::tr("value of a check")},
        {u"equipment_version"_s, Sentence::tr("particulars of equipment")},
        {u"equipment_withdrawal"_s, Sentence::tr("check that was taken back")},
        {u"laboratory"_s, Sentence::tr("settings of the laboratory")},
        {u"lot"_s, Sentence::tr("container")},
        {u"lot_aliquot"_s, Sentence::tr("aliquot")},
        {u"lot_dissolving"_s, Sentence::tr("dissolving of a container")},
        {u"lot_division"_s, Sentence::tr("division into aliquots")},
        {u"lot_dry"_s, Sentence::tr("dry substance in a container")},
        {u"lot_dry_disposal"_s, Sentence::tr("dry substance discarded")},
        {u"lot_keeping"_s, Sentence::tr("how long a container keeps")},
        {u"lot_movement"_s, Sentence::tr("volume in or out of a container")},
        {u"lot_note"_s, Sentence::tr("note on a container")},
        {u"lot_opening"_s, Sentence::tr("opening of a container")},
        {u"lot_opening_change"_s, Sentence::tr("correction of when a container was opened")},
        {u"lot_place"_s, Sentence::tr("place of a container")},
        {u"lot_use"_s, Sentence::tr("lot of the run")},
        {u"lot_version"_s, Sentence::tr("label of a container")},
        {u"method"_s, Sentence::tr("method")},
        {u"method_act"_s, Sentence::tr("what was done with a method")},
        {u"person"_s, Sentence::tr("person")},
        {u"person_passphrase"_s, Sentence::tr("passphrase of a person")},
        {u"person_standing"_s, Sentence::tr("whether a person signs")},
        {u"person_version"_s, Sentence::tr("name and role of a person")},
        {u"pipetting_mark"_s, Sentence::tr("mark at the bench")},
        {u"plan"_s, Sentence::tr("plan of the rack")},
        {u"plan_owner"_s, Sentence::tr("owner of an uncertainty")},
        {u"plan_sample"_s, Sentence::tr("planned sample")},
        {u"plan_step"_s, Sentence::tr("glassware of a dilution step")},
        {u"preparation"_s, Sentence::tr("standard as prepared")},
        {u"preparation_disposal"_s, Sentence::tr("standard discarded")},
        {u"preparation_portion"_s, Sentence::tr("weighing")},
        {u"reading"_s, Sentence::tr("reading")},
        {u"reading_origin"_s, Sentence::tr("where a reading came from")},
        {u"reopening"_s, Sentence::tr("run put back on the bench")},
        {u"reopening_signature"_s, Sentence::tr("signature")},
        {u"repeat_waiver"_s, Sentence::tr("repeat that was waived")},
        {u"report_choice"_s, Sentence::tr("result chosen for the report")},
        {u"run"_s, Sentence::tr("run")},
        {u"sample"_s, Sentence::tr("sample")},
        {u"sample_detail"_s, Sentence::tr("particulars of a sample")},
        {u"sample_expected"_s, Sentence::tr("what is expected of a sample")},
        {u"sample_repeat"_s, Sentence::tr("repeat in the rack")},
        {u"shelf_sample"_s, Sentence::tr("registered sample")},
        {u"shelf_version"_s, Sentence::tr("registration of a sample")},
        {u"shelf_withdrawal"_s, Sentence::tr("sample withdrawn")},
        {u"specifications"_s, Sentence::tr("limits of products")},
        {u"standard"_s, Sentence::tr("standard")},
        {u"standard_uncertainty"_s, Sentence::tr("uncertainty of a standard")},
        {u"substance"_s, Sentence::tr("substance")},
        {u"substance_version"_s, Sentence::tr("particulars of a substance")},
        {u"tube"_s, Sentence::tr("tube")},
        {u"tube_addition"_s, Sentence::tr("tubes added to the rack")},
        {u"tube_time"_s, Sentence::tr("time of a tube")},
        {u"uncertainty"_s, Sentence::tr("uncertainties of the run")},
        {u"wrong_passphrase"_s, Sentence::tr("wrong passphrase")},
    };
    return words;
}

/// Of the columns of the tables, and of the fields of the documents that the notebook keeps whole.
const WordsByName &wordsOfFields()
{
    static const WordsByName words{
        {u"absorbance"_s, Sentence::tr("absorbance")},
        {u"absorptivity_percent"_s, Sentence::tr("absorptivity (%)")},
        {u"acceptable"_s, Sentence::tr("nothing speaks against it")},
        {u"addition_s"_s, Sentence::tr("time for an addition (s)")},
        {u"address"_s, Sentence::tr("address")},
        {u"age_h"_s, Sentence::tr("age (h)")},
        {u"aliquots"_s, Sentence::tr("aliquots")},
        {u"amount"_s, Sentence::tr("amount")},
        {u"analyte_molar_mass"_s, Sentence::tr("molar mass of the analyte (g/mol)")},
        {u"analyte_per_molecule"_s, Sentence::tr("analyte molecules per molecule")},
        {u"aspect"_s, Sentence::tr("what was checked")},
        {u"at_min"_s, Sentence::tr("time (min)")},
        {u"base64"_s, Sentence::tr("picture")},
        {u"calibration"_s, Sentence::tr("calibration")},
        {u"centre"_s, Sentence::tr("centre line")},
        {u"certificate"_s, Sentence::tr("certificate")},
        {u"change_mL"_s, Sentence::tr("change (mL)")},
        {u"checkedOn"_s, Sentence::tr("checked on")},
        {u"column_count"_s, Sentence::tr("columns")},
        {u"column_place"_s, Sentence::tr("column")},
        {u"component"_s, Sentence::tr("component")},
        {u"concentration_g_per_L"_s, Sentence::tr("concentration (g/L)")},
        {u"constants"_s, Sentence::tr("constants of the chart")},
        {u"contact"_s, Sentence::tr("contact")},
        {u"corrects"_s, Sentence::tr("corrects")},
        {u"created_utc"_s, Sentence::tr("put on the bench")},
        {u"date"_s, Sentence::tr("date")},
        {u"day"_s, Sentence::tr("day")},
        {u"decision"_s, Sentence::tr("decision")},
        {u"decision_sample"_s, Sentence::tr("decision of a sample")},
        {u"density"_s, Sentence::tr("density (g/mL)")},
        {u"detail"_s, Sentence::tr("sample")},
        {u"deviation"_s, Sentence::tr("standard deviation")},
        {u"dilution"_s, Sentence::tr("dilution step")},
        {u"dilution_percent"_s, Sentence::tr("dilution step (%)")},
        {u"dissolved_days"_s, Sentence::tr("keeps dissolved (days)")},
        {u"division"_s, Sentence::tr("division into aliquots")},
        {u"earlier_values"_s, Sentence::tr("values of earlier runs")},
        {u"every_days"_s, Sentence::tr("interval (days)")},
        {u"expires"_s, Sentence::tr("use-by date")},
        {u"extract_mL"_s, Sentence::tr("extract (mL)")},
        {u"extract_percent"_s, Sentence::tr("extract (%)")},
        {u"file_name"_s, Sentence::tr("file")},
        {u"first_run"_s, Sentence::tr("beginning with")},
        {u"flask"_s, Sentence::tr("flask")},
        {u"flask_mL"_s, Sentence::tr("flask (mL)")},
        {u"flask_u_mL"_s, Sentence::tr("uncertainty of the flask (mL)")},
        {u"form"_s, Sentence::tr("form")},
        {u"guard"_s, Sentence::tr("guard band")},
        {u"h"_s, Sentence::tr("decision limit h")},
        {u"highest_C"_s, Sentence::tr("highest (°C)")},
        {u"in_use"_s, Sentence::tr("in use")},
        {u"input"_s, Sentence::tr("uncertainty of")},
        {u"interval_s"_s, Sentence::tr("start interval (s)")},
        {u"is_left_out"_s, Sentence::tr("left out")},
        {u"is_usual"_s, Sentence::tr("only the usual value")},
        {u"item"_s, Sentence::tr("equipment")},
        {u"jump"_s, Sentence::tr("clock that was set")},
        {u"k"_s, Sentence::tr("reference value k")},
        {u"keeps_days"_s, Sentence::tr("keeps (days)")},
        {u"keeps_opened_days"_s, Sentence::tr("keeps opened (days)")},
        {u"kind"_s, Sentence::tr("kind")},
        {u"laboratory"_s, Sentence::tr("settings of the laboratory")},
        {u"lambda"_s, Sentence::tr("weight of the newest value")},
        {u"largest_mL"_s, Sentence::tr("largest volume (mL)")},
        {u"line"_s, Sentence::tr("line of the photometer")},
        {u"logo"_s, Sentence::tr("logo")},
        {u"loss_per_hour"_s, Sentence::tr("loss per hour (%)")},
        {u"lot"_s, Sentence::tr("lot")},
        {u"lot_version"_s, Sentence::tr("lot")},
        {u"lower"_s, Sentence::tr("lower limit")},
        {u"lowest_C"_s, Sentence::tr("lowest (°C)")},
        {u"made_utc"_s, Sentence::tr("prepared")},
        {u"make_up_to_mL"_s, Sentence::tr("made up to (mL)")},
        {u"mark"_s, Sentence::tr("mark at the bench")},
        {u"mass_g"_s, Sentence::tr("mass (g)")},
        {u"mass_mg"_s, Sentence::tr("mass (mg)")},
        {u"mass_u_mg"_s, Sentence::tr("uncertainty of the weighing (mg)")},
        {u"matrix"_s, Sentence::tr("matrix")},
        {u"measurand"_s, Sentence::tr("measurand")},
        {u"method"_s, Sentence::tr("method")},
        {u"method_id"_s, Sentence::tr("method")},
        {u"mix_s"_s, Sentence::tr("time to mix (s)")},
        {u"molar_mass"_s, Sentence::tr("molar mass")},
        {u"name"_s, Sentence::tr("name")},
        {u"named"_s, Sentence::tr("result of")},
        {u"named_sample"_s, Sentence::tr("sample")},
        {u"nominal_mL"_s, Sentence::tr("nominal volume (mL)")},
        {u"number"_s, Sentence::tr("number")},
        {u"of_check"_s, Sentence::tr("check")},
        {u"overage_percent"_s, Sentence::tr("reagent beyond the need (%)")},
        {u"owner"_s, Sentence::tr("who answers for it")},
        {u"passed"_s, Sentence::tr("passed")},
        {u"path_length_mm"_s, Sentence::tr("path length (mm)")},
        {u"path_length_percent"_s, Sentence::tr("path length (%)")},
        {u"pathLength_percent"_s, Sentence::tr("path length (%)")},
        {u"percent"_s, Sentence::tr("uncertainty (%)")},
        {u"person_version"_s, Sentence::tr("signed by")},
        {u"photometer"_s, Sentence::tr("photometer")},
        {u"pipette"_s, Sentence::tr("pipette")},
        {u"place"_s, Sentence::tr("place")},
        {u"plan"_s, Sentence::tr("plan")},
        {u"planned_mL"_s, Sentence::tr("planned (mL)")},
        {u"points"_s, Sentence::tr("readings of the series")},
        {u"position"_s, Sentence::tr("place in the order")},
        {u"preparation"_s, Sentence::tr("standard")},
        {u"prepared_utc"_s, Sentence::tr("prepared")},
        {u"product"_s, Sentence::tr("product")},
        {u"program_version"_s, Sentence::tr("program")},
        {u"purity"_s, Sentence::tr("purity (%)")},
        {u"purity_half_width"_s, Sentence::tr("purity, plus or minus (%)")},
        {u"quantity"_s, Sentence::tr("what is watched")},
        {u"rack_columns"_s, Sentence::tr("columns of the rack")},
        {u"rack_rows"_s, Sentence::tr("rows of the rack")},
        {u"rackColumns"_s, Sentence::tr("columns of the rack")},
        {u"rackRows"_s, Sentence::tr("rows of the rack")},
        {u"reading"_s, Sentence::tr("reading")},
        {u"reading_s"_s, Sentence::tr("time for a reading (s)")},
        {u"reagent"_s, Sentence::tr("reagent")},
        {u"received_from"_s, Sentence::tr("received from")},
        {u"received_utc"_s, Sentence::tr("received")},
        {u"reopening"_s, Sentence::tr("put back on the bench")},
        {u"repeats"_s, Sentence::tr("repeat of")},
        {u"reviewerDecides"_s, Sentence::tr("only a reviewer decides")},
        {u"role"_s, Sentence::tr("role")},
        {u"row_count"_s, Sentence::tr("rows")},
        {u"rule"_s, Sentence::tr("rule")},
        {u"rules"_s, Sentence::tr("rules")},
        {u"run"_s, Sentence::tr("run")},
        {u"sample"_s, Sentence::tr("sample")},
        {u"sample_volume_mL"_s, Sentence::tr("sample volume (mL)")},
        {u"sample_volume_percent"_s, Sentence::tr("sample volume (%)")},
        {u"samples"_s, Sentence::tr("samples")},
        {u"samples_before"_s, Sentence::tr("samples before")},
        {u"sampleVolume_percent"_s, Sentence::tr("sample volume (%)")},
        {u"secondPersonReviews"_s, Sentence::tr("somebody else than the analyst decides")},
        {u"shift_ms"_s, Sentence::tr("clock moved by (s)")},
        {u"size"_s, Sentence::tr("size")},
        {u"smallest_mL"_s, Sentence::tr("smallest volume (mL)")},
        {u"solvent"_s, Sentence::tr("solvent")},
        {u"solvent_version"_s, Sentence::tr("lot of the solvent")},
        {u"source"_s, Sentence::tr("source")},
        {u"source_day"_s, Sentence::tr("day of the source")},
        {u"specifications"_s, Sentence::tr("limits of products")},
        {u"spike"_s, Sentence::tr("spike")},
        {u"spike_standard"_s, Sentence::tr("standard of the spike")},
        {u"spike_volume_mL"_s, Sentence::tr("volume of the spike (mL)")},
        {u"spread"_s, Sentence::tr("scatter from")},
        {u"standard"_s, Sentence::tr("standard")},
        {u"started_utc"_s, Sentence::tr("started")},
        {u"step_mL"_s, Sentence::tr("step (mL)")},
        {u"subgroup"_s, Sentence::tr("values in a subgroup")},
        {u"substance"_s, Sentence::tr("substance")},
        {u"substance_version"_s, Sentence::tr("substance")},
        {u"supplier"_s, Sentence::tr("supplier")},
        {u"take_mL"_s, Sentence::tr("taken (mL)")},
        {u"title"_s, Sentence::tr("title")},
        {u"total_volume_percent"_s, Sentence::tr("total volume (%)")},
        {u"totalVolume_percent"_s, Sentence::tr("total volume (%)")},
        {u"tube"_s, Sentence::tr("tube")},
        {u"tubes"_s, Sentence::tr("tubes")},
        {u"tubes_before"_s, Sentence::tr("tubes before")},
        {u"type"_s, Sentence::tr("kind of picture")},
        {u"typed"_s, Sentence::tr("as typed")},
        {u"uncertainty_percent"_s, Sentence::tr("uncertainty (%)")},
        {u"unit"_s, Sentence::tr("unit")},
        {u"upper"_s, Sentence::tr("upper limit")},
        {u"use_by_utc"_s, Sentence::tr("use by, by its own rule")},
        {u"used_utc"_s, Sentence::tr("used")},
        {u"value"_s, Sentence::tr("value")},
        {u"version"_s, Sentence::tr("version")},
        {u"volume_mL"_s, Sentence::tr("volume (mL)")},
        {u"water"_s, Sentence::tr("moisture (%)")},
        {u"water_half_width"_s, Sentence::tr("moisture, plus or minus (%)")},
        {u"wavelength_nm"_s, Sentence::tr("wavelength (nm)")},
        {u"width"_s, Sentence::tr("width of the limits")},
    };
    return words;
}

} // namespace

QString recordWord(const QString &table)
{
    return wordIn(wordsOfRecords(), table);
}

QString fieldWord(const QString &field)
{
    return wordIn(wordsOfFields(), field);
}

bool hasRecordWord(const QString &table)
{
    return wordsOfRecords().contains(table);
}

bool hasFieldWord(const QString &field)
{
    return wordsOfFields().contains(field);
}

bool isFieldTold(const QString &column)
{
    static const QStringList left{u"id"_s,      u"person"_s,  u"at_utc"_s,       u"changed_by"_s, u"reason"_s,    u"boot_id"_s,
                                  u"boot_ms"_s, u"hash"_s,    u"content_hash"_s, u"evaluation"_s, u"content"_s,   u"note"_s,
                                  u"since_run"_s};
    return !left.contains(column) && !column.startsWith("last_"_L1) && !column.endsWith("_key"_L1) &&
           !column.endsWith("_offset_min"_L1);
}

} // namespace plateau::notebook
