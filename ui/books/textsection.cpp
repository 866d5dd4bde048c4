// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/draftfields.h"
#include "ui/books/methodsections.h"
#include "ui/shared/matrixtext.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>
#include <QFormLayout>
#include <QGroupBox>
#include <QPlainTextEdit>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct TextSectionWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TextSection)
};

QWidget *buildPreparation(DraftFields &fields, QWidget *parent)
{
    QGroupBox *group =
        newGroup(TextSectionWords::tr("Preparation of the sample, by what it is like"), {}, parent);
    auto *host = new QWidget(group);
    QFormLayout *form = newForm(host);
    form->setContentsMargins({});
    group->layout()->addWidget(host);
    const std::vector<assay::Matrix> &matrices = allMatrices();
    for (std::size_t i = 0; i < matrices.size(); ++i)
        fields.addProse(form, matrixText(matrices[i]), 2, u"preparation%1"_s.arg(i),
                        [i](MethodDraft &d) -> QString & { return d.preparation[i]; });
    return group;
}

} // namespace

QWidget *buildTextSection(const SectionParts &parts, QWidget *parent)
{
    auto *page = new QWidget(parent);
    auto *layout = new QVBoxLayout(page);
    setGaps(parts.theme, layout);
    auto *host = new QWidget(page);
    QFormLayout *form = newForm(host);
    form->setContentsMargins({});
    DraftFields &fields = parts.fields;
    fields.addProse(form, TextSectionWords::tr("Cautions, one per line"), 5, u"cautions"_s,
                    [](MethodDraft &d) -> QString & { return d.cautions.text; });
    fields.addProse(form, TextSectionWords::tr("Principle"), 4, u"principle"_s,
                    [](MethodDraft &d) -> QString & { return d.principle; });
    fields.addProse(form, TextSectionWords::tr("Reactions, one per line"), 3, u"reactions"_s,
                    [](MethodDraft &d) -> QString & { return d.reactions.text; });
    fields.addProse(form, TextSectionWords::tr("What interferes, one per line"), 3, u"interferences"_s,
                    [](MethodDraft &d) -> QString & { return d.interferences.text; });
    layout->addWidget(host);
    layout->addWidget(buildPreparation(fields, page));
    layout->addStretch(1);
    return page;
}

} // namespace plateau::ui
