// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/engineversion.h"

#include <QSqlDatabase>
#include <QSqlQuery>

#include <sodium.h>

using namespace Qt::StringLiterals;

namespace plateau::notebook {

QString sqliteVersion()
{
    const QString connection = u"plateau-version"_s;
    QString version;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_s, connection);
        database.setDatabaseName(u":memory:"_s);
        if (database.open()) {
            QSqlQuery query(database);
            if (query.exec(u"SELECT sqlite_version()"_s) && query.next())
                version = query.value(0).toString();
        }
    }
    QSqlDatabase::removeDatabase(connection);
    return version;
}

QString sodiumVersion()
{
    return QString::fromLatin1(sodium_version_string());
}

} // namespace plateau::notebook
