// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/methoddraft.h"

#include <QObject>

#include <functional>
#include <vector>

class QComboBox;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;

namespace plateau::ui {

class NumberEntry;
class Theme;

/// The single fields of a method draft: each is made with its row in a form and keeps one text of the draft.
class DraftFields : public QObject
{
    Q_OBJECT

public:
    using Member = std::function<QString &(MethodDraft &)>;

    DraftFields(const Theme &theme, QObject *parent);

    QLineEdit *addText(QFormLayout *form, const QString &label, const QString &objectName, Member member);
    NumberEntry *addNumber(QFormLayout *form, const QString &label, const QString &unit,
                           const QString &objectName, Member member);
    /// Two numbers in one row, from and to; the object names get "From" and "To" behind.
    void addInterval(QFormLayout *form, const QString &label, const QString &unit, const QString &objectName,
                     const Member &from, const Member &to);
    QPlainTextEdit *addProse(QFormLayout *form, const QString &label, int lines, const QString &objectName,
                             Member member);
    QComboBox *addChoice(QFormLayout *form, const QString &label, const std::vector<CellChoice> &choices,
                         const QString &objectName, Member member);

    void load(MethodDraft &draft);
    /// A field that was not touched gives back what was loaded, even where it cannot show it as it is (a
    /// no-break space in a text, a line feed in a line).
    void store(MethodDraft &draft) const;

Q_SIGNALS:
    void edited();

private:
    struct Binding {
        std::function<void(const QString &)> show;
        std::function<QString()> typed;
        Member member;
        QString loaded = {};
        QString shownAs = {};
    };
    NumberEntry *bindNumber(NumberEntry *entry, Member member);

    const Theme &m_theme;
    std::vector<Binding> m_bindings;
};

/// A form that fills the width, in the order of its rows.
QFormLayout *newForm(QWidget *host);

} // namespace plateau::ui
