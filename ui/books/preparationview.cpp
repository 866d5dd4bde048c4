// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/preparationview.h"

#include "core/evaluation/format.h"
#include "ui/books/factsmodel.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/losspanel.h"
#include "ui/shared/notice.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

std::vector<QStringList> factsOf(const planning::HeldPreparation &held)
{
    const planning::Substance &of = held.of;
    const planning::Preparation &made = held.preparation;
    const planning::StrengthMade strength = planning::strengthOf(of, made);
    std::vector<QStringList> facts;
    const auto add = [&facts](const QString &what, const QString &value) {
        if (!value.isEmpty())
            facts.push_back({what, value});
    };
    add(PreparationView::tr("Strength when made (k = 2)"), strengthText(strength));
    for (const planning::StrengthTerm &term : strength.budget)
        add(PreparationView::tr("Share of the variance: %1").arg(term.term),
            withUnit(QString::number(100 * term.share, 'f', 1), u"%"_s));
    QStringList masses;
    for (const double mass_mg : made.masses_mg)
        masses << plainText(mass_mg);
    add(PreparationView::tr("Weighed (u of each)"),
        PreparationView::tr("%1 (%2)").arg(withUnit(masses.join(u" + "_s), u"mg"_s),
                                           withUnit(plainText(made.mass_u_mg), u"mg"_s)));
    add(PreparationView::tr("Flask (u)"),
        PreparationView::tr("%1 (%2)").arg(made.flask.isEmpty() ? withUnit(plainText(made.flask_mL), u"mL"_s)
                                                                : made.flask,
                                           withUnit(plainText(made.flask_u_mL), u"mL"_s)));
    add(PreparationView::tr("Analyte molecules per molecule of substance"), plainText(made.analytePerMolecule));
    add(PreparationView::tr("Made, by"),
        PreparationView::tr("%1, %2").arg(momentText(made.madeAt), held.person));
    add(PreparationView::tr("Loss of strength"),
        made.lossPerHour > 0 ? withUnit(plainText(100 * made.lossPerHour), PreparationView::tr("% per hour"))
                             : PreparationView::tr("none is stated"));
    add(PreparationView::tr("Keeps by your own rule"), ownRuleText(made));
    if (const auto last = planning::goodUntil(made))
        add(PreparationView::tr("Use by"), momentText(*last));
    add(PreparationView::tr("Substance"), of.name);
    add(PreparationView::tr("Supplier, lot"),
        QStringList{of.supplier, of.lot}.filter(QRegularExpression(u"."_s)).join(u", "_s));
    add(PreparationView::tr("Certificate"), of.certificate);
    add(PreparationView::tr("Purity"), purityText(of));
    if (of.water > 0)
        add(PreparationView::tr("Moisture"), withUnit(plainText(100 * of.water), u"%"_s));
    add(PreparationView::tr("Molar mass"), withUnit(plainText(of.molarMass_g_per_mol), u"g/mol"_s));
    add(PreparationView::tr("Note"), made.note);
    add(PreparationView::tr("Discarded because"), held.discarded.value_or(QString()));
    return facts;
}

} // namespace

PreparationView::PreparationView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_notice(new Notice(theme, this))
    , m_facts(new FactsModel(this, {1}))
    , m_factsTable(new Table(theme, m_facts, tr("How it was made"), u"preparationFacts"_s, this))
    , m_runs(new FactsModel(this, {1}))
    , m_runsTable(new Table(theme, m_runs, tr("Runs that used it"), u"preparationRuns"_s, this))
    , m_noRuns(plainLabel(tr("No run has used it yet. New run offers it while it can be used."), this))
    , m_loss(new LossPanel(theme, this))
    , m_disposal(new QWidget(this))
{
    QWidget *header = buildHeader();
    m_facts->show({tr("Item"), tr("Value")}, {});
    m_runs->show({tr("Run"), tr("Started"), tr("Age at use"), tr("Recovery")}, {});
    m_factsTable->setFlexibleColumn(1);
    m_factsTable->setWrap(Table::Wrap::AsNeeded);
    m_runsTable->setFlexibleColumn(0);
    m_runsTable->setWrap(Table::Wrap::AsNeeded);
    m_noRuns->setWordWrap(true);
    m_noRuns->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto *caption = new QLabel(tr("Discarded b&ecause"), m_disposal);
    m_reason = new QLineEdit(m_disposal);
    m_reason->setObjectName(u"preparationReason"_s);
    m_reason->setAccessibleName(tr("Discarded because"));
    m_reason->setMinimumHeight(theme.target());
    caption->setBuddy(m_reason);
    auto *away = button(theme, tr("D&iscard"), u"discardPreparation"_s, m_disposal);
    auto *row = new QHBoxLayout(m_disposal);
    row->setContentsMargins({});
    row->addWidget(caption);
    row->addWidget(m_reason, 1);
    row->addWidget(away);
    auto *used = plainLabel(tr("Runs that used it"), this);
    used->setFont(theme.bold());
    auto *right = new QVBoxLayout;
    right->addWidget(used);
    right->addWidget(m_noRuns, 1);
    right->addWidget(m_runsTable, 1);
    auto *life = plainLabel(tr("Recovery over its life, for all of this substance"), this);
    life->setFont(theme.bold());
    right->addWidget(life);
    right->addWidget(m_loss, 2);
    right->addWidget(m_disposal);
    auto *body = new QHBoxLayout;
    body->setSpacing(theme.wideGap());
    body->addWidget(m_factsTable, 1);
    body->addLayout(right, 1);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(header);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    connect(away, &QPushButton::clicked, this, &PreparationView::discard);
    connect(m_reason, &QLineEdit::returnPressed, this, &PreparationView::discard);
    connect(m_runsTable, &Table::activated, this, [this](const QModelIndex &index) {
        Q_EMIT runWanted(m_shownRuns[static_cast<std::size_t>(index.row())].run);
    });
}

