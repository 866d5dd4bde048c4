// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/rackpage.h"

#include "ui/bench/actionwords.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/pipettepage.h"
#include "ui/bench/readpage.h"
#include "ui/bench/reviewpage.h"
#include "ui/bench/timewords.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/notice.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

using namespace Qt::StringLiterals;

namespace plateau::ui {

RackPage::RackPage(const Theme &theme, BenchSession &session, Stores &stores, const BenchSettings &settings,
                   QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_letter(plainLabel({}, this))
    , m_title(new ElidingLabel(this))
    , m_method(new ElidingLabel(this))
    , m_ownNext(new ElidingLabel(this))
    , m_pipetteButton(button(theme, tr("&1  Pipette"), u"stagePipette"_s, this))
    , m_readButton(button(theme, tr("&2  Read"), u"stageRead"_s, this))
    , m_reviewButton(button(theme, tr("&3  Review"), u"stageReview"_s, this))
    , m_unstored(new Notice(theme, this))
    , m_stages(new PageStack(this))
    , m_pipette(new PipettePage(theme, session, stores, this))
    , m_read(new ReadPage(theme, session, stores, settings, this))
    , m_review(new ReviewPage(theme, session, stores, this))
{
    m_stages->addWidget(m_pipette);
    m_stages->addWidget(m_read);
    m_stages->addWidget(m_review);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(buildHeader());
    layout->addWidget(m_unstored);
    layout->addWidget(m_stages, 1);
    for (const auto &[push, stage] : stageButtons())
        connect(push, &QPushButton::clicked, this, [this, wanted = stage] { showStage(wanted); });
    connect(m_pipette, &PipettePage::readWanted, this, [this] { showStage(Read); });
    connect(m_pipette, &PipettePage::reviewWanted, this, [this] { showStage(Review); });
    connect(m_pipette, &PipettePage::personWanted, this, &RackPage::personWanted);
    connect(m_read, &ReadPage::pipetteWanted, this, [this] { showStage(Pipette); });
    connect(m_read, &ReadPage::reviewWanted, this, [this] { showStage(Review); });
    connect(m_read, &ReadPage::unstoredChanged, this, &RackPage::sayUnstored);
    connect(m_read, &ReadPage::doneWanted, this, &RackPage::doneWanted);
    connect(m_read, &ReadPage::personWanted, this, &RackPage::personWanted);
    connect(m_review, &ReviewPage::decided, this, &RackPage::decided);
    connect(&session, &BenchSession::rackChanged, this, [this](notebook::RunId id) {
        if (id == m_id)
            sayMethod(); // tubes may have been added
    });
    for (const auto signal : {&BenchSession::ticked, &BenchSession::nextChanged, &BenchSession::notebookChanged})
        connect(&session, signal, this, &RackPage::sayOwnNext);
    connect(&theme, &Theme::changed, this, &RackPage::dress);
    dress();
}

QWidget *RackPage::buildHeader()
{
    auto *header = new QWidget(this);
    m_letter->setObjectName(u"rackLetter"_s);
    m_title->setObjectName(u"rackTitle"_s);
    m_method->setObjectName(u"rackMethod"_s);
    m_ownNext->setObjectName(u"rackOwnNext"_s);
    m_ownNext->hide();
    auto *names = new QVBoxLayout;
    names->setSpacing(0);
    names->addWidget(m_title);
    names->addWidget(m_method);
    names->addWidget(m_ownNext);
    auto *layout = new QHBoxLayout(header);
    setGaps(m_theme, layout);
    layout->addWidget(m_letter);
    layout->addSpacing(m_theme.gap());
    layout->addLayout(names, 1);
    for (const auto &[push, stage] : stageButtons()) {
        layout->addWidget(push);
        push->setCheckable(true);
        push->setAutoExclusive(true);
    }
    return header;
}

std::vector<std::pair<QPushButton *, RackPage::Stage>> RackPage::stageButtons() const
{
    return {{m_pipetteButton, Pipette}, {m_readButton, Read}, {m_reviewButton, Review}};
}

void RackPage::dress()
{
    m_letter->setFont(m_theme.large());
    m_title->setFont(m_theme.bold());
    m_ownNext->setFont(m_theme.bold());
    QPalette muted;
    muted.setColor(QPalette::WindowText, m_theme.mutedText());
    m_method->setPalette(muted);
    for (const auto &[push, stage] : stageButtons()) {
        QPalette own;
        if (push->isChecked())
            own.setColor(QPalette::Button, m_theme.tint(State::Info));
        push->setPalette(own);
        push->setFont(push->isChecked() ? m_theme.bold() : font());
    }
}

RackPage::Stage RackPage::stage() const
{
    if (m_stages->currentWidget() == m_pipette)
        return Pipette;
    return m_stages->currentWidget() == m_review ? Review : Read;
}

RackPage::Stage RackPage::dueStage(const Rack &rack)
{
    if (rack.sheet.next())
        return Pipette;
    return nextUnread(rack.stored.method, rack.stored.run) ? Read : Review;
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
    sayMethod();
    sayOwnNext();
    m_pipette->showRack(id);
    m_read->showRack(id);
    m_review->showRack(id);
    showStage(stage);
}

void RackPage::sayMethod()
{
    if (const Rack *rack = m_session.find(m_id))
        m_method->setText(tr("%1, version %2, tubes: %3")
                              .arg(rack->stored.method.name)
                              .arg(rack->stored.method.version)
                              .arg(rack->stored.run.tubes.size()));
}

void RackPage::sayOwnNext()
{
    const Rack *rack = m_session.find(m_id);
    const auto leading = rack ? m_session.next() : std::nullopt;
    const auto own = leading && leading->run != m_id ? m_session.nextOf(*rack) : std::nullopt;
    m_ownNext->setVisible(own && own->times);
    if (own && own->times)
        m_ownNext->setText(tr("This rack %1: %2")
                               .arg(countdownText(own->times->opens_s, own->times->closes_s),
                                    withDecimalSigns(actionWords(*own, *rack))));
}

void RackPage::showStage(Stage stage)
{
    for (const auto &[push, own] : stageButtons())
        push->setChecked(own == stage);
    dress();
    if (stage == Pipette) {
        m_stages->setCurrentWidget(m_pipette);
        setHelp(*this, {u"pipette"_s, {}});
        m_pipette->takeUp();
    } else if (stage == Read) {
        m_stages->setCurrentWidget(m_read);
        setHelp(*this, {u"read"_s, {}});
        m_read->takeUp();
    } else {
        m_review->showRack(m_id);
        m_stages->setCurrentWidget(m_review);
        setHelp(*this, {u"review"_s, {}});
        m_review->takeFocus();
    }
    sayUnstored();
    Q_EMIT stageChanged();
}

void RackPage::undoMark()
{
    m_pipette->undo();
}

QStringList RackPage::unstored(notebook::RunId id) const
{
    return m_pipette->unstored(id) + m_read->unstored(id) + m_review->unfinished(id);
}

void RackPage::sayUnstored()
{
    // What the stage on show has in its own entry is seen there.
    QStringList pipetted = m_pipette->unstored(m_id);
    QStringList read = m_read->unstored(m_id);
    if (stage() == Pipette)
        pipetted.clear();
    else if (stage() == Read)
        read = m_read->unstoredElsewhere();
    const auto sentence = [](const QString &stageName, const QStringList &typed) {
        return typed.isEmpty() ? QString()
                               : tr("Typed and not stored, so not in the results: %1. Go to it under %2 and "
                                    "store it, or leave it with Esc.")
                                     .arg(typed.join(tr("; ")), stageName);
    };
    QStringList sentences{sentence(tr("Pipette"), pipetted), sentence(tr("Read"), read)};
    sentences.removeAll(QString());
    if (sentences.isEmpty())
        m_unstored->clear();
    else
        m_unstored->say(State::Attention, sentences.join(u'\n'));
}

} // namespace plateau::ui
