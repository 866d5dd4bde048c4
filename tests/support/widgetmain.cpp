// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include <QApplication>
#include <QFont>
#include <QLocale>
#include <QStyleFactory>

#include <gtest/gtest.h>

#include <cstdio>

namespace {

QtMessageHandler before = nullptr;

/// The model tester only logs in its Warning mode: make what it logs a failure of the test at hand.
void failOnModelTester(QtMsgType type, const QMessageLogContext &context, const QString &message)
{
    if (qstrcmp(context.category, "qt.modeltest") == 0)
        ADD_FAILURE() << message.toStdString();
    else
        before(type, context, message);
}

} // namespace

/// A fixed style and font, so that sizes do not depend on the desktop the tests happen to run on.
int main(int argc, char **argv)
{
    // Where nothing else is asked for, no display is needed: not for listing the tests while building either.
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TZ", "Europe/Berlin"); // as in main.cpp
    QApplication application(argc, argv);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 10));
    QApplication::setApplicationVersion(QStringLiteral("0.0.0-test"));
    QLocale::setDefault(QLocale::c());
    before = qInstallMessageHandler(failOnModelTester);
    ::testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
