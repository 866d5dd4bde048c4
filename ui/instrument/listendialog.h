// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/listener.h"

#include <QDialog>

class QBoxLayout;
class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace plateau::ui {

class LinesModel;
class LinkForm;
class Notice;
class PatternForm;
class Table;
class Theme;

/// Which photometer is listened to, how it is connected and how its lines are read, tried out on sample lines
/// and on what comes in. While it is open no reading is taken. Accepted, it takes readings; left, everything
/// is as before.
class ListenDialog : public QDialog
{
    Q_OBJECT

public:
    /// Listener and store outlive the dialog.
    ListenDialog(const Theme &theme, Listener &listener, PhotometerStore &store, QWidget *parent = nullptr);

    /// As it stands in the form; sound or not.
    Photometer photometer() const;
    void accept() override;
    void reject() override;

Q_SIGNALS:
    /// The photometer could not be remembered.
    void notKept();

private:
    void build();
    QWidget *buildForms();
    QWidget *buildLines();
    QBoxLayout *buildButtons();
    void connectParts();
    void fillNames();
    void fillIn(const Photometer &photometer);
    void takeChosen();
    void toggleConnection();
    void stopListening();
    void forget();
    void onLink();
    void onPattern();
    void tryOut();
    void useReceived();
    void onLine(const ReceivedLine &line);
    void showState();
    /// Why no readings can be taken yet; empty if they can.
    QString obstacle() const;

    const Theme &m_theme;
    Listener &m_listener;
    PhotometerStore &m_store;
    /// What was listened to when the dialog was opened.
    std::optional<Photometer> m_before;
    std::vector<ReceivedLine> m_received;
    /// Of what came in, in characters: the table is measured anew only for a longer one.
    qsizetype m_longest = 0;
    LinesModel *m_tried;
    LinesModel *m_came;
    QComboBox *m_remembered;
    QLineEdit *m_name;
    LinkForm *m_link;
    PatternForm *m_pattern;
    QPlainTextEdit *m_sample;
    Table *m_triedTable;
    Table *m_cameTable;
    QLabel *m_nothingCame;
    Notice *m_state;
    QLabel *m_obstacle;
    QPushButton *m_connect;
    QPushButton *m_forget;
    QPushButton *m_useReceived;
    QPushButton *m_stop;
    QPushButton *m_take;
};

} // namespace plateau::ui