QWidget *PreparationView::buildHeader()
{
    auto *header = new QWidget(this);
    m_shape = new QLabel(header);
    m_title = new ElidingLabel(header);
    m_title->setFont(m_theme.large());
    m_title->setObjectName(u"preparationTitle"_s);
    m_now = plainLabel({}, header);
    m_now->setWordWrap(true);
    m_now->setObjectName(u"preparationNow"_s);
    m_label = button(m_theme, tr("&Label as PDF…"), u"labelPreparation"_s, header);
    auto *back = button(m_theme, tr("Back to the list  Esc"), u"backToStandards"_s, header);
    connect(m_label, &QPushButton::clicked, this, &PreparationView::labelWanted);
    connect(back, &QPushButton::clicked, this, &PreparationView::closed);
    auto *names = new QVBoxLayout;
    names->setSpacing(0);
    names->addWidget(m_title);
    names->addWidget(m_now);
    auto *layout = new QHBoxLayout(header);
    layout->setContentsMargins({});
    layout->addWidget(m_shape);
    layout->addLayout(names, 1);
    layout->addWidget(m_label);
    layout->addWidget(back);
    return header;
}

void PreparationView::show(const planning::HeldPreparation &held, const std::vector<PreparationRun> &runs,
                           const QDateTime &now)
{
    if (held.id != m_held.id) {
        m_notice->clear();
        m_reason->clear();
    }
    m_held = held;
    m_shownRuns = runs;
    m_title->setText(tr("%1 of %2").arg(held.preparation.name, held.of.name));
    m_facts->show({tr("Item"), tr("Value")}, factsOf(held));
    std::vector<QStringList> rows;
    for (const PreparationRun &run : runs)
        rows.push_back({run.title, momentText(run.at),
                        run.age_h ? withUnit(QString::number(*run.age_h, 'f', 1), u"h"_s) : QString(),
                        run.recovery_percent
                            ? withUnit(QString::number(*run.recovery_percent, 'f', 1), u"%"_s)
                            : QString()});
    m_runs->show({tr("Run"), tr("Started"), tr("Age at use"), tr("Recovery")}, std::move(rows));
    m_factsTable->fit();
    m_runsTable->fit();
    m_runsTable->setVisible(!runs.empty());
    m_noRuns->setVisible(runs.empty());
    m_disposal->setVisible(!held.discarded);
    tick(now);
}

void PreparationView::showLife(std::vector<charts::AgedRecovery> recoveries,
                               std::optional<double> statedPerHour)
{
    m_loss->setRecoveries(std::move(recoveries), statedPerHour);
}

void PreparationView::tick(const QDateTime &now)
{
    const PreparationStanding standing = standingOf(m_held, now);
    const QString stands = tr("Now %1; %2.").arg(strengthNowText(m_held, now), standing.words);
    m_now->setText(m_held.discarded
                       ? evaluation::capitalised(standing.words) + u'.'
                       : withDecimalSigns(u"%1 %2"_s.arg(stands, whyGoodUntil(m_held.preparation)).trimmed()));
    const int side = fontMetrics().height() * 5 / 4;
    m_shape->setPixmap(m_theme.icon(standing.shape).pixmap(side, side));
    m_shape->setAccessibleName(standing.words);
}

void PreparationView::discard()
{
    const QString reason = m_reason->text().simplified();
    if (reason.isEmpty()) {
        m_notice->say(State::Attention, tr("Say why; the book keeps it."));
        m_reason->setFocus();
        return;
    }
    Q_EMIT discardWanted(reason);
}

bool PreparationView::hasUnsavedChanges() const
{
    return !m_reason->text().trimmed().isEmpty();
}

void PreparationView::markDiscarded()
{
    m_reason->clear();
    m_notice->say(State::Good, tr("Discarded: it is not offered any more; the runs that used it keep it."));
}

void PreparationView::takeFocus()
{
    m_label->setFocus();
}

void PreparationView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
