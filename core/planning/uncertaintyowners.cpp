// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/uncertaintyowners.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using enum UncertaintyInput;
using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct UncertaintyOwnersWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::UncertaintyOwners)
};

QString percent()
{
    return u"%"_s;
}

class Record
{
public:
    Record(const run::Run &run, const std::optional<PlanRecord> &plan, const QString &sample)
        : m_run(run)
        , m_plan(plan)
    {
        for (const run::Sample &each : run.samples) {
            if (sample.isEmpty() || each.id == sample)
                m_samples.push_back(&each);
        }
    }

    std::vector<OwnedInput> all()
    {
        for (const UncertaintyInput input : statedInputs()) {
            if (input == Dilution)
                addOwnSteps();
            if (counts(input))
                add(input);
        }
        if (m_run.calibration != run::Calibration::Absorptivity)
            addStandards();
        m_owned.push_back(replicates());
        return std::move(m_owned);
    }

    std::vector<OwnedInput> stated()
    {
        for (const UncertaintyInput input : statedInputs())
            add(input);
        if (m_run.calibration != run::Calibration::Absorptivity)
            addStandards();
        return std::move(m_owned);
    }

private:
    bool counts(UncertaintyInput input) const
    {
        if (input == Absorptivity || input == PathLength)
            return m_run.calibration == run::Calibration::Absorptivity;
        if (input == Dilution)
            return std::ranges::any_of(m_samples, [](const run::Sample *sample) {
                return std::ranges::any_of(sample->dilution,
                                           [](const auto &step) { return !step.uncertainty_percent; });
            });
        if (input == Extract)
            return std::ranges::any_of(
                m_samples, [](const run::Sample *sample) { return sample->form == run::Form::Solid; });
        return true;
    }

    const InputOwner *kept(UncertaintyInput input, const QString &standard = {}) const
    {
        if (!m_plan)
            return nullptr;
        const auto found = std::ranges::find_if(m_plan->owners, [&](const InputOwner &owner) {
            return owner.input == input && owner.standard == standard;
        });
        return found == m_plan->owners.end() ? nullptr : &*found;
    }

    void add(UncertaintyInput input)
    {
        const InputOwner *owner = kept(input);
        m_owned.push_back(
            {input, inputName(input), numberOf(*m_run.uncertainty, input),
             input == Absorbance ? QString() : percent(),
             owner ? owner->owner : UncertaintyOwnersWording::tr("not on record"),
             owner ? owner->source : UncertaintyOwnersWording::tr("the run came with this number"),
             owner && owner->isDefault, owner != nullptr});
    }

    void addOwnSteps()
    {
        for (const run::Sample *sample : m_samples) {
            const std::vector<StepGlass> *glass = glassOf(sample->id);
            for (size_t i = 0; i < sample->dilution.size(); ++i) {
                if (sample->dilution[i].uncertainty_percent)
                    addStep(sample->dilution[i], glass && i < glass->size() ? &(*glass)[i] : nullptr);
            }
        }
    }

    void addStep(const run::DilutionStep &step, const StepGlass *glass)
    {
        const QString name =
            UncertaintyOwnersWording::tr("dilution step %1 to %2")
                .arg(plainText(step.take_mL), withUnit(plainText(step.makeUpTo_mL), u"mL"_s));
        const OwnedInput owned{
            Dilution,
            name,
            step.uncertainty_percent,
            percent(),
            glass ? UncertaintyOwnersWording::tr("%1 with %2").arg(glass->pipette, glass->flask)
                  : UncertaintyOwnersWording::tr("not on record"),
            glass
                ? UncertaintyOwnersWording::tr("the laboratory's list of glassware when the run was planned")
                : UncertaintyOwnersWording::tr("the run came with this number"),
            false,
            glass != nullptr};
        if (std::ranges::find(m_owned, owned) == m_owned.end())
            m_owned.push_back(owned);
    }

    const std::vector<StepGlass> *glassOf(const QString &sample) const
    {
        if (!m_plan)
            return nullptr;
        const auto found = std::ranges::find_if(
            m_plan->samples, [&](const PlannedSample &planned) { return planned.sample.id == sample; });
        return found == m_plan->samples.end() ? nullptr : &found->glass;
    }

    void addStandards()
    {
        for (const run::Standard &standard : m_run.standards) {
            if (!calibrates(m_run, standard))
                continue;
            OwnedInput owned = sourceOfStandard(standard);
            if (const InputOwner *owner = kept(Standard, standard.id)) {
                owned.owner = owner->owner;
                owned.source = owner->source;
                owned.isDefault = owner->isDefault;
            }
            m_owned.push_back(std::move(owned));
        }
    }

    const run::Run &m_run;
    const std::optional<PlanRecord> &m_plan;
    std::vector<const run::Sample *> m_samples;
    std::vector<OwnedInput> m_owned;
};

} // namespace

std::vector<InputOwner> ownersToKeep(const std::vector<OwnedInput> &sources)
{
    std::vector<InputOwner> owners;
    for (const OwnedInput &source : sources) {
        if (source.input != Replicates)
            owners.push_back({source.input, source.standard, source.owner, source.source, source.isDefault});
    }
    return owners;
}

std::vector<InputOwner> ownersFor(const assay::Method &method, const Laboratory &laboratory,
                                  const run::Run &run)
{
    std::vector<OwnedInput> sources = uncertaintySources(method, laboratory, run);
    std::erase_if(sources, [&](const OwnedInput &source) {
        return source.input != Standard && source.input != Replicates &&
               (!run.uncertainty || numberOf(*run.uncertainty, source.input) != source.value);
    });
    return ownersToKeep(sources);
}

std::vector<OwnedInput> ownersOnRecord(const run::Run &run, const std::optional<PlanRecord> &plan,
                                       const QString &sample)
{
    return run.uncertainty ? Record(run, plan, sample).all() : std::vector<OwnedInput>();
}

std::vector<OwnedInput> statedOnRecord(const run::Run &run, const std::optional<PlanRecord> &plan)
{
    return run.uncertainty ? Record(run, plan, {}).stated() : std::vector<OwnedInput>();
}

} // namespace plateau::planning
