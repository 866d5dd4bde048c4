// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/soundmethods.h"

#include "core/assay/matrix.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

/// Not blank, at most some forty characters.
QString label(Random &random)
{
    static const std::vector<QString> pieces{u"acid"_s,       u"é"_s,    u"µL"_s,         u"\"quoted\""_s,
                                             u"\\"_s,         u"/a~b"_s, u"リンゴ"_s,     u"שכר"_s,
                                             u"\U0001F347"_s, u" - "_s,  u"{\"id\":1}"_s, u"%1"_s,
                                             u"x"_s,          u"→"_s,    u"0"_s};
    QString text = random.oneOf(pieces).trimmed();
    for (int i = random.whole(0, 5); i > 0; --i)
        text += random.oneOf(pieces);
    return text;
}

QString prose(Random &random)
{
    QString text = label(random);
    for (int i = random.whole(0, 8); i > 0; --i)
        text += (random.chance(0.2) ? u"\n"_s : random.chance(0.1) ? u"\t"_s : u" "_s) + label(random);
    return text;
}

std::vector<QString> proseList(Random &random)
{
    std::vector<QString> texts(static_cast<std::size_t>(random.whole(0, 3)));
    for (QString &text : texts)
        text = prose(random);
    return texts;
}

Interval interval(Random &random, double lower, double upper)
{
    const double a = random.between(lower, upper);
    const double b = random.between(lower, upper);
    return {std::min(a, b), std::max(a, b)};
}

template <class Make> auto maybe(Random &random, Make make) -> std::optional<decltype(make())>
{
    return random.chance() ? std::optional(make()) : std::nullopt;
}

/// Ids are told apart by their number.
QString addComponent(Random &random, Method &method, double largest_mL = 3)
{
    Component component;
    component.id = label(random) + QString::number(method.components.size());
    component.name = label(random);
    component.volume_mL = random.magnitude(0.01, largest_mL);
    component.suspension = random.chance(0.3);
    method.components.push_back(component);
    method.steps.push_back(AddStep{component.id});
    return component.id;
}

QString addReading(Random &random, Method &method)
{
    const QString reading = u"A"_s + QString::number(readingsInOrder(method).size()) +
                            (random.chance(0.1) ? label(random) : QString());
    if (random.chance(0.9))
        method.steps.push_back(MixStep{});
    if (random.chance(0.9))
        method.steps.push_back(
            WaitStep{interval(random, 0, 60), maybe(random, [&] { return interval(random, 4, 60); })});
    method.steps.push_back(ReadStep{reading});
    return reading;
}

void addRecipe(Random &random, Method &method)
{
    for (int i = random.whole(0, 3); i > 0; --i)
        addComponent(random, method);
    method.diluent = addComponent(random, method);
    method.sample = addComponent(random, method, 0.5);
    if (random.chance()) {
        Component &sample = method.components.back();
        sample.range_mL = Interval{
            sample.volume_mL * random.between(0.1, 1),
            sample.volume_mL + method.components[method.components.size() - 2].volume_mL * random.unit()};
    }
    addReading(random, method);
    method.starter = addComponent(random, method, 0.1);
    addReading(random, method);
    for (int i = random.whole(0, 2); i > 0; --i) {
        addComponent(random, method, 0.1);
        addReading(random, method);
    }
    random.shuffle(method.components);
}

Signal signal(Random &random, const std::vector<QString> &readings)
{
    const int last = static_cast<int>(readings.size()) - 1;
    const auto at = [&](int index) { return readings[static_cast<std::size_t>(index)]; };
    if (last >= 2 && random.chance(0.3)) {
        const int middle = random.whole(1, last - 1);
        return CoupledIndicatorSignal{at(random.whole(0, middle - 1)), at(middle),
                                      at(random.whole(middle + 1, last))};
    }
    const int from = random.whole(0, last - 1);
    return DifferenceSignal{at(from), at(random.whole(from + 1, last))};
}

