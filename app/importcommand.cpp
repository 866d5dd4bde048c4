// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/importcommand.h"

#include "app/console.h"
#include "app/outcome.h"
#include "app/runfile.h"
#include "app/samplenotebook.h"
#include "core/assay/label.h"
#include "core/exchange/documentformat.h"
#include "core/notebook/methodcatalogue.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <algorithm>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

struct MethodFile {
    QString path;
    assay::Method method;
};

/// The methods that a run may name by its id: those that a new run would be offered.
class NamedMethods
{
public:
    explicit NamedMethods(std::vector<notebook::StoredMethod> catalogue)
        : m_catalogue(std::move(catalogue))
    {
    }

    /// As if it was imported already.
    void add(const assay::Method &method)
    {
        notebook::StoredMethod stored;
        stored.method = method;
        stored.origin = notebook::MethodOrigin::Imported;
        const bool known = std::ranges::any_of(m_catalogue, [&](const notebook::StoredMethod &other) {
            return other.method == method && other.origin != notebook::MethodOrigin::OnRecord;
        });
        if (!known)
            m_catalogue.push_back(std::move(stored));
    }

    /// fault: says why an id that is known names no method of its own.
    exchange::MethodLookup lookup(QString &fault) const
    {
        return [this, &fault](const QString &id) -> std::optional<assay::Method> {
            std::vector<assay::Method> found;
            for (const notebook::StoredMethod &method : notebook::offeredOf(m_catalogue)) {
                if (method.method.id == id)
                    found.push_back(method.method);
            }
            if (found.size() == 1)
                return found.front();
            const auto id_ = assay::quoted(id);
            if (found.size() > 1)
                fault = Text::tr("%1 methods with the id %2 are in use; put the whole method into the run")
                            .arg(found.size())
                            .arg(id_);
            else if (std::ranges::any_of(m_catalogue,
                                         [&](const auto &known) { return known.method.id == id; }))
                fault = Text::tr("the method %1 is not in use; put the whole method into the run").arg(id_);
            return std::nullopt;
        };
    }

private:
    std::vector<notebook::StoredMethod> m_catalogue;
};

/// Everything that is to be stored, read from the files.
class Files
{
public:
    explicit Files(std::vector<notebook::StoredMethod> catalogue)
        : m_known(std::move(catalogue))
    {
    }

    /// Methods first, since runs may name them. False after a line on standard error for each problem.
    bool read(const QStringList &paths)
    {
        QStringList runFiles;
        for (const QString &path : paths) {
            const auto bytes = readInput(path);
            if (!bytes)
                return false;
            if (exchange::formatOf(*bytes) != exchange::methodFormat) {
                runFiles.append(path);
                m_runBytes.push_back(*bytes);
            } else if (!readMethod(path, *bytes)) {
                return false;
            }
        }
        for (qsizetype i = 0; i < runFiles.size(); ++i) {
            if (!readRun(runFiles[i], m_runBytes[std::size_t(i)]))
                return false;
        }
        return true;
    }

    const std::vector<MethodFile> &methods() const { return m_methods; }
    const std::vector<exchange::RunDocument> &runs() const { return m_runs; }

private:
    bool readMethod(const QString &path, const QByteArray &bytes)
    {
        exchange::Read<assay::Method> read = exchange::readMethod(bytes);
        reportProblems(path, read.problems);
        if (!read.value)
            return false;
        m_known.add(*read.value);
        m_methods.push_back({path, *std::move(read.value)});
        return true;
    }

    bool readRun(const QString &path, const QByteArray &bytes)
    {
        QString fault;
        exchange::Read<exchange::RunDocument> read = exchange::readRun(bytes, m_known.lookup(fault));
        if (!fault.isEmpty())
            read.problems = {assay::error(u"/method"_s, fault)};
        reportProblems(path, read.problems);
        if (read.value)
            m_runs.push_back(*std::move(read.value));
        return read.value.has_value();
    }

    NamedMethods m_known;
    std::vector<QByteArray> m_runBytes;
    std::vector<MethodFile> m_methods;
    std::vector<exchange::RunDocument> m_runs;
};

std::vector<notebook::StoredMethod> catalogueIn(const QString &path)
{
    std::vector<notebook::StoredMethod> laboratory;
    if (QFileInfo::exists(path))
        laboratory = notebook::Notebook::open(path)->methods();
    return notebook::catalogueOf(laboratory, installedMethods().methods());
}

ExitStatus store(notebook::Notebook &notebook, const Files &files)
{
    ExitStatus status = Sound;
    QStringList lines;
    for (const MethodFile &file : files.methods()) {
        const notebook::MethodOutcome outcome =
            notebook.importMethod(file.method, file.path, currentAccount(), installedMethods().methods());
        lines.append(outcome.sentence);
        if (outcome.needsAttention)
            status = NeedsAttention;
    }
    for (const exchange::RunDocument &document : files.runs())
        notebook.addRun(document.run, document.method, currentAccount());
    if (!files.runs().empty())
        lines.append(files.runs().size() == 1
                         ? Text::tr("1 run put on the bench")
                         : Text::tr("%1 runs put on the bench").arg(files.runs().size()));
    const ExitStatus end = written(writeOut((lines.join(u'\n') + u'\n').toUtf8()));
    return end == Sound ? status : end;
}

} // namespace

int importFiles(const QStringList &arguments)
{
    if (arguments.size() < 2)
        return wrongUse(Text::tr("import takes a notebook and files of runs or methods: plateau import "
                                 "NOTEBOOK FILE ..."));
    const QString &path = arguments.front();
    try {
        Files files(catalogueIn(path));
        if (!files.read(arguments.mid(1)))
            return Unusable;
        return store(*notebook::Notebook::openOrCreate(path), files);
    } catch (const notebook::Failure &failure) {
        return unusableNotebook(path, failure);
    }
}

} // namespace plateau::app
