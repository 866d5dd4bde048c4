// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodplaces.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct MethodplaceWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodPlaces)
};

const std::map<QString, QString> &fieldWords()
{
    static const std::map<QString, QString> words{
        {u"id"_s, MethodplaceWords::tr("id")},
        {u"name"_s, MethodplaceWords::tr("name")},
        {u"source"_s, MethodplaceWords::tr("source")},
        {u"principle"_s, MethodplaceWords::tr("principle")},
        {u"chromophore"_s, MethodplaceWords::tr("chromophore")},
        {u"absorptivity_L_per_mol_cm"_s, MethodplaceWords::tr("absorptivity")},
        {u"wavelength_nm"_s, MethodplaceWords::tr("wavelength")},
        {u"pathLength_mm"_s, MethodplaceWords::tr("path length")},
        {u"components"_s, MethodplaceWords::tr("components")},
        {u"volume_mL"_s, MethodplaceWords::tr("volume")},
        {u"range_mL"_s, MethodplaceWords::tr("allowed volumes")},
        {u"sample"_s, MethodplaceWords::tr("sample")},
        {u"diluent"_s, MethodplaceWords::tr("diluent")},
        {u"starter"_s, MethodplaceWords::tr("starter")},
        {u"steps"_s, MethodplaceWords::tr("steps")},
        {u"wait_min"_s, MethodplaceWords::tr("time")},
        {u"temperature_C"_s, MethodplaceWords::tr("temperature")},
        {u"measurands"_s, MethodplaceWords::tr("measurands")},
        {u"molarMass_g_per_mol"_s, MethodplaceWords::tr("molar mass")},
        {u"chromophorePerMolecule"_s, MethodplaceWords::tr("chromophore per molecule")},
        {u"typicalRange_g_per_L"_s, MethodplaceWords::tr("usual concentrations")},
        {u"signal"_s, MethodplaceWords::tr("signal")},
        {u"from"_s, MethodplaceWords::tr("from reading")},
        {u"to"_s, MethodplaceWords::tr("to reading")},
        {u"base"_s, MethodplaceWords::tr("from reading")},
        {u"middle"_s, MethodplaceWords::tr("middle reading")},
        {u"final"_s, MethodplaceWords::tr("to reading")},
        {u"derived"_s, MethodplaceWords::tr("quantities that come from others")},
        {u"measurand"_s, MethodplaceWords::tr("measurand")},
        {u"method"_s, MethodplaceWords::tr("method")},
        {u"factor"_s, MethodplaceWords::tr("times")},
        {u"window"_s, MethodplaceWords::tr("measuring window")},
        {u"minSignal"_s, MethodplaceWords::tr("smallest net signal")},
        {u"maxSignal"_s, MethodplaceWords::tr("largest net signal")},
        {u"maxAbsorbance"_s, MethodplaceWords::tr("largest absorbance")},
        {u"reserveAbsorbance"_s, MethodplaceWords::tr("absorbance that must remain")},
        {u"acceptance"_s, MethodplaceWords::tr("what a run has to keep")},
        {u"maxBlankSignal"_s, MethodplaceWords::tr("largest signal of a blank")},
        {u"standardRecovery_percent"_s, MethodplaceWords::tr("recovery of the standard")},
        {u"spikeRecovery_percent"_s, MethodplaceWords::tr("recovery of a spike")},
        {u"repeatability"_s, MethodplaceWords::tr("duplicates")},
        {u"constant_g_per_L"_s, MethodplaceWords::tr("differ by at most")},
        {u"proportional"_s, MethodplaceWords::tr("share of the mean")},
        {u"standard"_s, MethodplaceWords::tr("usual standard")},
        {u"concentration_g_per_L"_s, MethodplaceWords::tr("concentration")},
        {u"lossPerHour"_s, MethodplaceWords::tr("loss per hour")},
        {u"tubes"_s, MethodplaceWords::tr("tubes of a rack")},
        {u"blanks"_s, MethodplaceWords::tr("blanks")},
        {u"replicates"_s, MethodplaceWords::tr("of each sample")},
        {u"standards"_s, MethodplaceWords::tr("standards")},
        {u"extrapolate"_s, MethodplaceWords::tr("reading taken as a series")},
        {u"reading"_s, MethodplaceWords::tr("reading")},
        {u"lastReadings"_s, MethodplaceWords::tr("readings on the line")},
    };
    return words;
}

