// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotview.h"

#include "ui/books/lotkeepingform.h"
#include "ui/books/lotlabelform.h"
#include "ui/books/lotledger.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

LotView::LotView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_title(new ElidingLabel(this))
    , m_subtitle(plainLabel({}, this))
    , m_shape(new QLabel(this))
    , m_balance(plainLabel({}, this))
    , m_notice(new Notice(theme, this))
    , m_ledger(new LedgerModel(this))
    , m_takings(new TakingsModel(this))
{
    QWidget *header = buildHeader();
    QWidget *form = buildForm();
    auto *body = new QHBoxLayout;
    body->addWidget(buildTables(), 3);
    body->addWidget(form, 2, Qt::AlignTop);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(header);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    setTabOrder(m_reason, m_ledgerTable);
    setTabOrder(m_ledgerTable, m_trace);
    setTabOrder(m_trace, m_takingsTable);
}

QWidget *LotView::buildHeader()
{
    auto *header = new QWidget(this);
    m_title->setFont(m_theme.large());
    m_title->setObjectName(u"lotTitle"_s);
    m_subtitle->setObjectName(u"lotSubtitle"_s);
    m_subtitle->setWordWrap(true);
    auto *back = button(m_theme, tr("Back to the list  Esc"), u"backToLots"_s, header);
    connect(back, &QPushButton::clicked, this, &LotView::closed);
    auto *names = new QVBoxLayout;
    names->setSpacing(0);
    names->addWidget(m_title);
    names->addWidget(m_subtitle);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addWidget(m_shape);
    layout->addLayout(names, 1);
    layout->addWidget(back);
    return header;
}

QWidget *LotView::buildTables()
{
    auto *host = new QWidget(this);
    m_ledgerTable = new Table(m_theme, m_ledger, tr("Ledger of the container"), u"lotLedger"_s, host);
    m_ledgerTable->setWrap(Table::Wrap::AsNeeded);
    m_ledgerTable->setFlexibleColumn(LedgerModel::Note);
    m_ledgerTable->setFlexibleMinimum(12);
    m_ledgerTable->setLimit(22);
    m_takingsTable = new Table(m_theme, m_takings, tr("Runs that took from it"), u"lotRuns"_s, host);
    m_takingsTable->setWrap(Table::Wrap::AsNeeded);
    m_takingsTable->setFlexibleColumn(TakingsModel::Title);
    m_balance->setObjectName(u"lotBalance"_s);
    m_balance->setWordWrap(true);
    m_noTakings =
        plainLabel(tr("No dose of a run was ticked with this lot yet. What was taken otherwise stands in the ledger."), host);
    m_noTakings->setWordWrap(true);
    auto *noted = plainLabel(tr("Ledger"), host);
    noted->setFont(m_theme.bold());
    auto *runs = plainLabel(tr("Runs that took from it"), host);
    runs->setFont(m_theme.bold());
    auto *layout = new QVBoxLayout(host);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    layout->addWidget(noted);
    layout->addWidget(m_ledgerTable, 1);
    layout->addWidget(m_balance);
    m_trace = button(m_theme, tr("Runs and results concerned, as &CSV…"), u"traceLot"_s, host);
    m_trace->setToolTip(tipText(
        tr("Every run that took from it and every result: for the day when the supplier recalls it.")));
    connect(m_trace, &QPushButton::clicked, this, &LotView::traceWanted);
    auto *runsHead = new QHBoxLayout;
    runsHead->addWidget(runs, 1);
    runsHead->addWidget(m_trace);
    layout->addLayout(runsHead);
    layout->addWidget(m_takingsTable, 1);
    layout->addWidget(m_noTakings);
    connect(m_takingsTable, &Table::activated, this,
            [this](const QModelIndex &index) { Q_EMIT runWanted(m_takings->row(index.row()).run); });
    return host;
}

QWidget *LotView::buildForm()
{
    auto *group = new QGroupBox(tr("What happened to it"), this);
    m_form = new QFormLayout(group);
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_what = new QComboBox(group);
    m_what->setMinimumHeight(m_theme.target());
    m_what->setSizeAdjustPolicy(QComboBox::AdjustToContents); // other containers have other choices
    addFormRow(m_form, tr("Wh&at"), m_what, u"lotEvent"_s);
    m_day = new QLineEdit(group);
    m_day->setMinimumHeight(m_theme.target());
    addFormRow(m_form, tr("Da&y"), m_day, u"lotDay"_s);
    m_volume_mL = new NumberField(m_theme, u"mL"_s, group);
    m_volume_mL->setOneLine();
    addFormRow(m_form, tr("Vol&ume (mL)"), m_volume_mL, u"lotVolume"_s);
    m_keeping = new LotKeepingForm(m_theme, m_form);
    m_label = new LotLabelForm(m_theme, m_form, u"label"_s);
    m_reason = new QLineEdit(group);
    m_reason->setMinimumHeight(m_theme.target());
    addFormRow(m_form, tr("R&eason"), m_reason, u"lotReason"_s);
    auto *keep = button(m_theme, tr("&Store it"), u"storeLotEvent"_s, group);
    m_form->addRow(QString(), keep);
    connect(m_what, &QComboBox::currentIndexChanged, this, &LotView::showFields);
    connect(keep, &QPushButton::clicked, this, &LotView::store);
    for (QLineEdit *line : std::initializer_list<QLineEdit *>{m_day, m_volume_mL->entry(), m_reason})
        connect(line, &QLineEdit::returnPressed, this, &LotView::store);
    connect(m_label, &LotLabelForm::returnPressed, this, &LotView::store);
    connect(m_keeping, &LotKeepingForm::returnPressed, this, &LotView::store);
    return group;
}

} // namespace plateau::ui
