// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/comparedrunsview.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/recoveryhistory.h"
#include "ui/shared/guard.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/table.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ComparedRunsModel::ComparedRunsModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void ComparedRunsModel::show(std::vector<ComparedLine> lines, const QString &one, const QString &other)
{
    setRows(std::move(lines));
    m_one = one;
    m_other = other;
    Q_EMIT headerDataChanged(Qt::Horizontal, One, Other);
}

int ComparedRunsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant ComparedRunsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const ComparedLine &line = row(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return index.column() == What  ? tr("%1: %2").arg(line.section, line.what)
               : index.column() == One ? line.one
                                       : line.other;
    case Qt::DecorationRole:
        // To be seen, and no warning: two runs may well differ.
        return index.column() == What && line.differs() ? QVariant(m_theme.icon(State::Info))
                                                        : QVariant();
    case FigureRole:
        return index.column() != What;
    case Qt::FontRole:
        return line.differs() ? QVariant(m_theme.bold()) : QVariant();
    case Qt::AccessibleDescriptionRole:
        return line.differs() ? tr("differs") : tr("the same");
    default:
        return {};
    }
}

QVariant ComparedRunsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return section == What ? tr("What") : section == One ? m_one : m_other;
}

ComparedRunsView::ComparedRunsView(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_model(new ComparedRunsModel(theme, this))
    , m_said(plainLabel({}, this))
    , m_onlyDifferent(new QCheckBox(tr("Only &what differs"), this))
    , m_notice(new Notice(theme, this))
    , m_table(new Table(theme, m_model, tr("Two runs side by side"), u"comparedRuns"_s, this))
{
    auto *heading = plainLabel(tr("Two runs side by side"), this);
    heading->setFont(theme.large());
    auto *back = button(theme, tr("Back to the list  Esc"), u"leaveComparison"_s, this);
    m_onlyDifferent->setMinimumHeight(theme.target());
    m_onlyDifferent->setObjectName(u"onlyDifferent"_s);
    m_said->setObjectName(u"comparedText"_s);
    m_said->setWordWrap(true);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setFlexibleColumn(ComparedRunsModel::Other);
    m_table->setWordWrap(true);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    auto *head = new QHBoxLayout;
    head->addWidget(heading, 1);
    head->addWidget(m_onlyDifferent);
    head->addWidget(back);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addLayout(head);
    layout->addWidget(m_said);
    layout->addWidget(m_notice);
    layout->addWidget(m_table, 1);
    connect(back, &QPushButton::clicked, this, &ComparedRunsView::closed);
    connect(m_onlyDifferent, &QCheckBox::toggled, this, &ComparedRunsView::fill);
}

bool ComparedRunsView::show(notebook::RunId one, notebook::RunId other)
{
    return guarded(*m_notice, [&] {
        const notebook::StoredRun first = m_session.load(one);
        const notebook::StoredRun second = m_session.load(other);
        m_lines = compareRuns(first, reviewBasisOf(m_session, first), second, reviewBasisOf(m_session, second));
        const auto name = [](const notebook::StoredRun &run) {
            return tr("%1, %2").arg(run.run.title,
                                    momentText(run.run.startedAt.value_or(run.summary.createdAt)));
        };
        m_one = name(first);
        m_other = name(second);
        m_notice->clear();
        fill();
    });
}

void ComparedRunsView::fill()
{
    std::vector<ComparedLine> shown = m_lines;
    if (m_onlyDifferent->isChecked())
        std::erase_if(shown, [](const ComparedLine &line) { return !line.differs(); });
    const auto different = static_cast<int>(std::ranges::count_if(m_lines, &ComparedLine::differs));
    m_said->setText(different == 0
                        ? tr("The two are the same in everything that is compared here.")
                        : tr("%1 of %2 lines differ and stand first.").arg(different).arg(m_lines.size()));
    m_model->show(std::move(shown), m_one, m_other);
    m_table->fit();
}

void ComparedRunsView::takeFocus()
{
    m_table->setFocus();
    m_table->selectRow(0);
}

void ComparedRunsView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
