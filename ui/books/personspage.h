// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"
#include "ui/books/bookpage.h"

class QLabel;

namespace plateau::ui {

class BenchSession;
class Notice;
class PersonsForm;
class PersonsModel;
class Stores;
class Table;
class Theme;
struct PersonsAct;

/// The book of persons: who signs, in which role, and how the list is changed. While it is empty it says what
/// setting up persons changes.
class PersonsPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    PersonsPage(const Theme &theme, const BenchSession &session, Stores &stores, QWidget *parent = nullptr);

    void open() override;
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void refresh();
    void store(const PersonsAct &act);
    void carryOut(const PersonsAct &act);
    void chooseRow(int row);

    const BenchSession &m_session;
    Stores &m_stores;
    PersonsModel *m_model;
    Notice *m_notice;
    QLabel *m_intro;
    QLabel *m_empty;
    Table *m_table;
    PersonsForm *m_form;
};

} // namespace plateau::ui
