// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/crash/quickrack.h"

#include "tests/ui/bench.h"

#include <QFile>

#include <cstdlib>

namespace plateau::test {

using namespace Qt::StringLiterals;

exchange::MethodLibrary quickMethod(const QString &folder)
{
    QByteArray method = exampleMethod();
    method.replace("[3, 10]", "[0.05, 10]").replace("[15, 40]", "[0.05, 40]");
    QFile file(folder + u"/example-acid.json"_s);
    if (!file.open(QIODevice::WriteOnly) || file.write(method) != method.size())
        std::_Exit(4);
    file.close();
    return exchange::MethodLibrary::load(folder);
}

run::Run quickRack()
{
    run::Run run = exampleRun();
    const run::Tube blank = run.tubes[0];
    run.tubes = {blank, blank};
    run.samples.clear();
    for (int sample = 1; sample <= 4; ++sample) {
        run.samples.push_back({u"P-%1"_s.arg(sample), run::Form::Liquid, {}, {}, {}});
        run::Tube tube;
        tube.sample = run.samples.back().id;
        run.tubes.insert(run.tubes.end(), {tube, tube});
    }
    return run;
}

} // namespace plateau::test
