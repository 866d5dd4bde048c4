// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/benchsettings.h"

#include <QDialog>

class QCheckBox;
class QPushButton;
class QSlider;

namespace plateau::ui {

class Notice;
class NumberField;
class Sounder;
class Theme;
enum class Sound;

/// How the bench sounds, how early, and how readings are keyed.
class BenchSettingsDialog : public QDialog
{
    Q_OBJECT

public:
    BenchSettingsDialog(const Theme &theme, const BenchChoice &choice, Sounder &sounder,
                        QWidget *parent = nullptr);

    /// As it stands; sound once the form is accepted.
    BenchChoice choice() const;

    void accept() override;

private:
    QPushButton *listen(const QString &text, const QString &name, Sound sound);
    void judge();

    const Theme &m_theme;
    Sounder &m_sounder;
    QCheckBox *m_audible;
    QSlider *m_volume;
    NumberField *m_lead;
    QCheckBox *m_thousandths;
    Notice *m_fault;
    QPushButton *m_keep;
};

} // namespace plateau::ui
