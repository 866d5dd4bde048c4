// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/linkform.h"

#include "ui/instrument/choices.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QSerialPortInfo>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

enum class Kind { Serial, Network };

constexpr int usualSpeeds_baud[] = {1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200};

/// Data bits, parity and stop bits in one number.
int codeOf(int dataBits, SerialLink::Parity parity, int stopBits)
{
    return dataBits * 100 + static_cast<int>(parity) * 10 + stopBits;
}

/// A whole number as typed; 0, which is never sound here, for anything else.
int wholeNumberIn(const QString &text)
{
    bool isNumber = false;
    const int number = text.trimmed().toInt(&isNumber);
    return isNumber ? number : 0;
}

} // namespace

LinkForm::LinkForm(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_form(new QFormLayout(this))
    , m_kind(new QComboBox(this))
    , m_port(new QComboBox(this))
    , m_speed(new QComboBox(this))
    , m_format(new QComboBox(this))
    , m_flow(new QComboBox(this))
    , m_host(new QLineEdit(this))
    , m_number(new QLineEdit(this))
{
    m_form->setContentsMargins({});
    addChoice(m_kind, tr("serial port"), Kind::Serial);
    addChoice(m_kind, tr("network (TCP)"), Kind::Network);
    m_kind->setMinimumHeight(theme.target());
    addFormRow(m_form, tr("Connected b&y"), m_kind, u"linkKind"_s);
    addSerialRows(theme);
    addNetworkRows(theme);
    refreshPorts();
    connect(m_kind, &QComboBox::currentIndexChanged, this, &LinkForm::showWanted);
    for (const QComboBox *box : {m_kind, m_format, m_flow})
        connect(box, &QComboBox::currentIndexChanged, this, &LinkForm::changed);
    for (const QComboBox *box : {m_port, m_speed})
        connect(box, &QComboBox::editTextChanged, this, &LinkForm::changed);
    for (const QLineEdit *edit : {m_host, m_number})
        connect(edit, &QLineEdit::textChanged, this, &LinkForm::changed);
    showWanted();
}

void LinkForm::addSerialRows(const Theme &theme)
{
    for (QComboBox *box : {m_port, m_speed}) {
        box->setEditable(true);
        box->setInsertPolicy(QComboBox::NoInsert);
    }
    m_port->lineEdit()->setPlaceholderText(tr("name of the port")); // where none was found
    for (const int speed_baud : usualSpeeds_baud)
        m_speed->addItem(QString::number(speed_baud));
    m_speed->setCurrentText(QString::number(SerialLink().speed_baud));
    const std::pair<SerialLink::Parity, QString> parities[] = {{SerialLink::Parity::None, tr("no parity")},
                                                               {SerialLink::Parity::Even, tr("even parity")},
                                                               {SerialLink::Parity::Odd, tr("odd parity")}};
    const QString letters = u"NEO"_s;
    for (const int dataBits : {8, 7}) {
        for (const int stopBits : {1, 2}) {
            for (const auto &[parity, words] : parities)
                m_format->addItem((stopBits == 1 ? tr("%1%2%3: %1 data bits, %4, 1 stop bit")
                                                 : tr("%1%2%3: %1 data bits, %4, 2 stop bits"))
                                      .arg(dataBits)
                                      .arg(letters[static_cast<int>(parity)])
                                      .arg(stopBits)
                                      .arg(words),
                                  codeOf(dataBits, parity, stopBits));
        }
    }
    addChoice(m_flow, tr("none"), SerialLink::Flow::None);
    addChoice(m_flow, tr("hardware (RTS/CTS)"), SerialLink::Flow::Hardware);
    addChoice(m_flow, tr("software (XON/XOFF)"), SerialLink::Flow::Software);
    for (QComboBox *box : {m_port, m_speed, m_format, m_flow})
        box->setMinimumHeight(theme.target());
    addFormRow(m_form, tr("Po&rt"), m_port, u"serialPort"_s);
    addFormRow(m_form, tr("&Speed (baud)"), m_speed, u"serialSpeed"_s);
    addFormRow(m_form, tr("&Format"), m_format, u"serialFormat"_s);
    addFormRow(m_form, tr("F&low control"), m_flow, u"serialFlow"_s);
}

void LinkForm::addNetworkRows(const Theme &theme)
{
    m_host->setPlaceholderText(tr("name or address"));
    m_number->setPlaceholderText(tr("1 to 65535"));
    for (QLineEdit *edit : {m_host, m_number})
        edit->setMinimumHeight(theme.target());
    addFormRow(m_form, tr("&Host"), m_host, u"networkHost"_s);
    addFormRow(m_form, tr("Port num&ber"), m_number, u"networkPort"_s);
}

bool LinkForm::isNetwork() const
{
    return chosen<Kind>(m_kind) == Kind::Network;
}

void LinkForm::showWanted()
{
    for (QWidget *field : {m_port, m_speed, m_format, m_flow})
        showRow(*m_form, field, !isNetwork());
    for (QWidget *field : {m_host, m_number})
        showRow(*m_form, field, isNetwork());
}

void LinkForm::refreshPorts()
{
    const QSignalBlocker quiet(m_port);
    const QString typed = m_port->currentText();
    m_port->clear();
    for (const QSerialPortInfo &port : QSerialPortInfo::availablePorts())
        m_port->addItem(port.portName());
    if (!typed.isEmpty() || m_port->count() == 0)
        m_port->setCurrentText(typed);
}

Link LinkForm::link() const
{
    if (isNetwork())
        return NetworkLink{m_host->text().trimmed(), wholeNumberIn(m_number->text())};
    const int format = m_format->currentData().toInt();
    SerialLink link;
    link.port = m_port->currentText().trimmed();
    link.speed_baud = wholeNumberIn(m_speed->currentText());
    link.dataBits = format / 100;
    link.parity = static_cast<SerialLink::Parity>(format / 10 % 10);
    link.stopBits = format % 10;
    link.flow = chosen<SerialLink::Flow>(m_flow);
    return link;
}

void LinkForm::setLink(const Link &link)
{
    {
        const QSignalBlocker once(this);
        if (const auto *network = std::get_if<NetworkLink>(&link)) {
            choose(m_kind, Kind::Network);
            m_host->setText(network->host);
            m_number->setText(network->port > 0 ? QString::number(network->port) : QString());
        } else if (const auto *serial = std::get_if<SerialLink>(&link)) {
            choose(m_kind, Kind::Serial);
            m_port->setCurrentText(serial->port);
            m_speed->setCurrentText(QString::number(serial->speed_baud));
            m_format->setCurrentIndex(
                m_format->findData(codeOf(serial->dataBits, serial->parity, serial->stopBits)));
            choose(m_flow, serial->flow);
        }
    }
    Q_EMIT changed();
}

} // namespace plateau::ui
