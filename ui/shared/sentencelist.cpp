// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/sentencelist.h"

#include "ui/shared/shownnumbers.h"

#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Word-wraps to the width of the view; the stock delegate measures before it knows that width.
class WrappingDelegate : public QStyledItemDelegate
{
public:
    WrappingDelegate(const Theme &theme, QAbstractItemView *view)
        : QStyledItemDelegate(view)
        , m_theme(theme)
        , m_view(view)
    {
    }

    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override
    {
        const int width = m_view->viewport()->width();
        return {width, heightAt(width, option, index)};
    }

    int heightAt(int width, const QStyleOptionViewItem &option, const QModelIndex &index) const
    {
        const QRect text =
            option.fontMetrics.boundingRect(QRect(0, 0, width - left(option) - m_theme.gap(), 1 << 20),
                                            Qt::TextWordWrap, unbroken(shownNumbers(index.data(Qt::DisplayRole).toString())));
        return std::max(text.height(), iconSide(option)) + 2 * m_theme.gap();
    }

    int gap() const { return m_theme.gap(); }

    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override
    {
        QStyleOptionViewItem item = option;
        initStyleOption(&item, index);
        const QString text = unbroken(shownNumbers(std::exchange(item.text, {})));
        item.icon = {};
        item.features &= ~QStyleOptionViewItem::HasDecoration;
        const QWidget *widget = option.widget;
        widget->style()->drawControl(QStyle::CE_ItemViewItem, &item, painter, widget);

        const int side = iconSide(option);
        const QRect area = option.rect.adjusted(m_theme.gap(), m_theme.gap(), -m_theme.gap(), -m_theme.gap());
        index.data(Qt::DecorationRole).value<QIcon>().paint(painter, area.left(), area.top(), side, side);
        const bool selected = item.state & QStyle::State_Selected;
        painter->setPen(item.palette.color(selected ? QPalette::HighlightedText : QPalette::Text));
        painter->setFont(item.font);
        painter->drawText(area.adjusted(left(option) - m_theme.gap(), 0, 0, m_theme.gap()), Qt::TextWordWrap,
                          text);
    }

private:
    static int iconSide(const QStyleOptionViewItem &option) { return option.fontMetrics.height(); }
    int left(const QStyleOptionViewItem &option) const { return iconSide(option) + 2 * m_theme.gap(); }

    const Theme &m_theme;
    QAbstractItemView *m_view;
};

} // namespace

SentenceModel::SentenceModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

QVariant SentenceModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Sentence &sentence = row(index.row());
    if (role == Qt::DisplayRole)
        return sentence.text;
    if (role == Qt::DecorationRole)
        return m_theme.icon(sentence.state);
    return {};
}

SentenceList::SentenceList(const Theme &theme, const QString &accessibleName, const QString &objectName,
                           QWidget *parent)
    : QListView(parent)
    , m_model(new SentenceModel(theme, this))
{
    setModel(m_model);
    setItemDelegate(new WrappingDelegate(theme, this));
    setAccessibleName(accessibleName);
    setObjectName(objectName);
    setSelectionMode(ExtendedSelection);
    setEditTriggers(NoEditTriggers);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(Adjust);
    setTabKeyNavigation(false);
}

void SentenceList::setSentences(std::vector<Sentence> sentences)
{
    m_model->setSentences(std::move(sentences));
    scheduleDelayedItemsLayout();
    takeHeight();
}

void SentenceList::fitSentences(int most)
{
    m_mostHeight = most;
    takeHeight();
}

void SentenceList::takeHeight()
{
    if (m_mostHeight > 0)
        setMaximumHeight(sizeHint().height());
}

QSize SentenceList::sizeHint() const
{
    const QSize usual = QListView::sizeHint();
    return m_mostHeight == 0 ? usual : QSize(usual.width(), wholeLinesWithin(m_mostHeight));
}

int SentenceList::rowHeightAt(int row, int viewportWidth) const
{
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    return static_cast<const WrappingDelegate *>(itemDelegate())->heightAt(viewportWidth, option, m_model->index(row));
}

int SentenceList::heightAt(int viewportWidth) const
{
    int height = 0;
    for (int row = 0; row < m_model->rowCount(); ++row)
        height += rowHeightAt(row, viewportWidth);
    return height;
}

/// With the scroll bar, where one is needed, the sentences need more height: so each is asked for at the width it has then,
/// whether the bar stands there already or not.
int SentenceList::wholeLinesWithin(int most) const
{
    const int frames = 2 * frameWidth();
    const int wide = width() - frames;
    if (const int needed = heightAt(wide) + frames; needed <= most)
        return needed;
    const int narrow = wide - style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, this);
    const int around = static_cast<const WrappingDelegate *>(itemDelegate())->gap();
    const int room = most - frames;
    int top = 0;
    int row = 0;
    int height = rowHeightAt(row, narrow);
    for (; top + height <= room && row + 1 < m_model->rowCount(); height = rowHeightAt(++row, narrow))
        top += height;
    // Of the row that does not fit as many lines as do.
    const int text = height - 2 * around;
    const int lines = std::max(1, qRound(double(text) / fontMetrics().lineSpacing()));
    const int seen = std::max(0, std::min(lines, (room - top - around) * lines / text));
    const int whole = seen > 0 ? top + around + (seen * text + lines - 1) / lines : top;
    return whole > 0 ? whole + frames : std::max(0, most);
}

void SentenceList::keyPressEvent(QKeyEvent *event)
{
    if (!event->matches(QKeySequence::Copy)) {
        QListView::keyPressEvent(event);
        return;
    }
    QModelIndexList chosen = selectedIndexes();
    std::sort(chosen.begin(), chosen.end());
    QStringList lines;
    for (const QModelIndex &index : chosen)
        lines << index.data(Qt::DisplayRole).toString();
    QApplication::clipboard()->setText(lines.join(u'\n'));
}

void SentenceList::resizeEvent(QResizeEvent *event)
{
    QListView::resizeEvent(event);
    scheduleDelayedItemsLayout();
    if (event->size().width() != event->oldSize().width())
        takeHeight();
}

} // namespace plateau::ui
