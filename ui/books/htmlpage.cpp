// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/htmlpage.h"

#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

void HtmlPage::heading(const QString &text)
{
    m_html += u"<h4 style='margin: 10px 0 2px 0'>%1</h4>"_s.arg(text.toHtmlEscaped());
}

void HtmlPage::paragraph(const QString &text)
{
    m_html += u"<p style='margin: 2px 0; white-space: pre-wrap'>%1</p>"_s.arg(shownNumbers(text).toHtmlEscaped());
}

void HtmlPage::list(const std::vector<QString> &items, bool numbered)
{
    const QString tag = numbered ? u"ol"_s : u"ul"_s;
    m_html += u"<%1 style='margin: 2px 0'>"_s.arg(tag);
    for (const QString &item : items)
        m_html += u"<li style='white-space: pre-wrap'>%1</li>"_s.arg(shownNumbers(item).toHtmlEscaped());
    m_html += u"</%1>"_s.arg(tag);
}

void HtmlPage::table(const std::vector<QStringList> &rows, First first)
{
    m_html += u"<table cellspacing='0'>"_s;
    for (const QStringList &row : rows) {
        m_html += u"<tr>"_s;
        for (qsizetype cell = 0; cell < row.size(); ++cell) {
            const bool muted = cell == 0 && first == First::Label;
            m_html += u"<td style='padding: 1px 16px 1px 0; color: %1'>%2</td>"_s.arg(
                (muted ? m_theme.mutedText() : m_theme.text()).name(), shownNumbers(row[cell]).toHtmlEscaped());
        }
        m_html += u"</tr>"_s;
    }
    m_html += u"</table>"_s;
}

} // namespace plateau::ui
