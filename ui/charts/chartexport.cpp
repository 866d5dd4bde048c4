// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/chartexport.h"

#include "core/charts/chartwords.h"
#include "ui/charts/chartview.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ChartExportWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ChartExport)
};

QString cell(QString text)
{
    if (!text.isEmpty() && u"=+-@\t\r"_s.contains(text.front()))
        text.prepend(u'\'');
    if (text.contains(u',') || text.contains(u'"') || text.contains(u'\n') || text.contains(u'\r'))
        text = u'"' + text.replace(u'"', u"\"\""_s) + u'"';
    return text;
}

QString exportedNumber(double value)
{
    return QString::number(value, 'g', QLocale::FloatingPointShortest);
}

/// What speaks against each point, and its distance in the first panel.
struct PointFacts {
    QStringList broken;
    QString distance;
};

std::map<std::size_t, PointFacts> factsOf(const charts::ControlChart &chart)
{
    std::map<std::size_t, PointFacts> facts;
    for (const charts::Panel &panel : chart.panels) {
        for (const charts::Finding &finding : panel.findings) {
            const QString name = finding.kind == charts::Finding::Kind::Rule
                                     ? charts::ruleName(finding.rule)
                                     : charts::plottedName(panel.plotted, chart.settings);
            for (std::size_t mark = finding.completed; mark <= finding.last; ++mark)
                facts[panel.marks[mark].last].broken << name;
        }
    }
    if (chart.panels.empty() || !chart.panels.front().baseline)
        return facts;
    const charts::Panel &panel = chart.panels.front();
    if (panel.plotted == charts::Plotted::Values || panel.plotted == charts::Plotted::Ranges) {
        for (const charts::Mark &mark : panel.marks)
            facts[mark.last].distance = exportedNumber(panel.baseline->deviationsOf(mark.value));
    }
    return facts;
}

} // namespace

QByteArray chartCsv(const charts::ControlChart &chart)
{
    QStringList lines{u"run,title,time,name,value,unit,expanded_uncertainty,accepted,left_out,reason,"
                      "deviations_from_centre,out_of_control"_s};
    auto facts = factsOf(chart);
    for (std::size_t i = 0; i < chart.series.size(); ++i) {
        const charts::Point &point = chart.series[i];
        const PointFacts &own = facts[i];
        const QStringList row{QString::number(point.run->run),
                              cell(point.run->title()),
                              point.run->at.toString(Qt::ISODate),
                              cell(point.name),
                              exportedNumber(point.value),
                              point.unit,
                              point.expandedUncertainty ? exportedNumber(*point.expandedUncertainty) : QString(),
                              point.isAccepted ? u"yes"_s : u"no"_s,
                              point.omission ? u"yes"_s : u"no"_s,
                              point.omission ? cell(point.omission->reason) : QString(),
                              own.distance,
                              cell(own.broken.join(u"; "_s))};
        lines << row.join(u',');
    }
    return (lines.join(u"\r\n"_s) + u"\r\n"_s).toUtf8();
}

QByteArray chartPng(ChartView &view)
{
    constexpr double scale = 2; // for paper
    QImage image((QSizeF(view.size()) * scale).toSize(), QImage::Format_ARGB32_Premultiplied);
    QPainter painter(&image);
    painter.scale(scale, scale);
    view.paintOn(painter);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

QByteArray chartSvg(ChartView &view, const QString &title)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(view.size());
    generator.setViewBox(view.rect());
    generator.setTitle(title);
    QPainter painter(&generator);
    view.paintOn(painter);
    painter.end();
    return bytes;
}

QString saveChart(ChartView &view, const QString &title, const QString &path)
{
    const QString ending = path.section(u'.', -1).toLower();
    QByteArray bytes;
    if (ending == "png"_L1)
        bytes = chartPng(view);
    else if (ending == "svg"_L1)
        bytes = chartSvg(view, title);
    else
        bytes = chartCsv(view.chart());
    QSaveFile file(path);
    if (bytes.isEmpty() || !file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() ||
        !file.commit())
        return ChartExportWords::
            tr("The chart was not saved as %1: see that the folder is there, may be written to and has room.")
                .arg(QDir::toNativeSeparators(path));
    return {};
}

} // namespace plateau::ui
