// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/recordview.h"

#include "core/exchange/writers.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/resultview.h"
#include "ui/books/runsmodel.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/guard.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

RecordView::RecordView(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_title(new ElidingLabel(this))
    , m_subtitle(new ElidingLabel(this))
    , m_notice(new Notice(theme, this))
    , m_view(new ResultView(theme, this))
{
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(buildHeader());
    layout->addWidget(m_notice);
    layout->addWidget(m_view, 1);
    layout->addWidget(buildFooter());
}

QWidget *RecordView::buildHeader()
{
    auto *header = new QWidget(this);
    m_title->setFont(m_theme.large());
    m_title->setObjectName(u"recordTitle"_s);
    m_back = button(m_theme, tr("&Back to the list"), u"backToList"_s, header);
    m_toRack = button(m_theme, tr("To its rac&k"), u"toItsRack"_s, header);
    connect(m_back, &QPushButton::clicked, this, &RecordView::closed);
    connect(m_toRack, &QPushButton::clicked, this, [this] { Q_EMIT rackWanted(runId()); });
    auto *names = new QVBoxLayout;
    names->setSpacing(0);
    names->addWidget(m_title);
    names->addWidget(m_subtitle);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addLayout(names, 1);
    layout->addWidget(m_toRack);
    layout->addWidget(m_back);
    return header;
}

QWidget *RecordView::buildFooter()
{
    m_lockRow = new QWidget(this);
    m_reason = new QLineEdit(m_lockRow);
    m_reason->setObjectName(u"reopenReason"_s);
    m_reason->setMinimumHeight(m_theme.target());
    auto *caption = new QLabel(tr("Locked. R&eason to put it back on the bench"), m_lockRow);
    caption->setBuddy(m_reason);
    auto *putBackButton = button(m_theme, tr("Put bac&k on the bench"), u"reopenRun"_s, m_lockRow);
    connect(putBackButton, &QPushButton::clicked, this, &RecordView::putBack);
    connect(m_reason, &QLineEdit::returnPressed, this, &RecordView::putBack);
    auto *layout = new QHBoxLayout(m_lockRow);
    layout->setContentsMargins({});
    layout->addWidget(caption);
    layout->addWidget(m_reason, 1);
    layout->addWidget(putBackButton);
    return m_lockRow;
}

bool RecordView::showRun(notebook::RunId id)
{
    const bool another = id != runId();
    if (another) {
        m_notice->clear();
        m_reason->clear();
    }
    if (!guarded(*m_notice, [&] { m_stored = m_session.load(id); }))
        return false;
    fill();
    return true;
}

void RecordView::fill()
{
    const notebook::RunSummary &summary = m_stored.summary;
    const bool onBench = summary.state == notebook::RunState::OnBench;
    m_title->setText(summary.title);
    m_subtitle->setText(
        tr("%1, version %2, begun %3, %4")
            .arg(summary.methodName)
            .arg(summary.methodVersion)
            .arg(momentText(m_stored.run.startedAt.value_or(summary.createdAt)), stateText(summary.state)));
    m_toRack->setVisible(onBench);
    m_lockRow->setVisible(!onBench);

    const evaluation::Evaluation evaluation = notebook::evaluationOf(m_stored);
    m_view->show(m_stored, evaluation);
    compareWithDecision(evaluation);
}

void RecordView::compareWithDecision(const evaluation::Evaluation &evaluation)
{
    if (m_stored.summary.state == notebook::RunState::OnBench || m_stored.decisions.empty())
        return;
    const notebook::Decision &last = m_stored.decisions.back();
    if (exchange::writeEvaluation(evaluation) == last.evaluation)
        return;
    m_notice->say(State::Attention,
                  tr("This program calculates other numbers from the stored readings than version %1 "
                     "did when the run was decided. Shown are the new ones.")
                      .arg(last.programVersion));
}

void RecordView::putBack()
{
    if (m_session.person().isEmpty()) {
        m_notice->say(State::Info,
                      tr("Say who is at the bench first: type your name on the left and press Enter."));
        Q_EMIT personWanted();
        return;
    }
    const notebook::RunId id = runId();
    const QString reason = m_reason->text().simplified();
    if (!guarded(*m_notice, [&] { m_session.reopen(id, reason); })) {
        m_reason->setFocus();
        return;
    }
    m_notice->clear();
    m_reason->clear();
    Q_EMIT rackWanted(id);
}

void RecordView::takeFocus()
{
    m_view->focusResults();
}

void RecordView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
