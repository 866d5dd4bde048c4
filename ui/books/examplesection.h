// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/exampledraft.h"

#include <QWidget>

class QCheckBox;
class QTextBrowser;

namespace plateau::ui {

class CellsTable;
class NumberField;
class SentenceList;
class Theme;

/// A worked example: the readings of a blank and a sample, and what the method makes of them, written out. It
/// belongs to nobody: neither to the method nor to a run.
class ExampleSection : public QWidget
{
    Q_OBJECT

public:
    explicit ExampleSection(const Theme &theme, QWidget *parent = nullptr);
    /// The method as it is now; what was typed stays.
    void show(const MethodOutcome &method);
    void clear();

private:
    QWidget *buildInputs();
    ExampleDraft draft() const;
    void work();

    const Theme &m_theme;
    CellsModel *m_readings;
    CellsTable *m_table = nullptr;
    NumberField *m_volume = nullptr;
    NumberField *m_take = nullptr;
    NumberField *m_makeUp = nullptr;
    QCheckBox *m_uncertainty = nullptr;
    SentenceList *m_results = nullptr;
    QTextBrowser *m_working = nullptr;
    MethodOutcome m_method;
};

} // namespace plateau::ui
