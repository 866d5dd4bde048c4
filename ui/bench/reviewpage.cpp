// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reviewpage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/decisionpanel.h"
#include "ui/bench/equipmentnotes.h"
#include "ui/bench/lotnotes.h"
#include "ui/bench/resultview.h"
#include "ui/bench/stores.h"
#include "ui/shared/guard.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"

#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ReviewPage::ReviewPage(const Theme &theme, BenchSession &session, Stores &stores, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_stores(stores)
    , m_notice(new Notice(theme, this))
    , m_equipment(new SentenceList(theme, tr("Equipment and lots that the run was made with"),
                                   u"reviewEquipment"_s, this))
    , m_view(new ResultView(theme, this))
    , m_decision(new DecisionPanel(theme, session, this))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.wideGap(), 0, theme.wideGap(), theme.wideGap());
    layout->setSpacing(theme.gap());
    layout->addWidget(m_notice);
    layout->addWidget(m_equipment);
    layout->addWidget(m_view, 1);
    m_lineHeight = theme.target() + theme.gap() / 2;
    m_equipment->hide();
    layout->addWidget(m_decision);
    // While it is read nobody looks: showRack comes ahead of every look.
    connect(&session, &BenchSession::rackChanged, this, [this](notebook::RunId id) {
        if (isVisible())
            update(id);
    });
    connect(&stores, &Stores::laboratoryChanged, this, [this] { update(m_id); });
    connect(&stores, &Stores::specificationsChanged, this, [this] { update(m_id); });
    connect(&stores, &Stores::equipmentChanged, this, [this] { update(m_id); });
    connect(&stores, &Stores::lotsChanged, this, [this] {
        if (isVisible())
            update(m_id);
    });
    connect(m_decision, &DecisionPanel::decided, this, &ReviewPage::decided);
    // One sample is looked at on the whole page.
    connect(m_view, &ResultView::sampleChosen, m_decision, &DecisionPanel::goToSample);
    connect(m_decision, &DecisionPanel::sampleChosen, m_view, &ResultView::goToSample);
}

void ReviewPage::showRack(notebook::RunId id)
{
    m_id = id;
    m_decision->showRack(id);
    update(id);
}

ReviewBasis ReviewPage::basisOf(const notebook::StoredRun &stored)
{
    ReviewBasis basis;
    m_notice->clear();
    guarded(*m_notice, [&] {
        basis = reviewBasisOf(m_session, stored);
        std::vector<Sentence> doubts = equipmentSentences(stored, m_stores.checkedLaboratory(dayOf(stored)),
                                                          m_stores.equipment(), m_session.now().wall.date());
        const std::vector<Sentence> lots =
            lotSentences(stored, m_stores.everyLot(), m_session.now().wall.date());
        doubts.insert(doubts.end(), lots.begin(), lots.end());
        // No higher than what is said: the results need the room.
        m_equipment->setMaximumHeight(int(std::min<std::size_t>(doubts.size(), 3)) * m_lineHeight);
        m_equipment->setSentences(doubts);
        m_equipment->setVisible(!doubts.empty());
    });
    return basis;
}

void ReviewPage::update(notebook::RunId id)
{
    const Rack *rack = m_session.find(id);
    if (!rack || id != m_id)
        return;
    const ReviewBasis basis = basisOf(rack->stored);
    m_view->show(rack->stored, rack->evaluation, basis);
}

QStringList ReviewPage::unfinished(notebook::RunId id) const
{
    const QString typed = m_decision->unfinished(id);
    return typed.isEmpty() ? QStringList() : QStringList{typed};
}

void ReviewPage::takeFocus()
{
    m_view->focusResults();
}

} // namespace plateau::ui
