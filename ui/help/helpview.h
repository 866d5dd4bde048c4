// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QImage>
#include <QTextBrowser>

#include <map>

namespace plateau::ui {

struct HelpPage;
class Theme;

/// A page of the help as it is read: text of a width that can be read, pictures as wide as the view, drawn
/// with as many pixels as the screen has. Follows no link by itself.
class HelpView : public QTextBrowser
{
    Q_OBJECT

public:
    HelpView(const Theme &theme, QWidget *parent = nullptr);

    /// From its top. Its pictures are looked for from where its file lies, which is the folder of its language.
    void showPage(const HelpPage &page, const QString &folder);
    /// Brings the heading of that anchor to the top of the view; false: there is none, and nothing moves.
    bool goTo(const QString &anchor);
    /// The anchors of the page that is shown, in their order.
    QStringList anchors() const;
    /// Marks what a search found; nothing: no marks.
    void markWords(const QStringList &foldedStarts);

protected:
    QVariant loadResource(int type, const QUrl &name) override;
    void resizeEvent(QResizeEvent *event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void dress();
    /// To the width of the view, without moving what is read.
    void fit();
    void fitText(int width);
    void fitPictures(int width);
    QImage source(const QString &name);
    /// To the top of the view.
    void bringUp(const QTextBlock &block);

    const Theme &m_theme;
    QString m_markdown;
    /// Of the page's file.
    QString m_folder;
    QStringList m_marked;
    /// By the name that the page gives them, as they come from the file.
    std::map<QString, QImage> m_pictures;
    int m_fitted = 0;
};

} // namespace plateau::ui
