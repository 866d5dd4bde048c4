// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/abouttext.h"

#include "core/notebook/engineversion.h"
#include "ui/print/qrcode.h"

#include <QCoreApplication>

#include <boost/version.hpp>
#include <nlohmann/json.hpp>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct AbouttextWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::About)
};

/// What the program runs with, a line each: name, version (as loaded where it is a library), licence.
QString partLine(const QString &name, const QString &version, const QString &licence)
{
    return AbouttextWords::tr("%1 %2: %3").arg(name, version, licence);
}

QStringList partLines()
{
    const QString boost = QString::fromLatin1(BOOST_LIB_VERSION).replace(u'_', u'.');
    const QString json = u"%1.%2.%3"_s.arg(NLOHMANN_JSON_VERSION_MAJOR)
                             .arg(NLOHMANN_JSON_VERSION_MINOR)
                             .arg(NLOHMANN_JSON_VERSION_PATCH);
    return {partLine(u"Qt"_s, QString::fromLatin1(qVersion()),
                     AbouttextWords::tr("LGPL-3.0 or GPL; its charts GPL-3.0")),
            partLine(u"SQLite"_s, notebook::sqliteVersion(), AbouttextWords::tr("public domain")),
            partLine(u"libsodium"_s, notebook::sodiumVersion(), AbouttextWords::tr("ISC licence")),
            partLine(u"libqrencode"_s, qrCodeLibraryVersion(), AbouttextWords::tr("LGPL-2.1 or later")),
            partLine(u"nlohmann/json"_s, json, AbouttextWords::tr("MIT licence")),
            partLine(u"Boost"_s, boost, AbouttextWords::tr("Boost Software License 1.0"))};
}

} // namespace

QString aboutText()
{
    return AbouttextWords::
        tr("Plateau %1\n"
           "Bench program for enzymatic end-point assays read in a photometer.\n\n"
           "Free software: GNU General Public License, version 3, without any warranty. Drawings and icons "
           "are its own.\n\n"
           "It runs with:\n%2\n"
           "State colours: Okabe and Ito, Color Universal Design, 2008.\n\n"
           "The supplier's instructions, your local safety rules and licensed practice come first. "
           "The person's name on a record is what was typed, not proof of identity.")
            .arg(QCoreApplication::applicationVersion(), partLines().join(u'\n'));
}

} // namespace plateau::ui
