"""The pages of the guide in every language: links, pictures, names on screen, and one structure."""

from __future__ import annotations

import re
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale

from planner.assets import demo_place, guide
from planner.sites import load_site
from planner.ui.guide.help_pages import CONTENTS, PAGES, anchor, contents, headings, pages, path_of
from planner.ui.language_choice import ENGLISH, codes
from planner.ui.languages import use
from planner.ui.window import VIEWS
from planner.words import say, speak

sys.path.insert(0, str(Path(__file__).parents[2] / "packaging"))
import languages as gatherer

DOCS = sorted(guide().rglob("*.md"))
README = guide().parent / "README.md"
# A language without a guide of its own has the English one, which is looked at anyway.
LANGUAGES = [code for code in codes() if code == ENGLISH or guide(code).is_dir()]
OTHERS = [code for code in LANGUAGES if code != ENGLISH]
TRANSLATED = [(code, path.name) for code in OTHERS for path in sorted(guide(code).glob("*.md"))]


@pytest.fixture
def language(request: pytest.FixtureRequest) -> Iterator[str]:
    """Speak the language of the test's parameter."""
    use(request.param)
    yield request.param
    speak(None)


in_each_language = pytest.mark.parametrize("language", LANGUAGES, indirect=True)
each_translated = pytest.mark.parametrize(
    ("language", "page"),
    TRANSLATED,
    indirect=["language"],
    ids=[f"{code}/{page}" for code, page in TRANSLATED],
)
each_page = pytest.mark.parametrize(
    "path", DOCS, ids=lambda path: path.relative_to(guide()).as_posix()
)


def _read(path: Path) -> str:
    return path.read_text(encoding="utf-8")


def _links(path: Path) -> list[str]:
    text = re.sub(r"```.*?```", "", _read(path), flags=re.S)
    return re.findall(r"\]\(([^)\s]+)\)", text)


# -- one language at a time ----------------------------------------------------------------------


@pytest.mark.parametrize(
    "path", [*DOCS, README], ids=lambda path: path.relative_to(README.parent).as_posix()
)
def test_every_link_and_picture_leads_somewhere(path: Path) -> None:
    """A page, a picture, and where one is named the heading on it; none leaves the repository."""
    for link in _links(path):
        name, _, heading = link.partition("#")
        target = (path.parent / name).resolve() if name else path
        assert target.exists(), link
        if heading:
            assert heading in map(anchor, headings(target)), link


@each_page
def test_no_page_of_the_guide_leads_out_of_it(path: Path) -> None:
    """What is not in the wheel cannot be opened offline."""
    for link in _links(path):
        target = (path.parent / link.partition("#")[0]).resolve()
        assert target.is_relative_to(guide().resolve()), link


@in_each_language
def test_every_place_of_work_has_a_page_that_begins_with_its_question(language: str) -> None:
    """The label and the question are those on the rail, so that the reader knows where they are."""
    assert set(PAGES) == {name for name, *_ in VIEWS}
    for name, label, question, *_ in VIEWS:
        assert _read(path_of(PAGES[name])).startswith(f"# {say(label)}\n\n*{say(question)}*\n")


@in_each_language
def test_every_page_is_in_the_contents(language: str) -> None:
    """A page that no list names is found by nobody."""
    assert set(pages()) == {path.name for path in guide().glob("*.md")}
    asked = {entry.text for group in contents() for entry in group.entries}
    title, *answered = headings(path_of("questions.md"))
    assert title not in asked
    assert [each for each in answered if each not in asked] == []


@in_each_language
def test_what_the_guide_names_is_on_screen_by_that_name(language: str) -> None:
    """Words in bold or slanted letters that name a button, a tab, a menu or a line on screen are
    what the window itself says there, on every page, and on the first page of the project."""
    said = _Said()
    own = guide() if language == ENGLISH else guide(language)
    for path in [*sorted(own.glob("*.md")), *([README] if language == ENGLISH else [])]:
        if path.name == "fullness-model.md":  # for engineers: its names are those of the model
            continue
        assert [name for name in _named(path) if not said.holds(name)] == [], path.name


def test_a_name_that_is_not_on_screen_is_found_out() -> None:
    """Without this the test above might hold everything for said."""
    said = _Said()
    assert said.holds("Load up for this plan")
    assert said.holds("New trip from plan 1")
    assert not said.holds("Load up for this trip")
    assert not said.holds("Weigh")


class _Said:
    """The texts of the window in the language in use."""

    def __init__(self) -> None:
        texts = {_plain(say(text, sense=sense)) for text, sense in gatherer.gathered()}
        texts |= {_plain(load_site(demo_place()).name), "f1"}
        # "Whole log to keep or carry (*.logbook)" is one of the kinds in a dialog of files.
        self._texts = {each for text in texts for each in text.split(";;")}
        self._with_values = [
            re.compile(re.sub(r"\\{.*?\\}", ".+", re.escape(text.partition(" (")[0])))
            for text in self._texts
            if re.match(r"\w+ \w+ .*\{", text)
        ]

    def holds(self, name: str) -> bool:
        """Tell whether this is on screen, or each step of a way such as "View, Units" is."""
        return self._says(name) or all(map(self._says, name.split(", ")))

    def _says(self, name: str) -> bool:
        """Tell whether a text is the name, or a longer one begins with it as with a head."""
        plain = _plain(name)
        return (
            plain in self._texts
            or any(
                re.match(rf"{re.escape(plain)}(:|\.|,| to | towards | a | para | hacia | por )", t)
                for t in self._texts
            )
            or any(each.match(plain) for each in self._with_values)
        )


