// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/today/todaysection.h"

#include "ui/shared/widgets.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

TodaySection::TodaySection(const Theme &theme, const QString &heading, const QString &nothing,
                           const QString &objectName, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_heading(plainLabel(heading, this))
    , m_nothing(plainLabel(nothing, this))
    , m_list(new SentenceList(theme, heading, objectName, this))
{
    m_nothing->setObjectName(objectName + u"Nothing"_s);
    m_nothing->setWordWrap(true);
    m_nothing->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->hide();
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_heading);
    layout->addWidget(m_nothing);
    layout->addWidget(m_list, 1);
    layout->addStretch();
    connect(m_list, &QListView::activated, this, [this](const QModelIndex &at) { follow(at.row()); });
    connect(&theme, &Theme::changed, this, &TodaySection::dress);
    dress();
}

void TodaySection::dress()
{
    m_heading->setFont(m_theme.large());
    QPalette muted;
    muted.setColor(QPalette::WindowText, m_theme.mutedText());
    m_nothing->setPalette(muted);
}

void TodaySection::setLines(std::vector<TodayLine> lines)
{
    m_lines = std::move(lines);
    std::vector<Sentence> sentences;
    std::ranges::transform(m_lines, std::back_inserter(sentences), &TodayLine::sentence);
    m_list->setSentences(std::move(sentences));
    m_list->setVisible(!m_lines.empty());
    m_nothing->setVisible(m_lines.empty());
}

void TodaySection::follow(int row)
{
    const TodayLine line = m_lines.at(static_cast<std::size_t>(row));
    if (line.run)
        Q_EMIT runWanted(*line.run);
    else if (line.book)
        Q_EMIT bookWanted(*line.book);
}

} // namespace plateau::ui
