// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/reportedview.h"

#include "core/evaluation/reportunit.h"
#include "core/run/controls.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/signaturefields.h"
#include "ui/books/measurandnames.h"
#include "ui/books/reportedmodel.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ReportedView::ReportedView(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_model(new ReportedModel(theme, this))
    , m_notice(new Notice(theme, this))
    , m_subjects(new QComboBox(this))
    , m_reported(new SentenceList(theme, tr("Reported result"), u"reportedText"_s, this))
    , m_table(new Table(theme, m_model, tr("Accepted results"), u"acceptedResults"_s, this))
    , m_signature(new SignatureFields(theme, tr("&Chosen by"), tr("P&assphrase"), u"reported"_s, this))
{
    m_subjects->setObjectName(u"reportedOf"_s);
    m_subjects->setMinimumHeight(theme.target());
    auto *caption = new QLabel(tr("Reported result of sample and &measurand"), this);
    caption->setBuddy(m_subjects);
    auto *above = new QHBoxLayout;
    above->setSpacing(theme.gap());
    above->addWidget(caption);
    above->addWidget(m_subjects, 1);
    m_reported->fitSentences(theme.target() * 6);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setFlexibleColumn(ReportedModel::Sample);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addLayout(above);
    layout->addWidget(m_reported);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_notice);
    layout->addWidget(buildForm(theme));
    connect(m_subjects, &QComboBox::currentIndexChanged, this, &ReportedView::showSubject);
    connect(&session, &BenchSession::personChanged, this,
            [this] { m_signature->setName(m_session.person()); });
}

QWidget *ReportedView::buildForm(const Theme &theme)
{
    auto *form = new QWidget(this);
    m_rule = new QComboBox(form);
    m_rule->setObjectName(u"reportRule"_s);
    m_rule->setMinimumHeight(theme.target());
    using Rule = notebook::ReportRule;
    for (const auto &[rule, words] : {std::pair{Rule::LastAccepted, tr("the last accepted")},
                                      {Rule::MeanOfAccepted, tr("the mean of all accepted")},
                                      {Rule::Named, tr("the one marked in the table")}})
        m_rule->addItem(words, static_cast<int>(rule));
    auto *ruleCaption = new QLabel(tr("R&ule"), form);
    ruleCaption->setBuddy(m_rule);
    m_reason = new QLineEdit(form);
    m_reason->setObjectName(u"reportReason"_s);
    m_reason->setMinimumHeight(theme.target());
    auto *reasonCaption = new QLabel(tr("Wh&y"), form);
    reasonCaption->setBuddy(m_reason);
    m_store = button(theme, tr("S&tore the choice"), u"storeReported"_s, form);
    auto *first = new QHBoxLayout;
    first->setSpacing(theme.gap());
    first->addWidget(ruleCaption);
    first->addWidget(m_rule);
    first->addWidget(reasonCaption);
    first->addWidget(m_reason, 1);
    auto *second = new QHBoxLayout;
    second->setSpacing(theme.gap());
    second->addWidget(m_signature, 1);
    second->addWidget(m_store);
    auto *layout = new QVBoxLayout(form);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addLayout(first);
    layout->addLayout(second);
    connect(m_store, &QPushButton::clicked, this, &ReportedView::store);
    connect(m_reason, &QLineEdit::textEdited, m_notice, &Notice::clear);
    connect(m_signature, &SignatureFields::edited, m_notice, &Notice::clear);
    return form;
}

void ReportedView::showRun(const notebook::StoredRun &stored)
{
    std::vector<Subject> all;
    for (const run::Sample &sample : stored.run.samples) {
        const bool isControl = run::isControlSample(stored.run, sample.id);
        for (const assay::Measurand &measurand : stored.method.measurands)
            all.push_back({sample.id, measurand.id, isControl});
        for (const assay::Derived &derived : stored.method.derived)
            all.push_back({sample.id, derived.id, isControl});
    }
    const bool another = m_id != stored.summary.id;
    m_id = stored.summary.id;
    m_method = stored.method;
    if (another || all != m_all) {
        const QSignalBlocker quiet(m_subjects);
        m_subjects->clear();
        for (const Subject &subject : all)
            m_subjects->addItem(tr("%1, %2").arg(subject.sample, measurandName(stored.method, subject.measurand)));
        m_all = std::move(all);
        m_shown.reset();
    }
    if (another) {
        m_signature->setName(m_session.person());
        m_reason->clear();
    }
    showSubject();
}

QString ReportedView::onReport(const notebook::SampleResults &results) const
{
    if (!results.reported)
        return {};
    const auto unit = m_session.reportUnitOf(results.product, results.measurand,
                                             evaluation::formOf(results.reported->unit));
    if (!unit || evaluation::reportUnitWord(*unit) == results.reported->unit)
        return {};
    const auto converted = evaluation::reportedAs(*results.reported, m_method, *unit);
    return converted.value ? evaluation::reportedText(*converted.value) : converted.obstacle;
}

void ReportedView::showSubject()
{
    const int index = m_subjects->currentIndex();
    m_store->setEnabled(index >= 0);
    if (index < 0)
        return;
    const Subject subject = m_all[static_cast<std::size_t>(index)];
    const bool another = subject != m_shown;
    if (another)
        m_notice->clear();
    guarded(*m_notice, [&] {
        const notebook::SampleResults results = m_session.resultsOf(m_id, subject.sample, subject.measurand);
        m_signature->setPersons(m_session.persons());
        m_model->show(results);
        m_reported->setSentences(reportedSentences(results, onReport(results), subject.isControl));
        m_table->fit();
        m_store->setEnabled(!results.accepted.empty());
        if (!another)
            return;
        m_table->selectRow(m_model->reportedRow());
        m_rule->setCurrentIndex(m_rule->findData(static_cast<int>(results.rule)));
        m_shown = subject;
    });
}

void ReportedView::store()
{
    if (!m_shown)
        return;
    if (m_signature->name().isEmpty()) {
        m_notice->say(State::Attention, tr("Say who chooses: type a name."));
        m_signature->focusName();
        return;
    }
    notebook::WantedChoice wanted;
    wanted.rule = static_cast<notebook::ReportRule>(m_rule->currentData().toInt());
    if (const int row = m_table->currentIndex().row(); wanted.rule == notebook::ReportRule::Named && row >= 0)
        wanted.named = m_model->row(row).from;
    wanted.person = m_signature->name();
    wanted.passphrase = m_signature->passphrase();
    wanted.reason = m_reason->text().simplified();
    const Subject subject = *m_shown;
    const bool stored = m_signature->sign(
        *m_notice, [&] { m_session.chooseReported(m_id, subject.sample, subject.measurand, wanted); });
    if (!stored) {
        if (wanted.reason.isEmpty() || !m_signature->isSigned())
            m_reason->setFocus();
        else
            m_signature->focusRefused();
        return;
    }
    m_reason->clear();
    showSubject();
    m_notice->say(State::Good, tr("The choice is stored."));
}

void ReportedView::takeFocus()
{
    m_subjects->setFocus();
}

} // namespace plateau::ui
