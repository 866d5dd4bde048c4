// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/pictures/samplewindow.h"

#include "app/runfile.h"
#include "app/samplenotebook.h"
#include "app/translation.h"

#include <QApplication>
#include <QDir>
#include <QLocale>
#include <QSettings>
#include <QTranslator>

using namespace Qt::StringLiterals;

namespace plateau::test {

namespace {

notebook::Surroundings onThatDay()
{
    notebook::Surroundings around = notebook::Surroundings::ofThisProgram();
    around.account = u"bench"_s;
    around.host = u"laboratory"_s;
    around.now = sampleNow;
    around.boot = [] { return SampleClock().boot(); };
    return around;
}

} // namespace

QDateTime sampleNow()
{
    return QDateTime::fromString(u"2026-07-28T10:24:00+02:00"_s, Qt::ISODate);
}

SampleNotebook::SampleNotebook(const QString &folder)
    : m_copies(folder.isEmpty() ? m_own.filePath(u"copies"_s) : folder)
{
    app::buildDemoNotebook(m_own.filePath(u"sample.plateau"_s), sampleNow());
}

SampleNotebook::~SampleNotebook()
{
    QDir(m_copies).removeRecursively();
}

QString SampleNotebook::copy() const
{
    QDir(m_copies).removeRecursively();
    const QString path = m_copies + u"/acids.plateau"_s;
    if (!QDir().mkpath(m_copies) || !QFile::copy(m_own.filePath(u"sample.plateau"_s), path))
        qFatal("the sample notebook could not be copied");
    return path;
}

SampleWindow::SampleWindow(const SampleNotebook &sample, QSize size)
{
    const QString path = sample.copy();
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, QFileInfo(path).absolutePath());
    m_book = notebook::Notebook::open(path, notebook::Access::ReadWrite, onThatDay());
    m_window = std::make_unique<ui::MainWindow>(
        *m_book, app::installedMethods(), std::make_unique<QuietDialogs>(m_dialogs),
        std::make_unique<SampleClock>(), std::make_unique<QuietSounder>(m_heard));
    m_window->setPerson(u"Ilka Brodovin"_s);
    m_window->setWindowState(Qt::WindowNoState); // on a screen that is too small it begins maximised
    m_window->resize(size);
    m_window->show();
    m_window->activateWindow();
    (void)QTest::qWaitForWindowActive(m_window.get());
    settle();
}

SampleWindow::~SampleWindow()
{
    m_window.reset(); // before the notebook it looks at
}

SpokenLanguage::SpokenLanguage(const QString &code)
{
    // English with the day before the month.
    QLocale::setDefault(QLocale(code == u"en"_s ? u"en_GB"_s : code));
    app::installTranslations();
}

SpokenLanguage::~SpokenLanguage()
{
    qDeleteAll(QCoreApplication::instance()->findChildren<QTranslator *>());
    QLocale::setDefault(QLocale::c());
}

void settle()
{
    for (int round = 0; round < 4; ++round) {
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    QTest::qWait(30); // what waits a moment for more keys, such as a search
    QApplication::processEvents();
}

} // namespace plateau::test
