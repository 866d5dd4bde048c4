// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratorysection.h"

#include "ui/books/cellstable.h"
#include "ui/books/draftfields.h"
#include "ui/books/methodsections.h"
#include "ui/shared/fieldnote.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QLabel>

namespace plateau::ui {

LaboratorySection::LaboratorySection(const Theme &theme, const QString &title, const QString &introduction,
                                     QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_title(title)
    , m_body(new QVBoxLayout(this))
{
    setGaps(theme, m_body);
    auto *heading = plainLabel(title, this);
    heading->setFont(theme.bold());
    m_body->addWidget(heading);
    addSentence(introduction);
}

void LaboratorySection::addSentence(const QString &sentence)
{
    auto *label = plainLabel(sentence, this);
    label->setWordWrap(true);
    m_body->addWidget(label);
}

QFormLayout *LaboratorySection::addForm()
{
    auto *host = new QWidget(this);
    QFormLayout *form = newForm(host);
    form->setContentsMargins({});
    m_body->addWidget(host);
    return form;
}

FieldNote *LaboratorySection::addNote(QWidget *field, const QString &objectName)
{
    auto *note = new FieldNote(m_theme, field, this);
    m_notes[objectName] = note;
    return note;
}

void LaboratorySection::addField(QFormLayout *form, const QString &label, QWidget *widget,
                                 const QString &objectName)
{
    addFormRow(form, label, widget, objectName);
    QWidget *focus = widget->focusProxy() ? widget->focusProxy() : widget;
    form->addRow(QString(), addNote(focus, objectName));
}

NumberEntry *LaboratorySection::addNumber(QFormLayout *form, const QString &label, const QString &unit,
                                          const QString &objectName)
{
    auto *field = new NumberField(m_theme, unit, form->parentWidget());
    addField(form, label, field, objectName);
    connect(field->entry(), &NumberEntry::judged, this, &LaboratorySection::edited);
    return field->entry();
}

CellsTable *LaboratorySection::addTable(CellsModel *model, const QString &title, const QString &objectName,
                                        int stretch)
{
    auto *table = new CellsTable(m_theme, model, title, objectName, this);
    table->setMinimumHeight(m_theme.target() * 5);
    m_body->addWidget(table, stretch);
    m_body->addWidget(addNote(table, objectName));
    addRowButtons(m_theme, table, true, m_body);
    connect(model, &CellsModel::edited, this, &LaboratorySection::edited);
    return table;
}

void LaboratorySection::showProblems(const std::map<QString, QStringList> &sentences)
{
    for (const auto &[objectName, note] : m_notes) {
        const auto found = sentences.find(objectName);
        // A number that cannot be read says so itself.
        const auto *entry = findChild<NumberEntry *>(objectName);
        const bool saysItself = entry && !entry->fault().isEmpty();
        note->say(found == sentences.end() || saysItself ? QStringList() : found->second);
    }
}

} // namespace plateau::ui
