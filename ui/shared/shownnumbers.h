// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/papertext.h"

#include <QString>
#include <QStyledItemDelegate>

namespace plateau::ui {

/// A sentence with its numbers in C format (core/evaluation/format.h) as it is painted: a number below zero has a minus
/// sign and not the hyphen that files have, and one that has a unit, or the three decimals of
/// an absorbance, the decimal sign of the locale. A hyphen or a point within a name, a date or a section (P-104,
/// 2026-06-09, 4.2) stays, and so does a text that is a number alone.
QString shownNumbers(QString text);
/// The decimal signs and the days of kept sentences ("check 16 of 2026-05-12") alone: of a label, which is read and copied as it stands.
QString withDecimalSigns(const QString &text);
/// Where a number is from ("certificate, 2026-02-16"), as it is kept with a run, with every day of it as the locale has it.
/// Not for names or lots, which may look like a day.
QString withDaysShown(const QString &source);
/// The same of a cell that holds a number and nothing else, or a day, which stays; a power of ten as it is written by hand.
QString shownNumber(const QString &cell);
/// A formula, in letters or in numbers, that files have in ASCII: "2 x 10 - 1e-05" is "2 × 10 − 1·10⁻⁵".
QString shownFormula(const QString &text);

/// What is painted of a cell of a table: numbers stand to the right, words to the left.
QString shownCell(const QString &text, Qt::Alignment alignment, bool isFigure);
/// As a model gives it for Qt::TextAlignmentRole.
Qt::Alignment alignmentOf(const QVariant &value);

/// True of a cell to the left whose text may be a number alone, and then is one: a name is none there.
constexpr int FigureRole = Qt::UserRole + 71;

/// Paints a cell so: a number where it stands to the right. What the model holds, and what is copied or exported, is as
/// it was.
class ShownNumbersDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

protected:
    void initStyleOption(QStyleOptionViewItem *option, const QModelIndex &index) const override;
};

} // namespace plateau::ui
