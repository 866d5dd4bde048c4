// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/printarguments.h"

#include "core/assay/label.h"
#include "core/exchange/decimal.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <map>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct PrintargumentsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

/// "38.1x21.2"
std::optional<std::pair<double, double>> sizeOf(const QString &text)
{
    const QStringList parts = text.split(u'x');
    if (parts.size() != 2)
        return std::nullopt;
    const auto width = exchange::parseDecimal(parts[0]);
    const auto height = exchange::parseDecimal(parts[1]);
    if (!std::holds_alternative<double>(width) || !std::holds_alternative<double>(height))
        return std::nullopt;
    return std::pair(std::get<double>(width), std::get<double>(height));
}

/// "5x13,38.1x21.2,4.75x10.7,2.5x0": columns and rows, label, left and top margin, gaps.
std::optional<ui::LabelSheet> labelSheetOf(const QString &text, ui::Paper paper)
{
    const QStringList parts = text.split(u',');
    if (parts.size() < 3 || parts.size() > 4)
        return std::nullopt;
    std::vector<std::pair<double, double>> sizes;
    for (const QString &part : parts) {
        const auto size = sizeOf(part);
        if (!size)
            return std::nullopt;
        sizes.push_back(*size);
    }
    sizes.resize(4);
    const auto [columns, rows] = sizes[0];
    const auto isCount = [](double count) { return count >= 1 && count <= 100 && count == int(count); };
    if (!isCount(columns) || !isCount(rows))
        return std::nullopt;
    return ui::LabelSheet{paper,          int(columns),    int(rows),      sizes[1].first, sizes[1].second,
                          sizes[2].first, sizes[2].second, sizes[3].first, sizes[3].second};
}

/// Options by name, each with its value.
struct Words {
    std::map<QString, QString> options;
    QStringList files;
    QString fault;
};

Words wordsOf(const QString &command, const QStringList &arguments, const QStringList &known)
{
    Words words;
    bool options = true;
    for (qsizetype i = 0; i < arguments.size() && words.fault.isEmpty(); ++i) {
        const QString &argument = arguments[i];
        if (options && argument == "--"_L1)
            options = false;
        else if (!options || !argument.startsWith(u'-'))
            words.files.append(argument);
        else if (!known.contains(argument))
            words.fault = PrintargumentsWords::tr("%1 has no option %2").arg(command, argument);
        else if (i + 1 == arguments.size() || words.options.contains(argument))
            words.fault = PrintargumentsWords::tr("%1 needs one value").arg(argument);
        else
            words.options[argument] = arguments[++i];
    }
    return words;
}

QString faultOfFirst(const PrintArguments &found, const QString &typed, bool isNumber)
{
    const int labels = found.sheet.columns * found.sheet.rows;
    return isNumber && found.firstFree >= 1 && found.firstFree <= labels
               ? QString()
               : PrintargumentsWords::tr("--first %1 is no label of this sheet: it counts from 1 to %2")
                     .arg(assay::quoted(typed))
                     .arg(labels);
}

void readSheet(PrintArguments &found, const std::map<QString, QString> &options)
{
    found.sheet = ui::usualLabels(found.paper);
    if (const auto typed = options.find(u"--sheet"_s); typed != options.end()) {
        const auto sheet = labelSheetOf(typed->second, found.paper);
        if (!sheet) {
            found.fault = PrintargumentsWords::tr(
                              "--sheet %1 is no sheet of labels: expected columns x rows, width x height of "
                              "a label, left x top margin and, where there are any, gaps, in mm: "
                              "5x13,38.1x21.2,4.75x10.7,2.5x0")
                              .arg(assay::quoted(typed->second));
            return;
        }
        found.sheet = *sheet;
        found.fault = ui::faultOf(*sheet);
    }
    if (const auto typed = options.find(u"--first"_s); typed != options.end() && found.fault.isEmpty()) {
        bool isNumber = false;
        found.firstFree = typed->second.toInt(&isNumber);
        found.fault = faultOfFirst(found, typed->second, isNumber);
    }
}

} // namespace

PrintArguments printArguments(const QString &command, const QStringList &arguments)
{
    QStringList known{u"--pdf"_s, u"--notebook"_s, u"--paper"_s, u"--by"_s};
    if (command == "labels"_L1)
        known << u"--sheet"_s << u"--first"_s;
    const Words words = wordsOf(command, arguments, known);
    const auto valueOf = [&](const QString &option) {
        const auto found = words.options.find(option);
        return found == words.options.end() ? QString() : found->second;
    };
    PrintArguments found;
    found.fault = words.fault;
    found.pdf = valueOf(u"--pdf"_s);
    if (found.fault.isEmpty() && (words.files.size() != 1 || found.pdf.isEmpty()))
        found.fault = PrintargumentsWords::tr(
                          "%1 takes one run file and the file to write: plateau %1 RUN.json --pdf FILE")
                          .arg(command);
    if (!found.fault.isEmpty())
        return found;
    found.run = words.files.front();
    found.notebook = valueOf(u"--notebook"_s);
    found.person = valueOf(u"--by"_s);
    found.paper = ui::usualPaper(QLocale::system());
    if (const QString word = valueOf(u"--paper"_s); !word.isEmpty()) {
        const auto paper = ui::paperFromWord(word);
        if (!paper)
            found.fault = PrintargumentsWords::tr("--paper %1 is not known; it is a4 or letter")
                              .arg(assay::quoted(word));
        found.paper = paper.value_or(found.paper);
    }
    if (found.fault.isEmpty())
        readSheet(found, words.options);
    return found;
}

} // namespace plateau::app
