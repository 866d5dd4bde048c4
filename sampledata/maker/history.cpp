// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/history.h"

#include "core/planning/checkedequipment.h"

#include <algorithm>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

namespace {

constexpr int mostSamples = 6;
/// Then nothing is left of the sample.
constexpr int mostRepeats = 3;
/// Runs of one analyst are so far apart on a day that is not full.
constexpr int usualSlot_min = 105;
constexpr int workingDay_min = 420;
constexpr int everySoManyAreCorrected = 14;
constexpr int everySoManyAreReopened = 37;
constexpr quint64 firstRunStream = 100'000'000;

std::vector<QDate> daysOf(const std::vector<WorkingDay> &days)
{
    std::vector<QDate> dates;
    for (const WorkingDay &day : days)
        dates.push_back(day.day);
    return dates;
}

QDateTime momentOn(const QDate &day, const QTime &time, int offset_s)
{
    return QDateTime(day, time, Qt::OffsetFromUTC, offset_s);
}

} // namespace

QDateTime History::firstMoment(const WantedHistory &wanted)
{
    return momentOn(workingDays(wanted).front().day.addDays(-3), QTime(9, 0), wanted.offset_s);
}

History::History(notebook::Notebook &notebook, QDateTime &now, const House &house,
                 const WantedHistory &wanted)
    : m_notebook(notebook)
    , m_now(now)
    , m_house(house)
    , m_wanted(wanted)
    , m_days(workingDays(wanted))
    , m_story(Story::over(daysOf(m_days)))
    , m_cupboard(notebook, wanted.seed)
    , m_standards(notebook, wanted.seed)
    , m_source(wanted.seed)
    , m_instruments(notebook, house.laboratory, m_story, wanted.seed)
    , m_reviewing(notebook, now)
    , m_laboratory(house.laboratory)
{
    for (const MethodInUse &use : methodsInUse())
        m_methods.push_back({&use, house.methods(use.id).method.value()});
}

void History::make()
{
    begin();
    for (const WorkingDay &day : m_days)
        workOn(day);
    registerWaiting();
}

void History::begin()
{
    m_now = std::max(m_now, firstMoment(m_wanted));
    m_notebook.saveLaboratory(m_house.laboratory, nameOfHead());
    m_notebook.saveSpecifications(m_house.limits, nameOfHead(), u"the limits of the house"_s);
    m_instruments.add(nameOfHead());
}

void History::advanceTo(const QDate &day, const QTime &time)
{
    m_now = std::max(m_now, momentOn(day, time, m_wanted.offset_s));
}

void History::workOn(const WorkingDay &day)
{
    advanceTo(day.day, QTime(7, 30));
    if (m_instruments.check(day.day, m_now, nameOfReviewer()))
        m_laboratory =
            planning::withChecks(m_house.laboratory, std::as_const(m_notebook).equipment().all(), day.day);
    correctLate();
    if (!m_reviewing.arePersonsSetUp() && m_made + day.runs > m_wanted.runs - m_wanted.signedDecisions)
        m_reviewing.setUpPersons(m_house.laboratory);
    const int analystsAtWork = int(analysts().size());
    const int slotsOfDay = (day.runs + analystsAtWork - 1) / analystsAtWork;
    const int slot_min = std::min(usualSlot_min, workingDay_min / std::max(1, slotsOfDay));
    for (int i = 0; i < day.runs; ++i) {
        const int at_min = (i / analystsAtWork) * slot_min + (i % analystsAtWork) * slot_min / analystsAtWork;
        makeRun(m_made, momentOn(day.day, QTime(9, 15), m_wanted.offset_s).addSecs(60 * at_min));
        ++m_made;
    }
    for (Undecided &undecided : m_undecided)
        decide(undecided);
    m_undecided.clear();
    keepCharts();
}

History::Method &History::methodOfRun(Chance &chance)
{
    double share = chance.part(0, 1);
    for (Method &method : m_methods) {
        share -= method.use->share;
        if (share < 0)
            return method;
    }
    return m_methods.front();
}

