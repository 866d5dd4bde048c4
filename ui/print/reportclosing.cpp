// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/reportclosing.h"

#include "core/assay/listed.h"
#include "core/evaluation/format.h"
#include "ui/print/knownfields.h"
#include "ui/print/reporthead.h"
#include "ui/print/reporttext.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ReportclosingWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Report)
};

constexpr double closing_pt = 8.5;

class ReportClosing
{
public:
    ReportClosing(PageFlow &flow, const ReportContent &content)
        : m_content(content)
        , m_flow(flow)
    {
    }

    void write()
    {
        writeMethod();
        writeRemarks();
        writeLastBlock();
    }

private:
    QString field(const QString &name) const { return m_content.fields.value(name); }

    void writeMethodOf(const assay::Method &method)
    {
        m_flow.paragraph(methodTitle(method), closing_pt);
        if (!method.principle.isEmpty())
            m_flow.paragraph(method.principle, 7.5);
        // What the method says of values that nobody published is for those who work by it.
        const QString source = assay::publishedSource(method);
        m_flow.paragraph(source.isEmpty() ? ReportclosingWords::tr("The method names no published source.")
                                          : ReportclosingWords::tr("Source: %1").arg(source),
                         7.5);
        if (const QString sentence = templateSentence(method); !sentence.isEmpty())
            m_flow.paragraph(sentence, 7.5);
    }

    void writeMethod()
    {
        m_flow.heading(ReportclosingWords::tr("Method"));
        writeMethodOf(m_content.method);
        QStringList written{m_content.method.id};
        for (const ReportCompanion &companion : m_content.companions) {
            if (written.contains(companion.method.id))
                continue;
            written << companion.method.id;
            writeMethodOf(companion.method);
        }
        for (const evaluation::Result &result : m_content.evaluation.results) {
            if (!result.terms.empty() && !written.contains(result.measurand)) {
                written << result.measurand;
                m_flow.paragraph(derivedSentence(result), 7.5);
            }
        }
    }

    QString derivedSentence(const evaluation::Result &result) const
    {
        QStringList parts;
        for (const evaluation::ResultTerm &term : result.terms)
            parts << ReportclosingWords::tr("%1 times %2 (method %3)")
                         .arg(local(m_content, evaluation::significantText(term.factor, 5)), term.measurand,
                              term.method);
        return ReportclosingWords::tr(
                   "%1 is calculated: the sum of %2. Its uncertainty takes account of what the parts "
                   "have in common.")
            .arg(quantityName(m_content.method, result.measurand), assay::listed(parts));
    }

    void writeRemarks()
    {
        m_flow.heading(ReportclosingWords::tr("Further information"));
        QString deviations = field(u"deviations"_s);
        if (deviations.isEmpty())
            deviations = recordedDeviations().join(u' ');
        m_flow.fields(
            {{ReportclosingWords::tr("additions to, deviations or exclusions from the method"), deviations,
              1},
             {ReportclosingWords::tr("sampling: plan and method, place and conditions, where it was ours"),
              field(u"sampling"_s), 1},
             {ReportclosingWords::tr("conditions of the tests, where they matter"), field(u"conditions"_s),
              1},
             {ReportclosingWords::tr("results from external providers"), field(u"external"_s), 1},
             {ReportclosingWords::tr("opinions and interpretations, whose and on what basis"),
              field(u"opinions"_s), 1},
             {ReportclosingWords::tr("whatever else was asked for"), field(u"additional"_s), 1}},
            2, closing_pt);
        writeRevision();
    }

    /// What the run itself says was done otherwise.
    QStringList recordedDeviations() const
    {
        QStringList sentences;
        for (std::size_t i = 0; i < m_content.run.tubes.size(); ++i) {
            const run::Tube &tube = m_content.run.tubes[i];
            if (!tube.pipetted_mL.empty())
                sentences << ReportclosingWords::tr("Tube %1 was pipetted differently from what the method "
                                                    "says, and is calculated as pipetted.")
                                 .arg(i + 1);
        }
        return sentences;
    }

    /// A report that replaces another says which, and why.
    void writeRevision()
    {
        if (!m_content.record || m_content.record->revision < 2)
            return;
        const auto &decisions = m_content.record->decisions;
        const auto taken = std::find_if(decisions.rbegin(), decisions.rend(),
                                        [](const ReportDecision &decision) { return !!decision.takenBack; });
        if (taken == decisions.rend())
            return;
        m_flow.paragraph(
            ReportclosingWords::tr(
                "This is revision %1 and replaces revision %2. It was opened again on %3 by "
                "%4: %5.")
                .arg(m_content.record->revision)
                .arg(m_content.record->revision - 1)
                .arg(dayOnReport(taken->takenBack->at), taken->takenBack->person, taken->takenBack->reason),
            closing_pt);
    }

    struct Statement {
        QString text;
        double size_pt = closing_pt;
    };

    std::vector<Statement> statements() const
    {
        constexpr double small_pt = 6.5;
        std::vector<Statement> said{
            {ReportclosingWords::tr("The results relate only to the items tested, as they were received. What "
                                    "the customer says about the samples is given as stated. This report is "
                                    "not to be reproduced except in full without the laboratory's approval.")}};
        if (const QString sentence = stateSentence(stateOf(m_content)); !sentence.isEmpty())
            said.push_back({sentence});
        said.push_back({anchor(), small_pt});
        return said;
    }

    /// What is kept outside the notebook shows whether it was changed since.
    QString anchor() const
    {
        if (!m_content.record)
            return ReportclosingWords::tr("Content, SHA-256: %1.").arg(m_content.contentHash);
        return ReportclosingWords::tr("Record: run %1 of %2; content, SHA-256: %3; audit: %n entries, head %4.",
                                      nullptr, m_content.record->auditEntries)
            .arg(m_content.record->run)
            .arg(m_content.record->notebook, m_content.contentHash, m_content.record->auditHead);
    }

    /// Statements, signature and the report's end stay together: no page holds a signature and nothing that is signed.
    void writeLastBlock()
    {
        constexpr double aboveStatements_mm = 1;
        constexpr double aboveSignature_mm = 2;
        constexpr double signature_pt = 9;
        const std::vector<Statement> said = statements();
        const std::vector<PrintedField> signature{
            {ReportclosingWords::tr("authorised by"), fieldOf(m_content, u"authorised-by"_s), 1},
            {ReportclosingWords::tr("signature"), {}, 2}};
        double height_mm = aboveStatements_mm + aboveSignature_mm +
                           m_flow.fieldsHeight_mm(signature, 2, signature_pt) + endHeight_mm(m_flow);
        for (const Statement &statement : said)
            height_mm += m_flow.paragraphHeight_mm(statement.text, statement.size_pt);
        m_flow.need(height_mm);
        m_flow.gap(aboveStatements_mm);
        for (const Statement &statement : said)
            m_flow.paragraph(statement.text, statement.size_pt);
        m_flow.gap(aboveSignature_mm);
        m_flow.fields(signature, 2, signature_pt);
    }

    const ReportContent &m_content;
    PageFlow &m_flow;
};

} // namespace

void writeReportClosing(PageFlow &flow, const ReportContent &content)
{
    ReportClosing(flow, content).write();
}

} // namespace plateau::ui
