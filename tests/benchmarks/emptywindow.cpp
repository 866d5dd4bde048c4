// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// An empty window of Qt Widgets with a chart in it, and nothing else of the program: what start_benchmark holds the
// whole window against.
#include <QApplication>
#include <QChart>
#include <QChartView>
#include <QMainWindow>
#include <QTimer>

int main(int argc, char **argv)
{
    const QApplication application(argc, argv);
    QMainWindow window;
    window.setCentralWidget(new QChartView(new QChart, &window));
    window.resize(1280, 800);
    window.show();
    QTimer::singleShot(0, [] { QTimer::singleShot(0, qApp, &QCoreApplication::quit); });
    return QApplication::exec();
}
