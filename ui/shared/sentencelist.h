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

    /// From now on it asks for the height that its sentences need, and takes no more; most: at most so high.
    void fitSentences(int most);
    /// No higher than that, and as high as its sentences need; where they need more it ends below a whole line.
    int wholeLinesWithin(int most) const;
    QSize sizeHint() const override;

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    /// Of all of them in a viewport so wide.
    int heightAt(int viewportWidth) const;
    int rowHeightAt(int row, int viewportWidth) const;
    void takeHeight();

    SentenceModel *m_model;
    /// None as a rule: as high as there is room.
    int m_mostHeight = 0;
};

} // namespace plateau::ui
