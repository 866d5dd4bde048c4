// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QFontMetricsF>
#include <QStringList>
#include <QStyledItemDelegate>

#include <vector>

namespace plateau::ui {

class Theme;

/// At most two lines.
struct BrokenText {
    QStringList lines;
    /// Nothing left out, and no word broken.
    bool isWhole = true;
};
/// Both ends of the text stay; what is left out is left out in the middle.
BrokenText inTwoLines(const QString &text, const QFontMetricsF &metrics, double width);

/// Draws one tube of the rack: its number, what it holds, the volume, and a shape for how it stands. The tube
/// that is next has a thick frame, one planned unlike the others an information shape, one that got another
/// volume a warning shape and a double line.
class PipetteCell : public QStyledItemDelegate
{
    Q_OBJECT

public:
    explicit PipetteCell(const Theme &theme, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    /// What the words of that tube need in a cell of that width.
    double neededHeight(const QModelIndex &index, double width, const QFont &font) const;
    /// Name and volume in letters of the usual size: more tubes are seen at once.
    void setCompact(bool compact) { m_isCompact = compact; }
    bool isCompact() const { return m_isCompact; }

private:
    struct Line {
        QString text;
        QFont font;
        /// In muted ink, where that reads.
        bool isQuiet = false;
    };
    std::vector<Line> linesOf(const QModelIndex &index, double width, const QFont &font) const;
    QFont numberFont() const;
    QRectF areaOf(const QRectF &cell) const;
    QRectF innerOf(const QRectF &cell) const;
    void paintGround(QPainter &painter, const QRectF &area, const QModelIndex &index, bool next) const;
    void paintShapes(QPainter &painter, const QRectF &line, const QModelIndex &index) const;
    void paintWords(QPainter &painter, const QRectF &area, const QModelIndex &index, const QFont &font,
                    bool next) const;

    const Theme &m_theme;
    bool m_isCompact = false;
};

} // namespace plateau::ui
