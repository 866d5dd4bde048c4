// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/choices.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct ChoicesWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Choices)
};

} // namespace

QComboBox *decimalChoice(QWidget *parent)
{
    auto *box = new QComboBox(parent);
    addChoice(box, ChoicesWords::tr("point or comma"), exchange::DecimalSign::Either);
    addChoice(box, ChoicesWords::tr("point, as in 0.512"), exchange::DecimalSign::Point);
    addChoice(box, ChoicesWords::tr("comma, as in 0,512"), exchange::DecimalSign::Comma);
    return box;
}

QComboBox *encodingChoice(QWidget *parent)
{
    auto *box = new QComboBox(parent);
    addChoice(box, ChoicesWords::tr("ASCII or Unicode"), exchange::TextEncoding::Utf8);
    addChoice(box, ChoicesWords::tr("Latin-1 (Western European)"), exchange::TextEncoding::Latin1);
    return box;
}

} // namespace plateau::ui