std::vector<MadeSample> History::samplesFor(Method &of, Chance &chance)
{
    std::vector<MadeSample> samples;
    QStringList taken;
    const auto isTaken = [&](const MadeSample &sample) { return taken.contains(sample.sample.id); };
    while (!of.waiting.empty() && int(samples.size()) < mostSamples) {
        if (!isTaken(of.waiting.front())) {
            samples.push_back(of.waiting.front());
            taken.append(samples.back().sample.id);
        }
        of.waiting.pop_front();
    }
    const int wanted = chance.whole(2, mostSamples);
    while (int(samples.size()) < wanted) {
        samples.push_back(m_source.next(of.method, taken, m_now, chance));
        taken.append(samples.back().sample.id);
    }
    return samples;
}

std::vector<const FlaskOfStandard *> History::standardsFor(const Method &of, const QString &analyst,
                                                           QDateTime &started)
{
    std::vector<const FlaskOfStandard *> standards;
    for (const StandardRecipe &recipe : of.use->standards) {
        const assay::Measurand &measurand = *assay::findMeasurand(of.method, recipe.measurand);
        m_now = std::max(m_now, started); // nothing is noted before it was done
        standards.push_back(&m_standards.take(recipe, measurand, started, analyst));
        started = std::max(started, standards.back()->held.preparation.madeAt.addSecs(60));
    }
    return standards;
}

void History::makeRun(int number, const QDateTime &endsAt)
{
    Chance chance(m_wanted.seed, firstRunStream + quint64(number));
    const QString &analyst = analysts()[std::size_t(number) % analysts().size()];
    Method &of = methodOfRun(chance);
    const assay::Component &starter = *assay::findComponent(of.method, of.method.starter);
    if (!m_weakLotOpened && of.use == m_methods.front().use && m_now.date() >= m_story.weakLotFrom) {
        m_cupboard.spoilNext(starter.name);
        m_weakLotOpened = true;
    }
    std::vector<MadeSample> samples = samplesFor(of, chance);
    const int lasts_s = durationOf_s(of.method, int(samples.size()));
    m_now = std::max(m_now, endsAt);
    // What is worked at the bench begins now; what comes in as a file is over now.
    QDateTime started = isAtBench(number) ? m_now : m_now.addSecs(-lasts_s);
    const std::vector<const FlaskOfStandard *> standards = standardsFor(of, analyst, started);
    m_now = std::max(m_now, isAtBench(number) ? started : started.addSecs(lasts_s));
    Rack rack = rackOf({*of.use, of.method, m_laboratory, std::move(samples), standards, analyst, started},
                       m_cupboard, m_story, chance);
    RackReadings readings = readingsOf(rack, chance);
    std::optional<Slip> slip;
    if (number % everySoManyAreCorrected == 5 || number % everySoManyAreReopened == 11)
        slip = slipInto(readings, rack, chance);
    if (staysOnBench(number)) {
        workAtBench(m_notebook, rack, readings, m_now, int(readings.size()) / 2);
        return;
    }
    const notebook::RunId run = isAtBench(number) ? workAtBench(m_notebook, rack, readings, m_now)
                                                  : bringIn(m_notebook, rack, readings);
    if (!isAtBench(number))
        m_cupboard.noteLater(rack.lots, run);
    Undecided undecided{number, run, &of, std::move(rack)};
    if (slip && !isAtBench(number) && number % everySoManyAreReopened == 11) {
        undecided.lateSlip = slip;
    } else if (slip) {
        m_now = m_now.addSecs(150);
        m_notebook.correctReading(run, slip->tube, slip->reading, slip->right,
                                  QString::number(slip->right, 'f', 3), analyst,
                                  u"two digits were swapped when it was keyed"_s);
    }
    m_undecided.push_back(std::move(undecided));
}

