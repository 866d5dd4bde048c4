// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/listed.h"
#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/run/volumes.h"
#include "core/run/waits.h"
#include "ui/print/recordparts.h"
#include "ui/print/reporttext.h"
#include "ui/print/worksheetcontent.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct RecordbenchWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunRecord)
};

using Fit = TableColumn::Fit;
/// Corrections of one reading, oldest first.
std::vector<const ReportReading *> correctionsOf(const RecordPart &part, int tube, const QString &reading)
{
    std::vector<const ReportReading *> found;
    if (!part.record)
        return found;
    for (const ReportReading &keyed : part.record->readings) {
        if (keyed.tube == tube && keyed.reading == reading && keyed.replaces)
            found.push_back(&keyed);
    }
    return found;
}

QString contentOf(const run::Tube &tube)
{
    const QString role = roleOnPaper(tube.role);
    const QString name = tube.sample.isEmpty() ? tube.standard : tube.sample;
    return name.isEmpty() ? role
                          : RecordbenchWords::tr("%1: %2", "a tube's role and what is in it").arg(role, name);
}

QString notesOn(const RecordPart &part, const run::Tube &tube)
{
    QStringList notes;
    if (!tube.spoilt.isEmpty())
        notes << RecordbenchWords::tr("does not count: %1").arg(tube.spoilt);
    if (tube.spike)
        notes << part.local(
            RecordbenchWords::tr("spiked with %1 of %2")
                .arg(withUnit(plainText(tube.spike->volume_mL), u"mL"_s), tube.spike->standard));
    for (const auto &[id, volume_mL] : tube.pipetted_mL) {
        const assay::Component *component = assay::findComponent(part.method, id);
        notes << part.local(
            RecordbenchWords::tr("%1: %2 pipetted")
                .arg(component ? component->name : id, withUnit(plainText(volume_mL), u"mL"_s)));
    }
    return assay::listed(notes);
}

class TubeTable
{
public:
    explicit TubeTable(const RecordPart &part)
        : m_part(part)
        , m_readings(assay::readingsInOrder(part.method))
    {
        const bool hasSeries = std::ranges::any_of(part.run.tubes, [](const run::Tube &tube) {
            return std::ranges::any_of(tube.readings, [](const auto &reading) {
                return std::holds_alternative<run::ReadingSeries>(reading.second);
            });
        });
        m_table.columns = {{RecordbenchWords::tr("tube"), Fit::Natural, true},
                           {RecordbenchWords::tr("contents"), Fit::Wrap},
                           {RecordbenchWords::tr("v, mL"), Fit::Natural, true},
                           {RecordbenchWords::tr("V, mL"), Fit::Natural, true}};
        for (const QString &reading : m_readings)
            m_table.columns.push_back({reading, hasSeries ? Fit::Wrap : Fit::Natural, !hasSeries});
        m_table.mostLines = hasSeries ? 20 : 4;
        const bool hasNotes = std::ranges::any_of(
            part.run.tubes, [&part](const run::Tube &tube) { return !notesOn(part, tube).isEmpty(); });
        if (hasNotes)
            m_table.columns.push_back({RecordbenchWords::tr("note"), Fit::Wrap});
        for (std::size_t tube = 0; tube < part.run.tubes.size(); ++tube)
            addRow(static_cast<int>(tube), hasNotes);
    }

    const PrintedTable &table() const { return m_table; }
    const QStringList &footnotes() const { return m_footnotes; }

private:
    void addRow(int index, bool withNotes)
    {
        const run::Tube &tube = m_part.run.tubes[static_cast<std::size_t>(index)];
        QStringList row{QString::number(index + 1), contentOf(tube),
                        m_part.local(plainText(run::sampleVolume_mL(m_part.method, tube))),
                        m_readings.empty()
                            ? none
                            : m_part.local(evaluation::significantText(
                                  run::volumeAt_mL(m_part.method, tube, m_readings.back()), 5))};
        for (const QString &name : m_readings)
            row << cellOf(index, tube, name);
        if (withNotes)
            row << notesOn(m_part, tube);
        m_table.rows.push_back(row);
    }

