// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/laboratorypage.h"
#include "ui/books/laboratorytables.h"
#include "ui/books/methodbook.h"
#include "ui/books/photometerform.h"
#include "ui/books/rackform.h"
#include "ui/books/reportheadform.h"
#include "ui/shared/notice.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QStackedWidget>

using namespace Qt::StringLiterals;

namespace plateau::ui {

LaboratoryPage::LaboratoryPage(const Theme &theme, Dialogs &dialogs, const BenchSession &session,
                               Stores &stores, const MethodBook &methods, QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_session(session)
    , m_stores(stores)
    , m_methodBook(methods)
    , m_notice(new Notice(theme, this))
    , m_origin(new Notice(theme, this))
{
    m_origin->setObjectName(u"laboratoryOrigin"_s);
    QWidget *sections = buildSections(dialogs);
    QWidget *problems = buildProblems();
    QWidget *header = buildHeader(); // last, so that Save comes after the form
    auto *body = new QHBoxLayout;
    body->setSpacing(theme.gap());
    body->addWidget(m_list);
    body->addWidget(sections, 1);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(header);
    layout->addWidget(m_origin);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    layout->addWidget(problems);
    connect(&session, &BenchSession::personChanged, this, &LaboratoryPage::dropAnsweredQuestion);
    connect(&stores, &Stores::laboratoryChanged, this, &LaboratoryPage::takeOver);
    connect(&methods, &MethodBook::changed, this, [this] {
        if (m_loaded)
            offerMethods();
    });
    connect(&theme, &Theme::changed, this, &LaboratoryPage::markSections);
    addShortcuts();
}

QWidget *LaboratoryPage::buildHeader()
{
    auto *header = new QWidget(this);
    auto *heading = plainLabel(tr("Laboratory"), header);
    heading->setFont(m_theme.large());
    auto *keep = button(m_theme, tr("&Save"), u"saveLaboratory"_s, header);
    m_dropChanges = button(m_theme, tr("&Drop the changes"), u"dropLaboratoryChanges"_s, header);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addWidget(heading, 1);
    layout->addWidget(keep);
    layout->addWidget(m_dropChanges);
    connect(keep, &QPushButton::clicked, this, &LaboratoryPage::save);
    connect(m_dropChanges, &QPushButton::clicked, this, [this] {
        m_notice->clear();
        reload();
        goToSection(m_list->currentRow());
    });
    return header;
}

void LaboratoryPage::addSection(LaboratorySection *section)
{
    auto *scroll = new QScrollArea(m_pages);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(section);
    m_pages->addWidget(scroll);
    m_sections.push_back(section);
    m_list->addItem(tr("%1  %2").arg(m_list->count() + 1).arg(section->title()));
    connect(section, &LaboratorySection::edited, this, &LaboratoryPage::onEdited);
}

QWidget *LaboratoryPage::buildSections(Dialogs &dialogs)
{
    m_list = new QListWidget(this);
    m_list->setObjectName(u"laboratorySections"_s);
    m_list->setAccessibleName(tr("Sections of the laboratory"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setIconSize(QSize(m_theme.wideGap(), m_theme.wideGap()));
    m_list->setToolTip(tr("Alt with the section's number goes there from anywhere."));
    m_pages = new PageStack(this);
    m_methods = new MethodUncertaintiesForm(m_theme, m_pages);
    m_units = new ReportUnitsForm(m_theme, m_pages);
    // In the order of LaboratoryPart.
    for (LaboratorySection *section : std::initializer_list<LaboratorySection *>{
             new ReportHeadForm(m_theme, dialogs, m_pages), new RackForm(m_theme, m_pages),
             new GlassForm(m_theme, m_pages), new PhotometerForm(m_theme, m_pages), m_methods, m_units,
             new ReviewRulesForm(m_theme, m_pages)})
        addSection(section);
    const int width = m_list->sizeHintForColumn(0);
    const int shape = m_list->iconSize().isValid() ? m_list->iconSize().width() : m_theme.target();
    m_list->setFixedWidth(width + shape + m_theme.wideGap());
    for (int row = 0; row < m_list->count(); ++row)
        m_list->item(row)->setSizeHint(QSize(width, m_theme.target()));
    connect(m_list, &QListWidget::currentRowChanged, m_pages, &QStackedWidget::setCurrentIndex);
    m_list->setCurrentRow(0);
    return m_pages;
}

QWidget *LaboratoryPage::buildProblems()
{
    auto *host = new QWidget(this);
    m_summary = plainLabel({}, host);
    m_summary->setObjectName(u"laboratorySummary"_s);
    m_summary->setWordWrap(true);
    m_problems = new ProblemList(m_theme, u"laboratoryProblems"_s, host);
    m_problems->setFixedHeight(m_theme.target() * 3);
    auto *layout = new QVBoxLayout(host);
    layout->setContentsMargins({});
    layout->addWidget(m_summary);
    layout->addWidget(m_problems);
    connect(m_problems, &QListView::activated, this,
            [this](const QModelIndex &index) { goToProblem(index.row()); });
    return host;
}

void LaboratoryPage::addShortcuts()
{
    const auto onKey = [this](const QKeySequence &keys, auto act) {
        auto *shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    onKey(QKeySequence::Save, [this] { save(); });
    for (int row = 0; row < m_list->count(); ++row)
        onKey(QKeySequence(static_cast<int>(Qt::ALT) | (Qt::Key_1 + row)), [this, row] { goToSection(row); });
}

} // namespace plateau::ui
