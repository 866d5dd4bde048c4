// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/scrolledpage.h"

#include <QApplication>
#include <QEvent>
#include <QLayout>
#include <QScreen>

namespace plateau::ui {

namespace {

/// Stands between the area and the page: an area asks a page with wrapped text for the height it would like
/// to have, and scrolls long before it has to.
class PageHost : public QWidget
{
public:
    explicit PageHost(QWidget *page)
        : m_page(page)
    {
        page->setParent(this);
        setFocusPolicy(Qt::NoFocus);
    }
    QSize sizeHint() const override { return m_page->sizeHint(); }
    QSize minimumSizeHint() const override
    {
        return m_page->minimumSizeHint().expandedTo(m_page->minimumSize());
    }

protected:
    void resizeEvent(QResizeEvent *) override { m_page->setGeometry(rect()); }
    bool event(QEvent *event) override
    {
        if (event->type() == QEvent::LayoutRequest)
            updateGeometry();
        return QWidget::event(event);
    }

private:
    QWidget *m_page;
};

/// Of what is larger than the view its beginning.
void showPlace(QScrollArea &area, const QRect &place)
{
    const QSize seen = place.size().boundedTo(area.viewport()->size());
    const QPoint centre = place.topLeft() + QPoint(seen.width(), seen.height()) / 2;
    area.ensureVisible(centre.x(), centre.y(), seen.width() / 2, seen.height() / 2);
}

} // namespace

ScrolledPage::ScrolledPage(QWidget *page, QWidget *parent)
    : QScrollArea(parent)
{
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setWidgetResizable(true);
    auto *host = new PageHost(page);
    setWidget(host);
    // The area paints its page on the ground of the window, as if it were not there.
    viewport()->setAutoFillBackground(false);
    host->setAutoFillBackground(false);
    connect(qApp, &QApplication::focusChanged, this,
            [this](const QWidget *, const QWidget *now) { showFocus(now); });
}

ScrolledPage::~ScrolledPage()
{
    disconnect(qApp, nullptr, this, nullptr);
}

QSize ScrolledPage::sizeHint() const
{
    return widget()->sizeHint();
}

QSize ScrolledPage::minimumSizeHint() const
{
    const int line = fontMetrics().height();
    return widget()->minimumSizeHint().boundedTo({line * 8, line * 4});
}

bool ScrolledPage::eventFilter(QObject *watched, QEvent *event)
{
    const bool isShown = QScrollArea::eventFilter(watched, event);
    // A sentence that came up must not push where the keys are out of sight.
    if (watched == widget() && event->type() == QEvent::Resize)
        QMetaObject::invokeMethod(this, [this] { showFocus(QApplication::focusWidget()); }, Qt::QueuedConnection);
    return isShown;
}

void ScrolledPage::showFocus(const QWidget *focus)
{
    if (!focus || !widget()->isAncestorOf(focus))
        return;
    showPlace(*this, {focus->mapTo(widget(), QPoint()), focus->size()});
}

void bringIntoView(const QWidget &widget, const QRect &part)
{
    for (QWidget *above = widget.parentWidget(); above; above = above->parentWidget()) {
        auto *area = qobject_cast<QScrollArea *>(above);
        if (area && area->widget() && area->widget()->isAncestorOf(&widget))
            showPlace(*area, {widget.mapTo(area->widget(), part.topLeft()), part.size()});
    }
}

ScrolledPage *scrolled(QLayout *form, QWidget *parent)
{
    auto *page = new QWidget(parent);
    form->setContentsMargins({});
    page->setLayout(form);
    return new ScrolledPage(page, parent);
}

void resizeOnScreen(QWidget &window, const QSize &wanted)
{
    const QSize frame(16, 40); // what the desktop puts around it, about
    window.resize(wanted.boundedTo(window.screen()->availableSize() - frame));
}

PageStack::PageStack(QWidget *parent)
    : QStackedWidget(parent)
{
    connect(this, &QStackedWidget::currentChanged, this, &QWidget::updateGeometry);
}

QSize PageStack::minimumSizeHint() const
{
    const QWidget *page = currentWidget();
    return page ? page->minimumSizeHint().expandedTo(page->minimumSize()) : QStackedWidget::minimumSizeHint();
}

} // namespace plateau::ui
