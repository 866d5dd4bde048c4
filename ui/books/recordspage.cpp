// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/recordspage.h"

#include "ui/bench/benchsession.h"
#include "ui/books/copiesview.h"
#include "ui/books/keeper.h"
#include "ui/books/trailview.h"
#include "ui/shared/notice.h"
#include "ui/shared/widgets.h"

#include <QLabel>
#include <QTabWidget>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

RecordsPage::RecordsPage(const Theme &theme, Dialogs &dialogs, const BenchSession &session, Keeper &keeper,
                         QWidget *parent)
    : BookPage(parent)
    , m_notice(new Notice(theme, this))
    , m_tabs(new QTabWidget(this))
    , m_trail(new TrailView(theme, keeper.notebook(), this))
    , m_copies(new CopiesView(theme, dialogs, keeper, *m_notice, this))
{
    auto *heading = plainLabel(tr("Records"), this);
    heading->setFont(theme.large());
    m_tabs->setObjectName(u"recordsTabs"_s);
    m_tabs->setAccessibleName(tr("Parts of the records"));
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(m_trail, tr("Who did what"));
    m_tabs->addTab(m_copies, tr("Intact, and kept"));
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(heading);
    layout->addWidget(m_notice);
    layout->addWidget(m_tabs, 1);
    connect(m_trail, &TrailView::runWanted, this, &BookPage::runWanted);
    connect(m_tabs, &QTabWidget::currentChanged, this, &RecordsPage::refresh);
    connect(&session, &BenchSession::racksChanged, this, [this] {
        if (isVisible())
            refresh();
    });
}

void RecordsPage::open()
{
    m_notice->clear();
    m_trail->takeFocus();
}

void RecordsPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    refresh();
}

void RecordsPage::refresh()
{
    if (m_tabs->currentWidget() != m_trail) {
        m_copies->refresh();
        return;
    }
    m_notice->clear(); // it speaks of the other part
    m_trail->refresh();
}

} // namespace plateau::ui
