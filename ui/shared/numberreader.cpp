// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/numberreader.h"

#include "core/evaluation/format.h"
#include "core/exchange/decimal.h"

#include <QCoreApplication>

#include <cmath>

namespace plateau::ui {

namespace {

struct NumberReaderWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::NumberReader)
};

} // namespace

void NumberReader::complain(const QString &pointer, const QString &sentence) const
{
    m_problems.push_back(assay::error(pointer, sentence));
}

double NumberReader::number(const QString &text, const QString &pointer) const
{
    const auto parsed = exchange::parseDecimal(text);
    if (const double *value = std::get_if<double>(&parsed))
        return *value;
    complain(pointer,
             text.trimmed().isEmpty()
                 ? NumberReaderWords::tr("is empty; a number is needed")
                 : NumberReaderWords::tr("\"%1\" is not a number. %2")
                       .arg(text, exchange::faultSentence(std::get<exchange::DecimalFault>(parsed))));
    return 0;
}

int NumberReader::whole(const QString &text, const QString &pointer) const
{
    const auto before = m_problems.size();
    const double value = number(text, pointer);
    constexpr double largest = 1e6;
    if (m_problems.size() == before && (value != std::floor(value) || std::abs(value) > largest)) {
        complain(pointer, NumberReaderWords::tr("must be a whole number, not %1").arg(text.trimmed()));
        return 0;
    }
    return static_cast<int>(value);
}

QString threeFigures(double value)
{
    const double magnitude = value > 0 ? std::pow(10, 2 - std::floor(std::log10(value))) : 1;
    return evaluation::plainText(std::round(value * magnitude) / magnitude);
}

std::optional<double> NumberReader::optionalNumber(const QString &text, const QString &pointer) const
{
    if (text.trimmed().isEmpty())
        return std::nullopt;
    const auto before = m_problems.size();
    const double value = number(text, pointer);
    return m_problems.size() == before ? std::optional(value) : std::nullopt;
}

} // namespace plateau::ui
