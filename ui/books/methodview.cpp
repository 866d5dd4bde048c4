// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodview.h"

#include "core/notebook/methodcatalogue.h"
#include "ui/books/comparisonview.h"
#include "ui/books/methodactwords.h"
#include "ui/books/methodsmodel.h"
#include "ui/books/methodviewtext.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTextBrowser>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

MethodView::MethodView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_title(new ElidingLabel(this))
    , m_subtitle(new ElidingLabel(this))
    , m_notice(new Notice(theme, this))
{
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(buildHeader());
    layout->addWidget(m_notice);
    layout->addWidget(buildTabs(), 1);
    layout->addWidget(buildFooter());
    connect(&theme, &Theme::changed, this, &MethodView::dress);
}

QWidget *MethodView::buildHeader()
{
    auto *header = new QWidget(this);
    m_title->setFont(m_theme.large());
    m_title->setObjectName(u"methodTitle"_s);
    m_subtitle->setObjectName(u"methodSubtitle"_s);
    auto *back = button(m_theme, tr("Back to the list  Esc"), u"backToMethods"_s, header);
    connect(back, &QPushButton::clicked, this, &MethodView::closed);
    auto *names = new QVBoxLayout;
    names->setSpacing(0);
    names->addWidget(m_title);
    names->addWidget(m_subtitle);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addLayout(names, 1);
    layout->addWidget(back);
    return header;
}

QWidget *MethodView::buildTabs()
{
    m_text = new QTextBrowser(this);
    m_text->setObjectName(u"methodPage"_s);
    m_text->setAccessibleName(tr("Method"));
    m_text->setOpenLinks(false);
    m_text->setTabChangesFocus(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_versions = new ComparisonView(m_theme, this);
    connect(m_versions, &ComparisonView::methodWanted, this, &MethodView::methodWanted);
    m_acts = new SentenceList(m_theme, tr("What was done with it"), u"methodActs"_s, this);
    m_tabs = new QTabWidget(this);
    m_tabs->setObjectName(u"methodTabs"_s);
    m_tabs->setAccessibleName(tr("About the method"));
    m_tabs->setUsesScrollButtons(false);
    m_tabs->addTab(m_text, tr("&Method"));
    m_tabs->addTab(m_versions, tr("Ver&sions"));
    m_tabs->addTab(m_acts, tr("Histor&y"));
    return m_tabs;
}

QWidget *MethodView::buildFooter()
{
    auto *footer = new QWidget(this);
    m_reason = new QLineEdit(footer);
    m_reason->setObjectName(u"methodReason"_s);
    m_reason->setMinimumHeight(m_theme.target());
    m_reasonCaption = new QLabel(footer);
    m_reasonCaption->setBuddy(m_reason);
    m_stateChange = button(m_theme, {}, u"methodStateChange"_s, footer);
    auto *change = button(m_theme, tr("&Change…"), u"changeMethod"_s, footer);
    auto *copy = button(m_theme, tr("New from &this…"), u"newFromMethod"_s, footer);
    auto *toFile = button(m_theme, tr("E&xport to a file…"), u"exportMethod"_s, footer);
    connect(m_stateChange, &QPushButton::clicked, this, &MethodView::stateChangeWanted);
    connect(m_reason, &QLineEdit::returnPressed, this, &MethodView::stateChangeWanted);
    connect(change, &QPushButton::clicked, this, &MethodView::changeWanted);
    connect(copy, &QPushButton::clicked, this, &MethodView::copyWanted);
    connect(toFile, &QPushButton::clicked, this, &MethodView::exportWanted);
    auto *layout = new QHBoxLayout(footer);
    layout->setContentsMargins({});
    layout->addWidget(change);
    layout->addWidget(copy);
    layout->addWidget(toFile);
    layout->addSpacing(m_theme.wideGap());
    layout->addWidget(m_reasonCaption);
    layout->addWidget(m_reason, 1);
    layout->addWidget(m_stateChange);
    return footer;
}

bool MethodView::show(const std::vector<notebook::StoredMethod> &catalogue, const QString &contentHash)
{
    const auto found = std::ranges::find(catalogue, contentHash, &notebook::StoredMethod::contentHash);
    if (found == catalogue.end())
        return false;
    if (contentHash != m_shown.contentHash) {
        m_notice->clear();
        m_reason->clear();
        m_tabs->setCurrentIndex(0);
    }
    m_catalogue = catalogue;
    m_shown = *found;
    const MethodRow row = methodRow(catalogue, m_shown);
    m_title->setText(m_shown.method.name);
    m_subtitle->setText(tr("Version %1, %2, %3; runs: %4")
                            .arg(row.version, row.state, row.origin, QString::number(row.runs)));
    m_versions->show(catalogue, contentHash);
    m_acts->setSentences(methodActSentences(m_shown));
    m_reasonCaption->setText(m_shown.retired ? tr("&Reason to use it again") : tr("&Reason to retire it"));
    m_stateChange->setText(m_shown.retired ? tr("Re&instate") : tr("Ret&ire"));
    dress();
    return true;
}

void MethodView::dress()
{
    if (m_shown.contentHash.isEmpty())
        return;
    m_text->setHtml(methodHtml(m_theme, m_shown.method, [this](const QString &id) {
        // The catalogue has the newest version first.
        const auto found = std::ranges::find(m_catalogue, id, [](const auto &stored) { return stored.method.id; });
        return found == m_catalogue.end() ? nullptr : &found->method;
    }));
}

void MethodView::takeFocus()
{
    m_text->setFocus();
}

void MethodView::showWhatItIsKeptApartFrom()
{
    for (const notebook::StoredMethod &other : m_catalogue) {
        if (other.contentHash == m_shown.contentHash || other.method.id != m_shown.method.id ||
            other.method.version != m_shown.method.version)
            continue;
        m_tabs->setCurrentWidget(m_versions);
        m_versions->choose(other.contentHash);
        m_versions->takeFocus();
        return;
    }
}

QString MethodView::reason() const
{
    return m_reason->text().simplified();
}

void MethodView::askForReason()
{
    m_reason->setFocus();
}

void MethodView::clearReason()
{
    m_reason->clear();
}

void MethodView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
