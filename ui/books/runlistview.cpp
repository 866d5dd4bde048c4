// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/runlistview.h"

#include "core/run/runcode.h"
#include "ui/bench/benchsession.h"
#include "ui/books/runfilterfields.h"
#include "ui/books/runsmodel.h"
#include "ui/books/searchpause.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr int countedRuns = 10'000;
constexpr int widestColumn = 24;

} // namespace

RunListView::RunListView(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_runs(new RunsModel(
          theme,
          [this](const auto &filter, auto order, int size, const auto &after) {
              return page(filter, order, size, after);
          },
          this))
    , m_words(new QLineEdit(this))
    , m_more(button(theme, tr("&More filters"), u"findMore"_s, this))
    , m_order(new QComboBox(this))
    , m_fields(new RunFilterFields(theme, this))
    , m_saved(new QComboBox(this))
    , m_keep(button(theme, tr("&Save filter"), u"keepFilter"_s, this))
    , m_forget(button(theme, tr("Delete filter"), u"forgetFilter"_s, this))
    , m_compare(button(theme, tr("&Compare the two"), u"compareRuns"_s, this))
    , m_notice(new Notice(theme, this))
    , m_count(plainLabel({}, this))
    , m_empty(plainLabel({}, this))
    , m_table(new Table(theme, m_runs, tr("Runs"), u"runs"_s, this))
    , m_filters(savedFilters())
{
    m_words->setObjectName(u"notebookFilter"_s);
    m_words->setMinimumHeight(theme.target());
    m_words->setClearButtonEnabled(true);
    m_words->installEventFilter(this);
    m_more->setCheckable(true);
    m_order->setObjectName(u"runOrder"_s);
    m_order->setAccessibleName(tr("Order of the runs"));
    using Order = notebook::RunOrder;
    for (const auto &[text, order] : {std::pair{tr("newest in the notebook first"), Order::NewestFirst},
                                      {tr("oldest in the notebook first"), Order::OldestFirst},
                                      {tr("latest day first"), Order::ByDay},
                                      {tr("latest decision first"), Order::ByDecision},
                                      {tr("by title"), Order::ByTitle},
                                      {tr("by method"), Order::ByMethod}})
        m_order->addItem(text, static_cast<int>(order));
    m_saved->setObjectName(u"savedFilters"_s);
    m_saved->setAccessibleName(tr("Saved filters"));
    m_saved->setEditable(true);
    m_saved->setInsertPolicy(QComboBox::NoInsert);
    m_saved->lineEdit()->setPlaceholderText(tr("name of a filter"));
    m_saved->lineEdit()->setAccessibleName(tr("Name of a saved filter"));
    m_saved->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_saved->setMinimumContentsLength(widestColumn);
    m_order->setMinimumHeight(theme.target());
    m_saved->setMinimumHeight(theme.target() + theme.gap()); // its text has to be as large as a target
    m_count->setObjectName(u"runCount"_s);
    m_empty->setObjectName(u"notebookEmpty"_s);
    m_empty->setFont(theme.large());
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_table->setFlexibleColumn(RunsModel::Samples); // of many, the first ones
    m_table->setFlexibleMinimum(9);
    m_table->setWholeColumn(RunsModel::Title);
    m_table->setWholeColumn(RunsModel::Method);
    m_table->setLimit(widestColumn);
    m_table->setWrap(Table::Wrap::TwoLines);
    m_pause.setSingleShot(true);
    m_pause.setInterval(searchPause_ms);
    layOut();
    connectAll();
    showSaved();
    m_fields->hide();
    say();
}

void RunListView::layOut()
{
    auto *heading = plainLabel(tr("Notebook"), this);
    heading->setFont(m_theme.large());
    auto *caption = new QLabel(tr("Fin&d by title, sample, person, note … or printed code"), this);
    caption->setBuddy(m_words);
    auto *head = new QHBoxLayout;
    head->addWidget(heading, 1);
    head->addWidget(m_compare);
    auto *search = new QHBoxLayout;
    search->addWidget(caption);
    search->addWidget(m_words, 1);
    search->addWidget(m_more);
    auto *second = new QHBoxLayout;
    const auto named = [this, second](const QString &text, QWidget *field) {
        auto *label = new QLabel(text, this);
        label->setBuddy(field);
        second->addWidget(label);
        second->addWidget(field);
    };
    second->addWidget(m_count, 1);
    named(tr("Saved filter"), m_saved);
    second->addWidget(m_keep);
    second->addWidget(m_forget);
    named(tr("Order"), m_order);
    auto *layout = new QVBoxLayout(this);
    setGaps(m_theme, layout);
    layout->addLayout(head);
    layout->addLayout(search);
    layout->addWidget(m_fields);
    layout->addLayout(second);
    layout->addWidget(m_notice);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_table, 1);
    QWidget *before = m_words;
    for (QWidget *next : std::initializer_list<QWidget *>{m_more, m_fields, m_saved, m_keep, m_forget,
                                                          m_order, m_table, m_compare}) {
        setTabOrder(before, next);
        before = next;
    }
}

