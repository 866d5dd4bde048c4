// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/workingtext.h"

#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// The formula in the muted colour above its numbers, as it would be written by hand.
QString workingRow(const Theme &theme, const evaluation::WorkingLine &line)
{
    QStringList written;
    if (!line.formula.isEmpty())
        written << u"<span style='color: %1'>%2</span>"_s.arg(theme.mutedText().name(),
                                                              shownFormula(line.formula).toHtmlEscaped());
    if (!line.numbers.isEmpty())
        written << shownFormula(line.numbers).toHtmlEscaped();
    return u"<tr><td width='32%' style='padding: 2px 10px 2px 0'>%1</td><td style='padding: 2px 10px 2px "
           u"0'>%2</td>"
           "<td width='20%' align='right' style='white-space: nowrap'><b>%3</b></td></tr>"_s.arg(
               line.what.toHtmlEscaped(), written.join(u"<br>"_s), shownFormula(line.value).toHtmlEscaped());
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

} // namespace plateau::ui
