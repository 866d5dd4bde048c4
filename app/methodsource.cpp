// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/methodsource.h"

#include "app/runfile.h"
#include "core/assay/label.h"
#include "core/notebook/methodcatalogue.h"
#include "core/notebook/notebook.h"

#include <QCoreApplication>

namespace plateau::app {

namespace {

struct MethodsourceWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

exchange::MethodLookup shippedMethods()
{
    return [shipped = installedMethods().lookup()](const QString &id) {
        exchange::NamedMethod named = shipped(id);
        if (named.method)
            return named;
        return exchange::NamedMethod::none(
            MethodsourceWords::tr(
                "no method %1 is shipped; correct the id, put the whole method here in place of it, or "
                "name the notebook that holds it: --notebook FILE")
                .arg(assay::quoted(id)));
    };
}

} // namespace

exchange::MethodLookup methodsIn(const QString &notebookPath)
{
    if (notebookPath.isEmpty())
        return shippedMethods();
    const auto opened = notebook::Notebook::open(notebookPath, notebook::Access::ReadOnly);
    return notebook::lookupIn(notebook::catalogueOf(opened->methods(), installedMethods().methods()));
}

} // namespace plateau::app
