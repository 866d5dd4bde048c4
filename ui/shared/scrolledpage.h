// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QScrollArea>
#include <QStackedWidget>

class QLayout;

namespace plateau::ui {

/// Shows a page whole where there is room for it. Where there is not (a large font, a small screen) the page
/// keeps the room it needs at least, and is scrolled; whatever takes the focus comes into sight.
class ScrolledPage : public QScrollArea
{
    Q_OBJECT

public:
    /// Takes the page over.
    explicit ScrolledPage(QWidget *page, QWidget *parent = nullptr);
    /// Nobody is told of the focus any more: it moves while the page within goes.
    ~ScrolledPage() override;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void showFocus(const QWidget *focus);
};

/// Scrolls every area that the widget stands in until that part of it is seen; of what is larger than the area its
/// beginning.
void bringIntoView(const QWidget &widget, const QRect &part);

/// Rows and columns of a dialog's form, as such a page.
ScrolledPage *scrolled(QLayout *form, QWidget *parent);

/// As large as wanted, as far as the screen lets it.
void resizeOnScreen(QWidget &window, const QSize &wanted);

/// Pages of which one is on show, and asks for the room that this one needs: a large page does not make the
/// small ones scroll.
class PageStack : public QStackedWidget
{
    Q_OBJECT

public:
    explicit PageStack(QWidget *parent = nullptr);

    QSize minimumSizeHint() const override;
};

} // namespace plateau::ui
