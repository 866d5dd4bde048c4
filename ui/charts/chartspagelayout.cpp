// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/chartspage.h"

#include "ui/charts/chartview.h"
#include "ui/charts/pointpanel.h"
#include "ui/charts/settingsform.h"
#include "ui/charts/subjectform.h"
#include "ui/shared/losspanel.h"
#include "ui/shared/notice.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

void ChartsPage::build()
{
    auto *heading = plainLabel(tr("Control charts"), this);
    heading->setFont(m_theme.large());
    QPushButton *save = button(m_theme, tr("Save the &chart as…"), u"chartSaveFile"_s, this);
    connect(save, &QPushButton::clicked, this, &ChartsPage::saveFile);
    auto *top = new QHBoxLayout;
    top->addWidget(heading, 1);
    top->addWidget(save);
    auto *body = new QHBoxLayout;
    body->setSpacing(m_theme.wideGap());
    body->addWidget(buildChart(), 1);
    body->addWidget(buildSide());
    auto *layout = new QVBoxLayout(this);
    setGaps(m_theme, layout);
    layout->addLayout(top);
    layout->addWidget(m_notice);
    layout->addWidget(m_subjectForm);
    layout->addLayout(body, 1);
}

QWidget *ChartsPage::buildChart()
{
    auto *above = new QWidget(this);
    auto *column = new QVBoxLayout(above);
    column->setContentsMargins({});
    column->setSpacing(m_theme.gap());
    column->addWidget(m_view, 1);
    column->addWidget(m_point);
    column->addWidget(m_basis);
    m_basis->setObjectName(u"chartBasisText"_s);
    m_basis->setWordWrap(true);
    column->addSpacing(m_theme.gap() / 2); // the dots of the handle below are no underline
    auto *splitter = new QSplitter(Qt::Vertical, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(above);
    splitter->addWidget(m_findings);
    splitter->setStretchFactor(0, 4);
    splitter->setStretchFactor(1, 1);
    m_findings->setMinimumHeight(fontMetrics().height() * 4);
    return splitter;
}

QWidget *ChartsPage::buildSide()
{
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(m_settings);
    scroll->setFocusPolicy(Qt::NoFocus);
    m_side = new QTabWidget(this);
    m_side->setAccessibleName(tr("Limits and rules, and the loss of the standard"));
    m_side->addTab(scroll, tr("Limits and rules"));
    m_side->addTab(m_loss, tr("Loss per hour"));
    m_side->setFixedWidth(fontMetrics().averageCharWidth() * 56);
    return m_side;
}

} // namespace plateau::ui
