// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/registerview.h"

#include "core/assay/label.h"
#include "ui/books/cellsmodel.h"
#include "ui/books/cellstable.h"
#include "ui/books/shelfpaste.h"
#include "ui/shared/clock.h"
#include "ui/shared/matrixtext.h"
#include "ui/shared/notice.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/widgets.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

std::vector<CellChoice> matrixChoices()
{
    std::vector<CellChoice> choices;
    for (const assay::Matrix matrix : allMatrices())
        choices.push_back({matrixValue(matrix), matrixText(matrix)});
    return choices;
}

std::vector<CellChoice> formChoices()
{
    return {{formValue(run::Form::Liquid), formText(run::Form::Liquid)},
            {formValue(run::Form::Solid), formText(run::Form::Solid)}};
}

/// A time that was understood stands there in full, so that its day can be seen; a day alone stays one.
void writeOutReceived(std::vector<QString> &cells, const QDateTime &now)
{
    const auto moment = exchange::parseKeyedDayOrMoment(cells[shelf::Received], now);
    if (const QDateTime *understood = std::get_if<QDateTime>(&moment))
        cells[shelf::Received] = exchange::dayOrMomentText(*understood);
}

/// Words that mean one of the choices become that choice, so that the table shows it as such.
std::vector<QString> asChoices(std::vector<QString> cells)
{
    if (const auto matrix = matrixOf(cells[shelf::Matrix]))
        cells[shelf::Matrix] = matrixValue(*matrix);
    else if (cells[shelf::Matrix].isEmpty())
        cells[shelf::Matrix] = matrixValue(assay::Matrix::Clear);
    if (const auto form = formOf(cells[shelf::Form]))
        cells[shelf::Form] = formValue(*form);
    else if (cells[shelf::Form].isEmpty())
        cells[shelf::Form] = formValue(
            matrixOf(cells[shelf::Matrix]) == assay::Matrix::Solid ? run::Form::Solid : run::Form::Liquid);
    return cells;
}

} // namespace

