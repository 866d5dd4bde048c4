// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettepanel.h"

#include "ui/shared/notice.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QResizeEvent>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PipettePanel::PipettePanel(const Theme &theme, QWidget *parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_action(plainLabel({}, this))
    , m_progress(plainLabel({}, this))
    , m_contents(plainLabel({}, this))
    , m_hints(plainLabel({}, this))
    , m_unlike(new Notice(theme, this))
    , m_source(new QWidget(this))
    , m_lotCaption(new QLabel(tr("&Lot"), m_source))
    , m_lot(box(u"pipetteLot"_s))
    , m_pipette(box(u"pipetteUsed"_s))
    , m_notice(new Notice(theme, this))
{
    build();
    connect(m_lot, &QComboBox::currentIndexChanged, this, &PipettePanel::sourceChanged);
    connect(m_pipette, &QComboBox::currentTextChanged, this, &PipettePanel::sourceChanged);
    connect(&theme, &Theme::changed, this, &PipettePanel::dress);
    dress();
}

QComboBox *PipettePanel::box(const QString &name)
{
    auto *combo = new QComboBox(m_source);
    combo->setObjectName(name);
    combo->setMinimumHeight(m_theme.target());
    combo->setMinimumContentsLength(12);
    combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    combo->setFocusPolicy(Qt::StrongFocus);
    combo->installEventFilter(this);
    return combo;
}

void PipettePanel::build()
{
    m_action->setObjectName(u"pipetteAction"_s);
    m_progress->setObjectName(u"pipetteProgress"_s);
    m_contents->setObjectName(u"pipetteContents"_s);
    m_hints->setObjectName(u"pipetteHints"_s);
    for (QLabel *label : {m_action, m_contents, m_hints})
        label->setWordWrap(true);
    m_action->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_lotCaption->setBuddy(m_lot);
    m_pipette->setEditable(true);
    m_pipette->setInsertPolicy(QComboBox::NoInsert);
    auto *pipetteCaption = new QLabel(tr("P&ipette"), m_source);
    pipetteCaption->setBuddy(m_pipette);
    auto *source = new QHBoxLayout(m_source);
    source->setContentsMargins({});
    source->setSpacing(m_theme.gap());
    source->addWidget(m_lotCaption);
    source->addWidget(m_lot, 1);
    source->addSpacing(m_theme.gap());
    source->addWidget(pipetteCaption);
    source->addWidget(m_pipette, 2);

    auto *head = new QHBoxLayout;
    head->setSpacing(m_theme.wideGap());
    head->addWidget(m_action, 1);
    head->addWidget(m_progress, 0, Qt::AlignTop | Qt::AlignRight);
    auto *second = new QHBoxLayout;
    second->setSpacing(m_theme.wideGap());
    second->addWidget(m_contents, 1);
    second->addWidget(m_hints, 1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    layout->addLayout(head);
    layout->addLayout(second);
    layout->addWidget(m_unlike);
    layout->addWidget(m_source);
    layout->addWidget(m_notice);
}

void PipettePanel::dress()
{
    m_action->setFont(m_theme.huge());
    m_progress->setFont(m_theme.large());
    m_contents->setFont(m_theme.large());
    QFont firm = m_theme.large();
    firm.setBold(true);
    m_hints->setFont(firm);
    m_unlike->setFont(firm);
    forgetHeight();
}

void PipettePanel::ask(const Subject &subject, const Source &source)
{
    m_action->setText(withDecimalSigns(subject.action));
    m_progress->setText(subject.progress);
    m_contents->setText(withDecimalSigns(subject.contents));
    setHints(subject.hints);
    if (subject.unlike.isEmpty())
        m_unlike->clear();
    else
        m_unlike->say(subject.planned ? State::Info : State::Attention, subject.unlike);
    fill(source);
    m_source->show();
    keepHeight();
}

/// Long and short names take turns in a rack: what stands below the action must not go up and down with them.
void PipettePanel::keepHeight()
{
    if (!isVisible())
        return; // no width yet, or one of long ago
    // Another count beside it leaves it another width.
    layout()->activate();
    m_action->setMinimumHeight(
        std::max(m_action->minimumHeight(), m_action->heightForWidth(m_action->width())));
}

void PipettePanel::forgetHeight()
{
    m_action->setMinimumHeight(0);
}

void PipettePanel::resizeEvent(QResizeEvent *event)
{
    QFrame::resizeEvent(event);
    if (event->size().width() == event->oldSize().width())
        return;
    forgetHeight();
    keepHeight();
}

void PipettePanel::setHints(const QString &hints)
{
    m_hints->setText(hints);
    m_hints->setVisible(!hints.isEmpty());
}

void PipettePanel::fill(const Source &source)
{
    const QSignalBlocker quietLot(m_lot);
    const QSignalBlocker quietPipette(m_pipette);
    m_lots = source.lots;
    m_lot->clear();
    for (const Source::Lot &lot : m_lots) {
        m_lot->addItem(lot.words);
        if (lot.id == source.lot)
            m_lot->setCurrentIndex(m_lot->count() - 1);
    }
    m_lot->setVisible(!m_lots.empty());
    m_lotCaption->setVisible(!m_lots.empty());
    m_pipette->clear();
    m_pipette->addItems(source.pipettes);
    m_pipette->setCurrentIndex(m_pipette->findText(source.pipette));
    m_pipette->setEditText(source.pipette);
    m_pipette->lineEdit()->setCursorPosition(0);
}

void PipettePanel::pause(const QString &title, const QString &text, const QString &hints)
{
    m_action->setText(title);
    m_progress->clear();
    m_contents->setText(text);
    setHints(hints);
    m_unlike->clear();
    m_source->hide();
    keepHeight();
}

std::optional<notebook::LotId> PipettePanel::lot() const
{
    const int index = m_lot->currentIndex();
    return index < 0 ? std::nullopt : m_lots.at(static_cast<std::size_t>(index)).id;
}

QString PipettePanel::pipette() const
{
    return m_pipette->currentText().simplified();
}

bool PipettePanel::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return QFrame::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent *>(event)->key();
    if (key != Qt::Key_Return && key != Qt::Key_Enter && key != Qt::Key_Escape)
        return QFrame::eventFilter(watched, event);
    Q_EMIT sourceLeft();
    return true;
}

} // namespace plateau::ui
