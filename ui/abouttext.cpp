// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/abouttext.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct AbouttextWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::About)
};

} // namespace

QString aboutText()
{
    return AbouttextWords::tr(
               "Plateau %1\n"
               "Bench program for enzymatic end-point assays read in a photometer.\n\n"
               "Licence: GNU General Public License, version 3.\n\n"
               "Runs with Qt %2 (LGPL-3 or GPL; its charts GPL-3), SQLite (public domain), "
               "nlohmann/json (MIT) and Boost (Boost Software License 1.0).\n"
               "State colours: Okabe and Ito, Color Universal Design, 2008.\n\n"
               "The supplier's instructions, your local safety rules and licensed practice come first. "
               "The person's name on a record is what was typed, not proof of identity.")
        .arg(QCoreApplication::applicationVersion(), QLatin1StringView(qVersion()));
}

} // namespace plateau::ui
