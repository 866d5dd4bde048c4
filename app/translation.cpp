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

/// Keys as the toolkit writes them in menus and in the list of keys, to be called there what they are called in our
/// sentences: its Spanish says "Control+Mayúsculas", which stands on no keyboard.
[[maybe_unused]] constexpr const char *keyNames[] = {
    QT_TRANSLATE_NOOP("QShortcut", "Ctrl"),  QT_TRANSLATE_NOOP("QShortcut", "Shift"),
    QT_TRANSLATE_NOOP("QShortcut", "Del"),   QT_TRANSLATE_NOOP("QShortcut", "Esc"),
    QT_TRANSLATE_NOOP("QShortcut", "Ins"),   QT_TRANSLATE_NOOP("QShortcut", "Tab"),
    QT_TRANSLATE_NOOP("QShortcut", "Enter"), QT_TRANSLATE_NOOP("QShortcut", "Return"),
    QT_TRANSLATE_NOOP("QShortcut", "PgUp"),  QT_TRANSLATE_NOOP("QShortcut", "PgDown"),
    QT_TRANSLATE_NOOP("QShortcut", "Up"),    QT_TRANSLATE_NOOP("QShortcut", "Down"),
    QT_TRANSLATE_NOOP("QShortcut", "Left"),  QT_TRANSLATE_NOOP("QShortcut", "Right"),
};

/// Nothing where there is none for the language.
std::unique_ptr<QTranslator> loaded(const QLocale &locale, const QString &name, const QString &folder)
{
    auto translator = std::make_unique<QTranslator>(QCoreApplication::instance());
    return translator->load(locale, name, u"_"_s, folder) ? std::move(translator) : nullptr;
}

/// Belongs to the application from then on, and is asked before those that were installed earlier.
void install(std::unique_ptr<QTranslator> translator)
{
    if (translator)
        QCoreApplication::installTranslator(translator.release());
}

} // namespace

void installTranslations()
{
    const QLocale locale;
    const QString own = u":/translations"_s;
    // The source is English, but for its plurals.
    install(loaded(QLocale(QLocale::English), u"plateau"_s, own));
    const bool isEnglish = locale.language() == QLocale::English;
    auto words = isEnglish ? nullptr : loaded(locale, u"plateau"_s, own);
    // The toolkit's own words (Cancel, the file dialog) only where the program's are there too: no window of
    // two languages. Ours come before them: they hold the names of keys.
    if (isEnglish || words)
        install(loaded(locale, u"qtbase"_s, QLibraryInfo::path(QLibraryInfo::TranslationsPath)));
    install(std::move(words));
}

} // namespace plateau::app
