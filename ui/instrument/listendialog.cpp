// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/listendialog.h"

#include "ui/instrument/linesmodel.h"
#include "ui/instrument/linkform.h"
#include "ui/instrument/patternform.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/notice.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// As many lines as are kept on show of what came in, and are tried out of what is pasted.
constexpr std::size_t mostLines = 200;

/// A received line as it can be pasted: what frames it is gone.
QString sampleOf(const ReceivedLine &line, const exchange::LinePattern &pattern)
{
    const auto text = exchange::decodeLine(line.bytes.trimmed(), pattern.encoding);
    QString sample = text.index() == 0 ? std::get<0>(text) : line.raw;
    sample.removeIf([](QChar sign) { return sign.category() == QChar::Other_Control && sign != u'\t'; });
    return sample;
}

} // namespace

ListenDialog::ListenDialog(const Theme &theme, Listener &listener, PhotometerStore &store, QWidget *parent)
    : QDialog(parent)
    , m_theme(theme)
    , m_listener(listener)
    , m_store(store)
    , m_before(listener.isTaking() ? listener.photometer() : std::nullopt)
    , m_tried(new LinesModel(theme, this))
    , m_came(new LinesModel(theme, this))
    , m_remembered(new QComboBox(this))
    , m_name(new QLineEdit(this))
    , m_link(new LinkForm(theme, this))
    , m_pattern(new PatternForm(theme, this))
    , m_sample(new QPlainTextEdit(this))
    , m_triedTable(new Table(theme, m_tried, tr("What the sample lines give"), u"triedLines"_s, this))
    , m_cameTable(
          new Table(theme, m_came, tr("Lines that came in, the last one on top"), u"receivedLines"_s, this))
    , m_nothingCame(plainLabel(tr("Nothing has come in yet."), this))
    , m_state(new Notice(theme, this))
    , m_obstacle(plainLabel({}, this))
    , m_connect(button(theme, tr("&Connect"), u"connectPhotometer"_s, this))
    , m_forget(button(theme, tr("For&get"), u"forgetPhotometer"_s, this))
    , m_useReceived(button(theme, tr("&Use the lines that came in"), u"useReceivedLines"_s, this))
    , m_stop(button(theme, tr("Stop lis&tening"), u"stopListening"_s, this))
    , m_take(button(theme, tr("Take readings"), u"takeReadings"_s, this))
{
    setObjectName(u"listenDialog"_s);
    setHelp(*this, {u"instrument"_s, {}});
    setWindowTitle(tr("Listen to a photometer"));
    m_listener.setTaking(false);
    build();
    fillNames();
    connectParts();
    const std::vector<Photometer> known = m_store.photometers();
    if (m_before)
        fillIn(*m_before);
    else if (!known.empty())
        fillIn(known.front());
    tryOut();
    showState();
    m_remembered->setFocus();
    // Lines need the width; the height is that of what is filled in.
    resizeOnScreen(*this, QSize(fontMetrics().averageCharWidth() * 150, 0).expandedTo(sizeHint()));
}

void ListenDialog::connectParts()
{
    connect(m_remembered, &QComboBox::activated, this, &ListenDialog::takeChosen);
    connect(m_name, &QLineEdit::textChanged, this, &ListenDialog::showState);
    connect(m_link, &LinkForm::changed, this, &ListenDialog::onLink);
    connect(m_pattern, &PatternForm::changed, this, &ListenDialog::onPattern);
    connect(m_sample, &QPlainTextEdit::textChanged, this, &ListenDialog::tryOut);
    connect(m_connect, &QPushButton::clicked, this, &ListenDialog::toggleConnection);
    connect(m_forget, &QPushButton::clicked, this, &ListenDialog::forget);
    connect(m_useReceived, &QPushButton::clicked, this, &ListenDialog::useReceived);
    connect(m_stop, &QPushButton::clicked, this, &ListenDialog::stopListening);
    connect(m_take, &QPushButton::clicked, this, &ListenDialog::accept);
    connect(&m_listener, &Listener::lineReceived, this, &ListenDialog::onLine);
    connect(&m_listener, &Listener::stateChanged, this, &ListenDialog::showState);
}

Photometer ListenDialog::photometer() const
{
    return {m_name->text().simplified(), m_link->link(), m_pattern->pattern()};
}

void ListenDialog::fillNames()
{
    m_remembered->clear();
    m_remembered->addItem(tr("another one"));
    for (const Photometer &known : m_store.photometers())
        m_remembered->addItem(known.name, known.name);
}

void ListenDialog::fillIn(const Photometer &photometer)
{
    m_remembered->setCurrentIndex(std::max(0, m_remembered->findData(photometer.name)));
    m_name->setText(photometer.name);
    m_link->setLink(photometer.link);
    m_pattern->setPattern(photometer.pattern);
    showState();
}

