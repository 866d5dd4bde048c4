// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/subjectform.h"

#include "core/assay/localday.h"
#include "core/charts/chartwords.h"
#include "core/evaluation/format.h"
#include "ui/charts/chartsource.h"
#include "ui/shared/dayexample.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include <algorithm>
#include <array>
#include <iterator>
#include <set>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Between a component and its lot, in what a choice stands for: no name holds it.
constexpr QChar between(u'\t');

/// A long name is cut in the box and whole in its list and tip.
void tellWhole(QComboBox *box)
{
    box->setToolTip(tipText(box->currentText()));
}

/// Fills the box and keeps what was chosen where it is still there; else the one asked for.
void fill(QComboBox *box, const std::vector<std::pair<QString, QString>> &choices,
          const QString &otherwise = {})
{
    const QSignalBlocker blocker(box);
    const QVariant former = box->currentData();
    box->clear();
    for (const auto &[words, value] : choices)
        box->addItem(words, value);
    const int kept = box->findData(former);
    box->setCurrentIndex(std::max(0, kept >= 0 ? kept : box->findData(otherwise)));
    box->setEnabled(box->count() > 1);
    tellWhole(box);
}

QComboBox *box(const QString &objectName, QWidget *parent)
{
    auto *made = new QComboBox(parent);
    made->setObjectName(objectName);
    made->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    made->setMinimumContentsLength(10);
    QObject::connect(made, &QComboBox::currentTextChanged, made, [made] { tellWhole(made); });
    return made;
}

/// Of the width: what a chart is of, and in what it was measured, have the longest words, then the method. The third
/// column's boxes reach over the check box that stands beside the last of them.
constexpr std::array shares{15, 10, 5};

void add(QGridLayout *grid, int row, int column, const QString &caption, QWidget *field, QWidget *parent,
         int columns = 1)
{
    QLabel *label = new QLabel(caption, parent);
    label->setBuddy(field);
    field->setAccessibleName(QString(caption).remove(u'&'));
    grid->addWidget(label, row, 2 * column);
    grid->addWidget(field, row, 2 * column + 1, 1, columns);
    grid->setColumnStretch(2 * column + 1, shares[static_cast<std::size_t>(column)]);
}

} // namespace

SubjectForm::SubjectForm(const Theme &theme, ChartSource &source, QWidget *parent)
    : QWidget(parent)
    , m_source(source)
    , m_quantity(box(u"chartQuantity"_s, this))
    , m_method(box(u"chartMethod"_s, this))
    , m_measurand(box(u"chartMeasurand"_s, this))
    , m_name(box(u"chartName"_s, this))
    , m_lot(box(u"chartLot"_s, this))
    , m_person(box(u"chartPerson"_s, this))
    , m_photometer(box(u"chartPhotometer"_s, this))
    , m_from(new QLineEdit(this))
    , m_to(new QLineEdit(this))
    , m_rejected(new QCheckBox(tr("re&jected too"), this))
{
    build(theme);
    connect(m_quantity, &QComboBox::currentIndexChanged, this, &SubjectForm::quantityChanged);
    connect(m_method, &QComboBox::currentIndexChanged, this, [this] {
        fillMeasurands();
        Q_EMIT subjectChanged();
    });
    connect(m_measurand, &QComboBox::currentIndexChanged, this, [this] {
        fillNames();
        Q_EMIT subjectChanged();
    });
    connect(m_name, &QComboBox::currentIndexChanged, this, &SubjectForm::subjectChanged);
    connect(m_lot, &QComboBox::currentIndexChanged, this, &SubjectForm::filterChanged);
    connect(m_person, &QComboBox::currentIndexChanged, this, &SubjectForm::filterChanged);
    connect(m_photometer, &QComboBox::currentIndexChanged, this, &SubjectForm::filterChanged);
    connect(m_from, &QLineEdit::textChanged, this, &SubjectForm::filterChanged);
    connect(m_to, &QLineEdit::textChanged, this, &SubjectForm::filterChanged);
    connect(m_rejected, &QCheckBox::toggled, this, &SubjectForm::filterChanged);
}

