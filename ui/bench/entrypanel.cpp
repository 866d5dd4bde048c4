// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What the entry does. How it looks: entrypanellayout.cpp.
#include "ui/bench/entrypanel.h"

#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/widgets.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Long enough for the next digit, short enough to be there before the hand leaves the keys.
constexpr int pause_ms = 350;

} // namespace

EntryPanel::EntryPanel(const Theme &theme, QWidget *parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_place(plainLabel({}, this))
    , m_contents(plainLabel({}, this))
    , m_times(plainLabel({}, this))
    , m_stored(plainLabel({}, this))
    , m_pending(plainLabel({}, this))
    , m_field(new NumberField(theme, {}, this))
    , m_reasonRow(new QWidget(this))
    , m_reasonCaption(new QLabel(m_reasonRow))
    , m_reason(new QLineEdit(m_reasonRow))
    , m_remark(new Notice(theme, this))
    , m_notice(new Notice(theme, this))
    , m_store(button(theme, tr("&Store"), u"storeReading"_s, this))
    , m_retype(button(theme, tr("Ret&ype  Esc"), u"retypeReading"_s, this))
    , m_again(button(theme, tr("Read aga&in"), u"readAgain"_s, this))
    , m_spoilt(button(theme, {}, u"spoiltTube"_s, this))
    , m_leave(button(theme, tr("Keep the stored va&lue"), u"leaveReading"_s, this))
    , m_review(button(theme, tr("&Review this rack"), u"toReview"_s, this))
{
    m_pause.setSingleShot(true);
    m_pause.setInterval(pause_ms);
    build();
    connectAll();
    dress();
}

void EntryPanel::connectAll()
{
    connect(entry(), &NumberEntry::judged, this, &EntryPanel::onJudged);
    connect(entry(), &QLineEdit::returnPressed, this, [this] {
        if (isCorrecting() && entry()->value() && m_reason->text().trimmed().isEmpty())
            m_reason->setFocus();
        else
            submit();
    });
    connect(m_reason, &QLineEdit::returnPressed, this, &EntryPanel::submit);
    connect(m_reason, &QLineEdit::textChanged, this, [this] { m_notice->clear(); });
    connect(m_store, &QPushButton::clicked, this, &EntryPanel::submit);
    connect(m_retype, &QPushButton::clicked, this, &EntryPanel::retype);
    connect(m_again, &QPushButton::clicked, this,
            [this] { setMode(m_mode == Mode::Again ? Mode::Correct : Mode::Again); });
    connect(m_spoilt, &QPushButton::clicked, this, &EntryPanel::askSpoilt);
    connect(m_leave, &QPushButton::clicked, this, [this] {
        if (m_mode == Mode::Spoilt)
            leaveSpoilt();
        else
            Q_EMIT left();
    });
    connect(m_review, &QPushButton::clicked, this, &EntryPanel::goOnWanted);
    connect(&m_pause, &QTimer::timeout, this, &EntryPanel::settled);
    connect(&m_theme, &Theme::changed, this, &EntryPanel::dress);
}

NumberEntry *EntryPanel::entry() const
{
    return m_field->entry();
}

void EntryPanel::ask(const Subject &subject, const Draft &draft)
{
    m_subject = subject;
    m_place->setText(subject.place);
    m_contents->setText(subject.contents);
    m_stored->setText(subject.stored);
    m_reason->setText(draft.reason);
    m_notice->clear();
    m_remark->clear();
    m_asked = false;
    m_mode = Mode::First;
    if (!subject.stored.isEmpty())
        m_mode = subject.isSeries ? Mode::Again : Mode::Correct;
    entry()->setText(draft.text);
    entry()->selectAll();
    entry()->setAccessibleName(tr("Absorbance of %1").arg(subject.place));
    showMode();
    entry()->setFocus();
    Q_EMIT modeChanged();
}

void EntryPanel::setMode(Mode mode)
{
    m_mode = mode;
    m_notice->clear();
    m_asked = false;
    showMode();
    if (mode == Mode::Spoilt)
        m_reason->setFocus();
    else
        entry()->setFocus();
    Q_EMIT modeChanged();
}

void EntryPanel::askSpoilt()
{
    if (m_mode == Mode::Spoilt || !m_review->isHidden())
        return;
    m_modeBefore = m_mode;
    m_reason->clear();
    setMode(Mode::Spoilt);
}

void EntryPanel::leaveSpoilt()
{
    m_reason->clear();
    setMode(m_modeBefore);
    entry()->selectAll();
}

EntryPanel::Draft EntryPanel::draft() const
{
    return {entry()->text(), isCorrecting() ? m_reason->text() : QString()};
}

void EntryPanel::forget()
{
    entry()->clear();
    m_reason->clear();
}

void EntryPanel::resume()
{
    entry()->setFocus();
    entry()->selectAll();
}

void EntryPanel::remark(const QStringList &sentences)
{
    // What is asked is not remarked as well.
    if (sentences.isEmpty() || m_asked)
        m_remark->clear();
    else
        m_remark->say(State::Attention, shownNumbers(sentences.join(u'\n')));
}

void EntryPanel::question(const QString &sentence)
{
    m_asked = true;
    m_remark->clear();
    m_notice->say(State::Attention, shownNumbers(sentence));
    showMode();
    entry()->setFocus();
}

void EntryPanel::retype()
{
    m_asked = false;
    m_notice->clear();
    showMode();
    resume();
}

void EntryPanel::onJudged()
{
    m_asked = false;
    m_notice->clear();
    m_remark->clear();
    m_pause.start();
    showMode();
    Q_EMIT judged();
}

void EntryPanel::submit()
{
    if (m_mode == Mode::Spoilt) {
        submitSpoilt();
        return;
    }
    m_pause.stop();
    if (entry()->isBlank()) {
        m_notice->say(State::Info, tr("Type the absorbance as the photometer shows it, then press Enter."));
        entry()->setFocus();
        return;
    }
    if (!entry()->value()) { // the field itself says why
        entry()->setFocus();
        return;
    }
    if (isCorrecting() && m_reason->text().trimmed().isEmpty()) {
        m_notice->say(State::Attention,
                      tr("Say why the stored reading is corrected; it stays readable beside the new one."));
        m_reason->setFocus();
        return;
    }
    const QString reason = isCorrecting() ? m_reason->text().simplified() : QString();
    Q_EMIT submitted(*entry()->value(), entry()->text(), reason, m_asked);
}

void EntryPanel::submitSpoilt()
{
    const QString reason = m_reason->text().simplified();
    if (reason.isEmpty()) {
        m_notice->say(State::Info, m_subject.isSpoilt
                                       ? tr("Say why the tube counts after all, then press Enter.")
                                       : tr("Say what happened to the tube, then press Enter."));
        m_reason->setFocus();
        return;
    }
    Q_EMIT spoiltWanted(reason);
}

void EntryPanel::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape && m_mode == Mode::Spoilt)
        leaveSpoilt();
    else if (event->key() == Qt::Key_Escape && m_asked)
        retype();
    else if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else if ((event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) && !m_reason->hasFocus())
        Q_EMIT tubeWanted(event->key() == Qt::Key_Up ? -1 : 1); // a reason is of this tube
    else
        QFrame::keyPressEvent(event);
}

bool EntryPanel::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return QFrame::eventFilter(watched, event);
    auto *key = static_cast<QKeyEvent *>(event);
    if (watched == entry()) {
        // Neither stands in a number.
        if (key->text() == "/"_L1) {
            askSpoilt();
            return true;
        }
        if (key->key() == Qt::Key_Space && entry()->isBlank()) {
            Q_EMIT doneWanted();
            return true;
        }
        return QFrame::eventFilter(watched, event);
    }
    // A button would use the arrow keys to hand the focus to the next button.
    if (key->key() != Qt::Key_Up && key->key() != Qt::Key_Down)
        return QFrame::eventFilter(watched, event);
    keyPressEvent(key);
    return true;
}

} // namespace plateau::ui
