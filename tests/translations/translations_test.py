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
NO_BREAK, NARROW = "\u00a0", "\u202f"
UNIT = (r"(?:[kmµ]?mol|[kmµ]?g|[mµ]?L|[cmnµ]?m|min|h|s|°C|%|kB|ko|MiB|[km]?bar|kPa|U|u(?! \d)|inch|Zoll|pouces|pulgadas)"
        r"(?![\w’-])")
# What these name is stored and compared with what somebody types, where a no-break space would be another name. Their sentences
# are longer and no names.
STORED_NAMES = ("plateau::planning::Laboratory", "plateau::planning::RackRepeat")
LONGEST_NAME = 40
QUOTES = {"de": "„“", "fr": "«»", "es": "«»"}


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


def is_stored(context, source):
    return context in STORED_NAMES and len(source) < LONGEST_NAME


def names_of_methods():
    """Of the shipped methods and their parts: stored and compared as well."""
    def names(value):
        if isinstance(value, dict):
            for key, part in value.items():
                if key == "name" and isinstance(part, str):
                    yield part
                yield from names(part)
        elif isinstance(value, list):
            for part in value:
                yield from names(part)
    return {name for file in (ROOT / "resources" / "methods").glob("*.json")
            for name in names(json.loads(file.read_text(encoding="utf-8")))}


def prose(text, source):
    """Without what follows the rules of a program and not of a language: JSON and its words ({"A1": 0.102}, and "add" where the source
    has the same), the filters of a file dialog, times of day and ISO 8601, numbers of standards, and numbers in a row as somebody
    types them (50,3; 49,8)."""
    text = re.sub(r'"\w+"', lambda word: "•" if word[0] in source else word[0], text)
    for code in (r"\{[^{}]*\}", r"\(\*[^)]*\)(?:;;)?", r"\d[\d-]*T?\d*:\d[\d:+]*", r"\d[\d,]*(?:; \d[\d,]*)+"):
        text = re.sub(code, "•", text)
    return text


# Of each rule: what it is, where it holds, what may not be found in the prose of a translation.
RULES = (
    ("a straight quotation mark or apostrophe", LANGUAGES, r"[\"']"),
    ("a straight or foreign quotation mark", ("de",), r"[«»”‘’]"),
    ("a straight or foreign quotation mark", ("fr", "es"), r"[„“”‘]"),
    ("a space within the quotation marks", ("de", "es"), r"[„«]\s|\s[»]"),
    ("no no-break space within the quotation marks", ("fr",), f"«(?!{NO_BREAK})|(?<!{NO_BREAK})»"),
    ("no no-break space before a colon", ("fr",), f"(?<!{NO_BREAK})(?<!^):"),
    ("no narrow no-break space before ; ? !", ("fr",), f"(?<!{NARROW})[;?!]"),
    ("a space before a colon, semicolon, question or exclamation mark", ("de", "es"), r"\s[:;?!]"),
    ("a question or exclamation without its opening mark", ("es",), r"^[^¿]*\?|^[^¡]*!"),
    ("a hyphen for a minus", LANGUAGES, r"(?<!\S) ?- |(?<![^\s(])-\d| - "),
    ("a letter for a times sign", LANGUAGES, r"(?<!\S)x(?!\S)|\dx\d"),
    ("a capital letter after a colon", ("fr", "es"),
     r":\s*(?!NaN|Okabe)[A-ZÀ-Þ][a-zà-ÿ]"),
)


class Typography(unittest.TestCase):
    """The signs and spaces that a language is printed with."""

    def each(self):
        for language in LANGUAGES:
            for context, source, forms, _, _ in messages(language):
                for form in forms:
                    yield language, context, source, form

    def test_the_rules_find_what_they_forbid(self):
        wrong = {"de": ['"%1" fehlt', 'der "Standard" fehlt', "«%1» fehlt", "Name : %1", "A2 - A1", "mal -1", "4 x 6"],
                 "fr": ["l'id", "« %1 »", "nom: %1", "quoi ?", "« a »; b".replace(" ", NO_BREAK), "reste %1 - %2",
                        f"Note{NO_BREAK}: Ceci"],
                 "es": ["“%1”", "« %1»", "cierto?", "-1 para restar", "c x F", "Nota: Esto"]}
        for language, texts in wrong.items():
            for text in texts:
                self.assertTrue(any(language in where and re.search(rule, prose(text, "")) for _, where, rule in RULES),
                                (language, text))
        for unit in ("%1 mL", "0,5 µL", "8,5 × 11 pouces", "zu 95 % sicher", "14000 L/(mol cm)", "%n min"):
            self.assertRegex(unit, rf"(?:\d|%L?\d|%n) {UNIT}")
        for word in ("2 L-Ascorbinsäure", "7 u 8 bits", "0 s’il garde", "%1 min".replace(" ", NO_BREAK), "3 Schritte"):
            self.assertNotRegex(word, rf"(?:\d|%L?\d|%n) {UNIT}")

    def test_signs_and_spaces_are_those_of_the_language(self):
        found = [f"{language}, {context}, {what}: {form!r} (of {source!r})"
                 for language, context, source, form in self.each()
                 for what, where, rule in RULES
                 if language in where and re.search(rule, prose(form, source))]
        self.assertEqual(found, [], "\n".join(found))

    def test_quotation_marks_are_closed(self):
        for language, context, source, form in self.each():
            opening, closing = QUOTES[language]
            self.assertEqual(form.count(opening), form.count(closing), (language, context, source, form))

    def test_a_number_stays_with_its_unit(self):
        names = names_of_methods()
        found = [f"{language}, {context}: {form!r}"
                 for language, context, source, form in self.each()
                 if not is_stored(context, source) and source not in names and re.search(rf"(?:\d|%L?\d|%n) {UNIT}", form)]
        self.assertEqual(found, [], "no no-break space (U+00A0) before a unit:\n" + "\n".join(found))

    def test_a_name_that_is_stored_has_only_spaces_that_can_be_typed(self):
        names = names_of_methods()
        for language, context, source, form in self.each():
            if is_stored(context, source) or source in names and context.endswith("ShippedMethods"):
                self.assertNotRegex(form, f"[{NO_BREAK}{NARROW}]", (language, context, source))

    def test_a_range_has_the_dash_of_its_source(self):
        for language, context, source, form in self.each():
            self.assertEqual(form.count("–"), source.count("–"), (language, context, source, form))

    def test_the_letters_of_the_steps_are_those_of_their_buttons(self):
        buttons = ("&Add", "&Mix", "&Wait", "&Read")
        for language in LANGUAGES:
            texts = {source: forms[0] for context, source, forms, _, _ in messages(language)
                     if context == "plateau::ui::RecipeSection"}
            sentence = next(form for source, form in texts.items() if source.startswith("In the table the letters"))
            wanted = [re.search(r"&(\w)", texts[button]).group(1).upper() for button in buttons]
            self.assertEqual(re.findall(r"\b[A-Z]\b", sentence), wanted, (language, sentence))


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
