// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/pictures/fitting.h"

#include "ui/shared/elidinglabel.h"
#include "ui/shared/table.h"
#include "ui/shared/wrappedheader.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QFocusFrame>
#include <QGroupBox>
#include <QHeaderView>
#include <QHelpEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMainWindow>
#include <QMenuBar>
#include <QPushButton>
#include <QRadioButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QSizeGrip>
#include <QSplitter>
#include <QStyleOptionButton>
#include <QStyleOptionComboBox>
#include <QStyleOptionGroupBox>
#include <QTabBar>
#include <QTabWidget>
#include <QTextDocument>
#include <QToolButton>
#include <QToolTip>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::test {

namespace {

/// Widths are rounded by the layouts.
constexpr int slack = 1;

QString shown(QString text)
{
    text.replace(u'\n', u' ');
    return text.size() > 60 ? text.left(59) + u'…' : text;
}

QString named(const QWidget &widget)
{
    QString path;
    for (const QWidget *at = &widget; at && path.count(u'/') < 3; at = at->parentWidget()) {
        const QString name = at->objectName().isEmpty() ? QString::fromLatin1(at->metaObject()->className())
                                                        : at->objectName();
        path = path.isEmpty() ? name : name + u'/' + path;
        if (!at->objectName().isEmpty() && at != &widget)
            break;
    }
    return path;
}

class Inspection
{
public:
    explicit Inspection(const QWidget &window)
        : m_window(window)
    {
    }

    QStringList found()
    {
        for (const QWidget *widget : m_window.findChildren<QWidget *>()) {
            if (!isOnShow(*widget))
                continue;
            inspectWords(*widget);
            inspectPlace(*widget);
            inspectNeighbours(*widget);
        }
        m_found.removeDuplicates();
        return m_found;
    }

private:
    /// Not what belongs to another window, nor what the toolkit puts together by itself.
    bool isOnShow(const QWidget &widget) const
    {
        if (!widget.isVisibleTo(&m_window) || widget.window() != m_window.window() || widget.isWindow())
            return false;
        if (widget.objectName().startsWith(u"qt_"_s) && !qobject_cast<const QTabBar *>(&widget))
            return false;
        for (const QWidget *above = widget.parentWidget(); above && above != &m_window;
             above = above->parentWidget()) {
            if (qobject_cast<const QComboBox *>(above) || qobject_cast<const QTabBar *>(above) ||
                qobject_cast<const QMenuBar *>(above) || qobject_cast<const QLineEdit *>(above))
                return false;
            if (const auto *view = qobject_cast<const QAbstractItemView *>(above);
                view && !qobject_cast<const QHeaderView *>(&widget))
                return false; // a cell's editor, a header's viewport
        }
        return true;
    }

    void say(const QWidget &widget, const QString &text, const QString &why)
    {
        m_found << u"%1 “%2”: %3"_s.arg(named(widget), shown(text), why);
    }
    void sayShort(const QWidget &widget, const QString &text, int has, int needs,
                  const QString &what = u"wide"_s)
    {
        if (has + slack < needs)
            say(widget, text, u"%1 px %3, its text needs %2"_s.arg(has).arg(needs).arg(what));
    }

    /// By a tool tip, for the pointer that rests on the words.
    static bool isToldWhole(const QWidget &widget, const QString &words)
    {
        QToolTip::hideText();
        auto *asked = const_cast<QWidget *>(&widget);
        const QPoint middle = widget.rect().center();
        QHelpEvent rests(QEvent::ToolTip, middle, widget.mapToGlobal(middle));
        QApplication::sendEvent(asked, &rests);
        const bool isTold = QToolTip::text().contains(words.toHtmlEscaped());
        QToolTip::hideText();
        return isTold;
    }

