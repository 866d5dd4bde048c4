// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/photometerstore.h"

#include "core/assay/label.h"

#include <QCoreApplication>
#include <QSettings>

#include <algorithm>
#include <optional>

namespace plateau::ui {

using namespace Qt::StringLiterals;
using exchange::ColumnMapping;
using exchange::LinePattern;

namespace {

struct PhotometerStoreWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PhotometerStore)
};

template <class Value> using Words = std::vector<std::pair<Value, QString>>;

const Words<SerialLink::Parity> parities{{SerialLink::Parity::None, u"none"_s},
                                         {SerialLink::Parity::Even, u"even"_s},
                                         {SerialLink::Parity::Odd, u"odd"_s}};
const Words<SerialLink::Flow> flows{{SerialLink::Flow::None, u"none"_s},
                                    {SerialLink::Flow::Hardware, u"hardware"_s},
                                    {SerialLink::Flow::Software, u"software"_s}};
const Words<LinePattern::Which> whiches{{LinePattern::Which::Only, u"only"_s},
                                        {LinePattern::Which::Nth, u"nth"_s},
                                        {LinePattern::Which::After, u"after"_s}};

template <class Value> QString wordOf(const Words<Value> &words, Value value)
{
    return std::ranges::find(words, value, &std::pair<Value, QString>::first)->second;
}

/// Settings come back as text in the next session. A value that is missing or of another kind spoils the
/// entry it is of.
class Entry
{
public:
    Entry(const QSettings &settings, const QString &group)
        : m_settings(settings)
        , m_group(group)
    {
    }

    bool isSound() const { return m_sound; }
    QString text(QAnyStringView key)
    {
        const QVariant value = m_settings.value(m_group + key.toString());
        m_sound = m_sound && value.canConvert<QString>() && value.typeId() != QMetaType::QStringList;
        return value.toString();
    }
    int number(QAnyStringView key)
    {
        bool isNumber = false;
        const int value = text(key).toInt(&isNumber);
        m_sound = m_sound && isNumber;
        return value;
    }
    bool flag(QAnyStringView key) { return one(key, Words<bool>{{false, u"no"_s}, {true, u"yes"_s}}); }
    template <class Value> Value one(QAnyStringView key, const Words<Value> &words)
    {
        const QString word = text(key);
        const auto found = std::ranges::find(words, word, &std::pair<Value, QString>::second);
        m_sound = m_sound && found != words.end();
        return found == words.end() ? words.front().first : found->first;
    }

private:
    const QSettings &m_settings;
    QString m_group;
    bool m_sound = true;
};

Link readLink(Entry &entry)
{
    if (entry.text(u"link"_s) == "network"_L1)
        return NetworkLink{entry.text(u"host"_s), entry.number(u"port"_s)};
    SerialLink link;
    link.port = entry.text(u"port"_s);
    link.speed_baud = entry.number(u"speed_baud"_s);
    link.dataBits = entry.number(u"dataBits"_s);
    link.parity = entry.one(u"parity"_s, parities);
    link.stopBits = entry.number(u"stopBits"_s);
    link.flow = entry.one(u"flow"_s, flows);
    return link;
}

Photometer readPhotometer(Entry &entry)
{
    Photometer photometer{entry.text(u"name"_s), readLink(entry), {}};
    LinePattern &pattern = photometer.pattern;
    pattern.encoding = exchange::encodingFromWord(entry.text(u"encoding"_s));
    pattern.decimal = exchange::decimalSignFromWord(entry.text(u"decimal"_s));
    pattern.which = entry.one(u"which"_s, whiches);
    pattern.nth = entry.number(u"nth"_s);
    pattern.after = entry.text(u"after"_s);
    pattern.mustContain = entry.text(u"mustContain"_s);
    pattern.leaveOut = entry.text(u"leaveOut"_s);
    return photometer;
}

NamedMapping readMapping(Entry &entry)
{
    NamedMapping named{entry.text(u"name"_s), {}};
    ColumnMapping &mapping = named.mapping;
    mapping.encoding = exchange::encodingFromWord(entry.text(u"encoding"_s));
    mapping.delimiter = exchange::delimiterFromWord(entry.text(u"delimiter"_s)).value_or(mapping.delimiter);
    mapping.decimal = exchange::decimalSignFromWord(entry.text(u"decimal"_s));
    mapping.absorbanceColumn = entry.number(u"absorbanceColumn"_s);
    mapping.tubeColumn = entry.number(u"tubeColumn"_s);
    mapping.headerLines = entry.number(u"headerLines"_s);
    mapping.isReversed = entry.flag(u"reversed"_s);
    mapping.leavesOutBlankLines = entry.flag(u"leavesOutBlankLines"_s);
    return named;
}

QString faultOf(const NamedMapping &named)
{
    const QString fault = nameFault(named.name);
    return fault.isEmpty() ? exchange::faultOf(named.mapping) : fault;
}

const QString photometerGroup = u"instrument/photometers"_s;
const QString mappingGroup = u"instrument/mappings"_s;

QString entryGroup(const QString &group, int number)
{
    return group + u'/' + QString::number(number) + u'/';
}

