// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "tests/ui/mnemonics.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSpinBox>

#include <functional>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

struct Page {
    const char *name;
    std::function<void(ui::MainWindow &)> open;
    /// Persons are set up, so that decisions are signed.
    bool isSigned = false;
};

void trigger(const ui::MainWindow &window, const QString &action)
{
    window.findChild<QAction *>(action)->trigger();
}

void PrintTo(const Page &page, std::ostream *out)
{
    *out << page.name;
}

/// What holds for every page of the window.
class EveryPage : public WindowBench, public ::testing::WithParamInterface<Page>
{
protected:
    void SetUp() override
    {
        addRun(exampleRun());
        run::Run read = exampleRun();
        for (run::Tube &tube : read.tubes)
            tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.6}};
        book->decide(addRun(read), notebook::DecisionKind::Accepted, u"M. Lindqvist"_s, {});
        planning::ShelfSample waiting;
        waiting.id = u"P-105"_s;
        book->shelf().registerSample(waiting, u"M. Lindqvist"_s);
        book->lots().receive({u"Buffer pH 9"_s, u"4711"_s, {}, {}}, 500, u"M. Lindqvist"_s);
        evaluation::Specification limit;
        limit.product = u"perry"_s;
        limit.measurand = u"Example acid"_s;
        limit.upper = 1;
        limit.source = u"house specification 4"_s;
        limit.date = QDate(2026, 2, 1);
        book->saveSpecifications({limit}, u"M. Lindqvist"_s, u"as agreed"_s);
        if (GetParam().isSigned)
            book->persons().addFirst(u"M. Lindqvist"_s, u"four plain garden words"_s);
        equipment::Item pipette;
        pipette.name = u"piston pipette 20 to 200 µL"_s;
        pipette.nominal_mL = 0.2;
        pipette.smallest_mL = 0.02;
        pipette.every_days = {{equipment::Aspect::Volume, 90}};
        book->equipment().add(pipette, u"M. Lindqvist"_s);
        openWindow();
        GetParam().open(*window);
        QApplication::processEvents();
    }

    static QString where(const QWidget *widget)
    {
        return QLatin1StringView(widget->metaObject()->className()) + u' ' + widget->objectName();
    }
};

TEST_P(EveryPage, EveryWidgetThatTakesKeysHasAName)
{
    int seen = 0;
    for (QWidget *widget : window->findChildren<QWidget *>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || widget->focusProxy())
            continue;
        // A combo box is known by its label; parts of a compound widget by the whole.
        if (widget->objectName().startsWith(u"qt_"_s) || qobject_cast<QScrollBar *>(widget))
            continue;
        QAccessibleInterface *interface = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(interface, nullptr) << where(widget).toStdString();
        QString name = interface->text(QAccessible::Name);
        if (qobject_cast<QComboBox *>(widget)) {
            name.clear();
            for (const auto &[label, relation] : interface->relations(QAccessible::Label))
                name = label->text(QAccessible::Name);
        }
        EXPECT_FALSE(name.isEmpty()) << where(widget).toStdString();
        ++seen;
    }
    EXPECT_GE(seen, 4);
}

bool isControl(QAccessible::Role role)
{
    switch (role) {
    case QAccessible::Button:
    case QAccessible::ButtonMenu:
    case QAccessible::ButtonDropDown:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::EditableText:
    case QAccessible::ComboBox:
    case QAccessible::SpinBox:
    case QAccessible::Slider:
    case QAccessible::Table:
    case QAccessible::List:
    case QAccessible::Tree:
    case QAccessible::PageTab:
    case QAccessible::PageTabList:
    case QAccessible::MenuItem:
    case QAccessible::Chart:
    case QAccessible::Graphic:
        return true;
    default:
        return false;
    }
}

/// Its own name, or the text of its label, by which alone a combo box is known on Linux.
QString nameOf(QAccessibleInterface &thing)
{
    const QString own = thing.text(QAccessible::Name);
    for (const auto &[label, relation] : thing.relations(QAccessible::Label)) {
        if (own.isEmpty() || thing.role() == QAccessible::ComboBox)
            return label->text(QAccessible::Name);
    }
    return own;
}

