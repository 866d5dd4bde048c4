// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/planpage.h"

#include "core/evaluation/format.h"
#include "core/evaluation/standardage.h"
#include "core/planning/checkedequipment.h"
#include "core/planning/reagents.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/methodtext.h"
#include "ui/bench/places.h"
#include "ui/bench/placewords.h"
#include "ui/bench/stores.h"
#include "ui/plan/choicedelegate.h"
#include "ui/plan/planform.h"
#include "ui/plan/planwarnings.h"
#include "ui/plan/rackgrid.h"
#include "ui/plan/rackmodel.h"
#include "ui/plan/reagentsmodel.h"
#include "ui/plan/samplesection.h"
#include "ui/plan/timepanel.h"
#include "ui/plan/waitingmodel.h"
#include "ui/shared/clock.h"
#include "ui/shared/guard.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/table.h"
#include "ui/shared/whenseen.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr int formPart = 5;
constexpr int sidePart = 4;

/// Of a tab widget only the page in front is asked how high it is at a width, so that another page would give what stands
/// above another height, and the tabs another place. Not asked so, it wants room for the highest of its pages.
class SteadyTabs : public QTabWidget
{
public:
    using QTabWidget::QTabWidget;
    bool hasHeightForWidth() const override { return false; }
};

} // namespace

PlanPage::PlanPage(const Theme &theme, const Clock &clock, BenchSession &session, Stores &stores,
                   QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_session(session)
    , m_stores(stores)
    , m_form(new PlanForm(theme, clock, this))
    , m_rackModel(new RackModel(this))
    , m_reagents(new ReagentsModel(theme, this))
    , m_waiting(new WaitingModel(this))
    , m_times(new TimePanel(theme, this))
{
    setHelp(*this, {u"plan"_s, {}});
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    m_side = buildSide();
    layout->addWidget(m_form, formPart);
    layout->addWidget(m_side, sidePart);
    connectAll();
    startAnew();
}

int PlanPage::sideWidth(int width, int target)
{
    const int usual = width * sidePart / (formPart + sidePart);
    return std::min(usual, std::max(18 * target, width / 3));
}

void PlanPage::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    const int side = sideWidth(width(), m_theme.target());
    m_side->setMaximumWidth(std::max(side, m_side->minimumSizeHint().width()));
    // Why a sample waits is read to its end; what it is, its name says as well, and the book of samples.
    const bool hasProducts = side >= 23 * m_theme.target();
    if (m_waitingTable->isColumnHidden(WaitingModel::Product) == hasProducts) {
        m_waitingTable->setColumnHidden(WaitingModel::Product, !hasProducts);
        m_waitingTable->fit();
    }
}

QWidget *PlanPage::buildSide()
{
    auto *side = new QWidget(this);
    m_summary = plainLabel({}, side);
    m_summary->setObjectName(u"runSummary"_s);
    m_summary->setWordWrap(true);
    m_problems = new ProblemList(m_theme, u"newRunProblems"_s, side);
    m_methodText = new SentenceList(m_theme, tr("Method and cautions"), u"newRunMethod"_s, side);
    m_notice = new Notice(m_theme, side);
    m_tabs = new SteadyTabs(side);
    m_tabs->setObjectName(u"planTabs"_s);
    m_tabs->setAccessibleName(tr("What the plan gives"));
    m_tabs->setUsesScrollButtons(false);
    m_tabs->addTab(buildRack(), tr("Rack"));
    m_tabs->addTab(m_times, tr("Time"));
    m_tabs->addTab(buildReagents(), tr("Reagents"));
    m_tabs->addTab(buildQueue(), tr("Queue"));
    m_tabs->addTab(m_methodText, tr("Method"));
    auto *put = button(m_theme, tr("P&ut on the bench"), u"putOnBench"_s, side);
    auto *layout = new QVBoxLayout(side);
    setGaps(m_theme, layout);
    m_explain = button(m_theme, tr("Explain this warning"), u"explainWarning"_s, side);
    m_explain->setToolTip(tr("What the warning means, and what to do about it; F1 does the same"));
    m_explain->hide();
    connect(m_explain, &QPushButton::clicked, this, [this] { callHelp(*m_explain); });
    connect(m_problems->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &PlanPage::offerHelp);
    auto *head = new QHBoxLayout;
    head->addWidget(m_summary, 1);
    head->addWidget(m_explain, 0, Qt::AlignTop);
    layout->addLayout(head);
    layout->addWidget(m_problems, 2);
    layout->addWidget(m_tabs, 5);
    layout->addWidget(m_notice);
    layout->addWidget(put);
    connect(put, &QPushButton::clicked, this, &PlanPage::putOnBench);
    return side;
}

