// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/rundetails.h"

#include "core/evaluation/unitsinwords.h"
#include "ui/bench/checksmodel.h"
#include "ui/bench/historymodel.h"
#include "ui/bench/methodtext.h"
#include "ui/bench/recoveriesmodel.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

Table *rowTable(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
                const QString &objectName, QWidget *parent)
{
    auto *table = new Table(theme, model, accessibleName, objectName, parent);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setWrap(Table::Wrap::AsNeeded); // what is judged here is read whole, in half a window too
    return table;
}

} // namespace

RunDetails::RunDetails(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_checks(new ChecksModel(theme, this))
    , m_recoveries(new RecoveriesModel(this))
    , m_history(new HistoryModel(theme, this))
    , m_tabs(new QTabWidget(this))
    , m_recoveriesTable(rowTable(theme, m_recoveries, tr("Recoveries"), u"recoveries"_s, this))
    , m_historyTable(rowTable(theme, m_history, tr("Readings with their history"), u"history"_s, this))
    , m_method(new SentenceList(theme, tr("Method and cautions"), u"methodText"_s, this))
{
    m_tabs->setObjectName(u"runDetails"_s);
    m_tabs->setAccessibleName(tr("Details of the run"));
    m_tabs->setUsesScrollButtons(false);
    m_tabs->addTab(buildChecks(), tr("&Quality checks"));
    m_tabs->addTab(m_recoveriesTable, tr("Recover&ies"));
    m_tabs->addTab(m_historyTable, tr("&Readings"));
    m_tabs->addTab(m_method, tr("Me&thod"));
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_tabs);
}

QWidget *RunDetails::buildChecks()
{
    m_checksTable = rowTable(m_theme, m_checks, tr("Checks"), u"checks"_s, this);
    m_checkText = plainLabel({}, this);
    m_checkText->setObjectName(u"checkText"_s);
    m_checkText->setWordWrap(true);
    m_checkText->setMargin(m_theme.gap());
    m_explain = button(m_theme, tr("E&xplain this check"), u"explainCheck"_s, this);
    m_explain->setToolTip(tr("What is checked, why, and what to do about it; F1 does the same"));
    auto *told = new QHBoxLayout;
    told->setSpacing(m_theme.gap());
    told->addWidget(m_checkText, 1);
    told->addWidget(m_explain, 0, Qt::AlignTop);
    auto *checks = new QWidget(this);
    auto *layout = new QVBoxLayout(checks);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(m_checksTable, 1);
    layout->addLayout(told);
    connect(m_explain, &QPushButton::clicked, this, [this] { callHelp(*m_explain); });
    connect(m_checksTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) { chooseCheck(current.row()); });
    return checks;
}

void RunDetails::show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                      const std::vector<evaluation::ReportUnit> &ofResults, const UnitsOfRun &units)
{
    showChecks(stored, evaluation, ofResults);
    m_method->setSentences(methodSentences(stored.method));
    m_recoveries->show(stored.method, stored.run, evaluation, units);
    m_recoveriesTable->setColumnHidden(RecoveriesModel::Measurand, !m_recoveries->hasSeveralMeasurands());
    m_recoveriesTable->fit();
    m_history->show(stored);
    m_historyTable->setColumnHidden(HistoryModel::Reason, !m_history->hasReasons());
    m_historyTable->fit();
}

void RunDetails::showChecks(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                            const std::vector<evaluation::ReportUnit> &ofResults)
{
    auto lines = evaluation::checkLines(stored.method, stored.run, evaluation);
    for (evaluation::CheckLine &line : lines) {
        for (const evaluation::ReportUnit unit : ofResults)
            line = evaluation::inUnit(std::move(line), evaluation::evaluationUnit(evaluation::formOf(unit)), unit);
    }
    m_checks->setLines(std::move(lines));
    m_checksTable->fit();
    chooseCheck(m_checksTable->currentIndex().row());
}

/// What failed first is told without being asked for.
void RunDetails::chooseCheck(int row)
{
    const int told = row < 0 ? 0 : row;
    const bool isToTell = told < m_checks->rowCount() &&
                          (row >= 0 || m_checks->row(told).outcome != evaluation::CheckOutcome::Passed);
    m_explain->setVisible(isToTell);
    setHelp(*m_checksTable->parentWidget(),
            isToTell ? HelpPlace{u"checks"_s, evaluation::checkWord(m_checks->row(told).id)} : HelpPlace{});
    m_checkText->setVisible(isToTell);
    m_checkText->setText(isToTell ? withDecimalSigns(m_checks->row(told).message) : QString());
}

void RunDetails::startAtTheTop()
{
    m_tabs->setCurrentIndex(0);
    for (QAbstractItemView *view : std::initializer_list<QAbstractItemView *>{
             m_checksTable, m_recoveriesTable, m_historyTable, m_method}) {
        view->setCurrentIndex({});
        view->clearSelection();
        view->scrollToTop();
    }
}

} // namespace plateau::ui
