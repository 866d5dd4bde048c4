// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

namespace plateau::exchange {

/// The known word that the written one was probably meant to be: the same but for upper and lower case, "_"
/// or
/// "-", or few letters away (a third of it, but one to three). Empty if there is none.
QString nearest(const QString &written, const QStringList &known);

} // namespace plateau::exchange
