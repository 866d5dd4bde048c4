// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/laboratorydraft.h"

#include <QWidget>

#include <map>

class QFormLayout;
class QVBoxLayout;

namespace plateau::ui {

class CellsTable;
class FieldNote;
class NumberEntry;
class Theme;

/// One section of the laboratory page: it shows its part of the draft and gives back what was typed there.
/// What is wrong stands below each field.
class LaboratorySection : public QWidget
{
    Q_OBJECT

public:
    LaboratorySection(const Theme &theme, const QString &title, const QString &introduction, QWidget *parent);

    const QString &title() const { return m_title; }
    virtual void load(const LaboratoryDraft &draft) = 0;
    virtual void store(LaboratoryDraft &draft) const = 0;
    /// By the name of the field's object.
    void showProblems(const std::map<QString, QStringList> &sentences);

Q_SIGNALS:
    void edited();

protected:
    const Theme &theme() const { return m_theme; }
    QVBoxLayout *body() const { return m_body; }
    /// A form that begins where the body ends.
    QFormLayout *addForm();
    /// As ui::addFormRow, with room for what is wrong below.
    void addField(QFormLayout *form, const QString &label, QWidget *widget, const QString &objectName);
    NumberEntry *addNumber(QFormLayout *form, const QString &label, const QString &unit,
                           const QString &objectName);
    /// With its rows' buttons, and room for what is wrong below.
    CellsTable *addTable(CellsModel *model, const QString &title, const QString &objectName, int stretch);
    void addSentence(const QString &sentence);
    FieldNote *addNote(QWidget *field, const QString &objectName);

private:
    const Theme &m_theme;
    QString m_title;
    QVBoxLayout *m_body;
    std::map<QString, FieldNote *> m_notes;
};

} // namespace plateau::ui
