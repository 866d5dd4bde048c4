// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettenote.h"

#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PipetteNote::PipetteNote(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_title(plainLabel({}, this))
    , m_volume(new NumberField(theme, {}, this))
    , m_unit(plainLabel({}, this))
    , m_reasonCaption(new QLabel(this))
    , m_reason(new QLineEdit(this))
    , m_keep(button(theme, tr("&Keep it"), u"pipetteKeep"_s, this))
    , m_leave(button(theme, tr("&Cancel  Esc"), u"pipetteLeave"_s, this))
{
    build();
    connect(entry(), &NumberEntry::judged, this, &PipetteNote::edited);
    connect(entry(), &QLineEdit::returnPressed, this, &PipetteNote::kept);
    connect(m_reason, &QLineEdit::textChanged, this, &PipetteNote::edited);
    connect(m_reason, &QLineEdit::returnPressed, this, &PipetteNote::kept);
    connect(m_keep, &QPushButton::clicked, this, &PipetteNote::kept);
    connect(m_leave, &QPushButton::clicked, this, &PipetteNote::left);
}

void PipetteNote::build()
{
    entry()->setObjectName(u"pipettedVolume"_s);
    m_volume->setFonts(m_theme.large(), font());
    m_reason->setObjectName(u"pipetteReason"_s);
    m_reason->setMinimumHeight(m_theme.target());
    m_reasonCaption->setBuddy(m_reason);
    m_title->setFont(m_theme.bold());
    m_title->setObjectName(u"pipetteNoteTitle"_s);
    m_unit->setFont(m_theme.large());
    auto *row = new QHBoxLayout;
    row->setSpacing(m_theme.gap());
    row->addWidget(m_unit);
    row->addWidget(m_volume);
    row->addWidget(m_reasonCaption);
    row->addWidget(m_reason, 1);
    row->addWidget(m_keep);
    row->addWidget(m_leave);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    layout->addWidget(m_title);
    layout->addLayout(row);
}

NumberEntry *PipetteNote::entry() const
{
    return m_volume->entry();
}

void PipetteNote::askVolume(const QString &title, const QString &unit, const Draft &draft)
{
    m_kind = Kind::Volume;
    m_title->setText(title);
    m_unit->setText(tr("Volume in %1").arg(unit));
    m_volume->show();
    m_unit->show();
    m_reasonCaption->setText(tr("No&te"));
    m_reason->setText(draft.reason);
    entry()->setAccessibleName(tr("Volume that went in, in %1").arg(unit));
    entry()->setText(draft.number);
    entry()->setFocus();
}

void PipetteNote::askReason(const QString &title, const Draft &draft)
{
    m_kind = draft.kind;
    m_title->setText(title);
    m_volume->hide();
    m_unit->hide();
    m_reasonCaption->setText(tr("R&eason"));
    m_reason->setText(draft.reason);
    m_reason->setFocus();
}

PipetteNote::Draft PipetteNote::draft() const
{
    return {m_kind, m_kind == Kind::Volume ? entry()->text().trimmed() : QString(), reason()};
}

std::optional<double> PipetteNote::volume() const
{
    return entry()->value();
}

QString PipetteNote::reason() const
{
    return m_reason->text().simplified();
}

void PipetteNote::resume()
{
    if (m_kind == Kind::Volume)
        entry()->setFocus();
    else
        m_reason->setFocus();
}

void PipetteNote::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
