// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/places.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct PlacesWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Words)
};

bool sameContents(const run::Tube &one, const run::Tube &other)
{
    return one.role == other.role && one.sample == other.sample && one.standard == other.standard;
}

QString contentsName(const run::Tube &tube)
{
    switch (tube.role) {
    case run::Role::Blank:
        return PlacesWords::tr("blank");
    case run::Role::SampleBlank:
        return PlacesWords::tr("sample blank of %1").arg(tube.sample);
    case run::Role::Standard:
        return withRoleWord(PlacesWords::tr("standard %1"), tube.standard);
    case run::Role::Control:
        return withRoleWord(PlacesWords::tr("control %1"), tube.sample.isEmpty() ? tube.standard : tube.sample);
    case run::Role::Spiked:
        return PlacesWords::tr("spiked sample %1").arg(tube.sample);
    case run::Role::Sample:
        break;
    }
    return withRoleWord(PlacesWords::tr("sample %1"), tube.sample);
}

} // namespace

QString withRoleWord(const QString &phrase, const QString &name)
{
    const QString word = QString(phrase).remove(u"%1"_s).trimmed();
    const QRegularExpression own(u"(?<!\\w)%1(?!\\w)"_s.arg(QRegularExpression::escape(word)),
                                 QRegularExpression::CaseInsensitiveOption |
                                     QRegularExpression::UseUnicodePropertiesOption);
    return !word.isEmpty() && own.match(name).hasMatch() ? name : phrase.arg(name);
}

std::vector<Place> readingOrder(const assay::Method &method, const run::Run &run)
{
    std::vector<Place> order;
    for (const QString &reading : assay::readingsInOrder(method)) {
        for (int tube = 0; tube < static_cast<int>(run.tubes.size()); ++tube)
            order.push_back({tube, reading});
    }
    return order;
}

const run::Reading *readingAt(const run::Run &run, const Place &place)
{
    const auto &readings = run.tubes.at(static_cast<std::size_t>(place.tube)).readings;
    const auto found = readings.find(place.reading);
    return found == readings.end() ? nullptr : &found->second;
}

std::optional<Place> nextUnread(const assay::Method &method, const run::Run &run,
                                const std::optional<Place> &from)
{
    std::vector<Place> order = readingOrder(method, run);
    if (from) {
        const auto at = std::find(order.begin(), order.end(), *from);
        if (at != order.end())
            std::rotate(order.begin(), at, order.end());
    }
    const auto unread = std::find_if(order.begin(), order.end(), [&run](const Place &place) {
        return run.tubes[static_cast<std::size_t>(place.tube)].spoilt.isEmpty() && !readingAt(run, place);
    });
    return unread == order.end() ? std::nullopt : std::optional(*unread);
}

Place placeAfter(const assay::Method &method, const run::Run &run, const Place &place)
{
    const std::vector<Place> order = readingOrder(method, run);
    const auto at = std::find(order.begin(), order.end(), place);
    return at == order.end() || at + 1 == order.end() ? order.front() : *(at + 1);
}

namespace {

QString whichText(const run::Run &run, int tube)
{
    const run::Tube &own = run.tubes.at(static_cast<std::size_t>(tube));
    const auto alike = [&own](const run::Tube &other) { return sameContents(own, other); };
    const auto all = std::count_if(run.tubes.begin(), run.tubes.end(), alike);
    if (all == 1)
        return {};
    const auto upToHere = std::count_if(run.tubes.begin(), run.tubes.begin() + tube + 1, alike);
    return PlacesWords::tr("%1 of %2").arg(upToHere).arg(all);
}

} // namespace

QString contentsText(const run::Run &run, int tube)
{
    const QString name = contentsName(run.tubes.at(static_cast<std::size_t>(tube)));
    const QString which = whichText(run, tube);
    return which.isEmpty() ? name : PlacesWords::tr("%1, %2").arg(name, which);
}

QString briefContentsText(const run::Run &run, int tube)
{
    const run::Tube &own = run.tubes.at(static_cast<std::size_t>(tube));
    return own.role == run::Role::Sample ? own.sample : contentsName(own);
}

QString whichOfAlikeText(const run::Run &run, int tube)
{
    return whichText(run, tube);
}

int tubeNumber(const Place &place)
{
    return place.tube + 1;
}

QString readingText(double absorbance)
{
    // A photometer may show a fourth decimal; beyond a fifth there is only what arithmetic left.
    const double five = std::round(absorbance * 1e5) / 1e5;
    const QString three = evaluation::absorbanceText(absorbance);
    const QString plain = evaluation::plainText(five);
    return plain.size() > three.size() ? plain : three;
}

QString readingText(const run::Reading &reading)
{
    if (const double *single = std::get_if<double>(&reading))
        return readingText(*single);
    const auto &series = std::get<run::ReadingSeries>(reading);
    if (series.empty())
        return {};
    return PlacesWords::tr("%n readings, last %1", nullptr, static_cast<int>(series.size()))
        .arg(readingText(series.back().absorbance));
}

} // namespace plateau::ui