void History::decide(Undecided &undecided)
{
    advanceTo(m_now.date(), QTime(15, 40));
    m_now = m_now.addSecs(170);
    const notebook::StoredRun stored = m_notebook.load(undecided.run);
    Judgement judgement = judgementOf(notebook::evaluationOf(stored), undecided.rack);
    if (undecided.lateSlip) // it was overlooked
        judgement.decision.reason = judgement.decision.reason.isEmpty() ? QString() : u"looked at; stands"_s;
    m_reviewing.decide(undecided.run, judgement.decision, undecided.rack.analyst, undecided.number);
    if (undecided.lateSlip)
        m_toCorrect = std::move(undecided);
    else
        followUp(undecided, judgement);
}

void History::followUp(Undecided &undecided, const Judgement &judgement)
{
    Method &of = *undecided.of;
    for (const Judgement::Again &again : judgement.repeats) {
        const auto made = std::ranges::find_if(undecided.rack.samples, [&](const MadeSample &sample) {
            return sample.sample.id == again.sample;
        });
        if (made != undecided.rack.samples.end() && made->repeated < mostRepeats)
            of.waiting.push_back(SampleSource::repeatOf(*made, again.advice, undecided.run));
    }
    const assay::Component &starter = *assay::findComponent(of.method, of.method.starter);
    if (judgement.standardFailed && m_cupboard.isWeak(starter.name))
        m_cupboard.discard(starter.name, nameOfReviewer(),
                           u"the standard is found lower and lower since this lot was opened"_s);
}

void History::correctLate()
{
    if (!m_toCorrect)
        return;
    Undecided late = *std::exchange(m_toCorrect, std::nullopt);
    const Slip &slip = *late.lateSlip;
    m_reviewing.reopen(late.run, u"a reading does not agree with the slip of the photometer"_s);
    m_now = m_now.addSecs(120);
    m_notebook.correctReading(late.run, slip.tube, slip.reading, slip.right,
                              QString::number(slip.right, 'f', 3), late.rack.analyst,
                              u"the slip says %1"_s.arg(slip.right, 0, 'f', 3));
    late.lateSlip.reset();
    m_undecided.push_back(std::move(late));
}

void History::keepCharts()
{
    constexpr int runsBefore = 60;
    if (m_chartsKept || m_made < runsBefore)
        return;
    m_chartsKept = true;
    m_now = m_now.addSecs(300);
    notebook::Charts &charts = m_notebook.charts();
    const assay::Method &method = m_methods.front().method;
    charts::Subject recovery{charts::Quantity::StandardRecovery, method.id, method.measurands.front().id};
    // Of the substance, since standards are made anew every few days.
    for (const notebook::ChartOffer &offer : charts.offers(recovery.quantity)) {
        if (offer.preparations > 0 && offer.subject.methodId == recovery.methodId &&
            offer.subject.measurand == recovery.measurand)
            recovery.name = offer.subject.name;
    }
    const charts::Subject blanks{charts::Quantity::Blank, recovery.methodId, recovery.measurand};
    for (const charts::Subject &subject : {recovery, blanks}) {
        charts::Settings settings = charts::usualSettings(subject.quantity);
        settings.rules.insert(quality::RunRule::FourOfFiveBeyond1);
        charts.saveSettings(subject, settings, nameOfHead());
    }
    const charts::Series series = charts.series(recovery);
    if (series.size() > 3) {
        const charts::Point &point = series[series.size() / 3];
        charts.leaveOut({recovery.quantity, {point.run->run}, recovery.measurand, point.name},
                        nameOfReviewer(), u"an air bubble was seen in the cuvette of the standard"_s);
    }
}

void History::registerWaiting()
{
    m_cupboard.noteAll(nameOfReviewer());
    Chance chance(m_wanted.seed, 5);
    std::vector<planning::ShelfSample> samples;
    QStringList taken;
    for (int i = 0; i < 3; ++i) {
        const MadeSample made = m_source.next(m_methods.front().method, taken, m_now, chance);
        taken.append(made.sample.id);
        samples.push_back(made.planned.sample);
    }
    m_notebook.shelf().registerSamples(samples, analysts().back());
}

} // namespace plateau::sampledata
