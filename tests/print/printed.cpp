// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/print/printed.h"

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTextDocumentFragment>

#include <gtest/gtest.h>

namespace plateau::test {

using namespace Qt::StringLiterals;

namespace {

constexpr double mmPerPoint = 25.4 / 72;

QByteArray outputOf(const QString &program, const QStringList &arguments, const QByteArray &input)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForStarted()) {
        ADD_FAILURE() << program.toStdString() << " could not be started; see cmake/packages.txt";
        return {};
    }
    process.write(input);
    process.closeWriteChannel();
    EXPECT_TRUE(process.waitForFinished(60000));
    EXPECT_EQ(process.exitCode(), 0) << program.toStdString() << ": "
                                     << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput();
}

QString match(const QString &text, const QString &pattern, int group = 1)
{
    return QRegularExpression(pattern, QRegularExpression::MultilineOption).match(text).captured(group);
}

} // namespace

Printed::Printed(const QByteArray &pdf)
    : m_pdf(pdf)
{
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    m_info = QString::fromUtf8(outputOf(u"pdfinfo"_s, {u"-"_s}, m_pdf));
}

int Printed::pages() const
{
    return match(m_info, u"^Pages: +(\\d+)"_s).toInt();
}

QSizeF Printed::pageSize_mm() const
{
    const QString size = u"^Page size: +([\\d.]+) x ([\\d.]+)"_s;
    return QSizeF(match(m_info, size, 1).toDouble(), match(m_info, size, 2).toDouble()) * mmPerPoint;
}

QString Printed::text(int page) const
{
    QStringList arguments{u"-raw"_s, u"-enc"_s, u"UTF-8"_s, u"-"_s, u"-"_s};
    if (page > 0)
        arguments = QStringList{u"-f"_s, QString::number(page), u"-l"_s, QString::number(page)} + arguments;
    return QString::fromUtf8(outputOf(u"pdftotext"_s, arguments, m_pdf)).simplified();
}

std::vector<Printed::Word> Printed::words() const
{
    const QString boxes = QString::fromUtf8(
        outputOf(u"pdftotext"_s, {u"-bbox"_s, u"-enc"_s, u"UTF-8"_s, u"-"_s, u"-"_s}, m_pdf));
    const QRegularExpression pattern(
        u"<page |<word xMin=\"([\\d.-]+)\" yMin=\"([\\d.-]+)\" xMax=\"([\\d.-]+)\" yMax=\"([\\d.-]+)\">([^<]*)</word>"_s);
    std::vector<Word> words;
    int page = 0;
    for (const auto &found : pattern.globalMatch(boxes)) {
        if (found.captured().startsWith("<page"_L1)) {
            ++page;
            continue;
        }
        const auto at = [&](int group) { return found.captured(group).toDouble() * mmPerPoint; };
        QString text = found.captured(5);
        text.replace("&lt;"_L1, "<"_L1).replace("&gt;"_L1, ">"_L1).replace("&quot;"_L1, "\""_L1);
        text.replace("&amp;"_L1, "&"_L1);
        words.push_back({text, page, QRectF(QPointF(at(1), at(2)), QPointF(at(3), at(4)))});
    }
    return words;
}

std::vector<std::pair<QString, bool>> Printed::fonts() const
{
    std::vector<std::pair<QString, bool>> fonts;
    const QString list = QString::fromUtf8(outputOf(u"pdffonts"_s, {u"-"_s}, m_pdf));
    for (const QString &line : list.split(u'\n').mid(2)) {
        const QStringList cells = line.simplified().split(u' ');
        if (cells.size() > 6) // from the end: embedded, subset, unicode map, object number, generation
            fonts.emplace_back(cells.front(), cells[cells.size() - 5] == "yes"_L1);
    }
    return fonts;
}

QImage Printed::image(int page) const
{
    const QString number = QString::number(page);
    return QImage::fromData(outputOf(
        u"pdftoppm"_s, {u"-f"_s, number, u"-l"_s, number, u"-r"_s, u"254"_s, u"-gray"_s, u"-"_s}, m_pdf));
}

QStringList Printed::codes() const
{
    const QTemporaryDir folder;
    QStringList codes;
    for (int page = 1; page <= pages(); ++page) {
        const QString path = folder.filePath(u"%1.png"_s.arg(page));
        EXPECT_TRUE(image(page).save(path));
        codes << QString::fromUtf8(outputOf(u"zbarimg"_s, {u"-q"_s, u"--nodbus"_s, u"--raw"_s, path}, {}))
                     .trimmed();
    }
    return codes;
}

double darkPart(const QImage &image, const QRectF &area_mm)
{
    const QRect area = QRectF(area_mm.topLeft() * 10, area_mm.size() * 10).toAlignedRect();
    int dark = 0;
    for (int y = area.top(); y <= area.bottom(); ++y) {
        for (int x = area.left(); x <= area.right(); ++x)
            dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
    }
    return double(dark) / (area.width() * area.height());
}

} // namespace plateau::test
