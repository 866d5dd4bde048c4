// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/resultview.h"

#include "core/evaluation/format.h"
#include "ui/bench/checksmodel.h"
#include "ui/bench/decisiontext.h"
#include "ui/bench/historymodel.h"
#include "ui/bench/methodtext.h"
#include "ui/bench/recoveriesmodel.h"
#include "ui/bench/recoveryhistory.h"
#include "ui/bench/resultoverview.h"
#include "ui/bench/resultsmodel.h"
#include "ui/bench/verdicts.h"
#include "ui/bench/workingtext.h"
#include "ui/shared/barchart.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QSplitter>
#include <QTabWidget>
#include <QTextBrowser>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QTextBrowser *browser(const QString &accessibleName, const QString &objectName, QWidget *parent)
{
    auto *text = new QTextBrowser(parent);
    text->setAccessibleName(accessibleName);
    text->setObjectName(objectName);
    text->setOpenLinks(false);
    text->setTabChangesFocus(true);
    text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return text;
}

} // namespace

ResultView::ResultView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_results(new ResultsModel(theme, this))
    , m_recoveries(new RecoveriesModel(this))
    , m_history(new HistoryModel(theme, this))
    , m_checks(new ChecksModel(theme, this))
{
    auto *both = new QSplitter(Qt::Horizontal, this);
    both->setChildrenCollapsible(false);
    both->addWidget(buildLists());
    both->addWidget(buildDetails());
    both->setSizes({1000, 1000}); // halves, whatever the contents would like
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    m_decisions = new SentenceList(theme, tr("Decisions"), u"decisions"_s, this);
    layout->addWidget(m_decisions);
    layout->addWidget(buildVerdict());
    layout->addWidget(both, 1);
    connect(m_resultsTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) { chooseResult(current.row()); });
    connect(m_checksTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) { chooseCheck(current.row()); });
    connect(&theme, &Theme::changed, this, &ResultView::dress);
    dress();
}

QWidget *ResultView::buildVerdict()
{
    m_verdictBand = new QWidget(this);
    m_verdictBand->setAutoFillBackground(true);
    m_verdictShape = new QLabel(m_verdictBand);
    m_verdictText = plainLabel({}, m_verdictBand);
    m_verdictText->setObjectName(u"verdict"_s);
    m_verdictText->setWordWrap(true);
    auto *layout = new QHBoxLayout(m_verdictBand);
    setGaps(m_theme, layout);
    m_failureText = plainLabel({}, m_verdictBand);
    m_failureText->setObjectName(u"failures"_s);
    m_failureText->setWordWrap(true);
    m_templateText = plainLabel({}, m_verdictBand);
    m_templateText->setObjectName(u"templateText"_s);
    m_templateText->setWordWrap(true);
    auto *texts = new QVBoxLayout;
    texts->setSpacing(0);
    texts->addWidget(m_verdictText);
    texts->addWidget(m_failureText);
    texts->addWidget(m_templateText);
    layout->addWidget(m_verdictShape);
    layout->addLayout(texts, 1);
    return m_verdictBand;
}

QWidget *ResultView::buildLists()
{
    m_resultsTable = new Table(m_theme, m_results, tr("Results"), u"results"_s, this);
    m_resultsTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_resultsTable->setFlexibleMinimum(10);
    // What matters most stands where it is seen without scrolling.
    QHeaderView *header = m_resultsTable->horizontalHeader();
    int place = header->visualIndex(ResultsModel::Value);
    for (const int column : {ResultsModel::Verdict, ResultsModel::Limits, ResultsModel::Dilution,
                             ResultsModel::Tubes, ResultsModel::Spread})
        header->moveSection(header->visualIndex(column), ++place);
    m_checksTable = new Table(m_theme, m_checks, tr("Checks"), u"checks"_s, this);
    m_checksTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_checksTable->setFlexibleMinimum(18);
    m_checkText = plainLabel({}, this);
    m_checkText->setObjectName(u"checkText"_s);
    m_checkText->setWordWrap(true);
    auto *checks = new QWidget(this);
    auto *checksLayout = new QVBoxLayout(checks);
    checksLayout->setContentsMargins({});
    checksLayout->setSpacing(m_theme.gap());
    checksLayout->addWidget(m_checksTable, 1);
    checksLayout->addWidget(m_checkText);
    auto *lists = new QSplitter(Qt::Vertical, this);
    lists->setChildrenCollapsible(false);
    lists->addWidget(m_resultsTable);
    lists->addWidget(checks);
    lists->setSizes({1000, 1000});
    return lists;
}

QWidget *ResultView::buildDetails()
{
    m_overview = new ResultOverview(m_theme, this);
    m_working = browser(tr("Calculation"), u"working"_s, this);
    m_budget = new BarChart(m_theme, tr("Uncertainty budget"), this);
    m_budget->setObjectName(u"budget"_s);
    m_historyTable = new Table(m_theme, m_history, tr("Readings with their history"), u"history"_s, this);
    m_historyTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_recoveriesTable = new Table(m_theme, m_recoveries, tr("Recoveries"), u"recoveries"_s, this);
    // Half a window of 1280 has to hold them.
    m_historyTable->setFlexibleMinimum(12);
    m_recoveriesTable->setFlexibleMinimum(12);
    m_method = new SentenceList(m_theme, tr("Method and cautions"), u"methodText"_s, this);
    m_tabs = new QTabWidget(this);
    QTabWidget *tabs = m_tabs;
    tabs->setObjectName(u"details"_s);
    tabs->setAccessibleName(tr("Details of the chosen result"));
    tabs->setUsesScrollButtons(false);
    tabs->addTab(m_overview, tr("Overvie&w"));
    tabs->addTab(m_working, tr("&Calculation"));
    tabs->addTab(m_budget, tr("&Uncertainty"));
    tabs->addTab(m_recoveriesTable, tr("Recover&ies"));
    tabs->addTab(m_historyTable, tr("&Readings"));
    tabs->addTab(m_method, tr("Me&thod"));
    return tabs;
}

