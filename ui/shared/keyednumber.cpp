// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/keyednumber.h"

#include "core/evaluation/format.h"

#include <QLocale>

using namespace Qt::StringLiterals;

namespace plateau::ui {

QString keyedText(double value)
{
    return keyedText(evaluation::plainText(value));
}

QString keyedText(QString number)
{
    // Other signs than these two are not read back.
    return QLocale().decimalPoint() == u","_s ? number.replace(u'.', u',') : number;
}

} // namespace plateau::ui
