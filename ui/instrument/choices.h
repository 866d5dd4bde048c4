// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readingtext.h"

#include <QComboBox>

namespace plateau::ui {

/// A choice of an enumeration's values in words.
template <class Value> void addChoice(QComboBox *box, const QString &words, Value value)
{
    box->addItem(words, static_cast<int>(value));
}
template <class Value> Value chosen(const QComboBox *box)
{
    return static_cast<Value>(box->currentData().toInt());
}
template <class Value> void choose(QComboBox *box, Value value)
{
    box->setCurrentIndex(box->findData(static_cast<int>(value)));
}

QComboBox *decimalChoice(QWidget *parent);
QComboBox *encodingChoice(QWidget *parent);

} // namespace plateau::ui
