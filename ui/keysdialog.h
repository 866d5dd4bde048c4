// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/keyslist.h"

#include <QDialog>

namespace plateau::ui {

class Dialogs;
class Notice;
class Theme;

/// Every key of the window on one page, to read and to print.
class KeysDialog : public QDialog
{
    Q_OBJECT

public:
    KeysDialog(const Theme &theme, Dialogs &dialogs, std::vector<KeyEntry> entries,
               QWidget *parent = nullptr);

private:
    void save();

    Dialogs &m_dialogs;
    std::vector<KeyEntry> m_entries;
    Notice *m_notice;
};

} // namespace plateau::ui
