// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "tests/ui/instrumentbench.h"
#include "ui/instrument/columndialog.h"
#include "ui/instrument/columnmodel.h"
#include "ui/instrument/linesmodel.h"
#include "ui/instrument/listendialog.h"
#include "ui/instrument/listener.h"
#include "ui/shared/notice.h"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableView>
#include <QtTest/QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <set>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using ::testing::ElementsAre;
using ui::ColumnDialog;
using ui::ListenDialog;
using ui::NamedMapping;
using ui::NetworkLink;
using ui::SerialLink;

TEST_F(Instrument, TakesWholeLinesFromASerialPortHoweverTheyArrive)
{
    FakePhotometer photometer;
    listenTo(serial(photometer.port()));
    ASSERT_TRUE(waitConnected());
    photometer.send("0.512\r\nABS=0,4");
    ASSERT_TRUE(waitTaken(1));
    photometer.send("98\r\n");
    ASSERT_TRUE(waitTaken(2));
    EXPECT_THAT(
        taken,
        ElementsAre(TakenReading{0.512, u"0.512"_s, {}, TakenReading::Origin::Serial, u"Old one"_s},
                    TakenReading{0.498, u"ABS=0,498"_s, {}, TakenReading::Origin::Serial, u"Old one"_s}));
    EXPECT_EQ(refused, QStringList());
    EXPECT_TRUE(intake->stateSentence().startsWith(u"Listening to Old one: Connected to serial port "_s));
}

TEST_F(Instrument, SaysWhatIsNoReadingAndGoesOn)
{
    FakePhotometer photometer;
    listenTo(serial(photometer.port()));
    ASSERT_TRUE(waitConnected());
    photometer.send(QByteArray("\xFF\xFE\x80\x01garbage\r\n", 13) + "READY\r\n\r\n>3.000\r\n" +
                    QByteArray(1500, 'x') + "\r\n0.512\r\n");
    ASSERT_TRUE(waitTaken(1));
    EXPECT_THAT(absorbances(), ElementsAre(0.512));
    ASSERT_EQ(refused.size(), 4); // the empty line is none
    EXPECT_TRUE(refused[0].contains(u"characters that are not text"_s)) << refused[0].toStdString();
    EXPECT_TRUE(refused[1].startsWith(u"READY | There is no number"_s)) << refused[1].toStdString();
    EXPECT_TRUE(refused[2].contains(u"a limit and not a reading"_s)) << refused[2].toStdString();
    EXPECT_TRUE(refused[3].contains(u"no line end within 1024"_s)) << refused[3].toStdString();
}

QByteArray burst()
{
    QByteArray lines;
    for (int line = 0; line < 200; ++line)
        lines += "ABS " + QByteArray::number(line / 1000.0, 'f', 3) + "\r\n";
    return lines;
}

TEST_F(Instrument, LosesNothingOfABurst)
{
    FakePhotometer photometer;
    listenTo(serial(photometer.port()));
    ASSERT_TRUE(waitConnected());
    photometer.send(burst());
    ASSERT_TRUE(waitTaken(200));
    for (std::size_t line = 0; line < 200; ++line)
        EXPECT_EQ(taken[line].absorbance, static_cast<double>(line) / 1000.0);
    EXPECT_EQ(taken.size(), 200u);
    EXPECT_EQ(refused, QStringList());
}

TEST_F(Instrument, AnUnpluggedPortIsSaidAndGoesOnWhenItIsPluggedInAgain)
{
    FakePhotometer photometer;
    listenTo(serial(photometer.port()));
    ASSERT_TRUE(waitConnected());
    photometer.send("0.512\r\n0.4");
    ASSERT_TRUE(waitTaken(1));
    photometer.unplug();
    ASSERT_TRUE(waitConnected(false));
    EXPECT_TRUE(intake->isListening());
    ASSERT_TRUE(waitRefused(1)); // half a line is no reading
    EXPECT_EQ(refused.constFirst(),
              u"0.4 | The connection ended in the middle of this line, so it is not a reading."_s);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return intake->stateSentence().contains(u"there is no such port"_s); }, 20000))
        << intake->stateSentence().toStdString();
    EXPECT_TRUE(intake->stateSentence().startsWith(u"Waiting for Old one: "_s));
    photometer.plugIn();
    ASSERT_TRUE(waitConnected());
    photometer.send("98\r\n0.498\r\n");
    ASSERT_TRUE(waitTaken(3));
    EXPECT_THAT(absorbances(), ElementsAre(0.512, 98, 0.498)); // the rest of before is not put before it
}

