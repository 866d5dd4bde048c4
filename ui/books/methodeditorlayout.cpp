// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodeditor.h"

#include "ui/books/appraisalpanel.h"
#include "ui/books/draftfields.h"
#include "ui/books/drafttables.h"
#include "ui/books/examplesection.h"
#include "ui/books/methodsections.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QStackedWidget>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QScrollArea *scrolling(QWidget *content, QWidget *parent)
{
    auto *scroll = new QScrollArea(parent);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(content);
    return scroll;
}

} // namespace

MethodEditor::MethodEditor(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_fields(new DraftFields(theme, this))
    , m_tables(new DraftTables(theme, this))
{
    m_notice = new Notice(theme, this);
    QWidget *sections = buildSections();
    QWidget *side = buildSide();
    QWidget *header = buildHeader(); // last, so that Save comes after the form
    auto *body = new QHBoxLayout;
    body->setSpacing(0);
    body->setContentsMargins(theme.wideGap(), 0, 0, 0); // as the heading above
    body->addWidget(m_sections);
    body->addWidget(sections, 3);
    body->addWidget(side, 2);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(header);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    addShortcuts();
    connect(m_fields, &DraftFields::edited, this, &MethodEditor::onEdited);
    connect(m_tables, &DraftTables::edited, this, &MethodEditor::onEdited);
    connect(m_appraisal, &AppraisalPanel::appraised, this, &MethodEditor::showProblems);
    startNew();
}

QWidget *MethodEditor::buildHeader()
{
    auto *header = new QWidget(this);
    m_noteRow = buildNote(header); // first, so that Save comes after it
    m_heading = new ElidingLabel(header);
    m_heading->setObjectName(u"methodHeading"_s);
    m_heading->setFont(m_theme.large());
    m_version = plainLabel({}, header);
    m_version->setObjectName(u"methodVersion"_s);
    auto *keep = button(m_theme, tr("&Save method"), u"saveMethod"_s, header);
    auto *go = button(m_theme, tr("Back  Esc"), u"leaveMethod"_s, header);
    auto *row = new QHBoxLayout;
    row->addWidget(m_heading, 1);
    row->addWidget(m_version);
    row->addWidget(keep);
    row->addWidget(go);
    auto *layout = new QVBoxLayout(header);
    setGaps(m_theme, layout);
    layout->addLayout(row);
    layout->addWidget(m_noteRow);
    connect(keep, &QPushButton::clicked, this, &MethodEditor::save);
    connect(go, &QPushButton::clicked, this, &MethodEditor::leave);
    return header;
}

QWidget *MethodEditor::buildNote(QWidget *parent)
{
    auto *row = new QWidget(parent);
    m_note = new QLineEdit(row);
    m_note->setObjectName(u"methodNote"_s);
    m_note->setMinimumHeight(m_theme.target());
    auto *caption = new QLabel(tr("&What was changed and why"), row);
    caption->setBuddy(m_note);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins({});
    layout->addWidget(caption);
    layout->addWidget(m_note, 1);
    connect(m_note, &QLineEdit::returnPressed, this, &MethodEditor::save);
    return row;
}

void MethodEditor::addSection(const QString &title, QWidget *content)
{
    m_pages->addWidget(scrolling(content, m_pages));
    m_sections->addItem(tr("%1  %2").arg(m_sections->count() + 1).arg(title));
}

QWidget *MethodEditor::buildSections()
{
    m_sections = new QListWidget(this);
    m_sections->setObjectName(u"methodSections"_s);
    m_sections->setAccessibleName(tr("Sections of the method"));
    m_sections->setFrameShape(QFrame::NoFrame);
    m_sections->setToolTip(tr("Alt with the section's number goes there from anywhere."));
    m_pages = new PageStack(this);
    const SectionParts parts{m_theme, *m_fields, *m_tables};
    m_example = new ExampleSection(m_theme, m_pages);
    addSection(tr("What it measures"), buildMeasuresSection(parts, m_pages));
    addSection(tr("Recipe"), buildRecipeSection(parts, m_pages));
    addSection(tr("Readings and signal"), buildSignalSection(parts, m_pages));
    addSection(tr("Limits"), buildLimitsSection(parts, m_pages));
    addSection(tr("Text and cautions"), buildTextSection(parts, m_pages));
    addSection(tr("Try it"), m_example);
    m_sections->setFixedWidth(m_sections->sizeHintForColumn(0) + m_theme.wideGap());
    for (int row = 0; row < m_sections->count(); ++row)
        m_sections->item(row)->setSizeHint(QSize(m_sections->sizeHintForColumn(0), m_theme.target()));
    connect(m_sections, &QListWidget::currentRowChanged, m_pages, &QStackedWidget::setCurrentIndex);
    return m_pages;
}

QWidget *MethodEditor::buildSide()
{
    auto *side = new QWidget(this);
    m_summary = plainLabel({}, side);
    m_summary->setObjectName(u"methodSummary"_s);
    m_summary->setWordWrap(true);
    m_problems = new ProblemList(m_theme, u"methodProblems"_s, side);
    m_appraisal = new AppraisalPanel(m_theme, side);
    auto *layout = new QVBoxLayout(side);
    setGaps(m_theme, layout);
    layout->addWidget(m_summary);
    layout->addWidget(m_problems, 1);
    layout->addWidget(scrolling(m_appraisal, side), 3);
    connect(m_problems, &QListView::activated, this,
            [this](const QModelIndex &index) { goToProblem(index.row()); });
    return side;
}

void MethodEditor::addShortcuts()
{
    const auto onKey = [this](const QKeySequence &keys, auto act) {
        auto *shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    onKey(QKeySequence::Save, [this] { save(); });
    for (int row = 0; row < m_sections->count(); ++row)
        onKey(QKeySequence(static_cast<int>(Qt::ALT) | (Qt::Key_1 + row)), [this, row] {
            m_sections->setCurrentRow(row);
            // Into the form: what was typed last is behind.
            m_pages->currentWidget()->setFocus();
            static_cast<QScrollArea *>(m_pages->currentWidget())->widget()->setFocus();
            focusNextChild();
        });
}

} // namespace plateau::ui
