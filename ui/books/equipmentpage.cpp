// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/equipmentpage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/booklist.h"
#include "ui/books/checkform.h"
#include "ui/books/equipmentmodel.h"
#include "ui/books/itemform.h"
#include "ui/books/itemview.h"
#include "ui/books/wordfilter.h"
#include "ui/shared/clock.h"
#include "ui/shared/guard.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString whoFirst()
{
    return EquipmentPage::tr(
        "First say who is at the bench: type your name on the left and press Enter, then do it again.");
}

} // namespace

EquipmentPage::EquipmentPage(const Theme &theme, const Clock &clock, const BenchSession &session,
                             Stores &stores, QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_session(session)
    , m_stores(stores)
    , m_model(new EquipmentModel(theme, this))
    , m_pages(new PageStack(this))
    , m_list(new BookList(theme, new WordFilter(m_model), {u"equipment"_s, u"equipment"_s},
                          {tr("Equipment"), tr("What is checked"), tr("Fin&d by name, kind or state"),
                           tr("Nothing is in the book yet. Add the photometer, pipettes, flasks, balance, "
                              "thermometers and cuvettes that are checked; their checks then say what is "
                              "due, warn of what failed, and give the budgets their figures."),
                           tr("No item contains all of these words. Remove one to find more.")},
                          this))
    , m_outOfUse(new QCheckBox(tr("Out of &use too"), m_list))
    , m_item(new ItemView(theme, this))
    , m_itemForm(new ItemForm(theme, this))
    , m_checkForm(new CheckForm(theme, this))
{
    for (QWidget *page : std::initializer_list<QWidget *>{m_list, m_item, m_itemForm, m_checkForm})
        m_pages->addWidget(page);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    buildList();
    connectForms();
    connect(&stores, &Stores::equipmentChanged, this, &EquipmentPage::refresh);
    connect(&stores, &Stores::laboratoryChanged, this, &EquipmentPage::refresh);
    connect(&session, &BenchSession::personChanged, this, [this] {
        if (!m_session.person().isEmpty() && noticeOnShow().sentence() == whoFirst())
            noticeOnShow().clear();
    });
}

void EquipmentPage::buildList()
{
    m_outOfUse->setObjectName(u"outOfUseToo"_s);
    m_outOfUse->setMinimumHeight(m_theme.target());
    auto *fresh = button(m_theme, tr("&Add an item…"), u"addItem"_s, m_list);
    m_list->addButton(m_outOfUse);
    m_list->addButton(fresh);
    m_list->table().setFlexibleColumn(EquipmentModel::Standing);
    m_list->table().setFlexibleMinimum(26);
    m_list->table().setWrap(Table::Wrap::AsNeeded);
    connect(m_outOfUse, &QCheckBox::toggled, this, &EquipmentPage::fillList);
    connect(fresh, &QPushButton::clicked, this, [this] {
        if (m_itemForm->changed())
            m_itemForm->startNew();
        m_pages->setCurrentWidget(m_itemForm);
        m_itemForm->takeFocus();
    });
    connect(m_list, &BookList::opened, this, [this](int row) { showItem(m_model->row(row).id); });
}

void EquipmentPage::connectForms()
{
    connect(m_item, &ItemView::closed, this, &EquipmentPage::showList);
    connect(m_item, &ItemView::checkWanted, this, [this] {
        if (const equipment::HeldItem *held = find(m_item->itemId())) {
            m_checkForm->start(*held, m_clock.now().date());
            m_pages->setCurrentWidget(m_checkForm);
            m_checkForm->takeFocus();
        }
    });
    connect(m_item, &ItemView::changeWanted, this, [this] {
        if (const equipment::HeldItem *held = find(m_item->itemId())) {
            m_itemForm->startChange(*held);
            m_pages->setCurrentWidget(m_itemForm);
            m_itemForm->takeFocus();
        }
    });
    connect(m_item, &ItemView::withdrawalWanted, this, [this](qint64 check, const QString &reason) {
        if (personIsKnown(m_item->notice()) &&
            guarded(m_item->notice(), [&] { m_stores.withdrawCheck({check}, reason); }))
            m_item->markWithdrawn();
    });
    connect(m_itemForm, &ItemForm::wanted, this, &EquipmentPage::storeItem);
    connect(m_itemForm, &ItemForm::closed, this, [this] {
        if (m_itemForm->changed())
            showItem(*m_itemForm->changed());
        else
            showList();
    });
    connect(m_checkForm, &CheckForm::wanted, this, &EquipmentPage::storeCheck);
    connect(m_checkForm, &CheckForm::closed, this, [this] { showItem(m_checkForm->itemId()); });
}

void EquipmentPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    refresh(); // what is in date today may not be tomorrow
}

