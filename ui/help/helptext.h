// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QHash>
#include <QString>
#include <QStringList>

namespace plateau::ui {

/// As words are compared in a search: case and accents do not count, and neither do compatibility forms.
QString foldedText(const QString &text);

/// The words of a text, folded: what lies between anything that is neither letter nor digit.
QStringList foldedWords(const QString &text);

/// A line of Markdown as it is read: without the marks of headings, lists, links, pictures, emphasis and
/// code. The cells of a table stand beside each other; of the line below its head nothing is left.
QString plainLine(const QString &markdownLine);

/// The anchors of one page's headings, to be asked for in their order: lower case, blanks as hyphens, no
/// punctuation; what comes again is numbered. So does GitHub, where the pages are read as well.
class HeadingAnchors
{
public:
    QString next(const QString &heading);

private:
    QHash<QString, int> m_seen;
};

} // namespace plateau::ui