    void inspectWords(const QWidget &widget)
    {
        if (const auto *label = qobject_cast<const QLabel *>(&widget))
            inspectLabel(*label);
        else if (const auto *push = qobject_cast<const QPushButton *>(&widget))
            inspectButton(*push, QStyle::SE_PushButtonContents);
        else if (const auto *check = qobject_cast<const QCheckBox *>(&widget))
            inspectButton(*check, QStyle::SE_CheckBoxContents);
        else if (const auto *radio = qobject_cast<const QRadioButton *>(&widget))
            inspectButton(*radio, QStyle::SE_RadioButtonContents);
        else if (const auto *tool = qobject_cast<const QToolButton *>(&widget))
            sayShort(*tool, tool->text(), tool->width(), tool->minimumSizeHint().width());
        else if (const auto *group = qobject_cast<const QGroupBox *>(&widget))
            inspectGroup(*group);
        else if (const auto *tabs = qobject_cast<const QTabBar *>(&widget))
            inspectTabs(*tabs);
        else if (const auto *header = qobject_cast<const QHeaderView *>(&widget))
            inspectHeader(*header);
        else if (const auto *box = qobject_cast<const QComboBox *>(&widget))
            inspectBox(*box);
        else if (const auto *line = qobject_cast<const QLineEdit *>(&widget))
            inspectLine(*line);
        else if (const auto *menu = qobject_cast<const QMenuBar *>(&widget))
            inspectMenu(*menu);
        else if (const auto *list = qobject_cast<const QListView *>(&widget))
            inspectList(*list);
    }

    void inspectLabel(const QLabel &label)
    {
        if (label.text().isEmpty() || qobject_cast<const ui::ElidingLabel *>(&label))
            return;
        if (!label.wordWrap()) {
            sayShort(label, label.text(), label.width(), label.sizeHint().width());
            sayShort(label, label.text(), label.height(), label.sizeHint().height(), u"high"_s);
            return;
        }
        sayShort(label, label.text(), label.height(), label.heightForWidth(label.width()), u"high"_s);
        QTextDocument words;
        words.setHtml(Qt::mightBeRichText(label.text()) ? label.text() : label.text().toHtmlEscaped());
        int longest = 0;
        for (const QString &word : words.toPlainText().split(QRegularExpression(u"[ \\n/-]"_s)))
            longest = std::max(longest, label.fontMetrics().horizontalAdvance(word));
        sayShort(label, label.text(), label.contentsRect().width(), longest);
    }

    template <class Button> void inspectButton(const Button &button, QStyle::SubElement contents)
    {
        if (button.text().isEmpty())
            return;
        QStyleOptionButton option;
        option.initFrom(&button);
        option.text = button.text();
        const QRect room = button.style()->subElementRect(contents, &option, &button);
        const QSize words = button.fontMetrics().size(Qt::TextShowMnemonic, button.text());
        const int icon = button.icon().isNull() ? 0 : button.iconSize().width() + 4;
        sayShort(button, button.text(), room.width(), words.width() + icon);
        sayShort(button, button.text(), button.height(), words.height(), u"high"_s);
    }

    void inspectGroup(const QGroupBox &group)
    {
        if (group.title().isEmpty())
            return;
        QStyleOptionGroupBox option;
        option.initFrom(&group);
        option.text = group.title();
        option.subControls = QStyle::SC_GroupBoxLabel;
        if (group.isCheckable())
            option.subControls |= QStyle::SC_GroupBoxCheckBox;
        const QRect place =
            group.style()->subControlRect(QStyle::CC_GroupBox, &option, QStyle::SC_GroupBoxLabel, &group);
        const int words = group.fontMetrics().size(Qt::TextShowMnemonic, group.title()).width();
        sayShort(group, group.title(), group.width() - place.left(), words);
    }

