// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/sidebar.h"

#include "core/exchange/decimal.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/namedoubts.h"
#include "ui/shared/fieldnote.h"
#include "ui/shared/offerfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QApplication>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

SideBar::SideBar(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_model(new DestinationsModel(theme, session, this))
    , m_list(new QListView(this))
    , m_person(new OfferField(this))
    , m_oddName(new FieldNote(theme, m_person, this, State::Attention))
{
    build();
    connect(&session, &BenchSession::racksChanged, m_model, &DestinationsModel::refresh);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex &current) { choose(current); });
    connect(m_list, &QListView::clicked, this, &SideBar::choose);
    connect(m_person, &QLineEdit::editingFinished, this, &SideBar::takePerson);
    connect(m_person, &QLineEdit::returnPressed, this, [this] {
        takePerson(); // editingFinished comes only after this
        // Not left in the name: the next thing typed is a reading.
        if (!m_session.person().isEmpty())
            goBack();
    });
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget *before, QWidget *now) {
        if (now == m_person && before && window()->isAncestorOf(before) && !isAncestorOf(before))
            m_before = before; // not the button beside the name, which readings would be typed at
        if (now == m_person)
            followPersons(); // somebody may have been set up since
    });
}

SideBar::~SideBar()
{
    disconnect(qApp, nullptr, this, nullptr);
}

void SideBar::build()
{
    m_list->setModel(m_model);
    m_list->setObjectName(u"places"_s);
    m_list->setAccessibleName(tr("Racks and books"));
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setTextElideMode(Qt::ElideRight);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setSpacing(m_theme.gap() / 3);
    const int icon = fontMetrics().height() * 3 / 2;
    m_list->setIconSize({icon, icon});
    m_person->setObjectName(u"person"_s);
    m_person->setMinimumHeight(m_theme.target());
    m_person->completeWhileTyping();
    m_person->installEventFilter(this);
    auto *personCaption = new QLabel(tr("&Person at the bench"), this);
    personCaption->setBuddy(m_person);
    m_newRun = button(m_theme, tr("&New run"), u"newRun"_s, this);
    auto *openFile = button(m_theme, tr("&Open run file…"), u"openRunFile"_s, this);
    connect(m_newRun, &QPushButton::clicked, this, &SideBar::newRunWanted);
    connect(openFile, &QPushButton::clicked, this, &SideBar::openFileWanted);

    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(m_theme.gap(), m_theme.gap(), m_theme.gap(), m_theme.gap());
    layout->setSpacing(m_theme.gap());
    layout->addWidget(m_newRun);
    layout->addWidget(openFile);
    layout->addWidget(m_list, 1);
    layout->addWidget(personCaption);
    layout->addWidget(m_person);
    layout->addWidget(m_oddName);
    setMinimumWidth(fontMetrics().averageCharWidth() * 28);
    setMaximumWidth(fontMetrics().averageCharWidth() * 36); // of a wide window titles of runs get some
}

void SideBar::addLine(QWidget *line)
{
    layout()->addWidget(line);
}

void SideBar::takeFocus()
{
    m_newRun->setFocus();
}

void SideBar::choose(const QModelIndex &index)
{
    if (m_marking || !index.isValid())
        return;
    const Destination &destination = m_model->row(index.row());
    if (destination.kind == Destination::Kind::Rack)
        Q_EMIT rackWanted(destination.run);
    else if (destination.kind == Destination::Kind::Book)
        Q_EMIT bookWanted(destination.book);
}

void SideBar::mark(const QModelIndex &index)
{
    m_marking = true;
    m_list->setCurrentIndex(index);
    if (!index.isValid())
        m_list->clearSelection();
    m_marking = false;
}

void SideBar::markRack(notebook::RunId id)
{
    mark(m_model->rackIndex(id));
}

void SideBar::markBook(Book book)
{
    mark(m_model->bookIndex(book));
}

void SideBar::markNothing()
{
    mark({});
}

void SideBar::askPerson()
{
    m_before = QApplication::focusWidget();
    m_person->setFocus();
}

void SideBar::setPerson(const QString &name)
{
    m_person->setText(name);
    takePerson();
}

void SideBar::goBack()
{
    if (m_before)
        m_before->setFocus();
    else
        focusNextChild();
    m_before = nullptr;
}

/// Escape takes back what was typed or taken from the list, before anything is recorded under it.
bool SideBar::eventFilter(QObject *watched, QEvent *event)
{
    const bool isKey = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
    if (watched != m_person || !isKey || static_cast<const QKeyEvent *>(event)->key() != Qt::Key_Escape ||
        m_person->text() == m_session.person())
        return QWidget::eventFilter(watched, event);
    event->accept();
    if (event->type() == QEvent::KeyPress) {
        m_person->setText(m_session.person());
        if (!m_session.person().isEmpty())
            goBack();
    }
    return true;
}

void SideBar::takePerson()
{
    if (const QString typed = m_person->text().trimmed();
        std::holds_alternative<double>(exchange::parseDecimal(typed))) {
        m_person->setText(m_session.person());
        m_oddName->say({tr("%1 is a number and no name: was a reading meant?").arg(typed)});
        return;
    }
    m_session.setPerson(m_person->text());
    followPersons();
}

void SideBar::followPersons()
{
    try {
        const std::vector<notebook::Person> persons = m_session.persons();
        m_person->setOffers(namesOffered(persons));
        // Where persons are set up a beginning of one of them means that one; anybody else is still told apart as odd.
        QStringList everybody;
        for (const notebook::Person &person : persons)
            everybody << person.name;
        m_person->setClosed(everybody);
        m_oddName->say(nameDoubts(m_session.person(), persons));
    } catch (const notebook::Failure &) {
        m_oddName->say({}); // what is wrong with the notebook is said where something is done
    }
}

notebook::RunId SideBar::rackBeside(notebook::RunId id, int step) const
{
    const auto &racks = m_session.racks();
    const int count = static_cast<int>(racks.size());
    for (int at = 0; at < count; ++at) {
        if (racks[static_cast<std::size_t>(at)].id == id)
            return racks[static_cast<std::size_t>((at + step + count) % count)].id;
    }
    return count > 0 ? racks.front().id : notebook::RunId{};
}

} // namespace plateau::ui
