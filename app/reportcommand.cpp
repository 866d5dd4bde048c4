// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/reportcommand.h"

#include "app/companions.h"
#include "app/console.h"
#include "app/methodsource.h"
#include "app/outcome.h"
#include "app/reportarguments.h"
#include "core/assay/label.h"
#include "core/notebook/notebook.h"
#include "ui/bench/reportsource.h"
#include "ui/print/pdf.h"
#include "ui/print/resultsreport.h"
#include "ui/print/runrecord.h"

#include <QCoreApplication>
#include <QLocale>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct ReportcommandWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

std::optional<ui::ReportContent> contentOfFile(const ReportArguments &given)
{
    const exchange::MethodLookup methods = methodsIn(given.notebook);
    const auto document = readRunFile(given.file, methods);
    if (!document)
        return std::nullopt;
    Companions companions(*document, methods);
    for (const QString &path : given.with) {
        if (!companions.add(path))
            return std::nullopt;
    }
    ui::ReportContent content = ui::reportOf(document->method, document->run, companions.all());
    if (!given.notebook.isEmpty())
        ui::tellLaboratory(
            content, notebook::Notebook::open(given.notebook, notebook::Access::ReadOnly)->laboratory());
    return content;
}

ui::ReportContent contentOfNotebook(const ReportArguments &given)
{
    const auto opened = notebook::Notebook::open(given.notebook, notebook::Access::ReadOnly);
    return ui::reportOf(*opened, notebook::RunId{given.run},
                        given.revision > 0 ? std::optional(given.revision) : std::nullopt);
}

/// Nothing after standard error said why.
std::optional<ui::ReportContent> contentOf(const ReportArguments &given)
{
    try {
        return given.run > 0 ? contentOfNotebook(given) : contentOfFile(given);
    } catch (const notebook::Failure &failure) {
        unusableNotebook(given.notebook, failure);
        return std::nullopt;
    }
}

/// A field for a sample that is not there would be lost without a word.
QString strangerIn(const ui::ReportContent &content, const ui::ReportFields &fields)
{
    for (const QString &sample : fields.samples()) {
        if (!run::findSample(content.run, sample))
            return ReportcommandWords::tr(
                       "there is no sample %1 in the run, but a field was given for it; no file was "
                       "written")
                .arg(assay::quoted(sample));
    }
    return {};
}

} // namespace

int writeReport(const QStringList &arguments)
{
    const ReportArguments given = reportArguments(arguments);
    if (!given.fault.isEmpty())
        return wrongUse(given.fault);
    auto content = contentOf(given);
    if (!content)
        return Unusable;
    if (const QString fault = strangerIn(*content, given.fields); !fault.isEmpty())
        return wrongUse(fault);
    content->fields = given.fields;
    ui::stampReport(*content, QDateTime::currentDateTime(), given.person, QLocale::system());
    content->decimalSign = given.decimalSign;
    if (!given.pdf.isEmpty()) {
        const QByteArray pdf = given.isRecord ? ui::runRecordPdf(*content, given.paper)
                                              : ui::resultsReportPdf(*content, given.paper);
        if (const QString fault = ui::savePdf(given.pdf, pdf); !fault.isEmpty())
            return wrongUse(fault);
    }
    if (!given.csv.isEmpty()) {
        const QString fault = ui::saveBytes(given.csv, ui::resultsCsv(*content, given.cells));
        if (!fault.isEmpty())
            return wrongUse(fault);
    }
    const bool decided = ui::stateOf(*content) == ui::ReportState::Accepted;
    return decided || content->evaluation.acceptable ? Sound : NeedsAttention;
}

} // namespace plateau::app
