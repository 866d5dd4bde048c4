// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/columndialog.h"

#include "core/exchange/readers.h"
#include "ui/instrument/columnmodel.h"
#include "ui/instrument/mappingform.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/notice.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using exchange::ColumnMapping;
using exchange::ColumnRow;

namespace {

/// 1, 2, 3 and so on: no photometer reads like that.
bool isCount(const exchange::ReadingColumn &column)
{
    int next = 1;
    for (const exchange::ColumnRow &row : column.rows) {
        if (row.kind == exchange::ColumnRow::Kind::Reading && row.absorbance != next++)
            return false;
    }
    return next > 3; // two of them may be chance
}

} // namespace

ColumnDialog::ColumnDialog(const Theme &theme, Kind kind, PhotometerStore &store, Dialogs &dialogs,
                           QWidget *parent)
    : QDialog(parent)
    , m_theme(theme)
    , m_kind(kind)
    , m_store(store)
    , m_dialogs(dialogs)
    , m_model(new ColumnModel(theme, this))
    , m_remembered(new QComboBox(this))
    , m_form(new MappingForm(theme, kind == Kind::File, this))
    , m_name(new QLineEdit(this))
    , m_text(new QPlainTextEdit(this))
    , m_file(plainLabel({}, this))
    , m_table(new Table(theme, m_model, tr("The lines and what is understood"), u"columnLines"_s, this))
    , m_notice(new Notice(theme, this))
    , m_again(kind == Kind::Paste ? button(theme, tr("&Paste"), u"pasteColumn"_s, this)
                                  : button(theme, tr("Another &file…"), u"anotherColumnFile"_s, this))
    , m_forget(button(theme, tr("For&get"), u"forgetMapping"_s, this))
    , m_take(button(theme, tr("Ta&ke the readings"), u"takeColumn"_s, this))
{
    setObjectName(u"columnDialog"_s);
    setHelp(*this, {u"instrument"_s, {}});
    setWindowTitle(kind == Kind::Paste ? tr("Paste a column of readings") : tr("Readings from a file"));
    auto *sides = new QHBoxLayout;
    sides->setSpacing(theme.wideGap());
    sides->addWidget(buildForm());
    sides->addWidget(buildText(), 1);
    auto *layout = new QVBoxLayout(this);
    layout->addWidget(scrolled(sides, this), 1);
    layout->addWidget(m_notice);
    layout->addLayout(buildButtons());
    const QSize usual(fontMetrics().averageCharWidth() * 140, fontMetrics().height() * 34);
    resizeOnScreen(*this, usual.expandedTo(sizeHint()));
    fillNames();
    connect(m_remembered, &QComboBox::activated, this, &ColumnDialog::takeChosen);
    connect(m_form, &MappingForm::changed, this, &ColumnDialog::read);
    connect(m_text, &QPlainTextEdit::textChanged, this, &ColumnDialog::read);
    connect(m_name, &QLineEdit::textChanged, this, &ColumnDialog::judge);
    connect(m_forget, &QPushButton::clicked, this, &ColumnDialog::forget);
    read();
}

QWidget *ColumnDialog::buildForm()
{
    for (QWidget *field : std::initializer_list<QWidget *>{m_remembered, m_name})
        field->setMinimumHeight(m_theme.target());
    m_name->setPlaceholderText(tr("not remembered"));
    auto *side = new QWidget(this);
    auto *choice = new QFormLayout;
    addFormRow(choice, tr("Remem&bered"), m_remembered, u"rememberedMappings"_s);
    auto *name = new QFormLayout;
    addFormRow(name, tr("Re&member as"), m_name, u"mappingName"_s);
    auto *layout = new QVBoxLayout(side);
    layout->setContentsMargins({});
    layout->addLayout(choice);
    layout->addWidget(m_forget, 0, Qt::AlignRight);
    layout->addWidget(m_form);
    layout->addLayout(name);
    layout->addStretch(1);
    return side;
}

