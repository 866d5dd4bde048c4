// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

class QDialog;
class QWidget;

namespace plateau::ui {

/// Everything that stops the window for an answer goes through here; a test hands in its own.
class Dialogs
{
public:
    virtual ~Dialogs() = default;
    /// Empty if the user thought better of it.
    virtual QString fileToOpen(QWidget *parent, const QString &title, const QString &filter);
    /// Asks before an existing file is replaced; a name without an ending gets that of the suggested one.
    /// Empty as above.
    virtual QString fileToSave(QWidget *parent, const QString &title, const QString &suggestedName,
                               const QString &filter);
    /// A folder that is there. Empty as above.
    virtual QString folderToUse(QWidget *parent, const QString &title);
    /// True if the person wants what the question names; the safe answer is preset.
    virtual bool confirm(QWidget *parent, const QString &title, const QString &question, const QString &yes,
                         const QString &no);
    virtual void tell(QWidget *parent, const QString &title, const QString &text);
    /// Shows a form of the program's own until it is answered; true if the person wants what it says.
    virtual bool isAccepted(QDialog &form);

private:
    QString m_folder;
};

} // namespace plateau::ui
