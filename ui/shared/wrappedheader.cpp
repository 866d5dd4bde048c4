// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/wrappedheader.h"

#include <QRegularExpression>
#include <QStyle>
#include <QStyleOptionHeader>

#include <algorithm>

namespace plateau::ui {

WrappedHeader::WrappedHeader(QWidget *parent)
    : QHeaderView(Qt::Horizontal, parent)
{
    setSectionsClickable(true); // as that which a table makes for itself
}

QString WrappedHeader::textOf(int section) const
{
    return model()->headerData(section, Qt::Horizontal).toString();
}

int WrappedHeader::beside(int section) const
{
    return sectionSizeHint(section) - fontMetrics().size(0, textOf(section)).width();
}

int WrappedHeader::narrowest(int section) const
{
    static const QRegularExpression breaks(QStringLiteral("[ \\n]"));
    int word = 0;
    for (const QString &part : textOf(section).split(breaks))
        word = std::max(word, fontMetrics().horizontalAdvance(part));
    return std::min(word + beside(section), sectionSizeHint(section));
}

bool WrappedHeader::isCut(int section) const
{
    return sectionSize(section) < narrowest(section);
}

QSize WrappedHeader::sizeHint() const
{
    QSize hint = QHeaderView::sizeHint();
    const int line = fontMetrics().size(0, QStringLiteral("x")).height();
    int words = line;
    for (int section = 0; model() && section < count(); ++section) {
        if (isSectionHidden(section))
            continue;
        const QRect room(0, 0, std::max(1, sectionSize(section) - beside(section)), QWIDGETSIZE_MAX);
        words = std::max(words, fontMetrics().boundingRect(room, Qt::TextWordWrap, textOf(section)).height());
    }
    hint.setHeight(sectionSizeFromContents(0).height() - fontMetrics().size(0, textOf(0)).height() + words);
    return hint;
}

void WrappedHeader::initStyleOptionForIndex(QStyleOptionHeader *option, int section) const
{
    QHeaderView::initStyleOptionForIndex(option, section);
    option->textAlignment |= static_cast<Qt::AlignmentFlag>(Qt::TextWordWrap);
}

} // namespace plateau::ui
