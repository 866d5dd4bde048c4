// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Pictures of every page of the program, and what of them does not fit (tests/pictures/README.md).
#include "tests/pictures/fitting.h"
#include "tests/pictures/tour.h"
#include "tests/ui/mnemonics.h"
#include "ui/colours.h"
#include "ui/shared/darkstyle.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFont>
#include <QStyleFactory>
#include <QTextStream>

#include <optional>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

struct Wanted {
    QString folder;
    QString language;
    bool isDark = false;
    QSize size;
    double fontScale = 1;
    QStringList only;
    bool tellsMisfits = false;
    bool tellsCaptions = false;
};

std::optional<QSize> sizeOf(const QString &text)
{
    const QStringList sides = text.split(u'x');
    const QSize size = sides.size() == 2 ? QSize(sides[0].toInt(), sides[1].toInt()) : QSize();
    return size.width() >= 100 && size.height() >= 100 ? std::optional(size) : std::nullopt;
}

std::optional<Wanted> wantedBy(const QStringList &arguments)
{
    QCommandLineParser parser;
    parser.addOptions({{u"out"_s, u"where the pictures go"_s, u"folder"_s},
                       {u"language"_s, u"en, de, fr or es"_s, u"code"_s, u"en"_s},
                       {u"palette"_s, u"light or dark"_s, u"name"_s, u"light"_s},
                       {u"size"_s, u"of the window"_s, u"WxH"_s, u"1280x800"_s},
                       {u"font-scale"_s, u"of the font, 2 for 200 %"_s, u"number"_s, u"1"_s},
                       {u"only"_s, u"one place; may be repeated"_s, u"name"_s},
                       {u"misfits"_s, u"tells what does not fit"_s},
                       {u"captions"_s, u"tells the captions that have a mnemonic"_s}});
    parser.addHelpOption();
    parser.process(arguments);
    Wanted wanted;
    wanted.folder = parser.value(u"out"_s);
    wanted.language = parser.value(u"language"_s);
    const QString palette = parser.value(u"palette"_s);
    const auto size = sizeOf(parser.value(u"size"_s));
    wanted.isDark = palette == u"dark"_s;
    wanted.fontScale = parser.value(u"font-scale"_s).toDouble();
    wanted.only = parser.values(u"only"_s);
    wanted.tellsMisfits = parser.isSet(u"misfits"_s);
    wanted.tellsCaptions = parser.isSet(u"captions"_s);
    const bool sound = size && wanted.fontScale > 0 && (wanted.isDark || palette == u"light"_s) &&
                       QStringList{u"en"_s, u"de"_s, u"fr"_s, u"es"_s}.contains(wanted.language) &&
                       !(wanted.folder.isEmpty() && !wanted.tellsMisfits && !wanted.tellsCaptions);
    if (!sound)
        return std::nullopt;
    wanted.size = *size;
    return wanted;
}

/// A line each: the place, which list of it, the caption.
void tellCaptions(QTextStream &out, const QString &place, const QWidget &shown)
{
    int list = 0;
    for (const QStringList &captions : captionsWithMnemonics(shown)) {
        for (const QString &caption : captions)
            out << place << '\t' << list << '\t' << caption << '\n';
        ++list;
    }
}

/// 0 where all is as wanted, 1 where something does not fit.
int take(const Wanted &wanted)
{
    if (!wanted.folder.isEmpty())
        QDir().mkpath(wanted.folder);
    const SpokenLanguage language(wanted.language);
    const SampleNotebook notebook(QDir::temp().filePath(u"plateau-pictures"_s));
    SampleWindow sample(notebook, wanted.size);
    QTextStream out(stdout);
    int taken = 0;
    int wrong = 0;
    for (const Stop &stop : tour()) {
        if (!wanted.only.isEmpty() && !wanted.only.contains(stop.name))
            continue;
        stop.visit(sample, [&](QWidget &shown) {
            if (!wanted.folder.isEmpty() && !shown.grab().save(u"%1/%2.png"_s.arg(wanted.folder, stop.name)))
                qFatal("a picture could not be written to %s", qUtf8Printable(wanted.folder));
            ++taken;
            if (wanted.tellsCaptions)
                tellCaptions(out, stop.name, shown);
            if (!wanted.tellsMisfits)
                return;
            for (const QString &misfit : misfits(shown, wanted.size)) {
                out << stop.name << ": " << misfit << '\n';
                ++wrong;
            }
        });
    }
    if (taken == 0)
        qFatal("there is no such place");
    return wrong > 0 ? 1 : 0;
}

/// A screen as large as the window wants to be: dialogs are as large as the screen lets them.
QByteArray screenOf(const QSize &size, const QString &folder)
{
    QFile file(folder + u"/screen.json"_s);
    if (!file.open(QIODevice::WriteOnly))
        qFatal("no file for the screen can be written");
    file.write(u"{\"screens\": [{\"name\": \"bench\", \"x\": 0, \"y\": 0, \"width\": %1, \"height\": %2, "
               "\"logicalDpi\": 96, \"logicalBaseDpi\": 96, \"dpr\": 1}]}"_s.arg(size.width())
                   .arg(size.height())
                   .toUtf8());
    return "offscreen:configfile=" + file.fileName().toLocal8Bit();
}

} // namespace
} // namespace plateau::test

int main(int argc, char **argv)
{
    QStringList arguments;
    for (int i = 0; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);
    QCoreApplication::setApplicationName(u"plateau"_s);
    const auto wanted = plateau::test::wantedBy(arguments);
    if (!wanted) {
        std::fputs("pictures: --out FOLDER, --misfits or --captions is needed, and a known language, palette and size\n",
                   stderr);
        return 2;
    }
    const QTemporaryDir folder;
    qputenv("QT_QPA_PLATFORM", plateau::test::screenOf(wanted->size, folder.path()));
    qputenv("TZ", "Europe/Berlin");
    qputenv("HOME", "/home/ilka"); // pages tell where things lie
    for (const char *folder : {"XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME"})
        qunsetenv(folder);
    QApplication application(argc, argv);
    QApplication::setApplicationVersion(u"0.1.0"_s);
    QApplication::setStyle(wanted->isDark ? new plateau::ui::DarkStyle : QStyleFactory::create(u"Fusion"_s));
    QApplication::setPalette(wanted->isDark ? plateau::ui::darkPalette() : plateau::ui::lightPalette());
    QFont font(u"DejaVu Sans"_s);
    font.setPointSizeF(10 * wanted->fontScale);
    QApplication::setFont(font);
    return plateau::test::take(*wanted);
}
