// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/standing.h"

#include "ui/books/bookpage.h"

class QCheckBox;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BookList;
class CheckForm;
class Clock;
class EquipmentModel;
class ItemForm;
class ItemView;
class Notice;
class Stores;
class Theme;

/// The book of what is checked in the laboratory: the list, one item with its checks, and where both are
/// keyed.
class EquipmentPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    EquipmentPage(const Theme &theme, const Clock &clock, const BenchSession &session, Stores &stores,
                  QWidget *parent = nullptr);

    /// The list, or the form while there is something in it that is not stored.
    void open() override;
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void buildList();
    void connectForms();
    void refresh();
    void fillList();
    void showList();
    void showItem(qint64 id);
    const equipment::HeldItem *find(qint64 id) const;
    void storeItem(const equipment::Item &item, const QString &reason);
    void storeCheck(const equipment::Check &check);
    bool personIsKnown(Notice &notice);
    Notice &noticeOnShow();

    const Theme &m_theme;
    const Clock &m_clock;
    const BenchSession &m_session;
    Stores &m_stores;
    std::vector<equipment::HeldItem> m_items;
    EquipmentModel *m_model;
    QStackedWidget *m_pages;
    BookList *m_list;
    QCheckBox *m_outOfUse;
    ItemView *m_item;
    ItemForm *m_itemForm;
    CheckForm *m_checkForm;
};

} // namespace plateau::ui