QWidget *ColumnDialog::buildText()
{
    m_text->setObjectName(u"columnText"_s);
    m_text->setTabChangesFocus(true);
    m_text->setLineWrapMode(QPlainTextEdit::NoWrap);
    m_file->setObjectName(u"columnFile"_s);
    m_file->setWordWrap(true);
    m_table->setFlexibleColumn(ColumnModel::Result);
    m_table->setMinimumHeight(m_theme.target() * 5);
    auto *side = new QWidget(this);
    auto *layout = new QVBoxLayout(side);
    layout->setContentsMargins({});
    auto *head = new QHBoxLayout;
    if (m_kind == Kind::Paste) {
        auto *label = new QLabel(tr("&Text with the readings"), side);
        label->setBuddy(m_text);
        head->addWidget(label, 1);
        connect(m_again, &QPushButton::clicked, this, &ColumnDialog::paste);
    } else {
        head->addWidget(m_file, 1);
        connect(m_again, &QPushButton::clicked, this, &ColumnDialog::askForFile);
    }
    head->addWidget(m_again);
    layout->addLayout(head);
    layout->addWidget(m_text, 2);
    layout->addWidget(m_table, 3);
    m_text->setVisible(m_kind == Kind::Paste);
    m_file->setVisible(m_kind == Kind::File);
    return side;
}

QBoxLayout *ColumnDialog::buildButtons()
{
    auto *cancel = button(m_theme, tr("Cancel"), u"cancelColumn"_s, this);
    m_take->setDefault(true);
    auto *row = new QHBoxLayout;
    row->addStretch(1);
    row->addWidget(cancel);
    row->addWidget(m_take);
    connect(cancel, &QPushButton::clicked, this, &ColumnDialog::reject);
    connect(m_take, &QPushButton::clicked, this, &ColumnDialog::accept);
    return row;
}

void ColumnDialog::fillNames()
{
    m_remembered->clear();
    m_remembered->addItem(tr("none"));
    for (const NamedMapping &known : m_store.mappings())
        m_remembered->addItem(known.name, known.name);
    m_forget->setEnabled(false);
}

void ColumnDialog::takeChosen()
{
    const QString name = m_remembered->currentData().toString();
    const std::vector<NamedMapping> known = m_store.mappings();
    const auto found = std::ranges::find(known, name, &NamedMapping::name);
    m_forget->setEnabled(found != known.end());
    m_name->setText(name);
    if (found == known.end())
        return;
    m_isProposed = true;
    m_form->setMapping(found->mapping);
}

void ColumnDialog::forget()
{
    if (!m_store.forgetMapping(m_remembered->currentData().toString()))
        Q_EMIT notKept();
    fillNames();
}

void ColumnDialog::paste()
{
    setText(QApplication::clipboard()->text());
}

void ColumnDialog::setText(const QString &text)
{
    propose(text);
    // A text field of that length would be slow; what is said of it is the same.
    m_text->setPlainText(text.left(exchange::longestColumnText + 1));
}

void ColumnDialog::propose(const QString &text)
{
    if (m_isProposed || text.trimmed().isEmpty())
        return;
    m_isProposed = true;
    ColumnMapping likely = mapping();
    likely.delimiter = exchange::likelyDelimiter(text);
    m_form->setMapping(likely);
}

void ColumnDialog::setFile(const QString &fileName, const QByteArray &bytes)
{
    m_fileName = fileName;
    m_fileFault.clear();
    m_bytes = bytes;
    m_file->setText(exchange::onOneLine(fileName));
    propose(QString::fromLatin1(bytes));
    read();
}

bool ColumnDialog::askForFile()
{
    const QString path = m_dialogs.fileToOpen(isVisible() ? this : parentWidget(), windowTitle(),
                                              tr("Text and CSV (*.txt *.csv *.tsv *.dat);;All files (*)"));
    if (path.isEmpty())
        return false;
    const exchange::Read<QByteArray> bytes = exchange::readFile(path);
    setFile(QFileInfo(path).fileName(), bytes.value.value_or(QByteArray()));
    if (!bytes.value) {
        m_fileFault = tr("%1: %2.").arg(exchange::onOneLine(m_fileName), bytes.problems.front().message);
        read();
    }
    return true;
}

