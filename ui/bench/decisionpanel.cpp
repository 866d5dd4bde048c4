// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/decisionpanel.h"

#include "core/evaluation/format.h"
#include "core/evaluation/settled.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/repeathow.h"
#include "ui/bench/reviewrulewords.h"
#include "ui/bench/samplechoicesmodel.h"
#include "ui/bench/samplechoicestable.h"
#include "ui/bench/signaturefields.h"
#include "ui/shared/guard.h"
#include "ui/shared/offerfield.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/widgets.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QTimer>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

bool isLow(const QWidget &window)
{
    constexpr int lowWindow = 56; // lines
    return window.height() < lowWindow * window.fontMetrics().lineSpacing();
}

/// A low window has to hold the results and their checks as well; the others can be scrolled to.
int rowsShown(const QWidget &window)
{
    return isLow(window) ? 3 : 5;
}

bool isAllAsRun(const std::vector<SampleChoiceRow> &rows)
{
    return std::ranges::all_of(rows,
                               [](const SampleChoiceRow &row) { return row.choice == SampleChoice::AsRun; });
}

} // namespace

DecisionPanel::DecisionPanel(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_choices(new SampleChoicesModel(theme, this))
    , m_notice(new Notice(theme, this))
    , m_bySample(button(theme, tr("Sa&mple by sample"), u"bySample"_s, this))
    , m_table(new SampleChoicesTable(theme, m_choices, this))
    , m_hint(plainLabel(SampleChoicesTable::keysHint(), this))
    , m_happens(plainLabel({}, this))
    , m_rules(plainLabel({}, this))
    , m_signature(new SignatureFields(theme, tr("&Decided by"), tr("Pa&ssphrase"), u"decision"_s, this))
    , m_reason(new OfferField(this))
    , m_accept(button(theme, tr("&Accept"), u"acceptRun"_s, this))
    , m_reject(button(theme, tr("Re&ject"), u"rejectRun"_s, this))
{
    build(theme);
    connect(m_accept, &QPushButton::clicked, this, [this] { decide(notebook::DecisionKind::Accepted); });
    connect(m_reject, &QPushButton::clicked, this, [this] { decide(notebook::DecisionKind::Rejected); });
    connect(m_bySample, &QPushButton::clicked, this, [this](bool open) {
        // Its key leads to the table; the same key there, or the mouse, folds it.
        open = open || !(m_bySample->hasFocus() || isAtSamples());
        unfoldByHand(open);
        if (open)
            m_table->setFocus();
    });
    connect(m_choices, &SampleChoicesModel::edited, this, [this] {
        m_notice->clear();
        sayWhatHappens();
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) {
                if (current.isValid())
                    Q_EMIT sampleChosen(m_choices->row(current.row()).sample);
            });
    connect(&session, &BenchSession::rackChanged, this, &DecisionPanel::follow);
    connect(&session, &BenchSession::personChanged, this,
            [this] { m_signature->setName(usualName()); });
    connect(m_signature, &SignatureFields::edited, m_notice, &Notice::clear);
    connect(m_signature, &SignatureFields::forgotten, this, [this] {
        m_notice->say(State::Info, tr("The passphrase was taken out, since nobody did anything for a minute: type it again."));
    });
    // Enter alone decides nothing; it leads to what would.
    connect(m_signature, &SignatureFields::returnPressed, this,
            [this] { (m_accept->isEnabled() ? m_accept : m_reject)->setFocus(); });
    connect(m_reason, &QLineEdit::textEdited, m_notice, &Notice::clear);
    connect(m_reason, &QLineEdit::returnPressed, this,
            [this] { (m_accept->isEnabled() ? m_accept : m_reject)->setFocus(); });
}

void DecisionPanel::build(const Theme &theme)
{
    m_reason->setObjectName(u"decisionReason"_s);
    m_reason->setMinimumHeight(theme.target());
    auto *reasonCaption = new QLabel(tr("R&eason"), this);
    reasonCaption->setBuddy(m_reason);
    m_bySample->setCheckable(true);
    m_happens->setObjectName(u"decisionHappens"_s);
    m_happens->setFont(theme.bold());
    m_happens->setWordWrap(true);
    m_rules->setObjectName(u"decisionRules"_s);
    m_rules->setWordWrap(true);
    m_hint->setObjectName(u"sampleKeys"_s);
    m_hint->setWordWrap(true);

    auto *above = new QHBoxLayout;
    above->setSpacing(theme.gap());
    above->addWidget(m_happens, 1);
    above->addWidget(m_bySample);
    auto *acts = new QHBoxLayout;
    acts->setSpacing(theme.gap());
    acts->addWidget(reasonCaption);
    acts->addWidget(m_reason, 1);
    acts->addWidget(m_accept);
    acts->addWidget(m_reject);
    m_row = new QBoxLayout(QBoxLayout::LeftToRight);
    m_row->setSpacing(theme.gap());
    m_row->addWidget(m_signature, 4);
    m_row->addLayout(acts, 5);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addLayout(above);
    layout->addWidget(m_table);
    layout->addWidget(m_hint);
    layout->addWidget(m_rules);
    layout->addWidget(m_notice);
    layout->addLayout(m_row);
    m_notice->installEventFilter(this);
    unfold(false);
}

void DecisionPanel::showRack(notebook::RunId id)
{
    const bool another = id != m_id;
    if (another) {
        keepDraft();
        m_notice->clear();
    }
    m_id = id;
    if (another) {
        const auto draft = m_drafts.find(id);
        const bool named = draft != m_drafts.end() && !draft->second.name.isEmpty();
        m_signature->setName(named ? draft->second.name : usualName());
        m_reason->setText(draft == m_drafts.end() ? QString() : draft->second.reason);
        m_unfoldedByHand = draft == m_drafts.end() ? std::nullopt : draft->second.unfolded;
        m_choices->show({}); // what was chosen of another rack is no choice of this one
        m_table->clearSelection();
    }
    fill();
    if (another)
        unfold(isToBeUnfolded());
}

DecisionPanel::Draft DecisionPanel::draft() const
{
    const QString name = m_signature->name();
    return {name == m_session.person() ? QString() : name, m_reason->text(), m_choices->rows(),
            m_unfoldedByHand};
}

void DecisionPanel::keepDraft()
{
    if (m_session.find(m_id))
        m_drafts[m_id] = draft();
}

QString DecisionPanel::unfinished(notebook::RunId id) const
{
    const auto kept = m_drafts.find(id);
    if (id != m_id && kept == m_drafts.end())
        return {};
    const Draft typed = id == m_id ? draft() : kept->second;
    QStringList parts;
    if (!typed.name.isEmpty() && m_signature->isName(typed.name))
        parts << tr("by %1").arg(typed.name);
    if (const QString reason = typed.reason.simplified(); !reason.isEmpty())
        parts << tr("reason: %1").arg(reason);
    for (const SampleChoiceRow &row : typed.rows) {
        if (row.touched)
            parts << tr("%1: %2").arg(row.sample, choiceText(row.choice));
    }
    return parts.isEmpty() ? QString() : tr("the decision, not taken yet: %1").arg(parts.join(tr(", ")));
}

void DecisionPanel::goToSample(const QString &sample)
{
    m_table->goToSample(sample);
}

void DecisionPanel::follow(notebook::RunId id)
{
    if (id == m_id)
        fill();
}

void DecisionPanel::fill()
{
    const Rack *rack = m_session.find(m_id);
    if (!rack)
        return;
    std::vector<SampleChoiceRow> kept = m_choices->rows();
    if (kept.empty()) {
        if (const auto draft = m_drafts.find(m_id); draft != m_drafts.end())
            kept = draft->second.rows;
    }
    m_choices->show(withKept(startingChoices(rack->stored.run, rack->evaluation), kept));
    unfoldAsNeeded();
    m_table->setRowsShown(rowsShown(*window()));
    m_table->fit();
    guarded(*m_notice, [this, rack] {
        const std::vector<notebook::Person> persons = m_session.persons();
        const planning::ReviewRules rules = m_session.reviewRules();
        m_signature->setPersons(persons, whoMayDecide(rules, persons, m_session.history(m_id)));
        const QStringList forAccepting = acceptanceReasons();
        m_reason->setOffers(rack->evaluation.acceptable ? rules.rejectionReasons
                                                        : forAccepting + rules.rejectionReasons);
        m_table->setReasons(forAccepting, rules.rejectionReasons);
        m_rules->setText(whoMayNotDecide(rules, persons, m_session.history(m_id)));
        showRules();
    });
    sayWhatHappens();
}

QString DecisionPanel::usualName()
{
    QString name = m_session.person();
    guarded(*m_notice, [&] {
        const std::vector<notebook::Person> persons = m_session.persons();
        if (!persons.empty() && m_id.value != 0 &&
            !whoMayDecide(m_session.reviewRules(), persons, m_session.history(m_id))
                 .contains(name, Qt::CaseInsensitive))
            name.clear();
    });
    return name;
}

/// What was refused stands in place of the rules, so that the row to sign in stays where it is.
void DecisionPanel::showRules()
{
    m_rules->setVisible(m_notice->isHidden() && !m_rules->text().isEmpty());
    m_hint->setVisible(m_notice->isHidden() && m_bySample->isChecked());
}

bool DecisionPanel::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_notice && (event->type() == QEvent::ShowToParent || event->type() == QEvent::HideToParent))
        showRules();
    return QWidget::eventFilter(watched, event);
}

