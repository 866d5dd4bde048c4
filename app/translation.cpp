// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/translation.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <memory>

using namespace Qt::StringLiterals;

namespace plateau::app {

namespace {

/// Belongs to the application from then on; false where there is none for the language.
bool install(const QLocale &locale, const QString &name, const QString &folder)
{
    auto translator = std::make_unique<QTranslator>(QCoreApplication::instance());
    return translator->load(locale, name, u"_"_s, folder) &&
           QCoreApplication::installTranslator(translator.release());
}

} // namespace

void installTranslations()
{
    const QLocale locale;
    // The source is English, but for its plurals.
    install(QLocale(QLocale::English), u"plateau"_s, u":/translations"_s);
    // The toolkit's own words (Cancel, the file dialog) only where the program's are there too: no window of
    // two languages.
    if (locale.language() == QLocale::English || install(locale, u"plateau"_s, u":/translations"_s))
        install(locale, u"qtbase"_s, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
}

} // namespace plateau::app
