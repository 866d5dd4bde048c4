// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStyledItemDelegate>

namespace plateau::ui {

class Theme;

/// Draws a line of HelpListModel: groups in second rank, sections below their page, of a hit its title, its
/// page and two lines of what was found.
class HelpRowDelegate : public QStyledItemDelegate
{
public:
    HelpRowDelegate(const Theme &theme, QObject *parent);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
