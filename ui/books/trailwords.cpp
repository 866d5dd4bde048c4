// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/trailwords.h"

#include <QCoreApplication>

#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct TrailWords {
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
        {u"notebookCreated"_s, TrailWords::tr("notebook made")},
        {u"schemaStep"_s, TrailWords::tr("file brought up to a newer program")},
        {u"runAdded"_s, TrailWords::tr("run put on the bench")},
        {u"runReopened"_s, TrailWords::tr("run put back on the bench")},
        {u"readingAdded"_s, TrailWords::tr("reading stored")},
        {u"readingAgain"_s, TrailWords::tr("read once more")},
        {u"dosesDone"_s, TrailWords::tr("additions ticked")},
        {u"dosesUndone"_s, TrailWords::tr("ticks taken back")},
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
    };
    const auto found = own.find(action);
    return found == own.end() ? takenApart(action) : found->second;
}

} // namespace plateau::ui
