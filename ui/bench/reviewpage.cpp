// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reviewpage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/decisionpanel.h"
#include "ui/bench/resultview.h"
#include "ui/shared/theme.h"

#include <QVBoxLayout>

namespace plateau::ui {

ReviewPage::ReviewPage(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_view(new ResultView(theme, this))
    , m_decision(new DecisionPanel(theme, session, this))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.wideGap(), 0, theme.wideGap(), theme.wideGap());
    layout->setSpacing(theme.gap());
    layout->addWidget(m_view, 1);
    layout->addWidget(m_decision);
    connect(&session, &BenchSession::rackChanged, this, &ReviewPage::update);
    connect(m_decision, &DecisionPanel::decided, this, &ReviewPage::decided);
}

void ReviewPage::showRack(notebook::RunId id)
{
    m_id = id;
    m_decision->showRack(id);
    update(id);
}

void ReviewPage::update(notebook::RunId id)
{
    const Rack *rack = m_session.find(id);
    if (rack && id == m_id)
        m_view->show(rack->stored, rack->evaluation);
}

void ReviewPage::takeFocus()
{
    m_view->focusResults();
}

} // namespace plateau::ui