ColumnMapping ColumnDialog::mapping() const
{
    return m_form->mapping();
}

void ColumnDialog::read()
{
    m_column = {};
    const ColumnMapping mapping = m_form->mapping();
    if (const QString fault = exchange::faultOf(mapping); !fault.isEmpty()) {
        m_column.fault = fault;
    } else if (!m_fileFault.isEmpty()) {
        m_column.fault = m_fileFault;
    } else if (m_kind == Kind::Paste) {
        m_column = exchange::readColumn(m_text->toPlainText(), mapping);
    } else {
        const auto text = exchange::decodeReadings(m_bytes, mapping.encoding);
        if (text.index() == 0)
            m_column = exchange::readColumn(std::get<0>(text), mapping);
        else
            m_column.fault = std::get<1>(text);
    }
    m_model->setLines(m_column.rows);
    m_table->setColumnHidden(ColumnModel::Tube, mapping.tubeColumn == 0);
    m_table->fit();
    judge();
}

void ColumnDialog::judge()
{
    say();
    m_take->setEnabled(m_column.isAccepted() && !isCount(m_column) && (m_name->text().trimmed().isEmpty() ||
                                                 nameFault(m_name->text().simplified()).isEmpty()));
}

void ColumnDialog::say()
{
    const QString name = m_name->text().simplified();
    const bool isEmpty = m_kind == Kind::Paste && m_text->toPlainText().trimmed().isEmpty();
    if (isEmpty)
        return m_notice->say(State::Pending, tr("Copy the column where it stands and paste it here."));
    if (!m_column.fault.isEmpty())
        return m_notice->say(State::Bad, m_column.fault);
    if (const int faults = m_column.faults(); faults > 0) {
        const auto first = std::ranges::find(m_column.rows, ColumnRow::Kind::Fault, &ColumnRow::kind);
        return m_notice->say(State::Bad,
                             faults == 1
                                 ? tr("Nothing can be taken yet: %1").arg(first->sentence)
                                 : tr("Nothing can be taken yet: %1 lines are not readings; the first is %2")
                                       .arg(faults)
                                       .arg(first->sentence));
    }
    if (!name.isEmpty() && !nameFault(name).isEmpty())
        return m_notice->say(State::Bad, nameFault(name));
    const int readings = m_column.readings();
    if (isCount(m_column))
        return m_notice->say(State::Bad,
                             tr("Nothing can be taken yet: the column counts the tubes. Choose the one of the absorbance, and "
                                "this one for the tube."));
    m_notice->say(readings > 0 ? State::Good : State::Attention,
                  readings == 1   ? tr("1 reading.")
                  : readings == 0 ? tr("There is no reading in it; look at the lines of heading.")
                                  : tr("%1 readings.").arg(readings));
}

std::vector<TakenReading> ColumnDialog::readings() const
{
    std::vector<TakenReading> taken;
    for (const ColumnRow &row : exchange::readingsOf(m_column, m_form->mapping()))
        taken.push_back({row.absorbance, exchange::onOneLine(row.raw), row.tube,
                         m_kind == Kind::Paste ? TakenReading::Origin::Pasted : TakenReading::Origin::File,
                         m_fileName});
    return taken;
}

void ColumnDialog::showEvent(QShowEvent *event)
{
    QDialog::showEvent(event);
    // Where all is well Enter takes it; else to where it can be put right.
    QWidget *text = m_kind == Kind::Paste ? static_cast<QWidget *>(m_text) : m_remembered;
    (m_take->isEnabled() ? m_take : text)->setFocus();
}

void ColumnDialog::accept()
{
    if (!m_take->isEnabled()) // however it was asked for
        return;
    const QString name = m_name->text().simplified();
    if (!name.isEmpty() && !m_store.keep(NamedMapping{name, mapping()}))
        Q_EMIT notKept();
    QDialog::accept();
}

} // namespace plateau::ui
