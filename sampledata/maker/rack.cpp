// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/rack.h"

#include "core/planning/uncertaintyowners.h"
#include "core/planning/uncertaintysources.h"
#include "core/run/volumes.h"

#include <algorithm>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

namespace {

constexpr int blanks = 2;
constexpr double usedBetween_h = 0.3;

QString titleFor(const RackParts &parts, Chance &chance)
{
    static const QStringList occasions{u"Morning rack"_s, u"Tank round"_s,      u"Before bottling"_s,
                                       u"Goods in"_s,     u"Before blending"_s, u"Follow-up"_s};
    const bool repeats = std::ranges::any_of(
        parts.samples, [](const MadeSample &sample) { return sample.planned.repeats.has_value(); });
    const QString &occasion = repeats ? u"Repeats"_s : chance.oneOf(occasions);
    return u"%1, %2"_s.arg(occasion, parts.now.date().toString(u"d MMM"_s));
}

class RackMaker
{
public:
    RackMaker(const RackParts &parts, Cupboard &cupboard, const Story &story, Chance &chance)
        : m_parts(parts)
        , m_cupboard(cupboard)
        , m_story(story)
        , m_chance(chance)
    {
        m_rack.method = parts.method;
        m_rack.samples = parts.samples;
        m_rack.analyst = parts.analyst;
        m_rack.run.title = titleFor(parts, chance);
        m_rack.run.method = parts.method.id;
        m_rack.run.startedAt = parts.now;
    }

    Rack make()
    {
        run::Tube blank;
        blank.role = run::Role::Blank;
        for (int i = 0; i < blanks; ++i)
            addTube(blank, {});
        addStandards();
        addControl();
        for (const MadeSample &sample : m_rack.samples)
            addSample(sample);
        takeReagents();
        settleTruths();
        addUncertainties();
        return m_rack;
    }

private:
    void addTube(run::Tube tube, const std::map<QString, double> &pipetted_g_per_L, double colour = 0)
    {
        const QDate day = m_parts.now.date();
        TubeTruth truth;
        truth.pipetted_g_per_L = pipetted_g_per_L;
        truth.background = m_parts.use.background + colour + m_chance.scatter(0.004);
        truth.blankSignal = m_parts.use.blankSignal + m_chance.scatter(0.0006);
        truth.withoutStarter = tube.role == run::Role::SampleBlank;
        truth.dosed = 1 + m_chance.scatter(pipettingScatterOf(m_parts.analyst)) +
                      m_chance.scatter(m_story.pipetteScatterOn(day));
        truth.scale = m_story.scaleOn(day);
        m_rack.run.tubes.push_back(std::move(tube));
        m_rack.truths.push_back(std::move(truth));
    }

    void addStandards()
    {
        const QDateTime used = m_parts.now.addSecs(int(3600 * usedBetween_h));
        for (const FlaskOfStandard *flask : m_parts.standards) {
            run::Standard standard = planning::standardOf(flask->held);
            standard.usedAt = used;
            std::map<QString, double> holds;
            holds[flask->held.preparation.measurand] = flask->trueStrengthAt_g_per_L(used);
            run::Tube tube;
            tube.role = run::Role::Standard;
            tube.standard = standard.id;
            m_rack.run.standards.push_back(standard);
            addTube(tube, holds);
        }
    }

    void addControl()
    {
        MadeSample control;
        control.sample.id = controlNameOf(m_parts.use, m_parts.now.date());
        control.content = m_parts.use.control;
        control.planned.sample.id = control.sample.id;
        control.planned.sample.product = u"control material"_s;
        run::Tube tube;
        tube.role = run::Role::Control;
        tube.sample = control.sample.id;
        m_rack.run.samples.push_back(control.sample);
        m_rack.plan.samples.push_back(control.planned);
        addTube(tube, control.content);
    }

    void addSample(const MadeSample &made)
    {
        m_rack.run.samples.push_back(made.sample);
        m_rack.plan.samples.push_back(made.planned);
        run::Tube tube;
        tube.sample = made.sample.id;
        tube.sampleVolume_mL = made.volume_mL;
        const bool coloured = made.planned.sample.matrix == assay::Matrix::Coloured;
        const double colour = coloured                                              ? 0.19
                              : made.planned.sample.matrix == assay::Matrix::Turbid ? 0.04
                                                                                    : 0;
        if (coloured) {
            run::Tube own = tube;
            own.role = run::Role::SampleBlank;
            addTube(own, made.pipetted_g_per_L(), colour);
        }
        for (int i = 0; i < 2; ++i)
            addTube(tube, made.pipetted_g_per_L(), colour);
    }

    void takeReagents()
    {
        std::map<QString, double> needed_mL;
        for (const run::Tube &tube : m_rack.run.tubes) {
            for (const run::Addition &addition : run::plannedAdditions(m_rack.method, tube)) {
                if (addition.content == run::Addition::Content::Component)
                    needed_mL[addition.component] += addition.volume_mL;
            }
        }
        for (const assay::Component &component : m_rack.method.components) {
            if (component.id == m_rack.method.sample || component.id == m_rack.method.diluent)
                continue;
            m_rack.lots[component.id] =
                m_cupboard.take(component, needed_mL[component.id], m_parts.now.date(), m_parts.analyst);
        }
    }

    /// What depends on the containers: an enzyme that is weak, a reagent that has stood open.
    void settleTruths()
    {
        const OpenLot &starter = m_rack.lots.at(m_rack.method.starter);
        const QDate day = m_parts.now.date();
        const double aged = 0.00006 * double(starter.opened.daysTo(day));
        for (TubeTruth &truth : m_rack.truths) {
            truth.conversion = starter.activityOn(day);
            truth.blankSignal += aged;
        }
    }

    void addUncertainties()
    {
        m_rack.run.uncertainty = planning::inputsFor(m_rack.method, m_parts.laboratory, m_rack.run);
        m_rack.plan.owners = planning::ownersFor(m_rack.method, m_parts.laboratory, m_rack.run);
        m_rack.plan.rackRows = m_parts.laboratory.rackRows;
        m_rack.plan.rackColumns = m_parts.laboratory.rackColumns;
    }

    const RackParts &m_parts;
    Cupboard &m_cupboard;
    const Story &m_story;
    Chance &m_chance;
    Rack m_rack;
};

} // namespace

QString controlNameOf(const MethodInUse &use, const QDate &day)
{
    static const std::map<QString, QString> names{
        {u"total-sulphite"_s, u"SO2"_s}, {u"l-malic-acid"_s, u"malic"_s},
        {u"acetic-acid"_s, u"acetic"_s}, {u"glucose-fructose"_s, u"sugars"_s},
        {u"glycerol"_s, u"glycerol"_s},  {u"ethanol"_s, u"ethanol"_s}};
    return u"Control %1, %2-%3"_s.arg(names.at(use.id)).arg(day.year()).arg(day.month() <= 6 ? 1 : 2);
}

Rack rackOf(const RackParts &parts, Cupboard &cupboard, const Story &story, Chance &chance)
{
    return RackMaker(parts, cupboard, story, chance).make();
}

} // namespace plateau::sampledata