QWidget *PlanPage::buildRack()
{
    auto *page = new QWidget(this);
    auto *grid = new RackGrid(m_theme, m_rackModel, page);
    auto *hint = plainLabel(tr("Drag a tube, or move it with Ctrl and an arrow key."), page);
    hint->setWordWrap(true);
    auto *layout = new QVBoxLayout(page);
    layout->addWidget(grid, 1);
    layout->addWidget(hint);
    connect(grid, &RackGrid::moveWanted, this, &PlanPage::moveTube);
    return page;
}

QWidget *PlanPage::buildReagents()
{
    auto *page = new QWidget(this);
    m_reagentsTable = new Table(m_theme, m_reagents, tr("Reagents"), u"planReagents"_s, page);
    m_reagentsTable->setItemDelegate(new ChoiceDelegate(ReagentsModel::OffersRole, m_reagentsTable));
    m_reagentsTable->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                                     QAbstractItemView::DoubleClicked);
    m_reagentsTable->setFlexibleColumn(ReagentsModel::Remark);
    // For how many tubes the lot is enough, and until when: two lines of so many characters.
    m_reagentsTable->setFlexibleMinimum(24);
    m_reagentsTable->setLimit(12);
    m_reagentsTable->setWrap(Table::Wrap::AsNeeded);
    m_reagentsHint = plainLabel({}, page);
    m_reagentsHint->setObjectName(u"planReagentsHint"_s);
    m_reagentsHint->setWordWrap(true);
    auto *layout = new QVBoxLayout(page);
    layout->addWidget(m_reagentsTable, 1);
    layout->addWidget(m_reagentsHint);
    return page;
}

QWidget *PlanPage::buildQueue()
{
    auto *page = new QWidget(this);
    m_waitingTable = new Table(m_theme, m_waiting, tr("Samples waiting"), u"planQueue"_s, page);
    m_waitingTable->setFlexibleColumn(WaitingModel::Why);
    m_waitingTable->setFlexibleMinimum(28);
    m_waitingTable->setLimit(16);
    m_waitingTable->setNameColumn(WaitingModel::Sample);
    m_waitingTable->setWrap(Table::Wrap::AsNeeded);
    m_queueText = plainLabel({}, page);
    m_queueText->setWordWrap(true);
    auto *take = button(m_theme, tr("Take the ticked ones"), u"takeTicked"_s, page);
    auto *layout = new QVBoxLayout(page);
    layout->addWidget(m_queueText);
    layout->addWidget(m_waitingTable, 1);
    layout->addWidget(take, 0, Qt::AlignLeft);
    connect(take, &QPushButton::clicked, this, &PlanPage::takeWaiting);
    return page;
}

void PlanPage::connectAll()
{
    connect(m_form, &PlanForm::changed, this, &PlanPage::check);
    connect(m_form, &PlanForm::methodChanged, this, &PlanPage::onMethod);
    connect(m_times, &TimePanel::changed, this, &PlanPage::check);
    connect(m_reagents, &QAbstractItemModel::dataChanged, m_reagentsTable, &Table::fit);
    connect(&m_form->samples(), &SampleSection::shelfWanted, this, [this] {
        m_tabs->setCurrentIndex(3);
        m_waitingTable->setFocus();
        if (!m_waitingTable->currentIndex().isValid())
            m_waitingTable->setCurrentIndex(m_waiting->index(0, 0));
    });
    m_form->samples().setPastResult([this](const QString &product, const QString &measurand) {
        std::optional<double> value;
        guarded(*m_notice, [&] {
            for (const notebook::PastResult &past : m_stores.lastResults(product, measurand)) {
                if (!value && past.result.value)
                    value = past.result.value;
            }
        });
        return value;
    });
    connect(&m_session, &BenchSession::personChanged, this, [this] {
        if (m_form->method())
            m_form->setUncertainty(outcome().uncertainty); // what was typed is theirs
    });
    auto *update = new WhenSeen(this, [this] { refreshStores(); });
    for (const auto changed : {&Stores::waitingChanged, &Stores::lotsChanged, &Stores::laboratoryChanged,
                               &Stores::equipmentChanged, &Stores::standardsChanged, &Stores::specificationsChanged})
        connect(&m_stores, changed, update, &WhenSeen::request);
}

