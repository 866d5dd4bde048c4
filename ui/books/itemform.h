// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/item.h"
#include "core/planning/laboratory.h"

#include <QWidget>

#include <map>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace plateau::ui {

class Notice;
class NumberField;
class OfferField;
class Theme;

/// Where an item of equipment is described: a new one, or one that is there, then with a reason.
class ItemForm : public QWidget
{
    Q_OBJECT

public:
    explicit ItemForm(const Theme &theme, QWidget *parent = nullptr);

    /// Names that the laboratory's list has are offered; with one of them comes its volume.
    void setLaboratory(const planning::Laboratory &laboratory);
    void startNew();
    void startChange(const equipment::HeldItem &held);
    /// Nothing while a new one is described.
    std::optional<qint64> changed() const { return m_changed; }
    bool hasUnsavedChanges() const;
    void markStored();
    void takeFocus();
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    /// The reason is empty for a new one.
    void wanted(const plateau::equipment::Item &item, const QString &reason);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    equipment::Kind kind() const;
    void showFields();
    void takeFromList();
    void store();
    void fill(const equipment::Item &item);
    equipment::Item keyed(assay::Problems &problems) const;

    const Theme &m_theme;
    planning::Laboratory m_laboratory;
    std::optional<qint64> m_changed;
    equipment::Item m_before;
    QLabel *m_heading;
    QFormLayout *m_form;
    QComboBox *m_kind;
    OfferField *m_name;
    QLineEdit *m_number;
    NumberField *m_nominal_mL;
    NumberField *m_smallest_mL;
    std::map<equipment::Aspect, QLineEdit *> m_days;
    QCheckBox *m_inUse;
    QLineEdit *m_reason;
    Notice *m_notice;
};

} // namespace plateau::ui
