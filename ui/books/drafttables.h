// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/methoddraft.h"

#include <QObject>

namespace plateau::ui {

class Theme;

/// The tables of a method draft. They look at each other: a step adds one of the components, a signal takes
/// readings of the steps.
class DraftTables : public QObject
{
    Q_OBJECT

public:
    DraftTables(const Theme &theme, QObject *parent);

    CellsModel *components() const { return m_components; }
    CellsModel *steps() const { return m_steps; }
    CellsModel *measurands() const { return m_measurands; }
    CellsModel *absorptivities() const { return m_absorptivities; }
    CellsModel *derived() const { return m_derived; }

    /// Methods that a derived result may take from.
    void setOtherMethods(std::vector<assay::Method> methods) { m_others = std::move(methods); }
    void load(const MethodDraft &draft);
    void store(MethodDraft &draft) const;
    void layOutUsualSteps();

Q_SIGNALS:
    void edited();

private:
    CellsModel *newComponents();
    CellsModel *newSteps();
    CellsModel *newMeasurands();
    CellsModel *newDerived();
    std::vector<CellChoice> componentChoices() const;
    std::vector<CellChoice> readingChoices() const;
    std::vector<CellChoice> methodChoices() const;
    std::vector<CellChoice> measurandChoices(const QString &method) const;

    const Theme &m_theme;
    std::vector<assay::Method> m_others;
    CellsModel *m_components;
    CellsModel *m_steps;
    CellsModel *m_measurands;
    CellsModel *m_absorptivities;
    CellsModel *m_derived;
};

} // namespace plateau::ui
