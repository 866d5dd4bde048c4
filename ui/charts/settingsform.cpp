// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/settingsform.h"

#include "core/assay/localday.h"
#include "core/charts/chartwords.h"
#include "core/evaluation/format.h"
#include "ui/shared/dayexample.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using charts::ConstantsFrom;
using charts::EarlierRuns;
using charts::FixedLimits;
using charts::Kind;

namespace {

template <class Value> void offer(QComboBox *box, Value value, const QString &words)
{
    box->addItem(words, static_cast<int>(value));
}

template <class Value> void choose(QComboBox *box, Value value)
{
    box->setCurrentIndex(std::max(0, box->findData(static_cast<int>(value))));
}

QComboBox *narrowBox(QWidget *parent)
{
    auto *box = new QComboBox(parent);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(12);
    return box;
}

enum class From { Earlier, Fixed };

/// As high as its rules: the page around it scrolls, and nothing within that.
class RuleList : public QListWidget
{
public:
    explicit RuleList(QWidget *parent)
        : QListWidget(parent)
    {
        setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    }

protected:
    void updateGeometries() override
    {
        QListWidget::updateGeometries();
        const int high = contentsSize().height() + 2 * frameWidth();
        if (contentsSize().height() > 0 && minimumHeight() != high)
            setFixedHeight(high);
    }
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override
    {
        QListWidget::currentChanged(current, previous);
        for (QWidget *around = parentWidget(); around && isVisible(); around = around->parentWidget()) {
            auto *page = qobject_cast<QScrollArea *>(around);
            if (!page)
                continue;
            const QRect rule = visualRect(current);
            const QPoint middle = viewport()->mapTo(page->widget(), rule.center());
            page->ensureVisible(middle.x(), middle.y(), 0, rule.height());
            return;
        }
    }
};

} // namespace

SettingsForm::SettingsForm(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_kind(narrowBox(this))
    , m_basis(narrowBox(this))
    , m_constants(narrowBox(this))
    , m_earlier(new QGroupBox(tr("Earlier runs"), this))
    , m_values(new NumberField(theme, tr("values"), this))
    , m_spread(narrowBox(this))
    , m_fewest(plainLabel({}, this))
    , m_begin(plainLabel({}, this))
    , m_beginHere(button(theme, tr("Begin at the chosen point"), u"chartBeginHere"_s, this))
    , m_beginFirst(button(theme, tr("Begin at the first run"), u"chartBeginFirst"_s, this))
    , m_fixed(new QGroupBox(tr("Fixed by the laboratory"), this))
    , m_centre(new NumberField(theme, {}, this))
    , m_deviation(new NumberField(theme, {}, this))
    , m_source(new QLineEdit(this))
    , m_date(new QLineEdit(this))
    , m_form(new QFormLayout)
    , m_rules(new RuleList(this))
    , m_rulesTitle(plainLabel(tr("Out of control if"), this))
    , m_origin(plainLabel({}, this))
{
    buildKind(theme, m_form);
    buildEarlier(theme);
    buildFixed(theme);
    buildRules();
    QPushButton *save = button(theme, tr("Save these settings"), u"chartSave"_s, this);
    m_origin->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.gap(), theme.gap(), theme.gap(), theme.gap()); // the tab draws a frame around it
    layout->setSpacing(theme.gap());
    layout->addLayout(m_form);
    layout->addWidget(m_earlier);
    layout->addWidget(m_fixed);
    layout->addWidget(m_rulesTitle);
    layout->addWidget(m_rules);
    layout->addWidget(save);
    layout->addWidget(m_origin);
    layout->addStretch(1);
    connect(save, &QPushButton::clicked, this, &SettingsForm::saveWanted);
    connect(m_beginHere, &QPushButton::clicked, this, &SettingsForm::beginWanted);
    connect(m_beginFirst, &QPushButton::clicked, this, [this] { setFirstRun(0); });
}

