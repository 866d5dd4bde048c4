// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

class QBoxLayout;
class QGroupBox;
class QWidget;

namespace plateau::ui {

class CellsTable;
class DraftFields;
class DraftTables;
class Theme;

/// The forms of the method editor, one a section. They make their fields in fields and show tables' models;
/// what is keyed goes there.
struct SectionParts {
    const Theme &theme;
    DraftFields &fields;
    DraftTables &tables;
};
/// Name, measurands, what is derived from them.
QWidget *buildMeasuresSection(const SectionParts &parts, QWidget *parent);
/// Components and steps.
QWidget *buildRecipeSection(const SectionParts &parts, QWidget *parent);
/// Photometer, absorptivities, what is taken from which readings.
QWidget *buildSignalSection(const SectionParts &parts, QWidget *parent);
/// Window, acceptance, usual standard.
QWidget *buildLimitsSection(const SectionParts &parts, QWidget *parent);
/// Source, principle, reactions, what interferes, preparation, cautions.
QWidget *buildTextSection(const SectionParts &parts, QWidget *parent);

/// Shared by the sections: a group with a sentence on top, and the buttons of a table's rows below it. The
/// buttons take no focus: the keys do the same.
QGroupBox *newGroup(const QString &title, const QString &sentence, QWidget *parent);
void addRowButtons(const Theme &theme, CellsTable *table, bool movable, QBoxLayout *layout);

} // namespace plateau::ui
