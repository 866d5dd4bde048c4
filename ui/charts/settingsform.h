// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/settings.h"

#include <QWidget>

#include <map>

class QComboBox;
class QFormLayout;
class QGroupBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace plateau::ui {

class NumberField;
class Theme;

/// How a chart is drawn and where its limits come from. What is typed shows in the chart at once; it is kept
/// when it is saved.
class SettingsForm : public QWidget
{
    Q_OBJECT

public:
    explicit SettingsForm(const Theme &theme, QWidget *parent = nullptr);

    /// The quantity decides which kinds of chart there are to choose from.
    void setSettings(charts::Quantity quantity, const charts::Settings &settings);
    /// Nothing while something in it cannot be read or used; fault says what.
    std::optional<charts::Settings> settings() const;
    QString fault() const;
    /// The run that the limits from earlier runs begin with; 0 for the first.
    void setFirstRun(qint64 run);
    /// Below the form: who saved it, or that nobody did.
    void setOrigin(const QString &sentence);

Q_SIGNALS:
    void changed();
    void saveWanted();
    /// The limits are to begin with the chosen point.
    void beginWanted();

private:
    void buildKind(const Theme &theme, QFormLayout *form);
    void buildEarlier(const Theme &theme);
    void buildFixed(const Theme &theme);
    void buildRules();
    void showWhatApplies();
    void sayFirstRun();
    void sayFewest();
    void onChange();
    charts::Settings read(assay::Problems &problems) const;

    bool m_isLoading = false;
    qint64 m_firstRun = 0;
    QComboBox *m_kind;
    QComboBox *m_basis;
    QComboBox *m_constants;
    QGroupBox *m_earlier;
    NumberField *m_values;
    QComboBox *m_spread;
    QLabel *m_fewest;
    QLabel *m_begin;
    QPushButton *m_beginHere;
    QPushButton *m_beginFirst;
    QGroupBox *m_fixed;
    NumberField *m_centre;
    NumberField *m_deviation;
    QLineEdit *m_source;
    QLineEdit *m_date;
    /// By the place that charts::problemsOf names.
    std::map<QString, NumberField *> m_numbers;
    QFormLayout *m_form;
    QListWidget *m_rules;
    QLabel *m_rulesTitle;
    QLabel *m_origin;
};

} // namespace plateau::ui
