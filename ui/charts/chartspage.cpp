// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/chartspage.h"

#include "core/assay/listed.h"
#include "core/charts/chartwords.h"
#include "core/evaluation/format.h"
#include "ui/charts/chartexport.h"
#include "ui/charts/chartview.h"
#include "ui/charts/pointpanel.h"
#include "ui/charts/settingsform.h"
#include "ui/charts/subjectform.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/guard.h"
#include "ui/shared/losspanel.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/widgets.h"

#include <QLabel>
#include <QPushButton>

#include <algorithm>

#ifdef __GLIBC__
#include <malloc.h>
#endif

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// What stands in the list of findings where there are none.
Sentence verdictOn(const charts::ControlChart &chart)
{
    if (chart.settings.kind == charts::Kind::Trend)
        return {State::Good, ChartsPage::tr("Nothing lies beyond a limit.")};
    if (charts::hasVerdict(chart))
        return {State::Good, ChartsPage::tr("Nothing is out of control.")};
    return {State::Info, chart.basis
                             ? ChartsPage::tr("Nothing stands out against the provisional limits. That is no "
                                              "verdict yet.")
                             : ChartsPage::tr("No verdict: this chart has no limits.")};
}

/// A list that no one reads to its end says the newest and how many there are.
constexpr std::size_t mostSentences = 200;

/// To read and to draw a hundred thousand values takes some 10 MB for a moment, which the C library would keep for a
/// next time.
void giveBackAfter([[maybe_unused]] std::size_t values)
{
#ifdef __GLIBC__
    constexpr std::size_t many = 10'000;
    if (values > many)
        malloc_trim(0);
#endif
}

QString nothingMeasured()
{
    return ChartsPage::tr("Nothing of this kind has been decided yet. Accept runs with standards, controls, "
                          "blanks or duplicates in Review; they appear here by themselves.");
}

} // namespace

ChartsPage::ChartsPage(const Theme &theme, Dialogs &dialogs, notebook::Notebook &notebook,
                       std::function<QString()> person, QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_dialogs(dialogs)
    , m_source(notebook, std::move(person))
    , m_notice(new Notice(theme, this))
    , m_subjectForm(new SubjectForm(theme, m_source, this))
    , m_view(new ChartView(theme, tr("Control chart"), this))
    , m_point(new PointPanel(theme, this))
    , m_basis(plainLabel({}, this))
    , m_findings(new SentenceList(theme, tr("What is out of control"), u"chartFindings"_s, this))
    , m_side(nullptr)
    , m_settings(new SettingsForm(theme, this))
    , m_loss(new LossPanel(theme, this))
{
    m_view->setObjectName(u"controlChart"_s);
    m_view->setNothing(nothingMeasured());
    m_settings->setSettings(charts::Quantity::StandardRecovery, m_saved);
    build();
    connectParts();
}

void ChartsPage::connectParts()
{
    connect(m_subjectForm, &SubjectForm::quantityChanged, this, [this] {
        guarded(*m_notice, [this] { m_subjectForm->refresh(); });
        readSubject();
    });
    connect(m_subjectForm, &SubjectForm::subjectChanged, this, &ChartsPage::readSubject);
    connect(m_subjectForm, &SubjectForm::filterChanged, this, &ChartsPage::draw);
    connect(m_settings, &SettingsForm::changed, this, &ChartsPage::draw);
    connect(m_settings, &SettingsForm::saveWanted, this, &ChartsPage::save);
    connect(m_settings, &SettingsForm::beginWanted, this, [this] {
        if (const auto point = m_view->chosen()) {
            m_notice->clear();
            m_settings->setFirstRun(m_view->chart().series[*point].run->run);
        } else
            m_notice->say(State::Info, tr("First choose the point at which the limits are to begin."));
    });
    connect(m_view, &ChartView::pointChosen, this, &ChartsPage::choosePoint);
    connect(m_view, &ChartView::pointOpened, this, &ChartsPage::openRun);
    connect(m_point, &PointPanel::openWanted, this, [this] {
        if (const auto point = m_view->chosen())
            openRun(static_cast<int>(*point));
    });
    connect(m_point, &PointPanel::omissionWanted, this, &ChartsPage::omit);
    const auto goTo = [this](const QModelIndex &index) {
        const auto row = static_cast<std::size_t>(index.row());
        if (index.isValid() && row < m_findingPoints.size())
            m_view->choose(m_findingPoints[row]);
    };
    connect(m_findings, &QListView::activated, this, goTo);
    connect(m_findings, &QListView::clicked, this, goTo);
}

void ChartsPage::open()
{
    m_notice->clear();
    m_subjectForm->takeFocus();
}

QString ChartsPage::unstored() const
{
    const bool isTyped = m_subject && m_settings->settings() != m_saved;
    const QStringList parts =
        (isTyped ? QStringList{tr("settings of a control chart that are not saved yet")} : QStringList{}) +
        (m_point->reason().isEmpty() ? QStringList{}
                                     : QStringList{tr("a reason at a point of a control chart")});
    return evaluation::capitalised(parts.join(tr(" and ")));
}

void ChartsPage::show(const charts::Subject &subject)
{
    guarded(*m_notice, [&] {
        m_source.refresh();
        m_subjectForm->choose(subject);
    });
    if (m_subjectForm->subject() != subject)
        m_notice->say(State::Info,
                      tr("Nothing of %1 has been decided yet; another chart is shown.").arg(subject.name));
}

void ChartsPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    refresh();
}

