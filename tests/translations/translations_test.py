#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""Every text of the program is translated into every language, with the places, keys and ends that its source has."""
import collections
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as ElementTree

ROOT = pathlib.Path(__file__).resolve().parents[2]
FOLDER = ROOT / "resources" / "translations"
LANGUAGES = ("de", "fr", "es")


def messages(language, folder=FOLDER):
    """Context, source, translations (two of a plural), whether it is plural, whether it is finished."""
    for context in ElementTree.parse(folder / f"plateau_{language}.ts").getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            plural = message.get("numerus") == "yes"
            forms = [form.text or "" for form in translation.findall("numerusform")] if plural else [translation.text or ""]
            yield context.findtext("name"), message.findtext("source"), forms, plural, translation.get("type") != "unfinished"


def places(text):
    return collections.Counter(re.findall(r"%L?\d+", text))


def key_of(text):
    """Whether a caption has a letter to reach it by."""
    return bool(re.search(r"&\w", text.replace("&&", "").replace("&amp;", "").replace("&lt;", ""))) and "<" not in text


def texts_of(value, key=""):
    """Of a method: all that is neither a word of the format nor an id."""
    words = {"format", "id", "chromophore", "direction", "volumeCorrection", "sample", "diluent", "starter", "add", "read", "kind",
             "from", "to", "base", "middle", "final", "matrix", "reading", "measurand", "method"}
    if isinstance(value, dict):
        for name, part in value.items():
            yield from texts_of(part, name)
    elif isinstance(value, list):
        for part in value:
            yield from texts_of(part, key)
    elif isinstance(value, str) and key not in words:
        yield value


class Translations(unittest.TestCase):
    def each(self):
        for language in LANGUAGES:
            for context, source, forms, _, finished in messages(language):
                for form in forms:
                    yield source, form, finished, (language, context, source, form)

    def test_nothing_is_left_untranslated(self):
        for source, form, finished, which in self.each():
            self.assertTrue(finished and (form.strip() or not source.strip()), which)

    def test_english_has_its_plurals(self):
        plurals = {(context, source) for context, source, _, plural, _ in messages("de") if plural}
        english = list(messages("en"))
        self.assertEqual({(context, source) for context, source, _, _, _ in english}, plurals)
        for context, source, forms, _, finished in english:
            self.assertTrue(finished and len(forms) == 2 and all("(s)" not in form for form in forms), (context, source))

    def test_plurals_have_both_forms(self):
        for language in LANGUAGES:
            for _, source, forms, plural, _ in messages(language):
                self.assertEqual(len(forms), 2 if plural else 1, (language, source))

    def test_places_keys_ends_and_tags_are_those_of_the_source(self):
        for source, form, _, which in self.each():
            # The narrow space that French puts before a semicolon is not one that the source has.
            for what in (places, key_of, lambda text: text.removeprefix("\u202f")[:1].isspace(),
                         lambda text: text[-1:].isspace(), lambda text: text.endswith("…"),
                         lambda text: re.findall(r"</?\w+>", text)):
                self.assertEqual(what(source), what(form), which)

    def test_every_text_of_a_shipped_method_is_translated(self):
        shipped = set()
        for file in (ROOT / "resources" / "methods").glob("*.json"):
            shipped |= set(texts_of(json.loads(file.read_text(encoding="utf-8"))))
        self.assertGreater(len(shipped), 300)
        for language in LANGUAGES:
            known = {source for context, source, _, _, _ in messages(language)
                     if context == "plateau::exchange::ShippedMethods"}
            self.assertEqual(known, shipped, language)

    def test_every_text_of_the_sources_is_there(self):
        with tempfile.TemporaryDirectory() as folder:
            for language in LANGUAGES:
                shutil.copy(FOLDER / f"plateau_{language}.ts", folder)
            subprocess.run([sys.executable, FOLDER / "update", folder], check=True, stdout=subprocess.DEVNULL)
            for language in LANGUAGES:
                missing = [(context, source) for context, source, _, _, finished in messages(language, pathlib.Path(folder)) if not finished]
                self.assertEqual(missing, [], language)


if __name__ == "__main__":
    unittest.main()
