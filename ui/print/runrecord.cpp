// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/runrecord.h"

#include "core/assay/listed.h"
#include "core/evaluation/checkfacts.h"
#include "core/evaluation/format.h"
#include "core/run/runcode.h"
#include "ui/print/pdf.h"
#include "ui/print/recordparts.h"
#include "ui/print/reporthead.h"
#include "ui/print/reporttext.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct RunRecordWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunRecord)
};

using Fit = TableColumn::Fit;
QString stateText(const ReportContent &content)
{
    if (!content.record)
        return RunRecordWords::tr("from a run file, in no notebook");
    switch (content.record->state) {
    case ReportState::Accepted:
        return RunRecordWords::tr("accepted");
    case ReportState::Rejected:
        return RunRecordWords::tr("rejected");
    case ReportState::Replaced:
        return RunRecordWords::tr("taken back since");
    case ReportState::Draft:
        break;
    }
    return RunRecordWords::tr("on the bench, not decided");
}

/// Up to three by name; of more samples their number, since those that failed have rows of their own.
QString scopesText(const std::vector<evaluation::Scope> &scopes, const run::Run &run)
{
    QStringList names;
    QStringList samples;
    for (const evaluation::Scope &scope : scopes) {
        if (scope.kind == evaluation::Scope::Kind::Sample) {
            if (!samples.contains(scope.id))
                samples << scope.id;
        } else if (const QString name = evaluation::scopeText(scope, run); !names.contains(name)) {
            names << name;
        }
    }
    if (scopes.size() <= 3) {
        names.clear();
        for (const evaluation::Scope &scope : scopes)
            names << evaluation::scopeText(scope, run);
    } else if (!samples.isEmpty()) {
        names << RunRecordWords::tr("%n samples", nullptr, static_cast<int>(samples.size()));
    }
    return assay::listed(names);
}

QString spreadText(const ReportContent &content, const evaluation::Result &result)
{
    const double factor = reportingFactor(content, result);
    return evaluation::spreadText(*result.spread * factor, *result.value * factor, 2);
}

class RunRecord
{
public:
    RunRecord(const ReportContent &content, PageFlow &flow)
        : m_content(content)
        , m_flow(flow)
        , m_part{content,        content.method,
                 content.run,    content.evaluation,
                 content.inputs, content.record ? &*content.record : nullptr}
    {
    }

    void write()
    {
        paintTitle(m_flow, RunRecordWords::tr("Run record"), printable(m_content.run.title));
        writeIdentity();
        writeDecisions();
        writeResults();
        writeChecks();
        writePart(m_part, m_content.evaluation.results);
        for (const ReportCompanion &companion : m_content.companions)
            writeCompanion(companion);
        writeIntegrity();
        paintEnd(m_flow, RunRecordWords::tr("End of the run record %1").arg(reportNumber(m_content)));
    }

private:
    void writeIdentity()
    {
        const run::Run &run = m_content.run;
        std::vector<PrintedField> fields{
            {RunRecordWords::tr("run"), reportNumber(m_content)},
            {RunRecordWords::tr("state"), stateText(m_content)},
            {RunRecordWords::tr("revision"), QString::number(revisionOf(m_content))},
            {RunRecordWords::tr("method"), methodTitle(m_content.method)},
            {RunRecordWords::tr("started"), run.startedAt ? momentOnReport(*run.startedAt) : none},
            {RunRecordWords::tr("laboratory"),
             m_content.laboratory.name.isEmpty() ? none : m_content.laboratory.name}};
        if (m_content.record) {
            fields.push_back({RunRecordWords::tr("notebook"), RunRecordWords::tr("%1, run %2")
                                                                  .arg(m_content.record->notebook)
                                                                  .arg(m_content.record->run)});
            fields.push_back(
                {RunRecordWords::tr("put on the bench"), momentOnReport(m_content.record->addedAt)});
        }
        fields.push_back({RunRecordWords::tr("evaluated by"),
                          RunRecordWords::tr("Plateau %1").arg(m_content.programVersion)});
        QString made = momentOnReport(m_content.madeAt);
        if (!m_content.madeBy.isEmpty())
            made = RunRecordWords::tr("%1 by %2").arg(made, m_content.madeBy);
        fields.push_back({RunRecordWords::tr("this copy made"), made});
        m_flow.fields(fields, 3);
        if (const QString sentence = stateSentence(stateOf(m_content)); !sentence.isEmpty())
            m_flow.paragraph(sentence);
    }