    QString cellOf(int index, const run::Tube &tube, const QString &name)
    {
        const auto found = tube.readings.find(name);
        if (found == tube.readings.end())
            return none;
        QString cell = readingOnReport(m_part.content, found->second);
        for (const ReportReading *correction : correctionsOf(m_part, index, name)) {
            const QString mark = footnoteMark(static_cast<int>(m_footnotes.size()));
            cell += withUnit({}, mark + u')');
            m_footnotes << RecordbenchWords::tr(
                               "%1) tube %2, %3: was %4, corrected to %5 by %6 on %7. Reason: %8")
                               .arg(mark)
                               .arg(index + 1)
                               .arg(name, readingOnReport(m_part.content, *correction->replaces),
                                    readingOnReport(m_part.content, correction->value),
                                    personOnReport(correction->act), momentOnReport(correction->act.at),
                                    correction->act.reason);
        }
        return cell;
    }

    const RecordPart &m_part;
    std::vector<QString> m_readings;
    PrintedTable m_table;
    QStringList m_footnotes;
};

QString wayOf(const ReportReading &reading)
{
    if (!reading.origin.isEmpty())
        return reading.origin;
    return reading.typed.isEmpty() ? RecordbenchWords::tr("with its run, from a file")
                                   : RecordbenchWords::tr("keyed");
}

QString replacedBy(const RecordPart &part, const ReportReading &reading)
{
    if (reading.again)
        return RecordbenchWords::tr("nothing, read once more");
    return reading.replaces ? readingOnReport(part.content, *reading.replaces) : QString();
}

void writeKeyedReadings(PageFlow &flow, const RecordPart &part)
{
    PrintedTable table;
    table.size_pt = 7;
    table.columns = {{RecordbenchWords::tr("tube"), Fit::Natural, true},
                     {RecordbenchWords::tr("reading")},
                     {RecordbenchWords::tr("value"), Fit::Wrap},
                     {RecordbenchWords::tr("as typed or sent"), Fit::Wrap},
                     {RecordbenchWords::tr("how it came"), Fit::Wrap},
                     {RecordbenchWords::tr("by"), Fit::Wrap},
                     {RecordbenchWords::tr("at")},
                     {RecordbenchWords::tr("replaces"), Fit::Wrap}};
    for (const ReportReading &reading : part.record->readings)
        table.rows.push_back({QString::number(reading.tube + 1), reading.reading,
                              readingOnReport(part.content, reading.value),
                              reading.line.isEmpty() ? reading.typed : reading.line, wayOf(reading),
                              reading.act.person, momentOnReport(reading.act.at), replacedBy(part, reading)});
    flow.subheading(RecordbenchWords::tr("Readings as they came, oldest first"));
    flow.table(table);
}

/// "1 h 0 min 2.5 s", without its sign.
QString shiftText(qint64 shift_ms)
{
    const qint64 whole = std::abs(shift_ms);
    const QString seconds = plainText(double(whole % 60000) / 1000);
    const qint64 minutes = whole / 60000;
    if (minutes == 0)
        return RecordbenchWords::tr("%1 s").arg(seconds);
    return minutes < 60
               ? RecordbenchWords::tr("%1 min %2 s").arg(minutes).arg(seconds)
               : RecordbenchWords::tr("%1 h %2 min %3 s").arg(minutes / 60).arg(minutes % 60).arg(seconds);
}

void writeClockJumps(PageFlow &flow, const RecordPart &part)
{
    if (part.record->clockJumps.empty())
        return;
    flow.subheading(RecordbenchWords::tr("The computer's clock was set while the run was on the bench"));
    for (const ReportClockJump &jump : part.record->clockJumps)
        flow.paragraph(part.local(
            RecordbenchWords::tr(
                "%1 by %2, to %3; noted with the name of %4. Times above are as the clock showed them, "
                "minutes on the run's own clock do not change with it.")
                .arg(jump.shift_ms > 0 ? RecordbenchWords::tr("Forward") : RecordbenchWords::tr("Back"),
                     shiftText(jump.shift_ms), momentOnReport(jump.at), jump.person)));
}

