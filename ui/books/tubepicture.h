// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QString>

#include <vector>

namespace plateau::ui {

/// The part a layer plays in the tube.
enum class TubePart { Reagent, Diluent, Sample, Starter };

struct TubeLayer {
    QString name;
    double volume_mL = 0;
    TubePart part = TubePart::Reagent;
    bool suspension = false;
    bool operator==(const TubeLayer &) const = default;
};

/// A reading, taken while the tube is filled that far.
struct TubeMark {
    QString reading;
    double filled_mL = 0;
    bool operator==(const TubeMark &) const = default;
};

/// What goes into a sample's tube at the usual volume, in the order of the steps, the first at the bottom.
struct TubePicture {
    std::vector<TubeLayer> layers;
    std::vector<TubeMark> marks;
    bool operator==(const TubePicture &) const = default;
};

TubePicture tubePicture(const assay::Method &method);
double filled_mL(const TubePicture &picture);
/// "Buffer, 1 mL", with its part where it plays one.
QString layerWords(const TubeLayer &layer);
/// The same with the volume first, to stand beside the drawing.
QString layerLabel(const TubeLayer &layer);
/// All of it in a few sentences, for those who do not see the drawing.
QString pictureWords(const TubePicture &picture);

} // namespace plateau::ui
