// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QList>
#include <QString>

class QDateTime;
class QFormLayout;
class QGroupBox;
class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;
class QWidget;

namespace plateau::ui {

class Theme;

/// A label that shows text as it is: user text is never taken for markup.
QLabel *plainLabel(const QString &text, QWidget *parent);
/// A form inside a checkable group, out of the way while the group is not checked.
QFormLayout *foldingForm(QGroupBox *group);
/// The caption without a unit in brackets that the field, which says it by itself, would repeat.
QString unitOnce(QString caption, const QString &unit);
/// A row with a label whose buddy is the widget or what stands in for its focus; the object name is the
/// handle of tests, and is put on the widget that takes the focus. The wheel turns a box only while that has
/// the focus.
void addFormRow(QFormLayout *form, const QString &label, QWidget *widget, const QString &objectName);
/// Captions of the forms that stand in those widgets become as wide as the widest of them, so that all fields begin in
/// one line. To be called again when a form got other rows.
void alignCaptions(const QList<QWidget *> &hosts);
/// Shows a row of the form or takes it out. It is not hidden within it: the form layout of Qt 6.4 lays the row before
/// a hidden one and the row behind it over each other.
void showRow(QFormLayout &form, QWidget *field, bool shown);
/// The caption that addFormRow gave the field, also while its row is out of the form.
QLabel *captionOf(const QFormLayout &form, const QWidget *field);
QPushButton *button(const Theme &theme, const QString &text, const QString &objectName, QWidget *parent);
/// For a tool tip: the text as it is, which a tool tip would else take for markup.
QString tipText(const QString &text);
/// A stored moment in local time, day and minute in the form of the desk's locale; empty for none.
QString momentText(const QDateTime &moment);
/// The same as ISO 8601 writes them, in a text that is kept and read at other desks.
QString keptMomentText(const QDateTime &moment);
void setGaps(const Theme &theme, QLayout *layout);

} // namespace plateau::ui
