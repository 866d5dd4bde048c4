// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/firststart.h"

#include "ui/help/helpdesk.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/notice.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QDir>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

FirstStart::FirstStart(const Theme &theme, Dialogs &dialogs, const StartOccasion &occasion, QWidget *parent)
    : QDialog(parent)
    , m_theme(theme)
    , m_dialogs(dialogs)
    , m_make(new QRadioButton(tr("&Make a notebook for your laboratory"), this))
    , m_use(new QRadioButton(tr("&Use a notebook that is there already"), this))
    , m_sample(new QRadioButton(tr("&Try the sample notebook"), this))
    , m_notice(new Notice(theme, this))
    , m_help(new HelpDesk(theme, *this))
    , m_begin(button(theme, tr("&Begin"), u"firstBegin"_s, this))
{
    const QString &missing = occasion.missing;
    setWindowTitle(occasion.isBesideAnother ? tr("Plateau: another notebook") : tr("Plateau: the first start"));
    setWindowIcon(QIcon(u":/icons/plateau.svg"_s));
    auto *heading =
        plainLabel(occasion.isBesideAnother ? tr("Which notebook?") : tr("Where is the notebook?"), this);
    heading->setFont(theme.large());
    auto *lead = plainLabel(occasion.isBesideAnother
                                ? tr("It opens in a window of its own; the one that is open now stays as it is.")
                                : tr("Plateau keeps runs, readings, lots and decisions in one file, the notebook. "
                                     "It is only ever added to, and backed up automatically."),
                            this);
    lead->setWordWrap(true);
    auto *sampleText =
        plainLabel(tr("The bench, the books and the control charts of an invented company that makes cider "
                      "and packs dried fruit. It is a copy, thrown away when the window closes."),
                   this);
    sampleText->setWordWrap(true);
    sampleText->setIndent(theme.wideGap() * 2);
    m_make->setObjectName(u"firstMake"_s);
    m_use->setObjectName(u"firstUse"_s);
    m_sample->setObjectName(u"firstSample"_s);
    QWidget *make = makePart(occasion.newPath);
    QWidget *use = usePart(missing);
    alignParts(*make, *use);
    setHelp(*this, {u"first-rack"_s, {}});
    auto *firstRack = button(theme, tr("A first rac&k in ten minutes"), u"firstRackHelp"_s, this);
    firstRack->setToolTip(tr("The help for the first minutes with the sample notebook; F1 opens it as well"));
    auto *leave = button(theme, tr("C&lose"), u"firstLeave"_s, this);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(firstRack);
    buttons->addStretch();
    buttons->addWidget(m_begin);
    buttons->addWidget(leave);
    m_begin->setDefault(true);

    auto *ways = new QVBoxLayout;
    ways->setSpacing(theme.gap());
    for (QWidget *part :
         std::initializer_list<QWidget *>{heading, lead, m_make, make, m_use, use, m_sample, sampleText})
        ways->addWidget(part);
    if (occasion.isBesideAnother) {
        m_next = new QCheckBox(tr("&Open this notebook whenever the program starts"), this);
        m_next->setObjectName(u"firstNext"_s);
        m_next->setChecked(occasion.isFirstOfOwn);
        ways->addSpacing(theme.wideGap());
        ways->addWidget(m_next);
        connect(m_sample, &QRadioButton::toggled, m_next, &QWidget::setDisabled);
    }
    ways->addStretch();
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(scrolled(ways, this), 1);
    layout->addWidget(m_notice);
    layout->addLayout(buttons);

    connect(m_make, &QRadioButton::toggled, make, &QWidget::setEnabled);
    connect(m_use, &QRadioButton::toggled, use, &QWidget::setEnabled);
    for (const QRadioButton *way : {m_make, m_use, m_sample})
        connect(way, &QRadioButton::toggled, this, &FirstStart::judge);
    connect(firstRack, &QPushButton::clicked, this, [this] { callHelp(*this); });
    connect(m_begin, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    use->setEnabled(false);
    (missing.isEmpty() ? m_make : m_use)->setChecked(true);
    judge();
    if (!missing.isEmpty())
        sayFault((QFileInfo::exists(missing)
                      ? tr("The notebook %1 could not be opened. Choose another one here, such as a backup of it, or make "
                           "a new one.")
                      : tr("The notebook %1 is not there. See that its disk is connected and begin again, or choose "
                           "where it is now."))
                     .arg(QDir::toNativeSeparators(missing)));
    // As wide as a usual path needs beside the longest caption. Wrapped text asks for its height only once there is a
    // width; two lines more, for the longest sentence of the notice.
    const int width = fontMetrics().averageCharWidth() * 120;
    const int rest = layout->totalSizeHint().height() - ways->totalSizeHint().height();
    resizeOnScreen(*this, {width, ways->totalHeightForWidth(width) + rest + 2 * fontMetrics().lineSpacing()});
    (missing.isEmpty() ? m_laboratory : m_oldPath)->setFocus();
}

QLineEdit *FirstStart::field(const QString &name, const QString &text)
{
    auto *line = new QLineEdit(text, this);
    line->setObjectName(name);
    line->setMinimumHeight(m_theme.target());
    connect(line, &QLineEdit::textChanged, this, &FirstStart::judge);
    return line;
}

QLineEdit *FirstStart::pathField(const QString &name, const QString &path)
{
    auto *line = field(name, path);
    const auto tellWhole = [line](const QString &whole) { line->setToolTip(whole.isEmpty() ? QString() : tipText(whole)); };
    tellWhole(path);
    connect(line, &QLineEdit::textChanged, line, tellWhole);
    return line;
}

QWidget *FirstStart::withChooser(QLineEdit *line, const QString &buttonText, const QString &buttonName,
                                 bool isNew)
{
    auto *choose = button(m_theme, buttonText, buttonName, this);
    connect(choose, &QPushButton::clicked, this, [this, line, isNew] {
        const QString filter = tr("Notebooks (*.plateau);;All files (*)");
        const QString path =
            isNew ? m_dialogs.fileToSave(this, tr("Make a notebook"), u"notebook.plateau"_s, filter)
                  : m_dialogs.fileToOpen(this, tr("Use a notebook"), filter);
        if (!path.isEmpty())
            line->setText(QDir::toNativeSeparators(path));
    });
    auto *row = new QWidget(this);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins({});
    layout->addWidget(line, 1);
    layout->addWidget(choose);
    row->setFocusProxy(line);
    return row;
}

QWidget *FirstStart::makePart(const QString &newPath)
{
    auto *part = new QWidget(this);
    auto *form = new QFormLayout(part);
    form->setContentsMargins(m_theme.wideGap() * 2, 0, 0, 0);
    m_laboratory = field(u"firstLaboratory"_s, {});
    m_person = field(u"firstPerson"_s, {});
    m_newPath = pathField(u"firstNewPath"_s, QDir::toNativeSeparators(newPath));
    addFormRow(form, tr("Laborator&y's name"), m_laboratory, u"firstLaboratory"_s);
    addFormRow(form, tr("Your &name, as it stands on records"), m_person, u"firstPerson"_s);
    addFormRow(form, tr("&File"), withChooser(m_newPath, tr("&Elsewhere…"), u"firstNewChoose"_s, true),
               u"firstNewPath"_s);
    return part;
}

QWidget *FirstStart::usePart(const QString &missing)
{
    auto *part = new QWidget(this);
    auto *form = new QFormLayout(part);
    form->setContentsMargins(m_theme.wideGap() * 2, 0, 0, 0);
    m_oldPath = pathField(u"firstOldPath"_s, QDir::toNativeSeparators(missing));
    addFormRow(form, tr("F&ile"), withChooser(m_oldPath, tr("&Choose…"), u"firstOldChoose"_s, false),
               u"firstOldPath"_s);
    return part;
}

/// The fields of both parts stand below each other, as if they were one form.
void FirstStart::alignParts(QWidget &make, QWidget &use)
{
    const auto *upper = static_cast<QFormLayout *>(make.layout());
    const auto *lower = static_cast<QFormLayout *>(use.layout());
    int widest = 0;
    for (const QLineEdit *line : {m_laboratory, m_person, m_newPath})
        widest = std::max(widest, captionOf(*upper, line)->sizeHint().width());
    captionOf(*lower, m_oldPath)->setMinimumWidth(widest);
    auto *elsewhere = make.findChild<QPushButton *>(u"firstNewChoose"_s);
    auto *choose = use.findChild<QPushButton *>(u"firstOldChoose"_s);
    const int width = std::max(elsewhere->sizeHint().width(), choose->sizeHint().width());
    elsewhere->setMinimumWidth(width);
    choose->setMinimumWidth(width);
}

void FirstStart::judge()
{
    const QString wrong = fault();
    m_begin->setEnabled(wrong.isEmpty());
    if (wrong.isEmpty())
        m_notice->clear();
    else
        m_notice->say(State::Pending, wrong);
}

QString FirstStart::fault() const
{
    const FirstChoice wanted = choice();
    if (wanted.kind == FirstChoice::Kind::Sample)
        return {};
    if (wanted.kind == FirstChoice::Kind::Make && wanted.laboratory.isEmpty())
        return tr("The laboratory's name is still missing; it heads every report.");
    if (wanted.kind == FirstChoice::Kind::Make && wanted.person.isEmpty())
        return tr("Your name is still missing; it stands on whatever you record.");
    if (!QDir::isAbsolutePath(wanted.path))
        return tr("The file is still missing: its whole path, such as %1.")
            .arg(QDir::home().filePath(u"acids.plateau"_s));
    const QFileInfo file(wanted.path);
    if (wanted.kind == FirstChoice::Kind::Use && !file.isFile())
        return tr("There is no file %1; see that the name is right.").arg(wanted.path);
    if (wanted.kind == FirstChoice::Kind::Make && file.exists())
        return tr("There is a file %1 already; use that notebook, or give the new one another name.")
            .arg(wanted.path);
    return {};
}

FirstChoice FirstStart::choice() const
{
    FirstChoice wanted;
    wanted.kind = m_sample->isChecked() ? FirstChoice::Kind::Sample
                  : m_use->isChecked()  ? FirstChoice::Kind::Use
                                        : FirstChoice::Kind::Make;
    const QLineEdit *path = wanted.kind == FirstChoice::Kind::Use ? m_oldPath : m_newPath;
    wanted.path = QDir::fromNativeSeparators(path->text().trimmed());
    wanted.laboratory = m_laboratory->text().trimmed();
    wanted.person = m_person->text().trimmed();
    return wanted;
}

bool FirstStart::isForNextStarts() const
{
    return m_next && m_next->isChecked() && !m_sample->isChecked();
}

HelpPlace FirstStart::helpOnShow() const
{
    return m_help->placeOnShow();
}

void FirstStart::sayFault(const QString &sentence)
{
    m_notice->say(State::Bad, sentence);
}

} // namespace plateau::ui