void PlanPage::refreshStores()
{
    guarded(*m_notice, [this] {
        m_waiting->setWaiting(m_stores.waiting());
        m_lots = m_stores.lots();
        m_laboratory = m_stores.checkedLaboratory(m_clock.now().date());
        m_equipment = m_stores.equipment();
        m_preparations = m_stores.preparations();
        m_form->samples().setProducts(knownProducts());
    });
    m_form->setLaboratory(m_laboratory);
    offerStandards();
    m_waitingTable->fit();
    m_queueText->setText(
        m_waiting->rowCount() == 0
            ? tr("No sample waits. Samples are registered under Books, Samples; repeats that decided "
                 "runs advise come by themselves.")
            : tr("Tick with the space bar what goes into this run."));
    check();
}

QStringList PlanPage::knownProducts() const
{
    QStringList products;
    const auto add = [&products](const QString &product) {
        if (!product.isEmpty() && !products.contains(product, Qt::CaseInsensitive))
            products << product;
    };
    for (const evaluation::Specification &limit : m_stores.specifications())
        add(limit.product);
    for (const planning::ProductUnit &unit : m_laboratory.reportUnits)
        add(unit.product);
    for (const notebook::WaitingSample &waiting : m_stores.waiting())
        add(waiting.sample.product);
    products.sort(Qt::CaseInsensitive);
    return products;
}

QString PlanPage::methodOfLatestRun()
{
    QString id;
    guarded(*m_notice, [&] {
        const notebook::RunPage newest = m_session.search().page({}, notebook::RunOrder::NewestFirst, 1);
        if (!newest.runs.empty())
            id = newest.runs.front().summary.methodId;
    });
    return id;
}

void PlanPage::setMethods(std::vector<MethodOffer> offers)
{
    m_times->setMethods(offers);
    m_form->setMethods(std::move(offers), methodOfLatestRun());
}

void PlanPage::startAnew()
{
    m_order.clear();
    m_reagents->startAnew();
    m_form->startAnew();
    m_notice->clear();
    check();
}

void PlanPage::takeFocus()
{
    refreshStores();
    m_form->takeFocus();
}

bool PlanPage::isBegun() const
{
    return m_form->isBegun();
}

void PlanPage::onMethod()
{
    m_reagents->startAnew();
    if (const assay::Method *method = m_form->method())
        m_methodText->setSentences(methodSentences(*method));
    offerStandards();
}

DraftOutcome PlanPage::outcome() const
{
    RunDraft draft = m_form->draft();
    draft.order = m_order;
    draft.person = m_session.person();
    DraftOutcome result = runOf(draft, *m_form->method());
    takeUncertainties(result);
    result.run.lots = m_reagents->lotUses();
    if (const auto &schedule = m_times->feasibility().schedule; schedule && schedule->interval_s > 0)
        result.plan.interval_s = schedule->interval_s;
    return result;
}

void PlanPage::check()
{
    m_notice->clear();
    if (!m_form->method()) {
        m_summary->setText(tr("No method is installed, so no run can be put together here."));
        return;
    }
    const DraftOutcome now = outcome();
    showRack(now);
    showTimes(now);
    showReagents(now);
    PlanWarnings warnings;
    warnings.addRun(now.problems, inWordsOfTheForm(now.problems, now.run));
    warnings.addReagents(m_reagents->remarks());
    warnings.addEquipment(equipmentRemarks(now));
    m_problems->setProblems(warnings.problems(), warnings.places());
    offerHelp();
    showWorth(now);
    m_form->setUncertainty(now.uncertainty);
    summarise(now);
}

