// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/resultview.h"

#include "core/evaluation/checklines.h"
#include "ui/bench/decisiontext.h"
#include "ui/bench/methodtext.h"
#include "ui/bench/resultdetails.h"
#include "ui/bench/resultsmodel.h"
#include "ui/bench/rundetails.h"
#include "ui/bench/unitsofrun.h"
#include "ui/bench/verdictband.h"
#include "ui/bench/verdicts.h"
#include "ui/shared/table.h"

#include <QHeaderView>
#include <QItemSelectionModel>
#include <QScrollBar>
#include <QSplitter>
#include <QTimer>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ResultView::ResultView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_results(new ResultsModel(theme, this))
    , m_decisions(new SentenceList(theme, tr("Decisions"), u"decisions"_s, this))
    , m_verdict(new VerdictBand(theme, this))
    , m_resultsTable(new Table(theme, m_results, tr("Results"), u"results"_s, this))
    , m_ofRun(new RunDetails(theme, this))
    , m_ofResult(new ResultDetails(theme, this))
{
    auto *both = new QSplitter(Qt::Horizontal, this);
    both->setChildrenCollapsible(false);
    both->addWidget(buildLists());
    both->addWidget(m_ofResult);
    both->setSizes({1420, 680}); // whatever the contents would like: the tables need more
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_decisions);
    layout->addWidget(m_verdict);
    layout->addWidget(both, 1);
    connect(m_resultsTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) {
                chooseResult(current.row());
                if (const evaluation::Result *result = chosenResult())
                    Q_EMIT sampleChosen(result->sample);
            });
    connect(&theme, &Theme::changed, this,
            [this] { chooseResult(m_resultsTable->currentIndex().row()); }); // the calculation has colours
}

QWidget *ResultView::buildLists()
{
    m_resultsTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_resultsTable->setWrap(Table::Wrap::AsNeeded); // names that begin alike are told apart
    // What matters most stands where it is seen without scrolling.
    QHeaderView *header = m_resultsTable->horizontalHeader();
    int place = header->visualIndex(ResultsModel::Value);
    for (const int column : {ResultsModel::Verdict, ResultsModel::Limits, ResultsModel::Dilution,
                             ResultsModel::Tubes, ResultsModel::Spread})
        header->moveSection(header->visualIndex(column), ++place);
    // Names that wrap at another width make other heights; later, since it is laid out just now.
    auto *dividing = new QTimer(this);
    dividing->setSingleShot(true); // once for all rows
    connect(m_resultsTable->verticalHeader(), &QHeaderView::sectionResized, dividing, qOverload<>(&QTimer::start));
    connect(dividing, &QTimer::timeout, this, &ResultView::divideLists);
    m_lists = new QSplitter(Qt::Vertical, this);
    m_lists->setChildrenCollapsible(false);
    m_lists->addWidget(m_resultsTable);
    m_lists->addWidget(m_ofRun);
    m_lists->setSizes({1000, 1000});
    connect(m_lists, &QSplitter::splitterMoved, this, [this] { m_isDividedByHand = true; });
    return m_lists;
}

/// The results take the height of their rows: of those of a usual rack at any rate, of more half of the room at most,
/// since below them the checks are read.
void ResultView::divideLists()
{
    if (m_isDividedByHand || !m_lists->isVisible())
        return;
    const int frame = m_resultsTable->horizontalHeader()->height() + 2 * m_resultsTable->frameWidth() +
                      m_resultsTable->horizontalScrollBar()->sizeHint().height();
    int rows = frame;
    for (int row = 0; row < m_results->rowCount() && rows < m_lists->height(); ++row)
        rows += m_resultsTable->rowHeight(row);
    constexpr int usualRows = 6;
    int usual = frame;
    for (int row = 0; row < std::min(usualRows, m_results->rowCount()); ++row)
        usual += m_resultsTable->rowHeight(row);
    const int upper = std::min(rows, std::max(usual, m_lists->height() / 2));
    m_lists->setSizes({upper, m_lists->height() - m_lists->handleWidth() - upper});
}

void ResultView::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    divideLists();
}

void ResultView::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    divideLists();
}

void ResultView::showVerdict()
{
    if (m_stored.run.tubes.empty()) {
        m_verdict->show({}, {}, {}, {});
        return;
    }
    const auto lines = evaluation::checkLines(m_stored.method, m_stored.run, m_evaluation);
    Sentence verdict = overallVerdict(m_stored.run, m_evaluation, lines);
    // However good its numbers look, they are not to be used.
    if (m_stored.summary.state == notebook::RunState::Rejected)
        verdict = {State::Bad, tr("Rejected")};
    m_verdict->show(verdict, failureText(lines), beyondLimitsText(m_results->rows()),
                    templateSentence(m_stored));
}

void ResultView::showDecisions()
{
    std::vector<Sentence> decisions = decisionSentences(m_stored);
    const int lines = std::min(3, static_cast<int>(decisions.size()));
    m_decisions->setVisible(lines > 0);
    m_decisions->setMaximumHeight(m_theme.target() * lines + 2 * m_theme.gap());
    m_decisions->setSentences(std::move(decisions));
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
    m_resultsTable->setColumnHidden(ResultsModel::Limits, !m_results->hasLimits());
    m_ofRun->show(stored, evaluation, commonUnits(m_results->rows()), unitsOfRun(stored, basis.laboratory));
    showDecisions();
    showVerdict();
    if (another)
        startAtTheTop();
    if (another || !m_resultsTable->currentIndex().isValid())
        m_resultsTable->selectRow(0);
    m_resultsTable->fit();
    divideLists();
    chooseResult(m_resultsTable->currentIndex().row());
}

void ResultView::startAtTheTop()
{
    m_ofRun->startAtTheTop();
    m_ofResult->startAtTheTop();
    for (QAbstractItemView *view : std::initializer_list<QAbstractItemView *>{m_decisions, m_resultsTable}) {
        view->setCurrentIndex({});
        view->clearSelection();
        view->scrollToTop();
    }
}

const evaluation::Result *ResultView::chosenResult() const
{
    const int row = m_resultsTable->currentIndex().row();
    return row < 0 || row >= m_results->rowCount() ? nullptr : &m_results->row(row).result;
}

void ResultView::focusResults()
{
    m_resultsTable->setFocus();
}

void ResultView::goToSample(const QString &sample)
{
    const evaluation::Result *chosen = chosenResult();
    if (chosen && chosen->sample == sample)
        return;
    for (int row = 0; row < m_results->rowCount(); ++row) {
        if (m_results->row(row).result.sample == sample) {
            m_resultsTable->selectRow(row);
            return;
        }
    }
}

void ResultView::chooseResult(int row)
{
    if (row < 0 || row >= m_results->rowCount())
        m_ofResult->clear();
    else
        m_ofResult->show(m_results->row(row), m_stored, m_evaluation, m_basis);
}

} // namespace plateau::ui
