// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/workingtext.h"

#include "ui/bench/places.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::WorkingText)
};

QString cell(const QString &text, const QString &extra = {})
{
    return u"<td style='padding: 2px 10px 2px 0'>%1%2</td>"_s.arg(text.toHtmlEscaped(), extra);
}

bool isCorrected(const notebook::StoredRun &stored, const notebook::StoredReading &reading)
{
    return std::any_of(stored.readings.begin(), stored.readings.end(),
                       [&reading](const auto &other) { return other.corrects == reading.id; });
}

/// The formula in the muted colour above its numbers, as it would be written by hand.
QString workingRow(const Theme &theme, const evaluation::WorkingLine &line)
{
    QStringList written;
    if (!line.formula.isEmpty())
        written << u"<span style='color: %1'>%2</span>"_s.arg(theme.mutedText().name(),
                                                              line.formula.toHtmlEscaped());
    if (!line.numbers.isEmpty())
        written << line.numbers.toHtmlEscaped();
    return u"<tr><td width='32%' style='padding: 2px 10px 2px 0'>%1</td><td style='padding: 2px 10px 2px "
           u"0'>%2</td>"
           "<td width='20%' align='right'><b>%3</b></td></tr>"_s.arg(
               line.what.toHtmlEscaped(), written.join(u"<br>"_s), line.value.toHtmlEscaped());
}

QString headerRow(const QStringList &titles)
{
    QString row = u"<tr>"_s;
    for (const QString &title : titles)
        row += u"<th align='left' style='padding: 2px 10px 2px 0'>%1</th>"_s.arg(title.toHtmlEscaped());
    return row + u"</tr>"_s;
}

QString historyRow(const notebook::StoredRun &stored, const notebook::StoredReading &reading)
{
    const QString value = readingText(reading.value).toHtmlEscaped();
    const bool corrected = isCorrected(stored, reading);
    const QString shown = corrected ? u"<td style='padding: 2px 10px 2px 0'><s>%1</s> %2</td>"_s.arg(
                                          value, Words::tr("corrected").toHtmlEscaped())
                                    : cell(readingText(reading.value));
    return u"<tr>"_s + cell(QString::number(reading.tube + 1)) +
           cell(contentsText(stored.run, reading.tube)) + cell(reading.reading) + shown +
           cell(reading.typed.isEmpty() ? Words::tr("from a file") : reading.typed) + cell(reading.person) +
           cell(momentText(reading.at)) + cell(reading.reason) + u"</tr>"_s;
}

} // namespace

QString workingHtml(const Theme &theme, const std::vector<evaluation::WorkingSection> &sections)
{
    QString html;
    for (const evaluation::WorkingSection &section : sections) {
        html += u"<h4 style='margin: 8px 0 2px 0'>%1</h4>"_s.arg(section.title.toHtmlEscaped());
        html += u"<table cellspacing='0' width='100%'>"_s;
        for (const evaluation::WorkingLine &line : section.lines)
            html += workingRow(theme, line);
        html += u"</table>"_s;
    }
    return html;
}

QString historyHtml(const notebook::StoredRun &stored)
{
    if (stored.readings.empty())
        return u"<p>%1</p>"_s.arg(Words::tr("No reading has been keyed yet.").toHtmlEscaped());
    std::vector<notebook::StoredReading> readings = stored.readings;
    std::stable_sort(readings.begin(), readings.end(), [](const auto &one, const auto &other) {
        return one.tube == other.tube ? one.reading < other.reading : one.tube < other.tube;
    });
    QString html =
        u"<table cellspacing='0'>"_s +
        headerRow({Words::tr("Tube"), Words::tr("Contents"), Words::tr("Reading"), Words::tr("Absorbance"),
                   Words::tr("As keyed"), Words::tr("Person"), Words::tr("Time"), Words::tr("Reason")});
    for (const notebook::StoredReading &reading : readings)
        html += historyRow(stored, reading);
    return html + u"</table>"_s;
}

} // namespace plateau::ui
