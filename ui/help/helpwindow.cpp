// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helpwindow.h"

#include "ui/help/helplistmodel.h"
#include "ui/help/helprowdelegate.h"
#include "ui/help/helptext.h"
#include "ui/help/helpview.h"
#include "ui/shared/notice.h"
#include "ui/shared/widgets.h"

#include <QAction>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScreen>
#include <QScrollBar>
#include <QSettings>
#include <QSplitter>
#include <QUrl>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

const QString helpSizeKey = QStringLiteral("help/size");

QSettings helpSettings()
{
    return QSettings(QSettings::IniFormat, QSettings::UserScope, u"plateau"_s, u"plateau"_s);
}

QSize keptSize(const QSize &usual, const QSize &room)
{
    const QSize kept = helpSettings().value(helpSizeKey).toSize();
    return (kept.width() >= 400 && kept.height() >= 300 ? kept : usual).boundedTo(room);
}

} // namespace

HelpWindow::HelpWindow(const Theme &theme, HelpPages pages, QWidget *parent)
    : QWidget(parent, Qt::Window)
    , m_theme(theme)
    , m_pages(std::move(pages))
    , m_rows(new HelpListModel(this))
    , m_search(new QLineEdit(this))
    , m_found(plainLabel({}, this))
    , m_list(new QListView(this))
    , m_back(button(theme, tr("&Back"), u"helpBack"_s, this))
    , m_forward(button(theme, tr("&Forward"), u"helpForward"_s, this))
    , m_notice(new Notice(theme, this))
    , m_view(new HelpView(theme, this))
{
    setObjectName(u"help"_s);
    setWindowIcon(QIcon(u":/icons/plateau.svg"_s));
    setAttribute(Qt::WA_QuitOnClose, false); // the program ends with its window, not with its help
    setPalette(theme.adjustments());
    connect(&theme, &Theme::changed, this, [this] { setPalette(m_theme.adjustments()); });
    auto *both = new QSplitter(Qt::Horizontal, this);
    both->setChildrenCollapsible(false);
    both->addWidget(buildList());
    both->addWidget(buildPage());
    both->setStretchFactor(1, 1);
    const int letter = fontMetrics().averageCharWidth();
    both->setSizes({letter * 46, letter * 110});
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(both);
    addActions();
    resize(keptSize({letter * 150, fontMetrics().lineSpacing() * 44},
                    screen()->availableSize() - QSize(40, 60))); // the frame takes some
    showList();
    updateTitle();
}

HelpWindow::~HelpWindow()
{
    if (isVisible()) // it goes with the window it belongs to
        keepSize();
}

QWidget *HelpWindow::buildList()
{
    m_search->setObjectName(u"helpSearch"_s);
    m_search->setMinimumHeight(m_theme.target());
    m_search->setClearButtonEnabled(true);
    m_search->installEventFilter(this);
    auto *caption = new QLabel(tr("&Search the help"), this);
    caption->setBuddy(m_search);
    m_found->setObjectName(u"helpFound"_s);
    m_found->setWordWrap(true);
    m_list->setObjectName(u"helpList"_s);
    m_list->setModel(m_rows);
    m_list->setItemDelegate(new HelpRowDelegate(m_theme, m_list));
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setMinimumWidth(fontMetrics().averageCharWidth() * 36);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    connect(m_search, &QLineEdit::textChanged, this, &HelpWindow::search);
    connect(m_search, &QLineEdit::returnPressed, this, [this] {
        if (m_search->text().trimmed().isEmpty() || m_rows->rowCount() == 0)
            return;
        m_list->setFocus();
        choose(m_rows->index(0));
    });
    connect(m_list, &QListView::activated, this, &HelpWindow::choose);
    connect(m_list, &QListView::clicked, this, &HelpWindow::choose);
    auto *side = new QWidget(this);
    auto *layout = new QVBoxLayout(side);
    setGaps(m_theme, layout);
    layout->addWidget(caption);
    layout->addWidget(m_search);
    layout->addWidget(m_found);
    layout->addWidget(m_list, 1);
    return side;
}

QWidget *HelpWindow::buildPage()
{
    m_view->setObjectName(u"helpPage"_s);
    connect(m_view, &QTextBrowser::anchorClicked, this, &HelpWindow::follow);
    m_back->setToolTip(tr("To what was read before (Alt+Left)"));
    m_forward->setToolTip(tr("To what was read after it (Alt+Right)"));
    connect(m_back, &QPushButton::clicked, this, [this] { step(-1); });
    connect(m_forward, &QPushButton::clicked, this, [this] { step(1); });
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_back);
    buttons->addWidget(m_forward);
    buttons->addStretch();
    auto *page = new QWidget(this);
    auto *layout = new QVBoxLayout(page);
    setGaps(m_theme, layout);
    layout->addLayout(buttons);
    layout->addWidget(m_notice);
    layout->addWidget(m_view, 1);
    return page;
}

QAction *HelpWindow::addKeys(const QString &text, const QList<QKeySequence> &keys)
{
    auto *action = new QAction(text, this);
    action->setShortcuts(keys);
    addAction(action);
    return action;
}

void HelpWindow::addActions()
{
    m_backAction = addKeys(tr("Back"), {QKeySequence(u"Alt+Left"_s), QKeySequence(Qt::Key_Back)});
    m_forwardAction = addKeys(tr("Forward"), {QKeySequence(u"Alt+Right"_s), QKeySequence(Qt::Key_Forward)});
    connect(m_backAction, &QAction::triggered, this, [this] { step(-1); });
    connect(m_forwardAction, &QAction::triggered, this, [this] { step(1); });
    connect(addKeys(tr("Search"), {QKeySequence(u"Ctrl+F"_s)}), &QAction::triggered, this, [this] {
        m_search->setFocus();
        m_search->selectAll();
    });
    connect(addKeys(tr("Leave the search, then the help"), {QKeySequence(Qt::Key_Escape)}),
            &QAction::triggered, this, &HelpWindow::leave);
    connect(addKeys(tr("Close the help"), {QKeySequence(u"Ctrl+W"_s)}), &QAction::triggered, this,
            &QWidget::close);
}