    void inspectTabs(const QTabBar &tabs)
    {
        for (int tab = 0; tab < tabs.count(); ++tab) {
            if (!tabs.isTabVisible(tab))
                continue;
            const QRect place = tabs.tabRect(tab);
            const int icon = tabs.tabIcon(tab).isNull() ? 0 : tabs.iconSize().width() + 4;
            const int words = tabs.fontMetrics().size(Qt::TextShowMnemonic, tabs.tabText(tab)).width() + icon;
            sayShort(tabs, tabs.tabText(tab), place.width() - 8, words);
            if (!tabs.usesScrollButtons() && !tabs.rect().adjusted(-slack, 0, slack, 0).contains(place))
                say(tabs, tabs.tabText(tab), u"the tab is outside of its bar"_s);
        }
        if (tabs.parentWidget() && tabs.geometry().right() > tabs.parentWidget()->width() + slack)
            say(tabs, tabs.tabText(0), u"the tabs are wider than what they stand in"_s);
    }

    void inspectHeader(const QHeaderView &header)
    {
        if (header.orientation() != Qt::Horizontal || !header.model())
            return;
        for (int section = 0; section < header.count(); ++section) {
            if (header.isSectionHidden(section))
                continue;
            const auto *wrapped = qobject_cast<const ui::WrappedHeader *>(&header);
            sayShort(header, header.model()->headerData(section, Qt::Horizontal).toString(), header.sectionSize(section),
                     wrapped ? wrapped->narrowest(section) : header.sectionSizeHint(section));
        }
        // Its words wrap so that all of it is seen at once; one that is typed into may have more columns than that.
        const auto *table = qobject_cast<const ui::Table *>(header.parentWidget());
        const bool isToRead = table && table->wordWrap() && table->editTriggers() == QAbstractItemView::NoEditTriggers;
        if (isToRead && header.length() > table->viewport()->width() + slack)
            say(*table, {}, u"%1 px wide, its columns need %2"_s.arg(table->viewport()->width()).arg(header.length()));
    }

    void inspectBox(const QComboBox &box)
    {
        QStyleOptionComboBox option;
        option.initFrom(&box);
        option.editable = box.isEditable();
        option.subControls = QStyle::SC_All;
        const QRect room =
            box.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &box);
        const int icon = box.itemIcon(box.currentIndex()).isNull() ? 0 : box.iconSize().width() + 4;
        if (!isToldWhole(box, box.currentText()))
            sayShort(box, box.currentText(), room.width(),
                     box.fontMetrics().horizontalAdvance(box.currentText()) + icon);
    }

    /// What was typed scrolls; what is asked for has to be read.
    void inspectLine(const QLineEdit &line)
    {
        if (line.text().isEmpty() && !line.placeholderText().isEmpty() &&
            !isToldWhole(line, line.placeholderText()))
            sayShort(line, line.placeholderText(), line.width() - 8,
                     line.fontMetrics().horizontalAdvance(line.placeholderText()));
        sayShort(line, line.text(), line.height(), line.fontMetrics().height(), u"high"_s);
    }

    void inspectMenu(const QMenuBar &menu)
    {
        for (const QAction *entry : menu.actions()) {
            const QRect place = menu.actionGeometry(const_cast<QAction *>(entry));
            if (entry->isVisible() && (place.isEmpty() || !menu.rect().contains(place)))
                say(menu, entry->text(), u"the menu is not on the bar"_s);
        }
    }

    void inspectList(const QListView &list)
    {
        if (list.horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff || list.wordWrap() || !list.model())
            return;
        for (int row = 0; row < list.model()->rowCount(); ++row) {
            const QModelIndex index = list.model()->index(row, list.modelColumn());
            if (index.data(Qt::ToolTipRole).toString().isEmpty() && !list.isRowHidden(row))
                sayShort(list, index.data().toString(), list.viewport()->width(),
                         list.sizeHintForIndex(index).width());
        }
    }

    void inspectPlace(const QWidget &widget)
    {
        const QWidget *parent = widget.parentWidget();
        if (!parent || widget.size().isEmpty())
            return;
        const auto *area = qobject_cast<const QScrollArea *>(parent->parentWidget());
        const bool scrolls = area && area->viewport() == parent;
        if (!scrolls && isMadeByToolkit(*parent))
            return;
        QRect room = parent->rect().adjusted(-slack, -slack, slack, slack);
        if (scrolls && area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff)
            return;
        if (scrolls)
            room = QRect(room.left(), widget.y(), room.width(), widget.height());
        if (!room.contains(widget.geometry()))
            say(widget, wordsOf(widget),
                u"at %1, outside of %2 of %3"_s.arg(rectText(widget.geometry()), rectText(parent->rect()),
                                                    named(*parent)));
    }

