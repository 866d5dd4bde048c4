// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/crash/analyst.h"

#include "tests/crash/facts.h"
#include "ui/shared/notice.h"

#include <QApplication>
#include <QLabel>
#include <QMainWindow>
#include <QRegularExpression>
#include <QtTest/QTest>

#include <algorithm>

namespace plateau::test {

using namespace Qt::StringLiterals;

namespace {

QByteArray keyOf(const char *what, notebook::RunId run, int tube = -1)
{
    QByteArray text = QByteArray(what) + ' ' + QByteArray::number(run.value) + ' ';
    return tube < 0 ? text : text + QByteArray::number(tube) + ' ';
}

/// The component that the tube waits for; empty where it waits for a reading.
QString componentNext(const ui::Rack &rack, int tube)
{
    const auto due = std::ranges::find(rack.due, tube, &timing::Due::tube);
    return due != rack.due.end() && due->act.kind == run::TubeAct::Kind::Add ? due->act.name : QString();
}

} // namespace

Analyst::Analyst(QMainWindow &window, ui::BenchSession &session, unsigned seed, Announce announce)
    : m_window(window)
    , m_session(session)
    , m_random(seed)
    , m_announce(std::move(announce))
{
}

void Analyst::giveName()
{
    press(Qt::Key_P, Qt::AltModifier);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    press(Qt::Key_G, Qt::ControlModifier);
}

bool Analyst::doNext()
{
    const auto next = m_session.next();
    if (!next || next->kind == ui::NextAction::Kind::Review)
        return false;
    if (next->kind == ui::NextAction::Kind::Pipette)
        pipette(*next);
    else if (const int which = below(20); which == 0)
        spoil(*next);
    else if (which < 4)
        correct();
    else
        read(*next);
    return true;
}

void Analyst::pipette(const ui::NextAction &next)
{
    press(Qt::Key_G, Qt::ControlModifier);
    if (below(4) > 0) {
        m_announce(keyOf("done", next.run, next.tube()), 1);
        press(Qt::Key_F9);
        return;
    }
    // The rest of the round in one act.
    const ui::Rack &rack = *m_session.find(next.run);
    const QString component = componentNext(rack, next.tube());
    const Facts facts = factsOf(m_session);
    int left = 0;
    for (std::size_t tube = 0; tube < rack.stored.run.tubes.size(); ++tube) {
        const bool isDone = facts.contains(keyOf("done", next.run, int(tube)) + component.toUtf8());
        left += !isDone && rack.stored.run.tubes[tube].spoilt.isEmpty() ? 1 : 0;
    }
    m_announce(keyOf("done", next.run), left);
    type(u"*"_s);
    // Of what starts the clock of several tubes it is asked for once more.
    const auto notices = m_window.findChildren<ui::Notice *>();
    if (std::ranges::any_of(notices, [](const ui::Notice *notice) {
            return notice->isVisible() && notice->sentence().startsWith(u"Ticked together"_s);
        }))
        type(u"*"_s);
}

void Analyst::read(const ui::NextAction &next)
{
    const double value = 0.100 + 0.001 * next.tube() + (next.place.reading == "A1"_L1 ? 0.0 : 0.3);
    press(Qt::Key_G, Qt::ControlModifier);
    type(QString::number(value, 'f', 3));
    m_announce(keyOf("reading", next.run, next.tube()) + next.place.reading.toUtf8(), 1);
    press(Qt::Key_Return);
    const auto now = m_session.next();
    if (isAt(u"readingEntry"_s) && now && now->run == next.run && now->place == next.place)
        press(Qt::Key_Return); // it was asked about
}

void Analyst::correct()
{
    press(Qt::Key_2, Qt::ControlModifier);
    tabTo(u"readingsTable"_s);
    for (int row = below(4); row >= 0; --row)
        press(Qt::Key_Up);
    press(Qt::Key_Return);
    if (!isAt(u"readingEntry"_s))
        return;
    type(u"0,%1"_s.arg(200 + below(300)));
    // Which place it is stands in the panel, but its rack and tube are told apart well enough by "reading". A place that was empty
    // takes the reading at once.
    m_announce("reading ", 1);
    press(Qt::Key_Return);
    if (isAt(u"readingEntry"_s))
        press(Qt::Key_Return); // asked about, or a place that was empty
    if (!isAt(u"correctionReason"_s))
        return;
    type(u"misread the display"_s);
    m_announce("reading ", 1);
    press(Qt::Key_Return);
    if (isAt(u"correctionReason"_s))
        press(Qt::Key_Return); // it was asked about
    press(Qt::Key_Escape);
}

void Analyst::spoil(const ui::NextAction &next)
{
    press(Qt::Key_G, Qt::ControlModifier);
    if (!isAt(u"readingEntry"_s))
        return;
    type(u"/"_s);
    type(u"dropped"_s);
    m_announce(keyOf("spoilt", next.run, next.tube()).trimmed(), 1);
    press(Qt::Key_Return);
}

int Analyst::below(int limit)
{
    // Not a distribution of the library: those differ between libraries.
    return int(m_random() % unsigned(limit));
}

void Analyst::press(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QWidget *focus = QApplication::focusWidget();
    QTest::keyClick(focus ? focus : &m_window, key, modifiers);
    QApplication::processEvents();
}

void Analyst::type(const QString &text)
{
    for (const QChar character : text) {
        QWidget *focus = QApplication::focusWidget();
        QTest::keyClicks(focus ? focus : &m_window, QString(character));
    }
}

bool Analyst::isAt(const QString &name) const
{
    const QWidget *focus = QApplication::focusWidget();
    return focus && focus->objectName() == name;
}

void Analyst::tabTo(const QString &name)
{
    for (int step = 0; step < 160 && !isAt(name); ++step)
        press(Qt::Key_Tab);
}

} // namespace plateau::test
