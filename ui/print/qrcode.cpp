// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/qrcode.h"

#include <qrencode.h>

#include <memory>

namespace plateau::ui {

QrCode qrCodeOf(const QString &text)
{
    const QByteArray utf8 = text.toUtf8();
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> encoded(
        QRcode_encodeString(utf8.constData(), 0, QR_ECLEVEL_Q, QR_MODE_8, 1), QRcode_free);
    if (!encoded)
        return {};
    QrCode code;
    code.side = encoded->width;
    const int modules = code.side * code.side;
    code.dark.reserve(static_cast<std::size_t>(modules));
    for (int i = 0; i < modules; ++i)
        code.dark.push_back(encoded->data[i] & 1); // the other bits tell what a module is for
    return code;
}

QString qrCodeLibraryVersion()
{
    return QString::fromLatin1(QRcode_APIVersionString());
}

} // namespace plateau::ui
