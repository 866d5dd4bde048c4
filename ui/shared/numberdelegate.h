// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/shownnumbers.h"

namespace plateau::ui {

class Theme;

/// Edits a table cell with the program's number entry. The text goes into the model as typed, and is painted as other
/// numbers are.
class NumberDelegate : public ShownNumbersDelegate
{
    Q_OBJECT

public:
    NumberDelegate(const Theme &theme, QObject *parent);
    QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &option,
                          const QModelIndex &index) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