/// Said already by the element or the sentence itself.
bool isSilent(const QString &token)
{
    return token == "add"_L1 || token == "read"_L1 || token == "terms"_L1;
}

QString cell(const std::vector<CellRow> &rows, int row, int column)
{
    const bool there = row >= 0 && row < static_cast<int>(rows.size());
    return there ? rows[static_cast<std::size_t>(row)].cells[static_cast<std::size_t>(column)].trimmed()
                 : QString();
}

QString named(const QString &what, const QString &name, int row)
{
    return u"%1 %2"_s.arg(what, name.isEmpty() ? QString::number(row + 1) : name);
}

QString derivedName(const MethodDraft &draft, int quantity)
{
    const MethodField field = fieldOf(u"/derived/%1"_s.arg(quantity), draft);
    return cell(draft.derived, field.row, derived::Name);
}

/// "components", "2" is one thing: the third component. Empty if it is none.
QString elementWords(const QString &list, int row, const MethodDraft &draft)
{
    if (list == "components"_L1)
        return named(MethodplaceWords::tr("component"), cell(draft.components, row, component::Name), row);
    if (list == "measurands"_L1)
        return named(MethodplaceWords::tr("measurand"), cell(draft.measurands, row, measurand::Name), row);
    if (list == "steps"_L1)
        return MethodplaceWords::tr("step %1").arg(row + 1);
    if (list == "derived"_L1)
        return derivedName(draft, row);
    if (list == "terms"_L1)
        return MethodplaceWords::tr("part %1").arg(row + 1);
    if (list == "cautions"_L1)
        return MethodplaceWords::tr("caution %1").arg(row + 1);
    if (list == "reactions"_L1)
        return MethodplaceWords::tr("reaction %1").arg(row + 1);
    if (list == "interferences"_L1)
        return MethodplaceWords::tr("what interferes, line %1").arg(row + 1);
    if (list == "samplePreparation"_L1)
        return MethodplaceWords::tr("preparation of the sample");
    return row == 0 ? MethodplaceWords::tr("from") : MethodplaceWords::tr("to"); // the ends of an interval
}

} // namespace

QString methodSentenceWords(QString sentence)
{
    for (const QString &key : {u"minSignal"_s, u"maxSignal"_s, u"maxAbsorbance"_s, u"reserveAbsorbance"_s})
        sentence.replace(key, MethodplaceWords::tr("the %1").arg(fieldWords().at(key)));
    return sentence;
}

QString methodPlaceWords(const QString &pointer, const MethodDraft &draft)
{
    const QStringList tokens = pointer.split(u'/', Qt::SkipEmptyParts);
    QStringList parts;
    for (qsizetype i = 0; i < tokens.size(); ++i) {
        bool numbered = false;
        const int row = i + 1 < tokens.size() ? tokens[i + 1].toInt(&numbered) : -1;
        const auto word = fieldWords().find(tokens[i]);
        if (tokens[i] == "absorptivity_L_per_mol_cm"_L1 && i + 1 < tokens.size()) {
            parts << MethodplaceWords::tr("absorptivity at %1 nm").arg(tokens[++i]);
        } else if (numbered) {
            const bool interval = tokens[i].endsWith("_mL"_L1) || tokens[i].endsWith("_C"_L1) ||
                                  tokens[i].endsWith("_min"_L1) || tokens[i].endsWith("_L"_L1) ||
                                  tokens[i].endsWith("_percent"_L1);
            if (interval && word != fieldWords().end())
                parts << word->second;
            parts << elementWords(tokens[i], row, draft);
            ++i;
        } else if (!isSilent(tokens[i])) {
            parts << (word == fieldWords().end() ? tokens[i] : word->second);
        }
    }
    return parts.join(u", "_s);
}

} // namespace plateau::ui
