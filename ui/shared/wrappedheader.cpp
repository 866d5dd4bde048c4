// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/wrappedheader.h"

#include "ui/shared/roomystyle.h"
#include "ui/shared/shownnumbers.h"

#include <QPainter>
#include <QRegularExpression>
#include <QStyle>
#include <QStyleOptionHeader>

#include <algorithm>

namespace plateau::ui {

int widerHalf(const QString &text, const QFontMetrics &metrics)
{
    const auto wider = [&](qsizetype at) {
        return std::max(metrics.horizontalAdvance(text.left(at)), metrics.horizontalAdvance(text.mid(at + 1)));
    };
    const qsizetype before = text.lastIndexOf(u' ', text.size() / 2);
    const qsizetype behind = text.indexOf(u' ', text.size() / 2);
    if (before < 0 && behind < 0)
        return metrics.horizontalAdvance(text);
    return before < 0 ? wider(behind) : behind < 0 ? wider(before) : std::min(wider(before), wider(behind));
}

WrappedHeader::WrappedHeader(QWidget *parent)
    : QHeaderView(Qt::Horizontal, parent)
{
    setSectionsClickable(true); // as that which a table makes for itself
}

QString WrappedHeader::textOf(int section) const
{
    return unbroken(model()->headerData(section, Qt::Horizontal).toString());
}

int WrappedHeader::beside(int section) const
{
    return inOneLine(section) - fontMetrics().size(0, textOf(section)).width();
}

int WrappedHeader::wordRoom(int section) const
{
    QStyleOptionHeader option;
    initStyleOption(&option);
    QHeaderView::initStyleOptionForIndex(&option, section);
    option.rect = QRect(0, 0, sectionSize(section), std::max(1, height()));
    const auto *roomy = qobject_cast<const RoomyStyle *>(style());
    const int around = roomy ? 2 * roomy->missingBeside(option, *this) : 0;
    return std::max(1, style()->subElementRect(QStyle::SE_HeaderLabel, &option, this).width() - around);
}

bool WrappedHeader::isBroken(int section) const
{
    return wordRoom(section) < fontMetrics().size(0, textOf(section)).width();
}

int WrappedHeader::narrowest(int section) const
{
    static const QRegularExpression breaks(QStringLiteral("[ \\n]"));
    int word = 0;
    for (const QString &part : textOf(section).split(breaks))
        word = std::max(word, fontMetrics().horizontalAdvance(part));
    return std::min(word + beside(section), inOneLine(section));
}

int WrappedHeader::inTwoLines(int section) const
{
    const QString text = textOf(section);
    if (text.contains(u'\n'))
        return inOneLine(section); // it was made so
    return std::min(widerHalf(text, fontMetrics()) + beside(section), inOneLine(section));
}

QSize WrappedHeader::sizeHint() const
{
    QSize hint = QHeaderView::sizeHint();
    for (int section = 0; model() && section < count(); ++section) {
        if (isSectionHidden(section) || !isBroken(section))
            continue;
        const QString text = textOf(section);
        const QRect room(0, 0, wordRoom(section), QWIDGETSIZE_MAX);
        const int words = fontMetrics().boundingRect(room, Qt::TextWordWrap, text).height();
        const int around = sectionSizeFromContents(section).height() - fontMetrics().size(0, text).height();
        hint.setHeight(std::max(hint.height(), words + around));
    }
    return hint;
}

void WrappedHeader::setKeptWidth(int width)
{
    // As often as it is said: what is scrolled is moved as a picture, the kept heading with it.
    m_keptWidth = width;
    viewport()->update();
}

void WrappedHeader::paintEvent(QPaintEvent *event)
{
    QHeaderView::paintEvent(event);
    if (m_keptWidth == 0 || count() == 0)
        return;
    QPainter painter(viewport());
    paintSection(&painter, QRect(0, 0, m_keptWidth, viewport()->height()), 0);
}

void WrappedHeader::initStyleOptionForIndex(QStyleOptionHeader *option, int section) const
{
    QHeaderView::initStyleOptionForIndex(option, section);
    option->text = unbroken(option->text);
    if (isBroken(section)) // what fits is not broken for a pixel
        option->textAlignment = Qt::Alignment::fromInt(option->textAlignment.toInt() | Qt::TextWordWrap);
}

} // namespace plateau::ui
