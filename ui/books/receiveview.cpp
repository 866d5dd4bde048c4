// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/receiveview.h"

#include "ui/books/lotlabelform.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ReceiveView::ReceiveView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_notice(new Notice(theme, this))
{
    auto *heading = plainLabel(tr("Receive a container"), this);
    heading->setFont(theme.large());
    auto *back = button(theme, tr("&Back to the list"), u"backFromReceive"_s, this);
    auto *head = new QHBoxLayout;
    head->addWidget(heading, 1);
    head->addWidget(back);
    auto *how = plainLabel(tr("Each bottle has a line of its own in the book; water and buffers count too. "
                              "Name the reagent as the methods do, so that plans find it."),
                           this);
    how->setWordWrap(true);
    auto *host = new QWidget(this);
    auto *form = new QFormLayout(host);
    form->setContentsMargins({});
    m_label = new LotLabelForm(theme, form, u"received"_s);
    // Made after the label's fields, for that is the order of the Tab key.
    m_volume_mL = new NumberField(theme, u"mL"_s, this);
    addFormRow(form, tr("Vol&ume in it (mL)"), m_volume_mL, u"receivedVolume"_s);
    auto *store = button(theme, tr("&Store it in the book"), u"storeReceipt"_s, this);
    auto *row = new QHBoxLayout;
    row->addWidget(store);
    row->addStretch(1);
    host->setMaximumWidth(fontMetrics().averageCharWidth() * 90);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addLayout(head);
    layout->addWidget(how);
    layout->addWidget(m_notice);
    layout->addWidget(host);
    layout->addLayout(row);
    layout->addStretch(1);
    connect(back, &QPushButton::clicked, this, &ReceiveView::closed);
    connect(store, &QPushButton::clicked, this, &ReceiveView::receive);
    connect(m_label, &LotLabelForm::returnPressed, this, &ReceiveView::receive);
    connect(m_volume_mL->entry(), &QLineEdit::returnPressed, this, &ReceiveView::receive);
}

void ReceiveView::setReagents(const QStringList &names)
{
    m_label->setReagents(names);
}

void ReceiveView::takeFocus()
{
    m_label->takeFocus();
}

bool ReceiveView::hasUnsavedChanges() const
{
    return !m_volume_mL->entry()->isBlank();
}

void ReceiveView::markReceived(State state, const QString &sentence)
{
    m_volume_mL->entry()->clear();
    m_notice->say(state, sentence);
    m_label->focusLot();
}

void ReceiveView::receive()
{
    QString fault;
    const auto label = m_label->label(fault);
    if (label && !m_volume_mL->entry()->value()) {
        fault = tr("Say how much is in it, in mL.");
        m_volume_mL->entry()->setFocus();
    }
    if (!fault.isEmpty()) {
        m_notice->say(State::Attention, fault);
        return;
    }
    m_notice->clear();
    Q_EMIT received(*label, *m_volume_mL->entry()->value());
}

void ReceiveView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