void ListenDialog::takeChosen()
{
    const QString name = m_remembered->currentData().toString();
    const std::vector<Photometer> known = m_store.photometers();
    const auto found = std::ranges::find(known, name, &Photometer::name);
    if (found != known.end())
        fillIn(*found);
    else
        m_name->clear();
    showState();
}

void ListenDialog::toggleConnection()
{
    if (m_listener.photometer())
        m_listener.disconnectFrom();
    else if (faultOf(m_link->link()).isEmpty())
        m_listener.connectTo(photometer());
}

void ListenDialog::onLink()
{
    // What is on show is what is connected.
    if (m_listener.photometer() && m_listener.photometer()->link != m_link->link())
        m_listener.disconnectFrom();
    showState();
}

void ListenDialog::onPattern()
{
    if (exchange::faultOf(m_pattern->pattern()).isEmpty())
        m_listener.setPattern(m_pattern->pattern());
    tryOut();
    showState();
}

void ListenDialog::tryOut()
{
    const exchange::LinePattern pattern = m_pattern->pattern();
    std::vector<ReceivedLine> tried;
    const QString text = m_sample->toPlainText();
    const bool isSound = exchange::faultOf(pattern).isEmpty();
    const QByteArray bytes =
        pattern.encoding == exchange::TextEncoding::Latin1 ? text.toLatin1() : text.toUtf8();
    for (const auto &line : exchange::LineAssembler().take(QByteArray(bytes + '\n'))) {
        if (isSound && !text.isEmpty() && tried.size() < mostLines)
            tried.push_back(received(line, pattern));
    }
    m_tried->setLines(std::move(tried));
    m_triedTable->fit();
}

void ListenDialog::useReceived()
{
    QStringList lines;
    for (const ReceivedLine &line : m_received)
        lines.prepend(sampleOf(line, m_pattern->pattern()));
    m_sample->setPlainText(lines.join(u'\n'));
}

void ListenDialog::onLine(const ReceivedLine &line)
{
    m_received.insert(m_received.begin(), line);
    if (m_received.size() > mostLines)
        m_received.pop_back();
    m_came->setLines(m_received);
    if (line.raw.size() > m_longest) {
        m_longest = line.raw.size();
        m_cameTable->fit();
    }
    m_nothingCame->hide();
    m_useReceived->setEnabled(true);
}

QString ListenDialog::obstacle() const
{
    if (const QString fault = faultOf(m_link->link()); !fault.isEmpty())
        return fault;
    if (const QString fault = exchange::faultOf(m_pattern->pattern()); !fault.isEmpty())
        return fault;
    if (m_name->text().trimmed().isEmpty())
        return tr("Give the photometer a name to remember it by.");
    if (const QString fault = nameFault(m_name->text().simplified()); !fault.isEmpty())
        return fault;
    return m_listener.photometer() ? QString() : tr("Connect before readings are taken.");
}

void ListenDialog::showState()
{
    const LinkState state = m_listener.state();
    const bool isConnected = m_listener.photometer().has_value();
    const QString sentence =
        state == LinkState::Connected
            ? tr("%1 Nothing is taken while this window is open.").arg(m_listener.sentence())
            : m_listener.sentence();
    if (m_state->sentence() != sentence || !m_state->isVisibleTo(this))
        m_state->say(state == LinkState::Connected ? State::Good
                     : state == LinkState::Waiting ? State::Attention
                                                   : State::Pending,
                     sentence);
    m_connect->setText(isConnected ? tr("Dis&connect") : tr("&Connect"));
    m_connect->setEnabled(isConnected || faultOf(m_link->link()).isEmpty());
    m_forget->setEnabled(m_remembered->currentIndex() > 0);
    m_obstacle->setText(obstacle());
    m_take->setEnabled(obstacle().isEmpty());
    m_stop->setVisible(m_before.has_value());
}

void ListenDialog::forget()
{
    if (!m_store.forgetPhotometer(m_remembered->currentData().toString()))
        Q_EMIT notKept();
    fillNames();
    showState();
}

void ListenDialog::stopListening()
{
    m_before.reset();
    reject();
}

void ListenDialog::accept()
{
    if (!obstacle().isEmpty()) // however it was asked for
        return;
    const Photometer wanted = photometer();
    m_listener.setName(wanted.name);
    m_listener.setPattern(wanted.pattern);
    m_listener.setTaking(true);
    if (!m_store.keep(wanted))
        Q_EMIT notKept();
    QDialog::accept();
}

void ListenDialog::reject()
{
    if (!m_before) {
        m_listener.disconnectFrom();
    } else if (m_listener.photometer() && m_listener.photometer()->link == m_before->link) {
        m_listener.setName(m_before->name);
        m_listener.setPattern(m_before->pattern);
        m_listener.setTaking(true);
    } else {
        m_listener.connectTo(*m_before);
        m_listener.setTaking(true);
    }
    QDialog::reject();
}

} // namespace plateau::ui
