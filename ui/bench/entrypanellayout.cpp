// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// How the entry looks. What it does: entrypanel.cpp.
#include "ui/bench/entrypanel.h"

#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <array>

using namespace Qt::StringLiterals;

namespace plateau::ui {

void EntryPanel::build()
{
    m_place->setObjectName(u"place"_s);
    m_contents->setObjectName(u"contents"_s);
    m_times->setObjectName(u"readingTimes"_s);
    m_stored->setObjectName(u"storedReading"_s);
    m_pending->setObjectName(u"pendingCorrection"_s);
    entry()->setObjectName(u"readingEntry"_s);
    entry()->setAccessibleName(tr("Absorbance"));
    entry()->installEventFilter(this);
    m_reason->setObjectName(u"correctionReason"_s);
    m_reason->setMinimumHeight(m_theme.target());
    for (QLabel *label : {m_contents, m_times, m_stored, m_pending})
        label->setWordWrap(true);
    m_review->installEventFilter(this);

    m_reasonCaption->setBuddy(m_reason);
    auto *reasonLayout = new QHBoxLayout(m_reasonRow);
    reasonLayout->setContentsMargins({});
    reasonLayout->addWidget(m_reasonCaption);
    reasonLayout->addWidget(m_reason, 1);

    auto *buttons = new QHBoxLayout;
    for (QPushButton *push : {m_store, m_retype, m_leave, m_review, m_again, m_spoilt})
        buttons->addWidget(push);
    buttons->addStretch();

    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, m_theme.gap(), 0, m_theme.gap()); // in line with the table below it
    layout->setSpacing(m_theme.gap());
    layout->addWidget(m_place);
    layout->addWidget(m_contents);
    layout->addWidget(m_times);
    layout->addWidget(m_stored);
    layout->addWidget(m_field);
    layout->addWidget(m_pending);
    layout->addWidget(m_reasonRow);
    layout->addLayout(buttons);
    layout->addWidget(m_remark);
    layout->addWidget(m_notice);
    const std::array<QWidget *, 8> order{entry(), m_reason, m_store, m_retype,
                                         m_leave, m_review, m_again, m_spoilt};
    for (std::size_t at = 1; at < order.size(); ++at)
        QWidget::setTabOrder(order[at - 1], order[at]);
}

void EntryPanel::dress()
{
    m_place->setFont(m_theme.huge());
    m_contents->setFont(m_theme.large());
    m_times->setFont(m_theme.large());
    m_field->setFonts(m_theme.huge(), m_theme.large());
    m_pending->setFont(m_theme.bold());
}

void EntryPanel::setTimes(const QString &times, State state)
{
    m_times->setText(times);
    m_times->setVisible(!times.isEmpty() && m_mode != Mode::Spoilt && m_review->isHidden());
    QFont font = m_theme.large();
    font.setBold(state == State::Attention);
    m_times->setFont(font);
}

void EntryPanel::showMode()
{
    const bool spoilt = m_mode == Mode::Spoilt;
    const bool stored = !m_subject.stored.isEmpty();
    m_review->hide();
    m_field->setVisible(!spoilt);
    m_times->setVisible(!spoilt && !m_times->text().isEmpty());
    m_stored->setVisible(stored && !spoilt);
    m_reasonRow->setVisible(isCorrecting() || spoilt);
    if (!spoilt)
        m_reasonCaption->setText(tr("R&eason for the correction"));
    else if (m_subject.isSpoilt)
        m_reasonCaption->setText(tr("Why th&e tube counts after all"));
    else
        m_reasonCaption->setText(tr("What happ&ened to the tube"));
    m_store->show();
    if (spoilt)
        m_store->setText(m_subject.isSpoilt ? tr("It &counts") : tr("It does not &count"));
    else if (m_asked)
        m_store->setText(tr("&Keep as read  Enter"));
    else if (isCorrecting())
        m_store->setText(tr("&Store the correction"));
    else if (m_mode == Mode::Again)
        m_store->setText(tr("&Store as a further reading"));
    else
        m_store->setText(tr("&Store"));
    m_retype->setVisible(m_asked && !spoilt);
    m_leave->setVisible(stored || spoilt);
    m_leave->setText(spoilt ? tr("Cance&l  Esc") : tr("Keep the stored va&lue"));
    m_again->setVisible(stored && !spoilt);
    m_again->setText(m_mode == Mode::Again ? tr("Correct the last one &instead") : tr("Read aga&in"));
    m_spoilt->setVisible(!spoilt);
    m_spoilt->setText(m_subject.isSpoilt ? tr("Tube not spoilt  /") : tr("Tube spoilt  /"));
    sayPending();
}

void EntryPanel::sayPending()
{
    m_pending->setText(
        m_mode == Mode::Again
            ? tr("Read again: what was read before stays, and the result rests on the series. Esc cancels.")
            : tr("Not stored yet: the table and the results show what the correction would do. Enter goes to "
                 "the reason, Enter there stores it, Esc leaves the reading as it is."));
    m_pending->setVisible(m_mode == Mode::Again || (isCorrecting() && entry()->value()));
}

void EntryPanel::showDone(const WayOn &wayOn)
{
    m_subject = {};
    m_mode = Mode::First;
    m_asked = false;
    m_place->setText(wayOn.title);
    m_contents->setText(wayOn.text);
    m_review->setText(wayOn.goOn);
    for (QWidget *widget :
         std::initializer_list<QWidget *>{m_stored, m_times, m_field, m_pending, m_reasonRow, m_store,
                                          m_retype, m_again, m_spoilt, m_leave})
        widget->hide();
    m_remark->clear();
    m_notice->clear();
    m_review->show();
    m_review->setFocus();
    Q_EMIT modeChanged();
}

} // namespace plateau::ui
