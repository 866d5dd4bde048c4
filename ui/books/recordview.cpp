// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/recordview.h"

#include "core/exchange/evaluationcomparison.h"
#include "core/exchange/writers.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/decisiontext.h"
#include "ui/bench/resultview.h"
#include "ui/bench/signaturefields.h"
#include "ui/books/reportedview.h"
#include "ui/books/runsmodel.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/guard.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

RecordView::RecordView(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_title(new ElidingLabel(this))
    , m_subtitle(plainLabel({}, this))
    , m_notice(new Notice(theme, this))
    , m_pages(new PageStack(this))
    , m_view(new ResultView(theme, this))
    , m_reported(new ReportedView(theme, session, this))
{
    m_pages->addWidget(m_view);
    m_pages->addWidget(m_reported);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(buildHeader());
    layout->addWidget(m_notice);
    layout->addWidget(m_pages, 1);
    layout->addWidget(buildFooter());
}

QWidget *RecordView::buildHeader()
{
    auto *header = new QWidget(this);
    m_title->setFont(m_theme.large());
    m_title->setObjectName(u"recordTitle"_s);
    m_back = button(m_theme, {}, u"backToList"_s, header);
    m_toRack = button(m_theme, tr("To its rac&k"), u"toItsRack"_s, header);
    m_toReported = button(m_theme, tr("Reported resu&lts"), u"toReported"_s, header);
    m_toReported->setCheckable(true);
    m_toTrend = button(m_theme, tr("Tren&d"), u"toTrend"_s, header);
    m_toTrend->setToolTip(tr(
        "What was found of this measurand in the product, or in the sample, over all runs, with its limits"));
    connect(m_toTrend, &QPushButton::clicked, this, &RecordView::wantTrend);
    m_revisions = new QComboBox(header);
    m_revisions->setObjectName(u"revisions"_s);
    m_revisions->setMinimumHeight(m_theme.target());
    m_revisions->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_revisions->setMinimumContentsLength(24);
    m_revisionCaption = new QLabel(tr("Revi&sion"), header);
    m_revisionCaption->setBuddy(m_revisions);
    connect(m_revisions, &QComboBox::currentIndexChanged, this, &RecordView::showRevision);
    connect(m_toReported, &QPushButton::clicked, this, [this](bool reported) {
        showReported(reported);
        takeFocus();
    });
    connect(m_back, &QPushButton::clicked, this, &RecordView::leave);
    connect(m_toRack, &QPushButton::clicked, this, [this] { Q_EMIT rackWanted(runId()); });
    auto *names = new QVBoxLayout;
    names->setSpacing(0);
    names->addWidget(m_title);
    m_subtitle->setWordWrap(true);
    names->addWidget(m_subtitle);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addLayout(names, 1);
    layout->addWidget(m_revisionCaption);
    layout->addWidget(m_revisions);
    layout->addWidget(m_toTrend);
    layout->addWidget(m_toReported);
    layout->addWidget(m_toRack);
    layout->addWidget(m_back);
    return header;
}

QWidget *RecordView::buildFooter()
{
    m_lockRow = new QWidget(this);
    m_reason = new QLineEdit(m_lockRow);
    m_reason->setObjectName(u"reopenReason"_s);
    m_reason->setMinimumHeight(m_theme.target());
    m_lockCaption = new QLabel(m_lockRow);
    m_lockCaption->setObjectName(u"reopenCaption"_s);
    m_lockCaption->setBuddy(m_reason);
    m_signature = new SignatureFields(m_theme, tr("B&y"), tr("P&assphrase"), u"reopen"_s, m_lockRow);
    connect(m_signature, &SignatureFields::returnPressed, this, &RecordView::putBack);
    connect(&m_session, &BenchSession::personChanged, m_signature,
            [this] { m_signature->setName(m_session.person()); });
    auto *putBackButton = button(m_theme, tr("Put bac&k on the bench"), u"reopenRun"_s, m_lockRow);
    connect(putBackButton, &QPushButton::clicked, this, &RecordView::putBack);
    connect(m_reason, &QLineEdit::returnPressed, this, &RecordView::putBack);
    auto *fields = new QHBoxLayout;
    fields->setSpacing(m_theme.gap());
    fields->addWidget(m_reason, 1);
    fields->addWidget(m_signature, 1);
    fields->addWidget(putBackButton);
    auto *layout = new QVBoxLayout(m_lockRow);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    layout->addWidget(m_lockCaption);
    layout->addLayout(fields);
    return m_lockRow;
}

bool RecordView::showRun(notebook::RunId id)
{
    const bool another = id != runId();
    if (another) {
        m_notice->clear();
        m_reason->clear();
        m_signature->setName(m_session.person());
    }
    if (!guarded(*m_notice, [&] { m_stored = m_session.load(id); }))
        return false;
    if (another) {
        showReported(false);
        m_revisions->clear();
    }
    fill();
    return true;
}

bool RecordView::openRun(notebook::RunId id)
{
    m_toReported->setChecked(false);
    {
        const QSignalBlocker quiet(m_revisions);
        m_revisions->clear();
    }
    return showRun(id);
}

void RecordView::fill()
{
    const notebook::RunSummary &summary = m_stored.summary;
    const bool onBench = summary.state == notebook::RunState::OnBench;
    m_title->setText(summary.title);
    const QString begun = momentText(m_stored.run.startedAt.value_or(summary.createdAt));
    m_subtitle->setText(tr("%1, version %2, started %3, %4, revision %5")
                            .arg(summary.methodName)
                            .arg(summary.methodVersion)
                            .arg(begun, stateText(summary.state))
                            .arg(summary.revision));
    m_toRack->setVisible(onBench);
    m_lockCaption->setText(tr("Locked. R&eason to put it back on the bench, where revision %1 begins")
                               .arg(m_stored.decisions.size() + 1));
    guarded(*m_notice, [this] { m_signature->setPersons(m_session.persons()); });
    fillRevisions();
    showReported(m_toReported->isChecked());
    showRevision(m_revisions->currentIndex());
}

void RecordView::fillRevisions()
{
    const bool onBench = m_stored.summary.state == notebook::RunState::OnBench;
    const int count = static_cast<int>(m_stored.decisions.size());
    const QVariant chosen = m_revisions->currentIndex() > 0 ? m_revisions->currentData() : QVariant();
    const QSignalBlocker quiet(m_revisions);
    m_revisions->clear();
    if (onBench)
        m_revisions->addItem(tr("%1: on the bench now").arg(count + 1), 0);
    for (int revision = count; revision > 0; --revision)
        m_revisions->addItem(revisionText(m_stored, revision), revision);
    // Whoever reads an earlier one goes on reading it while something else happens at the bench.
    m_revisions->setCurrentIndex(std::max(0, chosen.isValid() ? m_revisions->findData(chosen) : 0));
    const bool several = m_revisions->count() > 1;
    m_revisions->setVisible(several);
    m_revisionCaption->setVisible(several);
}

void RecordView::showRevision(int index)
{
    m_notice->clear();
    m_revisions->setToolTip(tipText(m_revisions->currentText()));
    if (index <= 0) { // the newest is what the notebook holds
        const evaluation::Evaluation evaluation = notebook::evaluationOf(m_stored);
        showResults(m_stored, evaluation, std::nullopt);
        compareWithDecision(evaluation);
        return;
    }
    guarded(*m_notice, [&] {
        const int revision = m_revisions->itemData(index).toInt();
        const notebook::StoredRun earlier = m_session.loadRevision(runId(), revision);
        showResults(earlier, notebook::evaluationOf(earlier), revision);
        const bool onBench = m_stored.summary.state == notebook::RunState::OnBench;
        m_notice->say(State::Info, onBench ? tr("This is revision %1 as it was decided; the run is on the "
                                                "bench again, and no revision stands.")
                                                 .arg(revision)
                                           : tr("This is revision %1 as it was decided; revision %2 stands.")
                                                 .arg(revision)
                                                 .arg(m_stored.decisions.size()));
    });
}

void RecordView::showResults(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                             std::optional<int> revision)
{
    ReviewBasis basis;
    guarded(*m_notice, [&] { basis = reviewBasisOf(m_session, stored, revision); });
    m_view->show(stored, evaluation, basis);
}

void RecordView::showReported(bool reported)
{
    m_toReported->setChecked(reported);
    if (reported)
        m_reported->showRun(m_stored);
    m_pages->setCurrentWidget(reported ? static_cast<QWidget *>(m_reported) : m_view);
    m_lockRow->setVisible(!reported && m_stored.summary.state != notebook::RunState::OnBench);
    m_back->setText(reported ? tr("Back to the run  Esc") : tr("Back to the list  Esc"));
}

/// Of the product where the sample is known to be one; else of the sample.
void RecordView::wantTrend()
{
    const evaluation::Result *result = m_view->chosenResult();
    if (!result) {
        m_notice->say(State::Info, tr("Choose a result in the table first; its trend is shown."));
        m_view->focusResults();
        return;
    }
    QString product;
    if (m_stored.plan) {
        const auto planned =
            std::ranges::find(m_stored.plan->samples, result->sample,
                              [](const planning::PlannedSample &one) { return one.sample.id; });
        if (planned != m_stored.plan->samples.end())
            product = planned->sample.product;
    }
    const bool isOfProduct = !product.isEmpty();
    Q_EMIT chartWanted({isOfProduct ? charts::Quantity::ProductResult : charts::Quantity::SampleResult,
                        m_stored.method.id, result->measurand, isOfProduct ? product : result->sample});
}

void RecordView::compareWithDecision(const evaluation::Evaluation &evaluation)
{
    if (m_stored.summary.state == notebook::RunState::OnBench || m_stored.decisions.empty())
        return;
    const notebook::Decision &last = m_stored.decisions.back();
    if (!exchange::differenceOf(last.evaluation, exchange::writeEvaluation(evaluation)))
        return;
    m_notice->say(State::Attention, tr("This program calculates other numbers from the stored readings than "
                                       "version %1 did when the run was decided on. The new ones are shown.")
                                        .arg(last.programVersion));
}

void RecordView::putBack()
{
    if (m_signature->name().isEmpty()) {
        m_notice->say(State::Attention, tr("Say who puts it back: type a name."));
        m_signature->focusName();
        return;
    }
    const notebook::RunId id = runId();
    const QString reason = m_reason->text().simplified();
    const bool stored = m_signature->sign(*m_notice, [&] {
        m_session.reopen(id, m_signature->name(), reason, m_signature->passphrase());
    });
    if (!stored) {
        if (reason.isEmpty() || !m_signature->isSigned())
            m_reason->setFocus();
        else
            m_signature->focusRefused();
        return;
    }
    m_notice->clear();
    m_reason->clear();
    Q_EMIT rackWanted(id);
}

void RecordView::takeFocus()
{
    if (m_toReported->isChecked())
        m_reported->takeFocus();
    else
        m_view->focusResults();
}

void RecordView::leave()
{
    if (!m_toReported->isChecked()) {
        Q_EMIT closed();
        return;
    }
    showReported(false);
    takeFocus();
}

void RecordView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
