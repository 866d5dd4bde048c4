// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/onewindow.h"

#include "ui/shared/userfolders.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>
#include <QLocalSocket>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

constexpr int patience_ms = 3000;
/// Longer than the longest path; who sends more is no start of this program.
constexpr qint64 longestCall = 16 * 1024;
constexpr char answer[] = "taken\n";
constexpr char callHead[] = "plateau-open/1 ";

} // namespace

QString OneWindow::socketOf(const QString &notebook)
{
    const QFileInfo file(notebook);
    const QString real = file.exists() ? file.canonicalFilePath() : file.absoluteFilePath();
    const QByteArray name =
        QCryptographicHash::hash(real.toUtf8(), QCryptographicHash::Sha256).toHex().left(16);
    return ui::runtimeFolder() + u"/window-"_s + QString::fromLatin1(name);
}

bool OneWindow::handOver(const QString &notebook, const QString &file)
{
    QLocalSocket socket;
    socket.connectToServer(socketOf(notebook));
    if (!socket.waitForConnected(patience_ms))
        return false;
    // Base64: a file's name may hold any character, a line break among them.
    socket.write(callHead + file.toUtf8().toBase64() + '\n');
    while (!socket.canReadLine()) {
        if (!socket.waitForReadyRead(patience_ms))
            return false;
    }
    return socket.readLine() == answer;
}

OneWindow::OneWindow(QObject *parent)
    : QObject(parent)
{
    m_server.setSocketOptions(QLocalServer::UserAccessOption);
    connect(&m_server, &QLocalServer::newConnection, this, &OneWindow::hear);
}

bool OneWindow::listen(const QString &notebook)
{
    const QString socket = socketOf(notebook);
    if (!ui::makePrivateFolder(ui::runtimeFolder()))
        return false;
    QLocalServer::removeServer(socket);
    return m_server.listen(socket);
}

void OneWindow::hear()
{
    while (QLocalSocket *socket = m_server.nextPendingConnection()) {
        connect(socket, &QLocalSocket::disconnected, socket, &QObject::deleteLater);
        connect(socket, &QLocalSocket::readyRead, this, [this, socket] {
            if (socket->bytesAvailable() > longestCall) {
                socket->abort();
                return;
            }
            if (!socket->canReadLine())
                return;
            const QByteArray line = socket->readLine().trimmed();
            if (!line.startsWith(callHead) && line != QByteArray(callHead).trimmed()) {
                socket->abort();
                return;
            }
            const QString file = QString::fromUtf8(
                QByteArray::fromBase64(line.mid(static_cast<qsizetype>(sizeof callHead) - 1)));
            socket->write(answer);
            socket->flush();
            socket->disconnectFromServer();
            Q_EMIT called(file); // last: it may ask the person something
        });
    }
}

} // namespace plateau::app
