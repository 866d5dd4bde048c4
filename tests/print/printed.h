// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QImage>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <vector>

namespace plateau::test {

/// A PDF as others read it: poppler for text and pages, zbar for codes. What cannot be read fails the test.
class Printed
{
public:
    explicit Printed(const QByteArray &pdf);

    int pages() const;
    /// In millimetres.
    QSizeF pageSize_mm() const;
    /// Of one page, from 1, or of all; blanks as one, as a search in a viewer has it.
    QString text(int page = 0) const;
    struct Word {
        QString text;
        int page = 1;
        /// Millimetres from the upper left corner.
        QRectF area_mm;
    };
    std::vector<Word> words() const;
    /// Name and whether it travels in the file.
    std::vector<std::pair<QString, bool>> fonts() const;
    /// At ten dots a millimetre.
    QImage image(int page) const;
    /// What a scanner reads from every page.
    QStringList codes() const;

private:
    QByteArray m_pdf;
    QString m_info;
};

/// Part of the area that is dark, 0 to 1.
double darkPart(const QImage &image, const QRectF &area_mm);

} // namespace plateau::test
