// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/link.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace plateau::ui {

class Theme;

/// How a photometer is connected.
class LinkForm : public QWidget
{
    Q_OBJECT

public:
    explicit LinkForm(const Theme &theme, QWidget *parent = nullptr);

    /// As it stands; sound or not.
    Link link() const;
    void setLink(const Link &link);
    /// The serial ports there are now, to choose from; what is typed stays.
    void refreshPorts();

Q_SIGNALS:
    void changed();

private:
    void addSerialRows(const Theme &theme);
    void addNetworkRows(const Theme &theme);
    void showWanted();
    bool isNetwork() const;

    QFormLayout *m_form;
    QComboBox *m_kind;
    QComboBox *m_port;
    QComboBox *m_speed;
    QComboBox *m_format;
    QComboBox *m_flow;
    QLineEdit *m_host;
    QLineEdit *m_number;
};

} // namespace plateau::ui
