// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/shelf.h"
#include "ui/books/bookpage.h"
#include "ui/books/measurandnames.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BookList;
class Clock;
class MethodBook;
class Notice;
class RegisterView;
class ShelfModel;
class Stores;
class Theme;

/// The samples that wait: a list that says why each does, where samples are registered and changed, and where
/// somebody says that one will not be run.
class SamplesPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    SamplesPage(const Theme &theme, const Clock &clock, const BenchSession &session, Stores &stores,
                const MethodBook &methods, QWidget *parent = nullptr);

    /// The list, or the table while there is something in it that is not stored.
    void open() override;
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    QWidget *buildListPage();
    QWidget *buildStrip();
    void refresh();
    bool read();
    void showList();
    void showRegister();
    /// Nothing where no row is chosen.
    const notebook::WaitingSample *chosen() const;
    void describeChosen();
    void change(int row);
    void withdraw();
    void waiveRepeat();
    /// What both of them need: a person and a reason. False where one is missing, which is said.
    bool mayTakeOff();
    void say(const QString &sentence);
    void store(const std::vector<planning::ShelfSample> &samples);
    bool personIsKnown(Notice &notice);
    void dropAnsweredQuestion();

    const Theme &m_theme;
    const BenchSession &m_session;
    Stores &m_stores;
    const MethodBook &m_methods;
    MeasurandNames m_measurands;
    std::vector<notebook::WaitingSample> m_waiting;
    ShelfModel *m_model;
    QStackedWidget *m_pages;
    BookList *m_list;
    QWidget *m_strip = nullptr;
    QLabel *m_about = nullptr;
    QLineEdit *m_reason = nullptr;
    QPushButton *m_change = nullptr;
    QPushButton *m_withdraw = nullptr;
    QPushButton *m_waive = nullptr;
    RegisterView *m_register;
    bool m_stale = true;
};

} // namespace plateau::ui
