// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/itemview.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "ui/books/equipmentwords.h"
#include "ui/books/factsmodel.h"
#include "ui/books/findingswords.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QStringList checkTitles()
{
    return {ItemView::tr("Day"), ItemView::tr("No."), ItemView::tr("What"), ItemView::tr("Verdict"),
            ItemView::tr("Person")};
}

QString verdictOf(const equipment::HeldCheck &check)
{
    if (check.withdrawn)
        return ItemView::tr("taken back");
    const auto outcome = equipment::outcomeOf(check.of, check.check);
    return outcome && outcome->passed ? ItemView::tr("passed") : ItemView::tr("failed");
}

} // namespace

ItemView::ItemView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_notice(new Notice(theme, this))
{
    QWidget *header = buildHeader();
    m_standings = new SentenceList(theme, tr("How it stands"), u"itemStandings"_s, this);
    m_standings->setMaximumHeight(fontMetrics().height() * 6);
    auto *body = new QHBoxLayout;
    body->setSpacing(theme.wideGap());
    body->addWidget(buildHistory(), 4);
    body->addWidget(buildChosen(), 5);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(header);
    layout->addWidget(m_notice);
    layout->addWidget(m_standings);
    layout->addLayout(body, 1);
}

QWidget *ItemView::buildHeader()
{
    auto *header = new QWidget(this);
    m_shape = new QLabel(header);
    m_title = new ElidingLabel(header);
    m_title->setFont(m_theme.large());
    m_title->setObjectName(u"itemTitle"_s);
    m_subtitle = plainLabel({}, header);
    m_subtitle->setWordWrap(true);
    m_subtitle->setObjectName(u"itemSubtitle"_s);
    m_check = button(m_theme, tr("&Key a check…"), u"keyCheck"_s, header);
    m_change = button(m_theme, tr("&Change the item…"), u"changeItem"_s, header);
    auto *back = button(m_theme, tr("Back to the list  Esc"), u"backToEquipment"_s, header);
    connect(m_check, &QPushButton::clicked, this, &ItemView::checkWanted);
    connect(m_change, &QPushButton::clicked, this, &ItemView::changeWanted);
    connect(back, &QPushButton::clicked, this, &ItemView::closed);
    auto *top = new QHBoxLayout;
    top->setSpacing(m_theme.gap()); // else it is that of the layout around it, which is none
    top->addWidget(m_shape);
    top->addWidget(m_title, 1);
    top->addWidget(m_check);
    top->addWidget(m_change);
    top->addWidget(back);
    // Volume, number and intervals need the whole width.
    auto *layout = new QVBoxLayout(header);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addLayout(top);
    layout->addWidget(m_subtitle);
    return header;
}

QWidget *ItemView::buildHistory()
{
    auto *host = new QWidget(this);
    m_checks = new FactsModel(this, {2, 3, 4});
    m_checks->setMarks(m_theme, 3,
                       {{tr("passed"), State::Good}, {tr("failed"), State::Bad}, {tr("taken back"), State::Info}});
    m_checks->show(checkTitles(), {});
    m_checksTable = new Table(m_theme, m_checks, tr("Checks of the item"), u"itemChecks"_s, host);
    m_checksTable->setWrap(Table::Wrap::AsNeeded);
    m_checksTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_checksTable->setFlexibleColumn(2);
    m_checksTable->setNameColumn(4);
    m_noChecks = plainLabel(tr("No check is in the book yet. Key the first one; until then budgets use what "
                               "the laboratory's list says."),
                            host);
    m_noChecks->setWordWrap(true);
    m_noChecks->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_noChecks->setObjectName(u"itemNoChecks"_s);
    auto *caption = plainLabel(tr("Checks"), host);
    caption->setFont(m_theme.bold());
    auto *layout = new QVBoxLayout(host);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    layout->addWidget(caption);
    layout->addWidget(m_noChecks, 1);
    layout->addWidget(m_checksTable, 1);
    connect(m_checksTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &ItemView::showChosen);
    return host;
}

QWidget *ItemView::buildChosen()
{
    auto *host = new QWidget(this);
    m_about = plainLabel({}, host);
    m_about->setWordWrap(true);
    m_about->setObjectName(u"aboutCheck"_s);
    m_findings = new FactsModel(this, findingTexts());
    m_findings->setMarks(m_theme, findingVerdict, findingMarks());
    m_findings->show(findingTitles(), {});
    m_findingsTable = new Table(m_theme, m_findings, tr("Findings of the check"), u"itemFindings"_s, host);
    m_findingsTable->setWrap(Table::Wrap::AsNeeded);
    m_withdrawal = new QWidget(host);
    auto *caption = new QLabel(tr("Keyed &wrongly, because"), m_withdrawal);
    m_reason = new QLineEdit(m_withdrawal);
    m_reason->setMinimumHeight(m_theme.target());
    m_reason->setObjectName(u"withdrawReason"_s);
    m_reason->setAccessibleName(tr("Keyed wrongly, because"));
    caption->setBuddy(m_reason);
    auto *take = button(m_theme, tr("&Take it back"), u"withdrawCheck"_s, m_withdrawal);
    auto *row = new QHBoxLayout(m_withdrawal);
    row->setContentsMargins({});
    row->addWidget(caption);
    row->addWidget(m_reason, 1);
    row->addWidget(take);
    connect(take, &QPushButton::clicked, this, &ItemView::withdraw);
    connect(m_reason, &QLineEdit::returnPressed, this, &ItemView::withdraw);
    auto *heading = plainLabel(tr("The chosen check"), host);
    heading->setFont(m_theme.bold());
    auto *layout = new QVBoxLayout(host);
    layout->setContentsMargins({});
    layout->setSpacing(m_theme.gap());
    layout->addWidget(heading);
    layout->addWidget(m_about);
    layout->addWidget(m_findingsTable, 1);
    layout->addWidget(m_withdrawal);
    return host;
}

