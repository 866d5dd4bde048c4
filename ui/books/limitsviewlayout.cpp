// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/localday.h"
#include "ui/books/limitsview.h"
#include "ui/books/limitswords.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using namespace evaluation;

namespace {

template <class Value> void offer(QComboBox *box, Value value, const QString &words)
{
    box->addItem(words, static_cast<int>(value));
}

} // namespace

LimitsView::LimitsView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_notice(new Notice(theme, this))
{
    QWidget *form = buildForm();
    QWidget *side = buildSide();
    QWidget *header = buildHeader(); // last: Tab comes to the fields first
    auto *body = new QHBoxLayout;
    body->setSpacing(theme.wideGap());
    body->addWidget(form, 3);
    body->addWidget(side, 2);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(header);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    auto *keys = new QShortcut(QKeySequence(QKeySequence::Save), this);
    keys->setContext(Qt::WidgetWithChildrenShortcut);
    connect(keys, &QShortcut::activated, this, &LimitsView::save);
    m_loading = false;
}

QWidget *LimitsView::buildHeader()
{
    auto *header = new QWidget(this);
    m_heading = plainLabel({}, header);
    m_heading->setFont(m_theme.large());
    m_heading->setObjectName(u"limitHeading"_s);
    auto *back = button(m_theme, tr("Back to the list  Esc"), u"backToLimits"_s, header);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addWidget(m_heading, 1);
    layout->addWidget(back);
    connect(back, &QPushButton::clicked, this, &LimitsView::leave);
    return header;
}

QComboBox *LimitsView::addBox(const QString &caption, const QString &objectName, bool typed)
{
    auto *box = new QComboBox(m_form->parentWidget());
    box->setMinimumHeight(m_theme.target());
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(24);
    if (typed) {
        box->setEditable(true);
        box->setInsertPolicy(QComboBox::NoInsert);
        box->completer()->setFilterMode(Qt::MatchContains);
        box->completer()->setCompletionMode(QCompleter::PopupCompletion);
    }
    addFormRow(m_form, caption, box, objectName);
    connect(box, &QComboBox::currentTextChanged, this, &LimitsView::onEdited);
    return box;
}

QLineEdit *LimitsView::addLine(const QString &caption, const QString &objectName)
{
    auto *line = new QLineEdit(m_form->parentWidget());
    line->setMinimumHeight(m_theme.target());
    addFormRow(m_form, caption, line, objectName);
    connect(line, &QLineEdit::textChanged, this, &LimitsView::onEdited);
    return line;
}

NumberField *LimitsView::addNumber(const QString &caption, const QString &objectName)
{
    auto *field = new NumberField(m_theme, {}, m_form->parentWidget());
    addFormRow(m_form, caption, field, objectName);
    connect(field->entry(), &NumberEntry::judged, this, &LimitsView::onEdited);
    return field;
}

QWidget *LimitsView::buildForm()
{
    auto *host = new QWidget(this);
    auto *rows = new QWidget(host);
    m_form = new QFormLayout(rows);
    m_form->setContentsMargins({});
    m_form->setVerticalSpacing(m_theme.gap());
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_product = addBox(tr("Produc&t"), u"limitProduct"_s, true);
    m_product->setToolTip(tr("As it is called where samples are registered."));
    m_measurand = addBox(tr("&Measurand"), u"limitMeasurand"_s, true);
    m_kind = addBox(tr("&Kind"), u"limitKind"_s, false);
    for (const LimitKind kind :
         {LimitKind::Maximum, LimitKind::Minimum, LimitKind::Range, LimitKind::LabelThreshold})
        offer(m_kind, kind, limitKindText(kind));
    m_lower = addNumber(tr("&Lower limit"), u"limitLower"_s);
    m_upper = addNumber(tr("&Upper limit"), u"limitUpper"_s);
    m_unit = addBox(tr("Un&it"), u"limitUnit"_s, false);
    for (const ReportUnit unit : reportUnits())
        offer(m_unit, unit, reportUnitWord(unit));
    m_source = new QPlainTextEdit(rows);
    m_source->setTabChangesFocus(true);
    m_source->setFixedHeight(m_source->fontMetrics().lineSpacing() * 3 + 12);
    addFormRow(m_form, tr("Sour&ce"), m_source, u"limitSource"_s);
    m_source->setToolTip(tr("Where the limit stands: specification, contract, regulation with its article."));
    connect(m_source, &QPlainTextEdit::textChanged, this, &LimitsView::onEdited);
    m_date = addLine(tr("&As of"), u"limitDate"_s);
    m_date->setToolTip(tr("The date of the source, or the day it was read, as %1.").arg(assay::shownDay({2026, 12, 31})));
    buildRule(rows);
    // What room is left stands below the rows, not between them.
    auto *layout = new QVBoxLayout(host);
    layout->setContentsMargins({});
    layout->addWidget(rows);
    layout->addStretch(1);
    return host;
}

void LimitsView::buildRule(QWidget *host)
{
    m_rule = addBox(tr("D&ecision rule"), u"limitRule"_s, false);
    for (const DecisionRule rule : {DecisionRule::SimpleAcceptance, DecisionRule::GuardedAcceptance,
                                    DecisionRule::GuardedRejection, DecisionRule::GuardedBoth})
        offer(m_rule, rule, decisionRuleName(rule));
    m_meaning = plainLabel({}, host);
    m_meaning->setObjectName(u"limitRuleMeaning"_s);
    m_meaning->setWordWrap(true);
    m_form->addRow(QString(), m_meaning);
    m_guard = addBox(tr("Guar&d band"), u"limitGuard"_s, false);
    for (const GuardBand::Kind kind :
         {GuardBand::Kind::OneSided95, GuardBand::Kind::ExpandedUncertainty, GuardBand::Kind::Absolute})
        offer(m_guard, kind, guardBandText(kind));
    m_guardSize = addNumber(tr("Its si&ze"), u"limitGuardSize"_s);
}

QWidget *LimitsView::buildSide()
{
    auto *side = new QWidget(this);
    m_summary = plainLabel({}, side);
    m_summary->setObjectName(u"limitSummary"_s);
    m_summary->setWordWrap(true);
    m_problems = new ProblemList(m_theme, u"limitProblems"_s, side);
    m_reason = new QLineEdit(side);
    m_reason->setObjectName(u"limitReason"_s);
    m_reason->setMinimumHeight(m_theme.target());
    auto *caption = new QLabel(tr("&Reason for the change"), side);
    caption->setBuddy(m_reason);
    auto *keep = button(m_theme, tr("&Save"), u"saveLimit"_s, side);
    m_remove = button(m_theme, tr("Remove"), u"removeLimit"_s, side);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(keep);
    buttons->addWidget(m_remove);
    buttons->addStretch(1);
    auto *layout = new QVBoxLayout(side);
    layout->setContentsMargins({});
    layout->addWidget(m_summary);
    layout->addWidget(m_problems, 1);
    layout->addWidget(caption);
    layout->addWidget(m_reason);
    layout->addLayout(buttons);
    layout->addStretch(1);
    connect(m_problems, &QListView::activated, this,
            [this](const QModelIndex &index) { goToProblem(index.row()); });
    connect(m_reason, &QLineEdit::returnPressed, this, &LimitsView::save);
    connect(keep, &QPushButton::clicked, this, &LimitsView::save);
    connect(m_remove, &QPushButton::clicked, this, &LimitsView::remove);
    return side;
}

} // namespace plateau::ui
