// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/reportfields.h"

#include "core/assay/label.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ReportFieldsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ReportFields)
};

constexpr qsizetype longestValue = 4000;

} // namespace

QStringList ReportFields::sampleNames()
{
    return {u"item"_s, u"condition"_s, u"received"_s, u"sampled"_s};
}

QStringList ReportFields::names()
{
    return QStringList{u"report-number"_s, u"issued"_s,     u"customer"_s,   u"customer-contact"_s,
                       u"order"_s,         u"location"_s,   u"tested"_s,     u"authorised-by"_s,
                       u"sampling"_s,      u"conditions"_s, u"deviations"_s, u"external"_s,
                       u"opinions"_s,      u"additional"_s} +
           sampleNames();
}

QString ReportFields::add(const QString &assignment)
{
    const qsizetype sign = assignment.indexOf(u'=');
    const QString key = assignment.left(std::max<qsizetype>(sign, 0));
    const qsizetype slash = key.indexOf(u'/');
    const QString name = slash < 0 ? key : key.first(slash);
    const QString value = assignment.sliced(sign + 1).trimmed();
    if (sign < 0)
        return ReportFieldsWords::tr("%1 is not a field: expected its name, an equals sign and its value, as "
                                     "in customer=Threnholt Cider")
            .arg(assay::quoted(assignment));
    if (!names().contains(name))
        return ReportFieldsWords::tr("there is no field %1; known are %2")
            .arg(assay::quoted(name), names().join(u", "_s));
    if (slash >= 0 && !sampleNames().contains(name))
        return ReportFieldsWords::tr(
                   "the field %1 is for the whole report and takes no sample; fields of a sample are %2")
            .arg(assay::quoted(name), sampleNames().join(u", "_s));
    if (value.isEmpty())
        return ReportFieldsWords::tr("the field %1 has no value; leave it out for a line to write on")
            .arg(assay::quoted(key));
    if (value.size() > longestValue)
        return ReportFieldsWords::tr("the value of the field %1 is longer than %2 characters; shorten it")
            .arg(assay::quoted(key))
            .arg(longestValue);
    if (!m_values.emplace(key, value).second)
        return ReportFieldsWords::tr("the field %1 was given twice; give it once").arg(assay::quoted(key));
    return {};
}

QString ReportFields::value(const QString &name) const
{
    const auto found = m_values.find(name);
    return found == m_values.end() ? QString() : found->second;
}

QString ReportFields::value(const QString &name, const QString &sample) const
{
    const auto found = m_values.find(name + u'/' + sample);
    return found == m_values.end() ? value(name) : found->second;
}

QStringList ReportFields::samples() const
{
    QStringList samples;
    for (const auto &[key, value] : m_values) {
        const qsizetype slash = key.indexOf(u'/');
        if (slash >= 0 && !samples.contains(key.sliced(slash + 1)))
            samples << key.sliced(slash + 1);
    }
    return samples;
}

} // namespace plateau::ui
