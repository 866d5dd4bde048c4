// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/labelchoice.h"

#include <QCoreApplication>
#include <QSettings>

#include <optional>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct LabelchoiceWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Labels)
};

struct Length {
    QLatin1StringView key;
    double LabelSheet::*member;
};

constexpr Length lengths[] = {
    {"labels/width_mm"_L1, &LabelSheet::width_mm},         {"labels/height_mm"_L1, &LabelSheet::height_mm},
    {"labels/left_mm"_L1, &LabelSheet::left_mm},           {"labels/top_mm"_L1, &LabelSheet::top_mm},
    {"labels/columnGap_mm"_L1, &LabelSheet::columnGap_mm}, {"labels/rowGap_mm"_L1, &LabelSheet::rowGap_mm},
};

/// Settings come back as text in the next session, and anyone can edit them.
std::optional<LabelChoice> readLabels(const QSettings &settings)
{
    const auto textOf = [&settings](QAnyStringView key) { return settings.value(key).toString(); };
    const std::optional<Paper> paper = paperFromWord(textOf(u"labels/paper"_s));
    if (!paper)
        return std::nullopt;
    LabelChoice choice;
    choice.sheet.paper = *paper;
    bool columns = false;
    bool rows = false;
    bool first = false;
    choice.sheet.columns = textOf(u"labels/columns"_s).toInt(&columns);
    choice.sheet.rows = textOf(u"labels/rows"_s).toInt(&rows);
    choice.firstFree = textOf(u"labels/firstFree"_s).toInt(&first);
    if (!columns || !rows || !first)
        return std::nullopt;
    for (const auto &[key, member] : lengths) {
        bool isNumber = false;
        choice.sheet.*member = textOf(key).toDouble(&isNumber);
        if (!isNumber)
            return std::nullopt;
    }
    return choice;
}

} // namespace

QString faultOf(const LabelChoice &choice)
{
    if (const QString fault = faultOf(choice.sheet); !fault.isEmpty())
        return fault;
    const int labels = choice.sheet.columns * choice.sheet.rows;
    return choice.firstFree >= 1 && choice.firstFree <= labels
               ? QString()
               : LabelchoiceWords::tr("The first free label is %1, but the sheet has labels 1 to %2.")
                     .arg(choice.firstFree)
                     .arg(labels);
}

int firstFreeAfter(const LabelChoice &choice, int labels)
{
    return (choice.firstFree - 1 + labels) % (choice.sheet.columns * choice.sheet.rows) + 1;
}

LabelChoice keptLabels(const QSettings &settings, Paper usual)
{
    const std::optional<LabelChoice> kept = readLabels(settings);
    return kept && faultOf(*kept).isEmpty() ? *kept : LabelChoice{usualLabels(usual), 1, {}};
}

bool keepLabels(QSettings &settings, const LabelChoice &choice)
{
    settings.setValue(u"labels/paper"_s, choice.sheet.paper == Paper::A4 ? u"a4"_s : u"letter"_s);
    settings.setValue(u"labels/columns"_s, choice.sheet.columns);
    settings.setValue(u"labels/rows"_s, choice.sheet.rows);
    settings.setValue(u"labels/firstFree"_s, choice.firstFree);
    for (const auto &[key, member] : lengths)
        settings.setValue(key, choice.sheet.*member);
    settings.sync();
    return settings.status() == QSettings::NoError;
}

} // namespace plateau::ui
