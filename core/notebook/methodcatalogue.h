// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readers.h"
#include "core/notebook/records.h"

namespace plateau::notebook {

/// The laboratory's methods (Notebook::methods) and the shipped ones in one list: each content once, by id,
/// newest version first. A shipped one has that origin, and what the notebook knows of it.
std::vector<StoredMethod> catalogueOf(const std::vector<StoredMethod> &laboratory,
                                      const std::vector<assay::Method> &shipped);

/// Those of a catalogue that a new run may have: of each id the laboratory's newest version, and the shipped
/// one where it is newer or where both have that version; without the retired ones. An older version does not
/// come back when the newest is retired. Two of the same id and version are both there.
std::vector<StoredMethod> offeredOf(const std::vector<StoredMethod> &catalogue);

/// 0 where the id is not known.
int newestVersion(const std::vector<StoredMethod> &catalogue, const QString &id);

/// The newest version of the method's id, if that says the same but for its number, so that saving the method
/// would store nothing. nullptr where it would be stored.
const StoredMethod *sameAsNewest(const std::vector<StoredMethod> &catalogue, const assay::Method &method);

/// As the catalogue would be after the import of that file, for what names the method before it is stored.
void addImported(std::vector<StoredMethod> &catalogue, const assay::Method &method, const QString &fileName);

/// What a run file means by a method's id: the one that a new run may have. Where that is none or not one
/// alone, the obstacle names what there is and what would help.
exchange::MethodLookup lookupIn(std::vector<StoredMethod> catalogue);

/// Whether the catalogue has another content of the same id and version, so that it takes the mark to tell
/// them apart.
bool isKeptApart(const std::vector<StoredMethod> &catalogue, const StoredMethod &method);

/// "shipped", "saved by Ines, 2 March 2026", "from glycerol.json, 2 March 2026": where it comes from, in the
/// middle of a line.
QString originText(const StoredMethod &method);

/// "version 2", or with origin and mark, "version 2, shipped, 3fa9c1d2", where it is kept apart.
QString versionText(const std::vector<StoredMethod> &catalogue, const StoredMethod &method);

} // namespace plateau::notebook
