// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/labelsheetdialog.h"

#include "core/evaluation/format.h"
#include "ui/bench/labelsheetpicture.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr double mostLabels = 1000; // across, along or counted: more are on no sheet

double valueOf(const NumberField *field)
{
    return field->entry()->value().value_or(std::nan(""));
}

} // namespace

LabelSheetDialog::LabelSheetDialog(const Theme &theme, int labels, const LabelChoice &choice, QWidget *parent)
    : QDialog(parent)
    , m_theme(theme)
    , m_paper(new QComboBox(this))
    , m_by(new QLineEdit(this))
    , m_picture(new LabelSheetPicture(theme, labels, this))
    , m_words(plainLabel({}, this))
    , m_fault(new Notice(theme, this))
    , m_usual(button(theme, tr("&Usual sheet"), u"usualLabels"_s, this))
    , m_save(button(theme, tr("&Save as PDF…"), u"saveLabels"_s, this))
    , m_shownPaper(choice.sheet.paper)
{
    setObjectName(u"labelSheet"_s);
    setHelp(*this, {u"reports"_s, {}});
    setWindowTitle(tr("Labels as PDF"));
    m_words->setObjectName(u"labelSheetWords"_s);
    m_words->setWordWrap(true);
    auto *sheet = new QVBoxLayout;
    sheet->addWidget(m_picture, 1);
    sheet->addWidget(m_words);
    auto *sides = new QHBoxLayout;
    sides->setSpacing(theme.wideGap());
    sides->addLayout(buildForm());
    sides->addLayout(sheet, 1);
    // The form must not jump under the hand whenever a sentence comes or goes.
    QSizePolicy kept = m_fault->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    m_fault->setSizePolicy(kept);
    auto *layout = new QVBoxLayout(this);
    layout->addWidget(scrolled(sides, this), 1);
    layout->addWidget(m_fault);
    layout->addLayout(buildButtons());
    m_paper->setCurrentIndex(choice.sheet.paper == Paper::A4 ? 0 : 1);
    fillIn(choice.sheet);
    m_fields[FirstFree]->entry()->setValue(choice.firstFree);
    m_by->setText(choice.by);
    connect(m_paper, &QComboBox::currentIndexChanged, this, &LabelSheetDialog::takePaper);
    for (const NumberField *field : m_fields)
        connect(field->entry(), &NumberEntry::judged, this, &LabelSheetDialog::judge);
    judge();
    // The words below the picture wrap, and are counted as one line.
    resizeOnScreen(*this, sizeHint() + QSize(fontMetrics().averageCharWidth() * 14, fontMetrics().height() * 3));
}

QFormLayout *LabelSheetDialog::buildForm()
{
    m_paper->addItem(tr("A4, 210 × 297 mm"));
    m_paper->addItem(tr("Letter, 8.5 × 11 inch"));
    m_paper->setMinimumWidth(fontMetrics().averageCharWidth() * 30); // a number with its reply needs as much
    for (QWidget *field : std::initializer_list<QWidget *>{m_paper, m_by})
        field->setMinimumHeight(m_theme.target());
    auto *form = new QFormLayout;
    addFormRow(form, tr("&Paper"), m_paper, u"labelPaper"_s);
    const auto add = [&](Field field, const QString &label, const QString &unit, const QString &name) {
        m_fields[field] = new NumberField(m_theme, unit, this);
        m_fields[field]->setOneLine(); // what is wrong is said below the form
        addFormRow(form, label, m_fields[field], name);
    };
    const QString mm = tr("mm");
    add(Columns, tr("&Columns"), {}, u"labelColumns"_s);
    add(Rows, tr("&Rows"), {}, u"labelRows"_s);
    add(Width, tr("&Width of a label"), mm, u"labelWidth"_s);
    add(Height, tr("&Height of a label"), mm, u"labelHeight"_s);
    add(Left, tr("&Left margin"), mm, u"labelLeft"_s);
    add(Top, tr("&Top margin"), mm, u"labelTop"_s);
    add(ColumnGap, tr("Gap &between columns"), mm, u"labelColumnGap"_s);
    add(RowGap, tr("&Gap between rows"), mm, u"labelRowGap"_s);
    add(FirstFree, tr("&First free label"), {}, u"labelFirstFree"_s);
    addFormRow(form, tr("&Made by"), m_by, u"labelBy"_s);
    m_by->setPlaceholderText(tr("a line to write on"));
    return form;
}

