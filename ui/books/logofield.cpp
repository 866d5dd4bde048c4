// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/logofield.h"

#include "ui/books/logofile.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/fieldnote.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

LogoField::LogoField(const Theme &theme, Dialogs &dialogs, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_dialogs(dialogs)
    , m_picture(new QLabel(this))
    , m_text(plainLabel({}, this))
    , m_load(button(theme, tr("&Load a picture…"), u"loadLogo"_s, this))
    , m_remove(button(theme, tr("Remove &it"), u"removeLogo"_s, this))
    , m_refusal(new FieldNote(theme, m_load, this))
{
    // 48 to 20, as the head of a report has room for.
    m_picture->setFixedSize(theme.target() * 48 / 10, theme.target() * 2);
    m_picture->setFrameShape(QFrame::StyledPanel);
    m_picture->setAlignment(Qt::AlignCenter);
    m_picture->setObjectName(u"logoPicture"_s);
    m_text->setObjectName(u"logoText"_s);
    m_text->setWordWrap(true);
    m_refusal->setObjectName(u"logoRefusal"_s);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_load);
    buttons->addWidget(m_remove);
    buttons->addStretch();
    auto *beside = new QVBoxLayout;
    beside->addLayout(buttons);
    beside->addWidget(m_text);
    beside->addStretch();
    auto *row = new QHBoxLayout;
    row->setSpacing(theme.wideGap());
    row->addWidget(m_picture, 0, Qt::AlignTop);
    row->addLayout(beside, 1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addLayout(row);
    layout->addWidget(m_refusal);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    setFocusProxy(m_load);
    connect(m_load, &QPushButton::clicked, this, &LogoField::load);
    connect(m_remove, &QPushButton::clicked, this, &LogoField::remove);
    draw();
}

void LogoField::setLogo(const std::optional<planning::Logo> &logo)
{
    m_refusal->say({});
    m_logo = logo;
    draw();
}

void LogoField::load()
{
    const QString path =
        m_dialogs.fileToOpen(this, tr("Load the logo"), tr("Pictures (*.png *.svg);;All files (*)"));
    if (path.isEmpty())
        return;
    const LogoFile read = readLogoFile(path);
    if (!read.logo) {
        m_refusal->say({read.refusal});
        return;
    }
    setLogo(read.logo);
    Q_EMIT changed();
}

void LogoField::remove()
{
    m_load->setFocus(); // the button that had it goes
    setLogo(std::nullopt);
    Q_EMIT changed();
}

void LogoField::draw()
{
    const QPixmap picture =
        m_logo ? logoPicture(*m_logo, m_picture->contentsRect().size(), devicePixelRatioF()) : QPixmap();
    m_picture->setPixmap(picture);
    if (picture.isNull())
        m_picture->setText(m_logo ? tr("cannot be drawn") : tr("no logo"));
    m_text->setText(
        m_logo ? tr("%1. On a report it is at most 48 mm wide and 20 mm high.").arg(logoText(*m_logo))
               : tr("A PNG or SVG picture; reports without one begin with the name alone."));
    m_load->setText(m_logo ? tr("Rep&lace it…") : tr("&Load a picture…"));
    m_remove->setEnabled(m_logo.has_value());
}

} // namespace plateau::ui
