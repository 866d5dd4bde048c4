// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>
#include <QTranslator>

namespace plateau::test {

/// Those that the window speaks.
inline const QStringList languages{QStringLiteral("en"), QStringLiteral("de"), QStringLiteral("fr"),
                                   QStringLiteral("es")};

/// While it lives, texts and numbers are in that language. What cannot be loaded fails the test.
class Spoken
{
public:
    explicit Spoken(const QString &language);
    ~Spoken();
    Spoken(const Spoken &) = delete;
    Spoken &operator=(const Spoken &) = delete;

private:
    QTranslator m_translator;
};

} // namespace plateau::test
