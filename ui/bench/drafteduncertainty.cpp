// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/drafteduncertainty.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct DraftedUncertaintyWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::DraftedUncertainty)
};

using planning::OwnedInput;
using planning::UncertaintyInput;

QString pointerOf(UncertaintyInput input)
{
    const QString word = planning::inputWord(input);
    return assay::pointerTo(u"/uncertainty"_s,
                            input == UncertaintyInput::Absorbance ? word : word + u"_percent"_s);
}

void putTyped(OwnedInput &owned, const QString &text, const QString &person, const NumberReader &reader)
{
    if (text.trimmed().isEmpty())
        return;
    const double typed = reader.number(text, pointerOf(owned.input));
    if (typed == owned.value)
        return;
    const QString number = uncertaintyText(*owned.value);
    owned.source =
        DraftedUncertaintyWords::tr("typed for this run, in place of %1 (%2)")
            .arg(owned.unit.isEmpty() ? number : evaluation::withUnit(number, owned.unit), ownerText(owned));
    owned.owner = person.isEmpty() ? DraftedUncertaintyWords::tr("whoever plans the run") : person;
    owned.value = typed;
    owned.isDefault = false;
}

void putRecipe(OwnedInput &owned, const std::optional<StandardDraft> &standard)
{
    if (standard && standard->id.trimmed() == owned.standard && !standard->uncertaintySource.isEmpty())
        owned.source = standard->uncertaintySource;
}

} // namespace

QString uncertaintyText(double value)
{
    return threeFigures(value);
}

QString ownerText(const OwnedInput &owned)
{
    return DraftedUncertaintyWords::tr("%1: %2").arg(owned.owner, owned.source);
}

std::vector<OwnedInput> withTyped(std::vector<OwnedInput> sources, const RunDraft &draft,
                                  const NumberReader &reader)
{
    const std::vector<UncertaintyInput> &inputs = planning::statedInputs();
    for (OwnedInput &owned : sources) {
        const auto at = std::ranges::find(inputs, owned.input);
        if (at != inputs.end())
            putTyped(owned, draft.uncertainty.texts[static_cast<std::size_t>(at - inputs.begin())],
                     draft.person, reader);
        else if (owned.input == UncertaintyInput::Standard)
            putRecipe(owned, draft.standard);
    }
    return sources;
}

run::UncertaintyInputs inputsOf(const std::vector<OwnedInput> &owned)
{
    run::UncertaintyInputs inputs;
    for (const OwnedInput &each : owned) {
        if (std::ranges::find(planning::statedInputs(), each.input) != planning::statedInputs().end())
            planning::setNumber(inputs, each.input, each.value.value_or(0));
    }
    return inputs;
}

} // namespace plateau::ui