/// Everything below it that a screen reader comes to; what a table or list holds is its model's, and is not
/// walked.
void walk(QAccessibleInterface *thing, const QString &path, int &controls, QStringList &nameless)
{
    if (!thing || !thing->isValid() || thing->state().invisible)
        return;
    const QAccessible::Role role = thing->role();
    const QString object = thing->object() ? thing->object()->objectName() : QString();
    const QString here = path + u'/' + (object.isEmpty() ? QString::number(role, 16) : object);
    const bool isPart = object.startsWith(u"qt_"_s) || role == QAccessible::ScrollBar;
    if (isControl(role) && !isPart && !thing->state().invisible) {
        ++controls;
        if (nameOf(*thing).trimmed().isEmpty())
            nameless << here;
    }
    if (isPart || role == QAccessible::Table || role == QAccessible::List || role == QAccessible::Tree ||
        role == QAccessible::ComboBox)
        return;
    for (int child = 0; child < thing->childCount(); ++child)
        walk(thing->child(child), here, controls, nameless);
}

TEST_P(EveryPage, AScreenReaderThatWalksTheWindowComesToNoNamelessControl)
{
    int controls = 0;
    QStringList nameless;
    walk(QAccessible::queryAccessibleInterface(window.get()), {}, controls, nameless);
    EXPECT_GE(controls, 8);
    EXPECT_TRUE(nameless.isEmpty()) << nameless.join(u'\n').toStdString();
}

TEST_P(EveryPage, EveryTargetIsLargeEnough)
{
    for (const QWidget *widget : window->findChildren<QWidget *>()) {
        const bool target = qobject_cast<const QAbstractButton *>(widget) ||
                            qobject_cast<const QLineEdit *>(widget) ||
                            qobject_cast<const QComboBox *>(widget) || qobject_cast<const QSpinBox *>(widget);
        const bool part = qobject_cast<const QSpinBox *>(widget->parentWidget()) || // the text of a spin box
                          widget->objectName().startsWith(u"qt_"_s) || widget->focusPolicy() == Qt::NoFocus;
        if (!target || part || !widget->isVisible())
            continue;
        EXPECT_GE(widget->height(), 24) << where(widget).toStdString();
        EXPECT_GE(widget->width(), 24) << where(widget).toStdString();
    }
}

TEST_P(EveryPage, EveryMnemonicIsThereOnce)
{
    const QStringList clashes = mnemonicClashes(*window);
    EXPECT_TRUE(clashes.isEmpty()) << clashes.join(u'\n').toStdString();
}

TEST_P(EveryPage, TabComesRoundToWhereItStarted)
{
    press(Qt::Key_Tab);
    QWidget *start = QApplication::focusWidget();
    ASSERT_NE(start, nullptr);
    for (int step = 0; step < 160; ++step) {
        press(Qt::Key_Tab);
        if (QApplication::focusWidget() == start)
            return;
    }
    FAIL() << "a keyboard trap at " << where(QApplication::focusWidget()).toStdString();
}

TEST_P(EveryPage, NoValueLabelHidesItsTextBehindAName)
{
    for (const QLabel *label : window->findChildren<QLabel *>()) {
        const bool isPicture = label->text().isEmpty(); // and has nothing else to say
        EXPECT_TRUE(isPicture || label->accessibleName().isEmpty()) << where(label).toStdString();
    }
}

void openRecord(ui::MainWindow &window)
{
    trigger(window, u"actionNotebook"_s);
    auto *runs = window.findChild<QAbstractItemView *>(u"runs"_s);
    runs->setCurrentIndex(runs->model()->index(0, 0));
    QTest::keyClick(runs, Qt::Key_Return);
}

/// Counts the Escapes that come up to a page, and keeps them from it.
class Escapes : public QObject
{
public:
    int seen = 0;

    bool eventFilter(QObject *, QEvent *event) override
    {
        const bool isEscape = event->type() == QEvent::KeyPress &&
                              static_cast<QKeyEvent *>(event)->key() == Qt::Key_Escape;
        seen += isEscape;
        return isEscape;
    }
};

/// The button of what was opened, back to where it was opened from; nullptr: the page has none.
QPushButton *wayBack(const ui::MainWindow &window)
{
    static const QRegularExpression back(u"^Back(?! up)\\b"_s);
    for (auto *button : window.findChildren<QPushButton *>()) {
        if (button->isVisible() && back.match(button->text().remove(u'&')).hasMatch())
            return button;
    }
    return nullptr;
}

/// Of a page that was opened from another one, back to that.
class EveryWayBack : public EveryPage
{
};