void addMeasurands(Random &random, Method &method)
{
    const std::vector<QString> readings = readingsInOrder(method);
    for (int i = random.whole(1, 3); i > 0; --i) {
        Measurand measurand;
        measurand.id = label(random) + QString::number(i);
        measurand.name = label(random);
        measurand.molarMass_g_per_mol = random.magnitude(10, 1000);
        measurand.chromophorePerMolecule = random.chance(0.8) ? random.whole(1, 4) : random.between(0.1, 20);
        measurand.signal = signal(random, readings);
        measurand.typicalRange_g_per_L = maybe(random, [&] { return interval(random, 0, 300); });
        method.measurands.push_back(measurand);
    }
}

void addPhotometry(Random &random, Method &method)
{
    method.chromophore = random.chance() ? u"NADH"_s : label(random);
    for (int i = random.whole(1, 4); i > 0; --i)
        method.absorptivity_L_per_mol_cm[random.whole(190, 1100)] = random.magnitude(100, 1e6);
    method.wavelength_nm = method.absorptivity_L_per_mol_cm.begin()->first;
    method.pathLength_mm = random.magnitude(0.1, 1000);
    method.direction = random.chance() ? Direction::Rising : Direction::Falling;
    method.volumeCorrection = random.chance() ? VolumeCorrection::None : VolumeCorrection::ToFinalVolume;
}

void addLimits(Random &random, Method &method)
{
    method.window.minSignal = random.between(0, 0.5);
    method.window.maxSignal = random.between(0.51, 3);
    method.window.maxAbsorbance = maybe(random, [&] { return random.between(1, 4); });
    method.window.reserveAbsorbance = maybe(random, [&] { return random.between(0, 0.9); });
    method.acceptance.maxBlankSignal = maybe(random, [&] { return random.between(0, 1); });
    method.acceptance.standardRecovery_percent = maybe(random, [&] { return interval(random, 0, 1000); });
    method.acceptance.spikeRecovery_percent = maybe(random, [&] { return interval(random, 0, 1000); });
    method.acceptance.repeatability = maybe(random, [&] {
        return Repeatability{random.magnitude(1e-6, 10), random.between(0, 1)};
    });
    if (random.chance(0.3))
        method.extrapolate = Extrapolation{random.oneOf(readingsInOrder(method)), random.whole(2, 20)};
}

void addBackground(Random &random, Method &method)
{
    for (int i = random.whole(0, 2); i > 0; --i) {
        Derived derived{label(random) + u"derived"_s + QString::number(i), label(random), {}};
        for (int j = random.whole(1, 3); j > 0; --j) {
            const double factor = (random.chance() ? 1 : -1) * random.magnitude(1e-6, 1e6);
            if (random.chance())
                derived.terms.push_back({{}, random.oneOf(method.measurands).id, factor});
            else
                derived.terms.push_back({method.id + u"other"_s, label(random), factor});
        }
        method.derived.push_back(derived);
    }
    method.standard = maybe(random, [&] {
        return UsualStandard{maybe(random, [&] { return random.magnitude(1e-6, 1000); }),
                             maybe(random, [&] { return random.unit(); })};
    });
    method.tubes = maybe(random, [&] {
        return UsualTubes{random.whole(0, 96), random.whole(1, 20), random.whole(0, 96)};
    });
    method.reactions = proseList(random);
    method.interferences = proseList(random);
    for (const auto &[word, matrix] : matrixWords()) {
        if (random.chance())
            method.samplePreparation.push_back({matrix, prose(random)});
    }
    method.cautions = proseList(random);
}

} // namespace

Method soundMethod(Random &random)
{
    Method method;
    method.id = label(random);
    method.version = random.whole(1, 2000000000);
    method.name = label(random);
    method.source = prose(random);
    method.principle = random.chance() ? prose(random) : QString();
    addPhotometry(random, method);
    addRecipe(random, method);
    addMeasurands(random, method);
    addLimits(random, method);
    addBackground(random, method);
    return method;
}

} // namespace plateau::test