void PlanPage::offerHelp()
{
    const HelpPlace place = m_problems->placeNow();
    m_explain->setVisible(!place.page.isEmpty());
    for (QWidget *widget : std::initializer_list<QWidget *>{m_problems, m_explain})
        setHelp(*widget, place);
}

void PlanPage::offerStandards()
{
    std::vector<run::Standard> alive;
    const assay::Method *method = m_form->method();
    for (const planning::HeldPreparation &held : m_preparations) {
        const bool fits = method && (held.preparation.measurand.isEmpty() ||
                                     std::ranges::find(method->measurands, held.preparation.measurand,
                                                       &assay::Measurand::id) != method->measurands.end());
        if (fits && planning::isAlive(held, m_clock.now()))
            alive.push_back(planning::standardOf(held));
    }
    m_form->setStandards(alive);
}

/// A standard of the book knows how well it is known, and what it holds.
void PlanPage::takeUncertainties(DraftOutcome &outcome) const
{
    for (run::Standard &standard : outcome.run.standards) {
        for (const planning::HeldPreparation &held : m_preparations) {
            const run::Standard made = planning::standardOf(held);
            constexpr double asKeyed = 1e-3; // of its strength: it is keyed rounded
            const bool same = standard.preparedAt && planning::isStandardOf(held, standard) &&
                              std::abs(standard.concentration_g_per_L - made.concentration_g_per_L) <=
                                  asKeyed * made.concentration_g_per_L;
            if (!same || standard.uncertainty_percent || !made.uncertainty_percent)
                continue;
            standard.uncertainty_percent = made.uncertainty_percent;
            for (planning::InputOwner &owner : outcome.plan.owners) {
                if (owner.input != planning::UncertaintyInput::Standard || owner.standard != standard.id)
                    continue;
                owner.source = tr("the book of standards, made %1").arg(keptMomentText(held.preparation.madeAt));
                owner.isDefault = false;
            }
        }
    }
}

/// What failed or was not checked in time, of what this run is made and read with.
assay::Problems PlanPage::equipmentRemarks(const DraftOutcome &outcome) const
{
    const QDate today = m_clock.now().date();
    const QStringList glass = planning::glassOf(*m_form->method(), m_laboratory, outcome.run, outcome.plan);
    assay::Problems problems;
    for (const planning::EquipmentDoubt &doubt : planning::equipmentDoubts(
             m_laboratory, glass, planning::isWeighedFor(outcome.run), m_equipment, today, today))
        problems.push_back(assay::warning(tr("Equipment"), doubt.sentence));
    return problems;
}

void PlanPage::showRack(const DraftOutcome &outcome)
{
    m_rackModel->setRack(outcome.run, outcome.plan.rackRows, outcome.plan.rackColumns);
}

void PlanPage::showTimes(const DraftOutcome &outcome)
{
    const std::vector<run::Tube> &tubes = outcome.run.tubes;
    TimedRack rack;
    rack.method = *m_form->method();
    rack.tubes = static_cast<int>(tubes.size());
    rack.ownTubes = static_cast<int>(std::count_if(
        tubes.begin(), tubes.end(), [](const run::Tube &tube) { return tube.sample.isEmpty(); }));
    rack.withSpikes = std::any_of(tubes.begin(), tubes.end(),
                                  [](const run::Tube &tube) { return tube.role == run::Role::Spiked; });
    rack.together = std::max(m_form->draft().replicates, 1);
    QStringList names;
    for (int tube = 0; tube < rack.tubes; ++tube)
        names << briefContentsText(outcome.run, tube);
    m_times->show(rack, names, m_laboratory.handling);
}