    void inspectNeighbours(const QWidget &widget)
    {
        const QWidget *parent = widget.parentWidget();
        if (!parent || isMadeByToolkit(*parent) || isOrnament(widget))
            return;
        for (const QObject *child : parent->children()) {
            const auto *other = qobject_cast<const QWidget *>(child);
            if (!other || other == &widget)
                break; // each pair once: the other one's turn
            if (!isOnShow(*other) || isOrnament(*other))
                continue;
            const QRect common = other->geometry() & widget.geometry();
            if (common.width() > slack && common.height() > slack)
                say(widget, wordsOf(widget),
                    u"covers %1 of %2 “%3”"_s.arg(rectText(common), named(*other), shown(wordsOf(*other))));
        }
    }

    /// Parts that the toolkit lays out, often over one another.
    static bool isMadeByToolkit(const QWidget &parent)
    {
        return qobject_cast<const QTabWidget *>(&parent) ||
               qobject_cast<const QAbstractScrollArea *>(&parent) ||
               qobject_cast<const QSplitter *>(&parent) || qobject_cast<const QComboBox *>(&parent) ||
               qobject_cast<const QTabBar *>(&parent) || parent.objectName().startsWith(u"qt_"_s);
    }
    static bool isOrnament(const QWidget &widget)
    {
        return qobject_cast<const QFocusFrame *>(&widget) || qobject_cast<const QSizeGrip *>(&widget) ||
               widget.size().isEmpty() || widget.testAttribute(Qt::WA_TransparentForMouseEvents);
    }

    static QString wordsOf(const QWidget &widget)
    {
        for (const char *property : {"text", "title", "currentText"}) {
            if (const QString words = widget.property(property).toString(); !words.isEmpty())
                return words;
        }
        return {};
    }
    static QString rectText(const QRect &rect)
    {
        return u"%1,%2 %3x%4"_s.arg(rect.x()).arg(rect.y()).arg(rect.width()).arg(rect.height());
    }

    const QWidget &m_window;
    QStringList m_found;
};

} // namespace

QStringList cutCells(const QWidget &window, const QString &name, const QList<int> &columns)
{
    const QList<ui::Table *> named = window.findChildren<ui::Table *>(name);
    const auto seen = std::ranges::find_if(named, [](const ui::Table *each) { return each->isVisible(); });
    if (seen == named.end())
        return {u"no table %1 can be seen"_s.arg(name)};
    const ui::Table *table = *seen;
    QStringList found;
    if (table->horizontalScrollBar()->maximum() > 0)
        found << u"%1 is %2 px too wide"_s.arg(name).arg(table->horizontalScrollBar()->maximum());
    for (int row = 0; row < table->model()->rowCount(); ++row) {
        for (int column = 0; column < table->model()->columnCount(); ++column) {
            const QModelIndex index = table->model()->index(row, column);
            const bool isAsked = columns.isEmpty() || columns.contains(column);
            if (isAsked && !table->isColumnHidden(column) && table->isCut(index))
                found << u"%1, row %2: “%3” is cut at %4 px"_s.arg(name).arg(row + 1).arg(shown(index.data().toString()))
                             .arg(table->columnWidth(column));
        }
    }
    return found;
}

QStringList misfits(const QWidget &window, QSize room)
{
    QStringList found = Inspection(window).found();
    if (window.width() > room.width() || window.height() > room.height())
        found.prepend(u"the window is %1x%2, it was given %3x%4"_s.arg(window.width())
                          .arg(window.height())
                          .arg(room.width())
                          .arg(room.height()));
    return found;
}

} // namespace plateau::test
