// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/commands.h"

#include "app/console.h"
#include "app/evaluatecommand.h"
#include "app/importcommand.h"
#include "app/keepingcommands.h"
#include "app/outcome.h"
#include "app/printcommands.h"
#include "app/reportcommand.h"
#include "app/runfile.h"
#include "app/samplecommand.h"
#include "core/notebook/notebook.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <array>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct CommandsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

int verifyNotebook(const QStringList &arguments)
{
    if (arguments.size() != 1)
        return wrongUse(CommandsWords::tr("verify takes one notebook: plateau verify NOTEBOOK"));
    const QString &path = arguments.front();
    try {
        const auto opened = notebook::Notebook::open(path, notebook::Access::ReadOnly);
        const notebook::Verification verification = opened->verify();
        QByteArray report;
        for (const notebook::Finding &finding : verification.findings)
            report += u"%1: %2\n"_s.arg(finding.place, finding.message).toUtf8();
        report += CommandsWords::tr("%1 runs, %2 decisions, %3 checks of equipment, %4 audit entries; audit "
                                    "head %5\n")
                      .arg(verification.runsChecked)
                      .arg(verification.decisionsChecked)
                      .arg(verification.equipmentChecked)
                      .arg(verification.auditEntries)
                      .arg(verification.auditHead)
                      .toUtf8();
        report += verification.sound() ? CommandsWords::tr("sound\n").toUtf8()
                                       : CommandsWords::tr("needs attention\n").toUtf8();
        const int status = written(writeOut(report));
        if (status != Sound)
            return status;
        return verification.sound() ? Sound : NeedsAttention;
    } catch (const notebook::Failure &failure) {
        return unusableNotebook(path, failure);
    }
}

struct Command {
    QLatin1StringView word;
    int (*run)(const QStringList &);
    /// Gets its arguments as given; the others take none but names.
    bool takesOptions = false;
    /// Draws, and therefore needs fonts.
    bool draws = false;
};
constexpr std::array commands{
    Command{"archive"_L1, archiveNotebook},
    Command{"backup"_L1, backUpNotebook},
    Command{"evaluate"_L1, evaluateRun, true},
    Command{"export"_L1, exportNotebook},
    Command{"import"_L1, importFiles, true},
    Command{"labels"_L1, printLabels, true, true},
    Command{"report"_L1, writeReport, true, true},
    Command{"restore"_L1, restoreNotebook},
    Command{"sample"_L1, makeSample, true},
    Command{"verify"_L1, verifyNotebook},
    Command{"worksheet"_L1, printWorksheet, true, true},
};

} // namespace

bool isCommand(const QString &word)
{
    return std::ranges::any_of(commands, [&](const Command &command) { return command.word == word; });
}

bool commandDraws(const QString &word)
{
    return std::ranges::any_of(commands,
                               [&](const Command &command) { return command.word == word && command.draws; });
}

int runCommand(const QString &command, const QStringList &arguments)
{
    const auto found =
        std::ranges::find_if(commands, [&](const Command &known) { return known.word == command; });
    if (found->takesOptions)
        return found->run(arguments);
    const auto option =
        std::ranges::find_if(arguments, [](const QString &a) { return a.startsWith(u'-') && a != "--"_L1; });
    const auto end = std::ranges::find(arguments, u"--"_s);
    if (option < end)
        return wrongUse(CommandsWords::tr("%1 has no option %2").arg(command, *option));
    QStringList operands = arguments;
    operands.removeOne(u"--"_s);
    return found->run(operands);
}

QString usage()
{
    return CommandsWords::tr(
        "Usage:\n"
        "  plateau [--notebook FILE | --demo] [FILE]  open the window, with a run or method file, or with a "
        "notebook\n"
        "      [--person NAME]                     who is at the bench\n"
        "  plateau evaluate RUN.json               evaluation of a run file, as JSON on standard output\n"
        "  plateau evaluate RUN.json RUN.json ...  a line of JSON for each: {\"run\": file, \"evaluation\": ...}\n"
        "      [--with OTHER.json] ...             and what its method derives from other runs of its "
        "samples\n"
        "      [--notebook FILE]                   with the methods of a notebook, which is only read\n"
        "  plateau import NOTEBOOK FILE ...        runs to the bench of a notebook (made if new), methods to "
        "its methods\n"
        "      [--again]                           also runs that the notebook has already\n"
        "  plateau export NOTEBOOK FOLDER          everything as JSON and CSV, with a page that says how to "
        "read "
        "it\n"
        "  plateau import NEW-NOTEBOOK FOLDER      the same notebook again of such an export\n"
        "  plateau backup NOTEBOOK [FOLDER]        a dated, checked copy; old ones go by a rule\n"
        "  plateau restore BACKUP NEW-NOTEBOOK     a notebook of a backup, which stays\n"
        "  plateau archive NOTEBOOK YEAR FILE      a notebook of everything up to the end of that year\n"
        "  plateau verify NOTEBOOK                 file integrity, audit chain, decided runs and "
        "equipment checks evaluated again\n"
        "  plateau worksheet RUN.json --pdf FILE   the pipetting worksheet, to print and to write on\n"
        "  plateau labels RUN.json --pdf FILE      labels for its standards and dilutions\n"
        "      [--sheet COLUMNSxROWS,WIDTHxHEIGHT,LEFTxTOP[,GAPxGAP]]  of labels, in mm\n"
        "      [--first N]                         the first label of the sheet that is still there\n"
        "      [--paper a4|letter] [--by NAME]     worksheet and labels: the paper, who works\n"
        "      [--notebook FILE]                   with the methods and glassware of a notebook\n"
        "  plateau report RUN.json --pdf FILE      the report of results, for the customer\n"
        "  plateau report --notebook FILE --run NUMBER --pdf FILE  of a run in a notebook, with its "
        "decision\n"
        "      [--revision NUMBER]                 as it stood when it was decided for that time\n"
        "      [--record]                          the full run record, for the file, in its place; takes no "
        "--field\n"
        "      [--csv FILE] [--exact]              the results as a table, one row each; texts that a\n"
        "                                          spreadsheet would take for formulas exactly as they are\n"
        "      [--with OTHER.json] ...             and what its method derives from other runs\n"
        "      [--field NAME=VALUE] ...            what the program cannot know: customer, order, "
        "deviations,\n"
        "                                          received/SAMPLE and others; without it a line to write "
        "on\n"
        "      [--paper a4|letter] [--letter] [--decimal point|comma] [--by NAME]\n"
        "  plateau sample NOTEBOOK                 make the sample notebook of an invented laboratory\n"
        "      [--runs N]                          so many runs over its months and years, made up\n"
        "      [--seed NUMBER] [--until DAY]       the same seed and last day give the same runs\n"
        "  plateau --version | --help\n"
        "\n"
        "--notebook FILE names the notebook; without it, the one that was chosen at the first start is "
        "used.\n"
        "A notebook that a window has open already is shown in that window.\n"
        "--demo opens a fresh copy of the sample notebook, which is thrown away at the end.\n"
        "-- ends options.\n"
        "\n"
        "Commands write English with a decimal point in every language of the desktop; only what worksheet,\n"
        "labels and report write into files has the decimal mark of the locale, for report unless --decimal\n"
        "says otherwise.\n"
        "\n"
        "Exit status: 0 everything reportable, sound or written; 1 evaluated or verified, and something "
        "needs\n"
        "attention; 2 the input could not be used: standard error names the file, the place in it (a JSON\n"
        "pointer) and what would be right, a line for each problem.\n");
}

} // namespace plateau::app