void writeDilutions(PageFlow &flow, const RecordPart &part)
{
    if (part.record->dilutions.empty())
        return;
    PrintedTable table;
    table.size_pt = 7;
    table.columns = {{RecordbenchWords::tr("sample"), Fit::Wrap},
                     {RecordbenchWords::tr("dilution step")},
                     {RecordbenchWords::tr("taken, made up to")},
                     {RecordbenchWords::tr("by"), Fit::Wrap},
                     {RecordbenchWords::tr("at")}};
    for (const ReportDilution &dilution : part.record->dilutions)
        table.rows.push_back({dilution.sample,
                              RecordbenchWords::tr("%1 of %2", "a step of a dilution").arg(dilution.step).arg(dilution.steps),
                              part.local(dilutionOnPaper({dilution.volumes})), dilution.person,
                              momentOnReport(dilution.at)});
    flow.subheading(RecordbenchWords::tr("Dilutions as they were ticked"));
    flow.table(table);
}

void writeDosings(PageFlow &flow, const RecordPart &part)
{
    if (part.record->dosings.empty())
        return;
    PrintedTable table;
    table.size_pt = 7;
    table.columns = {
        {RecordbenchWords::tr("component"), Fit::Wrap},   {RecordbenchWords::tr("tubes"), Fit::Natural, true},
        {RecordbenchWords::tr("lot"), Fit::Wrap},         {RecordbenchWords::tr("use-by date")},
        {RecordbenchWords::tr("pipette"), Fit::Wrap},     {RecordbenchWords::tr("by"), Fit::Wrap},
        {RecordbenchWords::tr("first at"), Fit::Natural}, {RecordbenchWords::tr("last at"), Fit::Natural}};
    for (const ReportDosing &dosing : part.record->dosings)
        table.rows.push_back({dosing.component, QString::number(dosing.tubes),
                              dosing.lot.isEmpty() ? none : dosing.lot,
                              dosing.lotExpires ? assay::shownDay(*dosing.lotExpires) : none,
                              dosing.pipette.isEmpty() ? none : dosing.pipette, dosing.person,
                              assay::shownMoment(dosing.first), assay::shownMoment(dosing.last)});
    flow.subheading(RecordbenchWords::tr("Pipetting as it was ticked"));
    flow.table(table);
}

/// In the order of the work.
QString timesOf(const RecordPart &part, const run::Tube &tube, run::TubeAct::Kind kind)
{
    QStringList texts;
    for (const run::TubeAct &act : run::tubeActs(part.method, tube)) {
        const auto at_min = run::timeOf_min(tube, act);
        if (act.kind != kind || !at_min)
            continue;
        const assay::Component *component = assay::findComponent(part.method, act.name);
        texts << RecordbenchWords::tr("%1: %2").arg(component ? component->name : act.name,
                                                    QString::number(*at_min, 'f', 2));
    }
    return part.local(assay::listed(texts));
}

/// Minutes on the run's own clock, where somebody marked them.
void writeClock(PageFlow &flow, const RecordPart &part)
{
    const auto isMarked = [](const run::Tube &tube) {
        return !tube.addedAt_min.empty() || !tube.readAt_min.empty();
    };
    if (std::ranges::none_of(part.run.tubes, isMarked))
        return;
    PrintedTable table;
    table.size_pt = 7;
    table.columns = {{RecordbenchWords::tr("tube"), Fit::Natural, true},
                     {RecordbenchWords::tr("added, minutes on the run's clock"), Fit::Wrap},
                     {RecordbenchWords::tr("read, minutes on the run's clock"), Fit::Wrap}};
    for (std::size_t i = 0; i < part.run.tubes.size(); ++i) {
        const run::Tube &tube = part.run.tubes[i];
        if (isMarked(tube))
            table.rows.push_back({QString::number(i + 1), timesOf(part, tube, run::TubeAct::Kind::Add),
                                  timesOf(part, tube, run::TubeAct::Kind::Read)});
    }
    flow.subheading(RecordbenchWords::tr("When it was done"));
    flow.table(table);
}

} // namespace

void writeTubes(PageFlow &flow, const RecordPart &part)
{
    flow.heading(RecordbenchWords::tr("Tubes and readings"));
    const TubeTable tubes(part);
    flow.table(tubes.table());
    for (const QString &footnote : tubes.footnotes())
        flow.paragraph(footnote, 7.5);
}

void writeBenchLog(PageFlow &flow, const RecordPart &part)
{
    writeClock(flow, part);
    if (!part.record)
        return;
    flow.heading(RecordbenchWords::tr("At the bench"));
    writeDilutions(flow, part);
    writeDosings(flow, part);
    writeKeyedReadings(flow, part);
    writeClockJumps(flow, part);
}

} // namespace plateau::ui