void SubjectForm::build(const Theme &theme)
{
    for (const charts::Quantity quantity : charts::allQuantities())
        m_quantity->addItem(evaluation::capitalised(charts::quantityName(quantity)),
                            charts::quantityWord(quantity));
    auto *grid = new QGridLayout(this);
    grid->setContentsMargins({});
    grid->setSpacing(theme.gap());
    add(grid, 0, 0, tr("Ch&art of"), m_quantity, this);
    add(grid, 0, 1, tr("b&y"), m_method, this);
    add(grid, 0, 2, tr("&measured"), m_measurand, this, 2);
    add(grid, 1, 0, tr("&in"), m_name, this);
    add(grid, 1, 1, tr("lo&t"), m_lot, this);
    add(grid, 1, 2, tr("by p&erson"), m_person, this, 2);
    m_from->setObjectName(u"chartFrom"_s);
    m_to->setObjectName(u"chartTo"_s);
    for (QLineEdit *day : {m_from, m_to})
        showDayExample(*day);
    add(grid, 2, 0, tr("on photometer"), m_photometer, this);
    add(grid, 2, 1, tr("F&rom"), m_from, this);
    add(grid, 2, 2, tr("To"), m_to, this);
    m_rejected->setObjectName(u"chartRejected"_s);
    grid->addWidget(m_rejected, 2, 6);
    for (QWidget *small : std::initializer_list<QWidget *>{m_from, m_to, m_rejected})
        small->setMinimumHeight(theme.target());
}

charts::Quantity SubjectForm::quantity() const
{
    return charts::quantityFromWord(m_quantity->currentData().toString())
        .value_or(charts::Quantity::StandardRecovery);
}

void SubjectForm::refresh()
{
    const bool nothingChosen = m_method->count() == 0;
    m_offers = m_source.offers(quantity());
    fillMethods();
    if (!nothingChosen || m_offers.empty())
        return;
    charts::Subject subject = std::ranges::max_element(m_offers, {}, &notebook::ChartOffer::values)->subject;
    if (charts::isRange(subject.quantity))
        subject.name.clear(); // all of them: a sample has few
    select(subject);
}

void SubjectForm::select(const charts::Subject &subject)
{
    const auto set = [](QComboBox *choice, const QString &value) {
        const QSignalBlocker blocker(choice);
        if (const int index = choice->findData(value); index >= 0)
            choice->setCurrentIndex(index);
        tellWhole(choice);
    };
    set(m_method, subject.methodId);
    fillMeasurands();
    set(m_measurand, subject.measurand);
    fillNames();
    set(m_name, subject.name);
}

void SubjectForm::fillMethods()
{
    std::vector<std::pair<QString, QString>> choices;
    for (const notebook::ChartOffer &offer : m_offers) {
        if (choices.empty() || choices.back().second != offer.subject.methodId)
            choices.emplace_back(offer.methodName, offer.subject.methodId);
    }
    fill(m_method, choices);
    fillMeasurands();
}

void SubjectForm::fillMeasurands()
{
    const QString method = m_method->currentData().toString();
    std::vector<std::pair<QString, QString>> choices;
    for (const notebook::ChartOffer &offer : m_offers) {
        const QString &measurand = offer.subject.measurand;
        if (offer.subject.methodId == method && (choices.empty() || choices.back().second != measurand))
            choices.emplace_back(m_source.measurandName(method, measurand), measurand);
    }
    fill(m_measurand, choices);
    fillNames();
}

std::vector<notebook::ChartOffer> SubjectForm::namedOffers() const
{
    std::vector<notebook::ChartOffer> named;
    std::ranges::copy_if(m_offers, std::back_inserter(named), [this](const notebook::ChartOffer &offer) {
        return offer.subject.methodId == m_method->currentData().toString() &&
               offer.subject.measurand == m_measurand->currentData().toString() &&
               !offer.subject.name.isEmpty();
    });
    return named;
}

