// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/today/todaypage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/methodbook.h"
#include "ui/shared/clock.h"
#include "ui/shared/guard.h"
#include "ui/shared/notice.h"
#include "ui/shared/whenseen.h"
#include "ui/shared/widgets.h"
#include "ui/today/todaysection.h"

#include <QGridLayout>
#include <QLabel>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// What is worst stands first.
int weightOf(State state)
{
    return state == State::Bad ? 0 : state == State::Attention ? 1 : 2;
}


/// More than fit on the page are in the notebook.
constexpr std::size_t mostDecisions = 8;

} // namespace

TodayPage::TodayPage(const Theme &theme, const Clock &clock, BenchSession &session, Stores &stores,
                     const MethodBook &methods, QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_session(session)
    , m_stores(stores)
    , m_methods(methods)
    , m_notice(new Notice(theme, this))
    , m_bench(new TodaySection(theme, tr("On the bench"),
                               tr("Nothing is on the bench. Start with New run, or open a run file."),
                               u"todayBench"_s, this))
    , m_waiting(new TodaySection(theme, tr("Waiting to be run"),
                                 tr("No sample waits. Samples are registered under Samples; repeats that "
                                    "decided runs advise come by themselves."),
                                 u"todayWaiting"_s, this))
    , m_standards(new TodaySection(theme, tr("Standards that can be used"),
                                   tr("No standard can be used. Fresh ones are entered under Standards."),
                                   u"todayStandards"_s, this))
    , m_due(new TodaySection(theme, tr("Due or running out"),
                             tr("No check of equipment falls due, and no lot runs out, in the next days."),
                             u"todayDue"_s, this))
    , m_decided(new TodaySection(theme, tr("Latest decisions"),
                                 tr("No run has been decided on yet. Decided runs are kept in the Notebook."),
                                 u"todayDecided"_s, this))
    , m_update(new WhenSeen(this, [this] { refresh(); }))
{
    build();
    connect(&session, &BenchSession::notebookChanged, m_update, &WhenSeen::request);
    for (const auto changed : {&Stores::waitingChanged, &Stores::lotsChanged, &Stores::standardsChanged,
                               &Stores::equipmentChanged, &Stores::laboratoryChanged})
        connect(&stores, changed, m_update, &WhenSeen::request);
    connect(&session, &BenchSession::ticked, this, [this] {
        if (isVisible())
            showWhatGoesOn();
    });
    m_update->request();
}

std::vector<TodaySection *> TodayPage::sections() const
{
    return {m_bench, m_waiting, m_standards, m_due, m_decided};
}

void TodayPage::build()
{
    for (TodaySection *section : sections()) {
        connect(section, &TodaySection::runWanted, this, &TodayPage::runWanted);
        connect(section, &TodaySection::bookWanted, this, &TodayPage::bookWanted);
    }
    auto *grid = new QGridLayout(this);
    grid->setContentsMargins(m_theme.wideGap(), m_theme.gap(), m_theme.wideGap(), m_theme.wideGap());
    grid->setSpacing(m_theme.wideGap());
    grid->addWidget(m_notice, 0, 0, 1, 2);
    grid->addWidget(m_bench, 1, 0);
    grid->addWidget(m_waiting, 1, 1);
    grid->addWidget(m_standards, 2, 0);
    grid->addWidget(m_due, 2, 1);
    grid->addWidget(m_decided, 3, 0, 1, 2);
    for (const int column : {0, 1})
        grid->setColumnStretch(column, 1);
    for (const int row : {1, 2, 3})
        grid->setRowStretch(row, 1);
}

void TodayPage::open()
{
    const auto all = sections();
    const auto first =
        std::ranges::find_if(all, [](const TodaySection *section) { return !section->lines().empty(); });
    if (first != all.end())
        (*first)->list().setFocus();
}

void TodayPage::showWhatGoesOn()
{
    m_bench->setLines(benchLines(m_session));
    m_standards->setLines(standardLines(m_made, m_clock.now()));
}

std::vector<TodayLine> TodayPage::linesOfLots(const QDateTime &now) const
{
    const std::vector<planning::Lot> lots = m_stores.lots();
    if (lots.empty())
        return {}; // the methods, which name the reagents, need not be read for nothing
    std::vector<assay::Method> methods;
    for (const notebook::StoredMethod &stored : m_methods.catalogue())
        methods.push_back(stored.method);
    const planning::Laboratory laboratory = m_stores.laboratory();
    return lotLines(lots, now, ReagentNames(methods), laboratory.rackRows * laboratory.rackColumns);
}

void TodayPage::refresh()
{
    guarded(*m_notice, [this] {
        m_made = m_stores.preparations();
        const QDateTime now = m_clock.now();
        std::vector<TodayLine> due = equipmentLines(m_stores.equipment(), now.date());
        std::ranges::move(linesOfLots(now), std::back_inserter(due));
        std::ranges::stable_sort(due, {}, [](const TodayLine &line) { return weightOf(line.sentence.state); });
        m_due->setLines(std::move(due));
        m_waiting->setLines(waitingLines(m_stores.waiting()));
        std::vector<notebook::RunSummary> latest;
        for (notebook::FoundRun &found :
             m_session.search().page({}, notebook::RunOrder::ByDecision, mostDecisions).runs)
            latest.push_back(std::move(found.summary));
        m_decided->setLines(decisionLines(std::move(latest), mostDecisions));
    });
    showWhatGoesOn();
}

} // namespace plateau::ui
