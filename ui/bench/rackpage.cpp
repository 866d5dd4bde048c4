// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/rackpage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/readpage.h"
#include "ui/bench/reviewpage.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

using namespace Qt::StringLiterals;

namespace plateau::ui {

RackPage::RackPage(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_letter(plainLabel({}, this))
    , m_title(new ElidingLabel(this))
    , m_method(new ElidingLabel(this))
    , m_readButton(button(theme, tr("&1  Read"), u"stageRead"_s, this))
    , m_reviewButton(button(theme, tr("&2  Review"), u"stageReview"_s, this))
    , m_unstored(new Notice(theme, this))
    , m_stages(new QStackedWidget(this))
    , m_read(new ReadPage(theme, session, this))
    , m_review(new ReviewPage(theme, session, this))
{
    m_stages->addWidget(m_read);
    m_stages->addWidget(m_review);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(buildHeader());
    layout->addWidget(m_unstored);
    layout->addWidget(m_stages, 1);
    connect(m_readButton, &QPushButton::clicked, this, [this] { showStage(Read); });
    connect(m_reviewButton, &QPushButton::clicked, this, [this] { showStage(Review); });
    connect(m_read, &ReadPage::reviewWanted, this, [this] { showStage(Review); });
    connect(m_read, &ReadPage::unstoredChanged, this, &RackPage::sayUnstored);
    connect(m_read, &ReadPage::personWanted, this, &RackPage::personWanted);
    connect(m_review, &ReviewPage::decided, this, &RackPage::decided);
    connect(&theme, &Theme::changed, this, &RackPage::dress);
    dress();
}

QWidget *RackPage::buildHeader()
{
    auto *header = new QWidget(this);
    m_letter->setObjectName(u"rackLetter"_s);
    m_title->setObjectName(u"rackTitle"_s);
    auto *names = new QVBoxLayout;
    names->setSpacing(0);
    names->addWidget(m_title);
    names->addWidget(m_method);
    auto *layout = new QHBoxLayout(header);
    setGaps(m_theme, layout);
    layout->addWidget(m_letter);
    layout->addSpacing(m_theme.gap());
    layout->addLayout(names, 1);
    layout->addWidget(m_readButton);
    layout->addWidget(m_reviewButton);
    for (QPushButton *stage : {m_readButton, m_reviewButton}) {
        stage->setCheckable(true);
        stage->setAutoExclusive(true);
    }
    return header;
}

void RackPage::dress()
{
    m_letter->setFont(m_theme.large());
    m_title->setFont(m_theme.bold());
    QPalette muted;
    muted.setColor(QPalette::WindowText, m_theme.mutedText());
    m_method->setPalette(muted);
    for (QPushButton *stage : {m_readButton, m_reviewButton}) {
        QPalette own;
        if (stage->isChecked())
            own.setColor(QPalette::Button, m_theme.tint(State::Info));
        stage->setPalette(own);
        stage->setFont(stage->isChecked() ? m_theme.bold() : font());
    }
}

RackPage::Stage RackPage::stage() const
{
    return m_stages->currentWidget() == m_review ? Review : Read;
}

void RackPage::showRack(notebook::RunId id, Stage stage)
{
    const Rack *rack = m_session.find(id);
    if (!rack)
        return;
    m_id = id;
    m_session.takeInHand(id);
    m_letter->setText(tr("Rack %1").arg(rack->letter));
    m_title->setText(rack->stored.run.title);
    m_method->setText(tr("%1, version %2, tubes: %3")
                          .arg(rack->stored.method.name)
                          .arg(rack->stored.method.version)
                          .arg(rack->stored.run.tubes.size()));
    m_read->showRack(id);
    m_review->showRack(id);
    showStage(stage);
}

void RackPage::showStage(Stage stage)
{
    m_readButton->setChecked(stage == Read);
    m_reviewButton->setChecked(stage == Review);
    dress();
    if (stage == Read) {
        m_stages->setCurrentWidget(m_read);
        m_read->takeUp();
    } else {
        m_review->showRack(m_id);
        m_stages->setCurrentWidget(m_review);
        m_review->takeFocus();
    }
    sayUnstored();
    Q_EMIT stageChanged();
}

void RackPage::sayUnstored()
{
    const QStringList typed = stage() == Review ? m_read->unstored(m_id) : m_read->unstoredElsewhere();
    if (typed.isEmpty())
        m_unstored->clear();
    else
        m_unstored->say(
            State::Attention,
            tr("Typed and not stored, so not in the results: %1. Go to it under Read and store it, or "
               "leave it with Esc.")
                .arg(typed.join(tr("; "))));
}

} // namespace plateau::ui
