// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/limitsdraft.h"
#include "ui/books/measurandnames.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace plateau::ui {

class Notice;
class NumberField;
class ProblemList;
class Theme;

/// One limit of a product as a form, what is still wrong with it beside the fields, and the reason that a
/// saving needs. Whoever opened it stores what the signals bring.
class LimitsView : public QWidget
{
    Q_OBJECT

public:
    explicit LimitsView(const Theme &theme, QWidget *parent = nullptr);

    /// names: of the measurands, which a limit may name by id; to be set before it is shown.
    void setNames(const QStringList &products, const QStringList &measurands, const MeasurandNames &names);
    /// others: the rest of the list. isNew: there is nothing to remove yet.
    void show(const LimitDraft &draft, const std::vector<evaluation::Specification> &others, bool isNew);
    bool hasUnsavedChanges() const { return collect() != m_kept; }
    void takeFocus();
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    void saveWanted(const plateau::evaluation::Specification &limit, const QString &reason);
    void removeWanted(const QString &reason);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QWidget *buildHeader();
    QWidget *buildForm();
    QWidget *buildSide();
    void buildRule(QWidget *host);
    QComboBox *addBox(const QString &caption, const QString &objectName, bool typed);
    QLineEdit *addLine(const QString &caption, const QString &objectName);
    NumberField *addNumber(const QString &caption, const QString &objectName);
    LimitDraft collect() const;
    void onEdited();
    void showFields();
    void showProblems();
    void goToProblem(int row);
    /// Nothing, which is said, while there is none.
    std::optional<QString> reason();
    void save();
    void remove();
    /// What is typed and not saved is dropped at the second try only.
    void leave();

    const Theme &m_theme;
    std::vector<evaluation::Specification> m_others;
    LimitDraft m_kept;
    MeasurandNames m_names;
    /// Of the limit that is shown: as it is held, and as it is called.
    QString m_keptMeasurand;
    QString m_shownMeasurand;
    LimitOutcome m_outcome;
    bool m_isNew = true;
    /// Also while the form is built: a box that gets its first entry says it was changed.
    bool m_loading = true;
    bool m_dropAsked = false;
    Notice *m_notice;
    QFormLayout *m_form = nullptr;
    QLabel *m_heading = nullptr;
    QComboBox *m_product = nullptr;
    QComboBox *m_measurand = nullptr;
    QComboBox *m_kind = nullptr;
    NumberField *m_lower = nullptr;
    NumberField *m_upper = nullptr;
    QComboBox *m_unit = nullptr;
    QPlainTextEdit *m_source = nullptr;
    QLineEdit *m_date = nullptr;
    QComboBox *m_rule = nullptr;
    QLabel *m_meaning = nullptr;
    QComboBox *m_guard = nullptr;
    NumberField *m_guardSize = nullptr;
    QLabel *m_summary = nullptr;
    ProblemList *m_problems = nullptr;
    QLineEdit *m_reason = nullptr;
    QPushButton *m_remove = nullptr;
};

} // namespace plateau::ui
