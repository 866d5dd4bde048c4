// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/standardstock.h"

#include <QWidget>

class QFormLayout;
class QLabel;
class QLineEdit;

namespace plateau::ui {

class Notice;
class NumberField;
class Theme;

/// Where a substance that standards are made of is described: a new one, or one that is there, then with a
/// reason.
class SubstanceForm : public QWidget
{
    Q_OBJECT

public:
    explicit SubstanceForm(const Theme &theme, QWidget *parent = nullptr);

    void startNew();
    void startChange(const planning::HeldSubstance &held);
    std::optional<qint64> changed() const { return m_changed; }
    bool hasUnsavedChanges() const;
    void takeFocus();
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    /// The reason is empty for a new one.
    void wanted(const plateau::planning::Substance &substance, const QString &reason);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QLineEdit *addLine(const QString &caption, const QString &name);
    NumberField *addNumber(const QString &caption, const QString &unit, const QString &name);
    void fill(const planning::Substance &substance);
    planning::Substance keyed(assay::Problems &problems) const;
    void store();

    const Theme &m_theme;
    std::optional<qint64> m_changed;
    planning::Substance m_before;
    QLabel *m_heading;
    Notice *m_notice;
    QFormLayout *m_form = nullptr;
    QLineEdit *m_name = nullptr;
    QLineEdit *m_supplier = nullptr;
    QLineEdit *m_lot = nullptr;
    QLineEdit *m_certificate = nullptr;
    NumberField *m_purity = nullptr;
    NumberField *m_purityWidth = nullptr;
    NumberField *m_water = nullptr;
    NumberField *m_waterWidth = nullptr;
    NumberField *m_molarMass = nullptr;
    NumberField *m_density = nullptr;
    QLineEdit *m_expires = nullptr;
    QLineEdit *m_reason = nullptr;
};

} // namespace plateau::ui
