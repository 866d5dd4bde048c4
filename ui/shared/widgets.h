// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

class QAbstractItemModel;
class QFormLayout;
class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;
class QTableView;
class QWidget;

namespace plateau::ui {

class Theme;

/// A label that shows text as it is: user text is never taken for markup.
QLabel *plainLabel(const QString &text, QWidget *parent);
/// A row with a label whose buddy is the widget or what stands in for its focus; the object name is the
/// handle of tests, and is put on the widget that takes the focus.
void addFormRow(QFormLayout *form, const QString &label, QWidget *widget, const QString &objectName);
QPushButton *button(const Theme &theme, const QString &text, const QString &objectName, QWidget *parent);
/// A table to read and choose from: whole rows or single cells, Tab leaves it.
QTableView *table(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
                  const QString &objectName, QWidget *parent);
void setGaps(const Theme &theme, QLayout *layout);

} // namespace plateau::ui