void SettingsForm::buildKind(const Theme &theme, QFormLayout *form)
{
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addFormRow(form, tr("&Kind of chart"), m_kind, u"chartKind"_s);
    addFormRow(form, tr("Limit&s"), m_basis, u"chartBasis"_s);
    offer(m_basis, From::Earlier, tr("from earlier runs"));
    offer(m_basis, From::Fixed, tr("fixed by the laboratory"));
    const auto number = [&](const QString &place, const QString &caption, const QString &unit,
                            const QString &objectName) {
        auto *field = new NumberField(theme, unit, this);
        addFormRow(form, caption, field, objectName);
        m_numbers[place] = field;
        connect(field->entry(), &NumberEntry::judged, this, &SettingsForm::onChange);
    };
    number(u"subgroup"_s, tr("Values of a subgroup"), {}, u"chartSubgroup"_s);
    number(u"lambda"_s, tr("Weight of the newest value"), {}, u"chartLambda"_s);
    number(u"width"_s, tr("Width of the limits"), u"s"_s, u"chartWidth"_s);
    number(u"k"_s, tr("Reference value k"), u"s"_s, u"chartK"_s);
    number(u"h"_s, tr("Decision limit h"), u"s"_s, u"chartH"_s);
    offer(m_constants, ConstantsFrom::Computed, tr("computed"));
    offer(m_constants, ConstantsFrom::PrintedTable, tr("from the printed table (three decimals)"));
    addFormRow(form, tr("Factors"), m_constants, u"chartConstants"_s);
    for (QComboBox *box : {m_kind, m_basis, m_constants})
        connect(box, &QComboBox::currentIndexChanged, this, &SettingsForm::onChange);
}

void SettingsForm::buildEarlier(const Theme &theme)
{
    auto *form = new QFormLayout(m_earlier);
    form->setSpacing(theme.gap());
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addFormRow(form, tr("Number"), m_values, u"chartValues"_s);
    m_fewest->setObjectName(u"chartFewest"_s);
    m_fewest->setWordWrap(true);
    form->addRow(m_fewest);
    offer(m_spread, quality::SpreadFrom::MovingRange, tr("from the moving range"));
    offer(m_spread, quality::SpreadFrom::StandardDeviation, tr("from all values"));
    addFormRow(form, tr("Scatter"), m_spread, u"chartSpread"_s);
    m_begin->setWordWrap(true);
    form->addRow(m_begin);
    form->addRow(m_beginHere);
    form->addRow(m_beginFirst);
    connect(m_values->entry(), &NumberEntry::judged, this, &SettingsForm::onChange);
    connect(m_spread, &QComboBox::currentIndexChanged, this, &SettingsForm::onChange);
}

void SettingsForm::buildFixed(const Theme &theme)
{
    auto *form = new QFormLayout(m_fixed);
    form->setSpacing(theme.gap());
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addFormRow(form, tr("Centre"), m_centre, u"chartCentre"_s);
    addFormRow(form, tr("Standard deviation"), m_deviation, u"chartDeviation"_s);
    addFormRow(form, tr("Source"), m_source, u"chartSource"_s);
    addFormRow(form, tr("As of"), m_date, u"chartDate"_s);
    showDayExample(*m_date);
    for (const NumberField *field : {m_centre, m_deviation})
        connect(field->entry(), &NumberEntry::judged, this, &SettingsForm::onChange);
    for (const QLineEdit *field : {m_source, m_date})
        connect(field, &QLineEdit::textChanged, this, &SettingsForm::onChange);
}

void SettingsForm::buildRules()
{
    m_rules->setObjectName(u"chartRules"_s);
    m_rules->setAccessibleName(tr("What is out of control"));
    m_rules->setTabKeyNavigation(false);
    // A rule takes a second line rather than being cut.
    m_rules->setWordWrap(true);
    m_rules->setResizeMode(QListView::Adjust);
    m_rules->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const quality::RunRule rule : quality::allRunRules()) {
        auto *item = new QListWidgetItem(evaluation::capitalised(charts::ruleName(rule)), m_rules);
        item->setData(Qt::UserRole, static_cast<int>(rule));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(Qt::Unchecked);
        item->setToolTip(tipText(item->text()));
    }
    connect(m_rules, &QListWidget::itemChanged, this, &SettingsForm::onChange);
}

