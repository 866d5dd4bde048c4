// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/crash/facts.h"

#include <cmath>

namespace plateau::test {

using namespace Qt::StringLiterals;

namespace {

QByteArray key(const char *what, notebook::RunId run, int tube, const QString &name = {})
{
    QByteArray text = QByteArray(what) + ' ' + QByteArray::number(run.value) + ' ' + QByteArray::number(tube);
    return name.isEmpty() ? text : text + ' ' + name.toUtf8();
}

QByteArray exact(double number)
{
    return QByteArray::number(number, 'g', 17);
}

void addReadings(Facts &facts, const ui::Rack &rack)
{
    for (std::size_t tube = 0; tube < rack.stored.run.tubes.size(); ++tube) {
        for (const auto &[name, reading] : rack.stored.run.tubes[tube].readings) {
            const auto *series = std::get_if<run::ReadingSeries>(&reading);
            facts[key("reading", rack.id, int(tube), name)] =
                exact(series ? series->back().absorbance : std::get<double>(reading));
        }
    }
}

void addMarks(Facts &facts, const ui::Rack &rack)
{
    for (const notebook::StoredMark &mark : rack.stored.marks) {
        const QByteArray done = key("done", rack.id, mark.dose.tube, mark.dose.component);
        const QByteArray spoilt = key("spoilt", rack.id, mark.dose.tube);
        switch (mark.kind) {
        case notebook::MarkKind::Done:
            facts[done] = "1";
            break;
        case notebook::MarkKind::Undone:
            facts.erase(done);
            break;
        case notebook::MarkKind::Spoilt:
            facts[spoilt] = "1";
            break;
        case notebook::MarkKind::Unspoilt:
            facts.erase(spoilt);
            break;
        }
    }
}

} // namespace

Facts factsOf(const ui::BenchSession &session)
{
    Facts facts;
    for (const ui::Rack &rack : session.racks()) {
        addReadings(facts, rack);
        addMarks(facts, rack);
    }
    return facts;
}

Facts dueMomentsOf(const ui::BenchSession &session)
{
    Facts moments;
    for (const ui::Rack &rack : session.racks()) {
        const double now_min = session.now_min(rack);
        const qint64 now_ms = session.now().boot.ms;
        for (const timing::Due &due : rack.due) {
            if (due.opens_min)
                moments[key("due", rack.id, due.tube, due.act.name)] =
                    QByteArray::number(now_ms + std::llround((*due.opens_min - now_min) * 60'000));
        }
    }
    return moments;
}

QByteArray linesOf(const QByteArray &word, const Facts &facts)
{
    QByteArray lines;
    for (const auto &[name, value] : facts)
        lines += word + ' ' + name + '\t' + value + '\n';
    return lines;
}

} // namespace plateau::test