void SubjectForm::fillNames()
{
    // "All of them" of another quantity is not what is wanted of this one.
    if (quantity() != m_namedFor && m_name->currentData().toString().isEmpty()) {
        const QSignalBlocker blocker(m_name);
        m_name->clear();
    }
    m_namedFor = quantity();
    const std::vector<notebook::ChartOffer> offers = namedOffers();
    const bool isOfOne = charts::isOfOneMaterial(quantity());
    std::vector<std::pair<QString, QString>> choices;
    if (!charts::isTrend(quantity()) && !isOfOne)
        choices.emplace_back(tr("all of them"), QString());
    for (const notebook::ChartOffer &offer : offers) {
        const QString &name = offer.subject.name;
        const auto isKnown = [&](const auto &choice) { return choice.second == name; };
        if (std::ranges::none_of(choices, isKnown))
            choices.emplace_back(offer.preparations > 0 ? tr("%1 (all standards)").arg(name) : name,
                                 name);
    }
    if (isOfOne && choices.size() > 1)
        choices.emplace_back(tr("all of them, without limits"), QString());
    QString usual;
    if (isOfOne && !offers.empty())
        usual = std::ranges::max_element(offers, {}, &notebook::ChartOffer::values)->subject.name;
    fill(m_name, choices, usual);
}

void SubjectForm::choose(const charts::Subject &subject)
{
    {
        const QSignalBlocker blocker(m_quantity);
        m_quantity->setCurrentIndex(m_quantity->findData(charts::quantityWord(subject.quantity)));
        tellWhole(m_quantity);
    }
    refresh();
    select(subject);
    Q_EMIT subjectChanged();
}

std::optional<charts::Subject> SubjectForm::subject() const
{
    if (m_method->count() == 0 || m_measurand->count() == 0 || m_name->count() == 0)
        return std::nullopt;
    return charts::Subject{quantity(), m_method->currentData().toString(),
                           m_measurand->currentData().toString(), m_name->currentData().toString()};
}

void SubjectForm::setRuns(const charts::Series &series)
{
    std::set<std::pair<QString, QString>> lots;
    std::set<QString> persons;
    std::set<QString> photometers;
    for (const charts::Point &point : series) {
        for (const charts::LotOf &lot : point.run->lots)
            lots.emplace(lot.component, lot.lot);
        persons.insert(point.run->persons.begin(), point.run->persons.end());
        if (!point.run->photometer.isEmpty())
            photometers.insert(point.run->photometer);
    }
    std::vector<std::pair<QString, QString>> choices{{tr("any"), QString()}};
    for (const auto &[component, lot] : lots)
        choices.emplace_back(tr("%1: %2").arg(component, lot), component + between + lot);
    fill(m_lot, choices);
    choices = {{tr("anybody"), QString()}};
    for (const QString &person : persons)
        choices.emplace_back(person, person);
    fill(m_person, choices);
    choices = {{tr("any"), QString()}};
    for (const QString &photometer : photometers)
        choices.emplace_back(photometer, photometer);
    fill(m_photometer, choices);
}

charts::Filter SubjectForm::filter() const
{
    charts::Filter filter;
    const QStringList lot = m_lot->currentData().toString().split(between);
    if (lot.size() == 2) {
        filter.component = lot[0];
        filter.lot = lot[1];
    }
    filter.person = m_person->currentData().toString();
    filter.photometer = m_photometer->currentData().toString();
    filter.from = assay::readDay(m_from->text(), assay::MonthAlone::FirstDay);
    filter.to = assay::readDay(m_to->text());
    filter.withRejected = m_rejected->isChecked();
    return filter;
}

QString SubjectForm::fault() const
{
    for (const QLineEdit *field : {m_from, m_to}) {
        const QString text = field->text().trimmed();
        if (!text.isEmpty() && !assay::readDay(text))
            return tr("%1 is not a date yet: write it as %2.").arg(text, assay::shownDay({2026, 12, 31}));
    }
    return {};
}

void SubjectForm::takeFocus()
{
    m_quantity->setFocus();
}

} // namespace plateau::ui