/// Who decides above why and what, where one line would leave a name no room.
void DecisionPanel::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    const QLayout *acts = m_row->itemAt(1)->layout();
    const bool fits = m_signature->sizeHint().width() + m_row->spacing() + acts->sizeHint().width() <= width();
    m_row->setDirection(fits ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_table->setRowsShown(rowsShown(*window()));
    m_hint->setText(isLow(*window()) ? SampleChoicesTable::keysHint()
                                     : SampleChoicesTable::keysHint() + u' ' + SampleChoicesTable::howHint());
}

void DecisionPanel::sayWhatHappens()
{
    QString text = whatHappens(m_choices->rows(), notebook::DecisionKind::Accepted);
    if (const Rack *rack = m_session.find(m_id); rack && rack->stored.summary.revision > 1)
        text = tr("This becomes revision %1. %2").arg(rack->stored.summary.revision).arg(text);
    m_happens->setText(text);
    m_accept->setAccessibleDescription(text);
    m_reject->setAccessibleDescription(whatHappens(m_choices->rows(), notebook::DecisionKind::Rejected));
    m_reject->setToolTip(tipText(m_reject->accessibleDescription()));
}

void DecisionPanel::unfold(bool open)
{
    m_bySample->setChecked(open);
    m_table->setVisible(open);
    showRules();
}

