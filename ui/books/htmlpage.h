// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStringList>

#include <vector>

namespace plateau::ui {

class Theme;

/// Rich text built part by part; all text is escaped on the way in.
class HtmlPage
{
public:
    explicit HtmlPage(const Theme &theme)
        : m_theme(theme)
    {
    }

    void heading(const QString &text);
    void paragraph(const QString &text);
    void list(const std::vector<QString> &items, bool numbered = false);
    /// What the first cell of a row is: a name that counts, or a label that gives way to what it labels.
    enum class First { Name, Label };
    void table(const std::vector<QStringList> &rows, First first = First::Label);
    QString html() const { return m_html; }

private:
    const Theme &m_theme;
    QString m_html;
};

} // namespace plateau::ui
