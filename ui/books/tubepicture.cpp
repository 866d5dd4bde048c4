// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/tubepicture.h"

#include "core/assay/listed.h"
#include "core/evaluation/appraisal.h"
#include "core/evaluation/format.h"

#include <QCoreApplication>
#include <QStringList>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct TubePictureWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TubePicture)
};

TubePart layerPartOf(const assay::Method &method, const QString &component)
{
    if (component == method.sample)
        return TubePart::Sample;
    if (component == method.diluent)
        return TubePart::Diluent;
    return component == method.starter ? TubePart::Starter : TubePart::Reagent;
}

QString partWord(TubePart part)
{
    switch (part) {
    case TubePart::Sample:
        return TubePictureWords::tr("sample");
    case TubePart::Diluent:
        return TubePictureWords::tr("diluent");
    case TubePart::Starter:
        return TubePictureWords::tr("starter");
    case TubePart::Reagent:
        break;
    }
    return {};
}

/// Empty where the name says as much.
QString partBeside(const TubeLayer &layer)
{
    const QString part = partWord(layer.part);
    return layer.name.compare(part, Qt::CaseInsensitive) == 0 ? QString() : part;
}

QString millilitres(double volume_mL)
{
    // Sums of decimal fractions would else show what binary ones made of them.
    return TubePictureWords::tr("%1 mL").arg(
        evaluation::roundedText(volume_mL, 6));
}

} // namespace

TubePicture tubePicture(const assay::Method &method)
{
    TubePicture picture;
    const std::vector<double> volumes_mL = evaluation::appraise(method).volumeAfterStep_mL;
    double before_mL = 0;
    for (std::size_t i = 0; i < method.steps.size(); ++i) {
        if (const auto *add = std::get_if<assay::AddStep>(&method.steps[i])) {
            const assay::Component *component = assay::findComponent(method, add->component);
            if (component && volumes_mL[i] > before_mL)
                picture.layers.push_back({component->name, volumes_mL[i] - before_mL,
                                          layerPartOf(method, component->id), component->suspension});
        } else if (const auto *read = std::get_if<assay::ReadStep>(&method.steps[i])) {
            picture.marks.push_back({read->reading, volumes_mL[i]});
        }
        before_mL = volumes_mL[i];
    }
    return picture;
}

double filled_mL(const TubePicture &picture)
{
    double volume_mL = 0;
    for (const TubeLayer &layer : picture.layers)
        volume_mL += layer.volume_mL;
    return volume_mL;
}

QString layerWords(const TubeLayer &layer)
{
    QStringList words{layer.name, partBeside(layer), millilitres(layer.volume_mL)};
    if (layer.suspension)
        words << TubePictureWords::tr("swirl");
    words.removeAll(QString());
    return words.join(u", "_s);
}

QString layerLabel(const TubeLayer &layer)
{
    QStringList words{u"%1  %2"_s.arg(millilitres(layer.volume_mL), layer.name), partBeside(layer)};
    words.removeAll(QString());
    return words.join(u", "_s);
}

QString pictureWords(const TubePicture &picture)
{
    if (picture.layers.empty())
        return TubePictureWords::tr("Nothing is in the tube yet.");
    QStringList layers;
    for (const TubeLayer &layer : picture.layers)
        layers << layerWords(layer);
    QStringList sentences{TubePictureWords::tr("From the bottom: %1.").arg(assay::listed(layers)),
                          TubePictureWords::tr("Together %1.").arg(millilitres(filled_mL(picture)))};
    for (const TubeMark &mark : picture.marks)
        sentences << TubePictureWords::tr("%1 is read at %2.").arg(mark.reading, millilitres(mark.filled_mL));
    return sentences.join(u' ');
}

} // namespace plateau::ui
