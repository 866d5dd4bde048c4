// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/checkform.h"

#include "core/assay/localday.h"
#include "core/equipment/outcome.h"
#include "core/evaluation/format.h"
#include "ui/books/cellsmodel.h"
#include "ui/books/cellstable.h"
#include "ui/books/equipmentwords.h"
#include "ui/books/factsmodel.h"
#include "ui/books/findingswords.h"
#include "ui/books/lotwords.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/numberreader.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QShortcut>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString withUnitInBrackets(const QString &name, const QString &unit)
{
    return unit.isEmpty() ? name : u"%1 (%2)"_s.arg(name, unit);
}

} // namespace

CheckForm::CheckForm(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_heading(plainLabel({}, this))
    , m_notice(new Notice(theme, this))
{
    m_heading->setFont(theme.large());
    m_heading->setObjectName(u"checkTitle"_s);
    auto *back = button(theme, tr("Back to the item  Esc"), u"backFromCheck"_s, this);
    auto *head = new QHBoxLayout;
    head->addWidget(m_heading, 1);
    head->addWidget(back);
    auto *body = new QHBoxLayout;
    body->setSpacing(theme.wideGap());
    body->addWidget(buildLeft(), 5);
    body->addWidget(buildRight(), 6);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addLayout(head);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    connect(back, &QPushButton::clicked, this, &CheckForm::closed);
}

QWidget *CheckForm::buildLeft()
{
    auto *host = new QWidget(this);
    auto *form = new QFormLayout;
    m_aspect = new QComboBox(host);
    m_aspect->setMinimumHeight(m_theme.target());
    m_aspect->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    addFormRow(form, tr("&What is checked"), m_aspect, u"checkAspect"_s);
    m_day = new QLineEdit(host);
    m_day->setMinimumHeight(m_theme.target());
    addFormRow(form, tr("&Day"), m_day, u"checkDay"_s);
    m_fieldsHost = new QWidget(host);
    m_fields = new QFormLayout(m_fieldsHost);
    m_fields->setContentsMargins({});
    m_cellsHost = new QWidget(host);
    auto *cells = new QVBoxLayout(m_cellsHost);
    cells->setContentsMargins({});
    auto *end = new QFormLayout;
    m_source = new QLineEdit(host);
    m_source->setMinimumHeight(m_theme.target());
    m_source->setToolTip(tr("A certificate or an instruction: for limits other than those suggested, and for "
                            "what it was checked with."));
    addFormRow(end, tr("Source of li&mits and standards"), m_source, u"checkSource"_s);
    m_note = new QLineEdit(host);
    m_note->setMinimumHeight(m_theme.target());
    addFormRow(end, tr("No&te (may be empty)"), m_note, u"checkNote"_s);
    auto *keep = button(m_theme, tr("&Store the check"), u"storeCheck"_s, host);
    auto *row = new QHBoxLayout;
    row->addWidget(keep);
    row->addStretch(1);
    auto *layout = new QVBoxLayout(host);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    layout->addLayout(form);
    layout->addWidget(m_fieldsHost);
    layout->addWidget(m_cellsHost, 1);
    layout->addLayout(end);
    layout->addLayout(row);
    connect(m_aspect, &QComboBox::currentIndexChanged, this, &CheckForm::takeAspect);
    connect(m_day, &QLineEdit::textChanged, this, &CheckForm::judge);
    connect(m_source, &QLineEdit::textChanged, this, &CheckForm::judge);
    connect(keep, &QPushButton::clicked, this, &CheckForm::store);
    return host;
}

QWidget *CheckForm::buildRight()
{
    auto *host = new QWidget(this);
    m_how = new SentenceList(m_theme, tr("How it is done, and cautions"), u"checkHow"_s, host);
    m_findings = new FactsModel(this, findingTexts());
    m_findings->setMarks(m_theme, findingVerdict, findingMarks());
    m_findingsTable = new Table(m_theme, m_findings, tr("What it gives"), u"checkFindings"_s, host);
    m_findingsTable->setWrap(Table::Wrap::AsNeeded);
    m_findingsTable->setFlexibleColumn(0);
    m_verdict = new SentenceList(m_theme, tr("Verdict"), u"checkVerdict"_s, host);
    auto *comes = plainLabel(tr("What it gives"), host);
    comes->setFont(m_theme.bold());
    auto *layout = new QVBoxLayout(host);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    layout->addWidget(m_how, 2);
    layout->addWidget(comes);
    layout->addWidget(m_findingsTable, 3);
    layout->addWidget(m_verdict, 1);
    return host;
}

equipment::Aspect CheckForm::aspect() const
{
    return static_cast<equipment::Aspect>(m_aspect->currentData().toInt());
}

void CheckForm::start(const equipment::HeldItem &held, const QDate &today)
{
    const bool same = held.id == m_held.id && held.item == m_held.item && hasUnsavedChanges();
    m_held = held;
    m_today = today;
    if (same)
        return;
    m_notice->clear();
    // Judged once it is whole.
    const QSignalBlocker quietAspect(m_aspect);
    const QSignalBlocker quietDay(m_day);
    const QSignalBlocker quietSource(m_source);
    m_heading->setText(tr("Check of %1").arg(equipment::titleOf(held.item)));
    m_day->setText(assay::shownDay(today));
    m_source->clear();
    m_note->clear();
    m_aspect->clear();
    for (const auto &[asked, days] : held.item.every_days)
        m_aspect->addItem(evaluation::capitalised(equipment::aspectName(asked)), static_cast<int>(asked));
    // The least that a box asks for is what it was before it had a choice.
    m_aspect->setMinimumWidth(m_aspect->sizeHint().width());
    // What is due first is offered.
    const equipment::AspectStanding worst = equipment::standingOf(held, today);
    m_aspect->setCurrentIndex(std::max(0, m_aspect->findData(static_cast<int>(worst.aspect))));
    takeAspect();
}

void CheckForm::takeAspect()
{
    m_protocol = equipment::protocolFor(m_held.item, aspect());
    std::vector<Sentence> sentences;
    for (const QString &caution : m_protocol.cautions)
        sentences.push_back({State::Attention, caution});
    sentences.push_back({State::Info, m_protocol.how});
    m_how->setSentences(std::move(sentences));
    buildFields();
    buildCells();
    judge();
}

void CheckForm::buildFields()
{
    while (m_fields->rowCount() > 0)
        m_fields->removeRow(0);
    m_numbers.clear();
    for (const equipment::ProtocolField &field : m_protocol.fields) {
        auto *number = new NumberField(m_theme, field.unit, m_fieldsHost);
        addFormRow(m_fields, withUnitInBrackets(field.name, field.unit), number, u"check_"_s + field.key);
        number->entry()->setToolTip(tipText(field.about));
        number->entry()->setAccessibleDescription(field.about);
        if (field.usual)
            number->entry()->setValue(*field.usual);
        connect(number->entry(), &NumberEntry::judged, this, &CheckForm::judge);
        m_numbers.push_back(number);
    }
    alignCaptions({m_day->parentWidget(), m_fieldsHost});
    QWidget *before = m_day;
    for (const NumberField *number : m_numbers) {
        setTabOrder(before, number->entry());
        before = number->entry();
    }
}

void CheckForm::buildCells()
{
    delete m_table;
    delete m_cells;
    std::vector<CellColumn> columns;
    columns.push_back({m_protocol.rowNames.isEmpty() ? tr("Line") : tr("What"), CellColumn::Kind::Fact});
    for (const equipment::ProtocolColumn &column : m_protocol.columns)
        columns.push_back({withUnitInBrackets(column.name, column.unit),
                           column.given ? CellColumn::Kind::Fact : CellColumn::Kind::Number});
    m_cells = new CellsModel(m_theme, std::move(columns), false, this);
    std::vector<CellRow> rows(m_protocol.rows.size(),
                              CellRow{{}, std::vector<QString>(m_protocol.columns.size() + 1)});
    m_cells->setRows(rows);
    std::vector<QString> names;
    for (std::size_t row = 0; row < rows.size(); ++row)
        names.push_back(m_protocol.rowNames.isEmpty() ? QString::number(row + 1)
                                                      : m_protocol.rowNames[qsizetype(row)]);
    m_cells->setFacts(0, std::move(names));
    for (std::size_t column = 0; column < m_protocol.columns.size(); ++column) {
        if (!m_protocol.columns[column].given)
            continue;
        std::vector<QString> given;
        for (const auto &row : m_protocol.rows)
            given.push_back(row[column] ? evaluation::plainText(*row[column]) : QString());
        m_cells->setFacts(static_cast<int>(column) + 1, std::move(given));
    }
    m_table = new CellsTable(m_theme, m_cells, tr("Lines of the check"), u"checkRows"_s, m_cellsHost);
    m_table->setRowsFixed();
    m_table->setFlexibleColumn(m_cells->columnCount() - 1); // not the numbers of the lines
    m_table->setEqualColumns(1);
    m_cellsHost->layout()->addWidget(m_table);
    m_table->show(); // else it comes into view an event later
    auto *shortcut = new QShortcut(QKeySequence::Paste, m_table);
    shortcut->setContext(Qt::WidgetShortcut);
    connect(shortcut, &QShortcut::activated, this, [this] {
        paste(*m_cells, std::max(0, m_table->currentIndex().row()),
              std::max(1, m_table->currentIndex().column()), QApplication::clipboard()->text());
    });
    connect(m_cells, &CellsModel::edited, this, &CheckForm::judge);
    setTabOrder(m_numbers.empty() ? static_cast<QWidget *>(m_day) : m_numbers.back()->entry(), m_table);
    setTabOrder(m_table, m_source);
    m_table->fit();
}

/// A column as a spreadsheet or a balance's list gives it: lines go down, tabs go to the right; what cannot
/// be keyed is left alone.
void CheckForm::paste(CellsModel &model, int row, int column, const QString &text)
{
    const QStringList lines = text.split(u'\n', Qt::SkipEmptyParts);
    for (qsizetype line = 0; line < lines.size(); ++line) {
        const QStringList cells = lines[line].trimmed().split(u'\t');
        for (qsizetype cell = 0; cell < cells.size(); ++cell) {
            const QModelIndex index = model.index(row + int(line), column + int(cell));
            if (index.isValid())
                model.setData(index, cells[cell].trimmed(), Qt::EditRole);
        }
    }
}

equipment::Check CheckForm::keyed(assay::Problems &problems) const
{
    const NumberReader reader(problems);
    equipment::Check check;
    check.aspect = aspect();
    const auto day = parseDay(m_day->text());
    if (const QDate *read = std::get_if<QDate>(&day))
        check.day = *read;
    for (std::size_t i = 0; i < m_numbers.size(); ++i) {
        const QString pointer = u"/conditions/"_s + m_protocol.fields[i].key;
        if (const auto number = reader.optionalNumber(m_numbers[i]->entry()->text(), pointer))
            check.conditions[m_protocol.fields[i].key] = *number;
    }
    check.rows = m_protocol.rows;
    for (std::size_t row = 0; row < check.rows.size(); ++row) {
        for (std::size_t column = 0; column < m_protocol.columns.size(); ++column) {
            if (!m_protocol.columns[column].given)
                check.rows[row][column] = reader.optionalNumber(m_cells->rows()[row].cells[column + 1],
                                                                u"/rows/%1/%2"_s.arg(row).arg(column));
        }
    }
    check.source = m_source->text().simplified();
    check.note = m_note->text().simplified();
    return check;
}

void CheckForm::judge()
{
    if (!m_cells)
        return;
    assay::Problems problems;
    const equipment::Check check = keyed(problems);
    const assay::Problems more = equipment::problemsOf(m_held.item, check, m_today);
    problems.insert(problems.end(), more.begin(), more.end());
    showOutcome(check, problems);
}

void CheckForm::showOutcome(const equipment::Check &check, const assay::Problems &problems)
{
    if (!problems.empty()) {
        m_findings->show(findingTitles(), {});
        m_findingsTable->fit();
        m_verdict->setSentences(
            {{State::Pending,
              tr("Cannot be judged yet. %1").arg(placedSentence(m_held.item, check, problems.front()))}});
        return;
    }
    const auto outcome = equipment::outcomeOf(m_held.item, check);
    if (!outcome)
        return;
    m_findings->show(findingTitles(), findingRows(*outcome));
    m_findingsTable->fit();
    std::vector<Sentence> sentences;
    sentences.push_back(
        outcome->passed
            ? Sentence{State::Good, tr("Passed: everything lies within its limits.")}
            : Sentence{State::Bad, tr("Failed. Once it is stored, runs that use it carry a warning. Take it "
                                      "out of use, or have it put right and check it again.")});
    if (const QString worth = figuresText(outcome->figures); !worth.isEmpty())
        sentences.push_back(
            {State::Info, tr("For the budgets: standard uncertainty (k = 1) of %1.").arg(worth)});
    m_verdict->setSentences(std::move(sentences));
}

void CheckForm::goTo(const QString &pointer)
{
    const QStringList parts = pointer.split(u'/', Qt::SkipEmptyParts);
    if (parts.value(0) == "rows"_L1) {
        m_table->setFocus();
        if (parts.size() == 3)
            m_table->goTo(parts[1].toInt(), parts[2].toInt() + 1);
        return;
    }
    for (std::size_t i = 0; i < m_numbers.size(); ++i) {
        if (parts.value(1) == m_protocol.fields[i].key)
            m_numbers[i]->entry()->setFocus();
    }
    if (parts.value(0) == "day"_L1)
        m_day->setFocus();
}

void CheckForm::store()
{
    assay::Problems problems;
    const equipment::Check check = keyed(problems);
    const assay::Problems more = equipment::problemsOf(m_held.item, check, m_today);
    problems.insert(problems.end(), more.begin(), more.end());
    if (!problems.empty()) {
        m_notice->say(State::Attention, placedSentence(m_held.item, check, problems.front()));
        goTo(problems.front().pointer);
        return;
    }
    m_notice->clear();
    Q_EMIT wanted(check);
}

bool CheckForm::hasUnsavedChanges() const
{
    if (!m_cells)
        return false;
    return std::ranges::any_of(m_cells->rows(), [](const CellRow &row) {
        return std::ranges::any_of(row.cells, [](const QString &cell) { return !cell.trimmed().isEmpty(); });
    });
}

void CheckForm::markStored()
{
    m_held = {};
    buildCells();
}

void CheckForm::takeFocus()
{
    if (m_aspect->count() > 1)
        m_aspect->setFocus();
    else
        m_day->setFocus();
}

void CheckForm::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
