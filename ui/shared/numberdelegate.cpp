// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/numberdelegate.h"

#include "ui/shared/numberentry.h"

namespace plateau::ui {

NumberDelegate::NumberDelegate(const Theme &theme, QObject *parent)
    : ShownNumbersDelegate(parent)
    , m_theme(theme)
{
}

QWidget *NumberDelegate::createEditor(QWidget *parent, const QStyleOptionViewItem &,
                                      const QModelIndex &index) const
{
    auto *entry = new NumberEntry(m_theme, parent);
    entry->setFrame(false);
    entry->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
    return entry;
}

} // namespace plateau::ui
