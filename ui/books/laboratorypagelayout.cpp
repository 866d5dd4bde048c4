// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/cellstable.h"
#include "ui/books/laboratorypage.h"
#include "ui/books/methodsections.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using Kind = CellColumn::Kind;

CellsModel *newPipettes(const Theme &theme, QObject *parent)
{
    return new CellsModel(
        theme,
        {{LaboratoryPage::tr("Pipette"), Kind::Text},
         {LaboratoryPage::tr("from mL"), Kind::Number, {}, {}, LaboratoryPage::tr("Smallest volume (mL)")},
         {LaboratoryPage::tr("to mL"), Kind::Number, {}, {}, LaboratoryPage::tr("Largest volume (mL)")},
         {LaboratoryPage::tr("in steps of mL"),
          Kind::Number,
          {},
          {},
          LaboratoryPage::tr("Step it can be set by (mL); empty for a pipette of one volume")},
         {LaboratoryPage::tr("u %"),
          Kind::Number,
          {},
          {},
          LaboratoryPage::tr("Relative standard uncertainty of a volume (k = 1), in %")}},
        true, parent);
}

CellsModel *newFlasks(const Theme &theme, QObject *parent)
{
    return new CellsModel(
        theme,
        {{LaboratoryPage::tr("Volumetric flask"), Kind::Text},
         {LaboratoryPage::tr("mL"), Kind::Number, {}, {}, LaboratoryPage::tr("Volume (mL)")},
         {LaboratoryPage::tr("u %"),
          Kind::Number,
          {},
          {},
          LaboratoryPage::tr("Relative standard uncertainty of the volume (k = 1), in %")}},
        true, parent);
}

} // namespace

LaboratoryPage::LaboratoryPage(const Theme &theme, const BenchSession &session, Stores &stores,
                               QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_session(session)
    , m_stores(stores)
    , m_pipettes(newPipettes(theme, this))
    , m_flasks(newFlasks(theme, this))
    , m_notice(new Notice(theme, this))
    , m_origin(new Notice(theme, this))
{
    m_origin->setObjectName(u"laboratoryOrigin"_s);
    QWidget *form = buildForm();
    QWidget *glass = buildGlass();
    QWidget *side = buildSide();
    QWidget *header = buildHeader(); // last, so that Save comes after the form
    auto *left = new QVBoxLayout;
    left->addWidget(form);
    left->addWidget(side, 1);
    auto *body = new QHBoxLayout;
    body->setSpacing(theme.wideGap());
    body->addLayout(left, 2);
    body->addWidget(glass, 3);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(header);
    layout->addWidget(m_origin);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    for (const CellsModel *model : {m_pipettes, m_flasks})
        connect(model, &CellsModel::edited, this, &LaboratoryPage::onEdited);
    connect(&session, &BenchSession::personChanged, this, &LaboratoryPage::dropAnsweredQuestion);
    auto *keys = new QShortcut(QKeySequence(QKeySequence::Save), this);
    keys->setContext(Qt::WidgetWithChildrenShortcut);
    connect(keys, &QShortcut::activated, this, &LaboratoryPage::save);
}

QWidget *LaboratoryPage::buildHeader()
{
    auto *header = new QWidget(this);
    auto *heading = plainLabel(tr("Laboratory"), header);
    heading->setFont(m_theme.large());
    auto *keep = button(m_theme, tr("&Save"), u"saveLaboratory"_s, header);
    m_dropChanges = button(m_theme, tr("&Drop the changes"), u"dropLaboratoryChanges"_s, header);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addWidget(heading, 1);
    layout->addWidget(keep);
    layout->addWidget(m_dropChanges);
    connect(keep, &QPushButton::clicked, this, &LaboratoryPage::save);
    connect(m_dropChanges, &QPushButton::clicked, this, [this] {
        m_notice->clear();
        reload();
        m_name->setFocus();
    });
    return header;
}

NumberEntry *LaboratoryPage::addNumber(QFormLayout *form, const QString &label, const QString &unit,
                                       const QString &objectName)
{
    auto *field = new NumberField(m_theme, unit, form->parentWidget());
    addFormRow(form, label, field, objectName);
    connect(field->entry(), &NumberEntry::judged, this, &LaboratoryPage::onEdited);
    return field->entry();
}

QWidget *LaboratoryPage::buildForm()
{
    auto *host = new QWidget(this);
    auto *form = new QFormLayout(host);
    form->setContentsMargins({});
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_name = new QLineEdit(host);
    m_name->setMinimumHeight(m_theme.target());
    addFormRow(form, tr("N&ame of the laboratory"), m_name, u"laboratoryName"_s);
    connect(m_name, &QLineEdit::textChanged, this, &LaboratoryPage::onEdited);
    m_rackRows = addNumber(form, tr("&Rows of a rack"), {}, u"rackRows"_s);
    m_rackColumns = addNumber(form, tr("&Columns of a rack"), {}, u"rackColumns"_s);
    m_addition_s = addNumber(form, tr("Time for an add&ition, each tube"), u"s"_s, u"additionTime"_s);
    m_mix_s = addNumber(form, tr("Time to &mix, each tube"), u"s"_s, u"mixTime"_s);
    m_reading_s = addNumber(form, tr("Time for a r&eading, each tube"), u"s"_s, u"readingTime"_s);
    m_overage_percent = addNumber(form, tr("Reagent be&yond the need"), u"%"_s, u"overage"_s);
    return host;
}

CellsTable *LaboratoryPage::addTable(CellsModel *model, const QString &title, const QString &objectName,
                                     int stretch, QWidget *parent)
{
    auto *caption = plainLabel(title, parent);
    caption->setFont(m_theme.bold());
    auto *table = new CellsTable(m_theme, model, title, objectName, parent);
    static_cast<QBoxLayout *>(parent->layout())->addWidget(caption);
    static_cast<QBoxLayout *>(parent->layout())->addWidget(table, stretch);
    return table;
}

QWidget *LaboratoryPage::buildGlass()
{
    auto *host = new QWidget(this);
    auto *layout = new QVBoxLayout(host);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    auto *keys =
        plainLabel(tr("Dilutions are planned with these. u: relative standard uncertainty (k = 1) of a "
                      "volume. %1")
                       .arg(CellsTable::keysHint()),
                   host);
    keys->setWordWrap(true);
    addTable(m_pipettes, tr("Pipettes"), u"pipettes"_s, 5, host);
    addTable(m_flasks, tr("Volumetric flasks"), u"flasks"_s, 4, host);
    layout->addWidget(keys);
    return host;
}

QWidget *LaboratoryPage::buildSide()
{
    auto *side = new QWidget(this);
    m_summary = plainLabel({}, side);
    m_summary->setObjectName(u"laboratorySummary"_s);
    m_summary->setWordWrap(true);
    m_problems = new ProblemList(m_theme, u"laboratoryProblems"_s, side);
    auto *layout = new QVBoxLayout(side);
    layout->setContentsMargins({});
    layout->addWidget(m_summary);
    layout->addWidget(m_problems, 1);
    layout->addStretch(0);
    connect(m_problems, &QListView::activated, this,
            [this](const QModelIndex &index) { goToProblem(index.row()); });
    return side;
}

} // namespace plateau::ui
