// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"
#include "ui/books/bookpage.h"
#include "ui/books/reagentnames.h"

class QCheckBox;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BookList;
class Clock;
class Dialogs;
class LotView;
class LotsModel;
class MethodBook;
class Notice;
class ReceiveView;
class Stores;
class Theme;

/// The book of reagents: containers in hand and used up, one container with its ledger, and where one that
/// came in is noted.
class LotsPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    LotsPage(const Theme &theme, const Clock &clock, Dialogs &dialogs, const BenchSession &session,
             Stores &stores, const MethodBook &methods, QWidget *parent = nullptr);

    /// The list, or the form while there is something in it that is not stored.
    void open() override;
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void buildList();
    void connectLot();
    void connectKeeping();
    void refresh();
    void fillList();
    void showList();
    void showLot(qint64 id);
    bool fillLot(qint64 id);
    void receive(const notebook::LotLabel &label, double volume_mL);
    void receiveDry(const notebook::LotLabel &label, std::optional<double> mass_mg);
    /// Where the form says it is put.
    void keepIt(notebook::LotId lot);
    void sayReceived(const notebook::LotLabel &label, const QString &amount);
    /// One act on the lot on show, and what to say of it.
    template <class Act> void note(Act &&act, const QString &sentence);
    void saveTrace();
    bool personIsKnown(Notice &notice);
    void dropAnsweredQuestion();
    Notice &noticeOnShow();

    const Theme &m_theme;
    const Clock &m_clock;
    Dialogs &m_dialogs;
    const BenchSession &m_session;
    Stores &m_stores;
    const MethodBook &m_methods;
    ReagentNames m_reagents;
    std::vector<planning::Lot> m_lots;
    LotsModel *m_model;
    QStackedWidget *m_pages;
    BookList *m_list;
    QCheckBox *m_usedUp;
    LotView *m_lot;
    ReceiveView *m_receive;
};

} // namespace plateau::ui
