// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/today/todaypage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
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

/// More than fit on the page are in the notebook.
constexpr std::size_t mostDecisions = 8;

} // namespace

TodayPage::TodayPage(const Theme &theme, BenchSession &session, Stores &stores, QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_session(session)
    , m_stores(stores)
    , m_notice(new Notice(theme, this))
    , m_bench(new TodaySection(theme, tr("On the bench"),
                               tr("Nothing is on the bench. Start with New run, or open a run file."),
                               u"todayBench"_s, this))
    , m_waiting(new TodaySection(theme, tr("Waiting to be run"),
                                 tr("No sample waits. Samples are registered under Samples; repeats that "
                                    "decided runs advise come by themselves."),
                                 u"todayWaiting"_s, this))
    , m_decided(new TodaySection(theme, tr("Decided last"),
                                 tr("No run was decided yet. Decided runs are kept in the Notebook."),
                                 u"todayDecided"_s, this))
    , m_update(new WhenSeen(this, [this] { refresh(); }))
{
    build();
    connect(&session, &BenchSession::notebookChanged, m_update, &WhenSeen::request);
    connect(&stores, &Stores::waitingChanged, m_update, &WhenSeen::request);
    connect(&session, &BenchSession::ticked, this, [this] {
        if (isVisible())
            showBench();
    });
    m_update->request();
}

std::vector<TodaySection *> TodayPage::sections() const
{
    return {m_bench, m_waiting, m_decided};
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
    grid->addWidget(m_decided, 2, 0, 1, 2);
    for (const int column : {0, 1})
        grid->setColumnStretch(column, 1);
    grid->setRowStretch(1, 1);
    grid->setRowStretch(2, 1);
}

void TodayPage::open()
{
    const auto all = sections();
    const auto first =
        std::ranges::find_if(all, [](const TodaySection *section) { return !section->lines().empty(); });
    if (first != all.end())
        (*first)->list().setFocus();
}

void TodayPage::showBench()
{
    m_bench->setLines(benchLines(m_session));
}

void TodayPage::refresh()
{
    showBench();
    guarded(*m_notice, [this] {
        m_waiting->setLines(waitingLines(m_stores.waiting()));
        m_decided->setLines(decisionLines(m_session.allRuns(), mostDecisions));
    });
}

} // namespace plateau::ui
