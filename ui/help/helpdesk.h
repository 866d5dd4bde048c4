// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/helpcall.h"

#include <QObject>

#include <functional>
#include <memory>

class QWidget;

namespace plateau::ui {

class HelpWindow;
class Theme;

/// The one help window of a window and of the dialogs over it: F1 opens it at the place of what has the focus
/// (setHelp), and so does a HelpCall. Nothing is read before it is asked for.
class HelpDesk : public QObject
{
    Q_OBJECT

public:
    /// theme and window outlive it.
    HelpDesk(const Theme &theme, QWidget &window);
    ~HelpDesk() override;

    /// Where nothing around the focus has a place.
    void setUsualPlace(std::function<HelpPlace()> usual) { m_usual = std::move(usual); }
    /// At a place, or at the one of what has the focus.
    void open(HelpPlace place);
    void openForFocus();
    /// What is read; no page while the help is closed.
    HelpPlace placeOnShow() const;
    /// nullptr until it was opened once.
    HelpWindow *helpWindow() const { return m_help.get(); }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void openFor(const QWidget *widget);
    /// Makes the help belong to the dialog that waits for an answer, or to none.
    void belongTo(const QWidget *dialog);
    /// A dialog came up while the help was open: it stays usable, and the dialog stays in front.
    void followDialog();
    /// The widget is the window's, a dialog's over it, or the help's.
    bool isOwn(const QWidget *widget) const;

    const Theme &m_theme;
    QWidget &m_window;
    std::function<HelpPlace()> m_usual;
    std::unique_ptr<HelpWindow> m_help;
};

} // namespace plateau::ui
