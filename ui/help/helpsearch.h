// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/help/helppages.h"

namespace plateau::ui {

/// A section in which everything that was typed is found.
struct HelpHit {
    QString page;
    QString pageTitle;
    QString anchor;
    QString title;
    /// The line with most of the words, cut to what fits a list; empty where the section has none.
    QString context;
    int score = 0;
};

/// Every word that was typed begins a word of the section, of its title or of its page's title; at least one
/// of them stands in the section itself. Those with the words in their titles first, then those with them
/// most often; of equals as the contents have them. Nothing typed finds nothing.
std::vector<HelpHit> searchHelp(const HelpPages &pages, const QString &typed);

/// Where the words of a text begin that begin with one of those: position and length.
std::vector<std::pair<int, int>> wordsFound(const QString &text, const QStringList &foldedStarts);

} // namespace plateau::ui
