// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/print/racks.h"

#include "core/exchange/library.h"

namespace plateau::test {

using namespace Qt::StringLiterals;

assay::Method shippedMethod(const QString &id)
{
    static const exchange::MethodLibrary library = exchange::MethodLibrary::load(u":/methods"_s);
    return library.find(id).value();
}

run::Run rackOf(int tubes, const QString &method)
{
    run::Run run;
    run.title = u"Tanks, %1 tubes"_s.arg(tubes);
    run.method = method;
    run.startedAt = QDateTime(QDate(2026, 3, 2), QTime(9, 10), Qt::OffsetFromUTC, 3600);
    run.standards = {{u"Working standard"_s, 0.2, {}, {}, {}, 0}};
    run.lots = {{u"buffer"_s, u"B-0226"_s, QDate(2026, 9, 30)}, {u"starter"_s, u"SO-0391"_s, {}}};
    for (int i = 0; i < tubes; ++i) {
        run::Tube tube;
        if (i < 2) {
            tube.role = run::Role::Blank;
        } else if (i < 4) {
            tube.role = run::Role::Standard;
            tube.standard = u"Working standard"_s;
        } else {
            tube.sample = u"Perry, tank %1"_s.arg(i / 2 - 1);
            if (i % 2 == 0) {
                run::Sample sample;
                sample.id = tube.sample;
                if (i % 3 == 0)
                    sample.dilution = {{5, 50, {}}, {2, 20, {}}};
                run.samples.push_back(sample);
            }
        }
        run.tubes.push_back(tube);
    }
    run.tubes.back().sampleVolume_mL = 0.2;
    return run;
}

ui::WorksheetContent sheetOf(const run::Run &run)
{
    ui::WorksheetContent content =
        ui::worksheetOf(shippedMethod(run.method), run, planning::usualLaboratory().glassware);
    content.rackColumns = 6;
    return content;
}

} // namespace plateau::test