bool HelpWindow::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_search && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent *>(event)->key() == Qt::Key_Down && m_rows->rowCount() > 0) {
        m_list->setFocus();
        if (!m_list->currentIndex().isValid())
            m_list->setCurrentIndex(m_rows->index(0));
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void HelpWindow::hideEvent(QHideEvent *event)
{
    QWidget::hideEvent(event);
    keepSize();
}

void HelpWindow::keepSize() const
{
    if (isMaximized() || isFullScreen())
        return; // what is to be found again is the size beside the work
    QSettings settings = helpSettings();
    settings.setValue(helpSizeKey, size());
}

void HelpWindow::leave()
{
    if (m_search->text().isEmpty())
        close();
    else
        m_search->clear();
}

void HelpWindow::search()
{
    showList();
    m_view->markWords(foldedWords(m_search->text()));
}

void HelpWindow::showList()
{
    const QString typed = m_search->text().trimmed();
    if (typed.isEmpty()) {
        m_rows->showContents(m_pages, place().page);
        m_found->clear();
    } else {
        const std::vector<HelpHit> hits = searchHelp(m_pages, typed);
        m_rows->showHits(hits);
        m_found->setText(hits.empty() ? tr("No section contains all of these words. Try fewer of them, or "
                                           "only their first letters.")
                                      : tr("Sections found: %1").arg(hits.size()));
    }
    m_found->setVisible(!m_found->text().isEmpty());
    m_list->setAccessibleName(typed.isEmpty() ? tr("Contents") : tr("Sections found"));
    const QModelIndex here = m_rows->index(m_rows->rowOf(place())); // none where no row leads there
    const bool isSeen = m_list->viewport()->rect().contains(m_list->visualRect(here));
    m_list->setCurrentIndex(here);
    if (!here.isValid())
        m_list->scrollToTop();
    else if (!isSeen) // with what stands around it
        m_list->scrollTo(here, QAbstractItemView::PositionAtCenter);
}

void HelpWindow::choose(const QModelIndex &index)
{
    if (!index.isValid() || m_rows->row(index.row()).kind == HelpRow::Kind::Group)
        return;
    const HelpPlace wanted = m_rows->row(index.row()).place; // the row may be gone once it is shown
    go(wanted);
}

void HelpWindow::follow(const QUrl &link)
{
    const QString text = link.toString();
    if (const auto wanted = placeOfLink(text, place().page)) {
        go(*wanted);
        return;
    }
    m_notice->say(State::Attention, tr("%1 lies outside the help and is not opened from here.").arg(text));
}

void HelpWindow::takeFocus()
{
    m_view->setFocus();
}

HelpPlace HelpWindow::place() const
{
    return m_visits.empty() ? HelpPlace() : m_visits[m_at].place;
}

void HelpWindow::go(const HelpPlace &place)
{
    HelpPlace wanted = place;
    const HelpPage *page = m_pages.find(wanted.page);
    const HelpSection *section = page ? sectionOf(*page, wanted.section) : nullptr;
    wanted.section = section ? section->anchor : QString();
    if (!page)
        wanted.page = HelpPages::indexPage();
    if (!m_visits.empty()) {
        m_visits[m_at].scrolled = m_view->verticalScrollBar()->value();
        if (m_visits[m_at].place != wanted)
            ++m_at;
        m_visits.resize(m_at); // what was read after it is no longer ahead
    }
    m_visits.push_back({wanted, -1});
    showVisit(m_visits.back());
    if (!page && !place.page.isEmpty())
        m_notice->say(State::Attention, tr("The help has no page “%1” yet.").arg(place.page));
}

void HelpWindow::step(int by)
{
    const auto to = static_cast<std::ptrdiff_t>(m_at) + by;
    if (to < 0 || to >= std::ssize(m_visits))
        return;
    m_visits[m_at].scrolled = m_view->verticalScrollBar()->value();
    m_at = static_cast<std::size_t>(to);
    showVisit(m_visits[m_at]);
}

void HelpWindow::showVisit(const Visit &visit)
{
    m_notice->clear();
    if (const HelpPage *page = m_pages.find(visit.place.page)) {
        m_view->showPage(*page, m_pages.folder());
        if (page->language != m_pages.language())
            m_notice->say(State::Info, tr("This page exists in English only."));
    } else {
        m_view->clear();
        m_notice->say(State::Attention, tr("No page of the help is part of this program."));
    }
    if (visit.scrolled >= 0)
        m_view->verticalScrollBar()->setValue(visit.scrolled);
    else if (!visit.place.section.isEmpty())
        m_view->goTo(visit.place.section);
    showList();
    updateTitle();
}

void HelpWindow::updateTitle()
{
    const HelpPage *page = m_pages.find(place().page);
    const QString title = page ? page->title : QString();
    setWindowTitle(title.isEmpty() ? tr("Help of Plateau") : tr("%1 – Help of Plateau").arg(title));
    m_view->setAccessibleName(title.isEmpty() ? tr("Page of the help") : title);
    m_back->setEnabled(m_at > 0);
    m_forward->setEnabled(m_at + 1 < m_visits.size());
    m_backAction->setEnabled(m_back->isEnabled());
    m_forwardAction->setEnabled(m_forward->isEnabled());
}

} // namespace plateau::ui
