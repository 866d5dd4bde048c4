// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/notebook.h"

#include <QSysInfo>

#include <array>
#include <pwd.h>
#include <unistd.h>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// Not from the environment, which anybody may set; the number where the account has no name.
QString accountName()
{
    passwd entry{};
    passwd *found = nullptr;
    std::array<char, 16384> buffer{};
    const uid_t user = ::geteuid();
    if (::getpwuid_r(user, &entry, buffer.data(), buffer.size(), &found) == 0 && found)
        return QString::fromLocal8Bit(found->pw_name);
    return u"uid %1"_s.arg(user);
}

} // namespace

Surroundings Surroundings::ofThisProgram()
{
    return {QStringLiteral(PLATEAU_VERSION), accountName(), QSysInfo::machineHostName(),
            [] { return QDateTime::currentDateTime(); }, timing::bootTime};
}

} // namespace plateau::notebook
