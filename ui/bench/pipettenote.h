// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class NumberEntry;
class NumberField;
class Theme;

/// Notes in the page what went differently in one tube: the volume that really went in, or why the tube does
/// not count. Enter keeps it, Esc leaves it.
class PipetteNote : public QWidget
{
    Q_OBJECT

public:
    enum class Kind { Volume, Spoilt, Restored };

    explicit PipetteNote(const Theme &theme, QWidget *parent = nullptr);

    /// What is typed and not kept yet.
    struct Draft {
        Kind kind = Kind::Volume;
        QString number;
        QString reason;
        bool isEmpty() const { return number.isEmpty() && reason.isEmpty(); }
    };

    /// unit: that of the number.
    void askVolume(const QString &title, const QString &unit, const Draft &draft);
    void askReason(const QString &title, const Draft &draft);
    Kind kind() const { return m_kind; }
    Draft draft() const;
    /// In the unit asked for; nothing while the field holds no number.
    std::optional<double> volume() const;
    QString reason() const;
    /// Back into the field that is in question.
    void resume();

Q_SIGNALS:
    void kept();
    void left();
    /// What is typed is another.
    void edited();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    NumberEntry *entry() const;

    const Theme &m_theme;
    Kind m_kind = Kind::Volume;
    QLabel *m_title;
    NumberField *m_volume;
    QLabel *m_unit;
    QLabel *m_reasonCaption;
    QLineEdit *m_reason;
    QPushButton *m_keep;
    QPushButton *m_leave;
};

} // namespace plateau::ui
