// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"
#include "ui/books/bookpage.h"
#include "ui/books/measurandnames.h"

class QLabel;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BookList;
class Clock;
class LimitsModel;
class LimitsView;
class MethodBook;
class Notice;
class Stores;
class Theme;

/// The book of limits: what the laboratory holds the results of its products against, and one of them as a
/// form. The list is saved as a whole, with a reason.
class LimitsPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    LimitsPage(const Theme &theme, const Clock &clock, const BenchSession &session, Stores &stores,
               const MethodBook &methods, QWidget *parent = nullptr);

    /// The list, or the form while there is something in it that is not saved.
    void open() override;
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void buildList();
    void refresh();
    void sayWhereItComesFrom();
    void showList();
    /// -1: a new one.
    void showLimit(int row);
    /// A copy: the form is emptied as soon as it is stored.
    void save(evaluation::Specification limit, const QString &reason);
    void remove(const QString &reason);
    bool store(const std::vector<evaluation::Specification> &limits, const QString &reason);
    std::vector<evaluation::Specification> others() const;
    bool personIsKnown();
    void dropAnsweredQuestion();

    const Theme &m_theme;
    const Clock &m_clock;
    const BenchSession &m_session;
    Stores &m_stores;
    const MethodBook &m_methods;
    std::vector<evaluation::Specification> m_limits;
    MeasurandNames m_names;
    /// The one that is open, as it was saved; nothing for a new one.
    std::optional<evaluation::Specification> m_open;
    LimitsModel *m_model;
    QStackedWidget *m_pages;
    BookList *m_list;
    QLabel *m_origin;
    LimitsView *m_view;
};

} // namespace plateau::ui
