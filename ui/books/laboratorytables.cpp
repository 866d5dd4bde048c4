// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratorytables.h"

#include "ui/books/cellstable.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QLabel>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using Kind = CellColumn::Kind;

CellColumn number(const QString &title, const QString &fullTitle)
{
    return {title, Kind::Number, {}, {}, fullTitle};
}

std::vector<CellChoice> unitChoices()
{
    std::vector<CellChoice> choices;
    for (const evaluation::ReportUnit unit : evaluation::reportUnits())
        choices.push_back({evaluation::reportUnitWord(unit), evaluation::reportUnitWord(unit)});
    return choices;
}

template <class Choices> std::vector<CellColumn> uncertaintyColumns(Choices methods)
{
    return {
        {MethodUncertaintiesForm::tr("Method"), Kind::Choice, std::move(methods)},
        number(MethodUncertaintiesForm::tr("A"), MethodUncertaintiesForm::tr("Absorbance of one reading")),
        number(MethodUncertaintiesForm::tr("ε %"), MethodUncertaintiesForm::tr("Absorptivity, in %")),
        number(MethodUncertaintiesForm::tr("path %"), MethodUncertaintiesForm::tr("Path length, in %")),
        number(MethodUncertaintiesForm::tr("V %"),
               MethodUncertaintiesForm::tr("Total volume of the tube, in %")),
        number(MethodUncertaintiesForm::tr("sample %"), MethodUncertaintiesForm::tr("Sample volume, in %")),
        number(MethodUncertaintiesForm::tr("dilution %"),
               MethodUncertaintiesForm::tr("Each dilution step, in %")),
        number(MethodUncertaintiesForm::tr("extract %"),
               MethodUncertaintiesForm::tr("Extract of a solid, in %")),
        {MethodUncertaintiesForm::tr("Source"), Kind::Text}};
}

} // namespace

MethodUncertaintiesForm::MethodUncertaintiesForm(const Theme &theme, QWidget *parent)
    : LaboratorySection(theme, tr("Uncertainties by method"),
                        tr("What your laboratory knows of one method, from its validation say. A number here "
                           "comes before the "
                           "photometer's and the glassware's, in every run by that method that is planned "
                           "from now on; an empty "
                           "cell leaves it to them. Standard uncertainties (k = 1); the source is needed. %1")
                            .arg(CellsTable::keysHint()),
                        parent)
    , m_rows(new CellsModel(theme, uncertaintyColumns([this](const CellRow &) { return m_choices.methods; }),
                            true, this))
{
    CellsTable *table = addTable(m_rows, tr("Uncertainties by method"), u"methodUncertainties"_s, 1);
    table->setFlexibleColumn(methodUncertainty::Source);
    table->setFlexibleMinimum(20);
    table->setLimit(26);
}

void MethodUncertaintiesForm::setChoices(const MethodChoices &choices)
{
    m_choices = choices;
    m_rows->touch();
}

void MethodUncertaintiesForm::load(const LaboratoryDraft &draft)
{
    m_rows->setRows(draft.methodUncertainties);
}

void MethodUncertaintiesForm::store(LaboratoryDraft &draft) const
{
    draft.methodUncertainties = m_rows->rows();
}

ReportUnitsForm::ReportUnitsForm(const Theme &theme, QWidget *parent)
    : LaboratorySection(theme, tr("Units of products"),
                        tr("The unit in which results are shown and reported. A row without a product holds for "
                           "every product. A row that names both comes first, then one that names the "
                           "measurand, then one that names the product. What stands in no row is reported in "
                           "g/L, for a solid in g/100 g. %1")
                            .arg(CellsTable::keysHint()),
                        parent)
    , m_rows(
          new CellsModel(theme,
                         {{tr("Product"), Kind::Text},
                          {tr("Measurand"), Kind::Choice,
                           [this](const CellRow &) {
                               std::vector<CellChoice> choices = m_choices.measurands;
                               choices.insert(choices.begin(), CellChoice{QString(), tr("every measurand")});
                               return choices;
                           }},
                          {tr("Unit"), Kind::Choice, [](const CellRow &) { return unitChoices(); }}},
                         true, this))
{
    addTable(m_rows, tr("Units of products"), u"reportUnits"_s, 1);
}

void ReportUnitsForm::setChoices(const MethodChoices &choices)
{
    m_choices = choices;
    m_rows->touch();
}

void ReportUnitsForm::load(const LaboratoryDraft &draft)
{
    m_rows->setRows(draft.reportUnits);
}

void ReportUnitsForm::store(LaboratoryDraft &draft) const
{
    draft.reportUnits = m_rows->rows();
}

ReviewRulesForm::ReviewRulesForm(const Theme &theme, QWidget *parent)
    : LaboratorySection(theme, tr("Review"),
                        tr("Who may decide on a run. The first rule holds once people are set up under "
                           "Books, People; the second one for typed names, too."),
                        parent)
    , m_reasons(new CellsModel(theme, {{tr("Reason"), Kind::Text}}, true, this))
{
    m_reviewerDecides =
        addRule(tr("A reviewer or the head decides; an analyst's signature does not"), u"reviewerDecides"_s);
    m_secondPersonReviews = addRule(
        tr("A second person reviews: nobody decides on a run that they worked on"), u"secondPersonReviews"_s);
    auto *caption =
        plainLabel(tr("Reasons offered where a sample or a run is rejected; another may be typed"), this);
    caption->setFont(theme.bold());
    caption->setWordWrap(true);
    body()->addWidget(caption);
    addTable(m_reasons, tr("Reasons for a rejection"), u"rejectionReasons"_s, 1);
    addSentence(CellsTable::keysHint());
}

QCheckBox *ReviewRulesForm::addRule(const QString &text, const QString &objectName)
{
    auto *box = new QCheckBox(text, this);
    box->setObjectName(objectName);
    box->setMinimumHeight(theme().target());
    body()->addWidget(box);
    connect(box, &QCheckBox::toggled, this, &ReviewRulesForm::edited);
    return box;
}

void ReviewRulesForm::load(const LaboratoryDraft &draft)
{
    m_reviewerDecides->setChecked(draft.reviewerDecides);
    m_secondPersonReviews->setChecked(draft.secondPersonReviews);
    m_reasons->setRows(draft.rejectionReasons);
}

void ReviewRulesForm::store(LaboratoryDraft &draft) const
{
    draft.reviewerDecides = m_reviewerDecides->isChecked();
    draft.secondPersonReviews = m_secondPersonReviews->isChecked();
    draft.rejectionReasons = m_reasons->rows();
}

} // namespace plateau::ui