TEST_F(Instrument, WaitsForAPortThatIsNotThereYet)
{
    FakePhotometer photometer;
    photometer.unplug();
    listenTo(serial(photometer.port()));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return intake->stateSentence().contains(u"there is no such port"_s); }, 20000));
    EXPECT_FALSE(intake->isConnected());
    photometer.plugIn();
    EXPECT_TRUE(waitConnected());
}

TEST_F(Instrument, TakesNothingOnceItIsStopped)
{
    FakePhotometer photometer;
    listenTo(serial(photometer.port()));
    ASSERT_TRUE(waitConnected());
    // From within the first line of a burst.
    QObject::connect(intake.get(), &ui::InstrumentIntake::readingTaken, intake.get(),
                     [this] { intake->stopListening(); });
    photometer.send("0.1\n0.2\n0.3\n");
    ASSERT_TRUE(waitTaken(1));
    EXPECT_FALSE(intake->isListening());
    EXPECT_EQ(intake->stateSentence(), u"Not listening to a photometer."_s);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
    EXPECT_THAT(absorbances(), ElementsAre(0.1));
}

TEST_F(Instrument, TakesLinesFromTheNetworkInPiecesAndBursts)
{
    FakeServer server;
    exchange::LinePattern pattern;
    pattern.mustContain = u"ABS"_s;
    listenTo(NetworkLink{u"127.0.0.1"_s, server.port()}, pattern);
    ASSERT_TRUE(waitConnected());
    server.send("TEMP 25.0\nABS 0.5");
    server.send("12\nABS over\n");
    ASSERT_TRUE(waitRefused(1));
    EXPECT_THAT(taken, ElementsAre(TakenReading{
                           0.512, u"ABS 0.512"_s, {}, TakenReading::Origin::Network, u"Old one"_s}));
    EXPECT_EQ(refused,
              QStringList{u"ABS over | There is no number in the line."_s}); // the temperature is passed over
    server.send(burst());
    ASSERT_TRUE(waitTaken(201));
    EXPECT_EQ(taken.size(), 201u);
    EXPECT_EQ(taken.back().absorbance, 0.199);
}

TEST_F(Instrument, AServerThatClosesIsSaidAndGoesOnWhenItIsBack)
{
    FakeServer server;
    listenTo(NetworkLink{u"127.0.0.1"_s, server.port()});
    ASSERT_TRUE(waitConnected());
    server.send("0.512\n0.4");
    ASSERT_TRUE(waitTaken(1));
    server.switchOff();
    ASSERT_TRUE(waitConnected(false));
    ASSERT_TRUE(waitRefused(1));
    EXPECT_TRUE(refused.constFirst().startsWith(u"0.4 | "_s));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return intake->stateSentence().contains(u"nothing answers"_s); }, 20000))
        << intake->stateSentence().toStdString();
    server.switchOn();
    ASSERT_TRUE(waitConnected());
    server.send("0.498\n");
    ASSERT_TRUE(waitTaken(2));
    EXPECT_THAT(absorbances(), ElementsAre(0.512, 0.498));
}

// The dialog that listens.

