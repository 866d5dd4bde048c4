// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/shippedtexts.h"

#include <QByteArray>
#include <QCoreApplication>

namespace plateau::exchange {

QString inWindowLanguage(const QString &text)
{
    // resources/translations/update collects the texts from the files of the methods.
    return QCoreApplication::translate("plateau::exchange::ShippedMethods", text.toUtf8().constData());
}

void putInWindowLanguage(assay::Method &method)
{
    const auto put = [](QString &text) { text = inWindowLanguage(text); };
    put(method.name);
    put(method.source);
    put(method.principle);
    for (assay::Component &component : method.components)
        put(component.name);
    for (assay::Measurand &measurand : method.measurands)
        put(measurand.name);
    for (assay::Derived &derived : method.derived)
        put(derived.name);
    for (std::vector<QString> *texts : {&method.reactions, &method.interferences, &method.cautions}) {
        for (QString &text : *texts)
            put(text);
    }
    for (assay::Preparation &preparation : method.samplePreparation)
        put(preparation.text);
}

} // namespace plateau::exchange
