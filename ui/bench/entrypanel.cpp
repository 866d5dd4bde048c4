// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/entrypanel.h"

#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <array>

using namespace Qt::StringLiterals;

namespace plateau::ui {

EntryPanel::EntryPanel(const Theme &theme, QWidget *parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_place(plainLabel({}, this))
    , m_contents(plainLabel({}, this))
    , m_stored(plainLabel({}, this))
    , m_pending(plainLabel({}, this))
    , m_field(new NumberField(theme, {}, this))
    , m_reasonRow(new QWidget(this))
    , m_reason(new QLineEdit(m_reasonRow))
    , m_notice(new Notice(theme, this))
    , m_store(button(theme, tr("&Store"), u"storeReading"_s, this))
    , m_leave(button(theme, tr("&Leave as it is"), u"leaveReading"_s, this))
    , m_review(button(theme, tr("&Review this rack"), u"toReview"_s, this))
{
    build();
    connect(entry(), &NumberEntry::judged, this, &EntryPanel::onJudged);
    connect(entry(), &QLineEdit::returnPressed, this, [this] {
        if (m_correcting && entry()->value() && m_reason->text().trimmed().isEmpty())
            m_reason->setFocus();
        else
            submit();
    });
    connect(m_reason, &QLineEdit::returnPressed, this, &EntryPanel::submit);
    connect(m_reason, &QLineEdit::textChanged, this, [this] { m_notice->clear(); });
    connect(m_store, &QPushButton::clicked, this, &EntryPanel::submit);
    connect(m_leave, &QPushButton::clicked, this, &EntryPanel::left);
    connect(m_review, &QPushButton::clicked, this, &EntryPanel::goOnWanted);
    connect(&theme, &Theme::changed, this, &EntryPanel::dress);
    dress();
}

void EntryPanel::build()
{
    m_place->setObjectName(u"place"_s);
    m_contents->setObjectName(u"contents"_s);
    m_stored->setObjectName(u"storedReading"_s);
    m_pending->setObjectName(u"pendingCorrection"_s);
    entry()->setObjectName(u"readingEntry"_s);
    entry()->setAccessibleName(tr("Absorbance"));
    m_reason->setObjectName(u"correctionReason"_s);
    m_reason->setMinimumHeight(m_theme.target());
    m_contents->setWordWrap(true);
    m_stored->setWordWrap(true);
    m_pending->setWordWrap(true);
    m_pending->setText(
        tr("Not stored yet: the table and the results show what the correction would do. Enter goes to the "
           "reason, Enter there stores it, Esc leaves the reading as it is."));
    m_review->installEventFilter(this);

    auto *reasonCaption = new QLabel(tr("R&eason for the correction"), m_reasonRow);
    reasonCaption->setBuddy(m_reason);
    auto *reasonLayout = new QHBoxLayout(m_reasonRow);
    reasonLayout->setContentsMargins({});
    reasonLayout->addWidget(reasonCaption);
    reasonLayout->addWidget(m_reason, 1);

    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_store);
    buttons->addWidget(m_leave);
    buttons->addWidget(m_review);
    buttons->addStretch();

    auto *layout = new QVBoxLayout(this);
    setGaps(m_theme, layout);
    layout->addWidget(m_place);
    layout->addWidget(m_contents);
    layout->addWidget(m_stored);
    layout->addWidget(m_field);
    layout->addWidget(m_pending);
    layout->addWidget(m_reasonRow);
    layout->addLayout(buttons);
    layout->addWidget(m_notice);
    const std::array<QWidget *, 5> order{entry(), m_reason, m_store, m_leave, m_review};
    for (std::size_t at = 1; at < order.size(); ++at)
        QWidget::setTabOrder(order[at - 1], order[at]);
}

void EntryPanel::dress()
{
    m_place->setFont(m_theme.huge());
    m_contents->setFont(m_theme.large());
    m_field->setFonts(m_theme.huge(), m_theme.large());
    m_pending->setFont(m_theme.bold());
}

NumberEntry *EntryPanel::entry() const
{
    return m_field->entry();
}

void EntryPanel::ask(const Subject &subject, const Draft &draft)
{
    m_correcting = !subject.stored.isEmpty();
    m_place->setText(subject.place);
    m_contents->setText(subject.contents);
    m_stored->setText(subject.stored);
    m_stored->setVisible(m_correcting);
    m_reasonRow->setVisible(m_correcting);
    m_reason->setText(draft.reason);
    m_store->setText(m_correcting ? tr("&Store the correction") : tr("&Store"));
    m_store->show();
    m_leave->setVisible(m_correcting);
    m_review->hide();
    m_field->show();
    m_notice->clear();
    m_asked = false;
    entry()->setText(draft.text);
    entry()->selectAll();
    entry()->setAccessibleName(tr("Absorbance of %1").arg(subject.place));
    entry()->setFocus();
    sayPending();
}

void EntryPanel::showDone(const WayOn &wayOn)
{
    m_correcting = false;
    m_place->setText(wayOn.title);
    m_contents->setText(wayOn.text);
    m_review->setText(wayOn.goOn);
    for (QWidget *widget : std::initializer_list<QWidget *>{m_stored, m_field, m_reasonRow, m_store, m_leave})
        widget->hide();
    m_notice->clear();
    m_review->show();
    m_review->setFocus();
    sayPending();
}

EntryPanel::Draft EntryPanel::draft() const
{
    return {entry()->text(), m_correcting ? m_reason->text() : QString()};
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

void EntryPanel::sayPending()
{
    m_pending->setVisible(m_correcting && entry()->value());
}

void EntryPanel::question(const QString &sentence)
{
    m_asked = true;
    m_notice->say(State::Attention, sentence);
    entry()->setFocus();
}

void EntryPanel::onJudged()
{
    m_asked = false;
    m_notice->clear();
    sayPending();
    Q_EMIT judged();
}

void EntryPanel::submit()
{
    if (entry()->isBlank()) {
        m_notice->say(State::Info, tr("Type the absorbance as the photometer shows it, then press Enter."));
        entry()->setFocus();
        return;
    }
    if (!entry()->value()) { // the field itself says why
        entry()->setFocus();
        return;
    }
    if (m_correcting && m_reason->text().trimmed().isEmpty()) {
        m_notice->say(State::Attention,
                      tr("Say why the stored reading is corrected; it stays readable beside the new one."));
        m_reason->setFocus();
        return;
    }
    Q_EMIT submitted(*entry()->value(), entry()->text(), m_reason->text().simplified(), m_asked);
}

void EntryPanel::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down)
        Q_EMIT tubeWanted(event->key() == Qt::Key_Up ? -1 : 1);
    else
        QFrame::keyPressEvent(event);
}

bool EntryPanel::eventFilter(QObject *watched, QEvent *event)
{
    // A button would use the arrow keys to hand the focus to the next button.
    if (event->type() != QEvent::KeyPress)
        return QFrame::eventFilter(watched, event);
    auto *key = static_cast<QKeyEvent *>(event);
    if (key->key() != Qt::Key_Up && key->key() != Qt::Key_Down)
        return QFrame::eventFilter(watched, event);
    keyPressEvent(key);
    return true;
}

} // namespace plateau::ui
