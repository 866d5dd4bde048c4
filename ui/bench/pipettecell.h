// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStyledItemDelegate>

namespace plateau::ui {

class Theme;

/// Draws one tube of the rack: its number, what it holds, the volume, and a shape for how it stands. The tube
/// that is next has a thick frame, one unlike the others a warning shape and a double line.
class PipetteCell : public QStyledItemDelegate
{
    Q_OBJECT

public:
    explicit PipetteCell(const Theme &theme, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;

private:
    void paintGround(QPainter &painter, const QRectF &area, const QModelIndex &index, bool next) const;
    void paintShapes(QPainter &painter, const QRectF &line, const QModelIndex &index) const;
    void paintWords(QPainter &painter, const QRectF &area, const QModelIndex &index, const QFont &font) const;

    void paintContents(QPainter &painter, const QRectF &area, const QModelIndex &index,
                       const QFont &font) const;

    const Theme &m_theme;
};

} // namespace plateau::ui