void ResultView::dress()
{
    Sentence verdict = overallVerdict(m_evaluation);
    // However good its numbers look, they are not to be used.
    if (m_stored.summary.state == notebook::RunState::Rejected)
        verdict = {State::Bad, tr("Rejected")};
    const int side = QFontMetrics(m_theme.huge()).height();
    m_verdictShape->setPixmap(m_theme.icon(verdict.state).pixmap(side, side));
    m_verdictText->setFont(m_theme.huge());
    m_verdictText->setText(m_stored.run.tubes.empty() ? QString() : verdict.text);
    m_failureText->setFont(m_theme.bold());
    QPalette own;
    own.setColor(QPalette::Window, m_theme.tint(verdict.state));
    m_verdictBand->setPalette(own);
    chooseResult(m_resultsTable->currentIndex().row());
}

void ResultView::showDecisions()
{
    std::vector<Sentence> decisions = decisionSentences(m_stored);
    const int lines = std::min(3, static_cast<int>(decisions.size()));
    m_decisions->setVisible(lines > 0);
    m_decisions->setMaximumHeight(m_theme.target() * lines + 2 * m_theme.gap());
    m_decisions->setSentences(std::move(decisions));
}

void ResultView::showChecks()
{
    const std::vector<evaluation::CheckLine> lines =
        evaluation::checkLines(m_stored.method, m_stored.run, m_evaluation);
    m_failureText->setText(m_stored.run.tubes.empty() ? QString() : failureText(lines));
    m_checks->setLines(lines);
    m_checksTable->fit();
    chooseCheck(m_checksTable->currentIndex().row());
}

void ResultView::show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                      const ReviewBasis &basis)
{
    const bool another = stored.summary.id != m_stored.summary.id;
    m_stored = stored;
    m_evaluation = evaluation;
    m_basis = basis;
    m_results->show(stored, evaluation, basis);
    m_resultsTable->setColumnHidden(ResultsModel::Measurand, !m_results->hasSeveralMeasurands());
    showChecks();
    m_method->setSentences(methodSentences(stored.method));
    const QString mark = templateSentence(stored);
    m_templateText->setText(mark);
    m_templateText->setVisible(!mark.isEmpty());
    showDecisions();
    m_recoveries->show(stored.method, evaluation);
    m_recoveriesTable->setColumnHidden(RecoveriesModel::Measurand, !m_recoveries->hasSeveralMeasurands());
    m_recoveriesTable->fit();
    m_history->show(stored);
    m_historyTable->setColumnHidden(HistoryModel::Reason, !m_history->hasReasons());
    m_historyTable->fit();
    if (another)
        startAtTheTop();
    if (another || !m_resultsTable->currentIndex().isValid())
        m_resultsTable->selectRow(0);
    m_resultsTable->fit();
    dress();
}

void ResultView::startAtTheTop()
{
    m_tabs->setCurrentIndex(0);
    m_overview->startAtTheTop();
    for (QAbstractItemView *view : std::initializer_list<QAbstractItemView *>{
             m_decisions, m_checksTable, m_method, m_resultsTable, m_recoveriesTable, m_historyTable}) {
        view->setCurrentIndex({});
        view->clearSelection();
        view->scrollToTop();
    }
}

void ResultView::focusResults()
{
    m_resultsTable->setFocus();
}

void ResultView::chooseResult(int row)
{
    if (row < 0 || row >= m_results->rowCount()) {
        m_working->clear();
        m_budget->setBars({}, {});
        m_overview->setSentences({});
        m_overview->setHistory({}, {});
        return;
    }
    const evaluation::Result &result = m_results->row(row).result;
    m_overview->setSentences(sentencesAbout(m_results->row(row), m_stored.method, m_evaluation, m_basis));
    showRecovery(result);
    m_working->setHtml(workingHtml(m_theme, evaluation::working(m_stored.method, m_stored.run, m_evaluation,
                                                                result.sample, result.measurand)));
    showBudget(result);
}

/// What failed first is told without being asked for.
void ResultView::chooseCheck(int row)
{
    const int told = row < 0 ? 0 : row;
    const bool isToTell = told < m_checks->rowCount() &&
                          (row >= 0 || m_checks->row(told).outcome != evaluation::CheckOutcome::Passed);
    m_checkText->setVisible(isToTell);
    m_checkText->setText(isToTell ? m_checks->row(told).message : QString());
}

void ResultView::showRecovery(const evaluation::Result &result)
{
    const std::vector<evaluation::StandardRecovery> recoveries =
        tellingRecoveries(m_stored.run, m_evaluation);
    const evaluation::StandardRecovery *shown = shownRecovery(recoveries, m_stored.method, result.measurand);
    if (!shown) {
        m_overview->setHistory({}, {});
        return;
    }
    m_overview->setHistory(
        historyOf(*shown, m_stored, m_basis),
        tr("Recovery of %1, the newest of its history: %2 g/L expected at use")
            .arg(shown->standard, evaluation::significantText(shown->expected_g_per_L, 3)));
}

void ResultView::showBudget(const evaluation::Result &result)
{
    std::vector<BarChart::Bar> bars;
    for (const evaluation::BudgetTerm &term : result.budget)
        bars.push_back(
            {tr("%1 % %2").arg(QString::number(100 * term.share, 'f', 1), term.term), 100 * term.share});
    m_budget->setBars(std::move(bars), tr("Share of the variance of %1 (%)").arg(result.sample));
}

} // namespace plateau::ui
