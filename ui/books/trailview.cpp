// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/trailview.h"

#include "core/assay/localday.h"
#include "ui/books/searchpause.h"
#include "ui/books/trailmodel.h"
#include "ui/books/trailwords.h"
#include "ui/shared/dayexample.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// What each of them changed is read for the words: a moment's work, and then it is said that there are older ones.
constexpr int mostLooked = 2000;

QString valueLines(const std::vector<notebook::AuditValue> &values)
{
    QStringList lines;
    for (const notebook::AuditValue &value : values)
        lines << valueText(value);
    return lines.join(u'\n');
}

QString detailText(const TrailRow &row)
{
    const notebook::AuditEntry &entry = row.item.entry;
    QStringList lines{
        TrailView::tr("%1, %2: %3").arg(momentText(entry.at), entry.person, actText(entry.action))};
    if (const QString details = detailsText(entry); !details.isEmpty())
        lines << details;
    for (const notebook::AuditChange &change : row.changes) {
        lines << QString() << change.subject;
        if (!change.before.empty())
            lines << TrailView::tr("before: %1").arg(valueLines(change.before));
        if (!change.after.empty())
            lines << TrailView::tr("after: %1").arg(valueLines(change.after));
        if (!change.reason.isEmpty())
            lines << TrailView::tr("reason: %1").arg(change.reason);
    }
    lines << QString()
          << TrailView::tr("Entry %1, account %2 on %3, program %4")
                 .arg(entry.number)
                 .arg(entry.account, entry.host, entry.programVersion)
          << entry.hash;
    return lines.join(u'\n');
}

} // namespace

TrailView::TrailView(const Theme &theme, const notebook::Notebook &notebook, QWidget *parent)
    : QWidget(parent)
    , m_notebook(notebook)
    , m_notice(new Notice(theme, this))
    , m_model(new TrailModel(this))
    , m_empty(plainLabel({}, this))
    , m_table(new Table(theme, m_model, tr("Acts, the newest first"), u"trail"_s, this))
    , m_older(button(theme, tr("Old&er ones too"), u"trailOlder"_s, this))
    , m_toRun(button(theme, tr("To its ra&ck or record"), u"trailToRun"_s, this))
    , m_details(new QPlainTextEdit(this))
{
    m_pause.setSingleShot(true);
    m_pause.setInterval(searchPause_ms);
    connect(&m_pause, &QTimer::timeout, this, &TrailView::look);
    m_empty->setObjectName(u"trailEmpty"_s);
    m_empty->setWordWrap(true);
    m_empty->hide();
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setFlexibleColumn(TrailModel::Of); // its lot or run tells it from the acts beside it
    m_table->setFlexibleMinimum(33);
    m_table->setWholeColumn(TrailModel::What);
    m_table->setLimit(22); // eight columns of words
    m_table->setWrap(Table::Wrap::TwoLines);
    m_details->setObjectName(u"trailDetails"_s);
    m_details->setAccessibleName(tr("The chosen act in full"));
    m_details->setReadOnly(true);
    m_details->setTabChangesFocus(true);
    m_toRun->setEnabled(false);
    auto *below = new QHBoxLayout;
    below->addWidget(m_older);
    below->addWidget(m_toRun);
    below->addStretch(1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(buildFilter(theme));
    layout->addWidget(m_notice);
    layout->addWidget(m_empty);
    layout->addWidget(m_table, 3);
    layout->addLayout(below);
    layout->addWidget(m_details, 1);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) { showDetails(current.row()); });
    connect(m_older, &QPushButton::clicked, this, &TrailView::addOlder);
    connect(m_toRun, &QPushButton::clicked, this, [this] {
        const int row = m_table->currentIndex().row();
        if (row >= 0 && m_model->row(row).item.entry.run)
            Q_EMIT runWanted(*m_model->row(row).item.entry.run);
    });
}

QWidget *TrailView::buildFilter(const Theme &theme)
{
    auto *row = new QWidget(this);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    const auto add = [&](QWidget *field, const QString &caption, const QString &name, int stretch) {
        auto *label = plainLabel(caption, row);
        label->setBuddy(field);
        field->setObjectName(name);
        field->setMinimumHeight(theme.target());
        layout->addWidget(label);
        layout->addWidget(field, stretch);
    };
    m_words = new QLineEdit(row);
    m_person = new QComboBox(row);
    m_act = new QComboBox(row);
    m_from = new QLineEdit(row);
    m_to = new QLineEdit(row);
    m_run = new QLineEdit(row);
    for (QLineEdit *day : {m_from, m_to})
        showDayExample(*day);
    for (QComboBox *box : {m_person, m_act}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(8); // what is looked for gets the room
        connect(box, &QComboBox::currentIndexChanged, this, &TrailView::refresh);
    }
    const int letter = m_words->fontMetrics().averageCharWidth();
    m_words->setMinimumWidth(12 * letter);
    m_run->setMinimumWidth(9 * letter); // a number of five figures, and its edges
    add(m_words, tr("Fin&d"), u"trailWords"_s, 3);
    add(m_person, tr("&Who"), u"trailPerson"_s, 2);
    add(m_act, tr("Wh&at"), u"trailAct"_s, 2);
    add(m_from, tr("Fro&m"), u"trailFrom"_s, 1);
    add(m_to, tr("&To"), u"trailTo"_s, 1);
    add(m_run, tr("&Run number"), u"trailRun"_s, 1);
    for (QLineEdit *entry : {m_words, m_from, m_to, m_run})
        connect(entry, &QLineEdit::editingFinished, this, &TrailView::refresh);
    connect(m_words, &QLineEdit::textChanged, &m_pause, qOverload<>(&QTimer::start));
    return row;
}

