// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/draftfields.h"

#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSignalBlocker>

using namespace Qt::StringLiterals;

namespace plateau::ui {

QFormLayout *newForm(QWidget *host)
{
    auto *form = new QFormLayout(host);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    return form;
}

DraftFields::DraftFields(const Theme &theme, QObject *parent)
    : QObject(parent)
    , m_theme(theme)
{
}

QLineEdit *DraftFields::addText(QFormLayout *form, const QString &label, const QString &objectName,
                                Member member)
{
    auto *edit = new QLineEdit(form->parentWidget());
    edit->setMinimumHeight(m_theme.target());
    addFormRow(form, label, edit, objectName);
    m_bindings.push_back({[edit](const QString &text) { edit->setText(text); },
                          [edit] { return edit->text(); }, std::move(member)});
    connect(edit, &QLineEdit::textChanged, this, &DraftFields::edited);
    return edit;
}

NumberEntry *DraftFields::bindNumber(NumberEntry *entry, Member member)
{
    m_bindings.push_back({[entry](const QString &text) { entry->setText(text); },
                          [entry] { return entry->text(); }, std::move(member)});
    connect(entry, &NumberEntry::judged, this, &DraftFields::edited);
    return entry;
}

NumberEntry *DraftFields::addNumber(QFormLayout *form, const QString &label, const QString &unit,
                                    const QString &objectName, Member member)
{
    auto *field = new NumberField(m_theme, unit, form->parentWidget());
    addFormRow(form, label, field, objectName);
    return bindNumber(field->entry(), std::move(member));
}

void DraftFields::addInterval(QFormLayout *form, const QString &label, const QString &unit,
                              const QString &objectName, const Member &from, const Member &to)
{
    auto *row = new QWidget(form->parentWidget());
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins({});
    const auto entry = [&](const QString &name, const QString &words) {
        auto *number = new NumberEntry(m_theme, row);
        number->setMinimumHeight(m_theme.target());
        number->setFixedWidth(number->fontMetrics().averageCharWidth() * 12);
        number->setAccessibleName(words);
        number->setObjectName(name);
        layout->addWidget(number);
        return number;
    };
    const QString plain = QString(label).remove(u'&');
    NumberEntry *lower = entry(objectName + u"From"_s, tr("%1, from").arg(plain));
    layout->addWidget(plainLabel(tr("to"), row));
    NumberEntry *upper = entry(objectName + u"To"_s, tr("%1, to").arg(plain));
    layout->addWidget(plainLabel(unit, row), 1);
    auto *caption = new QLabel(label, form->parentWidget());
    caption->setBuddy(lower);
    caption->setMinimumHeight(m_theme.target());
    form->addRow(caption, row);
    bindNumber(lower, from);
    bindNumber(upper, to);
}

QPlainTextEdit *DraftFields::addProse(QFormLayout *form, const QString &label, int lines,
                                      const QString &objectName, Member member)
{
    auto *edit = new QPlainTextEdit(form->parentWidget());
    edit->setTabChangesFocus(true);
    const int margins = 2 * edit->frameWidth() + static_cast<int>(2 * edit->document()->documentMargin());
    edit->setFixedHeight(edit->fontMetrics().lineSpacing() * lines + margins);
    addFormRow(form, label, edit, objectName);
    m_bindings.push_back({[edit](const QString &text) { edit->setPlainText(text); },
                          [edit] { return edit->toPlainText(); }, std::move(member)});
    connect(edit, &QPlainTextEdit::textChanged, this, &DraftFields::edited);
    return edit;
}

QComboBox *DraftFields::addChoice(QFormLayout *form, const QString &label,
                                  const std::vector<CellChoice> &choices, const QString &objectName,
                                  Member member)
{
    auto *box = new QComboBox(form->parentWidget());
    for (const CellChoice &choice : choices)
        box->addItem(choice.words, choice.value);
    box->setMinimumHeight(m_theme.target());
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(16);
    box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    addFormRow(form, label, box, objectName);
    m_bindings.push_back({[box](const QString &value) { box->setCurrentIndex(box->findData(value)); },
                          [box] { return box->currentData().toString(); }, std::move(member)});
    connect(box, &QComboBox::currentIndexChanged, this, &DraftFields::edited);
    return box;
}

void DraftFields::load(MethodDraft &draft)
{
    for (Binding &binding : m_bindings) {
        binding.loaded = binding.member(draft);
        binding.show(binding.loaded);
        binding.shownAs = binding.typed();
    }
}

void DraftFields::store(MethodDraft &draft) const
{
    for (const Binding &binding : m_bindings) {
        const QString typed = binding.typed();
        binding.member(draft) = typed == binding.shownAs ? binding.loaded : typed;
    }
}

} // namespace plateau::ui
