// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/keysdialog.h"

#include "ui/bench/printing.h"
#include "ui/shared/columnsmodel.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/notice.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

class KeysModel : public ColumnsModel<KeyEntry>
{
public:
    KeysModel(std::vector<KeyEntry> entries, QObject *parent)
        : ColumnsModel(parent)
    {
        setRows(std::move(entries));
    }

protected:
    int columns() const override { return 3; }
    QString text(const KeyEntry &entry, int column) const override
    {
        return column == 0 ? entry.where : column == 1 ? entry.keys : entry.does;
    }
    QString heading(int column) const override
    {
        return column == 0   ? KeysDialog::tr("Where")
               : column == 1 ? KeysDialog::tr("Keys")
                             : KeysDialog::tr("What they do");
    }
};

} // namespace

KeysDialog::KeysDialog(const Theme &theme, Dialogs &dialogs, std::vector<KeyEntry> entries, QWidget *parent)
    : QDialog(parent)
    , m_dialogs(dialogs)
    , m_entries(std::move(entries))
    , m_notice(new Notice(theme, this))
{
    setWindowTitle(tr("Keys"));
    setHelp(*this, {u"keys"_s, {}});
    auto *model = new KeysModel(m_entries, this);
    auto *table = new Table(theme, model, tr("Keys"), u"keys"_s, this);
    table->setFlexibleColumn(2);
    table->setFlexibleMinimum(40);
    table->setLimit(22);
    table->setWrap(Table::Wrap::AsNeeded);
    table->fit();
    auto *print = button(theme, tr("&Save as PDF, to print…"), u"saveKeys"_s, this);
    auto *close = button(theme, tr("&Close"), u"closeKeys"_s, this);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(print);
    buttons->addStretch();
    buttons->addWidget(close);
    close->setDefault(true);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(table, 1);
    layout->addWidget(m_notice);
    layout->addLayout(buttons);
    const int letter = fontMetrics().averageCharWidth();
    resizeOnScreen(*this, {letter * 118, letter * 84});
    connect(print, &QPushButton::clicked, this, &KeysDialog::save);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
}

void KeysDialog::save()
{
    savePdfAs(this, m_dialogs, *m_notice, tr("Keys of Plateau.pdf"), keysPdf(m_entries));
}

} // namespace plateau::ui
