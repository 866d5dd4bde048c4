// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/dialogs.h"

#include <QDir>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString startFolder(const QString &lastFolder)
{
    return lastFolder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                                : lastFolder;
}

} // namespace

QString Dialogs::fileToOpen(QWidget *parent, const QString &title, const QString &filter)
{
    const QString path = QFileDialog::getOpenFileName(parent, title, startFolder(m_folder), filter);
    if (!path.isEmpty())
        m_folder = QFileInfo(path).absolutePath();
    return path;
}

QString Dialogs::fileToSave(QWidget *parent, const QString &title, const QString &suggestedName,
                            const QString &filter)
{
    QFileDialog dialog(parent, title, startFolder(m_folder), filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QFileInfo(suggestedName).suffix());
    dialog.selectFile(suggestedName);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return {};
    const QString path = dialog.selectedFiles().constFirst();
    m_folder = QFileInfo(path).absolutePath();
    return path;
}

QString Dialogs::folderToUse(QWidget *parent, const QString &title)
{
    const QString folder = QFileDialog::getExistingDirectory(parent, title, startFolder(m_folder));
    if (!folder.isEmpty())
        m_folder = folder;
    return folder;
}

bool Dialogs::confirm(QWidget *parent, const QString &title, const QString &question, const QString &yes,
                      const QString &no)
{
    QMessageBox box(QMessageBox::Question, title, question, QMessageBox::NoButton, parent);
    box.setTextFormat(Qt::PlainText);
    const QPushButton *wanted = box.addButton(yes, QMessageBox::DestructiveRole);
    box.setDefaultButton(box.addButton(no, QMessageBox::RejectRole));
    box.exec();
    return box.clickedButton() == wanted;
}

void Dialogs::tell(QWidget *parent, const QString &title, const QString &text)
{
    QMessageBox box(QMessageBox::NoIcon, title, text, QMessageBox::Close, parent);
    box.setTextFormat(Qt::PlainText);
    box.setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    box.exec();
}

bool Dialogs::isAccepted(QDialog &form)
{
    return form.exec() == QDialog::Accepted;
}

} // namespace plateau::ui
