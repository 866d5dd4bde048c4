// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/comparisonview.h"

#include "core/exchange/methodcomparison.h"
#include "core/notebook/methodcatalogue.h"
#include "ui/books/comparisonmodel.h"
#include "ui/books/methodsmodel.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QItemSelectionModel>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ComparisonView::ComparisonView(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_versions(new MethodsModel(theme, this))
    , m_differences(new ComparisonModel(this))
    , m_versionsTable(new Table(theme, m_versions, tr("Versions"), u"methodVersions"_s, this))
    , m_said(plainLabel({}, this))
    , m_differencesTable(new Table(theme, m_differences, tr("What differs"), u"methodDifferences"_s, this))
{
    m_versionsTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_versionsTable->setColumnHidden(MethodsModel::Id, true);
    m_versionsTable->setFlexibleColumn(MethodsModel::Note);
    m_differencesTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_differencesTable->setFlexibleColumn(ComparisonModel::After);
    m_differencesTable->setWrap(Table::Wrap::AsNeeded);
    m_said->setObjectName(u"comparisonText"_s);
    m_said->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_versionsTable, 1);
    layout->addWidget(m_said);
    layout->addWidget(m_differencesTable, 2);
    connect(m_versionsTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) { compare(current.row()); });
    connect(m_versionsTable, &Table::activated, this, [this](const QModelIndex &index) {
        Q_EMIT methodWanted(m_versions->row(index.row()).contentHash);
    });
}

void ComparisonView::show(const std::vector<notebook::StoredMethod> &catalogue, const QString &contentHash)
{
    const bool another = contentHash != m_shown;
    m_catalogue = catalogue;
    m_shown = contentHash;
    const auto shown = std::ranges::find(catalogue, contentHash, &notebook::StoredMethod::contentHash);
    m_versions->setCatalogue(catalogue, shown->method.id);
    m_versionsTable->fit();
    // The one before it, which it was most likely made from.
    const int row = m_versions->rowOf(contentHash);
    if (another || !m_versionsTable->currentIndex().isValid())
        m_versionsTable->selectRow(row + 1 < m_versions->rowCount() ? row + 1 : std::max(row - 1, 0));
    compare(m_versionsTable->currentIndex().row());
}

void ComparisonView::choose(const QString &contentHash)
{
    m_versionsTable->selectRow(m_versions->rowOf(contentHash));
}

void ComparisonView::takeFocus()
{
    m_versionsTable->setFocus();
}

void ComparisonView::compare(int row)
{
    const auto find = [this](const QString &hash) {
        return std::ranges::find(m_catalogue, hash, &notebook::StoredMethod::contentHash);
    };
    const bool another = row >= 0 && m_versions->row(row).contentHash != m_shown;
    m_differencesTable->setVisible(another);
    if (!another) {
        m_said->setText(m_versions->rowCount() > 1
                            ? tr("This is the version on show. Choose another one to see what differs.")
                            : tr("There is no other version of this method."));
        return;
    }
    auto before = find(m_versions->row(row).contentHash);
    auto after = find(m_shown);
    if (before->method.version > after->method.version)
        std::swap(before, after);
    const auto called = [this](const notebook::StoredMethod &method) {
        return tr("version %1").arg(methodRow(m_catalogue, method).version);
    };
    std::vector<exchange::Difference> differences = exchange::differences(before->method, after->method);
    m_said->setText(tr("Fields that differ between %1 and %2: %3. Enter on a version opens it.")
                        .arg(called(*before), called(*after))
                        .arg(differences.size()));
    const auto heading = [this](const notebook::StoredMethod &method) {
        return tr("Version %1").arg(methodRow(m_catalogue, method).version);
    };
    m_differences->show(std::move(differences), heading(*before), heading(*after));
    m_differencesTable->fit();
}

} // namespace plateau::ui
