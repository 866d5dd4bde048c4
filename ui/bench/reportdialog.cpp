// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reportdialog.h"

#include "ui/shared/helpcall.h"
#include "ui/shared/notice.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Caption {
    const char *name;
    const char *text;
};

/// Names are those of the command line; one without a caption here is shown by its name.
constexpr Caption captions[] = {
    {"report-number", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Report number")},
    {"issued", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Issued on")},
    {"customer", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Customer")},
    {"customer-contact", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Customer's contact")},
    {"order", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Order")},
    {"location", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Tested at")},
    {"tested", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Tested on")},
    {"authorised-by", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Authorised by")},
    {"sampling", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Sampling: plan, method, by whom")},
    {"conditions", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Conditions of the tests")},
    {"deviations", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Deviations from the method")},
    {"external", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Results from external providers")},
    {"opinions", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Opinions and interpretations")},
    {"additional", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Additional information requested")},
    {"item", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "What the samples are")},
    {"condition", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Their condition")},
    {"received", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Received on")},
    {"sampled", QT_TRANSLATE_NOOP("plateau::ui::ReportDialog", "Sampled on")},
};

QString captionOf(const QString &name)
{
    for (const Caption &caption : captions) {
        if (name == QLatin1StringView(caption.name))
            return QCoreApplication::translate("plateau::ui::ReportDialog", caption.text);
    }
    return name;
}

} // namespace

ReportDialog::ReportDialog(const Theme &theme, const std::map<QString, QString> &known, QWidget *parent)
    : QDialog(parent)
    , m_theme(theme)
    , m_notice(new Notice(theme, this))
{
    setWindowTitle(tr("What the report says besides"));
    setHelp(*this, {u"reports"_s, {}});
    auto *words =
        plainLabel(tr("Where something stands in grey, the report says that unless you type over it. Whatever else is left "
                      "empty becomes a line to write on."), this);
    words->setWordWrap(true);
    auto *inside = new QWidget(this);
    inside->setLayout(buildForm(known));
    auto *scroll = new QScrollArea(this);
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto *go = button(theme, tr("&Save as PDF…"), u"reportGo"_s, this);
    auto *leave = button(theme, tr("Cance&l"), u"reportLeave"_s, this);
    go->setDefault(true);
    auto *buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(go);
    buttons->addWidget(leave);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(words);
    layout->addWidget(scroll, 1);
    layout->addWidget(m_notice);
    layout->addLayout(buttons);
    connect(go, &QPushButton::clicked, this, &ReportDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    resizeOnScreen(*this, {widthWanted(*scroll), m_theme.target() * 20});
    m_rows.front().entry->setFocus();
}

/// What stands in grey goes into the report: it is read whole, as far as that makes no window of it.
int ReportDialog::widthWanted(const QScrollArea &scroll) const
{
    int captions = 0;
    int grey = 0;
    for (const Row &row : m_rows) {
        captions = std::max(captions, fontMetrics().horizontalAdvance(captionOf(row.name)));
        grey = std::max(grey, fontMetrics().horizontalAdvance(row.entry->placeholderText()));
    }
    const int around = scroll.verticalScrollBar()->sizeHint().width() + 16 * m_theme.gap(); // margins and frames
    const int character = fontMetrics().averageCharWidth();
    return std::clamp(captions + grey + around, 90 * character, 130 * character);
}

QFormLayout *ReportDialog::buildForm(const std::map<QString, QString> &known)
{
    auto *form = new QFormLayout;
    // A long caption stands above its field rather than be cut.
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    for (const QString &name : ReportFields::names()) {
        auto *entry = new QLineEdit(this);
        if (const auto unless = known.find(name); unless != known.end())
            entry->setPlaceholderText(unless->second);
        addFormRow(form, captionOf(name), entry, u"report-"_s + name);
        connect(entry, &QLineEdit::textChanged, this, [this] { m_notice->clear(); });
        m_rows.push_back({name, entry});
    }
    return form;
}

QString ReportDialog::fault() const
{
    ReportFields given;
    for (const Row &row : m_rows) {
        const QString value = row.entry->text().trimmed();
        if (const QString wrong = value.isEmpty() ? QString() : given.add(row.name + u'=' + value);
            !wrong.isEmpty())
            return tr("%1: %2.").arg(captionOf(row.name), wrong);
    }
    return {};
}

ReportFields ReportDialog::fields() const
{
    ReportFields given;
    for (const Row &row : m_rows) {
        if (const QString value = row.entry->text().trimmed(); !value.isEmpty())
            given.add(row.name + u'=' + value);
    }
    return given;
}

void ReportDialog::accept()
{
    if (const QString wrong = fault(); !wrong.isEmpty())
        m_notice->say(State::Attention, wrong);
    else
        QDialog::accept();
}

} // namespace plateau::ui
