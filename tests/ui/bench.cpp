// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"

#include "ui/shared/notice.h"

#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QSettings>
#include <QTextBrowser>

using namespace Qt::StringLiterals;

namespace plateau::test {

QByteArray exampleMethod()
{
    return R"json({"format": "plateau-method/1", "id": "example-acid", "version": 1, "name": "Example acid",
 "source": "made up for the tests", "chromophore": "NADH", "absorptivity_L_per_mol_cm": {"340": 6300, "365": 3400},
 "wavelength_nm": 340, "pathLength_mm": 10, "direction": "rising", "volumeCorrection": "none",
 "components": [{"id": "buffer", "name": "Buffer pH 9", "volume_mL": 1.0},
                {"id": "water", "name": "Water", "volume_mL": 1.0},
                {"id": "sample", "name": "Sample", "volume_mL": 0.1, "range_mL": [0.05, 0.5]},
                {"id": "starter", "name": "Enzyme suspension", "volume_mL": 0.02, "suspension": true}],
 "sample": "sample", "diluent": "water", "starter": "starter",
 "steps": [{"add": "buffer"}, {"add": "water"}, {"add": "sample"}, {"mix": true}, {"wait_min": [3, 10]}, {"read": "A1"},
           {"add": "starter"}, {"mix": true}, {"wait_min": [15, 40]}, {"read": "A2"}],
 "measurands": [{"id": "example-acid", "name": "Example acid", "molarMass_g_per_mol": 100, "chromophorePerMolecule": 1,
                 "signal": {"kind": "difference", "from": "A1", "to": "A2"}}],
 "window": {"minSignal": 0.1, "maxSignal": 1.0, "maxAbsorbance": 2.0},
 "acceptance": {"maxBlankSignal": 0.05, "standardRecovery_percent": [95, 105],
                "repeatability": {"constant_g_per_L": 0.01, "proportional": 0.03}},
 "standard": {"lossPerHour": 0.02}})json";
}

run::Run exampleRun()
{
    run::Run run;
    run.title = u"Perry tanks"_s;
    run.method = u"example-acid"_s;
    run::Sample sample;
    sample.id = u"P-104"_s;
    run.samples = {sample};
    run.uncertainty = run::UncertaintyInputs{0.002, 0.5, 0.2, 0.5, 0.8, 0.4, 0.2};
    run::Tube blank;
    blank.role = run::Role::Blank;
    run::Tube tube;
    tube.sample = sample.id;
    run.tubes = {blank, blank, tube, tube};
    return run;
}

Bench::Bench()
{
    // What the window keeps between uses is nobody's but this test's.
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
    QDir(folder.path()).mkdir(u"methods"_s);
    writeFile(u"methods/example-acid.json"_s, exampleMethod());
    library = exchange::MethodLibrary::load(folder.filePath(u"methods"_s));
    EXPECT_EQ(library.methods().size(), 1U);
    notebook::Surroundings around = notebook::Surroundings::ofThisProgram();
    around.passphraseWork = notebook::PassphraseWork::Least;
    book = notebook::Notebook::create(folder.filePath(u"test.plateau"_s), around);
}

Bench::~Bench() = default;

QString Bench::writeFile(const QString &name, const QByteArray &content) const
{
    QFile file(folder.filePath(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    EXPECT_EQ(file.write(content), content.size());
    return file.fileName();
}

notebook::RunId Bench::addRun(const run::Run &run)
{
    return book->addRun(run, method(), u"R. Okafor"_s);
}

WindowBench::~WindowBench()
{
    window.reset(); // before the notebook it looks at
}

void WindowBench::openWindow()
{
    window = std::make_unique<ui::MainWindow>(*book, library, std::make_unique<QuietDialogs>(dialogs),
                                              std::make_unique<StoppedClock>(),
                                              std::make_unique<QuietSounder>(heard));
    window->show();
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
}

QString WindowBench::labelText(const QString &name) const
{
    const QLabel *label = find<QLabel>(name);
    return label ? label->text() : QString();
}

QString WindowBench::workingText() const
{
    QString text;
    for (const QTextBrowser *browser : window->findChildren<QTextBrowser *>(u"working"_s)) {
        if (browser->parentWidget()->parentWidget()->isVisible())
            text += browser->toPlainText();
    }
    return text;
}

QString WindowBench::noticeText() const
{
    QStringList sentences;
    for (const ui::Notice *notice : window->findChildren<ui::Notice *>()) {
        if (notice->isVisible())
            sentences << notice->sentence();
    }
    return sentences.join(u'\n');
}

void WindowBench::type(const QString &text) const
{
    // Key by key: the first one in a table moves the focus to an editor.
    for (const QChar character : text) {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClicks(QApplication::focusWidget(), QString(character));
    }
}

void WindowBench::press(Qt::Key key, Qt::KeyboardModifiers modifiers) const
{
    QWidget *focus = QApplication::focusWidget();
    QTest::keyClick(focus ? focus : window.get(), key, modifiers);
    QApplication::processEvents(); // an editor in a table takes Enter through the event queue
}

QString WindowBench::focusName() const
{
    const QWidget *focus = QApplication::focusWidget();
    return focus ? focus->objectName() : QString();
}

void WindowBench::tabTo(const QString &name) const
{
    QStringList seen;
    for (int step = 0; step < 160; ++step) {
        if (focusName() == name)
            return;
        seen << focusName();
        press(Qt::Key_Tab);
    }
    seen.removeDuplicates();
    FAIL() << "Tab never comes to " << name.toStdString() << ", only to " << seen.join(u", "_s).toStdString();
}

} // namespace plateau::test
