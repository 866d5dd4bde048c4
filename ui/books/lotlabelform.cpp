// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotlabelform.h"

#include "core/assay/label.h"
#include "core/assay/localday.h"
#include "ui/books/lotwords.h"
#include "ui/books/dayfield.h"
#include "ui/shared/proposals.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QLineEdit>
#include <QSignalBlocker>

using namespace Qt::StringLiterals;

namespace plateau::ui {

LotLabelForm::LotLabelForm(const Theme &theme, QFormLayout *form, const QString &objectName)
    : QObject(form->parentWidget())
    , m_form(form)
    , m_reagent(new QComboBox(form->parentWidget()))
{
    m_reagent->setEditable(true);
    m_reagent->setInsertPolicy(QComboBox::NoInsert);
    m_reagent->setMinimumHeight(theme.target());
    m_reagent->completer()->setFilterMode(Qt::MatchContains);
    m_reagent->completer()->setCompletionMode(QCompleter::PopupCompletion);
    m_reagent->lineEdit()->setMaxLength(static_cast<int>(assay::maxLabelLength));
    addFormRow(form, tr("&Reagent"), m_reagent, objectName + u"Reagent"_s);
    m_lot = addLine(theme, tr("&Lot"), objectName + u"Lot"_s);
    m_expires = new DayField(theme, form->parentWidget());
    addFormRow(form, tr("Use-by &date"), m_expires, objectName + u"Expires"_s);
    connect(m_expires->entry(), &QLineEdit::returnPressed, this, &LotLabelForm::returnPressed);
    connect(m_expires->entry(), &QLineEdit::textChanged, this, &LotLabelForm::edited);
    m_keeps_days = addLine(theme, tr("&Keeps once opened (days)"), objectName + u"Keeps"_s);
    m_dissolved_days = addLine(theme, tr("Keeps once d&issolved (days)"), objectName + u"KeepsDissolved"_s);
    m_dissolved_days->setToolTip(tr("For what comes dry; 0: on that day only. Empty where none is stated."));
    askForDissolved(false);
    m_expires->entry()->setToolTip(tr("As %1, or a month as %2. Empty where none is stated.")
                              .arg(assay::shownDay({2026, 12, 31}), assay::shownMonth({2026, 12, 31})));
    m_keeps_days->setToolTip(tr("Empty where none is stated."));
    connectEnter(m_reagent, this, [this] { Q_EMIT returnPressed(); }, [this] { focusLot(); });
    connect(m_reagent, &QComboBox::editTextChanged, this, &LotLabelForm::edited);
}

QLineEdit *LotLabelForm::addLine(const Theme &theme, const QString &caption, const QString &objectName)
{
    auto *line = new QLineEdit(m_form->parentWidget());
    line->setMinimumHeight(theme.target());
    addFormRow(m_form, caption, line, objectName);
    connect(line, &QLineEdit::returnPressed, this, &LotLabelForm::returnPressed);
    connect(line, &QLineEdit::textChanged, this, &LotLabelForm::edited);
    return line;
}

void LotLabelForm::setReagents(const QStringList &names)
{
    const QString typed = m_reagent->currentText();
    const QSignalBlocker quiet(m_reagent);
    m_reagent->clear();
    m_reagent->addItems(names);
    m_reagent->setEditText(typed);
    m_reagent->lineEdit()->setCursorPosition(0); // the beginning of a long name tells it apart
}

void LotLabelForm::setLabel(const notebook::LotLabel &label)
{
    m_reagent->setEditText(label.reagent);
    m_reagent->lineEdit()->setCursorPosition(0);
    m_lot->setText(label.lot);
    m_expires->entry()->setText(dayText(label.expires));
    m_keeps_days->setText(label.keepsOpened_days ? QString::number(*label.keepsOpened_days) : QString());
    m_dissolved_days->setText(label.keepsDissolved_days ? QString::number(*label.keepsDissolved_days)
                                                        : QString());
}

std::optional<notebook::LotLabel> LotLabelForm::label(QString &fault) const
{
    QWidget *where = nullptr;
    const auto read = readLabel(fault, where);
    if (where)
        where->setFocus();
    return read;
}

QString LotLabelForm::fault() const
{
    QString fault;
    QWidget *where = nullptr;
    readLabel(fault, where);
    return fault;
}

std::optional<notebook::LotLabel> LotLabelForm::readLabel(QString &fault, QWidget *&where) const
{
    notebook::LotLabel label;
    label.reagent = m_reagent->currentText().simplified();
    label.lot = m_lot->text().simplified();
    const auto refuse = [&](QWidget *field, const QString &sentence) {
        fault = sentence;
        where = field;
        return std::nullopt;
    };
    if (label.reagent.isEmpty())
        return refuse(m_reagent, tr("Say which reagent it is, by the name that the methods use."));
    if (label.lot.isEmpty())
        return refuse(m_lot, tr("Say which lot it is, as it stands on the label; for water or a buffer of "
                                "your own the day it was made will do."));
    if (const QString typed = m_expires->entry()->text(); !typed.trimmed().isEmpty()) {
        const auto day = parseDay(typed);
        if (std::holds_alternative<DayFault>(day))
            return refuse(m_expires, tr("Use-by date: %1").arg(dayFaultSentence(std::get<DayFault>(day))));
        label.expires = std::get<QDate>(day);
    }
    if (const QString typed = m_keeps_days->text().trimmed(); !typed.isEmpty()) {
        bool whole = false;
        const int days = typed.toInt(&whole);
        if (!whole || days < 1)
            return refuse(
                m_keeps_days,
                tr("Keeps once opened: give whole days, 1 or more, or nothing where none is stated."));
        label.keepsOpened_days = days;
    }
    if (const QString typed = m_dissolved_days->text().trimmed(); m_asksForDissolved && !typed.isEmpty()) {
        bool whole = false;
        const int days = typed.toInt(&whole);
        if (!whole || days < 0)
            return refuse(m_dissolved_days, tr("Keeps once dissolved: give whole days, 0 for that day only, "
                                               "or nothing where none is stated."));
        label.keepsDissolved_days = days;
    }
    return label;
}

void LotLabelForm::setVisible(bool visible)
{
    m_isVisible = visible;
    for (QWidget *field : std::initializer_list<QWidget *>{m_reagent, m_lot, m_expires, m_keeps_days})
        showRow(*m_form, field, visible);
    askForDissolved(m_asksForDissolved);
}

void LotLabelForm::askForDissolved(bool asked)
{
    m_asksForDissolved = asked;
    showRow(*m_form, m_dissolved_days, asked && m_isVisible);
}

void LotLabelForm::takeFocus()
{
    m_reagent->setFocus();
    m_reagent->lineEdit()->selectAll(); // another reagent is typed over it
}

void LotLabelForm::focusLot()
{
    m_lot->setFocus();
    m_lot->selectAll();
}

} // namespace plateau::ui
