// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/photometerform.h"

#include "ui/shared/dayexample.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/theme.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PhotometerForm::PhotometerForm(const Theme &theme, QWidget *parent)
    : LaboratorySection(
          theme, tr("Photometer"),
          tr("The photometer that the runs are read in. What its check records say of a reading and of "
             "the path length goes into the budgets; until then common practice does, and is said to. "
             "With all fields empty no photometer is kept."),
          parent)
    , m_name(new QLineEdit(this))
    , m_source(new QPlainTextEdit(this))
    , m_checkedOn(new QLineEdit(this))
{
    for (QLineEdit *edit : {m_name, m_checkedOn}) {
        edit->setMinimumHeight(theme.target());
        connect(edit, &QLineEdit::textChanged, this, &PhotometerForm::edited);
    }
    m_source->setTabChangesFocus(true);
    m_source->setFixedHeight(m_source->fontMetrics().lineSpacing() * 3 + 2 * m_source->frameWidth() +
                             static_cast<int>(2 * m_source->document()->documentMargin()));
    connect(m_source, &QPlainTextEdit::textChanged, this, &PhotometerForm::edited);
    m_checkedOn->setPlaceholderText(tr("%1; may stay empty").arg(dayExample()));
    QFormLayout *form = addForm();
    addField(form, tr("Name or number"), m_name, u"photometerName"_s);
    m_absorbance = addNumber(form, tr("u of one reading (k = 1)"), {}, u"photometerAbsorbance"_s);
    m_pathLength_percent =
        addNumber(form, tr("u of the path length (k = 1)"), tr("%"), u"photometerPathLength"_s);
    addField(form, tr("Check record that says so"), m_source, u"photometerSource"_s);
    addField(form, tr("Checked on"), m_checkedOn, u"photometerCheckedOn"_s);
    body()->addStretch(1);
    for (const auto &[before, after] :
         std::initializer_list<std::pair<QWidget *, QWidget *>>{{m_name, m_absorbance},
                                                                {m_absorbance, m_pathLength_percent},
                                                                {m_pathLength_percent, m_source},
                                                                {m_source, m_checkedOn}})
        setTabOrder(before, after);
}

void PhotometerForm::load(const LaboratoryDraft &draft)
{
    m_loaded = draft.photometer;
    m_name->setText(m_loaded.name);
    m_absorbance->setText(m_loaded.absorbance);
    m_pathLength_percent->setText(m_loaded.pathLength_percent);
    m_source->setPlainText(m_loaded.source);
    m_checkedOn->setText(m_loaded.checkedOn);
    m_shown = typed();
}

PhotometerDraft PhotometerForm::typed() const
{
    return {m_name->text(), m_absorbance->text(), m_pathLength_percent->text(), m_source->toPlainText(),
            m_checkedOn->text()};
}

void PhotometerForm::store(LaboratoryDraft &draft) const
{
    draft.photometer = typed();
    if (draft.photometer.source == m_shown.source)
        draft.photometer.source = m_loaded.source;
}

} // namespace plateau::ui
