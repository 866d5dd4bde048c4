// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/listendialog.h"

#include "ui/instrument/linesmodel.h"
#include "ui/instrument/linkform.h"
#include "ui/instrument/patternform.h"
#include "ui/shared/notice.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

void ListenDialog::build()
{
    m_obstacle->setObjectName(u"listenObstacle"_s);
    m_obstacle->setWordWrap(true);
    auto *sides = new QHBoxLayout;
    sides->setSpacing(m_theme.wideGap());
    sides->addWidget(buildForms());
    sides->addWidget(buildLines(), 1);
    auto *layout = new QVBoxLayout(this);
    layout->addWidget(scrolled(sides, this), 1);
    layout->addWidget(m_state);
    layout->addLayout(buildButtons());
}

QWidget *ListenDialog::buildForms()
{
    for (QWidget *field : std::initializer_list<QWidget *>{m_remembered, m_name})
        field->setMinimumHeight(m_theme.target());
    auto *connection = new QGroupBox(tr("Connection"), this);
    auto *form = new QFormLayout;
    addFormRow(form, tr("&Photometer"), m_remembered, u"rememberedPhotometers"_s);
    addFormRow(form, tr("Na&me"), m_name, u"photometerName"_s);
    m_name->setPlaceholderText(tr("to remember it by"));
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_connect);
    buttons->addWidget(m_forget);
    buttons->addStretch(1);
    auto *inConnection = new QVBoxLayout(connection);
    inConnection->addLayout(form);
    inConnection->addWidget(m_link);
    inConnection->addLayout(buttons);
    auto *lines = new QGroupBox(tr("How a line is read"), this);
    auto *inLines = new QVBoxLayout(lines);
    inLines->addWidget(m_pattern);
    auto *side = new QWidget(this);
    auto *layout = new QVBoxLayout(side);
    layout->setContentsMargins({});
    layout->addWidget(connection);
    layout->addWidget(lines);
    layout->addStretch(1);
    alignCaptions({connection, m_link, m_pattern});
    return side;
}

QWidget *ListenDialog::buildLines()
{
    m_sample->setObjectName(u"sampleLines"_s);
    m_sample->setTabChangesFocus(true);
    m_sample->setLineWrapMode(QPlainTextEdit::NoWrap);
    m_sample->setPlaceholderText(tr("Paste some lines of the photometer here, or use those that came in."));
    auto *tryLabel = new QLabel(tr("Try it &out on sample lines"), this);
    tryLabel->setBuddy(m_sample);
    for (Table *table : {m_triedTable, m_cameTable})
        table->setFlexibleColumn(LinesModel::Result);
    m_triedTable->setLimit(20); // the lines stand beside it
    m_useReceived->setEnabled(false);
    m_nothingCame->setObjectName(u"nothingReceived"_s);
    auto *tryOutRow = new QHBoxLayout;
    tryOutRow->addWidget(m_sample, 2);
    tryOutRow->addWidget(m_triedTable, 3);
    auto *side = new QWidget(this);
    auto *layout = new QVBoxLayout(side);
    layout->setContentsMargins({});
    layout->addWidget(tryLabel);
    layout->addLayout(tryOutRow, 1);
    layout->addWidget(plainLabel(tr("What came in, the last line on top"), side));
    layout->addWidget(m_nothingCame);
    layout->addWidget(m_cameTable, 1);
    layout->addWidget(m_useReceived, 0, Qt::AlignLeft);
    return side;
}

QBoxLayout *ListenDialog::buildButtons()
{
    auto *cancel = button(m_theme, tr("Cancel"), u"cancelListening"_s, this);
    m_take->setDefault(true);
    auto *row = new QHBoxLayout;
    row->addWidget(m_stop);
    row->addWidget(m_obstacle, 1);
    row->addWidget(cancel);
    row->addWidget(m_take);
    connect(cancel, &QPushButton::clicked, this, &ListenDialog::reject);
    return row;
}

} // namespace plateau::ui