void TrailView::takeFocus()
{
    m_words->setFocus();
}

void TrailView::showRun(notebook::RunId run)
{
    m_run->setText(QString::number(run.value));
    refresh();
}

void TrailView::refresh()
{
    guarded(*m_notice, [this] { fillChoices(); });
    look();
}

void TrailView::look()
{
    m_pause.stop();
    guarded(*m_notice, [this] {
        if (const auto wanted = filter())
            load(*wanted, false);
        else
            showNothing();
    });
}

void TrailView::addOlder()
{
    guarded(*m_notice, [this] {
        auto wanted = filter();
        if (!wanted || !m_lookedTo)
            return;
        wanted->before = m_lookedTo;
        load(*wanted, true);
    });
}

void TrailView::load(const notebook::AuditFilter &wanted, bool after)
{
    std::vector<TrailRow> rows = after ? m_model->rows() : std::vector<TrailRow>();
    const notebook::AuditPage page = m_notebook.keeping().auditPage(wanted);
    for (const notebook::AuditItem &item : page.items)
        rows.push_back({item, m_notebook.keeping().changes(item.entry.number)});
    m_lookedTo = page.lookedTo;
    m_older->setEnabled(m_lookedTo.has_value());
    m_model->show(std::move(rows));
    sayWhatWasLookedAt(page);
    m_table->fit();
    if (!m_table->currentIndex().isValid() && m_model->rowCount() > 0)
        m_table->selectRow(0);
    showDetails(m_table->currentIndex().row());
}

void TrailView::showNothing()
{
    m_lookedTo.reset();
    m_older->setEnabled(false);
    m_model->show({});
    m_empty->hide();
    showDetails(-1);
}

/// That nothing matches may only be said where everything was looked at.
void TrailView::sayWhatWasLookedAt(const notebook::AuditPage &page)
{
    if (page.isCutShort)
        m_empty->setText(tr("Looked through what was done since %1; \"Older ones too\" goes on from there.")
                             .arg(momentText(page.lookedBackTo)));
    else
        m_empty->setText(tr("Nothing on record matches the search: empty a field above."));
    m_empty->setVisible(page.isCutShort || m_model->rowCount() == 0);
}

void TrailView::fillChoices()
{
    const auto fill = [](QComboBox &box, const QString &all, const QStringList &values, const auto &text) {
        const QSignalBlocker quiet(&box);
        const QVariant chosen = box.currentData();
        box.clear();
        box.addItem(all, QString());
        for (const QString &value : values)
            box.addItem(text(value), value);
        box.setCurrentIndex(std::max(0, box.findData(chosen)));
    };
    fill(*m_person, tr("everybody"), m_notebook.keeping().persons(),
         [](const QString &name) { return name; });
    fill(*m_act, tr("everything"), m_notebook.keeping().actions(), actText);
}

bool TrailView::readDay(const QLineEdit &entry, assay::MonthAlone month, std::optional<QDate> &day)
{
    const QString text = entry.text().trimmed();
    if (text.isEmpty())
        return true;
    const std::optional<QDate> read = assay::readDay(text, month);
    if (!read) {
        m_notice->say(
            State::Attention,
            tr("\"%1\" is not a day; write it as %2, or leave the field empty.")
                .arg(text, assay::shownDay({2026, 12, 31})));
        return false;
    }
    day = read;
    return true;
}

std::optional<notebook::AuditFilter> TrailView::filter()
{
    m_notice->clear();
    notebook::AuditFilter wanted;
    wanted.text = m_words->text();
    wanted.mostLooked = mostLooked;
    wanted.shown = [](const notebook::AuditEntry &entry) {
        return actText(entry.action) + u'\n' + detailsText(entry);
    };
    wanted.person = m_person->currentData().toString();
    if (const QString act = m_act->currentData().toString(); !act.isEmpty())
        wanted.actions = {act};
    if (!readDay(*m_from, assay::MonthAlone::FirstDay, wanted.from) ||
        !readDay(*m_to, assay::MonthAlone::LastDay, wanted.to))
        return std::nullopt;
    if (const QString text = m_run->text().trimmed(); !text.isEmpty()) {
        bool isNumber = false;
        wanted.run = notebook::RunId{text.toLongLong(&isNumber)};
        if (!isNumber) {
            m_notice->say(State::Attention,
                         tr("\"%1\" is not a run number; the notebook counts runs from 1.").arg(text));
            return std::nullopt;
        }
    }
    return wanted;
}

void TrailView::showDetails(int row)
{
    const bool known = row >= 0 && row < m_model->rowCount();
    m_details->setPlainText(known ? detailText(m_model->row(row)) : QString());
    m_toRun->setEnabled(known && m_model->row(row).item.entry.run.has_value());
}

} // namespace plateau::ui
