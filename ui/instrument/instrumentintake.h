// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/photometerstore.h"
#include "ui/instrument/takenreading.h"

#include <QObject>
#include <QStringList>

#include <memory>

class QDialog;
class QSettings;
class QWidget;

namespace plateau::ui {

class ColumnDialog;
class Dialogs;
class Listener;
class Theme;

/// Readings that need not be keyed: pasted, from a file, or sent by the photometer. Where a reading goes is
/// not decided here.
class InstrumentIntake : public QObject
{
    Q_OBJECT

public:
    /// Theme and dialogs outlive it. settings: where photometers and mappings are remembered.
    InstrumentIntake(const Theme &theme, Dialogs &dialogs, std::unique_ptr<QSettings> settings,
                     QObject *parent = nullptr);
    ~InstrumentIntake() override;

    /// The program's own.
    static std::unique_ptr<QSettings> programSettings();

    /// Each opens a window-modal dialog over the parent and returns at once. What was accepted comes as
    /// columnTaken().
    void openPasteDialog(QWidget *parent);
    /// A file is asked for first.
    void openFileDialog(QWidget *parent);
    /// While it is open, nothing is taken; see readingTaken().
    void openListenDialog(QWidget *parent);

    /// The remembered ones, the last used first.
    QStringList photometerNames() const;
    /// Without the dialog; false if none of that name is remembered.
    bool listenTo(const QString &photometerName);
    void stopListening();
    /// Readings are taken as they come, or will be once the connection is there.
    bool isListening() const;
    bool isConnected() const;
    /// One sentence: to whom, and how the connection stands.
    QString stateSentence() const;
    /// For tests, which do not wait two seconds.
    void setRetryInterval(int interval_ms);

Q_SIGNALS:
    /// A good line, while listening.
    void readingTaken(const plateau::ui::TakenReading &reading);
    /// A line that gives no reading, while listening: on one line, and the sentence why.
    void lineRefused(const QString &raw, const QString &sentence);
    void stateChanged();
    /// A pasted or filed column in the order the mapping says; never empty.
    void columnTaken(const std::vector<plateau::ui::TakenReading> &readings);

private:
    void openColumn(ColumnDialog *dialog);
    void sayNotKept(QWidget *parent);

    const Theme &m_theme;
    Dialogs &m_dialogs;
    std::unique_ptr<QSettings> m_settings;
    PhotometerStore m_store;
    std::unique_ptr<Listener> m_listener;
};

} // namespace plateau::ui
