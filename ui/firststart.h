// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/helpcall.h"

#include <QDialog>

class QCheckBox;
class QLineEdit;
class QPushButton;
class QRadioButton;

namespace plateau::ui {

class Dialogs;
class HelpDesk;
class Notice;
class Theme;

/// What a person wants who starts the program where there is no notebook yet.
struct FirstChoice {
    enum class Kind { Make, Use, Sample } kind = Kind::Make;
    /// Absolute; of the notebook to be made or used.
    QString path;
    /// Of a notebook to be made: whose it is, and who begins it.
    QString laboratory;
    QString person;
};

/// Why it is asked, and what stands in the fields before anybody types.
struct StartOccasion {
    /// Offered for a new notebook.
    QString newPath;
    /// The notebook that was used so far and is not there, or empty.
    QString missing{};
    /// A window is open on another notebook, which stays.
    bool isBesideAnother = false;
    /// Then: no start opens a notebook yet, as while only the sample was looked at.
    bool isFirstOfOwn = false;
};

/// Asks for it on one page. Nothing is made here.
class FirstStart : public QDialog
{
    Q_OBJECT

public:
    FirstStart(const Theme &theme, Dialogs &dialogs, const StartOccasion &occasion, QWidget *parent = nullptr);

    FirstChoice choice() const;
    /// Beside another notebook: whether the next starts are to open the one that is chosen here.
    bool isForNextStarts() const;
    /// What is read of the help beside the page; without a page where the help is closed.
    HelpPlace helpOnShow() const;
    /// Something failed after the page was accepted; it is shown again.
    void sayFault(const QString &sentence);

private:
    QLineEdit *field(const QString &name, const QString &text);
    /// A long path is told whole by a tool tip.
    QLineEdit *pathField(const QString &name, const QString &path);
    QWidget *withChooser(QLineEdit *line, const QString &buttonText, const QString &buttonName, bool isNew);
    QWidget *makePart(const QString &newPath);
    QWidget *usePart(const QString &missing);
    void alignParts(QWidget &make, QWidget &use);
    void judge();
    /// Empty, or what is still wrong, as a sentence.
    QString fault() const;

    const Theme &m_theme;
    Dialogs &m_dialogs;
    QRadioButton *m_make;
    QRadioButton *m_use;
    QRadioButton *m_sample;
    /// Only beside another notebook.
    QCheckBox *m_next = nullptr;
    QLineEdit *m_newPath = nullptr;
    QLineEdit *m_laboratory = nullptr;
    QLineEdit *m_person = nullptr;
    QLineEdit *m_oldPath = nullptr;
    Notice *m_notice;
    HelpDesk *m_help;
    QPushButton *m_begin;
};

} // namespace plateau::ui
