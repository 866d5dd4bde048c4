// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::app {

/// The window speaks the first language of the desktop that it knows, else English; commands speak English, since what they
/// write is read by programs and kept in scripts. After the application was made, before the first window.
void installTranslations();

} // namespace plateau::app