void ChartsPage::refresh()
{
    guarded(*m_notice, [this] {
        m_source.refresh();
        m_subjectForm->refresh();
    });
    readSubject();
}

void ChartsPage::readSubject()
{
    const auto subject = m_subjectForm->subject();
    // What was typed for one chart is not carried to another, but stays while its runs are read anew.
    const bool isAnother = subject != m_subject;
    m_subject = subject;
    m_series = {};
    if (subject) {
        guarded(*m_notice, [&] {
            m_series = m_source.series(*subject);
            m_saved = m_source.settings(*subject);
        });
    }
    m_subjectForm->setRuns(m_series);
    if (isAnother)
        m_settings->setSettings(subject ? subject->quantity : charts::Quantity::StandardRecovery, m_saved);
    sayOrigin();
    draw();
    showLoss();
    giveBackAfter(m_series.size());
}

void ChartsPage::sayOrigin()
{
    std::optional<ChartSource::KeptSettings> kept;
    if (m_subject)
        guarded(*m_notice, [&] { kept = m_source.kept(*m_subject); });
    if (!kept) {
        m_settings->setOrigin(tr("Not saved yet: these are the usual settings."));
        return;
    }
    const notebook::StoredChartSettings &stored = kept->stored;
    const QString version =
        kept->isOfAll ? tr("Version %1 for all materials together, saved by %2, %3. It holds for this one "
                           "until its own settings are saved.")
                      : tr("Version %1, saved by %2, %3.");
    QStringList sentences{version.arg(QString::number(stored.version), stored.person, momentText(stored.at))};
    if (m_saved != stored.settings)
        sentences << tr("It was saved with fewer values than limits need; here their number is raised.");
    m_settings->setOrigin(sentences.join(u' '));
}

void ChartsPage::draw()
{
    const QString fault = m_subjectForm->fault().isEmpty() ? m_settings->fault() : m_subjectForm->fault();
    if (!fault.isEmpty())
        m_notice->say(State::Attention, fault); // the chart stays as it was last
    else if (m_notice->sentence() == m_saidFault)
        m_notice->clear();
    m_saidFault = fault;
    if (const auto settings = m_settings->settings(); settings && m_subjectForm->fault().isEmpty())
        drawChart(*settings);
}

void ChartsPage::drawChart(const charts::Settings &settings)
{
    const charts::Subject subject = m_subject.value_or(charts::Subject{});
    charts::ControlChart chart = charts::controlChart(subject, m_series, m_subjectForm->filter(), settings);
    ProductLimits limits;
    QStringList sources;
    if (charts::isTrend(subject.quantity) && !chart.series.empty()) {
        guarded(*m_notice, [&] {
            for (const ChartSource::ProductLimit &limit :
                 m_source.productLimits(subject, chart.series.front().unit)) {
                if (limit.lower)
                    limits.push_back({LevelLine::Kind::Limit, *limit.lower,
                                      tr("limit %1").arg(shownNumber(charts::valueText(chart, *limit.lower, {})))});
                if (limit.upper)
                    limits.push_back({limit.isThreshold ? LevelLine::Kind::Threshold : LevelLine::Kind::Limit,
                                      *limit.upper,
                                      (limit.isThreshold ? tr("threshold %1") : tr("limit %1"))
                                          .arg(shownNumber(charts::valueText(chart, *limit.upper, {})))});
                if (!limit.isThreshold)
                    charts::holdAgainst(chart, limit.lower, limit.upper);
                sources << limit.text;
            }
        });
    }
    m_view->setNothing(
        m_series.empty()
            ? nothingMeasured()
            : tr("No run matches what is chosen above. Clear the lot, the person or a day to see more."));
    const bool isTrend = charts::isTrend(subject.quantity);
    const QString limitsText =
        sources.isEmpty()
            ? tr("No limits are kept for this product. Bars are expanded uncertainties.")
            : tr("Limits of the product: %1. Bars are expanded uncertainties.").arg(assay::listed(sources));
    m_basis->setText(withDecimalSigns(isTrend ? limitsText : charts::basisSentence(chart)));
    m_view->setChart(subject, std::move(chart), limits);
    m_point->setPoint(m_view->chart(), m_view->chosen());
    listFindings();
}

