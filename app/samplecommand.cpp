// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/samplecommand.h"

#include "app/console.h"
#include "app/outcome.h"
#include "app/samplenotebook.h"
#include "core/assay/label.h"
#include "core/exchange/moment.h"
#include "core/notebook/notebook.h"

#include <QCoreApplication>

#include <map>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct SamplecommandWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

struct SampleArguments {
    QString notebook;
    /// Absent: the few shipped runs.
    std::optional<sampledata::WantedHistory> history;
    /// What is wrong with them; empty: nothing.
    QString fault;
};

/// What is wrong with the value; empty: nothing.
QString take(const QString &option, const QString &value, sampledata::WantedHistory &history)
{
    bool isNumber = false;
    if (option == "--runs"_L1) {
        history.runs = value.toInt(&isNumber);
        if (!isNumber || history.runs < 1 || history.runs > sampledata::mostMadeRuns)
            return SamplecommandWords::tr("--runs %1 is no number of runs from 1 to %2")
                .arg(assay::quoted(value))
                .arg(sampledata::mostMadeRuns);
    } else if (option == "--seed"_L1) {
        history.seed = value.toULongLong(&isNumber);
        if (!isNumber)
            return SamplecommandWords::tr("--seed %1 is no whole number from 0 on").arg(assay::quoted(value));
    } else {
        const auto day = exchange::parseDate(value);
        if (!day || *day > QDate::currentDate() || *day < QDate(2000, 1, 1))
            return SamplecommandWords::tr("--until %1 is no day from 2000-01-01 to today, as in 2026-11-20")
                .arg(assay::quoted(value));
        history.until = *day;
    }
    return {};
}

SampleArguments sampleArguments(const QStringList &arguments)
{
    SampleArguments found;
    std::map<QString, QString> options;
    QStringList files;
    bool optionsEnded = false;
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        const QString &argument = arguments[i];
        const bool isOption = !optionsEnded && argument.startsWith(u'-');
        if (isOption && argument == "--"_L1) {
            optionsEnded = true;
        } else if (!isOption) {
            files.append(argument);
        } else if (argument != "--runs"_L1 && argument != "--seed"_L1 && argument != "--until"_L1) {
            found.fault = SamplecommandWords::tr("sample has no option %1").arg(argument);
            return found;
        } else if (i + 1 == arguments.size() || options.contains(argument)) {
            found.fault = SamplecommandWords::tr("%1 needs one value").arg(argument);
            return found;
        } else {
            options[argument] = arguments[++i];
        }
    }
    if (files.size() != 1) {
        found.fault = SamplecommandWords::tr("sample takes the name of a new file: plateau sample NOTEBOOK");
        return found;
    }
    found.notebook = files.front();
    if (options.empty())
        return found;
    if (!options.contains(u"--runs"_s)) {
        found.fault = SamplecommandWords::tr(
            "--seed and --until go with --runs: plateau sample NOTEBOOK --runs 1000 --seed 7");
        return found;
    }
    found.history.emplace();
    found.history->until = QDate::currentDate();
    for (const auto &[option, value] : options) {
        found.fault = take(option, value, *found.history);
        if (!found.fault.isEmpty())
            return found;
    }
    return found;
}

int makeHistoryNotebook(const SampleArguments &wanted)
{
    sampledata::makeSampleNotebook(wanted.notebook, sampleHouse(), *wanted.history);
    return written(
        writeOut(SamplecommandWords::tr("%1 runs of an invented laboratory; everybody in it signs with "
                                        "the passphrase %2\n")
                     .arg(wanted.history->runs)
                     .arg(sampledata::samplePassphrase())
                     .toUtf8()));
}

} // namespace

int makeSample(const QStringList &arguments)
{
    const SampleArguments wanted = sampleArguments(arguments);
    if (!wanted.fault.isEmpty())
        return wrongUse(wanted.fault);
    try {
        if (wanted.history)
            return makeHistoryNotebook(wanted);
        buildSampleNotebook(wanted.notebook);
        return Sound;
    } catch (const notebook::Failure &failure) {
        return unusableNotebook(wanted.notebook, failure);
    }
}

} // namespace plateau::app
