// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/printcommands.h"

#include "app/methodsource.h"
#include "app/outcome.h"
#include "app/printarguments.h"
#include "app/runfile.h"
#include "core/notebook/notebook.h"
#include "ui/bench/lotsonpaper.h"
#include "ui/print/pdf.h"
#include "ui/print/worksheetpdf.h"

#include <QCoreApplication>

#include <utility>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct PrintcommandsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

struct Source {
    exchange::RunDocument document;
    /// Of the notebook, where one is named.
    std::optional<planning::Laboratory> laboratory;
    std::vector<planning::Lot> lots{};
};

/// Nothing after standard error said why.
std::optional<Source> sourceOf(const PrintArguments &given)
{
    try {
        const exchange::MethodLookup methods = methodsIn(given.notebook);
        auto document = readRunFile(given.run, methods);
        if (!document)
            return std::nullopt;
        Source source{std::move(*document), std::nullopt};
        if (!given.notebook.isEmpty()) {
            const auto book = notebook::Notebook::open(given.notebook, notebook::Access::ReadOnly);
            source.laboratory = book->laboratory();
            source.lots = std::as_const(*book).lots().inHand();
        }
        return source;
    } catch (const notebook::Failure &failure) {
        unusableNotebook(given.notebook, failure);
        return std::nullopt;
    }
}

int saved(const QString &path, const QByteArray &pdf)
{
    const QString fault = ui::savePdf(path, pdf);
    return fault.isEmpty() ? Sound : wrongUse(fault);
}

} // namespace

int printWorksheet(const QStringList &arguments)
{
    const PrintArguments given = printArguments(u"worksheet"_s, arguments);
    if (!given.fault.isEmpty())
        return wrongUse(given.fault);
    const auto source = sourceOf(given);
    if (!source)
        return Unusable;
    const planning::Laboratory laboratory = source->laboratory.value_or(planning::usualLaboratory());
    ui::WorksheetContent content =
        ui::worksheetOf(source->document.method, source->document.run, laboratory.glassware);
    content.person = given.person;
    if (source->laboratory) {
        content.laboratory = laboratory.name;
        content.rackColumns = laboratory.rackColumns;
        content.lotsByRound = ui::lotsOnPaper({content.method, content.run, content.rounds, {}}, source->lots,
                                              QDateTime::currentDateTime());
    }
    return saved(given.pdf, ui::worksheetPdf(content, given.paper));
}

int printLabels(const QStringList &arguments)
{
    const PrintArguments given = printArguments(u"labels"_s, arguments);
    if (!given.fault.isEmpty())
        return wrongUse(given.fault);
    const auto source = sourceOf(given);
    if (!source)
        return Unusable;
    const std::vector<ui::Label> labels = ui::labelsOf(source->document.run, given.person);
    if (labels.empty())
        return wrongUse(
            PrintcommandsWords::tr(
                "%1 has neither a standard nor a sample that is diluted or extracted, so there is "
                "nothing to label; no file was written")
                .arg(given.run));
    return saved(given.pdf, ui::labelsPdf(labels, given.sheet, given.firstFree));
}

} // namespace plateau::app