void ItemView::show(const equipment::HeldItem &held, const QDate &today)
{
    const bool another = held.id != m_held.id;
    const bool more = held.checks.size() != m_held.checks.size();
    if (another) {
        m_notice->clear();
        m_reason->clear();
    }
    m_held = held;
    const equipment::AspectStanding worst = equipment::standingOf(held, today);
    m_title->setText(evaluation::capitalised(equipment::titleOf(held.item)));
    QStringList parts;
    for (const QString &part : {sizeText(held.item), held.item.number, dutiesText(held.item)}) {
        if (!part.isEmpty())
            parts << part;
    }
    m_subtitle->setText(withDecimalSigns(parts.join(tr("; "))));
    const int side = fontMetrics().height() * 5 / 4;
    m_shape->setPixmap(m_theme.icon(stateOf(worst.standing)).pixmap(side, side));
    m_shape->setAccessibleName(m_subtitle->text());
    m_check->setEnabled(held.item.inUse);
    std::vector<Sentence> sentences;
    if (!held.item.inUse)
        sentences.push_back({State::Info, tr("Out of use: nothing is due, and no budget rests on it.")});
    else
        for (const equipment::AspectStanding &standing : equipment::standingsOf(held, today))
            sentences.push_back(
                {stateOf(standing.standing),
                 evaluation::capitalised(standing.standing == equipment::Standing::InDate
                                             ? tr("%1: %2").arg(equipment::aspectName(standing.aspect),
                                                                equipment::standingText(standing, today))
                                             : equipment::standingText(standing, today)) +
                     u'.'});
    m_standings->setSentences(std::move(sentences));
    std::vector<QStringList> rows;
    for (auto check = held.checks.rbegin(); check != held.checks.rend(); ++check)
        rows.push_back({assay::shownDay(check->check.day), QString::number(check->id),
                        equipment::aspectName(check->check.aspect), verdictOf(*check), check->person});
    m_checks->show(checkTitles(), std::move(rows));
    m_checksTable->fit();
    m_noChecks->setVisible(held.checks.empty());
    m_checksTable->setVisible(!held.checks.empty());
    if ((another || more) && !held.checks.empty())
        m_checksTable->selectRow(0);
    showChosen();
}

const equipment::HeldCheck *ItemView::chosen() const
{
    const int row = m_checksTable->currentIndex().row();
    if (row < 0 || row >= static_cast<int>(m_held.checks.size()))
        return nullptr;
    return &m_held.checks[m_held.checks.size() - 1 - static_cast<std::size_t>(row)];
}

void ItemView::showChosen()
{
    const equipment::HeldCheck *check = chosen();
    m_withdrawal->setVisible(check && !check->withdrawn);
    m_findingsTable->setVisible(check);
    if (!check) {
        m_about->setText(tr("Choose a check to see what was found."));
        m_findings->show(findingTitles(), {});
        return;
    }
    QStringList parts{
        tr("Check %1 of %2: %3.")
            .arg(QString::number(check->id), assay::shownDay(check->check.day), verdictOf(*check))};
    const auto outcome = equipment::outcomeOf(check->of, check->check);
    if (outcome) {
        if (const QString worth = figuresText(outcome->figures); !worth.isEmpty())
            parts << tr("Standard uncertainty (k = 1) of %1.").arg(worth);
        m_findings->show(findingTitles(), findingRows(*outcome));
    }
    if (!check->check.source.isEmpty())
        parts << tr("Source: %1.").arg(check->check.source);
    if (!check->check.note.isEmpty())
        parts << tr("Note: %1").arg(check->check.note);
    m_about->setText(shownNumbers(parts.join(u' ')));
    m_findingsTable->fit();
}

void ItemView::withdraw()
{
    const equipment::HeldCheck *check = chosen();
    if (!check)
        return;
    const QString reason = m_reason->text().simplified();
    if (reason.isEmpty()) {
        m_notice->say(State::Attention, tr("Say why it does not count; the book keeps it."));
        m_reason->setFocus();
        return;
    }
    Q_EMIT withdrawalWanted(check->id, reason);
}

bool ItemView::hasUnsavedChanges() const
{
    return !m_reason->text().trimmed().isEmpty();
}

void ItemView::markWithdrawn()
{
    m_reason->clear();
    m_notice->say(State::Good, tr("Taken back: the check stays in the book and does not count."));
}

void ItemView::takeFocus()
{
    if (!m_held.checks.empty())
        m_checksTable->setFocus();
    else if (m_check->isEnabled())
        m_check->setFocus();
    else
        m_change->setFocus(); // out of use: nothing is checked
}

void ItemView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