TEST_P(EveryWayBack, IsNamedAlikeAndIsThatOfEscapeFromEveryField)
{
    static const QRegularExpression alike(u"^Back( to the (list|item|run))?  Esc$"_s);
    QPushButton *back = wayBack(*window);
    ASSERT_NE(back, nullptr);
    EXPECT_TRUE(alike.match(back->text()).hasMatch()) << back->text().toStdString();
    QWidget *page = back->parentWidget();
    while (!QLatin1StringView(page->metaObject()->className()).startsWith("plateau::ui::"_L1))
        page = page->parentWidget();
    Escapes escapes;
    page->installEventFilter(&escapes);
    int fields = 0;
    for (QWidget *field : page->findChildren<QWidget *>()) {
        if (!field->isVisible() || !field->isEnabled() || field->focusPolicy() == Qt::NoFocus ||
            field->focusProxy() || field->objectName().startsWith(u"qt_"_s))
            continue;
        ++fields;
        field->setFocus();
        press(Qt::Key_Escape);
        EXPECT_EQ(escapes.seen, fields) << where(field).toStdString();
        escapes.seen = fields;
    }
    EXPECT_GE(fields, 2);
    page->removeEventFilter(&escapes);
    const QString before = back->text();
    back->setFocus();
    press(Qt::Key_Escape);
    if (back->isVisible() && back->text() == before)
        press(Qt::Key_Escape); // what the page was opened with counts as keyed, and is asked about
    EXPECT_TRUE(!back->isVisible() || back->text() != before) << "it is still there";
}

const std::vector<Page> pages{
    {"Today", [](ui::MainWindow &window) { trigger(window, u"actionToday"_s); }},
    {"Records", [](ui::MainWindow &window) { trigger(window, u"actionRecords"_s); }},
    {"Pipette", [](ui::MainWindow &window) { trigger(window, u"actionNext"_s); }},
    {"Read", [](ui::MainWindow &window) { trigger(window, u"actionRead"_s); }},
    {"Review", [](ui::MainWindow &window) { trigger(window, u"actionReview"_s); }},
    {"ReviewBySample",
     [](ui::MainWindow &window) {
         trigger(window, u"actionReview"_s);
         window.findChild<QAbstractButton *>(u"bySample"_s)->click();
     }},
    {"ReviewSigned", [](ui::MainWindow &window) { trigger(window, u"actionReview"_s); }, true},
    {"NewRun", [](ui::MainWindow &window) { trigger(window, u"actionNewRun"_s); }},
    {"Notebook", [](ui::MainWindow &window) { trigger(window, u"actionNotebook"_s); }},
    {"Record", openRecord},
    {"RecordSigned", openRecord, true},
    {"Reported",
     [](ui::MainWindow &window) {
         openRecord(window);
         window.findChild<QAbstractButton *>(u"toReported"_s)->click();
     },
     true},
    {"Persons", [](ui::MainWindow &window) { trigger(window, u"actionPersons"_s); }, true},
    {"FirstPerson", [](ui::MainWindow &window) { trigger(window, u"actionPersons"_s); }},
    {"Limits", [](ui::MainWindow &window) { trigger(window, u"actionLimits"_s); }},
    {"Limit",
     [](ui::MainWindow &window) {
         trigger(window, u"actionLimits"_s);
         auto *limits = window.findChild<QAbstractItemView *>(u"limits"_s);
         limits->setCurrentIndex(limits->model()->index(0, 0));
         QTest::keyClick(limits, Qt::Key_Return);
         for (const QString &box : {u"limitKind"_s, u"limitRule"_s, u"limitGuard"_s}) {
             auto *all = window.findChild<QComboBox *>(box);
             all->setCurrentIndex(2); // a range, a guard band of a size
         }
     }},
    {"LabelThreshold",
     [](ui::MainWindow &window) {
         trigger(window, u"actionLimits"_s);
         window.findChild<QAbstractButton *>(u"addLimit"_s)->click();
         auto *kind = window.findChild<QComboBox *>(u"limitKind"_s);
         kind->setCurrentIndex(kind->count() - 1);
     }},
    {"Methods", [](ui::MainWindow &window) { trigger(window, u"actionMethods"_s); }},
    {"Method",
     [](ui::MainWindow &window) {
         trigger(window, u"actionMethods"_s);
         QTest::keyClick(window.findChild<QAbstractItemView *>(u"methods"_s), Qt::Key_Return);
     }},
    {"MethodVersions",
     [](ui::MainWindow &window) {
         trigger(window, u"actionMethods"_s);
         QTest::keyClick(window.findChild<QAbstractItemView *>(u"methods"_s), Qt::Key_Return);
         QTest::keyClick(&window, Qt::Key_S, Qt::AltModifier);
     }},
    {"Samples", [](ui::MainWindow &window) { trigger(window, u"actionSamples"_s); }},
    {"RegisterSamples",
     [](ui::MainWindow &window) {
         trigger(window, u"actionSamples"_s);
         window.findChild<QAbstractButton *>(u"registerSamples"_s)->click();
     }},
    {"Lots", [](ui::MainWindow &window) { trigger(window, u"actionLots"_s); }},
    {"Lot",
     [](ui::MainWindow &window) {
         trigger(window, u"actionLots"_s);
         QTest::keyClick(window.findChild<QAbstractItemView *>(u"lots"_s), Qt::Key_Return);
     }},
    {"LotLabel",
     [](ui::MainWindow &window) {
         trigger(window, u"actionLots"_s);
         QTest::keyClick(window.findChild<QAbstractItemView *>(u"lots"_s), Qt::Key_Return);
         auto *what = window.findChild<QComboBox *>(u"lotEvent"_s);
         what->setCurrentIndex(what->count() - 1);
     }},
    {"ReceiveLot",
     [](ui::MainWindow &window) {
         trigger(window, u"actionLots"_s);
         window.findChild<QAbstractButton *>(u"receiveLot"_s)->click();
     }},
    {"Standards", [](ui::MainWindow &window) { trigger(window, u"actionStandards"_s); }},
    {"PrepareStandard",
     [](ui::MainWindow &window) {
         trigger(window, u"actionStandards"_s);
         window.findChild<QAbstractButton *>(u"prepareStandard"_s)->click();
     }},
    {"Substance",
     [](ui::MainWindow &window) {
         trigger(window, u"actionStandards"_s);
         window.findChild<QAbstractButton *>(u"prepareStandard"_s)->click();
         window.findChild<QAbstractButton *>(u"addSubstance"_s)->click();
     }},
    {"Equipment", [](ui::MainWindow &window) { trigger(window, u"actionEquipment"_s); }},
    {"AddItem",
     [](ui::MainWindow &window) {
         trigger(window, u"actionEquipment"_s);
         window.findChild<QAbstractButton *>(u"addItem"_s)->click();
     }},
    {"EquipmentItem",
     [](ui::MainWindow &window) {
         trigger(window, u"actionEquipment"_s);
         QTest::keyClick(window.findChild<QAbstractItemView *>(u"equipment"_s), Qt::Key_Return);
     }},
    {"EquipmentCheck",
     [](ui::MainWindow &window) {
         trigger(window, u"actionEquipment"_s);
         QTest::keyClick(window.findChild<QAbstractItemView *>(u"equipment"_s), Qt::Key_Return);
         window.findChild<QAbstractButton *>(u"keyCheck"_s)->click();
     }},
    {"Laboratory", [](ui::MainWindow &window) { trigger(window, u"actionLaboratory"_s); }},
    {"ControlCharts", [](ui::MainWindow &window) { trigger(window, u"actionCharts"_s); }},
    {"RunFile", [](ui::MainWindow &window) { window.openRunFile(u"/nowhere/run.json"_s); }},
};