void DecisionPanel::unfoldByHand(bool open)
{
    m_unfoldedByHand = open;
    unfold(open);
    // In a low window it would push who decides, and the act, below the edge; its rows have their places a moment later.
    if (open)
        QTimer::singleShot(0, this, [this] { bringIntoView(*this, rect()); });
}

void DecisionPanel::unfoldAsNeeded()
{
    // Nobody's hands are shut out.
    if (!isAtSamples())
        unfold(isToBeUnfolded());
}

bool DecisionPanel::isToBeUnfolded() const
{
    return m_unfoldedByHand.value_or(!isAllAsRun(m_choices->rows()));
}

bool DecisionPanel::isAtSamples() const
{
    return m_table->hasFocus() || m_table->isAncestorOf(QApplication::focusWidget());
}

bool DecisionPanel::isSettled()
{
    const QStringList open = undecidedSamples(m_choices->rows());
    if (open.isEmpty())
        return true;
    m_notice->say(State::Attention,
                  tr("The run was not accepted: first decide on %1, which must be investigated.")
                      .arg(evaluation::andJoined(open)));
    unfoldByHand(true);
    m_table->goToUndecided();
    m_table->setFocus();
    return false;
}

bool DecisionPanel::repeatsAreReadable()
{
    const int row = unreadableRepeat(m_choices->rows());
    if (row < 0)
        return true;
    const SampleChoiceRow &choice = m_choices->row(row);
    m_notice->say(State::Attention,
                  tr("The run was not decided on: how %1 is to be repeated cannot be read: %2.")
                      .arg(choice.sample, repeatHow(choice.how).fault));
    unfoldByHand(true);
    m_table->goTo(row, SampleChoicesModel::How);
    m_table->setFocus();
    return false;
}

void DecisionPanel::decide(notebook::DecisionKind kind)
{
    // A key of the buttons leaves an open cell where it is; what was typed there counts.
    if (m_table->isAncestorOf(QApplication::focusWidget()))
        m_table->setFocus();
    if (m_signature->name().isEmpty()) {
        m_notice->say(State::Attention, tr("Say who decides: type a name."));
        m_signature->focusName();
        return;
    }
    if ((kind == notebook::DecisionKind::Accepted && !isSettled()) || !repeatsAreReadable())
        return;
    const notebook::RunId id = m_id;
    const notebook::RunDecision decision{kind, m_signature->name(), m_signature->passphrase(),
                                         m_reason->text().simplified(), sampleDecisions(m_choices->rows())};
    if (!m_signature->sign(*m_notice, [&] { m_session.decide(id, decision); })) {
        afterRefusal(kind);
        return;
    }
    m_notice->clear();
    m_reason->clear();
    m_choices->show({});
    m_drafts.erase(id);
    m_id = {};
    Q_EMIT decided(id);
}

void DecisionPanel::afterRefusal(notebook::DecisionKind kind)
{
    const Rack *rack = m_session.find(m_id);
    const bool isAnswered =
        rack && (rack->evaluation.acceptable ||
                 evaluation::isReportableBut(rack->evaluation, answeredSamples(m_choices->rows())));
    const bool needsReason = kind == notebook::DecisionKind::Rejected || !isAnswered;
    if (m_signature->isSigned() && !(needsReason && m_reason->text().simplified().isEmpty()))
        m_signature->focusRefused();
    else
        m_reason->setFocus();
}

} // namespace plateau::ui