class Listening : public Instrument
{
protected:
    void open()
    {
        intake->openListenDialog(nullptr);
        form = openDialog<ListenDialog>();
        ASSERT_NE(form, nullptr);
        form->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(form));
    }
    void set(const QString &field, const QString &text) const
    {
        if (auto *edit = form->findChild<QLineEdit *>(field))
            edit->setText(text);
        else
            form->findChild<QComboBox *>(field)->setCurrentText(text);
    }
    void choose(const QString &field, int index) const
    {
        form->findChild<QComboBox *>(field)->setCurrentIndex(index);
    }
    QPushButton *push(const QString &name) const { return form->findChild<QPushButton *>(name); }
    QString shown(const QString &table, int row, int at) const
    {
        const auto *view = form->findChild<QTableView *>(table);
        return view->model()->index(row, at).data().toString();
    }
    int rows(const QString &table) const { return form->findChild<QTableView *>(table)->model()->rowCount(); }
    QString obstacle() const { return form->findChild<QLabel *>(u"listenObstacle"_s)->text(); }

    ListenDialog *form = nullptr;
};

TEST_F(Listening, IsSetUpTriedOutAndTakesReadingsOnlyWhenTheDialogIsThrough)
{
    FakeServer server;
    open();
    choose(u"linkKind"_s, 1);
    set(u"networkHost"_s, u"127.0.0.1"_s);
    EXPECT_TRUE(obstacle().contains(u"1 to 65535"_s));
    EXPECT_FALSE(push(u"connectPhotometer"_s)->isEnabled());
    set(u"networkPort"_s, QString::number(server.port()));
    EXPECT_EQ(obstacle(), u"Give the photometer a name to remember it by."_s);
    set(u"photometerName"_s, u"Bench 2"_s);
    EXPECT_EQ(obstacle(), u"Connect before readings are taken."_s);
    EXPECT_FALSE(push(u"takeReadings"_s)->isEnabled());
    push(u"connectPhotometer"_s)->click();
    ASSERT_TRUE(waitConnected());
    EXPECT_EQ(obstacle(), QString());

    const auto *nothing = form->findChild<QLabel *>(u"nothingReceived"_s);
    EXPECT_FALSE(nothing->isHidden());
    server.send("\x02"
                "340 0.512\x03\r\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return rows(u"receivedLines"_s) == 1; }));
    EXPECT_TRUE(nothing->isHidden());
    EXPECT_EQ(shown(u"receivedLines"_s, 0, 0), u"<02>340 0.512<03>"_s);
    EXPECT_EQ(shown(u"receivedLines"_s, 0, 1),
              u"The line has 2 numbers; say which of them is the absorbance."_s);
    push(u"useReceivedLines"_s)->click();
    EXPECT_EQ(form->findChild<QPlainTextEdit *>(u"sampleLines"_s)->toPlainText(), u"340 0.512"_s);
    choose(u"patternWhich"_s, 1);
    EXPECT_EQ(shown(u"triedLines"_s, 0, 1), u"340"_s);
    form->findChild<QSpinBox *>(u"patternNth"_s)->setValue(2);
    EXPECT_EQ(shown(u"triedLines"_s, 0, 1), u"0.512"_s);
    server.send("340 0.498\r\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return rows(u"receivedLines"_s) == 2; }));
    EXPECT_EQ(shown(u"receivedLines"_s, 0, 1), u"0.498"_s); // the last one on top
    EXPECT_FALSE(intake->isListening());
    EXPECT_TRUE(taken.empty());
    EXPECT_TRUE(refused.isEmpty());

    push(u"takeReadings"_s)->click();
    EXPECT_TRUE(intake->isListening());
    server.send("340 0.505\r\n");
    ASSERT_TRUE(waitTaken(1));
    EXPECT_THAT(absorbances(), ElementsAre(0.505));
    EXPECT_EQ(taken.front().source, u"Bench 2"_s);
    EXPECT_EQ(intake->photometerNames(), QStringList{u"Bench 2"_s});
}

TEST_F(Listening, LeftWithoutTakingIsAsBefore)
{
    FakeServer server;
    listenTo(NetworkLink{u"127.0.0.1"_s, server.port()});
    ASSERT_TRUE(waitConnected());
    open();
    EXPECT_EQ(form->photometer().name, u"Old one"_s);
    EXPECT_FALSE(intake->isListening());
    EXPECT_TRUE(intake->isConnected());
    form->findChild<QLineEdit *>(u"patternMustContain"_s)->setText(u"ABS"_s);
    QTest::keyClick(form, Qt::Key_Escape);
    EXPECT_TRUE(intake->isListening());
    server.send("0.512\n");
    ASSERT_TRUE(waitTaken(1)); // by the pattern of before

    open();
    set(u"networkPort"_s, u"1"_s); // what is on show is what is connected
    EXPECT_FALSE(intake->isConnected());
    QTest::keyClick(form, Qt::Key_Escape);
    EXPECT_TRUE(intake->isListening());
    EXPECT_TRUE(waitConnected());

    open();
    push(u"stopListening"_s)->click();
    EXPECT_FALSE(intake->isListening());
    EXPECT_FALSE(intake->isConnected());
}

TEST_F(Listening, IsForgottenByName)
{
    listenTo(NetworkLink{u"127.0.0.1"_s, 1});
    intake->stopListening();
    open();
    EXPECT_EQ(form->findChild<QComboBox *>(u"rememberedPhotometers"_s)->currentText(), u"Old one"_s);
    push(u"forgetPhotometer"_s)->click();
    EXPECT_EQ(intake->photometerNames(), QStringList());
    EXPECT_FALSE(intake->listenTo(u"Old one"_s));
    EXPECT_FALSE(push(u"forgetPhotometer"_s)->isEnabled());
    QTest::keyClick(form, Qt::Key_Escape);
}

TEST_F(Listening, SaysSoWhereThePhotometerCannotBeRemembered)
{
    FakeServer server;
    makeIntake(u"/proc/no/such/plateau.ini"_s);
    open();
    choose(u"linkKind"_s, 1);
    set(u"networkHost"_s, u"127.0.0.1"_s);
    set(u"networkPort"_s, QString::number(server.port()));
    set(u"photometerName"_s, u"Bench 2"_s);
    push(u"connectPhotometer"_s)->click();
    push(u"takeReadings"_s)->click();
    ASSERT_EQ(dialogs.told.size(), 1);
    EXPECT_TRUE(dialogs.told.constFirst().contains(u"/proc/no/such/plateau.ini"_s));
    EXPECT_TRUE(intake->isListening());
}

// A column.

class Column : public Instrument
{
protected:
    void pasteText(const QString &text)
    {
        QApplication::clipboard()->setText(text);
        intake->openPasteDialog(nullptr);
        show();
    }
    void openFile(const QByteArray &content)
    {
        dialogs.nextFile = writeFile(u"readings.csv"_s, content);
        intake->openFileDialog(nullptr);
        show();
    }
    void show()
    {
        form = openDialog<ColumnDialog>();
        ASSERT_NE(form, nullptr);
        form->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(form));
    }
    QString sentence() const { return form->findChild<ui::Notice *>()->sentence(); }
    QPushButton *take() const { return form->findChild<QPushButton *>(u"takeColumn"_s); }
    void choose(const QString &field, int index) const
    {
        form->findChild<QComboBox *>(field)->setCurrentIndex(index);
    }
    void spin(const QString &field, int value) const { form->findChild<QSpinBox *>(field)->setValue(value); }

    ColumnDialog *form = nullptr;
};

TEST_F(Column, IsPastedAndTakenWithTheKeyboardAlone)
{
    pasteText(u"0,512\n0,498\n"_s);
    EXPECT_EQ(sentence(), u"2 readings."_s);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_THAT(column, ElementsAre(TakenReading{0.512, u"0,512"_s, {}, TakenReading::Origin::Pasted, {}},
                                    TakenReading{0.498, u"0,498"_s, {}, TakenReading::Origin::Pasted, {}}));
}

TEST_F(Column, IsTakenWholeOrNotAtAll)
{
    pasteText(u"0.512\nover\n\n0.505"_s);
    EXPECT_TRUE(sentence().startsWith(
        u"Nothing can be taken yet: 2 lines are not readings; the first is line 2, column 1: "_s))
        << sentence().toStdString();
    EXPECT_EQ(QApplication::focusWidget()->objectName(), u"columnText"_s);
    EXPECT_FALSE(take()->isEnabled());
    form->accept();
    EXPECT_TRUE(form->isVisible());
    EXPECT_TRUE(column.empty());
    form->findChild<QPlainTextEdit *>(u"columnText"_s)->setPlainText(u"0.512\n0.499\n\n0.505"_s);
    EXPECT_TRUE(sentence().contains(u"line 3: the line is empty"_s));
    form->findChild<QCheckBox *>(u"mappingBlankLines"_s)->setChecked(true);
    EXPECT_EQ(sentence(), u"3 readings."_s);
    take()->click();
    EXPECT_EQ(column.size(), 3u);
}

TEST_F(Column, ThatCountsTheTubesIsNoColumnOfReadings)
{
    pasteText(u"1;0,612\n2;0,618\n3;0,597"_s);
    EXPECT_TRUE(sentence().contains(u"the column counts the tubes"_s)) << sentence().toStdString();
    EXPECT_FALSE(take()->isEnabled());
    form->findChild<QSpinBox *>(u"mappingAbsorbance"_s)->setValue(2);
    EXPECT_EQ(sentence(), u"3 readings."_s);
    EXPECT_TRUE(take()->isEnabled());
    form->findChild<QPlainTextEdit *>(u"columnText"_s)->setPlainText(u"1\n2"_s); // two may be chance
    form->findChild<QSpinBox *>(u"mappingAbsorbance"_s)->setValue(1);
    EXPECT_TRUE(take()->isEnabled());
    form->reject();
}

TEST_F(Column, OfAFileIsFoundByAMappingThatIsRemembered)
{
    const QByteArray content = "Tube;nm;A\r\n1;340;0,512\r\n2;340;0,498\r\n";
    openFile(content);
    EXPECT_FALSE(take()->isEnabled());
    spin(u"mappingHeader"_s, 1);
    spin(u"mappingAbsorbance"_s, 3);
    spin(u"mappingTube"_s, 1);
    choose(u"mappingDecimal"_s, 2);
    choose(u"mappingOrder"_s, 1);
    EXPECT_EQ(sentence(), u"2 readings."_s);
    form->findChild<QLineEdit *>(u"mappingName"_s)->setText(u"Export"_s);
    take()->click();
    EXPECT_THAT(column, ElementsAre(TakenReading{0.498, u"2;340;0,498"_s, u"2"_s, TakenReading::Origin::File,
                                                 u"readings.csv"_s},
                                    TakenReading{0.512, u"1;340;0,512"_s, u"1"_s, TakenReading::Origin::File,
                                                 u"readings.csv"_s}));
    makeIntake(); // another day
    openFile(content);
    EXPECT_FALSE(take()->isEnabled());
    auto *remembered = form->findChild<QComboBox *>(u"rememberedMappings"_s);
    remembered->setCurrentText(u"Export"_s);
    Q_EMIT remembered->activated(remembered->currentIndex());
    EXPECT_EQ(sentence(), u"2 readings."_s);
    form->reject();
}

TEST_F(Column, OfAnUnreadableFileIsNone)
{
    openFile("0.512\n\xB5\n");
    EXPECT_TRUE(sentence().contains(u"not UTF-8 in line 2, column 1"_s)) << sentence().toStdString();
    EXPECT_FALSE(take()->isEnabled());
    dialogs.nextFile = folder.filePath(u"nothing.csv"_s);
    form->findChild<QPushButton *>(u"anotherColumnFile"_s)->click();
    EXPECT_EQ(sentence(), u"nothing.csv: there is no such file."_s);
    EXPECT_FALSE(take()->isEnabled());
    form->reject();
    dialogs.nextFile.clear();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    intake->openFileDialog(nullptr); // thought better of it
    EXPECT_EQ(openDialog<ColumnDialog>(), nullptr);
}

// What holds for every dialog.

QString nameOf(QWidget *widget)
{
    QAccessibleInterface *interface = QAccessible::queryAccessibleInterface(widget);
    if (!qobject_cast<QComboBox *>(widget))
        return interface->text(QAccessible::Name);
    QString name;
    for (const auto &[label, relation] : interface->relations(QAccessible::Label))
        name = label->text(QAccessible::Name);
    return name;
}

void expectNamesAndMnemonics(QWidget *form, int leastTargets)
{
    std::set<QString> mnemonics;
    int targets = 0;
    for (QWidget *widget : form->findChildren<QWidget *>()) {
        if (!widget->isVisible())
            continue;
        QString text;
        if (const auto *label = qobject_cast<QLabel *>(widget); label && label->buddy())
            text = label->text();
        else if (const auto *push = qobject_cast<QAbstractButton *>(widget))
            text = push->text();
        const QString keys = QKeySequence::mnemonic(text).toString();
        EXPECT_TRUE(keys.isEmpty() || mnemonics.insert(keys).second) << text.toStdString();
        if (widget->focusPolicy() == Qt::NoFocus || widget->focusProxy() ||
            widget->objectName().startsWith(u"qt_"_s) || widget->inherits("QScrollBar"))
            continue;
        EXPECT_FALSE(nameOf(widget).isEmpty())
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
        EXPECT_GE(widget->height(), 24) << widget->objectName().toStdString();
        ++targets;
    }
    EXPECT_GE(targets, leastTargets);
}

void expectTabComesRound(QWidget *form)
{
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    const QWidget *start = QApplication::focusWidget();
    for (int step = 0; step < 60; ++step) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        if (QApplication::focusWidget() == start)
            return;
    }
    FAIL() << "a keyboard trap in " << form->objectName().toStdString();
}

