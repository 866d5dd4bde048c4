// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class Notice;
class ReadPage;
class ReviewPage;
class Theme;

/// One rack with its stages.
class RackPage : public QWidget
{
    Q_OBJECT

public:
    enum Stage { Read, Review };

    RackPage(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    notebook::RunId rackId() const { return m_id; }
    Stage stage() const;
    void showRack(notebook::RunId id, Stage stage);
    void showStage(Stage stage);
    ReadPage &readPage() { return *m_read; }

Q_SIGNALS:
    void decided(plateau::notebook::RunId id);
    void personWanted();
    void stageChanged();

private:
    QWidget *buildHeader();
    void dress();
    /// Says what was typed and is not stored, where the entry itself does not show it.
    void sayUnstored();

    const Theme &m_theme;
    BenchSession &m_session;
    QLabel *m_letter;
    QLabel *m_title;
    QLabel *m_method;
    QPushButton *m_readButton;
    QPushButton *m_reviewButton;
    Notice *m_unstored;
    QStackedWidget *m_stages;
    ReadPage *m_read;
    ReviewPage *m_review;
    notebook::RunId m_id;
};

} // namespace plateau::ui
