// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/keyedchecks.h"

#include "core/equipment/protocol.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace equipment;

Item photometer()
{
    Item item;
    item.kind = equipment::Kind::Photometer;
    item.name = u"PH-1"_s;
    item.every_days = {{Aspect::Wavelength, 365}, {Aspect::Absorbance, 365}, {Aspect::Noise, 30}};
    return item;
}

Item pistonPipette()
{
    Item item;
    item.kind = equipment::Kind::PistonPipette;
    item.name = u"piston pipette 20 to 200 µL"_s;
    item.nominal_mL = 0.2;
    item.smallest_mL = 0.02;
    item.every_days = {{Aspect::Volume, 90}};
    return item;
}

Check blankCheck(const Item &item, Aspect aspect, const QDate &day)
{
    const Protocol protocol = protocolFor(item, aspect);
    Check check;
    check.aspect = aspect;
    check.day = day;
    check.rows = protocol.rows;
    for (const ProtocolField &field : protocol.fields) {
        if (field.usual)
            check.conditions[field.key] = *field.usual;
        else if (field.key == "temperature_C"_L1)
            check.conditions[field.key] = 21;
        else if (field.key == "pressure_kPa"_L1)
            check.conditions[field.key] = 101.3;
    }
    return check;
}

Check volumeCheck(const Item &item, double mean_mg, const QDate &day)
{
    Check check = blankCheck(item, Aspect::Volume, day);
    for (std::size_t i = 0; i < 10; ++i)
        check.rows[i][1] = mean_mg + (i % 2 == 0 ? 0.2 : -0.2);
    return check;
}

} // namespace plateau::test
