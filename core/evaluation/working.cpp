// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/working.h"

#include "core/evaluation/checks.h"
#include "core/evaluation/format.h"
#include "core/evaluation/layout.h"
#include "core/evaluation/model.h"
#include "core/evaluation/workingparts.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

struct WorkingWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::Working)
};

/// Signals carry one decimal more than the photometer shows, so that sums can be followed.
QString signalText(double value)
{
    return QString::number(value, 'f', 4);
}

QString grams(double value)
{
    return withUnit(figures(value), u"g/L"_s);
}

/// Writes one result's calculation section by section.
class Writer
{
public:
    Writer(const Layout &layout, const Evaluation &evaluation, size_t measurand, const run::Sample &sample,
           const Result &result)
        : m_layout(layout)
        , m_evaluation(evaluation)
        , m_measurand(measurand)
        , m_terms(layout.measurands()[measurand])
        , m_sample(sample)
        , m_result(result)
        , m_index(layout, sample.dilution.size(), m_terms.calibration.size())
        , m_input(inputValues<double>(layout, m_index))
        , m_model(layout, m_terms, m_index, m_input)
    {
    }

    std::vector<WorkingSection> write()
    {
        std::vector<WorkingSection> sections;
        sections.push_back(blankSection());
        if (m_layout.run().calibration != run::Calibration::Absorptivity)
            sections.push_back(calibrationSection());
        for (const int tube : m_layout.resultTubes(m_sample.id)) {
            if (value(tube).concentration_g_per_L)
                sections.push_back(tubeSection(tube));
        }
        sections.push_back(resultSection());
        if (m_result.expandedUncertainty)
            sections.push_back(uncertaintySection(m_result));
        if (m_result.value)
            sections.push_back(symbolSection(m_layout.run().calibration, m_sample, m_result));
        std::erase_if(sections, [](const WorkingSection &section) { return section.lines.empty(); });
        return sections;
    }

private:
    const TubeValue &value(int tube) const
    {
        return m_evaluation.tubes[static_cast<size_t>(tube) * m_layout.measurands().size() + m_measurand];
    }
    const TubeTerm &term(int tube) const { return m_terms.tubes[static_cast<size_t>(tube)]; }

    /// A reading as it enters the signal, with a line of its own where it is not simply as read.
    QString readingText(int tube, size_t number, std::vector<WorkingLine> &lines) const
    {
        const ReadingTerm &reading = term(tube).readings[number];
        const double entered = m_model.reading(reading);
        const QString name = assay::readingsOf(m_terms.measurand->signal)[number];
        if (reading.weights.size() > 1)
            addExtrapolation(m_layout.run().tubes[static_cast<size_t>(tube)], name, reading.weights.size(),
                             signalText(entered / reading.volumeRatio), lines);
        if (reading.volumeRatio != 1)
            lines.push_back(
                {WorkingWords::tr("%1 at the final volume").arg(name),
                 WorkingWords::tr("%1 x V(%1) / V").arg(name),
                 u"%1 x %2"_s.arg(signalText(entered / reading.volumeRatio), figures(reading.volumeRatio)),
                 signalText(entered)});
        if (reading.weights.size() == 1 && reading.volumeRatio == 1)
            return readText(m_layout.absorbances()[static_cast<size_t>(reading.first)]);
        return signalText(entered);
    }

    void addSignal(const QString &what, int tube, std::vector<WorkingLine> &lines) const
    {
        const std::vector<QString> names = assay::readingsOf(m_terms.measurand->signal);
        QStringList texts;
        for (size_t i = 0; i < names.size(); ++i)
            texts.append(readingText(tube, i, lines));
        const bool rising = m_layout.method().direction == assay::Direction::Rising;
        const auto change = [&](const QString &early, const QString &late) {
            return rising ? u"%1 - %2"_s.arg(late, early) : u"%1 - %2"_s.arg(early, late);
        };
        const QString signal = signalText(m_model.signal(tube));
        if (names.size() == 2) {
            lines.push_back({what, change(names[0], names[1]), change(texts[0], texts[1]), signal});
            return;
        }
        const auto coupled = [&](const QString &base, const QString &middle, const QString &last) {
            return u"(%1) - (%2)² / (%1)"_s.arg(change(base, last), change(base, middle));
        };
        lines.push_back(
            {what, coupled(names[0], names[1], names[2]), coupled(texts[0], texts[1], texts[2]), signal});
    }

    QStringList signalsOf(std::span<const int> tubes) const
    {
        QStringList texts;
        for (const int tube : tubes)
            texts.append(signalText(m_model.signal(tube)));
        return texts;
    }

    QString meanOf(const QStringList &texts) const
    {
        return texts.size() == 1 ? texts.front() : u"(%1) / %2"_s.arg(texts.join(u" + "_s)).arg(texts.size());
    }