void ChartsPage::listFindings()
{
    const charts::ControlChart &chart = m_view->chart();
    struct Line {
        std::size_t point;
        Sentence sentence;
    };
    std::vector<Line> lines;
    for (const charts::Panel &panel : chart.panels) {
        for (const charts::Finding &finding : panel.findings)
            lines.push_back({panel.marks[finding.completed].last,
                             {charts::isWarning(finding) ? State::Attention : State::Bad,
                              charts::findingSentence(chart, panel, finding)}});
    }
    std::ranges::stable_sort(lines, std::ranges::greater(), &Line::point);
    std::vector<Sentence> sentences;
    m_findingPoints.clear();
    for (Line &line : lines) {
        if (sentences.size() == mostSentences) {
            sentences.push_back({State::Info, tr("And %1 more before these; choose days above to see them.")
                                                  .arg(lines.size() - mostSentences)});
            break;
        }
        sentences.push_back(std::move(line.sentence));
        m_findingPoints.push_back(line.point);
    }
    if (sentences.empty() && !chart.series.empty())
        sentences.push_back(verdictOn(chart));
    m_findings->setSentences(std::move(sentences));
}

void ChartsPage::showLoss()
{
    const bool isOfStandards = m_subject && (m_subject->quantity == charts::Quantity::StandardRecovery);
    m_side->setTabVisible(1, isOfStandards);
    if (!isOfStandards)
        return;
    std::optional<double> stated = m_source.statedLossPerHour(m_subject->methodId);
    // Where the method leaves it open, the newest run that says anything stands in.
    const charts::Series &points = m_series.points();
    for (auto point = points.rbegin(); !stated && point != points.rend(); ++point) {
        if (point->standard)
            stated = point->standard->lossPerHour;
    }
    m_loss->setRecoveries(charts::agedRecoveries(m_series), stated);
}

void ChartsPage::choosePoint(int point)
{
    m_point->setPoint(m_view->chart(), static_cast<std::size_t>(point));
}

void ChartsPage::openRun(int point)
{
    Q_EMIT runWanted({m_view->chart().series[static_cast<std::size_t>(point)].run->run});
}

void ChartsPage::omit(const QString &reason)
{
    const auto chosen = m_view->chosen();
    if (!chosen || !m_subject || !personIsKnown())
        return;
    const charts::Point &point = m_view->chart().series[*chosen];
    const notebook::ChartValue value{m_subject->quantity, {point.run->run}, m_subject->measurand, point.name};
    const bool isStored = guarded(*m_notice, [&] {
        if (point.omission)
            m_source.takeBack(value, reason);
        else
            m_source.leaveOut(value, reason);
        m_series = m_source.series(*m_subject);
    });
    if (!isStored)
        return;
    m_notice->clear();
    m_point->clearReason();
    draw();
    showLoss();
}

void ChartsPage::save()
{
    if (!m_subject || !personIsKnown())
        return;
    const auto settings = m_settings->settings();
    if (!settings) {
        m_notice->say(State::Attention, m_settings->fault());
        return;
    }
    bool isNew = false;
    if (!guarded(*m_notice, [&] { isNew = m_source.save(*m_subject, *settings); }))
        return;
    m_saved = *settings;
    sayOrigin();
    m_notice->say(isNew ? State::Good : State::Info,
                  isNew ? tr("The settings of this chart are saved; those before stay on record.")
                        : tr("There is nothing to save: it was saved like this already."));
}

void ChartsPage::saveFile()
{
    if (!m_subject)
        return;
    const QString title = evaluation::capitalised(charts::quantityName(m_subject->quantity));
    const QString path = m_dialogs.fileToSave(this, tr("Save the chart"), tr("%1.png").arg(title),
                                              tr("Picture (*.png);;Drawing (*.svg);;Table (*.csv)"));
    if (path.isEmpty())
        return;
    const QString fault = saveChart(*m_view, title, path);
    if (fault.isEmpty())
        m_notice->sayDone(tr("The chart is saved as %1.").arg(path));
    else
        m_notice->say(State::Bad, fault);
}

bool ChartsPage::personIsKnown()
{
    if (!m_source.person().isEmpty())
        return true;
    m_notice->say(
        State::Info,
        tr("First say who is at the bench: type your name on the left and press Enter, then do it again."));
    Q_EMIT personWanted();
    return false;
}

} // namespace plateau::ui
