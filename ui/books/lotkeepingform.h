// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace plateau::ui {

class NumberField;
class Theme;

/// The fields of a form that say how a container was dissolved, divided or stored. The day, the volume and
/// the note are the form's own.
class LotKeepingForm : public QObject
{
    Q_OBJECT

public:
    enum class Subject { None, Dissolving, Dividing, Place };

    /// The rows go into the form.
    LotKeepingForm(const Theme &theme, QFormLayout *form);

    /// Every container: of those in hand it is dissolved in one, places are offered as they are known.
    void setLots(const std::vector<planning::Lot> &lots, qint64 own);
    void show(Subject subject);
    /// Empty fields, and what the container's label and the last one of its reagent say of keeping.
    void reset(const planning::Lot &lot);
    bool hasInput() const;

    /// Without volume, day and note. Nothing, and the fault says why, where a field cannot be read; the
    /// cursor then goes there.
    std::optional<notebook::LotDissolving> dissolving(QString &fault) const;
    std::optional<notebook::LotDivision> division(QString &fault) const;
    /// Of a division the place may be left out.
    std::optional<planning::StoragePlace> place(QString &fault) const;

Q_SIGNALS:
    void returnPressed();

private:
    QLineEdit *addLine(const Theme &theme, const QString &caption, const QString &objectName);
    QComboBox *addBox(const Theme &theme, const QString &caption, const QString &objectName);
    NumberField *addTemperature(const Theme &theme, const QString &caption, const QString &objectName);

    QFormLayout *m_form;
    QComboBox *m_solvent;
    QLineEdit *m_count;
    QLineEdit *m_keeps_days;
    QLineEdit *m_thawed_days;
    QComboBox *m_place;
    NumberField *m_coldest_C;
    NumberField *m_warmest_C;
    /// Those that one dissolves in, as they stand in the box.
    std::vector<std::pair<QString, notebook::LotId>> m_solvents;
    std::vector<planning::StoragePlace> m_places;
    std::vector<planning::Lot> m_lots;
    Subject m_subject = Subject::None;
};

} // namespace plateau::ui
