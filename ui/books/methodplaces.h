// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/methoddraft.h"

#include <QString>

namespace plateau::ui {

/// The sections of the method editor.
enum class MethodSection { Measures, Recipe, Signal, Limits, Text, Example };

/// Where in the editor a problem is put right: a section, the object name of a field or table, and the cell
/// in a table.
struct MethodField {
    MethodSection section = MethodSection::Measures;
    QString objectName;
    int row = -1;
    int column = 0;
    bool operator==(const MethodField &) const = default;
};
/// For a JSON pointer into the plateau-method/1 document; the first field of the editor for one that has
/// none.
MethodField fieldOf(const QString &pointer, const MethodDraft &draft);

/// The place in the words of the editor: "/components/0/volume_mL" becomes "component Buffer pH 9, volume".
QString methodPlaceWords(const QString &pointer, const MethodDraft &draft);

/// A problem's sentence with the field names of a file put into the words of the editor.
QString methodSentenceWords(QString sentence);

} // namespace plateau::ui