void PlanPage::showReagents(const DraftOutcome &outcome)
{
    const QDateTime from = m_clock.now();
    const auto &schedule = m_times->feasibility().schedule;
    const QDateTime to = from.addSecs(schedule ? schedule->setUp_s + schedule->lastReading_s : 0);
    m_reagents->setNeeds(planning::reagentNeeds(*m_form->method(), outcome.run, m_laboratory.overage_percent,
                                                m_lots, from, to),
                         m_lots, to);
    m_reagentsTable->fit();
    QString hint =
        tr("The lot to use up first is chosen; choose another in its cell. Lots are kept under Books, Lots.");
    if (m_laboratory.overage_percent > 0)
        hint = tr("Needed: what the tubes take and %1 beyond it. %2")
                   .arg(evaluation::withUnit(QString::number(m_laboratory.overage_percent), u"%"_s), hint);
    m_reagentsHint->setText(shownNumbers(hint));
}

void PlanPage::showWorth(const DraftOutcome &outcome)
{
    QString sentence;
    const auto &schedule = m_times->feasibility().schedule;
    if (m_form->draft().standard && !outcome.run.standards.empty() && schedule) {
        run::Standard standard = outcome.run.standards.front();
        const bool isWhenPipetted = !standard.usedAt;
        // It goes in while the rack is set up: by the end of that, to be on the safe side.
        if (isWhenPipetted)
            standard.usedAt = m_clock.now().addSecs(schedule->setUp_s);
        if (standard.preparedAt && standard.lossPerHour > 0 && standard.concentration_g_per_L > 0) {
            const QString worth = evaluation::withUnit(
                QString::number(run::concentrationAtUse_g_per_L(standard), 'g', 4), u"g/L"_s);
            const QString made =
                evaluation::withUnit(evaluation::strengthText(standard.concentration_g_per_L, standard.uncertainty_percent), u"g/L"_s);
            sentence = isWhenPipetted
                           ? tr("When it goes into its first tube it is worth about %1, of %2 when made.").arg(worth, made)
                           : tr("When it is used (%1) it is worth about %2, of %3 when made.")
                                 .arg(momentText(*standard.usedAt), worth, made);
        }
        if (const auto age = evaluation::ageOf(standard, outcome.run); age && age->tooOld)
            sentence += u' ' + tr("That is too old (%1): make a fresh one below.").arg(age->facts());
    }
    m_form->setWorth(sentence.trimmed());
}

void PlanPage::summarise(const DraftOutcome &outcome)
{
    const QString tubes = tr("Tubes: %1").arg(outcome.run.tubes.size());
    const bool feasible = outcome.run.tubes.empty() || m_times->feasibility().schedule.has_value();
    if (assay::hasErrors(outcome.problems))
        m_summary->setText(tr("%1. Still to be put right:").arg(tubes));
    else if (!feasible)
        m_summary->setText(tr("%1. One person cannot read them all in time: see Time.").arg(tubes));
    else if (m_problems->model()->rowCount() > 0)
        m_summary->setText(tr("%1. Nothing stands in the way, but look at this:").arg(tubes));
    else
        m_summary->setText(tr("%1. Nothing stands in the way.").arg(tubes));
}

void PlanPage::moveTube(int from, int to)
{
    m_order = planning::moved(planning::keysOf(outcome().run.tubes), from, to);
    check();
}

void PlanPage::takeWaiting()
{
    if (!m_form->method())
        return;
    if (m_waiting->ticked() == 0) {
        m_notice->say(State::Info, tr("First tick the samples to take with the space bar."));
        return;
    }
    m_form->samples().addRows(m_waiting->take(*m_form->method()));
}

void PlanPage::putOnBench()
{
    if (!m_form->method())
        return;
    const DraftOutcome planned = outcome();
    if (assay::hasErrors(planned.problems)) {
        m_notice->say(State::Attention,
                      tr("The run is not on the bench yet: first put right what the list names."));
        m_problems->setFocus();
        return;
    }
    if (m_session.person().isEmpty()) {
        m_notice->say(State::Info,
                      tr("First say who is at the bench: type your name on the left and press Enter."));
        Q_EMIT personWanted();
        return;
    }
    notebook::RunId id;
    if (!guarded(*m_notice, [&] { id = m_session.addRun(planned.run, *m_form->method(), planned.plan); }))
        return;
    startAnew();
    Q_EMIT opened(id);
}

} // namespace plateau::ui
