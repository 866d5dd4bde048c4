// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/numberwords.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <optional>

namespace plateau::exchange {

namespace {

struct NumberWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::NumberWords)
};

using Value = std::variant<double, QString>;

bool isWordDigit(char sign)
{
    return sign >= '0' && sign <= '9';
}

bool isWordMark(char sign)
{
    return sign == '.' || sign == ',';
}

/// ASCII letters, "%", and every byte of a sign beyond ASCII: micro, degree and the like.
bool isUnitByte(char sign)
{
    return (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z') || sign == '%' ||
           static_cast<unsigned char>(sign) >= 0x80;
}

/// Which of the texts the other one begins with; empty for none.
template <std::size_t count>
std::string_view startOf(std::string_view text, const std::array<std::string_view, count> &starts)
{
    const auto found =
        std::ranges::find_if(starts, [text](std::string_view start) { return text.starts_with(start); });
    return found == starts.end() ? std::string_view() : *found;
}

constexpr std::array<std::string_view, 3> blanksBeyondAscii{"\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89"};
constexpr std::array<std::string_view, 2> minusSigns{"-", "\xE2\x88\x92"};
class Words
{
public:
    Words(std::string_view line, DecimalSign sign)
        : m_line(line)
        , m_sign(sign)
    {
    }

    std::vector<std::string_view> split() const
    {
        std::vector<std::string_view> words;
        std::size_t start = 0;
        for (std::size_t i = 0; i <= m_line.size();) {
            const std::size_t length = i < m_line.size() ? separatorAt(i, start) : 1;
            if (length == 0) {
                ++i;
                continue;
            }
            if (i > start)
                words.push_back(m_line.substr(start, i - start));
            i += length;
            start = i;
        }
        return words;
    }

private:
    char at(std::size_t i) const { return i < m_line.size() ? m_line[i] : ' '; }

    /// Length of the separator; 0 if there is none.
    std::size_t separatorAt(std::size_t i, std::size_t wordStart) const
    {
        const char sign = m_line[i];
        const bool between = i > wordStart && isWordDigit(at(i - 1)) && isWordDigit(at(i + 1));
        constexpr std::string_view always = " \t;|=()[]{}\"";
        if (always.find(sign) != std::string_view::npos)
            return 1;
        if (sign == ':' || sign == '/')
            return between ? 0 : 1; // a time or a date is one word
        if (sign == ',')
            return isCommaOfNumber(i, wordStart, between) ? 0 : 1;
        return startOf(m_line.substr(i), blanksBeyondAscii).size();
    }

    bool isCommaOfNumber(std::size_t i, std::size_t wordStart, bool between) const
    {
        if (m_sign != DecimalSign::Point)
            return isWordDigit(at(i + 1)) && (between || i == wordStart || at(i - 1) == '-' || at(i - 1) == '+');
        // "12,0.512" are two numbers; "0,512" alone is one with the other sign, and never 0 and 512.
        const auto inRun = [this](std::size_t place) { return isWordDigit(at(place)) || isWordMark(at(place)); };
        std::size_t first = i;
        while (first > wordStart && inRun(first - 1))
            --first;
        std::size_t end = i;
        while (inRun(end))
            ++end;
        return between && m_line.substr(first, end - first).find('.') == std::string_view::npos;
    }

    std::string_view m_line;
    DecimalSign m_sign;
};

Value noNumber(const QString &sentence)
{
    return Value(std::in_place_index<1>, sentence);
}

/// Digits with a letter E and digits behind them.
bool isExponent(std::string_view rest)
{
    if (rest.empty() || (rest.front() != 'e' && rest.front() != 'E'))
        return false;
    rest.remove_prefix(1);
    if (!rest.empty() && (rest.front() == '+' || rest.front() == '-'))
        rest.remove_prefix(1);
    return !rest.empty() && std::ranges::all_of(rest, isWordDigit);
}

/// The word as a number, if it is one; a sign that stands apart comes before it.
std::optional<NumberWord> numberOf(std::string_view word, std::string_view before, DecimalSign sign)
{
    while (!word.empty() && (isWordMark(word.back()) || word.back() == ':'))
        word.remove_suffix(1);
    const std::string_view whole = word;
    bool isBound = isLimit(before);
    while (isLimit(word)) {
        word.remove_prefix(static_cast<unsigned char>(word.front()) < 0x80 ? 1 : 3);
        isBound = true;
    }
    std::size_t digits = word.starts_with('+') ? 1 : startOf(word, minusSigns).size();
    const std::size_t first = digits;
    while (digits < word.size() && (isWordDigit(word[digits]) || isWordMark(word[digits])))
        ++digits;
    const std::string_view run = word.substr(first, digits - first);
    const std::string_view rest = word.substr(digits);
    const auto points = std::ranges::count(run, '.');
    const auto commas = std::ranges::count(run, ',');
    const bool isDate = (points > 1 && commas == 0) || (commas > 1 && points == 0);
    if (!std::ranges::any_of(run, isWordDigit) || isDate)
        return std::nullopt;
    if (isExponent(rest))
        return NumberWord{
            whole, noNumber(NumberWording::tr("It has an exponent; set the photometer to plain decimals."))};
    if (rest.starts_with('\'')) // 1'500
        return NumberWord{whole, parseReading(word, sign)};
    if (!std::ranges::all_of(rest, isUnitByte))
        return std::nullopt;
    if (isBound)
        return NumberWord{whole, noNumber(limitSentence())};
    if (first == 0 && startOf(before, minusSigns).size() == before.size() && !before.empty())
        return NumberWord{whole, noNumber(NumberWording::tr(
                                     "A minus stands apart from it, so that its sign is not certain."))};
    return NumberWord{whole, parseReading(word.substr(0, digits), sign)};
}

} // namespace

std::vector<NumberWord> numbersIn(std::string_view utf8Line, DecimalSign sign)
{
    std::vector<NumberWord> numbers;
    std::string_view before;
    for (const std::string_view word : Words(utf8Line, sign).split()) {
        if (auto number = numberOf(word, before, sign))
            numbers.push_back(std::move(*number));
        before = word;
    }
    return numbers;
}

} // namespace plateau::exchange
