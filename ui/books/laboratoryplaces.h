// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::ui {

/// The sections of the laboratory page, in their order.
enum class LaboratoryPart { Head, Rack, Glass, Photometer, Methods, Units, Review };

/// Where a problem's field is, and what to call it.
struct LaboratoryField {
    LaboratoryPart part = LaboratoryPart::Head;
    QString objectName;
    /// Of a table only.
    int row = -1;
    int column = 0;
    QString words;
};
/// Whether the JSON pointer names that place or something in it.
bool isAtOrBelow(const QString &pointer, const QString &place);
/// pointer: into a plateau-laboratory/1 document.
LaboratoryField laboratoryField(const QString &pointer);

} // namespace plateau::ui
