// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/instrumentintake.h"

#include "ui/instrument/columndialog.h"
#include "ui/instrument/listendialog.h"
#include "ui/instrument/listener.h"
#include "ui/shared/dialogs.h"

#include <QApplication>
#include <QClipboard>
#include <QSettings>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

InstrumentIntake::InstrumentIntake(const Theme &theme, Dialogs &dialogs, std::unique_ptr<QSettings> settings,
                                   QObject *parent)
    : QObject(parent)
    , m_theme(theme)
    , m_dialogs(dialogs)
    , m_settings(std::move(settings))
    , m_store(*m_settings)
    , m_listener(std::make_unique<Listener>())
{
    connect(m_listener.get(), &Listener::taken, this, &InstrumentIntake::readingTaken);
    connect(m_listener.get(), &Listener::refused, this, &InstrumentIntake::lineRefused);
    connect(m_listener.get(), &Listener::stateChanged, this, &InstrumentIntake::stateChanged);
}

InstrumentIntake::~InstrumentIntake() = default;

std::unique_ptr<QSettings> InstrumentIntake::programSettings()
{
    return std::make_unique<QSettings>(QSettings::IniFormat, QSettings::UserScope, u"plateau"_s,
                                       u"plateau"_s);
}

void InstrumentIntake::openPasteDialog(QWidget *parent)
{
    auto *dialog = new ColumnDialog(m_theme, ColumnDialog::Kind::Paste, m_store, m_dialogs, parent);
    dialog->setText(QApplication::clipboard()->text());
    openColumn(dialog);
}

void InstrumentIntake::openFileDialog(QWidget *parent)
{
    auto *dialog = new ColumnDialog(m_theme, ColumnDialog::Kind::File, m_store, m_dialogs, parent);
    if (dialog->askForFile())
        openColumn(dialog);
    else
        delete dialog;
}

void InstrumentIntake::openColumn(ColumnDialog *dialog)
{
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { Q_EMIT columnTaken(dialog->readings()); });
    connect(dialog, &ColumnDialog::notKept, this, [this, dialog] { sayNotKept(dialog); });
    dialog->open();
}

void InstrumentIntake::openListenDialog(QWidget *parent)
{
    auto *dialog = new ListenDialog(m_theme, *m_listener, m_store, parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &ListenDialog::notKept, this, [this, dialog] { sayNotKept(dialog); });
    dialog->open();
}

void InstrumentIntake::sayNotKept(QWidget *parent)
{
    m_dialogs.tell(parent, tr("Not remembered"),
                   tr("What was set is used now, but not remembered for the next time: %1 can't be written.")
                       .arg(m_settings->fileName()));
}

QStringList InstrumentIntake::photometerNames() const
{
    QStringList names;
    for (const Photometer &photometer : m_store.photometers())
        names << photometer.name;
    return names;
}

bool InstrumentIntake::listenTo(const QString &photometerName)
{
    const std::vector<Photometer> known = m_store.photometers();
    const auto found = std::ranges::find(known, photometerName, &Photometer::name);
    if (found == known.end())
        return false;
    m_listener->connectTo(*found);
    m_listener->setTaking(true);
    return true;
}

void InstrumentIntake::stopListening()
{
    m_listener->setTaking(false);
    m_listener->disconnectFrom();
}

bool InstrumentIntake::isListening() const
{
    return m_listener->isTaking();
}

bool InstrumentIntake::isConnected() const
{
    return m_listener->state() == LinkState::Connected;
}

QString InstrumentIntake::stateSentence() const
{
    if (!isListening())
        return tr("Not listening to a photometer.");
    const QString name = m_listener->photometer()->name;
    return isConnected() ? tr("Listening to %1: %2").arg(name, m_listener->sentence())
                         : tr("Waiting for %1: %2").arg(name, m_listener->sentence());
}

void InstrumentIntake::setRetryInterval(int interval_ms)
{
    m_listener->setRetryInterval(interval_ms);
}

} // namespace plateau::ui
