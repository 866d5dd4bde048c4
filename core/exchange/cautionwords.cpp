// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/cautionwords.h"

#include <QByteArray>
#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace plateau::exchange {

namespace {

/// What the shipped methods say, to the letter: a method of a laboratory is data and stays as it was written.
constexpr std::array shippedCautions{
    QT_TRANSLATE_NOOP(
        "plateau::exchange::Cautions",
        "The supplier's instructions, the local safety rules and licensed practice come first."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Volatile: keep samples, dilutions and cuvettes closed and cool, pipette below the "
                      "surface, and take every tube to its reading without delay."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Acetaldehyde boils at about 20 °C, burns easily and may cause cancer: open the cold "
                      "bottle under a hood, away from flames."),
    QT_TRANSLATE_NOOP(
        "plateau::exchange::Cautions",
        "Perchloric acid burns skin and eyes and is a strong oxidiser that can set organic matter alight: "
        "wear goggles and gloves, rinse spills with much water, and never let it dry in."),
    QT_TRANSLATE_NOOP(
        "plateau::exchange::Cautions",
        "Sodium and potassium hydroxide solutions burn skin and eyes: wear goggles and gloves."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Enzyme solutions may be preserved with sodium azide: toxic if swallowed or through "
                      "the skin, sets free a very toxic gas with acids, and forms explosive salts with "
                      "copper and lead drains. Wear gloves and collect the waste as your local rules say."),
    QT_TRANSLATE_NOOP(
        "plateau::exchange::Cautions",
        "Don't look into the lamp of an open photometer: below 400 nm it gives off ultraviolet radiation."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Keep the bench free of acetic acid and its vapour: the blank shows it."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "A closed flask that is warmed builds up pressure: leave a third of it empty, hold the "
                      "stopper down with a cloth, and open it cold."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Enzyme suspensions may be preserved with sodium azide: toxic if swallowed or through "
                      "the skin, sets free a very toxic gas with acids, and forms explosive salts with "
                      "copper and lead drains. Wear gloves and collect the waste as your local rules say."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Swirl enzyme suspensions before every series; don't shake them to a foam."),
    QT_TRANSLATE_NOOP(
        "plateau::exchange::Cautions",
        "Potassium hexacyanoferrate(II) must not meet strong acid: hydrogen cyanide may form. Keep this "
        "clarification and acid deproteinisation apart, in the flask and in the waste."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Keep ammonia and ammonium salts away from the bench while you pipette."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions", "Treat red wine with about 0.2 g of PVPP for 10 mL and "
                                                     "filter it first (Regulation (EEC) No 2676/90, Annex)."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "The buffer of pH 10 irritates skin and eyes: wear goggles and gloves."),
    QT_TRANSLATE_NOOP(
        "plateau::exchange::Cautions",
        "Enzyme solutions and suspensions may be preserved with sodium azide: toxic if swallowed or through "
        "the skin, sets free a very toxic gas with acids, and forms explosive salts with copper and lead "
        "drains. Wear gloves and collect the waste as your local rules say."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Read at 2 min and again at 4 min before the enzyme: a drift of more than 0.002 asks "
                      "for a wait, not for the enzyme. Keep the tubes in the dark after it, read at 45 and "
                      "at 60 min, and enter the larger value (French order of 7 October 1987, annex X)."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "INT is a tetrazolium salt that stains and may irritate: wear gloves."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions", "Ethanol burns easily: keep it from flames."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Acidified sulphite gives off sulphur dioxide, which irritates the airways and can "
                      "bring on an attack of asthma: work under a hood, and never acidify a sample."),
    QT_TRANSLATE_NOOP(
        "plateau::exchange::Cautions",
        "A sulphite standard loses strength by the hour: make it fresh and note the time. The loss of 2 % an "
        "hour that a run of this method begins with is common practice, no source; find your own."),
    QT_TRANSLATE_NOOP(
        "plateau::exchange::Cautions",
        "If the reaction has not ended after 15 min, read every 5 min until the rise is steady and enter all "
        "readings: the result is extrapolated to the addition (same Regulation)."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Metaphosphoric acid burns skin and eyes: wear goggles and gloves."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions", "The buffer has to neutralise the acid that comes with "
                                                     "the sample: check that the tube stays near pH 6."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "A standard of L-ascorbic acid loses strength by the hour, in water far faster than in "
                      "metaphosphoric acid: make it fresh and note the time."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Don't look into the lamp of an open photometer: below 300 nm its ultraviolet "
                      "radiation burns eyes and skin within minutes."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions", "Keep the tubes in the dark after the enzyme."),
    QT_TRANSLATE_NOOP("plateau::exchange::Cautions",
                      "Hydrogen peroxide and alkali burn skin and eyes: wear goggles and gloves."),
};

} // namespace

QString shownCaution(const QString &caution)
{
    const QByteArray text = caution.toUtf8();
    const auto isIt = [&text](const char *shipped) { return text == shipped; };
    return std::any_of(shippedCautions.begin(), shippedCautions.end(), isIt)
               ? QCoreApplication::translate("plateau::exchange::Cautions", text.constData())
               : caution;
}

} // namespace plateau::exchange
