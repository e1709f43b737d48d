"""The second language: whole, fresh, by its own habits; and nothing on screen goes past it."""

from __future__ import annotations

import ast
import json
import string
import subprocess
import sys
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QLocale, QTranslator
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from planner.assets import demo_log, demo_place, resource
from planner.logbook import Haul, read_log
from planner.phrasing import number_text
from planner.sites import load_site
from planner.sites.editing import number_or_text
from planner.ui.language_choice import codes, wanted
from planner.ui.languages import CONTEXT, ITS_NAME, dress, languages, use
from planner.ui.settings import Settings, write_settings
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench
from planner.words import say, speak, spoken

sys.path.insert(0, str(Path(__file__).parents[2] / "packaging"))
import languages as gatherer

ROOT = gatherer.ROOT

OTHERS = [code for code in codes() if code != "en"]


@pytest.fixture(autouse=True)
def english_afterwards() -> Iterator[None]:
    yield
    speak(None)


def slots(text: str) -> set[tuple[str, str, str]]:
    """Return the named values of a text with their formats."""
    parsed = string.Formatter().parse(text)
    return {(name, spec or "", how or "") for _, name, spec, how in parsed if name}


@pytest.mark.parametrize("code", OTHERS)
def test_every_text_is_translated(code: str) -> None:
    """The language file holds what the program says, all of it and no more."""
    wanted_texts = gatherer.gathered()
    done = gatherer.translations(gatherer.FOLDER / f"{code}.ts")
    assert [text for text in wanted_texts if text not in done] == []
    assert [text for text in done if text not in wanted_texts] == []


@pytest.mark.parametrize("code", OTHERS)
def test_the_made_file_is_that_of_the_texts(code: str) -> None:
    """What the program reads was made from the file that people edit, as it is now."""
    made = QTranslator()
    assert made.load(str(resource("languages", f"{code}.qm")))
    for (text, sense), translation in gatherer.translations(gatherer.FOLDER / f"{code}.ts").items():
        assert made.translate(CONTEXT, text, sense) == translation


@pytest.mark.parametrize("code", OTHERS)
def test_translations_keep_the_values_and_the_edges(code: str) -> None:
    """A value lost would be a number never told; a blank lost glues two sentences together."""
    for (text, sense), translation in gatherer.translations(gatherer.FOLDER / f"{code}.ts").items():
        if sense in (ITS_NAME[1], "after a number"):
            continue
        assert (len(text) - len(text.lstrip()), len(text) - len(text.rstrip())) == (
            len(translation) - len(translation.lstrip()),
            len(translation) - len(translation.rstrip()),
        ), text
        if "{" in text and not any(brace in text for brace in ("{ ", "[{", "{}")):
            assert slots(text) == slots(translation), text


@pytest.mark.parametrize("code", OTHERS)
def test_days_months_and_numbers_are_those_of_the_locale_data(code: str) -> None:
    """Names and signs against the Unicode locale data that Qt carries."""
    use(code)
    own, short = QLocale(code), QLocale.FormatType.ShortFormat
    for at in range(1, 13):
        day = date(2026, at, 1)
        assert say("{day:%B}", day=day) == own.standaloneMonthName(at)
        assert say("{day:%b}", day=day) == own.standaloneMonthName(at, short)
    for at in range(1, 8):
        day = date(2001, 1, at)
        assert say("{day:%A}", day=day) == own.standaloneDayName(at)
        assert say("{day:%a}", day=day) == own.standaloneDayName(at, short)
    assert say("{n:,.2f}", n=12345.678) == own.toString(12345.68, "f", 2)


def test_the_columns_of_a_paste_are_named_in_the_language() -> None:
    """They stood in English in the middle of a Spanish sentence."""
    page = "Armónico;Amplitud (m);Fase (°)\nM2;1,10;81,5\nS2;0,38;110,2\nK1;0,07;65,3"
    code = (
        "from planner.ui.languages import use; use('es')\n"
        "from planner.constituents.pasting import understand\n"
        "from planner.ui.places.paste_form import understood_text\n"
        f"page = {page!r}\nprint(ascii(understood_text(understand(page), page)))"
    )
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    told = ast.literal_eval(ran.stdout)
    assert "Columnas de números: amplitud, desfase." in told


