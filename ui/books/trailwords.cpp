// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/trailwords.h"

#include <QCoreApplication>

#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TrailWords)
};

/// "lotReceived" is "lot received".
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

} // namespace

QString actText(const QString &action)
{
    static const std::map<QString, QString> own{
        {u"notebookCreated"_s, Words::tr("notebook made")},
        {u"schemaStep"_s, Words::tr("file brought up to a newer program")},
        {u"runAdded"_s, Words::tr("run put on the bench")},
        {u"runReopened"_s, Words::tr("run put back on the bench")},
        {u"readingAdded"_s, Words::tr("reading stored")},
        {u"readingAgain"_s, Words::tr("read once more")},
        {u"dosesDone"_s, Words::tr("additions ticked")},
        {u"dosesUndone"_s, Words::tr("ticks taken back")},
        {u"tubeUnspoilt"_s, Words::tr("tube counts again")},
        {u"clockJumped"_s, Words::tr("computer's clock was set")},
        {u"repeatWaived"_s, Words::tr("done without a repeat")},
        {u"laboratorySaved"_s, Words::tr("laboratory's settings saved")},
        {u"specificationsSaved"_s, Words::tr("limits saved")},
        {u"passphraseRefused"_s, Words::tr("wrong passphrase")},
        {u"reportChosen"_s, Words::tr("reported result chosen")},
        {u"chartSettingsSaved"_s, Words::tr("settings of a control chart saved")},
        {u"chartValueLeftOut"_s, Words::tr("value left out of control charts")},
        {u"chartValueTakenBack"_s, Words::tr("value counts in control charts again")},
    };
    const auto found = own.find(action);
    return found == own.end() ? takenApart(action) : found->second;
}

} // namespace plateau::ui