QBoxLayout *LabelSheetDialog::buildButtons()
{
    auto *cancel = button(m_theme, tr("Cancel"), u"cancelLabels"_s, this);
    m_save->setDefault(true);
    auto *row = new QHBoxLayout;
    row->addWidget(m_usual);
    row->addStretch(1);
    row->addWidget(cancel);
    row->addWidget(m_save);
    connect(m_usual, &QPushButton::clicked, this, [this] { fillIn(usualLabels(m_shownPaper)); });
    connect(m_save, &QPushButton::clicked, this, &LabelSheetDialog::accept);
    connect(cancel, &QPushButton::clicked, this, &LabelSheetDialog::reject);
    return row;
}

void LabelSheetDialog::fillIn(const LabelSheet &sheet)
{
    m_fields[Columns]->entry()->setValue(sheet.columns);
    m_fields[Rows]->entry()->setValue(sheet.rows);
    m_fields[Width]->entry()->setValue(sheet.width_mm);
    m_fields[Height]->entry()->setValue(sheet.height_mm);
    m_fields[Left]->entry()->setValue(sheet.left_mm);
    m_fields[Top]->entry()->setValue(sheet.top_mm);
    m_fields[ColumnGap]->entry()->setValue(sheet.columnGap_mm);
    m_fields[RowGap]->entry()->setValue(sheet.rowGap_mm);
}

void LabelSheetDialog::takePaper()
{
    const Paper before = m_shownPaper;
    m_shownPaper = m_paper->currentIndex() == 0 ? Paper::A4 : Paper::Letter;
    LabelSheet typed = choice().sheet;
    typed.paper = before;
    if (typed == usualLabels(before))
        fillIn(usualLabels(m_shownPaper));
    judge();
}

int LabelSheetDialog::count(Field field) const
{
    return faultOfField(field).isEmpty() ? static_cast<int>(valueOf(m_fields[field])) : 0;
}

LabelChoice LabelSheetDialog::choice() const
{
    LabelChoice choice;
    choice.sheet = {m_shownPaper,
                    count(Columns),
                    count(Rows),
                    valueOf(m_fields[Width]),
                    valueOf(m_fields[Height]),
                    valueOf(m_fields[Left]),
                    valueOf(m_fields[Top]),
                    valueOf(m_fields[ColumnGap]),
                    valueOf(m_fields[RowGap])};
    choice.firstFree = count(FirstFree);
    choice.by = m_by->text().simplified();
    return choice;
}

QString LabelSheetDialog::faultOfField(Field field) const
{
    const NumberEntry *entry = m_fields[field]->entry();
    const QString name = entry->accessibleName();
    if (entry->isBlank())
        return tr("%1: type a number.").arg(name);
    if (!entry->fault().isEmpty())
        return tr("%1: %2").arg(name, evaluation::afterColon(entry->fault()));
    const double value = *entry->value();
    const bool isCount = field == Columns || field == Rows || field == FirstFree;
    if (isCount && (value < 1 || value > mostLabels || value != std::floor(value)))
        return tr("%1: type a whole number from 1 to %2.").arg(name).arg(mostLabels);
    return {};
}

QString LabelSheetDialog::fault() const
{
    for (int field = 0; field < FieldCount; ++field) {
        if (const QString fault = faultOfField(static_cast<Field>(field)); !fault.isEmpty())
            return fault;
    }
    return faultOf(choice());
}

void LabelSheetDialog::judge()
{
    const QString sentence = fault();
    if (sentence.isEmpty())
        m_fault->clear();
    else
        m_fault->say(State::Bad, sentence);
    m_save->setEnabled(sentence.isEmpty());
    m_picture->showChoice(choice());
    m_words->setText(m_picture->words());
}

void LabelSheetDialog::accept()
{
    if (fault().isEmpty()) // however it was asked for
        QDialog::accept();
}

} // namespace plateau::ui
