// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QStringList>
#include <QWidget>

#include <utility>
#include <vector>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BenchSettings;
class Notice;
class PipettePage;
class ReadPage;
class ReviewPage;
class Stores;
class Theme;
struct Rack;

/// One rack with its stages.
class RackPage : public QWidget
{
    Q_OBJECT

public:
    enum Stage { Pipette, Read, Review };

    RackPage(const Theme &theme, BenchSession &session, Stores &stores, const BenchSettings &settings,
             QWidget *parent = nullptr);

    notebook::RunId rackId() const { return m_id; }
    Stage stage() const;
    /// Where the next thing to do of that rack is done.
    static Stage dueStage(const Rack &rack);
    void showRack(notebook::RunId id, Stage stage);
    void showStage(Stage stage);
    /// Takes back the last mark of the rack on show.
    void undoMark();
    ReadPage &readPage() { return *m_read; }
    /// What was typed for that rack at any stage and not stored.
    QStringList unstored(notebook::RunId id) const;

Q_SIGNALS:
    void decided(plateau::notebook::RunId id);
    /// What the bench has next, on whatever rack, is done.
    void doneWanted();
    void personWanted();
    void stageChanged();

private:
    QWidget *buildHeader();
    void dress();
    std::vector<std::pair<QPushButton *, Stage>> stageButtons() const;
    void sayMethod();
    /// What the rack itself waits for, while the strip above says what another one does.
    void sayOwnNext();
    /// Says what was typed and is not stored, where the entry itself does not show it.
    void sayUnstored();

    const Theme &m_theme;
    BenchSession &m_session;
    QLabel *m_letter;
    QLabel *m_title;
    QLabel *m_method;
    QLabel *m_ownNext;
    QPushButton *m_pipetteButton;
    QPushButton *m_readButton;
    QPushButton *m_reviewButton;
    Notice *m_unstored;
    QStackedWidget *m_stages;
    PipettePage *m_pipette;
    ReadPage *m_read;
    ReviewPage *m_review;
    notebook::RunId m_id;
};

} // namespace plateau::ui
