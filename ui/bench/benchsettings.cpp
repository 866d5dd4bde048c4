// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchsettings.h"

#include <QSettings>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

QSettings ownSettings()
{
    return QSettings(QSettings::IniFormat, QSettings::UserScope, u"plateau"_s, u"plateau"_s);
}

bool flag(const QSettings &settings, const QString &key, bool usual)
{
    const QString text = settings.value(key).toString();
    if (text != "true"_L1 && text != "false"_L1)
        return usual;
    return text == "true"_L1;
}

int number(const QSettings &settings, const QString &key, int usual, int largest)
{
    bool read = false;
    const int value = settings.value(key).toString().toInt(&read);
    return read && value >= 0 && value <= largest ? value : usual;
}

} // namespace

BenchChoice keptBench(const QSettings &settings)
{
    const BenchChoice usual;
    return {flag(settings, u"bench/muted"_s, usual.muted),
            number(settings, u"bench/volume_percent"_s, usual.volume_percent, 100),
            number(settings, u"bench/lead_s"_s, usual.lead_s, longestLead_s),
            flag(settings, u"bench/keysThousandths"_s, usual.keysThousandths)};
}

bool keepBench(QSettings &settings, const BenchChoice &choice)
{
    const auto text = [](bool value) { return value ? u"true"_s : u"false"_s; };
    settings.setValue(u"bench/muted"_s, text(choice.muted));
    settings.setValue(u"bench/volume_percent"_s, choice.volume_percent);
    settings.setValue(u"bench/lead_s"_s, choice.lead_s);
    settings.setValue(u"bench/keysThousandths"_s, text(choice.keysThousandths));
    settings.sync();
    return settings.status() == QSettings::NoError;
}

BenchSettings::BenchSettings(QObject *parent)
    : QObject(parent)
    , m_choice(keptBench(ownSettings()))
{
}

bool BenchSettings::setChoice(const BenchChoice &choice)
{
    if (choice == m_choice)
        return true;
    m_choice = choice;
    Q_EMIT changed();
    QSettings settings = ownSettings();
    return keepBench(settings, choice);
}

} // namespace plateau::ui
