// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStyledItemDelegate>

namespace plateau::ui {

/// A text with its numbers in C format (core/evaluation/format.h) as it is painted: a number below zero has a minus sign
/// and not the hyphen that files have. A hyphen within a name or a date (P-104, 2026-06-09) stays.
QString shownNumbers(QString text);

/// Paints a cell so; what the model holds, and what is copied or exported, is as it was.
class ShownNumbersDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QString displayText(const QVariant &value, const QLocale &locale) const override;
};

} // namespace plateau::ui
