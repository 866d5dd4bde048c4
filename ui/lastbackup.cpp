// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/lastbackup.h"

#include "ui/books/keeper.h"

#include <QProgressBar>
#include <QProgressDialog>

using namespace Qt::StringLiterals;

namespace plateau::ui {

LastBackup::LastBackup(Keeper &keeper, QWidget *window)
    : QObject(window)
    , m_keeper(keeper)
    , m_window(window)
{
    connect(&keeper, &Keeper::made, this, [this] {
        if (m_state == State::Waiting)
            closeWindow(State::Free); // and looks once more whether something was stored meanwhile
        else
            m_state = State::Free;
    });
    connect(&keeper, &Keeper::failed, this, [this](const QString &sentence) {
        if (m_state != State::Waiting)
            return;
        m_state = State::GivenUp;
        hide();
        Q_EMIT failed(tr("%1 Close the window once more to leave without a backup.").arg(sentence));
    });
}

bool LastBackup::letsClose()
{
    if (m_state != State::Free) {
        m_state = State::GivenUp;
        hide();
        m_keeper.stop();
        return true;
    }
    m_state = State::Waiting;
    m_keeper.backUpIfChanged();
    if (m_state == State::GivenUp)
        return false;
    if (!m_keeper.isBackingUp()) {
        m_state = State::Free;
        return true;
    }
    show();
    return false;
}

void LastBackup::show()
{
    m_progress = new QProgressDialog(tr("A last backup is being made; after it the window closes by itself."),
                                     tr("&Close without it"), 0, 1000, m_window);
    m_progress->setObjectName(u"lastBackup"_s);
    m_progress->setWindowTitle(tr("Backup"));
    m_progress->setWindowModality(Qt::WindowModal);
    m_progress->setAutoClose(false);
    m_progress->setAutoReset(false);
    m_progress->setMinimumDuration(0);
    if (auto *bar = m_progress->findChild<QProgressBar *>())
        bar->setAccessibleName(tr("Progress of the backup"));
    connect(&m_keeper, &Keeper::progressed, m_progress, &QProgressDialog::setValue);
    connect(m_progress, &QProgressDialog::canceled, this, [this] { closeWindow(State::GivenUp); });
    m_progress->show();
}

void LastBackup::hide()
{
    if (!m_progress)
        return;
    m_progress->hide();
    m_progress->deleteLater(); // this may be its own button's click
    m_progress = nullptr;
}

void LastBackup::closeWindow(State state)
{
    m_state = state;
    hide();
    m_isClosing = true;
    m_window->close();
    m_isClosing = false;
}

} // namespace plateau::ui
