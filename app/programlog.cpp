// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/programlog.h"

#include "ui/shared/userfolders.h"

#include <QDir>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

QString severity(QtMsgType type)
{
    switch (type) {
    case QtDebugMsg:
        return u"debug"_s;
    case QtInfoMsg:
        return u"info"_s;
    case QtWarningMsg:
        return u"warning"_s;
    case QtCriticalMsg:
        return u"critical"_s;
    case QtFatalMsg:
        break;
    }
    return u"fatal"_s;
}

QtMessageHandler handlerBefore = nullptr;

ProgramLog &thisUsersLog()
{
    static ProgramLog log(ui::stateFolder());
    return log;
}

void logAndPassOn(QtMsgType type, const QMessageLogContext &context, const QString &message)
{
    thisUsersLog().write(type, context.category, message, QDateTime::currentDateTimeUtc());
    if (handlerBefore)
        handlerBefore(type, context, message);
}

} // namespace

ProgramLog::ProgramLog(const QString &folder, qint64 largestSize)
    : m_file(folder + u"/plateau.log"_s)
    , m_largestSize(largestSize)
{
    constexpr auto ownerOnly = QFile::ReadOwner | QFile::WriteOwner;
    if (ui::makePrivateFolder(folder) &&
        m_file.open(QIODevice::WriteOnly | QIODevice::Append | QIODevice::Unbuffered))
        m_file.setPermissions(ownerOnly);
}

void ProgramLog::write(QtMsgType type, const char *category, const QString &text, const QDateTime &when)
{
    const QMutexLocker locked(&m_mutex);
    if (!m_file.isOpen())
        return;
    QString line = u"%1 %2 %3: "_s.arg(when.toUTC().toString(Qt::ISODateWithMs), severity(type),
                                       QString::fromUtf8(category ? category : "default")) +
                   text;
    for (QChar &character : line) {
        if (character.category() == QChar::Other_Control)
            character = u' ';
    }
    if (m_file.size() >= m_largestSize)
        turnOver();
    m_file.write(line.toUtf8() + '\n'); // a log that cannot be written is no reason to stop the work
}

void ProgramLog::turnOver()
{
    const QString name = m_file.fileName();
    const auto older = [&name](int number) { return u"%1.%2"_s.arg(name).arg(number); };
    m_file.close();
    QFile::remove(older(keptFiles));
    for (int number = keptFiles; number > 1; --number)
        QFile::rename(older(number - 1), older(number));
    QFile::rename(name, older(1));
    if (m_file.open(QIODevice::WriteOnly | QIODevice::Append | QIODevice::Unbuffered))
        m_file.setPermissions(QFile::ReadOwner | QFile::WriteOwner);
}

void keepLog()
{
    thisUsersLog();
    handlerBefore = qInstallMessageHandler(logAndPassOn);
}

} // namespace plateau::app
