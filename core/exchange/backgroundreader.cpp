// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/backgroundreader.h"

#include "core/assay/matrix.h"

#include <QCoreApplication>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct BackgroundReaderWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::BackgroundReader)
};

DerivedTerm takeTerm(const Place &place)
{
    DerivedTerm term;
    Fields fields(place);
    if (const auto method = fields.find(u"method"_s);
        method && take(*method, term.method) && term.method.isEmpty())
        place.findings.broken(
            method->pointer,
            BackgroundReaderWording::tr("expected the id of a method; leave it out to mean this one"));
    fields.needed(u"measurand"_s, term.measurand);
    fields.needed(u"factor"_s, term.factor);
    fields.done();
    return term;
}

Derived takeDerived(const Place &place)
{
    Derived derived;
    Fields fields(place);
    fields.needed(u"id"_s, derived.id);
    fields.needed(u"name"_s, derived.name);
    if (const auto terms = fields.need(u"terms"_s))
        forEach(*terms, [&](const Place &element) { derived.terms.push_back(takeTerm(element)); });
    fields.done();
    return derived;
}

UsualStandard takeUsualStandard(const Place &place)
{
    UsualStandard standard;
    Fields fields(place);
    fields.optional(u"concentration_g_per_L"_s, standard.concentration_g_per_L);
    fields.optional(u"lossPerHour"_s, standard.lossPerHour);
    fields.done();
    return standard;
}

UsualTubes takeTubes(const Place &place)
{
    UsualTubes tubes;
    Fields fields(place);
    fields.needed(u"blanks"_s, tubes.blanks);
    fields.needed(u"replicates"_s, tubes.replicates);
    fields.needed(u"standards"_s, tubes.standards);
    fields.done();
    return tubes;
}

Preparation takePreparation(const Place &place)
{
    Preparation preparation;
    Fields fields(place);
    if (const auto matrix = fields.need(u"matrix"_s))
        takeWord(*matrix, matrixWords(), preparation.matrix);
    fields.needed(u"text"_s, preparation.text);
    fields.done();
    return preparation;
}

void takeTexts(Fields &fields, const QString &key, std::vector<QString> &texts)
{
    if (const auto place = fields.find(key))
        forEach(*place, [&](const Place &element) { take(element, texts.emplace_back()); });
}

} // namespace

void takeBackground(Fields &fields, Method &method)
{
    if (const auto place = fields.find(u"derived"_s))
        forEach(*place, [&](const Place &element) { method.derived.push_back(takeDerived(element)); });
    if (const auto place = fields.find(u"standard"_s))
        method.standard = takeUsualStandard(*place);
    if (const auto place = fields.find(u"tubes"_s))
        method.tubes = takeTubes(*place);
    takeTexts(fields, u"reactions"_s, method.reactions);
    takeTexts(fields, u"interferences"_s, method.interferences);
    if (const auto place = fields.find(u"samplePreparation"_s))
        forEach(*place,
                [&](const Place &element) { method.samplePreparation.push_back(takePreparation(element)); });
    takeTexts(fields, u"cautions"_s, method.cautions);
}

} // namespace plateau::exchange
