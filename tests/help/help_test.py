#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""The help says what the program is: its links lead somewhere, its names are those of the window, its numbers are computed.

    help_test.py [PLATEAU] [unittest's arguments]     PLATEAU: the built program, for what it has to compute
"""
import collections
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as ElementTree

ROOT = pathlib.Path(__file__).resolve().parents[2]
HELP = ROOT / "resources" / "help"
SOURCE_LANGUAGE = "en"
OTHER_LANGUAGES = ("de", "fr", "es")
# What the help shows of the window; the readme shows some more of its English one.
PICTURES = {"today", "plan", "pipette", "read", "review", "review-red", "notebook", "record", "compare", "samples", "methods", "standards",
            "lots", "equipment", "charts", "limits", "laboratory", "persons", "records", "firststart"}
# What the keys are called where they are not called as in English.
MODIFIERS = {"Strg": "Ctrl", "Umschalt": "Shift", "Maj": "Shift", "Mayús": "Shift"}
# Of a picture, and of all of them together: they travel inside the program.
MOST_BYTES = 122_880
MOST_BYTES_TOGETHER = 6 * 1024 * 1024
PROGRAM = None

LINK = re.compile(r"(?<!!)\[([^\]]+)\]\(([^)\s]+)\)")
PICTURE = re.compile(r"!\[([^\]]*)\]\(([^)\s]+)\)")
HEADING = re.compile(r"^(#{1,6}) (.+)$", re.M)
BOLD = re.compile(r"\*\*([^*\n]+)\*\*")
IDENTIFIER = re.compile(r"^([^\W\d]+)\s?: `([a-z-]+)`$", re.M)
FIELD_ROW = re.compile(r"^\| (.+?) \| (-?[\d.,]+) \| `([^`]+)` \|$", re.M)


def languages():
    return [SOURCE_LANGUAGE, *OTHER_LANGUAGES]


def pages(language):
    return {path.name: path.read_text(encoding="utf-8") for path in sorted((HELP / language).glob("*.md"))}


def without_code(text):
    return re.sub(r"`[^`\n]*`", "", text)


def anchor(heading):
    """As GitHub makes it: lower case, blanks as hyphens, signs left out."""
    plain = re.sub(r"[*`]|\[([^\]]*)\]\([^)]*\)", r"\1", heading).strip().lower()
    return re.sub(r"[^\w\- ]", "", plain).replace(" ", "-")


def anchors(text):
    return [anchor(title) for _, title in HEADING.findall(text)]


def links(text):
    return [target for _, target in LINK.findall(without_code(text))]


def plain_label(text):
    """A label as a sentence names it: without its letter, its dots, and the key that stands behind it."""
    return text.replace("&&", "\0").replace("&", "").replace("\0", "&").split("  ")[0].rstrip("…").rstrip(":").strip()


def catalogue(language):
    """Sources of the window's texts, each with its translations (itself in English)."""
    texts = collections.defaultdict(set)
    file = ROOT / "resources" / "translations" / f"plateau_{'de' if language == SOURCE_LANGUAGE else language}.ts"
    for context in ElementTree.parse(file).getroot().findall("context"):
        for message in context.findall("message"):
            if message.find("translation").get("type") in ("vanished", "obsolete"):
                continue
            source = message.findtext("source")
            if language == SOURCE_LANGUAGE:
                texts[source].add((context.findtext("name"), source))
            else:
                for form in [message.findtext("translation")] + [f.text for f in message.find("translation").findall("numerusform")]:
                    if form and form.strip():
                        texts[source].add((context.findtext("name"), form))
    return texts


def labels(language):
    """Plain labels of the window, each with the plain sources it may stand for."""
    found = collections.defaultdict(set)
    for source, forms in catalogue(language).items():
        for context, form in forms:
            if context.startswith("plateau::ui::"):
                found[plain_label(form)].add(plain_label(source))
    return found


def english_keys(text):
    return re.sub(rf"\b({'|'.join(MODIFIERS)})\+", lambda found: MODIFIERS[found.group(1)] + "+", text)


def read(path):
    return (ROOT / path).read_text(encoding="utf-8")


def checks():
    """Word and title of every check, from the sources of the evaluation."""
    body = re.search(r"enum class CheckId \{(.*?)\};", read("core/evaluation/evaluation.h"), re.S).group(1)
    names = re.findall(r"^\s*(\w+),", re.sub(r"//.*", "", body), re.M)
    words = re.findall(r'"([a-z]+(?:-[a-z]+)+)"_L1', read("core/evaluation/words.cpp"))
    titles = dict(re.findall(r'case CheckId::(\w+):\s*return CheckText::tr\("([^"]+)"\)', read("core/evaluation/checktitles.cpp")))
    return [(name, word, titles.get(name)) for name, word in zip(names, words)], names, words


def shortcuts():
    """Plain label of each action and its key, from the sources of the menus."""
    standard = {"New": "Ctrl+N", "Open": "Ctrl+O"}
    found = {}
    texts = read("ui/windowactions.cpp") + read("ui/bookentries.cpp")
    call = re.compile(r'tr\("([^"]+)"\),\s*u"\w+"_s,\s*QKeySequence(?:\(u"([^"]+)"_s\)|::(\w+))')
    for label, keys, name in call.findall(texts):
        found[plain_label(label)] = keys or standard[name]
    for title, menu in re.findall(r'BookentriesWords::tr\("([^"]+)"\), u"\w+"_s,\s*BookentriesWords::tr\("([^"]+)"\)', texts):
        found[plain_label(title)] = found[plain_label(menu)]
    return found


def value_at(evaluation, path):
    value = evaluation
    for part in re.findall(r"[^.\[\]]+", path):
        value = value[int(part)] if isinstance(value, list) else value[part]
    return value


def field_rows(text):
    return [(what, number.replace(",", "."), path) for what, number, path in FIELD_ROW.findall(text)]


def evaluated(run):
    result = subprocess.run([PROGRAM, "evaluate", str(run)], capture_output=True, text=True, check=False)
    return result.returncode, json.loads(result.stdout)


class Structure(unittest.TestCase):
    def each(self):
        for language in languages():
            for name, text in pages(language).items():
                yield language, name, text

    def test_there_are_pages(self):
        self.assertGreater(len(pages(SOURCE_LANGUAGE)), 20)

    def test_a_page_begins_with_its_only_title(self):
        for language, name, text in self.each():
            self.assertTrue(text.startswith("# "), (language, name))
            self.assertEqual(len(re.findall(r"^# ", text, re.M)), 1, (language, name))

    def test_headings_of_a_page_have_anchors_of_their_own(self):
        for language, name, text in self.each():
            found = collections.Counter(anchors(text))
            self.assertEqual([place for place, count in found.items() if count > 1 or not place], [], (language, name))

    def test_there_is_no_html(self):
        for language, name, text in self.each():
            self.assertEqual(re.findall(r"<[A-Za-z/!][^\n]*", without_code(text)), [], (language, name))

    def test_marks_are_closed(self):
        for language, name, text in self.each():
            for line in text.splitlines():
                self.assertEqual(line.count("`") % 2, 0, (language, name, line))
                self.assertEqual(without_code(line).count("**") % 2, 0, (language, name, line))

    def test_rows_of_a_table_have_the_columns_of_its_head(self):
        for language, name, text in self.each():
            for table in re.findall(r"(?:^\|.*\|\n)+", text + "\n", re.M):
                rows = table.splitlines()
                self.assertRegex(rows[1], r"^\|( --- \|)+$", (language, name, table))
                self.assertEqual({without_code(row).count("|") for row in rows}, {rows[0].count("|")}, (language, name, table))

    def test_every_link_leads_somewhere(self):
        for language, name, text in self.each():
            for target in links(text):
                page, _, place = target.partition("#")
                file = HELP / language / (page or name)
                self.assertTrue(page == "" or re.fullmatch(r"[a-z-]+\.md", page), (language, name, target))
                self.assertTrue(file.is_file(), (language, name, target))
                if place or "#" in target:
                    self.assertIn(place, anchors(file.read_text(encoding="utf-8")), (language, name, target))

    def test_every_page_is_reached_from_the_contents(self):
        for language in languages():
            all_pages = pages(language)
            reached, waiting = set(), ["index.md"]
            while waiting:
                name = waiting.pop()
                if name not in reached:
                    reached.add(name)
                    waiting += [target.split("#")[0] or name for target in links(all_pages[name])]
            self.assertEqual(reached, set(all_pages), language)
            self.assertEqual({target for target in links(all_pages["index.md"])}, set(all_pages) - {"index.md"}, language)


class Pictures(unittest.TestCase):
    """Of every language: what its pages show is there, and what is there is shown."""

    def shown(self, language):
        """Each picture of the language with the captions its pages give it."""
        found = collections.defaultdict(set)
        for name, text in pages(language).items():
            for caption, target in PICTURE.findall(text):
                picture = re.fullmatch(rf"\.\./pictures/{language}/([a-z-]+)\.png", target)
                self.assertTrue(picture, (language, name, target))
                found[picture.group(1)].add(caption.strip())
        return found

    def there(self, language):
        return {path.stem: path.read_bytes() for path in (HELP / "pictures" / language).glob("*")}

    def test_every_language_shows_every_picture_that_is_known(self):
        for language in languages():
            self.assertEqual(set(self.shown(language)), PICTURES, language)

    def test_what_is_shown_is_there_and_nothing_else(self):
        of_the_readme = set(re.findall(r"resources/help/pictures/en/([a-z-]+)\.png", read("README.md")))
        self.assertGreater(len(of_the_readme), 10)
        self.assertEqual({path.name for path in (HELP / "pictures").iterdir()}, set(languages()), "tests/pictures/make takes them")
        for language in languages():
            wanted = PICTURES | (of_the_readme if language == SOURCE_LANGUAGE else set())
            self.assertEqual(set(self.there(language)), wanted, language)

    def test_every_picture_is_a_place_of_the_tour(self):
        places = set(re.findall(r'u"([a-z-]+)"_s', read("tests/pictures/tour.cpp")))
        self.assertEqual(PICTURES - places, set())

    def test_every_picture_says_in_words_what_it_shows(self):
        for language in languages():
            for name, captions in self.shown(language).items():
                self.assertEqual(len(captions), 1, (language, name, captions))
                self.assertTrue(all(captions), (language, name))

    def test_the_words_are_those_of_the_language(self):
        source = self.shown(SOURCE_LANGUAGE)
        for language in OTHER_LANGUAGES:
            alike = {name for name, captions in self.shown(language).items() if captions == source[name]}
            # Lots and standards are called so elsewhere, too.
            self.assertLessEqual(alike, {"lots", "standards"}, language)

    def test_no_picture_stands_in_for_that_of_another_language(self):
        for language in OTHER_LANGUAGES:
            english = self.there(SOURCE_LANGUAGE)
            alike = [name for name, content in self.there(language).items() if content == english.get(name)]
            self.assertEqual(alike, [], f"{language}: tests/pictures/make takes them")

    def test_they_are_small_enough_to_travel_in_the_program(self):
        together = 0
        for language in languages():
            for name, content in self.there(language).items():
                self.assertEqual(content[:8], b"\x89PNG\r\n\x1a\n", (language, name))
                self.assertLessEqual(len(content), MOST_BYTES, (language, name))
                together += len(content)
        self.assertLessEqual(together, MOST_BYTES_TOGETHER)


def plan_words():
    """What the warnings of a plan are called that no check of a run is."""
    source = read("ui/plan/planwarnings.h") + read("ui/plan/planwarnings.cpp")
    found = re.findall(r"QStringLiteral\(\"([a-z-]+)\"\)|u\"([a-z-]+)\"_s", source)
    return {one or other for one, other in found} - {"checks"}


class Words(unittest.TestCase):
    def test_what_is_bold_stands_in_the_window(self):
        unknown = []
        for language in languages():
            known = labels(language)
            self.assertGreater(len(known), 1000, language)
            for name, text in pages(language).items():
                unknown += [(language, name, label) for label in BOLD.findall(text) if plain_label(label) not in known]
        self.assertEqual(unknown, [])

    def test_keys_beside_a_name_are_its_keys(self):
        keys = shortcuts()
        self.assertGreaterEqual(len(keys), 30)
        beside = re.compile(r"\*\*([^*\n]+)\*\*([^*`\n.]{0,60})`(Ctrl\+[^`]+|F\d+)`")
        seen = 0
        for language in languages():
            known = labels(language)
            for name, text in pages(language).items():
                for label, _, key in beside.findall(english_keys(text)):
                    sources = known.get(plain_label(label), set()) & set(keys)
                    if sources:
                        seen += 1
                        self.assertIn(key, {keys[source] for source in sources}, (language, name, label))
        self.assertGreaterEqual(seen, 15)

    def test_a_letter_beside_a_name_is_the_letter_of_that_name(self):
        beside = re.compile(r"\*\*([^*\n]+)\*\*([^*`\n.]{0,60})`Alt\+(\w)`")
        for language in languages():
            forms = collections.defaultdict(set)
            for translations in catalogue(language).values():
                for _, form in translations:
                    forms[plain_label(form)] |= {letter.upper() for letter in re.findall(r"&(\w)", form)}
            found = [(label, letter) for text in pages(language).values() for label, _, letter in beside.findall(text)]
            self.assertGreaterEqual(len(found), 2, language)
            for label, letter in found:
                self.assertIn(letter.upper(), forms[plain_label(label)], (language, label))

    def test_the_letters_of_a_method_s_steps_are_those_of_their_buttons(self):
        for language in languages():
            buttons = [next(form for context, form in catalogue(language)[source] if context == "plateau::ui::RecipeSection")
                       for source in ("&Add", "&Mix", "&Wait", "&Read")]
            wanted = [re.search(r"&(\w)", button).group(1).upper() for button in buttons]
            named = re.search(r"((?:`[A-Z]`,? )+)[^`\[]*\[[^\]]+\]\(methods\.md", pages(language)["keys.md"]).group(1)
            self.assertEqual(re.findall(r"[A-Z]", named), wanted, language)

    def test_every_key_that_is_named_is_a_key_of_the_program(self):
        listed = read("ui/keyslist.cpp") + read("ui/bookentries.cpp") + read("ui/windowactions.cpp")
        known = set(shortcuts().values()) | set(re.findall(r'u"((?:Ctrl|Alt|Shift|F\d)[^"]*)"_s', listed))
        for part in re.findall(r'tr\("([^"]+)"\)', listed):
            known |= set(re.split(r", | …", part))
        for language in languages():
            for name, text in pages(language).items():
                for key in re.findall(r"`((?:Ctrl|Alt|Shift)\+[^`]+|F\d+)`", english_keys(text)):
                    if not re.fullmatch(r"Alt\+[A-Z]", key):  # letters stand in the labels
                        self.assertIn(key, known, (language, name))


class Checks(unittest.TestCase):
    def test_the_sources_name_the_checks(self):
        found, names, words = checks()
        self.assertGreaterEqual(len(found), 20)
        self.assertEqual(len(names), len(words))
        self.assertEqual(len(set(words)), len(words))
        for name, word, title in found:
            self.assertTrue(title, name)
            self.assertNotIn(" ", word)

    def test_every_check_has_its_section_under_its_title(self):
        found, _, words = checks()
        for language in languages():
            text = pages(language)["checks.md"]
            sections = {}
            for section in re.split(r"^## ", text, flags=re.M)[1:]:
                heading, _, body = section.partition("\n")
                for word in [word for _, word in IDENTIFIER.findall(body)]:
                    self.assertTrue(IDENTIFIER.match(body.strip()), (language, word))
                    self.assertNotIn(word, sections, language)
                    sections[word] = heading.strip()
            self.assertEqual(set(sections), set(words) | plan_words(), language)
            translations = catalogue(language)
            for _, word, title in found:
                wanted = {form for context, form in translations[title] if context == "plateau::evaluation::Checks"}
                self.assertIn(sections[word], wanted, (language, word))

    def test_the_usual_numbers_are_those_of_the_program(self):
        rules = read("core/evaluation/evaluation.h")

        def number(name):
            return float(re.search(rf"{name} = ([\d.]+);", rules).group(1))

        lower, upper = re.search(r"plausibleAbsorbance\{(-?[\d.]+), ([\d.]+)\}", rules).groups()
        spike = re.search(r"spikeRecovery_percent\{(\d+), (\d+)\}", rules).groups()
        wanted = {"checks.md": [f"{100 * number('relativeRepeatability'):g} %", f"{number('maxBlankSpread'):.3f}", f"{lower}", f"{upper}",
                                f"{100 * number('minStandardRemaining'):g} %", f"{number('maxStandardAge_h'):g} h", spike[0], f"{spike[1]} %"],
                  "backup.md": re.findall(r"int (?:newest|days|months) = (\d+);", read("core/notebook/backuprule.h")),
                  "today.md": re.findall(r"pointedOut_days = (\d+);", read("core/equipment/standing.h")) +
                              re.findall(r"warnAhead_days = (\d+);", read("core/planning/lotoutlook.h")),
                  "uncertainty.md": [f"| {value}" for value in re.findall(r"usual\.\w+ = ([\d.]+);", read("core/planning/uncertaintysources.cpp"))]}
        self.assertEqual([len(numbers) for numbers in wanted.values()], [8, 3, 2, 7])
        for language in languages():
            for page, numbers in wanted.items():
                text = re.sub(r"(\d),(\d)", r"\1.\2", pages(language)[page].replace("\u00a0", " ").replace("\u2212", "-"))
                for value in numbers:
                    self.assertIn(value, text, (language, page))


class Numbers(unittest.TestCase):
    def test_the_tables_are_there(self):
        for language in languages():
            for page, least in (("arithmetic.md", 20), ("uncertainty.md", 15)):
                self.assertGreaterEqual(len(field_rows(pages(language)[page])), least, (language, page))

    def test_no_row_escapes_the_comparison(self):
        for language in languages():
            for page in ("arithmetic.md", "uncertainty.md"):
                text = pages(language)[page]
                self.assertEqual(len(re.findall(r"^\|.*\| `[^`]+` \|$", text, re.M)), len(field_rows(text)), (language, page))

    def test_they_are_what_the_program_computes(self):
        if not PROGRAM:
            self.skipTest("no program was named, so nothing was computed")
        status, evaluation = evaluated(ROOT / "sampledata" / "clean-run.json")
        self.assertEqual(status, 0)
        for language in languages():
            for page in ("arithmetic.md", "uncertainty.md"):
                for what, number, path in field_rows(pages(language)[page]):
                    decimals = len(number.partition(".")[2])
                    self.assertEqual(number, f"{value_at(evaluation, path):.{decimals}f}", (language, page, what, path))

    def test_every_part_of_the_budget_is_listed_under_its_name(self):
        if not PROGRAM:
            self.skipTest("no program was named, so nothing was computed")
        _, evaluation = evaluated(ROOT / "sampledata" / "clean-run.json")
        budget = value_at(evaluation, "results[3].budget")
        rows = {path: what for what, _, path in field_rows(pages(SOURCE_LANGUAGE)["uncertainty.md"])}
        for at, term in enumerate(budget):
            for field in ("standardUncertainty", "share"):
                self.assertTrue(rows[f"results[3].budget[{at}].{field}"].startswith(term["term"] + ","), term)
        self.assertNotIn(f"results[3].budget[{len(budget)}].share", rows)

    def test_the_readings_of_the_first_rack_give_a_run_that_is_reportable(self):
        if not PROGRAM:
            self.skipTest("no program was named, so nothing was computed")
        run = json.loads(read("sampledata/on-the-bench.json"))
        open_tubes = [at for at, tube in enumerate(run["tubes"], 1) if "A2" not in tube["readings"]]
        for language in languages():
            rows = re.findall(r"^\| (\d+) \| ([^|]+) \| (\d[.,]\d+) \|$", pages(language)["first-rack.md"], re.M)
            self.assertEqual([int(tube) for tube, _, _ in rows], open_tubes, language)
            for tube, contents, number in rows:
                content = run["tubes"][int(tube) - 1]
                for part in contents.strip().split(", "):
                    self.assertIn(part, content["sample"], language)
                content["readings"]["A2"] = float(number.replace(",", "."))
            with tempfile.TemporaryDirectory() as folder:
                file = pathlib.Path(folder) / "rack.json"
                file.write_text(json.dumps(run), encoding="utf-8")
                status, evaluation = evaluated(file)
            self.assertEqual((status, evaluation["acceptable"]), (0, True), language)


class Typography(unittest.TestCase):
    LETTERS_FOR_SIGNS = r"\S x \S|[\w)] - [\w(]|(?<![^\s(])-\d"
    # The number of a standard has a year behind a colon; a picture begins with "![".
    FRENCH_SPACES = "(?<!\u202f)(?:[;?]|!(?!\\[))|(?<![\u00a0\\d]):|(?<!\u00a0)»|«(?!\u00a0)"
    BREAK_BEFORE_UNIT = r"\d (?:mL|µL|L|g|mg|kg|nm|mm|cm|min|h|s|°C|%|g/L|kB|ko)(?![\w’-])"

    def lines(self):
        """Neither headings, whose blanks make the anchors, nor rows that are compared with numbers of the program."""
        for language in languages():
            for name, text in pages(language).items():
                for line in text.splitlines():
                    if not line.startswith("#") and not FIELD_ROW.match(line):
                        yield language, name, re.sub(r"\]\([^)]*\)", "]", without_code(line))

    def test_the_rules_find_what_they_forbid(self):
        for wrong in ("c x V", "3,32 x 64,06", "A1 - A2", "x (1 - p)", "-0,1 bis 4,0", "(-0.1)"):
            self.assertRegex(wrong, self.LETTERS_FOR_SIGNS)
        for wrong in ("3,32 mL", "weniger als 85 % verblieben", "0,2 g/L, 1 h"):
            self.assertRegex(wrong, self.BREAK_BEFORE_UNIT)
        for wrong in ("la chaîne ; chaque", "quoi ?", "voir : ici", "« oui »"):
            self.assertRegex(wrong, self.FRENCH_SPACES)
        for right in ("ISO 8655-2:2002", "la chaîne\u202f; chaque", "voir\u00a0: ici"):
            self.assertNotRegex(right, self.FRENCH_SPACES)
        for right in ("ISO 5725-6", "7-fold", "c × V", "A1 − A2"):
            self.assertNotRegex(right, self.LETTERS_FOR_SIGNS)
        for right in ("3,32\u00a0mL", "2 L-Ascorbinsäure", "24 horas", "10 Minuten"):
            self.assertNotRegex(right, self.BREAK_BEFORE_UNIT)
        self.assertEqual({language for language, _, _ in self.lines()}, set(languages()))

    def test_a_minus_and_a_times_sign_are_no_letters_and_hyphens(self):
        for language, name, line in self.lines():
            self.assertNotRegex(line, self.LETTERS_FOR_SIGNS, (language, name))

    def test_french_signs_keep_their_space(self):
        for language, name, line in self.lines():
            if language == "fr":
                self.assertNotRegex(line, self.FRENCH_SPACES, name)

    def test_a_number_stays_with_its_unit(self):
        for language, name, line in self.lines():
            if language != SOURCE_LANGUAGE:
                self.assertNotRegex(line, self.BREAK_BEFORE_UNIT, (language, name))


class Languages(unittest.TestCase):
    def test_they_have_the_same_pages_with_the_same_structure(self):
        source = pages(SOURCE_LANGUAGE)
        for language in languages()[1:]:
            other = pages(language)
            self.assertEqual(set(other), set(source), language)
            for name, text in source.items():
                with self.subTest(language=language, page=name):
                    for what in (lambda page: [level for level, _ in HEADING.findall(page)],
                                 lambda page: [target.split("#")[0] for target in links(page)],
                                 lambda page: [("#" in target) for target in links(page)],
                                 lambda page: [target.rpartition("/")[2] for _, target in PICTURE.findall(page)],
                                 lambda page: [word for _, word in IDENTIFIER.findall(page)],
                                 lambda page: [row[1:] for row in field_rows(page)],
                                 lambda page: page.count("\n| "),
                                 lambda page: len(BOLD.findall(page)) == 0):
                        self.assertEqual(what(other[name]), what(text))

    def test_a_link_to_a_section_leads_to_the_same_section(self):
        source = pages(SOURCE_LANGUAGE)
        for language in languages()[1:]:
            other = pages(language)
            for name, text in source.items():
                for mine, theirs in zip(links(text), links(other[name])):
                    page, _, place = mine.partition("#")
                    if place:
                        at = anchors(source[page or name]).index(place)
                        self.assertEqual(anchors(other[page or name])[at], theirs.partition("#")[2], (language, name, mine))

    def test_what_the_records_do_not_promise_is_said(self):
        for language in sorted(folder.name for folder in HELP.iterdir() if (folder / "records.md").exists()):
            sections = re.split(r"^## ", (HELP / language / "records.md").read_text(encoding="utf-8"), flags=re.M)
            promises = [line for line in sections[3].splitlines() if line.startswith("- ")]
            self.assertEqual(len(promises), 6, language)
            for said in ("17025:2017, 7.11.2", "21 CFR Part 11"):
                self.assertTrue(any(said in line for line in promises), (language, said))

    def test_they_are_translated(self):
        source = pages(SOURCE_LANGUAGE)
        for language in languages()[1:]:
            for name, text in pages(language).items():
                mine = [line for line in text.splitlines() if re.match(r"^[A-Z][^`|]{60,}$", line)]
                self.assertEqual([line for line in mine if line in source[name]], [], (language, name))


if __name__ == "__main__":
    if len(sys.argv) > 1 and not sys.argv[1].startswith("-") and pathlib.Path(sys.argv[1]).is_file():
        PROGRAM = str(pathlib.Path(sys.argv.pop(1)).resolve())
    else:
        print("help_test: no program was named; what it has to compute is skipped", file=sys.stderr)
    unittest.main()