TEST_F(Listening, NamesEveryControlAndHasNoKeyboardTrap)
{
    open();
    for (int kind : {0, 1}) {
        choose(u"linkKind"_s, kind);
        for (int which : {0, 1, 2}) {
            choose(u"patternWhich"_s, which);
            expectNamesAndMnemonics(form, 15);
        }
    }
    expectTabComesRound(form);
    QTest::keyClick(form, Qt::Key_Escape);
}

TEST_F(Listening, IsAsHighAsWhatIsInIt)
{
    open();
    EXPECT_LE(form->height(), form->sizeHint().height() + 2 * form->fontMetrics().lineSpacing());
    QTest::keyClick(form, Qt::Key_Escape);
}

TEST_F(Column, NamesEveryControlAndHasNoKeyboardTrap)
{
    pasteText(u"0.512"_s);
    expectNamesAndMnemonics(form, 13);
    expectTabComesRound(form);
    form->reject();
    openFile("0.512");
    expectNamesAndMnemonics(form, 13);
    expectTabComesRound(form);
    form->reject();
}

TEST_F(Instrument, ItsModelsKeepTheRules)
{
    ui::LinesModel lines(theme);
    const QAbstractItemModelTester linesTester(&lines,
                                               QAbstractItemModelTester::FailureReportingMode::Warning);
    const auto line = [](const QByteArray &bytes) { return ui::received({bytes, false}, {}); };
    lines.setLines({line("0.5"), line("x")});
    lines.setLines({line("0.6")});
    lines.setLines({line("0.6"), line(""), line("0.7")});
    EXPECT_EQ(lines.rowCount(), 3);
    EXPECT_EQ(lines.rowCount(lines.index(0, 0)), 0);
    ui::ColumnModel rows(theme);
    const QAbstractItemModelTester rowsTester(&rows, QAbstractItemModelTester::FailureReportingMode::Warning);
    rows.setLines(exchange::readColumn(u"0.5\nx\n0.7"_s, {}).rows);
    const QModelIndex wrong = rows.index(1, ui::ColumnModel::Result);
    EXPECT_EQ(wrong.data(), u"not a reading"_s);
    EXPECT_TRUE(wrong.data(Qt::ToolTipRole).toString().startsWith(u"line 2, column 1: only digits"_s));
    EXPECT_FALSE(rows.index(0, ui::ColumnModel::Result).data(Qt::ToolTipRole).isValid());
    rows.setLines(exchange::readColumn(u"0.5"_s, {}).rows);
    EXPECT_EQ(rows.rowCount(), 1);
    EXPECT_EQ(rows.columnCount(rows.index(0, 0)), 0);
}

} // namespace
} // namespace plateau::test