void SettingsForm::setSettings(charts::Quantity quantity, const charts::Settings &settings)
{
    m_isLoading = true;
    m_kind->clear();
    for (const Kind kind : charts::kindsFor(quantity))
        offer(m_kind, kind, evaluation::capitalised(charts::kindName(kind)));
    choose(m_kind, settings.kind);
    choose(m_constants, settings.constants);
    const auto *fixed = std::get_if<FixedLimits>(&settings.limits);
    const auto *earlier = std::get_if<EarlierRuns>(&settings.limits);
    choose(m_basis, fixed ? From::Fixed : From::Earlier);
    const EarlierRuns runs = earlier ? *earlier : EarlierRuns{};
    m_values->entry()->setValue(runs.values);
    choose(m_spread, runs.spread);
    m_firstRun = runs.firstRun;
    m_centre->entry()->clear();
    m_deviation->entry()->clear();
    if (fixed) {
        m_centre->entry()->setValue(fixed->centre);
        m_deviation->entry()->setValue(fixed->deviation);
    }
    m_source->setText(fixed ? fixed->source : QString());
    m_date->setText(fixed ? assay::shownDay(fixed->date) : QString());
    m_numbers[u"subgroup"_s]->entry()->setValue(settings.subgroup);
    m_numbers[u"lambda"_s]->entry()->setValue(settings.lambda);
    m_numbers[u"width"_s]->entry()->setValue(settings.width);
    m_numbers[u"k"_s]->entry()->setValue(settings.k);
    m_numbers[u"h"_s]->entry()->setValue(settings.h);
    for (int row = 0; row < m_rules->count(); ++row) {
        QListWidgetItem *item = m_rules->item(row);
        const auto rule = static_cast<quality::RunRule>(item->data(Qt::UserRole).toInt());
        item->setCheckState(settings.rules.contains(rule) ? Qt::Checked : Qt::Unchecked);
    }
    sayFirstRun();
    showWhatApplies();
    m_isLoading = false;
}

void SettingsForm::setFirstRun(qint64 run)
{
    m_firstRun = run;
    sayFirstRun();
    Q_EMIT changed();
}

void SettingsForm::sayFirstRun()
{
    m_begin->setText(m_firstRun == 0 ? tr("From the first run of the series onwards.")
                                     : tr("From run %1 onwards.").arg(m_firstRun));
    m_beginFirst->setEnabled(m_firstRun != 0);
}

/// Of what is typed: of means it depends on the subgroup.
void SettingsForm::sayFewest()
{
    charts::Settings typed;
    typed.kind = static_cast<Kind>(m_kind->currentData().toInt());
    const double subgroup = m_numbers.at(u"subgroup"_s)->entry()->value().value_or(typed.subgroup);
    typed.subgroup = static_cast<int>(std::clamp(subgroup, 2.0, double(quality::largestSubgroup)));
    m_fewest->setText(tr("At least %1. With fewer than %2 the limits are provisional.")
                          .arg(charts::valuesForLimits(typed))
                          .arg(charts::valuesForVerdict(typed)));
    m_values->entry()->setAccessibleDescription(m_fewest->text());
}

void SettingsForm::setOrigin(const QString &sentence)
{
    m_origin->setText(sentence);
}

