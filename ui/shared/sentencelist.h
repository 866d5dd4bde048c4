// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/syncrows.h"
#include "ui/shared/theme.h"

#include <QAbstractListModel>
#include <QListView>

namespace plateau::ui {

/// One sentence with its state.
struct Sentence {
    State state = State::Info;
    QString text;
    bool operator==(const Sentence &) const = default;
};

class SentenceModel : public RowsModel<QAbstractListModel, Sentence>
{
    Q_OBJECT

public:
    explicit SentenceModel(const Theme &theme, QObject *parent = nullptr);
    void setSentences(std::vector<Sentence> sentences) { setRows(std::move(sentences)); }
    QVariant cellData(const QModelIndex &index, int role) const override;

private:
    const Theme &m_theme;
};

/// Sentences one below the other, each wrapped to the width; can be walked with the keys, chosen and copied.
class SentenceList : public QListView
{
    Q_OBJECT

public:
    SentenceList(const Theme &theme, const QString &accessibleName, const QString &objectName,
                 QWidget *parent = nullptr);
    void setSentences(std::vector<Sentence> sentences);
    const SentenceModel &sentences() const { return *m_model; }

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    SentenceModel *m_model;
};

} // namespace plateau::ui
