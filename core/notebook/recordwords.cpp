// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/recordwords.h"

#include "core/notebook/sentence.h"

#include <map>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString wordIn(const std::map<QString, QString> &words, QString name)
{
    const auto found = words.find(name);
    return found == words.end() ? name.replace(u'_', u' ') : found->second;
}

} // namespace

QString recordWord(const QString &table)
{
    static const std::map<QString, QString> words{
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
        {u"lot_dry_disposal"_s, Sentence::tr("dry substance thrown away")},
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
        {u"preparation_disposal"_s, Sentence::tr("standard thrown away")},
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
    return wordIn(words, table);
}

QString fieldWord(const QString &column)
{
    static const std::map<QString, QString> words{
        {u"absorbance"_s, Sentence::tr("absorbance")},
        {u"age_h"_s, Sentence::tr("age (h)")},
        {u"amount"_s, Sentence::tr("amount")},
        {u"certificate"_s, Sentence::tr("certificate")},
        {u"component"_s, Sentence::tr("component")},
        {u"concentration_g_per_L"_s, Sentence::tr("concentration (g/L)")},
        {u"day"_s, Sentence::tr("day")},
        {u"dissolved_days"_s, Sentence::tr("keeps dissolved (days)")},
        {u"every_days"_s, Sentence::tr("interval (days)")},
        {u"expires"_s, Sentence::tr("last good day")},
        {u"extract_mL"_s, Sentence::tr("extract (mL)")},
        {u"flask_mL"_s, Sentence::tr("flask (mL)")},
        {u"form"_s, Sentence::tr("form")},
        {u"highest_C"_s, Sentence::tr("highest (°C)")},
        {u"in_use"_s, Sentence::tr("in use (1: yes)")},
        {u"input"_s, Sentence::tr("uncertainty of")},
        {u"is_usual"_s, Sentence::tr("only the usual value (1: yes)")},
        {u"interval_s"_s, Sentence::tr("start interval (s)")},
        {u"keeps_days"_s, Sentence::tr("keeps (days)")},
        {u"keeps_opened_days"_s, Sentence::tr("keeps opened (days)")},
        {u"kind"_s, Sentence::tr("kind")},
        {u"loss_per_hour"_s, Sentence::tr("loss per hour")},
        {u"lot"_s, Sentence::tr("lot")},
        {u"lowest_C"_s, Sentence::tr("lowest (°C)")},
        {u"make_up_to_mL"_s, Sentence::tr("made up to (mL)")},
        {u"mass_g"_s, Sentence::tr("mass (g)")},
        {u"mass_mg"_s, Sentence::tr("mass (mg)")},
        {u"matrix"_s, Sentence::tr("matrix")},
        {u"molar_mass"_s, Sentence::tr("molar mass")},
        {u"name"_s, Sentence::tr("name")},
        {u"nominal_mL"_s, Sentence::tr("nominal volume (mL)")},
        {u"number"_s, Sentence::tr("number")},
        {u"owner"_s, Sentence::tr("who answers for it")},
        {u"pipette"_s, Sentence::tr("pipette")},
        {u"place"_s, Sentence::tr("place")},
        {u"planned_mL"_s, Sentence::tr("planned (mL)")},
        {u"position"_s, Sentence::tr("place in the order, from 0")},
        {u"product"_s, Sentence::tr("product")},
        {u"purity"_s, Sentence::tr("purity")},
        {u"rack_columns"_s, Sentence::tr("columns of the rack")},
        {u"rack_rows"_s, Sentence::tr("rows of the rack")},
        {u"reagent"_s, Sentence::tr("reagent")},
        {u"received_from"_s, Sentence::tr("received from")},
        {u"received_utc"_s, Sentence::tr("received (UTC)")},
        {u"role"_s, Sentence::tr("role")},
        {u"sample_volume_mL"_s, Sentence::tr("sample volume (mL)")},
        {u"smallest_mL"_s, Sentence::tr("smallest volume (mL)")},
        {u"source"_s, Sentence::tr("source")},
        {u"started_utc"_s, Sentence::tr("begun (UTC)")},
        {u"supplier"_s, Sentence::tr("supplier")},
        {u"take_mL"_s, Sentence::tr("taken (mL)")},
        {u"title"_s, Sentence::tr("title")},
        {u"typed"_s, Sentence::tr("as typed")},
        {u"used_utc"_s, Sentence::tr("used (UTC)")},
        {u"prepared_utc"_s, Sentence::tr("prepared (UTC)")},
        {u"volume_mL"_s, Sentence::tr("volume (mL)")},
        {u"wavelength_nm"_s, Sentence::tr("wavelength (nm)")},
        {u"path_length_mm"_s, Sentence::tr("path length (mm)")},
    };
    return wordIn(words, column);
}

} // namespace plateau::notebook
