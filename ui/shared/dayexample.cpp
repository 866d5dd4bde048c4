// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/dayexample.h"

#include "core/assay/localday.h"

#include <QCoreApplication>
#include <QLineEdit>

namespace plateau::ui {

namespace {

struct DayExampleWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::DayExample)
};

} // namespace

QString dayExample()
{
    return DayExampleWords::tr("e.g. %1", "a day, in an empty field").arg(assay::shownDay({2026, 12, 31}));
}

void showDayExample(QLineEdit &field)
{
    field.setPlaceholderText(dayExample());
    const QFontMetrics letters = field.fontMetrics();
    field.setMinimumWidth(letters.horizontalAdvance(field.placeholderText()) + 2 * letters.averageCharWidth());
}

} // namespace plateau::ui