    WorkingSection blankSection() const
    {
        WorkingSection section{WorkingWords::tr("Blank"), {}};
        for (const int tube : m_terms.blanks)
            addSignal(WorkingWords::tr("signal of %1").arg(tubeName(tube)), tube, section.lines);
        if (m_terms.blanks.size() > 1)
            section.lines.push_back(
                {WorkingWords::tr("mean blank"), WorkingWords::tr("mean of the blanks' signals"),
                 meanOf(signalsOf(m_terms.blanks)), signalText(m_model.meanSignal(m_terms.blanks))});
        return section;
    }

    WorkingSection calibrationSection() const
    {
        WorkingSection section{WorkingWords::tr("Calibration"), {}};
        for (size_t i = 0; i < m_terms.calibration.size(); ++i) {
            const CalibrationPoint &point = m_terms.calibration[i];
            addPipetted(m_layout.method(), m_layout.run(), point.tube, section.lines);
            section.lines.push_back(
                {WorkingWords::tr("standard in %1").arg(tubeName(point.tube)),
                 hasUsualVolume(point.tube)
                     ? WorkingWords::tr("strength at use x volume; net signal")
                     : WorkingWords::tr("strength at use x volume; net signal at the usual volume"),
                 withUnit(figures(point.amount_mg), u"mg"_s), signalText(m_model.calibrationSignal(i))});
        }
        if (m_layout.run().calibration == run::Calibration::Line) {
            const FittedLine<double> line = m_model.line();
            section.lines.push_back({WorkingWords::tr("line"),
                                     WorkingWords::tr("net signal = a + b x mg in the tube"),
                                     {},
                                     WorkingWords::tr("a = %1, b = %2 per mg")
                                         .arg(signalText(line.intercept), figures(line.slope))});
        } else {
            section.lines.push_back({WorkingWords::tr("response"),
                                     WorkingWords::tr("mean of net signal / mg in the tube"),
                                     {},
                                     WorkingWords::tr("%1 per mg").arg(figures(m_model.responsePerMg()))});
        }
        return section;
    }

    void addNetSignal(int tube, std::vector<WorkingLine> &lines) const
    {
        QString formula = WorkingWords::tr("signal - mean blank");
        QString numbers =
            u"%1 - %2"_s.arg(signalText(*value(tube).signal), signalText(m_model.meanSignal(m_terms.blanks)));
        if (!term(tube).sampleBlanks.empty()) {
            formula = WorkingWords::tr("signal - mean blank - sample blank");
            numbers += u" - "_s + signalText(m_model.meanSignal(term(tube).sampleBlanks));
        }
        lines.push_back(
            {WorkingWords::tr("net signal dA"), formula, numbers, signalText(*value(tube).netSignal)});
    }

    bool hasUsualVolume(int tube) const
    {
        return std::abs(term(tube).totalVolume_mL / m_terms.defaultVolume_mL - 1) < 1e-12;
    }

    /// By a standard or a line signals are compared, and a tube of another volume is another dilution.
    void addComparableSignal(int tube, std::vector<WorkingLine> &lines) const
    {
        if (m_layout.run().calibration == run::Calibration::Absorptivity || hasUsualVolume(tube))
            return;
        lines.push_back(
            {WorkingWords::tr("net signal dA at the usual volume"),
             WorkingWords::tr("net signal x volume of the tube / usual volume"),
             u"%1 x %2 / %3"_s.arg(signalText(*value(tube).netSignal), figures(term(tube).totalVolume_mL),
                                   figures(m_terms.defaultVolume_mL)),
             signalText(m_model.comparableSignal(tube))});
    }

    void addConcentration(int tube, std::vector<WorkingLine> &lines) const
    {
        const bool compared = m_layout.run().calibration != run::Calibration::Absorptivity;
        const QString net = signalText(compared ? m_model.comparableSignal(tube) : *value(tube).netSignal);
        const QString volume = plainText(term(tube).sampleVolume_mL);
        const QString what = WorkingWords::tr("concentration c in the sample as pipetted");
        const QString found = grams(*value(tube).pipetted_g_per_L);
        switch (m_layout.run().calibration) {
        case run::Calibration::Absorptivity:
            lines.push_back({what, WorkingWords::tr("dA x V x M / (e x d x v x n)"),
                             absorptivityNumbers(tube, net, volume), found});
            break;
        case run::Calibration::Standard:
            lines.push_back({what, WorkingWords::tr("dA / response / v"),
                             u"%1 / %2 / %3"_s.arg(net, figures(m_model.responsePerMg()), volume), found});
            break;
        case run::Calibration::Line: {
            const FittedLine<double> line = m_model.line();
            lines.push_back(
                {what, WorkingWords::tr("(dA - a) / b / v"),
                 u"(%1 - %2) / %3 / %4"_s.arg(net, signalText(line.intercept), figures(line.slope), volume),
                 found});
            break;
        }
        }
    }

