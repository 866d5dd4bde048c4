// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/choices.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Choices)
};

} // namespace

QComboBox *decimalChoice(QWidget *parent)
{
    auto *box = new QComboBox(parent);
    addChoice(box, Text::tr("point or comma"), exchange::DecimalSign::Either);
    addChoice(box, Text::tr("point, as 0.512"), exchange::DecimalSign::Point);
    addChoice(box, Text::tr("comma, as 0,512"), exchange::DecimalSign::Comma);
    return box;
}

QComboBox *encodingChoice(QWidget *parent)
{
    auto *box = new QComboBox(parent);
    addChoice(box, Text::tr("ASCII or Unicode"), exchange::TextEncoding::Utf8);
    addChoice(box, Text::tr("Latin-1 (Western European)"), exchange::TextEncoding::Latin1);
    return box;
}

} // namespace plateau::ui