template <class Item, class Read>
std::vector<Item> readAll(const QSettings &settings, const QString &group, Read read)
{
    std::vector<Item> items;
    const int count =
        std::clamp(settings.value(group + u"/size"_s).toString().toInt(), 0, PhotometerStore::mostKept);
    for (int number = 1; number <= count; ++number) {
        Entry entry(settings, entryGroup(group, number));
        Item item = read(entry);
        if (entry.isSound() && faultOf(item).isEmpty() &&
            std::ranges::find(items, item.name, &Item::name) == items.end())
            items.push_back(std::move(item));
    }
    return items;
}

template <class Item> void putFirst(std::vector<Item> &items, const Item &item)
{
    std::erase_if(items, [&](const Item &other) { return other.name == item.name; });
    items.insert(items.begin(), item);
    items.resize(std::min<std::size_t>(items.size(), PhotometerStore::mostKept));
}

bool isWritten(QSettings &settings)
{
    settings.sync();
    return settings.status() == QSettings::NoError;
}

} // namespace

QString nameFault(const QString &name)
{
    const auto fault = assay::labelFault(name);
    return fault ? PhotometerStoreWords::tr("Name: %1.").arg(*fault) : QString();
}

QString faultOf(const Photometer &photometer)
{
    for (const QString &fault :
         {nameFault(photometer.name), faultOf(photometer.link), exchange::faultOf(photometer.pattern)}) {
        if (!fault.isEmpty())
            return fault;
    }
    return {};
}

PhotometerStore::PhotometerStore(QSettings &settings)
    : m_settings(settings)
{
}

std::vector<Photometer> PhotometerStore::photometers() const
{
    return readAll<Photometer>(m_settings, photometerGroup, readPhotometer);
}

std::vector<NamedMapping> PhotometerStore::mappings() const
{
    return readAll<NamedMapping>(m_settings, mappingGroup, readMapping);
}

bool PhotometerStore::keep(const Photometer &photometer)
{
    std::vector<Photometer> all = photometers();
    putFirst(all, photometer);
    return write(all);
}

bool PhotometerStore::keep(const NamedMapping &mapping)
{
    std::vector<NamedMapping> all = mappings();
    putFirst(all, mapping);
    return write(all);
}

bool PhotometerStore::forgetPhotometer(const QString &name)
{
    std::vector<Photometer> all = photometers();
    std::erase_if(all, [&](const Photometer &photometer) { return photometer.name == name; });
    return write(all);
}

bool PhotometerStore::forgetMapping(const QString &name)
{
    std::vector<NamedMapping> all = mappings();
    std::erase_if(all, [&](const NamedMapping &mapping) { return mapping.name == name; });
    return write(all);
}

bool PhotometerStore::write(const std::vector<Photometer> &photometers)
{
    m_settings.remove(photometerGroup);
    m_settings.setValue(photometerGroup + u"/size"_s, static_cast<int>(photometers.size()));
    for (int number = 1; const Photometer &photometer : photometers) {
        const QString group = entryGroup(photometerGroup, number++);
        const auto set = [&](QAnyStringView key, const QVariant &value) {
            m_settings.setValue(group + key.toString(), value);
        };
        set(u"name"_s, photometer.name);
        if (const auto *network = std::get_if<NetworkLink>(&photometer.link)) {
            set(u"link"_s, u"network"_s);
            set(u"host"_s, network->host);
            set(u"port"_s, network->port);
        } else if (const auto *serial = std::get_if<SerialLink>(&photometer.link)) {
            set(u"link"_s, u"serial"_s);
            set(u"port"_s, serial->port);
            set(u"speed_baud"_s, serial->speed_baud);
            set(u"dataBits"_s, serial->dataBits);
            set(u"parity"_s, wordOf(parities, serial->parity));
            set(u"stopBits"_s, serial->stopBits);
            set(u"flow"_s, wordOf(flows, serial->flow));
        }
        const LinePattern &pattern = photometer.pattern;
        set(u"encoding"_s, exchange::wordOf(pattern.encoding));
        set(u"decimal"_s, exchange::wordOf(pattern.decimal));
        set(u"which"_s, wordOf(whiches, pattern.which));
        set(u"nth"_s, pattern.nth);
        set(u"after"_s, pattern.after);
        set(u"mustContain"_s, pattern.mustContain);
        set(u"leaveOut"_s, pattern.leaveOut);
    }
    return isWritten(m_settings);
}

bool PhotometerStore::write(const std::vector<NamedMapping> &mappings)
{
    m_settings.remove(mappingGroup);
    m_settings.setValue(mappingGroup + u"/size"_s, static_cast<int>(mappings.size()));
    for (int number = 1; const NamedMapping &named : mappings) {
        const QString group = entryGroup(mappingGroup, number++);
        const auto set = [&](QAnyStringView key, const QVariant &value) {
            m_settings.setValue(group + key.toString(), value);
        };
        const ColumnMapping &mapping = named.mapping;
        set(u"name"_s, named.name);
        set(u"encoding"_s, exchange::wordOf(mapping.encoding));
        set(u"delimiter"_s, exchange::wordOf(mapping.delimiter));
        set(u"decimal"_s, exchange::wordOf(mapping.decimal));
        set(u"absorbanceColumn"_s, mapping.absorbanceColumn);
        set(u"tubeColumn"_s, mapping.tubeColumn);
        set(u"headerLines"_s, mapping.headerLines);
        set(u"reversed"_s, mapping.isReversed ? u"yes"_s : u"no"_s);
        set(u"leavesOutBlankLines"_s, mapping.leavesOutBlankLines ? u"yes"_s : u"no"_s);
    }
    return isWritten(m_settings);
}

} // namespace plateau::ui
