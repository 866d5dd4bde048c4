// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The program's own window, worked by keys without an end, for a campaign that kills it (killed.py) or that
// makes its disk fail (tests/faults). On standard output it says in lines what the window shows at its start
// ("shows", "waits"), what it is about to store ("try") and, after the window has confirmed it, what was
// stored of it
// ("fact", "gone") and what the window remarks ("says").
//
//   benchdriver NOTEBOOK SEED ACTS
#include "tests/crash/analyst.h"
#include "tests/crash/facts.h"
#include "tests/crash/quickrack.h"
#include "tests/ui/bench.h"
#include "ui/shared/notice.h"

#include <QApplication>
#include <QFont>
#include <QSettings>
#include <QStyleFactory>
#include <QTemporaryDir>

#include <unistd.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

void say(const QByteArray &lines)
{
    for (qsizetype at = 0; at < lines.size();) {
        const ssize_t written = ::write(STDOUT_FILENO, lines.constData() + at, size_t(lines.size() - at));
        if (written <= 0)
            std::_Exit(4); // nobody listens
        at += written;
    }
}

/// What changed between two looks at the window.
QByteArray changes(const Facts &before, const Facts &after)
{
    Facts come;
    for (const auto &[key, value] : after) {
        const auto was = before.find(key);
        if (was == before.end() || was->second != value)
            come[key] = value;
    }
    Facts gone;
    for (const auto &[key, value] : before) {
        if (!after.contains(key))
            gone[key] = value;
    }
    return linesOf("fact", come) + linesOf("gone", gone);
}

class Driver
{
public:
    Driver(const QString &path, unsigned seed)
        : m_methods(quickMethod(m_folder.path()))
        , m_book(notebook::Notebook::openOrCreate(path))
        , m_window(*m_book, m_methods, std::make_unique<QuietDialogs>(m_dialogs),
                   std::make_unique<ui::Clock>(), std::make_unique<QuietSounder>(m_heard))
        , m_session(*m_window.findChild<ui::BenchSession *>())
        , m_analyst(m_window, m_session, seed, [](const QByteArray &prefix, int facts) {
            say("try " + prefix + '\t' + QByteArray::number(facts) + '\n');
        })
    {
        m_window.show();
        m_window.activateWindow();
        (void)QTest::qWaitForWindowActive(&m_window);
    }

    void work(int acts)
    {
        Facts known = factsOf(m_session);
        say("open\n" + linesOf("shows", known) + linesOf("waits", dueMomentsOf(m_session)) + "ready\n");
        m_analyst.giveName();
        for (int act = 0; act < acts; ++act) {
            try {
                if (!m_analyst.doNext())
                    addRack();
            } catch (const notebook::Failure &failure) {
                say("refused\t" + failure.sentence().toUtf8() + '\n');
            }
            const Facts now = factsOf(m_session);
            say(changes(known, now) + notices() + "did\n" + linesOf("waits", dueMomentsOf(m_session)));
            known = now;
        }
        say("end\n");
    }

private:
    /// What the window says beside the facts.
    QByteArray notices() const
    {
        QByteArray lines;
        for (const ui::Notice *notice : m_window.findChildren<ui::Notice *>()) {
            if (notice->isVisible())
                lines += "says " + notice->sentence().toUtf8().replace('\n', ' ') + '\n';
        }
        return lines;
    }

    void addRack()
    {
        say("try run\t1\n");
        m_session.setPerson(u"R. Okafor"_s);
        const notebook::RunId id = m_session.addRun(quickRack(), m_methods.methods().front());
        say("fact run " + QByteArray::number(id.value) + "\t1\n");
    }

    QTemporaryDir m_folder;
    exchange::MethodLibrary m_methods;
    QuietDialogs::Log m_dialogs;
    std::vector<ui::Sound> m_heard;
    std::unique_ptr<notebook::Notebook> m_book;
    ui::MainWindow m_window;
    ui::BenchSession &m_session;
    Analyst m_analyst;
};

} // namespace
} // namespace plateau::test

int main(int argc, char **argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    if (argc != 4)
        return 2;
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    QApplication::setFont(QFont(u"DejaVu Sans"_s, 10));
    QApplication::setApplicationName(u"plateau"_s);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope,
                       QFileInfo(QString::fromLocal8Bit(argv[1])).absolutePath() + u"/settings"_s);
    try {
        plateau::test::Driver driver(QString::fromLocal8Bit(argv[1]), QByteArray(argv[2]).toUInt());
        driver.work(QByteArray(argv[3]).toInt());
    } catch (const plateau::notebook::Failure &failure) {
        std::fprintf(stderr, "%s\n", failure.what());
        return 2;
    }
    return 0;
}