    QString absorptivityNumbers(int tube, const QString &net, const QString &volume) const
    {
        const assay::Method &method = m_layout.method();
        const run::Run &run = m_layout.run();
        const double absorptivity =
            assay::absorptivity(method, run.wavelength_nm.value_or(method.wavelength_nm)).value_or(0);
        const double path_cm = run.pathLength_mm.value_or(method.pathLength_mm) / 10;
        return u"%1 x %2 x %3 / (%4 x %5 x %6 x %7)"_s.arg(
            net,
            hasUsualVolume(tube) ? significantText(term(tube).totalVolume_mL, 4)
                                 : figures(term(tube).totalVolume_mL),
            plainText(m_terms.measurand->molarMass_g_per_mol), plainText(absorptivity), plainText(path_cm),
            volume, plainText(m_terms.measurand->chromophorePerMolecule));
    }

    WorkingSection tubeSection(int tube) const
    {
        WorkingSection section{WorkingWords::tr("Sample %1, %2").arg(m_sample.id, tubeName(tube)), {}};
        addPipetted(m_layout.method(), m_layout.run(), tube, section.lines);
        addSignal(WorkingWords::tr("signal"), tube, section.lines);
        for (const int blank : term(tube).sampleBlanks)
            addSignal(WorkingWords::tr("sample blank, %1").arg(tubeName(blank)), blank, section.lines);
        addNetSignal(tube, section.lines);
        addComparableSignal(tube, section.lines);
        addConcentration(tube, section.lines);
        if (!m_sample.dilution.empty())
            section.lines.push_back({WorkingWords::tr("in the sample as received"), WorkingWords::tr("c x F"),
                                     u"%1 x %2"_s.arg(figures(*value(tube).pipetted_g_per_L), dilutionText()),
                                     grams(*value(tube).concentration_g_per_L)});
        if (m_sample.form == run::Form::Solid)
            section.lines.push_back(
                {WorkingWords::tr("content"), WorkingWords::tr("c x F x extract (L) / mass (g) x 100"),
                 u"%1 x %2 x %3 / %4 x 100"_s.arg(figures(*value(tube).pipetted_g_per_L), dilutionText(),
                                                  plainText(*m_sample.extract_mL / 1000),
                                                  plainText(*m_sample.mass_g)),
                 withUnit(figures(m_model.content(*value(tube).concentration_g_per_L, m_sample)),
                          m_result.unit)});
        return section;
    }

    /// 1 of a sample that is pipetted as it is.
    QString dilutionText() const
    {
        QStringList steps;
        for (const run::DilutionStep &step : m_sample.dilution)
            steps.append(u"(%1 / %2)"_s.arg(plainText(step.makeUpTo_mL), plainText(step.take_mL)));
        return steps.isEmpty() ? u"1"_s : steps.join(u" x "_s);
    }

    WorkingSection resultSection() const
    {
        WorkingSection section{WorkingWords::tr("Result"), {}};
        if (!m_result.value)
            return section;
        QStringList texts;
        for (const int tube : m_layout.resultTubes(m_sample.id)) {
            if (const auto &concentration = value(tube).concentration_g_per_L)
                texts.append(figures(m_sample.form == run::Form::Solid
                                         ? m_model.content(*concentration, m_sample)
                                         : *concentration));
        }
        section.lines.push_back({WorkingWords::tr("mean, N = %1").arg(m_result.n),
                                 WorkingWords::tr("sum / N"), meanOf(texts),
                                 withUnit(figures(*m_result.value), m_result.unit)});
        if (m_result.n > 1 && m_result.spread)
            section.lines.push_back(
                {WorkingWords::tr("spread"),
                 WorkingWords::tr("largest - smallest"),
                 {},
                 withUnit(spreadText(*m_result.spread, *m_result.value, 3), m_result.unit)});
        addBound(m_result, section);
        return section;
    }

    const Layout &m_layout;
    const Evaluation &m_evaluation;
    size_t m_measurand;
    const MeasurandTerms &m_terms;
    const run::Sample &m_sample;
    const Result &m_result;
    InputIndex m_index;
    std::vector<double> m_input;
    Model<double> m_model;
};

} // namespace

std::vector<WorkingSection> working(const assay::Method &method, const run::Run &run,
                                    const Evaluation &evaluation, const QString &sample,
                                    const QString &measurand, const Rules &rules)
{
    const auto result = std::ranges::find_if(
        evaluation.results, [&](const Result &r) { return r.sample == sample && r.measurand == measurand; });
    if (result != evaluation.results.end() && !result->terms.empty())
        return derivedWorking(*result);
    const run::Sample *found = run::findSample(run, sample);
    const auto analyte = std::ranges::find(method.measurands, measurand, &assay::Measurand::id);
    if (result == evaluation.results.end() || !found || analyte == method.measurands.end())
        return {};
    const Layout layout(method, run, rules);
    return Writer(layout, evaluation, static_cast<size_t>(analyte - method.measurands.begin()), *found,
                  *result)
        .write();
}

} // namespace plateau::evaluation