void RunListView::connectAll()
{
    connect(m_words, &QLineEdit::textChanged, &m_pause, qOverload<>(&QTimer::start));
    connect(m_fields, &RunFilterFields::changed, &m_pause, qOverload<>(&QTimer::start));
    connect(m_order, &QComboBox::currentIndexChanged, this, &RunListView::look);
    connect(&m_pause, &QTimer::timeout, this, &RunListView::look);
    connect(m_words, &QLineEdit::returnPressed, this, &RunListView::toList);
    connect(m_more, &QPushButton::toggled, this, [this](bool more) {
        m_fields->setVisible(more);
        look();
    });
    connect(m_saved, &QComboBox::activated, this, [this] {
        const auto kept = m_filters.find(m_saved->currentText());
        if (kept != m_filters.end())
            find(kept->second);
    });
    connect(m_saved, &QComboBox::editTextChanged, this, &RunListView::say);
    connect(m_keep, &QPushButton::clicked, this, &RunListView::keepFilter);
    connect(m_forget, &QPushButton::clicked, this, &RunListView::forgetFilter);
    connect(m_compare, &QPushButton::clicked, this, [this] {
        const QModelIndexList chosen = m_table->selectionModel()->selectedRows();
        if (chosen.size() == 2)
            Q_EMIT comparisonWanted(m_runs->run(chosen[0].row()).summary.id,
                                    m_runs->run(chosen[1].row()).summary.id);
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &RunListView::offerComparison);
    connect(m_table, &Table::activated, this,
            [this](const QModelIndex &index) { Q_EMIT opened(m_runs->run(index.row()).summary.id); });
}

notebook::RunPage RunListView::page(const notebook::RunFilter &filter, notebook::RunOrder order, int size,
                                    const std::optional<notebook::PageEnd> &after)
{
    notebook::RunPage page;
    guarded(*m_notice, [&] {
        // The code of a printed sheet, scanned, pasted or typed whole, finds what it stands for.
        const auto code = run::runCodeIn(filter.text);
        const std::vector<notebook::RunId> meant =
            code ? m_session.findRuns(*code) : std::vector<notebook::RunId>{};
        if (meant.empty())
            page = m_session.search().page(filter, order, size, after);
        else
            page.runs = m_session.search().of(meant);
    });
    return page;
}

notebook::RunFilter RunListView::asked() const
{
    notebook::RunFilter filter = m_more->isChecked() ? m_fields->filter() : notebook::RunFilter{};
    filter.text = m_words->text();
    return filter;
}

notebook::RunOrder RunListView::order() const
{
    return static_cast<notebook::RunOrder>(m_order->currentData().toInt());
}

void RunListView::look()
{
    m_pause.stop();
    m_notice->clear();
    if (m_more->isChecked() && !m_fields->fault().isEmpty())
        m_notice->say(State::Attention, m_fields->fault());
    m_runs->find(asked(), order());
    m_table->fit();
    say();
}

void RunListView::refresh()
{
    m_pause.stop();
    const bool read = guarded(*m_notice, [this] {
        const notebook::RunSearch &search = m_session.search();
        m_fields->setChoices({search.methods(), search.persons(), search.products(), search.measurands()});
    });
    if (read)
        m_notice->clear();
    if (m_runs->filter() == asked())
        m_runs->refresh();
    else
        m_runs->find(asked(), order());
    m_table->fit();
    say();
}

void RunListView::say()
{
    const notebook::RunFilter filter = asked();
    notebook::RunCount all;
    notebook::RunCount found;
    guarded(*m_notice, [&] {
        all = m_session.search().count({});
        found = filter.isEmpty() ? all : m_session.search().count(filter, countedRuns);
    });
    const bool nothing = m_runs->rowCount() == 0;
    m_hasRuns = all.runs > 0;
    m_table->setVisible(!nothing);
    m_empty->setVisible(nothing);
    m_empty->setText(m_hasRuns
                         ? tr("No run in the notebook matches all of this. Remove a word or a field to find "
                              "more; Escape clears everything.")
                         : tr("No run is in the notebook yet. Start one with New run, or open a run file."));
    m_words->setEnabled(m_hasRuns);
    m_more->setEnabled(m_hasRuns);
    m_order->setEnabled(m_hasRuns);
    if (!m_hasRuns)
        m_count->clear();
    else if (filter.isEmpty())
        m_count->setText(tr("%n run(s)", nullptr, all.runs));
    else if (found.atLeast)
        m_count->setText(tr("more than %1 of %2 runs").arg(found.runs).arg(all.runs));
    else
        m_count->setText(
            tr("%1 of %n run(s)", nullptr, all.runs).arg(std::max(found.runs, m_runs->rowCount())));
    const QString name = m_saved->currentText().trimmed();
    m_keep->setEnabled(!name.isEmpty() && !filter.isEmpty());
    m_forget->setEnabled(m_filters.contains(name));
    m_saved->setEnabled(m_hasRuns);
    offerComparison();
}

void RunListView::clear()
{
    m_words->clear();
    m_fields->setFilter({});
    m_saved->setEditText({});
    look();
    m_words->setFocus();
}

void RunListView::toList()
{
    look();
    if (m_runs->rowCount() == 0)
        return;
    m_table->setFocus();
    m_table->selectRow(0);
}

void RunListView::focusSearch()
{
    if (!m_hasRuns)
        return;
    m_words->setFocus();
    m_words->selectAll();
}

void RunListView::find(const notebook::RunFilter &filter)
{
    m_words->setText(filter.text);
    m_fields->setFilter(filter);
    notebook::RunFilter beside = filter;
    beside.text.clear();
    if (!beside.isEmpty())
        m_more->setChecked(true);
    look();
}

void RunListView::showSaved()
{
    const QSignalBlocker quiet(m_saved);
    const QString typed = m_saved->currentText();
    m_saved->clear();
    for (const auto &[name, filter] : m_filters)
        m_saved->addItem(name);
    m_saved->setEditText(typed);
}

void RunListView::keepFilter()
{
    m_filters[m_saved->currentText().trimmed()] = asked();
    keepFilters(m_filters);
    showSaved();
    say();
}

void RunListView::forgetFilter()
{
    m_filters.erase(m_saved->currentText().trimmed());
    keepFilters(m_filters);
    m_saved->setEditText({});
    showSaved();
    say();
}

void RunListView::offerComparison()
{
    const bool two = m_table->selectionModel()->selectedRows().size() == 2;
    m_compare->setEnabled(two);
    m_compare->setToolTip(two ? QString() : tr("Choose two runs: the second with Control held down."));
}

bool RunListView::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_words && event->type() == QEvent::KeyPress) {
        const auto *key = static_cast<QKeyEvent *>(event);
        if (key->key() == Qt::Key_Down) {
            toList();
            return true;
        }
        if (key->key() == Qt::Key_Escape && !(m_words->text().isEmpty() && asked().isEmpty())) {
            clear();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace plateau::ui
