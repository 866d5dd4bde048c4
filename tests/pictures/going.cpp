// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/pictures/going.h"

#include "ui/bench/benchsession.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTabWidget>

using namespace Qt::StringLiterals;

namespace plateau::test {

namespace {

template <class T> T &seen(SampleWindow &sample, const QString &name)
{
    for (T *candidate : sample.window().findChildren<T *>(name)) {
        if (candidate->isVisible())
            return *candidate;
    }
    qFatal("nothing on show is called %s", qUtf8Printable(name));
}

int rowWith(const QAbstractItemModel &model, const QString &text)
{
    for (int row = 0; row < model.rowCount(); ++row) {
        for (int column = 0; column < model.columnCount(); ++column) {
            if (model.index(row, column).data().toString().contains(text))
                return row;
        }
    }
    qFatal("no row says %s", qUtf8Printable(text));
}

} // namespace

void trigger(SampleWindow &sample, const QString &action)
{
    auto *found = sample.window().findChild<QAction *>(action);
    if (!found || !found->isEnabled())
        qFatal("%s cannot be chosen", qUtf8Printable(action));
    found->trigger();
    settle();
}

void click(SampleWindow &sample, const QString &button)
{
    auto &found = seen<QAbstractButton>(sample, button);
    if (!found.isEnabled())
        qFatal("%s cannot be pressed", qUtf8Printable(button));
    found.click();
    settle();
}

void chooseRow(SampleWindow &sample, const QString &list, const QString &text)
{
    auto &found = seen<QAbstractItemView>(sample, list);
    const int row = rowWith(*found.model(), text);
    for (int column = 0; column < found.model()->columnCount(); ++column) {
        if (const QModelIndex cell = found.model()->index(row, column); cell.flags() & Qt::ItemIsSelectable) {
            found.setCurrentIndex(cell);
            break;
        }
    }
    settle();
}

void openRow(SampleWindow &sample, const QString &list, const QString &text)
{
    chooseRow(sample, list, text);
    QTest::keyClick(&seen<QAbstractItemView>(sample, list), Qt::Key_Return);
    settle();
}

void choose(SampleWindow &sample, const QString &box, const QString &data)
{
    auto &found = seen<QComboBox>(sample, box);
    for (int item = 0; item < found.count(); ++item) {
        if (found.itemText(item).contains(data) || found.itemData(item).toString() == data) {
            found.setCurrentIndex(item);
            Q_EMIT found.activated(item);
            settle();
            return;
        }
    }
    qFatal("%s does not offer %s", qUtf8Printable(box), qUtf8Printable(data));
}

void typeInto(SampleWindow &sample, const QString &field, const QString &text)
{
    auto &found = seen<QWidget>(sample, field);
    if (auto *line = qobject_cast<QLineEdit *>(&found))
        line->setText(text);
    else if (auto *page = qobject_cast<QPlainTextEdit *>(&found))
        page->setPlainText(text);
    else
        qFatal("%s takes no text", qUtf8Printable(field));
    settle();
}

void showTab(SampleWindow &sample, const QString &tabs, int number)
{
    seen<QTabWidget>(sample, tabs).setCurrentIndex(number);
    settle();
}

void goToRack(SampleWindow &sample, const QString &title)
{
    const auto &session = *sample.window().findChild<ui::BenchSession *>();
    const auto &racks = session.racks();
    for (std::size_t step = 0; step <= racks.size(); ++step) {
        trigger(sample, u"actionNextRack"_s);
        if (sample.window().windowTitle().contains(title))
            return;
    }
    qFatal("no rack on the bench is called %s", qUtf8Printable(title));
}

void lookAtForm(SampleWindow &sample, const Look &look, const QString &action)
{
    sample.dialogs().fillIn = [&look](QDialog &form) {
        form.show();
        settle();
        look(form);
        return false;
    };
    trigger(sample, action);
    sample.dialogs().fillIn = {};
}

void lookAtOpen(SampleWindow &sample, const Look &look, const QString &action,
                const std::function<void(QDialog &)> &fill)
{
    trigger(sample, action);
    for (QDialog *dialog : sample.window().findChildren<QDialog *>()) {
        if (dialog->isVisible()) {
            if (fill) {
                fill(*dialog);
                settle();
            }
            look(*dialog);
            dialog->reject();
            settle();
            return;
        }
    }
    qFatal("%s opens no dialog", qUtf8Printable(action));
}

} // namespace plateau::test
