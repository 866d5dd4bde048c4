// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/runfilepage.h"

#include "ui/bench/benchsession.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/guard.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/widgets.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

RunFilePage::RunFilePage(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_heading(new ElidingLabel(this))
    , m_summary(plainLabel({}, this))
    , m_problems(new ProblemList(theme, u"fileProblems"_s, this))
    , m_notice(new Notice(theme, this))
    , m_put(button(theme, tr("P&ut on the bench"), u"putFileOnBench"_s, this))
    , m_another(button(theme, tr("Open &another file…"), u"anotherFile"_s, this))
{
    setHelp(*this, {u"reports"_s, {}});
    m_heading->setFont(theme.large());
    m_heading->setObjectName(u"fileName"_s);
    m_summary->setObjectName(u"fileSummary"_s);
    m_summary->setWordWrap(true);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_put);
    buttons->addWidget(m_another);
    buttons->addStretch();
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(m_heading);
    layout->addWidget(m_summary);
    layout->addWidget(m_notice);
    layout->addWidget(m_problems, 1);
    layout->addLayout(buttons);
    layout->addStretch();
    connect(m_put, &QPushButton::clicked, this, &RunFilePage::putOnBench);
    connect(m_another, &QPushButton::clicked, this, &RunFilePage::anotherWanted);
    connect(&theme, &Theme::changed, this, [this, &theme] { m_heading->setFont(theme.large()); });
}

void RunFilePage::read(const QString &path)
{
    const QString fileName = QFileInfo(path).fileName();
    m_document.reset();
    const exchange::Read<QByteArray> bytes = exchange::readFile(path);
    if (!bytes.value) {
        showProblems(fileName, bytes.problems);
        return;
    }
    exchange::Read<exchange::RunDocument> read = exchange::readRun(*bytes.value, m_installedMethod);
    m_document = std::move(read.value);
    showProblems(fileName, read.problems);
    if (m_document && read.problems.empty())
        putOnBench();
}

void RunFilePage::showProblems(const QString &fileName, const assay::Problems &problems)
{
    m_notice->clear();
    m_heading->setText(fileName);
    m_problems->setProblems(problems);
    m_problems->setVisible(!problems.empty());
    m_put->setVisible(m_document.has_value());
    if (m_document)
        m_summary->setText(problems.empty() ? tr("The file can be put on the bench.")
                                            : tr("The file can be used. Worth knowing first:"));
    else
        m_summary->setText(
            tr("The file cannot be used, and nothing was taken from it:"));
    (m_document ? m_put : m_another)->setFocus();
}

void RunFilePage::putOnBench()
{
    if (!m_document)
        return;
    if (m_session.person().isEmpty()) {
        m_notice->say(State::Info,
                      tr("First say who is at the bench: type your name on the left and press Enter."));
        Q_EMIT personWanted();
        return;
    }
    notebook::RunId id;
    std::optional<notebook::RunSummary> same;
    const bool done = guarded(*m_notice, [&] {
        same = m_session.findSameRun(m_document->run, m_document->method);
        if (!same)
            id = m_session.addRun(m_document->run, m_document->method);
    });
    if (!done)
        return;
    m_document.reset();
    if (same)
        sayThatItIsThere(*same);
    else
        Q_EMIT opened(id);
}

void RunFilePage::sayThatItIsThere(const notebook::RunSummary &same)
{
    const Rack *rack = m_session.find(same.id);
    const QString where =
        rack ? tr("It is rack %1.").arg(rack->letter) : tr("It is decided on and stands under Notebook.");
    m_summary->setText(tr("Nothing was stored."));
    m_notice->say(State::Attention, tr("The notebook already has this very run, with the same readings: run "
                                       "%1, \"%2\", put on the bench on %3. %4")
                                        .arg(same.id.value)
                                        .arg(same.title, momentText(same.createdAt), where));
    m_problems->hide();
    m_put->hide();
    m_another->setFocus();
}

} // namespace plateau::ui
