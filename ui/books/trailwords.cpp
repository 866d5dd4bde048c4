// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/trailwords.h"

#include "core/notebook/recordvalues.h"
#include "ui/shared/shownnumbers.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct TrailWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TrailWords)
};

/// Of an act that a newer program wrote: "lotReceived" is "lot received".
QString takenApart(const QString &action)
{
    QString text;
    for (const QChar sign : action) {
        if (sign.isUpper())
            text += u' ';
        text += sign.toLower();
    }
    return text;
}

const std::map<QString, QString> &actTexts()
{
    static const std::map<QString, QString> own{
        {u"notebookCreated"_s, TrailWords::tr("notebook made")},
        {u"schemaStep"_s, TrailWords::tr("file brought up to a newer program")},
        {u"runAdded"_s, TrailWords::tr("run put on the bench")},
        {u"runReopened"_s, TrailWords::tr("run put back on the bench")},
        {u"readingAdded"_s, TrailWords::tr("reading stored")},
        {u"readingAgain"_s, TrailWords::tr("read once more")},
        {u"dosesDone"_s, TrailWords::tr("additions ticked")},
        {u"dosesUndone"_s, TrailWords::tr("ticks taken back")},
        {u"dilutionsDone"_s, TrailWords::tr("dilutions ticked")},
        {u"dilutionsUndone"_s, TrailWords::tr("ticks of dilutions taken back")},
        {u"tubeUnspoilt"_s, TrailWords::tr("tube counts again")},
        {u"clockJumped"_s, TrailWords::tr("computer's clock was set")},
        {u"repeatWaived"_s, TrailWords::tr("done without a repeat")},
        {u"laboratorySaved"_s, TrailWords::tr("laboratory's settings saved")},
        {u"specificationsSaved"_s, TrailWords::tr("limits saved")},
        {u"passphraseRefused"_s, TrailWords::tr("wrong passphrase")},
        {u"reportChosen"_s, TrailWords::tr("reported result chosen")},
        {u"chartSettingsSaved"_s, TrailWords::tr("settings of a control chart saved")},
        {u"chartValueLeftOut"_s, TrailWords::tr("value left out of control charts")},
        {u"chartValueTakenBack"_s, TrailWords::tr("value counts in control charts again")},
        {u"readingCorrected"_s, TrailWords::tr("reading corrected")},
        {u"tubeSpoilt"_s, TrailWords::tr("tube spoilt")},
        {u"tubesAdded"_s, TrailWords::tr("tubes added")},
        {u"runAccepted"_s, TrailWords::tr("run accepted")},
        {u"runRejected"_s, TrailWords::tr("run rejected")},
        {u"sampleRegistered"_s, TrailWords::tr("sample registered")},
        {u"sampleChanged"_s, TrailWords::tr("sample changed")},
        {u"sampleWithdrawn"_s, TrailWords::tr("sample withdrawn")},
        {u"lotReceived"_s, TrailWords::tr("lot received")},
        {u"lotStored"_s, TrailWords::tr("lot put in its place")},
        {u"lotOpened"_s, TrailWords::tr("lot opened")},
        {u"lotOpeningCorrected"_s, TrailWords::tr("opening of a lot corrected")},
        {u"lotDissolved"_s, TrailWords::tr("lot dissolved")},
        {u"lotDivided"_s, TrailWords::tr("lot divided into aliquots")},
        {u"lotUsed"_s, TrailWords::tr("taken from a lot")},
        {u"lotNoted"_s, TrailWords::tr("note on a lot")},
        {u"lotCorrected"_s, TrailWords::tr("amount of a lot corrected")},
        {u"lotChanged"_s, TrailWords::tr("label of a lot changed")},
        {u"lotDiscarded"_s, TrailWords::tr("lot discarded")},
        {u"substanceAdded"_s, TrailWords::tr("substance added")},
        {u"substanceChanged"_s, TrailWords::tr("substance changed")},
        {u"standardPrepared"_s, TrailWords::tr("standard prepared")},
        {u"standardDiscarded"_s, TrailWords::tr("standard discarded")},
        {u"equipmentAdded"_s, TrailWords::tr("equipment added")},
        {u"equipmentChanged"_s, TrailWords::tr("equipment changed")},
        {u"equipmentChecked"_s, TrailWords::tr("equipment checked")},
        {u"equipmentCheckWithdrawn"_s, TrailWords::tr("check of equipment taken back")},
        {u"methodSaved"_s, TrailWords::tr("method saved")},
        {u"methodImported"_s, TrailWords::tr("method imported")},
        {u"methodRetired"_s, TrailWords::tr("method out of use")},
        {u"methodReinstated"_s, TrailWords::tr("method in use again")},
        {u"personAdded"_s, TrailWords::tr("person added")},
        {u"personChanged"_s, TrailWords::tr("person changed")},
        {u"personRetired"_s, TrailWords::tr("person out of use")},
        {u"personReinstated"_s, TrailWords::tr("person in use again")},
        {u"passphraseChanged"_s, TrailWords::tr("passphrase changed")},
    };
    return own;
}

} // namespace

QString actText(const QString &action)
{
    const auto found = actTexts().find(action);
    return found == actTexts().end() ? takenApart(action) : found->second;
}

bool hasActText(const QString &action)
{
    return actTexts().contains(action);
}

QString detailsText(const notebook::AuditEntry &entry)
{
    static const QRegularExpression step(u"^schema (\\d+):"_s);
    if (entry.action == "notebookCreated"_L1)
        return {};
    if (entry.action == "schemaStep"_L1) {
        const QRegularExpressionMatch found = step.match(entry.details);
        return found.hasMatch() ? TrailWords::tr("form %1 of the file").arg(found.captured(1)) : QString();
    }
    if (entry.action == "reportChosen"_L1) { // ends with the rule, as the file has it
        const qsizetype end = entry.details.lastIndexOf(u' ') + 1;
        const QString rule = entry.details.mid(end);
        return entry.details.left(end) + notebook::valueWord(u"rule"_s, rule).value_or(rule);
    }
    return shownNumbers(entry.details);
}

QString valueText(const notebook::AuditValue &value)
{
    const QString text = value.isNumber ? shownNumber(value.value) : shownNumbers(value.value);
    return value.field.isEmpty() ? text : TrailWords::tr("%1: %2").arg(shownNumbers(value.field), text);
}

} // namespace plateau::ui
