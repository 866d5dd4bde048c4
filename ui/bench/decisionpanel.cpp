// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/decisionpanel.h"

#include "ui/bench/benchsession.h"
#include "ui/shared/guard.h"
#include "ui/shared/widgets.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

DecisionPanel::DecisionPanel(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_name(new QLineEdit(this))
    , m_reason(new QLineEdit(this))
    , m_notice(new Notice(theme, this))
{
    m_name->setObjectName(u"decisionPerson"_s);
    m_reason->setObjectName(u"decisionReason"_s);
    m_name->setMinimumHeight(theme.target());
    m_reason->setMinimumHeight(theme.target());
    auto *nameCaption = new QLabel(tr("&Decided by"), this);
    nameCaption->setBuddy(m_name);
    auto *reasonCaption = new QLabel(tr("R&eason"), this);
    reasonCaption->setBuddy(m_reason);
    auto *accept = button(theme, tr("&Accept"), u"acceptRun"_s, this);
    auto *reject = button(theme, tr("Re&ject"), u"rejectRun"_s, this);

    auto *grid = new QGridLayout(this);
    grid->setContentsMargins({});
    grid->setSpacing(theme.gap());
    grid->addWidget(m_notice, 0, 0, 1, 6);
    grid->addWidget(nameCaption, 1, 0);
    grid->addWidget(m_name, 1, 1);
    grid->addWidget(reasonCaption, 1, 2);
    grid->addWidget(m_reason, 1, 3);
    grid->addWidget(accept, 1, 4);
    grid->addWidget(reject, 1, 5);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(3, 3);

    connect(accept, &QPushButton::clicked, this, [this] { decide(notebook::DecisionKind::Accepted); });
    connect(reject, &QPushButton::clicked, this, [this] { decide(notebook::DecisionKind::Rejected); });
    connect(&session, &BenchSession::personChanged, this, [this] { m_name->setText(m_session.person()); });
    connect(m_name, &QLineEdit::textEdited, m_notice, &Notice::clear);
    connect(m_reason, &QLineEdit::textEdited, m_notice, &Notice::clear);
}

void DecisionPanel::showRack(notebook::RunId id)
{
    if (id != m_id) {
        m_name->setText(m_session.person());
        m_reason->clear();
        m_notice->clear();
    }
    m_id = id;
}

void DecisionPanel::decide(notebook::DecisionKind kind)
{
    const QString name = m_name->text().simplified();
    if (name.isEmpty()) {
        m_notice->say(State::Attention, tr("Say who decides: type a name."));
        m_name->setFocus();
        return;
    }
    const notebook::RunId id = m_id;
    const bool stored =
        guarded(*m_notice, [&] { m_session.decide(id, kind, name, m_reason->text().simplified()); });
    if (!stored) {
        m_reason->setFocus();
        return;
    }
    m_notice->clear();
    m_reason->clear();
    Q_EMIT decided(id);
}

} // namespace plateau::ui