INSTANTIATE_TEST_SUITE_P(Window, EveryPage, ::testing::ValuesIn(pages),
                         [](const auto &page) { return std::string(page.param.name); });

/// Of the pages above, those that were opened from another one, and two more.
std::vector<Page> opened()
{
    const QStringList names{u"Record"_s,         u"Reported"_s,        u"Limit"_s,     u"Method"_s,
                            u"RegisterSamples"_s, u"Lot"_s,             u"ReceiveLot"_s, u"PrepareStandard"_s,
                            u"Substance"_s,       u"AddItem"_s,         u"EquipmentItem"_s, u"EquipmentCheck"_s};
    std::vector<Page> found;
    for (const Page &page : pages) {
        if (names.contains(QLatin1StringView(page.name)))
            found.push_back(page);
    }
    found.push_back({"NewMethod", [](ui::MainWindow &window) {
                         trigger(window, u"actionMethods"_s);
                         window.findChild<QAbstractButton *>(u"newMethod"_s)->click();
                     }});
    found.push_back({"ComparedRuns", [](ui::MainWindow &window) {
                         trigger(window, u"actionNotebook"_s);
                         window.findChild<QAbstractItemView *>(u"runs"_s)->selectAll();
                         window.findChild<QAbstractButton *>(u"compareRuns"_s)->click();
                     }});
    return found;
}

INSTANTIATE_TEST_SUITE_P(Window, EveryWayBack, ::testing::ValuesIn(opened()),
                         [](const auto &page) { return std::string(page.param.name); });

} // namespace
} // namespace plateau::test