    void writeDecisions()
    {
        if (!m_content.record)
            return;
        m_flow.heading(RunRecordWords::tr("Decision"));
        if (m_content.record->decisions.empty()) {
            m_flow.paragraph(RunRecordWords::tr("Nobody has decided on this run."));
            return;
        }
        PrintedTable table;
        table.columns = {{RunRecordWords::tr("decided"), Fit::Wrap, false, true},
                         {RunRecordWords::tr("by"), Fit::Wrap},
                         {RunRecordWords::tr("at")},
                         {RunRecordWords::tr("reason"), Fit::Wrap},
                         {RunRecordWords::tr("program")}};
        for (const ReportDecision &decision : m_content.record->decisions) {
            const QString what =
                decision.samples.isEmpty()
                    ? decision.what
                    : RunRecordWords::tr("%1: %2").arg(decision.what, decision.samples.join(u", "_s));
            table.rows.push_back({what, personOnReport(decision.act), momentOnReport(decision.act.at),
                                  decision.act.reason.isEmpty() ? none : decision.act.reason,
                                  decision.programVersion});
            if (decision.takenBack)
                table.rows.push_back({RunRecordWords::tr("taken back, on the bench again"),
                                      personOnReport(*decision.takenBack),
                                      momentOnReport(decision.takenBack->at),
                                      decision.takenBack->reason,
                                      {}});
        }
        m_flow.table(table);
    }

    void writeResults()
    {
        m_flow.heading(RunRecordWords::tr("Results"));
        PrintedTable table;
        table.columns = {{RunRecordWords::tr("sample"), Fit::Wrap},
                         {RunRecordWords::tr("quantity"), Fit::Wrap},
                         {RunRecordWords::tr("result"), Fit::Natural, true, true},
                         {RunRecordWords::tr("± U"), Fit::Natural, true},
                         {RunRecordWords::tr("unit")},
                         {RunRecordWords::tr("k"), Fit::Natural, true},
                         {RunRecordWords::tr("tubes"), Fit::Natural, true},
                         {RunRecordWords::tr("spread"), Fit::Natural, true},
                         {RunRecordWords::tr("verdict")}};
        QStringList remarks;
        for (const evaluation::Result &result : m_content.evaluation.results) {
            const ResultWords words = wordsOf(m_content, result);
            const bool spreads = result.n > 1 && result.value && result.spread;
            const ReportedResult *reported = reportedAs(m_content, result);
            const bool isLeftOut = reported && !reported->isReported; // by the decision, whatever the checks say
            table.rows.push_back({result.sample, quantityName(m_content.method, result.measurand),
                                  words.value, words.uncertainty, words.unit, words.coverage,
                                  QString::number(result.n),
                                  spreads ? m_part.local(spreadText(m_content, result)) : none,
                                  isLeftOut ? RunRecordWords::tr("not reported")
                                            : evaluation::verdictText(result.verdict)});
            if (reported && !reported->remark.isEmpty())
                remarks << RunRecordWords::tr("%1, %2: %3")
                               .arg(result.sample, quantityName(m_content.method, result.measurand),
                                    m_part.local(reported->remark));
        }
        m_flow.table(table);
        for (const QString &remark : remarks)
            m_flow.paragraph(remark);
        for (const evaluation::Result &result : m_content.evaluation.results) {
            if (const QString sentence = restsOn(result); !sentence.isEmpty())
                m_flow.paragraph(sentence);
        }
        for (const ReportCompliance &line : m_content.compliance)
            m_flow.paragraph(RunRecordWords::tr("%1, %2: %3. Specification: %4. Decision rule: %5.")
                                 .arg(line.sample, quantityName(m_content.method, line.measurand),
                                      m_part.local(line.statement), m_part.local(line.specification),
                                      m_part.local(line.rule)));
    }

    /// Which other runs a derived result takes from.
    QString restsOn(const evaluation::Result &result) const
    {
        QStringList runs;
        for (const ReportCompanion &companion : m_content.companions) {
            const bool isTaken = std::ranges::any_of(result.terms, [&](const evaluation::ResultTerm &term) {
                return term.method == companion.method.id &&
                       run::findSample(companion.run, result.sample) != nullptr;
            });
            if (isTaken)
                runs << companionName(companion);
        }
        return runs.isEmpty() ? QString()
                              : RunRecordWords::tr("%1, %2, rests on this run and on %3.")
                                    .arg(result.sample, quantityName(m_content.method, result.measurand),
                                         runs.join(RunRecordWords::tr(" and ")));
    }

    static QString companionName(const ReportCompanion &companion)
    {
        const QString code = run::groupedCode(run::runCode(companion.run, companion.method.version));
        return companion.number ? RunRecordWords::tr("run %1 of the notebook (\"%2\", %3)")
                                      .arg(*companion.number)
                                      .arg(companion.run.title, code)
                                : RunRecordWords::tr("the run \"%1\" (%2)").arg(companion.run.title, code);
    }

