// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QHeaderView>

namespace plateau::ui {

/// Of the text in two lines as equal as may be, the width of the wider one.
int widerHalf(const QString &text, const QFontMetrics &metrics);

/// The headings of a table. What does not fit its column goes on on another line, and the header is as high as its highest
/// heading.
class WrappedHeader : public QHeaderView
{
    Q_OBJECT

public:
    explicit WrappedHeader(QWidget *parent = nullptr);

    /// Widths that a heading needs; with its longest word in one line, it takes as many lines as that makes.
    int narrowest(int section) const;
    int inTwoLines(int section) const;
    int inOneLine(int section) const { return sectionSizeHint(section); }
    QSize sizeHint() const override;
    /// Of the first heading, which stays at the left edge over what went below it; 0 for a header that has none.
    void setKeptWidth(int width);

protected:
    void paintEvent(QPaintEvent *event) override;
    void initStyleOptionForIndex(QStyleOptionHeader *option, int section) const override;

private:
    QString textOf(int section) const;
    /// Margins and the arrow of the order, wherever it may come to stand.
    int beside(int section) const;
    /// What its words have got as it is now.
    int wordRoom(int section) const;
    bool isBroken(int section) const;

    int m_keptWidth = 0;
};

} // namespace plateau::ui
