// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/standardstock.h"
#include "ui/bookentries.h"
#include "ui/books/bookpage.h"
#include "ui/today/todaylines.h"

namespace plateau::ui {

class BenchSession;
class Clock;
class MethodBook;
class Notice;
class Stores;
class Theme;
class TodaySection;
class WhenSeen;

/// The first page: what stands on the bench and what is next there, what waits, what falls due, and what was
/// decided last. Every line leads to where it is dealt with.
class TodayPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    TodayPage(const Theme &theme, const Clock &clock, BenchSession &session, Stores &stores,
              const MethodBook &methods, QWidget *parent = nullptr);

    void open() override;

Q_SIGNALS:
    void bookWanted(plateau::ui::Book book);

private:
    void build();
    /// What changes with time alone.
    void showWhatGoesOn();
    void refresh();
    std::vector<TodayLine> linesOfLots(const QDateTime &now) const;
    std::vector<TodaySection *> sections() const;

    const Theme &m_theme;
    const Clock &m_clock;
    BenchSession &m_session;
    Stores &m_stores;
    const MethodBook &m_methods;
    Notice *m_notice;
    TodaySection *m_bench;
    TodaySection *m_waiting;
    TodaySection *m_standards;
    TodaySection *m_due;
    TodaySection *m_decided;
    WhenSeen *m_update;
    std::vector<planning::HeldPreparation> m_made;
};

} // namespace plateau::ui
