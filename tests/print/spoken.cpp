// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/print/spoken.h"

#include <QCoreApplication>
#include <QLocale>

#include <gtest/gtest.h>

namespace plateau::test {

using namespace Qt::StringLiterals;

Spoken::Spoken(const QString &language)
{
    QLocale::setDefault(QLocale(language));
    EXPECT_TRUE(m_translator.load(u"plateau_"_s + language, QStringLiteral(PLATEAU_TRANSLATIONS)))
        << language.toStdString();
    QCoreApplication::installTranslator(&m_translator);
}

Spoken::~Spoken()
{
    QCoreApplication::removeTranslator(&m_translator);
    QLocale::setDefault(QLocale::c());
}

} // namespace plateau::test