Notice &EquipmentPage::noticeOnShow()
{
    QWidget *page = m_pages->currentWidget();
    return page == m_item        ? m_item->notice()
           : page == m_itemForm  ? m_itemForm->notice()
           : page == m_checkForm ? m_checkForm->notice()
                                 : m_list->notice();
}

void EquipmentPage::refresh()
{
    if (!isVisible())
        return; // it is read when it is shown next
    const bool read = guarded(noticeOnShow(), [this] {
        m_items = m_stores.equipment();
        m_itemForm->setLaboratory(m_stores.laboratory());
    });
    if (!read)
        return;
    fillList();
    if (m_pages->currentWidget() == m_item) {
        if (const equipment::HeldItem *held = find(m_item->itemId()))
            m_item->show(*held, m_clock.now().date());
    }
}

void EquipmentPage::fillList()
{
    std::vector<equipment::HeldItem> shown = m_items;
    if (!m_outOfUse->isChecked())
        std::erase_if(shown, [](const equipment::HeldItem &held) { return !held.item.inUse; });
    m_model->setItems(shown, m_clock.now().date());
    m_list->refresh();
}

void EquipmentPage::open()
{
    if (m_checkForm->hasUnsavedChanges())
        m_pages->setCurrentWidget(m_checkForm);
    else if (m_itemForm->hasUnsavedChanges())
        m_pages->setCurrentWidget(m_itemForm);
    else
        showList();
}

QString EquipmentPage::unstored() const
{
    const bool unstored =
        m_checkForm->hasUnsavedChanges() || m_itemForm->hasUnsavedChanges() || m_item->hasUnsavedChanges();
    return unstored ? tr("An item of equipment or a check, not stored yet") : QString();
}

void EquipmentPage::showList()
{
    m_list->notice().clear();
    m_pages->setCurrentWidget(m_list);
    m_list->takeFocus();
}

void EquipmentPage::showItem(qint64 id)
{
    const equipment::HeldItem *held = find(id);
    if (!held) {
        showList();
        return;
    }
    m_item->show(*held, m_clock.now().date());
    m_pages->setCurrentWidget(m_item);
    m_item->takeFocus();
}

const equipment::HeldItem *EquipmentPage::find(qint64 id) const
{
    const auto found = std::ranges::find(m_items, id, &equipment::HeldItem::id);
    return found == m_items.end() ? nullptr : &*found;
}

void EquipmentPage::storeItem(const equipment::Item &item, const QString &reason)
{
    if (!personIsKnown(m_itemForm->notice()))
        return;
    qint64 id = m_itemForm->changed().value_or(0);
    const bool stored = guarded(m_itemForm->notice(), [&] {
        if (id != 0)
            m_stores.changeItem({id}, item, reason);
        else
            id = m_stores.addItem(item).value;
    });
    if (!stored)
        return;
    m_itemForm->markStored();
    showItem(id);
    m_item->notice().say(
        State::Good, reason.isEmpty() ? tr("In the book: %1. Key its first check.").arg(item.name)
                                      : tr("%1 is changed; its checks keep what held then.").arg(item.name));
}

void EquipmentPage::storeCheck(const equipment::Check &check)
{
    if (!personIsKnown(m_checkForm->notice()))
        return;
    const qint64 id = m_checkForm->itemId();
    if (!guarded(m_checkForm->notice(), [&] { m_stores.addCheck({id}, check); }))
        return;
    m_checkForm->markStored();
    showItem(id);
    m_item->notice().say(State::Good, tr("The check is in the book."));
}

bool EquipmentPage::personIsKnown(Notice &notice)
{
    if (!m_session.person().isEmpty())
        return true;
    notice.say(State::Info, whoFirst());
    Q_EMIT personWanted();
    return false;
}

} // namespace plateau::ui
