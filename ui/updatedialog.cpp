// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/updatedialog.h"

#include "ui/books/longtask.h"
#include "ui/shared/widgets.h"

#include <QDir>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include <tuple>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr int wholeStage = 1000;

} // namespace

UpdateDialog::UpdateDialog(const QString &notebook, QWidget *parent)
    : QDialog(parent)
    , m_notebook(notebook)
    , m_task(new LongTask(this))
    , m_doing(plainLabel({}, this))
    , m_progress(new QProgressBar(this))
    , m_stop(new QPushButton(tr("&Stop"), this))
{
    setWindowTitle(tr("Notebook"));
    setWindowIcon(QIcon(u":/icons/plateau.svg"_s));
    auto *what = plainLabel(tr("The notebook %1 was last used with an older Plateau and is being brought up "
                               "to date; a copy of it as it is now stays beside it.")
                                .arg(QDir::toNativeSeparators(notebook)),
                            this);
    what->setWordWrap(true);
    m_doing->setObjectName(u"updateStage"_s);
    m_progress->setObjectName(u"updateProgress"_s);
    m_progress->setAccessibleName(tr("Progress"));
    m_progress->setRange(0, wholeStage);
    m_stop->setObjectName(u"stopUpdate"_s);
    auto *layout = new QVBoxLayout(this);
    for (QWidget *each : std::initializer_list<QWidget *>{what, m_doing, m_progress, m_stop})
        layout->addWidget(each);
    setMinimumWidth(fontMetrics().averageCharWidth() * 70);
    connect(m_stop, &QPushButton::clicked, this, &UpdateDialog::reject);
    connect(m_task, &LongTask::stopped, this, [this] { done(Rejected); });
    say(notebook::UpdateStage::Checking, 0, 1);
}

void UpdateDialog::showEvent(QShowEvent *event)
{
    QDialog::showEvent(event);
    if (m_begun)
        return;
    m_begun = true;
    m_task->start([this, path = m_notebook](const notebook::Watch &watch) -> std::function<void()> {
        auto told = std::tuple(notebook::UpdateStage::Checking, 0, 0);
        const auto tell = [&](notebook::UpdateStage stage, qint64 done, qint64 of) {
            // The engine asks some thousand times a second; the window is told what it can show.
            const auto steps = stage == notebook::UpdateStage::Changing ? of : qint64(wholeStage);
            const auto now =
                std::tuple(stage, of > 0 ? static_cast<int>(steps * done / of) : 0, static_cast<int>(steps));
            if (now != told) {
                told = now;
                QMetaObject::invokeMethod(
                    this, [this, now] { std::apply([this](auto... is) { say(is...); }, now); });
            }
            return watch(done, of);
        };
        try {
            notebook::updateNotebook(path, tell);
            return [this] { done(Accepted); };
        } catch (const notebook::Failure &failure) {
            return [this, failure] {
                m_failure = failure;
                done(Rejected);
            };
        }
    });
}

void UpdateDialog::say(notebook::UpdateStage stage, int done, int of)
{
    switch (stage) {
    case notebook::UpdateStage::Checking:
        m_doing->setText(tr("Looking through it"));
        break;
    case notebook::UpdateStage::Copying:
        m_doing->setText(tr("Making the copy"));
        break;
    case notebook::UpdateStage::Changing:
        m_doing->setText(tr("Bringing its tables up to date, step %1 of %2").arg(done + 1).arg(of));
        break;
    case notebook::UpdateStage::Indexing:
        m_doing->setText(tr("Rebuilding the index of the runs"));
        break;
    }
    m_progress->setValue(of > 0 ? wholeStage * done / of : 0);
}

void UpdateDialog::reject()
{
    if (!m_task->isRunning()) {
        QDialog::reject();
        return;
    }
    m_stop->setEnabled(false);
    m_stop->setText(tr("Stopping …"));
    m_task->stop();
}

} // namespace plateau::ui