void SettingsForm::showWhatApplies()
{
    const auto kind = static_cast<Kind>(m_kind->currentData().toInt());
    const bool isTrend = kind == Kind::Trend;
    const bool isFixed = static_cast<From>(m_basis->currentData().toInt()) == From::Fixed;
    const auto show = [this](QWidget *field, bool isShown) {
        field->setVisible(isShown);
        if (QWidget *label = m_form->labelForField(field))
            label->setVisible(isShown);
    };
    show(m_basis, !isTrend);
    show(m_constants, !isTrend);
    show(m_numbers[u"subgroup"_s], kind == Kind::MeanAndRange);
    for (const QString &place : QStringList{u"lambda"_s, u"width"_s})
        show(m_numbers[place], kind == Kind::WeightedAverage);
    for (const QString &place : QStringList{u"k"_s, u"h"_s})
        show(m_numbers[place], kind == Kind::CumulativeSum);
    m_earlier->setVisible(!isTrend && !isFixed);
    m_fixed->setVisible(!isTrend && isFixed);
    m_spread->setEnabled(kind != Kind::MeanAndRange && kind != Kind::Ranges);
    const bool hasRules = kind == Kind::Individuals || kind == Kind::MeanAndRange || kind == Kind::Ranges;
    m_rules->setVisible(hasRules);
    m_rulesTitle->setVisible(hasRules);
    sayFewest();
    // Of ranges a centre would be nothing to hold them against.
    m_centre->setEnabled(kind != Kind::Ranges);
}

void SettingsForm::onChange()
{
    if (m_isLoading)
        return;
    showWhatApplies();
    Q_EMIT changed();
}

charts::Settings SettingsForm::read(assay::Problems &problems) const
{
    const auto number = [&](const NumberField *field, const QString &place) {
        if (const auto value = field->entry()->value())
            return *value;
        problems.push_back(assay::error(
            place, tr("%1: a number is missing or cannot be read.").arg(field->entry()->accessibleName())));
        return 0.0;
    };
    const auto whole = [&](const NumberField *field, const QString &place) {
        const double value = number(field, place);
        if (value == std::floor(value) && std::abs(value) <= charts::mostValues)
            return static_cast<int>(value);
        problems.push_back(
            assay::error(place, tr("%1: a whole number is needed.").arg(field->entry()->accessibleName())));
        return 0;
    };
    charts::Settings settings;
    settings.kind = static_cast<Kind>(m_kind->currentData().toInt());
    settings.constants = static_cast<ConstantsFrom>(m_constants->currentData().toInt());
    if (static_cast<From>(m_basis->currentData().toInt()) == From::Fixed && settings.kind != Kind::Trend)
        settings.limits = FixedLimits{settings.kind == Kind::Ranges ? 0 : number(m_centre, u"centre"_s),
                                      number(m_deviation, u"deviation"_s), m_source->text().trimmed(),
                                      assay::readDay(m_date->text()).value_or(QDate())};
    else
        settings.limits = EarlierRuns{m_firstRun, whole(m_values, u"values"_s),
                                      static_cast<quality::SpreadFrom>(m_spread->currentData().toInt())};
    settings.subgroup = whole(m_numbers.at(u"subgroup"_s), u"subgroup"_s);
    settings.lambda = number(m_numbers.at(u"lambda"_s), u"lambda"_s);
    settings.width = number(m_numbers.at(u"width"_s), u"width"_s);
    settings.k = number(m_numbers.at(u"k"_s), u"k"_s);
    settings.h = number(m_numbers.at(u"h"_s), u"h"_s);
    settings.rules.clear();
    for (int row = 0; row < m_rules->count(); ++row) {
        if (m_rules->item(row)->checkState() == Qt::Checked)
            settings.rules.insert(
                static_cast<quality::RunRule>(m_rules->item(row)->data(Qt::UserRole).toInt()));
    }
    for (const assay::Problem &problem : charts::problemsOf(settings))
        problems.push_back(problem);
    return settings;
}

std::optional<charts::Settings> SettingsForm::settings() const
{
    assay::Problems problems;
    const charts::Settings settings = read(problems);
    return problems.empty() ? std::optional(settings) : std::nullopt;
}

QString SettingsForm::fault() const
{
    assay::Problems problems;
    read(problems);
    return problems.empty() ? QString() : problems.front().message;
}

} // namespace plateau::ui
