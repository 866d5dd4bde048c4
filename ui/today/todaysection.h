// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/today/todaylines.h"

#include <QWidget>

class QLabel;

namespace plateau::ui {

/// A part of the first page: what it is about, its lines, and in place of none what that means.
class TodaySection : public QWidget
{
    Q_OBJECT

public:
    TodaySection(const Theme &theme, const QString &heading, const QString &nothing,
                 const QString &objectName, QWidget *parent = nullptr);

    void setLines(std::vector<TodayLine> lines);
    const std::vector<TodayLine> &lines() const { return m_lines; }
    SentenceList &list() { return *m_list; }

Q_SIGNALS:
    void runWanted(plateau::notebook::RunId run);
    void bookWanted(plateau::ui::Book book);

private:
    void dress();
    void follow(int row);

    const Theme &m_theme;
    QLabel *m_heading;
    QLabel *m_nothing;
    SentenceList *m_list;
    std::vector<TodayLine> m_lines;
};

} // namespace plateau::ui
