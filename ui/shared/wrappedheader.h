// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QHeaderView>

namespace plateau::ui {

/// The headings of a table whose columns may be narrower than their headings: what does not fit goes on on another line,
/// and the header is as high as its highest heading.
class WrappedHeader : public QHeaderView
{
    Q_OBJECT

public:
    explicit WrappedHeader(QWidget *parent = nullptr);

    /// With its longest word in one line; words as they are broken.
    int narrowest(int section) const;
    /// With all of it in one line.
    int widest(int section) const { return sectionSizeHint(section); }
    /// Whether words of it are cut at the width that the section has.
    bool isCut(int section) const;
    QSize sizeHint() const override;

protected:
    void initStyleOptionForIndex(QStyleOptionHeader *option, int section) const override;

private:
    QString textOf(int section) const;
    /// Margins and the arrow of the order.
    int beside(int section) const;
};

} // namespace plateau::ui
