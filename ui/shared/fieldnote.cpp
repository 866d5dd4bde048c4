// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/fieldnote.h"

#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>

using namespace Qt::StringLiterals;

namespace plateau::ui {

FieldNote::FieldNote(const Theme &theme, QWidget *field, QWidget *parent, State state)
    : QWidget(parent)
    , m_theme(theme)
    , m_state(state)
    , m_field(field)
    , m_shape(new QLabel(this))
    , m_text(plainLabel({}, this))
{
    m_text->setWordWrap(true);
    m_text->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_shape, 0, Qt::AlignTop);
    layout->addWidget(m_text, 1);
    connect(&theme, &Theme::changed, this, &FieldNote::dress);
    dress();
    hide();
}

void FieldNote::say(const QStringList &sentences)
{
    constexpr qsizetype most = 3;
    QStringList shown = sentences.mid(0, most);
    if (sentences.size() > most)
        shown << tr("and %1 more").arg(sentences.size() - most);
    m_text->setText(shown.join(u'\n'));
    m_field->setAccessibleDescription(m_text->text());
    m_shape->setAccessibleName(m_text->text());
    setVisible(!shown.isEmpty());
}

QString FieldNote::text() const
{
    return m_text->text();
}

void FieldNote::dress()
{
    const int side = fontMetrics().height();
    m_shape->setPixmap(m_theme.icon(m_state).pixmap(side, side));
}

} // namespace plateau::ui