@pytest.mark.parametrize("value", [0.0, 1.5, -0.25, 12.0, 1234.5, 0.001])
def test_numbers_shown_in_a_field_are_read_back(value: float) -> None:
    """What stands in a field with a decimal comma means the same number when it is saved."""
    use("es")
    assert number_or_text(number_text(value, 10)) == value


def test_the_language_is_the_variables_then_the_users_then_the_systems(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """An unknown one is passed over; English is what is left."""
    for name in ("FULLSHELL_LANGUAGE", "LC_ALL", "LC_MESSAGES", "LANG"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(sys, "platform", "linux")
    assert wanted() == "en"
    for system in ("es_MX.UTF-8", "es", "es.UTF-8", "es@euro"):
        monkeypatch.setenv("LANG", system)
        assert wanted() == "es"
    write_settings(Settings(language="en"))
    assert wanted() == "en"
    monkeypatch.setenv("FULLSHELL_LANGUAGE", "es")
    assert wanted() == "es"
    monkeypatch.setenv("FULLSHELL_LANGUAGE", "xx")
    assert wanted() == "en"


def test_languages_are_called_what_their_readers_call_them() -> None:
    named = languages()
    assert (named["en"], named["es"]) == ("English", "Español")
    assert list(named) == codes()
    assert spoken() == "en"


def test_a_language_begins_as_an_empty_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The contributor's guide promises one file and no word of code; the first word that is
    translated is said, all else is English, and numbers are the language's own."""
    file = tmp_path / "fr.ts"
    file.write_text("<TS/>", encoding="utf-8")
    monkeypatch.setattr(gatherer, "FOLDER", tmp_path)
    assert gatherer.main() == 1
    begun = file.read_text(encoding="utf-8")
    first = '<source>Choose dates</source>\n   <translation type="unfinished" />'
    assert first in begun
    done = first.replace(' type="unfinished" /', ">Choisir les dates</translation")
    file.write_text(begun.replace(first, done), encoding="utf-8")
    assert gatherer.main() == 1
    monkeypatch.setattr("planner.ui.languages.resource", lambda *parts: tmp_path / parts[-1])
    monkeypatch.setattr("planner.ui.language_choice.resource", lambda *_: tmp_path)
    assert languages() == {"en": "English", "fr": "français"}
    use("fr")
    assert say("Choose dates") == "Choisir les dates"
    assert say("{depth:.1f} m deep", depth=1.5) == "1,5 m deep"


def test_a_language_file_that_says_nothing_costs_no_sign_and_no_name(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A damaged file, or one just begun: English words with their percent, and a name to choose
    it by in the menu."""
    (tmp_path / "fr.qm").write_bytes(b"damaged")
    monkeypatch.setattr("planner.ui.languages.resource", lambda *parts: tmp_path / parts[-1])
    monkeypatch.setattr("planner.ui.language_choice.resource", lambda *_: tmp_path)
    assert languages() == {"en": "English", "fr": "français"}
    use("fr")
    assert say("{part:.0%} full", part=0.8) == "80% full"


# Walks the rooms in a language that puts every text between marks, and gives what is seen there.
# The values in a text stand outside its marks: a word among them has to be said for itself.
MARKED = """
import json, re
from planner.words import Language, speak
VALUE = re.compile(r"(\\{(?:[^{}]|\\{[^{}]*\\})*\\})")
speak(Language("xx", lambda text, _: "‹" + VALUE.sub("›\\\\1‹", text) + "›", ",", ".", "%"))
from datetime import date
from PySide6.QtCore import QAbstractListModel, Qt
from PySide6.QtWidgets import QAbstractItemView, QComboBox, QTabWidget, QWidget
from planner.ui.app import make_app
from planner.ui.sources import demo_source
from planner.ui.state import ViewState
from planner.ui.window import MainWindow
from planner.ui.workbench import Workbench
from tests.ui.rooms import Rooms, settle

seen = set()

def look(window):
    for each in window.findChildren(QWidget):
        for name in ("text", "title", "placeholderText", "toolTip", "accessibleName"):
            if hasattr(each, name):
                seen.add(str(getattr(each, name)()))
        if isinstance(each, QComboBox):
            seen.update(each.itemText(at) for at in range(each.count()))
        if isinstance(each, QTabWidget):
            seen.update(each.tabText(at) for at in range(each.count()))
        if isinstance(each, QAbstractItemView) and each.model():
            model, root = each.model(), each.rootIndex()
            flat = isinstance(model, QAbstractListModel)
            columns = range(1 if flat else min(model.columnCount(root), 30))
            seen.update(str(model.headerData(at, Qt.Orientation.Horizontal)) for at in columns)
            for row in range(min(model.rowCount(root), 8)):
                for column in columns:
                    cell = model.index(row, column, root)
                    seen.add(str(cell.data() or ""))
                    seen.add(str(cell.data(Qt.ItemDataRole.ToolTipRole) or ""))

make_app()
today = date(2026, 11, 25)
bench = Workbench(ViewState(today=today, day=today))
window = MainWindow(bench)
window.resize(1280, 800)
window.show()
bench.open(demo_source())
settle(window)
for room, widget in Rooms(window).walk():
    settle(window)
    # A table to take in shows its own words, and numbers to edit are no numbers between marks.
    if room != "Import a table" and not room.startswith("Place book: editing"):
        look(widget)
print(json.dumps(sorted(seen)))
"""
# Not the program's words: names of keys, zones, datums and files, and what Qt says itself.
NOT_OURS = (
    *("Ctrl+", "Alt+", "F1", "Scroll Left", "Scroll Right", "Close", "25 Nov 2026"),
    *("MLLW", "America/New_York", "EST", "UTC", "boat.logbook", "/demo-backups"),
)


def _unmarked(text: str) -> str:
    """Return the part of a text that stands between no marks."""
    depth, left = 0, ""
    for letter in text:
        # A text that was cut in two may have lost where it begins.
        depth = max(depth + (letter == "‹") - (letter == "›"), 0)
        left += letter if depth == 0 and letter != "›" else ""
    return left


def test_nothing_on_screen_goes_past_the_language(user_home: Path) -> None:
    """Every word of the views, their tabs, charts as tables and dialogs is said; what is not is
    the user's own, or a proper name."""
    command = [sys.executable, "-c", MARKED]
    ran = subprocess.run(command, capture_output=True, text=True, cwd=ROOT, check=True)
    seen = json.loads(ran.stdout)
    unsaid = {left for text in seen if (left := _unmarked(text))}
    for own in sorted((*NOT_OURS, *_own_words(), str(user_home)), key=len, reverse=True):
        unsaid = {left.replace(own, "") for left in unsaid}
    words = sorted(left for left in unsaid if sum(map(str.isalpha, left)) >= 3)
    assert words == []
    assert sum("‹" in text for text in seen) > 300


def _own_words() -> set[str]:
    """Return what the demo place, the samples and the demo log bring in themselves."""
    site = load_site(demo_place())
    log = read_log(demo_log(), lambda _: site.zone)
    words = {site.name, site.water.source, site.rules.checked_where}
    words |= {spot.name for spot in site.spots} | {note.text for note in site.rules.notes}
    words |= {note.category for note in site.rules.notes}
    words |= {begun for note in site.rules.notes if (begun := note.category.capitalize())}
    words |= {closure.reason for closure in site.closures}
    for sample in resource("..", "sample_sites").resolve().glob("*.toml"):
        words.add(load_site(sample).name)
    texts = ("trip", "spot", "trap", "design", "bait", "other", "notes", "place")
    words |= {getattr(haul, name) for haul in log.hauls for name in texts}
    assert isinstance(log.hauls[0], Haul)
    return {word for word in words if word}


def test_a_language_is_chosen_in_the_view_menu_for_the_next_start(
    bench: Workbench, qtbot: QtBot
) -> None:
    """The choice is marked, kept for the settings, and said to hold from the next start."""
    window = MainWindow(bench)
    qtbot.addWidget(window)
    told: list[str] = []
    bench.notice.connect(told.append)
    choice = next(each for each in window.findChildren(QAction) if each.text() == "Español")
    choice.trigger()
    assert choice.isChecked()
    assert bench.state.language == "es"
    assert "started again" in told[0]


def test_qts_own_buttons_follow_the_language(qapp: QApplication) -> None:
    """Save and Cancel in Qt's dialogs come from Qt's own translation of the language."""
    use("es")
    before = QLocale()
    try:
        dress(qapp)
        assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Cancelar"
        assert QLocale().decimalPoint() == ","
    finally:
        for translator in qapp.findChildren(QTranslator):
            qapp.removeTranslator(translator)
        QLocale.setDefault(before)