def _named(path: Path) -> list[str]:
    """Return the words of a page that name what is on screen: in bold or slanted letters, with a
    capital, and neither a sentence of their own nor the subject at the head of a paragraph."""
    text = re.sub(r"```.*?```", "", _read(path), flags=re.S)
    found = []
    for each in re.finditer(r"(\*\*|(?<!\*)\*(?!\*))([^*\n]+)\1", text):
        at_head = re.search(r"(^|\n|^ *- |\n *- )$", text[: each.start()])
        if each[2][0].isupper() and each[2][-1] not in ".?" and not at_head:
            found.append(each[2])
    return found


def _plain(words: str) -> str:
    return words.replace("&", "").rstrip(".…").casefold()


# -- translations beside the English pages -------------------------------------------------------


@each_translated
def test_a_translation_has_the_structure_of_the_english_page(language: str, page: str) -> None:
    """A heading, a line of a list, a row, a picture, a sentence, a link or a number that comes,
    goes or changes in English fails here until the translation follows."""
    english, own = guide(page), guide(language, page)
    assert _shape(own) == _shape(english)
    assert _targets(own) == _targets(english)
    assert _numbers(own, language) == _numbers(english, ENGLISH)


@each_translated
def test_a_translation_names_what_is_on_screen_by_its_name_there(language: str, page: str) -> None:
    """What the English page sets in bold or slanted letters and the window says too stands in the
    translation as the window says it, and as often. One small word is only stressed."""
    names: dict[str, set[str]] = {}
    for text, sense in gatherer.gathered():
        names.setdefault(_plain(text), set()).add(_plain(say(text, sense=sense)))
    there = Counter(map(_plain, _marked(guide(language, page))))
    for words, times in Counter(_marked(guide(page))).items():
        said = names.get(_plain(words))
        if said and (words[0].isupper() or " " in words):
            assert sum(there[each] for each in said) >= times, f"{words}: {said}"


@each_translated
def test_an_english_page_is_linked_only_where_there_is_no_other(language: str, page: str) -> None:
    """And in brackets it is said beforehand, so that nobody is surprised."""
    for text, name in re.findall(
        r"(?<!!)\[([^\]]+)\]\(\.\./([^)#]+)", _read(guide(language, page))
    ):
        assert not guide(language, name).exists(), name
        assert text.endswith(")"), text


@pytest.mark.parametrize("code", OTHERS)
def test_a_translation_is_of_a_page_that_there_is(code: str) -> None:
    """A page that is gone in English must go in the others too; the first page is in each."""
    own = {path.name for path in guide(code).glob("*.md")}
    assert own <= {path.name for path in guide().glob("*.md")}
    assert CONTENTS in own


def _shape(path: Path) -> dict[str, object]:
    """Return what a page is made of: its headings by level, and the number of all else."""
    text = _read(path)
    return {
        "headings": re.findall(r"^#{1,6}(?= )", text, re.M),
        "sentences": [_sentences(each) for each in re.split(r"\n\n+", text)],
        "lines of lists": len(re.findall(r"^ *(?:[-*]|\d+\.) ", text, re.M)),
        "rows": [line.count("|") for line in text.splitlines() if line.startswith("|")],
        "pictures": text.count("!["),
        "code": len(re.findall(r"`[^`]+`", text)),
    }


def _sentences(paragraph: str) -> int:
    """Return how often a sentence ends; names of links and of things on screen have no end."""
    plain = re.sub(r"!?\[[^\]]*\]\([^)]*\)|\*+[^*\n]+\*+", "", paragraph)
    return len(re.findall(r"[.?!](?=[\s)»\"|]|$)", plain))


def _targets(path: Path) -> Counter[tuple[str, int]]:
    """Return the pages, headings (by their place on the page) and pictures that a page links to."""
    found: Counter[tuple[str, int]] = Counter()
    for link in _links(path):
        name, _, heading = link.partition("#")
        target = (path.parent / name).resolve() if name else path
        at = [anchor(each) for each in headings(target)].index(heading) if heading else -1
        found[target.name, at] += 1
    return found


def _numbers(path: Path, code: str) -> Counter[str]:
    """Return the numbers of a page, written as in English; those in names of links are left out."""
    text = re.sub(r"\]\([^)]*\)", "]", _read(path))
    habits = QLocale(code)
    return Counter(
        each.replace(habits.groupSeparator(), "").replace(habits.decimalPoint(), ".")
        for each in re.findall(r"\d+(?:[.,]\d+)*", text)
    )


def _marked(path: Path) -> list[str]:
    """Return the words of a page in bold or slanted letters."""
    return re.findall(r"\*+([^*\n]+)\*+", _read(path))
