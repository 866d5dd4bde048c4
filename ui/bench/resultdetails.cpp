// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/resultdetails.h"

#include "core/evaluation/format.h"
#include "core/evaluation/unitsinwords.h"
#include "core/evaluation/working.h"
#include "ui/bench/budgetowners.h"
#include "ui/bench/recoveryhistory.h"
#include "ui/bench/resultoverview.h"
#include "ui/bench/reviewedresult.h"
#include "ui/bench/workingtext.h"
#include "ui/shared/barchart.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QLabel>
#include <QSplitter>
#include <QTabWidget>
#include <QTextBrowser>
#include <QVBoxLayout>

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

Sentence coverageSentence(const evaluation::Result &result)
{
    return {State::Info, ResultDetails::tr("k = %1: %2.").arg(evaluation::significantText(*result.coverageFactor, 3),
                                                            evaluation::coverageFormula(result))};
}

} // namespace

ResultDetails::ResultDetails(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_tabs(new QTabWidget(this))
    , m_overview(new ResultOverview(theme, this))
    , m_working(browser(tr("Calculation"), u"working"_s, this))
    , m_budget(new BarChart(theme, tr("Uncertainty budget"), this))
    , m_owners(new SentenceList(theme, tr("Whose numbers the budget is made of"), u"budgetOwners"_s, this))
{
    m_budget->setObjectName(u"budget"_s);
    m_tabs->setObjectName(u"details"_s);
    m_tabs->setAccessibleName(tr("Details of the chosen result"));
    m_tabs->setUsesScrollButtons(false);
    m_tabs->addTab(m_overview, tr("Overvie&w"));
    m_tabs->addTab(m_working, tr("&Calculation"));
    m_tabs->addTab(buildBudget(), tr("&Uncertainty"));
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_tabs);
}

QWidget *ResultDetails::buildBudget()
{
    auto *page = new QSplitter(Qt::Vertical, this);
    page->setChildrenCollapsible(false);
    auto *owners = new QWidget(page);
    auto *caption = plainLabel(tr("Whose numbers the budget is made of"), owners);
    caption->setFont(m_theme.bold());
    auto *layout = new QVBoxLayout(owners);
    layout->setContentsMargins(m_theme.gap(), 0, m_theme.gap(), m_theme.gap());
    layout->setSpacing(m_theme.gap());
    layout->addWidget(caption);
    layout->addWidget(m_owners, 1);
    page->addWidget(m_budget);
    page->addWidget(owners);
    page->setSizes({1000, 1000});
    return page;
}

void ResultDetails::show(const ReviewedResult &reviewed, const notebook::StoredRun &stored,
                         const evaluation::Evaluation &evaluation, const ReviewBasis &basis)
{
    const evaluation::Result &result = reviewed.result;
    m_overview->setSentences(sentencesAbout(reviewed, stored.method, stored.run, evaluation, basis.methodNames));
    showRecovery(reviewed, stored, evaluation, basis);
    auto sections = evaluation::working(stored.method, stored.run, evaluation, result.sample, result.measurand);
    if (reviewed.unit && evaluation::reportUnitWord(*reviewed.unit) != result.unit && result.value)
        sections.push_back({tr("As the laboratory reports it"),
                            {{tr("in %1").arg(evaluation::reportUnitWord(*reviewed.unit)),
                              tr("the result in %1 in that unit").arg(result.unit),
                              {},
                              reviewed.value}}});
    m_working->setHtml(workingHtml(m_theme, sections));
    showBudget(result);
    std::vector<Sentence> sentences = budgetOwners(stored, result);
    if (result.expandedUncertainty && result.coverageFactor)
        sentences.insert(sentences.begin(), coverageSentence(result));
    m_owners->setSentences(std::move(sentences));
}

void ResultDetails::clear()
{
    m_working->clear();
    m_budget->setBars({}, {});
    m_owners->setSentences({});
    m_overview->setSentences({});
    m_overview->setHistory({}, {});
}

void ResultDetails::startAtTheTop()
{
    m_tabs->setCurrentIndex(0);
    m_overview->startAtTheTop();
}

void ResultDetails::showRecovery(const ReviewedResult &reviewed, const notebook::StoredRun &stored,
                                 const evaluation::Evaluation &evaluation, const ReviewBasis &basis)
{
    const std::vector<evaluation::StandardRecovery> recoveries = tellingRecoveries(stored.run, evaluation);
    const evaluation::StandardRecovery *shown = shownRecovery(recoveries, stored.method, reviewed.result.measurand);
    if (!shown) {
        m_overview->setHistory({}, {});
        return;
    }
    const QString expected = evaluation::withUnit(evaluation::significantText(shown->expected_g_per_L, 3), u"g/L"_s);
    m_overview->setHistory(
        historyOf(*shown, stored, basis),
        tr("Recovery (%) of standards; newest: %1, %2 expected")
            .arg(shown->standard,
                 reviewed.unit
                     ? evaluation::inUnit(expected, evaluation::ReportUnit::GramPerLitre, *reviewed.unit)
                     : expected));
}

void ResultDetails::showBudget(const evaluation::Result &result)
{
    std::vector<BarChart::Bar> bars;
    for (const evaluation::BudgetTerm &term : result.budget)
        bars.push_back(
            {tr("%1 % %2").arg(shownNumber(QString::number(100 * term.share, 'f', 1)), term.term), 100 * term.share});
    m_budget->setBars(std::move(bars), tr("Share of the variance of %1 (%)").arg(result.sample));
}

} // namespace plateau::ui