RegisterView::RegisterView(const Theme &theme, const Clock &clock, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_model(newModel())
    , m_table(new CellsTable(theme, m_model, tr("Samples to register"), u"shelfRows"_s, this))
    , m_heading(plainLabel({}, this))
    , m_how(plainLabel({}, this))
    , m_notice(new Notice(theme, this))
    , m_summary(plainLabel({}, this))
    , m_problems(new SentenceList(theme, tr("Problems"), u"shelfProblems"_s, this))
{
    m_heading->setFont(theme.large());
    m_heading->setObjectName(u"shelfHeading"_s);
    m_how->setWordWrap(true);
    m_summary->setWordWrap(true);
    m_summary->setObjectName(u"shelfSummary"_s);
    m_table->setFlexibleColumn(shelf::Expected);
    auto *keys = plainLabel(CellsTable::keysHint(), this);
    keys->setWordWrap(true);
    QWidget *footer = buildFooter(); // first, so that what leaves comes last
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(buildHeader());
    layout->addWidget(m_how);
    layout->addWidget(m_notice);
    layout->addWidget(m_table, 3);
    layout->addWidget(keys);
    layout->addWidget(m_summary);
    layout->addWidget(m_problems, 1);
    layout->addWidget(footer);
    connect(m_model, &CellsModel::edited, this, &RegisterView::onEdited);
    connect(m_problems, &QListView::activated, this,
            [this](const QModelIndex &index) { goToProblem(index.row()); });
    const auto onKey = [this](QWidget *where, QKeySequence::StandardKey key, auto act) {
        auto *shortcut = new QShortcut(QKeySequence(key), where);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    onKey(this, QKeySequence::Save, [this] { store(); });
    onKey(m_table, QKeySequence::Paste, [this] { pasteClipboard(); });
}

CellsModel *RegisterView::newModel()
{
    using Kind = CellColumn::Kind;
    const auto matrices = [choices = matrixChoices()](const CellRow &) { return choices; };
    const auto forms = [choices = formChoices()](const CellRow &) { return choices; };
    auto *model = new CellsModel(
        m_theme,
        {{shelfColumnName(shelf::Id), Kind::Text, {}, {}, {}, 26},
         {shelfColumnName(shelf::Product), Kind::Text, {}, {}, {}, 20},
         {shelfColumnName(shelf::Matrix), Kind::Choice, matrices, {}, {}, 12},
         {shelfColumnName(shelf::Form), Kind::Choice, forms, {}, {}, 9},
         {shelfColumnName(shelf::Received), Kind::Text, {}, {}, {}, 18},
         {shelfColumnName(shelf::From), Kind::Text, {}, {}, {}, 20},
         {shelfColumnName(shelf::Expected), Kind::Text, {}, {}, tr("Expected, in g/L; for a solid g/100 g")}},
        true, this);
    model->setTemplate([model] {
        CellRow row = model->blankRow();
        row.cells = asChoices(std::move(row.cells));
        return row;
    });
    model->setConsequence([this](std::vector<CellRow> &rows, int row, int column) {
        std::vector<QString> &cells = rows[static_cast<std::size_t>(row)].cells;
        // A solid matrix is a solid, whatever stood there.
        if (column == shelf::Matrix && matrixOf(cells[shelf::Matrix]) == assay::Matrix::Solid)
            cells[shelf::Form] = formValue(run::Form::Solid);
        if (column == shelf::Received)
            writeOutReceived(cells, m_clock.now());
    });
    return model;
}

QWidget *RegisterView::buildHeader()
{
    auto *header = new QWidget(this);
    m_paste = button(m_theme, tr("Pas&te from the clipboard"), u"pasteSamples"_s, header);
    auto *go = button(m_theme, tr("Back to the list  Esc"), u"leaveSamples"_s, header);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addWidget(m_heading, 1);
    layout->addWidget(m_paste);
    layout->addWidget(go);
    connect(m_paste, &QPushButton::clicked, this, &RegisterView::pasteClipboard);
    connect(go, &QPushButton::clicked, this, &RegisterView::leave);
    return header;
}

QWidget *RegisterView::buildFooter()
{
    auto *footer = new QWidget(this);
    m_store = button(m_theme, {}, u"storeSamples"_s, footer);
    auto *layout = new QHBoxLayout(footer);
    layout->setContentsMargins({});
    layout->addStretch(1);
    layout->addWidget(m_store);
    connect(m_store, &QPushButton::clicked, this, &RegisterView::store);
    return footer;
}

void RegisterView::setSurroundings(const std::vector<notebook::WaitingSample> &waiting,
                                   MeasurandNames measurands)
{
    m_measurands = std::move(measurands);
    m_onShelf.clear();
    m_repeats.clear();
    for (const notebook::WaitingSample &each : waiting)
        (each.shelf ? m_onShelf : m_repeats).insert(foldedName(each.sample.id));
    onEdited();
}

void RegisterView::startNew(const std::vector<planning::ShelfSample> &samples)
{
    m_changing.reset();
    m_ownId.clear();
    m_heading->setText(tr("Register samples"));
    m_how->setText(tr("Key a line for each sample, or copy one or more columns from a spreadsheet and paste "
                      "them here (Ctrl+V). The first line may hold column names, measurands included; "
                      "otherwise the columns are, in this order: %1.")
                       .arg(pastedOrder()));
    m_store->setText(tr("Regi&ster them"));
    m_paste->setVisible(true);
    m_table->setRowsFixed(false);
    std::vector<CellRow> rows;
    for (const planning::ShelfSample &sample : samples)
        rows.push_back({m_model->blankRow().key, shelfCells(sample, m_measurands)});
    start(std::move(rows));
}

void RegisterView::startChange(notebook::ShelfId id, const planning::ShelfSample &sample)
{
    m_changing = id;
    m_ownId = foldedName(sample.id);
    m_heading->setText(tr("Change a sample that waits"));
    m_how->setText(tr("What was stated before stays in the notebook's history."));
    m_store->setText(tr("&Store the change"));
    m_paste->setVisible(false);
    m_table->setRowsFixed(true);
    start({{m_model->blankRow().key, shelfCells(sample, m_measurands)}});
}

void RegisterView::start(std::vector<CellRow> rows)
{
    m_notice->clear();
    m_model->setRows(std::move(rows), !m_changing);
    m_kept = m_model->rows();
    onEdited();
    m_table->setCurrentIndex(m_model->index(0, shelf::Id));
}

void RegisterView::takeFocus()
{
    m_table->setFocus();
}

bool RegisterView::hasUnsavedChanges() const
{
    return m_model->rows() != m_kept;
}

void RegisterView::markStored()
{
    m_kept = m_model->rows();
}

void RegisterView::refuse(const QString &sentence)
{
    m_notice->say(State::Bad, sentence);
}

void RegisterView::onEdited()
{
    m_askedToLeave = false;
    m_reading = readShelf(m_model->rows(), m_measurands, m_clock.now());
    checkAgainstShelf();
    showProblems();
}

void RegisterView::checkAgainstShelf()
{
    for (std::size_t i = 0; i < m_reading.samples.size(); ++i) {
        const QString id = foldedName(m_reading.samples[i].id);
        if (id != m_ownId && m_onShelf.contains(id))
            m_reading.problems.push_back(
                {static_cast<int>(i), shelf::Id,
                 tr("%1 is among the samples that wait already; change it there, or give this one another id.")
                     .arg(assay::quoted(m_reading.samples[i].id))});
    }
    std::ranges::stable_sort(m_reading.problems, {}, &ShelfProblem::row);
}

void RegisterView::showProblems()
{
    std::vector<Sentence> sentences;
    for (const ShelfProblem &problem : m_reading.problems)
        sentences.push_back(
            {State::Bad, tr("Line %1, %2: %3")
                             .arg(problem.row + 1)
                             .arg(shelfColumnName(problem.column), problem.message)});
    for (std::size_t i = 0; i < m_reading.samples.size(); ++i) {
        if (m_repeats.contains(foldedName(m_reading.samples[i].id)))
            sentences.push_back(
                {State::Info, tr("Line %1: a repeat of %2 waits already; it takes over what is stated here.")
                                  .arg(i + 1)
                                  .arg(assay::quoted(m_reading.samples[i].id))});
    }
    const auto samples = static_cast<int>(m_reading.samples.size());
    const auto faults = static_cast<int>(m_reading.problems.size());
    if (samples == 0)
        m_summary->setText(tr("No sample yet."));
    else if (faults == 0)
        m_summary->setText(tr("Samples: %1. Nothing stands in the way.").arg(samples));
    else
        m_summary->setText(
            tr("Samples: %1. Still to be put right (%2), Enter goes there:").arg(samples).arg(faults));
    m_problems->setSentences(std::move(sentences));
    m_problems->setVisible(m_problems->model()->rowCount() > 0);
}

void RegisterView::goToProblem(int row)
{
    if (row < 0 || row >= static_cast<int>(m_reading.problems.size()))
        return;
    const ShelfProblem &problem = m_reading.problems[static_cast<std::size_t>(row)];
    m_table->setFocus();
    m_table->goTo(problem.row, problem.column);
}

void RegisterView::pasteClipboard()
{
    paste(QApplication::clipboard()->text());
}

void RegisterView::paste(const QString &text)
{
    if (m_changing)
        return;
    const PastedSamples pasted = readPasted(text, m_measurands);
    if (!pasted.rows.empty()) {
        std::vector<CellRow> rows = m_model->rows();
        for (const std::vector<QString> &cells : pasted.rows) {
            rows.push_back({m_model->blankRow().key, asChoices(cells)});
            writeOutReceived(rows.back().cells, m_clock.now());
        }
        const auto first = static_cast<int>(m_model->rows().size());
        m_model->replaceRows(std::move(rows));
        m_table->setFocus();
        m_table->goTo(first, shelf::Id);
    }
    const bool whole = !pasted.rows.empty() && pasted.leftOut.isEmpty();
    m_notice->say(whole ? State::Info : State::Attention,
                  pasted.leftOut.isEmpty() ? pasted.understood
                                           : u"%1 %2"_s.arg(pasted.understood, pasted.leftOut));
}

void RegisterView::store()
{
    if (m_table->isAncestorOf(QApplication::focusWidget()))
        m_table->setFocus(); // the editor of a cell keeps its text to itself until it is left
    if (m_reading.samples.empty()) {
        m_notice->say(State::Attention, tr("There is no sample to store: key or paste one first."));
        m_table->setFocus();
        return;
    }
    if (!m_reading.problems.empty()) {
        m_notice->say(State::Attention, tr("Nothing is stored yet: first put right what the list names."));
        m_problems->setFocus();
        m_problems->setCurrentIndex(m_problems->model()->index(0, 0));
        return;
    }
    m_notice->clear();
    const std::vector<planning::ShelfSample> samples = m_reading.samples; // is read anew once they are stored
    Q_EMIT stored(samples);
}

void RegisterView::leave()
{
    if (m_table->isAncestorOf(QApplication::focusWidget()))
        m_table->setFocus();
    if (hasUnsavedChanges() && !m_askedToLeave) {
        m_askedToLeave = true;
        m_notice->say(State::Attention,
                      tr("There are samples that are not stored. Press it once more to drop them, or register them first."));
        return;
    }
    m_kept = m_model->rows();
    m_notice->clear();
    Q_EMIT closed();
}

void RegisterView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
