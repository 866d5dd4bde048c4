// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/books/methoddraft.h"
#include "ui/books/methodplaces.h"

#include <QWidget>

#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QScrollArea;
class QStackedWidget;

namespace plateau::ui {

class AppraisalPanel;
class DraftFields;
class DraftTables;
class ElidingLabel;
class ExampleSection;
class Notice;
class ProblemList;
class Theme;

/// Writes a method: sections on the left, the form in the middle, beside it what the method means at the
/// bench and what is still wrong with it. A method with an error cannot be saved, nor a next version that
/// says what the newest one says, or of which nobody says what was changed and why. Whoever opened the editor
/// stores what saved() brings and answers with markSaved() or refuse(); the version number is the store's.
class MethodEditor : public QWidget
{
    Q_OBJECT

public:
    explicit MethodEditor(const Theme &theme, QWidget *parent = nullptr);

    /// All methods there are: their ids are taken, and derived results may take from them.
    void setCatalogue(std::vector<notebook::StoredMethod> catalogue);
    void startNew();
    /// A method of its own with what the other one says.
    void startCopy(const assay::Method &method);
    void startVersion(const assay::Method &method);
    void takeFocus();
    bool hasUnsavedChanges() const;
    void markSaved();
    /// Why it was not stored; what was typed stays.
    void refuse(const QString &sentence);
    Notice &notice() { return *m_notice; }
    /// As by the button that leads back, and by Escape: with unsaved changes asks first, once.
    void leave();

Q_SIGNALS:
    /// note: what was changed and why; empty of a method that has no earlier version.
    void saved(const plateau::assay::Method &method, const QString &note);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    enum class Opening { New, Copy, Version };

    QWidget *buildHeader();
    QWidget *buildNote(QWidget *parent);
    QWidget *buildSections();
    QWidget *buildSide();
    void addSection(const QString &title, QWidget *content);
    void addShortcuts();
    void start(Opening opening, MethodDraft draft);
    MethodDraft collect() const;
    void onEdited();
    void showNames();
    void checkShortName();
    /// Why there is nothing to save; empty where there is.
    QString sameAsStored() const;
    void showProblems();
    void showSection(MethodSection section);
    void goToProblem(int row);
    void finishCell() const;
    void save();

    const Theme &m_theme;
    std::vector<notebook::StoredMethod> m_catalogue;
    DraftFields *m_fields;
    DraftTables *m_tables;
    ElidingLabel *m_heading = nullptr;
    QLabel *m_version = nullptr;
    QWidget *m_noteRow = nullptr;
    QLineEdit *m_note = nullptr;
    Notice *m_notice = nullptr;
    QListWidget *m_sections = nullptr;
    QStackedWidget *m_pages = nullptr;
    ExampleSection *m_example = nullptr;
    AppraisalPanel *m_appraisal = nullptr;
    QLabel *m_summary = nullptr;
    ProblemList *m_problems = nullptr;
    Opening m_opening = Opening::New;
    bool m_loading = false;
    bool m_askedToLeave = false;
    /// As started or saved last.
    MethodDraft m_kept;
    MethodDraft m_draft;
    MethodOutcome m_outcome;
    /// In the order of the list.
    assay::Problems m_shown;
};

} // namespace plateau::ui