    /// Those that failed one by one; of those that passed, what is said in the same words once.
    void writeChecks()
    {
        m_flow.heading(RunRecordWords::tr("Checks"));
        PrintedTable table;
        table.mostLines = 40;
        table.columns = {{RunRecordWords::tr("check"), Fit::Natural},
                         {RunRecordWords::tr("verdict"), Fit::Natural, false, true},
                         {RunRecordWords::tr("of"), Fit::Wrap},
                         {RunRecordWords::tr("what was found"), Fit::Wrap}};
        std::vector<evaluation::Check> checks = m_content.evaluation.checks;
        for (const evaluation::Result &result : m_content.evaluation.results) {
            for (const evaluation::Check &check : result.checks) {
                if (std::ranges::find(checks, check) == checks.end())
                    checks.push_back(check);
            }
        }
        std::ranges::stable_partition(checks, [](const auto &check) { return !check.passed; });
        QStringList said;
        for (const evaluation::Check &check : checks) {
            const QString key = evaluation::checkWord(check.id) + check.message();
            if (check.passed && said.contains(key))
                continue;
            said << key;
            std::vector<evaluation::Scope> scopes;
            for (const evaluation::Check &other : checks) {
                if (other == check ||
                    (check.passed && other.passed && other.id == check.id && other.message() == check.message()))
                    scopes.push_back(other.scope);
            }
            table.rows.push_back({evaluation::checkTitle(check.id),
                                  check.passed ? RunRecordWords::tr("passed") : RunRecordWords::tr("failed"),
                                  scopesText(scopes, m_part.run), m_part.local(check.message())});
        }
        m_flow.table(table);
    }

    void writePart(const RecordPart &part, const std::vector<evaluation::Result> &results)
    {
        writeMethod(m_flow, part);
        writeConditions(m_flow, part);
        writeMaterials(m_flow, part);
        writeTubes(m_flow, part);
        writeSignals(m_flow, part);
        writeCalculations(m_flow, part, results);
        writeBenchLog(m_flow, part);
    }

    /// Of the results there, those that the reported run takes.
    std::vector<evaluation::Result> resultsTaken(const ReportCompanion &companion) const
    {
        std::vector<evaluation::Result> taken;
        for (const evaluation::Result &result : companion.evaluation.results) {
            const bool isTaken = std::ranges::any_of(m_content.evaluation.results, [&](const auto &derived) {
                return derived.sample == result.sample &&
                       std::ranges::any_of(derived.terms, [&](const evaluation::ResultTerm &term) {
                           return term.method == companion.method.id && term.measurand == result.measurand;
                       });
            });
            if (isTaken)
                taken.push_back(result);
        }
        return taken;
    }

    void writeCompanion(const ReportCompanion &companion)
    {
        m_flow.heading(RunRecordWords::tr("Run that results are taken from: %1").arg(companion.run.title));
        const QString code = run::groupedCode(run::runCode(companion.run, companion.method.version));
        m_flow.paragraph(
            companion.number
                ? RunRecordWords::tr("Run %1 of the same notebook, %2.").arg(*companion.number).arg(code)
                : RunRecordWords::tr("Run %1.").arg(code));
        writePart(
            {m_content, companion.method, companion.run, companion.evaluation, companion.inputs, nullptr},
            resultsTaken(companion));
    }

    void writeIntegrity()
    {
        m_flow.heading(RunRecordWords::tr("What plateau verify confirms"));
        m_flow.paragraph(RunRecordWords::tr("SHA-256 of the run and its method as printed here: %1")
                             .arg(m_content.contentHash));
        if (!m_content.record) {
            m_flow.paragraph(
                RunRecordWords::tr("The run stands in no notebook: the hash is that of its file's content, "
                                   "written as plateau-run/1 with its method."));
            return;
        }
        for (const ReportDecision &decision : m_content.record->decisions)
            m_flow.paragraph(RunRecordWords::tr("Reviewed on %1: %2%3")
                                 .arg(momentOnReport(decision.act.at), decision.contentHash,
                                      decision.contentHash == m_content.contentHash
                                          ? RunRecordWords::tr(" (the same)")
                                          : RunRecordWords::tr(" (another: it was changed since)")));
        m_flow.paragraph(
            RunRecordWords::tr("Audit: %n entries, head %1", nullptr, m_content.record->auditEntries)
                .arg(m_content.record->auditHead));
    }

    const ReportContent &m_content;
    PageFlow &m_flow;
    RecordPart m_part;
};

} // namespace

QByteArray runRecordPdf(const ReportContent &content, Paper paper)
{
    const QString number = reportNumber(content);
    RunningText running;
    running.title = RunRecordWords::tr("Run record %1").arg(number);
    running.headLeft = content.run.title;
    running.headRight = RunRecordWords::tr("run record %1, revision %2").arg(number).arg(revisionOf(content));
    running.mark =
        stateOf(content) == ReportState::Accepted ? RunRecordWords::tr("COPY") : stateMark(stateOf(content));
    running.foot =
        RunRecordWords::tr("Run record %1, revision %2, made %3 with Plateau %4; content %5")
            .arg(number)
            .arg(revisionOf(content))
            .arg(momentOnReport(content.madeAt), content.programVersion, content.contentHash.left(12));
    return flowedPdf(running, paper, [&](PageFlow &flow) { RunRecord(content, flow).write(); });
}

QString runRecordFileName(const ReportContent &content)
{
    return fileNameOf(
        RunRecordWords::tr("Run record %1", "a file name").arg(printable(content.run.title).left(80)),
        u".pdf"_s);
}

} // namespace plateau::ui
