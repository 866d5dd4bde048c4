// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/importcommand.h"

#include "app/console.h"
#include "app/keepingcommands.h"
#include "app/outcome.h"
#include "app/runfile.h"
#include "app/samplenotebook.h"
#include "core/assay/localday.h"
#include "core/exchange/documentformat.h"
#include "core/notebook/files.h"
#include "core/notebook/importfolder.h"
#include "core/notebook/methodcatalogue.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <optional>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct ImportcommandWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

struct MethodFile {
    QString path;
    assay::Method method;
};

struct RunFile {
    QString path;
    exchange::RunDocument document;
};

/// What the words behind `import` ask for.
struct Arguments {
    QString notebook;
    QStringList files;
    /// Runs that the notebook has already are stored once more.
    bool again = false;
    /// What is wrong with them; empty: nothing.
    QString fault;
};

Arguments parsed(const QStringList &words)
{
    Arguments given;
    QStringList operands;
    bool options = true;
    for (const QString &word : words) {
        if (options && word == "--"_L1)
            options = false;
        else if (options && word == "--again"_L1)
            given.again = true;
        else if (options && word.startsWith(u'-'))
            given.fault = ImportcommandWords::tr("import has no option %1").arg(word);
        else
            operands.append(word);
    }
    if (given.fault.isEmpty() && operands.size() < 2)
        given.fault =
            ImportcommandWords::tr("import takes a notebook and files of runs or methods: plateau import "
                                   "[--again] NOTEBOOK FILE ...");
    if (given.fault.isEmpty()) {
        given.notebook = operands.takeFirst();
        given.files = operands;
    }
    return given;
}

/// Everything that is to be stored, read from the files.
class Files
{
public:
    explicit Files(std::vector<notebook::StoredMethod> catalogue)
        : m_known(std::move(catalogue))
    {
    }

    /// Methods first, since runs may name them. False after a line on standard error for each problem of each
    /// file.
    bool read(const QStringList &paths)
    {
        bool usable = true;
        std::vector<std::pair<QString, QByteArray>> runFiles;
        for (const QString &path : paths) {
            const auto bytes = readInput(path);
            if (bytes && exchange::formatOf(*bytes) != exchange::methodFormat)
                runFiles.emplace_back(path, *bytes);
            else
                usable = bytes && readMethod(path, *bytes) && usable;
        }
        for (const auto &[path, bytes] : runFiles)
            usable = readRun(path, bytes) && usable;
        return usable;
    }

    const std::vector<MethodFile> &methods() const { return m_methods; }
    const std::vector<RunFile> &runs() const { return m_runs; }

private:
    bool readMethod(const QString &path, const QByteArray &bytes)
    {
        exchange::Read<assay::Method> read = exchange::readMethod(bytes);
        reportProblems(path, read.problems);
        if (!read.value)
            return false;
        notebook::addImported(m_known, *read.value, path);
        m_methods.push_back({path, *std::move(read.value)});
        return true;
    }

    bool readRun(const QString &path, const QByteArray &bytes)
    {
        exchange::Read<exchange::RunDocument> read = exchange::readRun(bytes, notebook::lookupIn(m_known));
        reportProblems(path, read.problems);
        if (read.value)
            m_runs.push_back({path, *std::move(read.value)});
        return read.value.has_value();
    }

    std::vector<notebook::StoredMethod> m_known;
    std::vector<MethodFile> m_methods;
    std::vector<RunFile> m_runs;
};

std::vector<notebook::StoredMethod> catalogueIn(const QString &path)
{
    std::vector<notebook::StoredMethod> laboratory;
    if (!notebook::isMissing(path))
        laboratory = notebook::Notebook::open(path)->methods();
    return notebook::catalogueOf(laboratory, installedMethods().methods());
}

/// Stores one file after the other, and keeps a line of what became of each.
class Storing
{
public:
    Storing(notebook::Notebook &notebook, bool again)
        : m_notebook(notebook)
        , m_again(again)
    {
    }

    /// Throws notebook::Failure; what was stored until then stays, and has its line.
    void store(const Files &files)
    {
        for (const MethodFile &file : files.methods())
            store(file);
        for (const RunFile &file : files.runs())
            store(file);
    }

    QByteArray report() const
    {
        QStringList lines = m_lines;
        if (m_runs > 0)
            lines.append(m_runs == 1 ? ImportcommandWords::tr("1 run put on the bench")
                                     : ImportcommandWords::tr("%1 runs put on the bench").arg(m_runs));
        return lines.isEmpty() ? QByteArray() : (lines.join(u'\n') + u'\n').toUtf8();
    }
    ExitStatus status() const { return m_status; }

private:
    void store(const MethodFile &file)
    {
        const notebook::MethodOutcome outcome =
            m_notebook.importMethod(file.method, file.path, currentAccount(), installedMethods().methods());
        m_lines.append(outcome.sentence);
        if (outcome.needsAttention)
            m_status = NeedsAttention;
    }

    void store(const RunFile &file)
    {
        const exchange::RunDocument &document = file.document;
        const auto same = m_again ? std::nullopt : m_notebook.findSameRun(document.run, document.method);
        if (!same) {
            m_notebook.addRun(document.run, document.method, currentAccount());
            ++m_runs;
            return;
        }
        m_status = NeedsAttention;
        m_lines.append(ImportcommandWords::tr(
                           "%1 was not stored: it is run %2 of the notebook, \"%3\", put on the bench on %4. "
                           "To have it there twice, import it with --again.")
                           .arg(file.path)
                           .arg(same->id.value)
                           .arg(same->title, assay::shownMoment(same->createdAt.toLocalTime())));
    }

    notebook::Notebook &m_notebook;
    bool m_again;
    QStringList m_lines;
    int m_runs = 0;
    ExitStatus m_status = Sound;
};

int store(const Arguments &given, const Files &files)
{
    const auto opened = notebook::Notebook::openOrCreate(given.notebook);
    Storing storing(*opened, given.again);
    std::optional<notebook::Failure> failed;
    try {
        storing.store(files);
    } catch (const notebook::Failure &failure) {
        failed = failure;
    }
    const ExitStatus end = written(writeOut(storing.report()));
    if (failed)
        return unusableNotebook(given.notebook, *failed);
    return end == Sound ? storing.status() : end;
}

} // namespace

int importFiles(const QStringList &arguments)
{
    const Arguments given = parsed(arguments);
    if (!given.fault.isEmpty())
        return wrongUse(given.fault);
    if (given.files.size() == 1 && notebook::isExport(given.files.front()))
        return importExport(given.notebook, given.files.front());
    try {
        Files files(catalogueIn(given.notebook));
        return files.read(given.files) ? store(given, files) : Unusable;
    } catch (const notebook::Failure &failure) {
        return unusableNotebook(given.notebook, failure);
    }
}

} // namespace plateau::app
