"""The phone page, tapped through a whole trip in a real browser without any network."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from phone import phones
from PySide6.QtWidgets import QFileDialog

from planner.assets import demo_place
from planner.cli import main
from planner.handouts.deck import DeckTrip, deck_trip
from planner.handouts.tally_page import tally_page
from planner.logbook import Haul, Logbook
from planner.phrasing import Style
from planner.sites import load_site
from planner.ui.language_choice import codes
from planner.ui.languages import use
from planner.ui.load.view import LoadView
from planner.ui.workbench import Workbench

SITE = load_site(demo_place())
SET = datetime(2026, 8, 13, 21, 0, tzinfo=UTC)
TRIP = "14 Aug 2026"
SPOTS = ("ramp flat", "grass edge", "oyster bar")
ROWS = tuple(
    Haul(
        TRIP, SITE.name, SPOTS[number % 3], f"A{number}", "bare wire, 2 doors", "menhaden",
        set_at=SET + timedelta(minutes=5 * number), hauled_at=SET + timedelta(hours=14),
        depth_m=1.1,
    )
    for number in range(1, 13)
)  # fmt: skip
# A whole trip as it is told on deck: taps in order for each trap.
CATCH = {
    f"A{number}": ["keepers"] * (number % 4)
    + ["shorts"] * (number % 3)
    + ["females"] * (number % 2)
    for number in range(1, 13)
}


@pytest.fixture(scope="module")
def new_phone() -> Iterator[Callable[..., Any]]:
    with phones() as maker:
        yield maker


@pytest.fixture
def context(new_phone: Callable[..., Any]) -> Iterator[Any]:
    # A clock far from the place's own: the page must not go by it.
    made = new_phone(timezone_id="Asia/Kolkata")
    # A tap that does not arrive shall not hold the run for long.
    made.set_default_timeout(15_000)
    yield made
    made.close()


class Deck:
    """The page as a hand uses it; whatever it asks the network for is noted."""

    def __init__(self, context: Any, file: Path) -> None:
        self.page = context.new_page()
        self.asked: list[str] = []
        self.faults: list[str] = []
        self.page.on("request", lambda request: self.asked.append(request.url))
        self.page.on("pageerror", lambda error: self.faults.append(str(error)))
        self.page.goto(file.as_uri())

    def tap(self, *ids: str) -> None:
        for each in ids:
            self.page.tap(f"#{each}")

    def shows(self, each: str) -> str:
        return str(self.page.inner_text(f"#{each}"))

    def count(self, kind: str) -> str:
        return str(self.page.inner_text(f"#{kind} b"))

    def text(self) -> str:
        self.tap("to-finish")
        text = self.page.input_value("#text")
        self.tap("finish-back")
        return str(text)


def written(folder: Path, trip: DeckTrip, style: Style = Style()) -> Path:  # noqa: B008
    file = folder / "tally.html"
    file.write_text(tally_page(trip, style), encoding="utf-8")
    return file


@pytest.fixture
def deck(context: Any, tmp_path: Path) -> Iterator[Deck]:
    made = Deck(context, written(tmp_path, deck_trip(ROWS, SITE.zone)))
    yield made
    assert not made.faults
    made.page.close()


def taken_in(text: str, tmp_path: Path, there: tuple[Haul, ...] = ()) -> list[Haul]:
    """Return the log after the page's table came home to it, twice."""
    table = tmp_path / "home.csv"
    table.write_text(text, encoding="utf-8", newline="")
    with Logbook.open(tmp_path / "home.logbook") as book:
        if there:
            book.save_trip(TRIP, there)
        book.import_table(table, lambda _: SITE.zone)
        once = book.read().hauls
        assert not book.import_table(table, lambda _: SITE.zone).trips
        assert book.read().hauls == once
    return list(once)


def test_a_whole_trip_comes_home(deck: Deck, tmp_path: Path) -> None:
    """What was tapped on deck is in the log that evening, in the rows that waited for it."""
    begun = datetime.now(UTC)
    for number, (trap, taps) in enumerate(CATCH.items(), start=1):
        assert deck.shows("trap") == trap
        deck.tap(*taps, "none")
        if number < len(CATCH):
            deck.tap("next")
    deck.tap("to-finish")
    with deck.page.expect_download() as download:
        deck.tap("save")
    text = Path(download.value.path()).read_bytes().decode()
    assert download.value.suggested_filename == "Sedge Hollow 14 Aug 2026 tally.csv"
    # Set in August: a haul stamped now would be a long soak, but a possible one.
    hauls = taken_in(text, tmp_path, ROWS)
    assert [haul.trap for haul in hauls] == list(CATCH)
    for haul in hauls:
        taps = CATCH[haul.trap]
        counted = (haul.keepers, haul.shorts, haul.females, haul.sponge)
        assert counted == (*(taps.count(kind) for kind in ("keepers", "shorts", "females")), 0)
        assert (haul.judged, haul.light) == (None, None)  # never looked at is not none
        assert begun - timedelta(minutes=1) <= haul.hauled_at <= datetime.now(UTC)
        assert haul.set_at in {row.set_at for row in ROWS if row.trap == haul.trap}
        assert (haul.spot, haul.depth_m, haul.bait) == (
            next(row.spot for row in ROWS if row.trap == haul.trap), 1.1, "menhaden",
        )  # fmt: skip
    assert [url for url in deck.asked if not url.startswith(("file:", "data:", "blob:"))] == []


def test_what_is_counted_survives_the_tab(deck: Deck, context: Any) -> None:
    """A phone drops pages from memory at will: reopened, the page shows what was counted."""
    deck.tap("keepers", "keepers", "next", "shorts")
    deck.page.reload()
    assert (deck.shows("trap"), deck.count("shorts")) == ("A2", "1")
    deck.tap("back")
    assert deck.count("keepers") == "2"
    url = deck.page.url
    again = context.new_page()
    again.goto(url)
    assert again.inner_text("#keepers b") == "2"
    again.close()


def test_undo_goes_back_step_by_step(deck: Deck) -> None:
    """A wet thumb hits the wrong button: every tap can be taken back, by name, in any trap."""
    deck.tap("keepers", "light", "next", "females")
    assert deck.shows("undo") == "Undo female in A2"
    deck.tap("undo")
    assert (deck.shows("trap"), deck.count("females")) == ("A2", "–")
    deck.tap("undo")
    assert (deck.shows("trap"), deck.count("light"), deck.count("judged")) == ("A1", "–", "–")
    deck.tap("undo")
    assert (deck.count("keepers"), deck.shows("hauled_at")) == ("–", "–")
    assert deck.page.is_disabled("#undo")


def test_parts_never_exceed_the_whole(deck: Deck, tmp_path: Path) -> None:
    """More light than judged would be refused at home, when nobody remembers."""
    deck.tap("light", "light", "judged", "sponge")
    assert [deck.count(kind) for kind in ("judged", "light")] == ["3", "2"]
    assert [deck.count(kind) for kind in ("females", "sponge")] == ["1", "1"]
    deck.tap("less-judged", "less-judged", "less-females")
    assert [deck.count(kind) for kind in ("judged", "light")] == ["1", "1"]
    assert [deck.count(kind) for kind in ("females", "sponge")] == ["0", "0"]
    (haul,) = taken_in(deck.text(), tmp_path)
    assert (haul.judged, haul.light, haul.keepers) == (1, 1, None)


def test_awkward_words_come_home_as_written(deck: Deck, tmp_path: Path) -> None:
    """A note may hold quotes, commas or look like a formula; it is neither run nor mangled."""
    deck.tap("keepers")
    deck.page.fill("#notes", '=1+1, "fouled"')
    deck.page.fill("#other", "2 whelks; 1 skate <b>é</b>")
    deck.page.press("#other", "Tab")
    deck.tap("to-list")
    deck.page.fill("#label", "+B<1>")
    deck.page.press("#label", "Enter")
    assert deck.shows("trap") == "+B<1>"
    deck.tap("shorts")
    text = deck.text()
    assert "'=1+1" in text
    first, added = taken_in(text, tmp_path)
    assert (first.notes, first.other) == ('=1+1, "fouled"', "2 whelks; 1 skate <b>é</b>")
    assert (added.trap, added.shorts, added.spot, added.set_at) == ("+B<1>", 1, "", None)


def test_times_are_stamped_and_nudged(deck: Deck) -> None:
    """The clock of a haul is the place's own, whatever zone the phone is in."""
    deck.tap("keepers")
    before = deck.page.evaluate("state.traps[0].hauled_at")
    deck.page.tap("[data-time=hauled_at][data-by='-5']")
    assert deck.page.evaluate("state.traps[0].hauled_at") == before - 300_000
    expected = datetime.fromtimestamp(before / 1000 - 300, SITE.zone)
    assert expected.isoformat(timespec="minutes") in deck.text()
    assert deck.shows("set_at") == "Thu 17:05"
    assert "2026-08-13T17:05-04:00" in deck.text()


def test_copied_text_is_the_file(context: Any, deck: Deck) -> None:
    """Where no file can be kept, the text sent as a message says the same."""
    context.grant_permissions(["clipboard-read", "clipboard-write"])
    deck.tap("keepers", "to-finish", "copy")
    deck.page.wait_for_function("document.getElementById('told').textContent.startsWith('Copied')")
    copied = deck.page.evaluate("navigator.clipboard.readText()")
    assert copied.splitlines() == deck.page.evaluate("table()").splitlines()
    assert len(copied.splitlines()) == 2


@pytest.mark.parametrize("refuse", ["reads", "writes"])
def test_without_a_store_the_tab_keeps_it(context: Any, tmp_path: Path, refuse: str) -> None:
    """Some browsers give a page opened as a file no store: reloading must lose nothing."""
    page = context.new_page()
    broken = {
        "reads": "Object.defineProperty(window, 'localStorage', { get() { throw new Error(); } });",
        "writes": "Storage.prototype.setItem = () => { throw new DOMException('full'); };",
    }
    page.add_init_script(broken[refuse])
    page.goto(written(tmp_path, deck_trip(ROWS[:2], SITE.zone)).as_uri())
    page.tap("#keepers")
    assert "save before you close" in page.inner_text("#kept")
    page.reload()
    assert page.inner_text("#keepers b") == "1"
    page.close()


def test_doubts_are_told_before_the_way_home(context: Any, tmp_path: Path) -> None:
    """A set that lies after its haul, and traps forgotten, are said while they can be mended."""
    late = [replace(ROWS[0], set_at=datetime.now(UTC) + timedelta(days=2)), ROWS[1]]
    made = Deck(context, written(tmp_path, deck_trip(late, SITE.zone)))
    made.tap("keepers")
    assert "before it was set" in made.shows("odd")
    made.tap("to-finish")
    assert "not in the file: A2" in made.shows("doubts")
    made.page.fill("#water", "7x")
    made.page.press("#water", "Tab")
    assert "not a number" in made.shows("doubts")
    made.page.fill("#water", "21,5")
    made.page.press("#water", "Tab")
    assert ",21.5," in made.page.input_value("#text")
    made.page.close()


def test_american_units(context: Any, tmp_path: Path) -> None:
    """Fahrenheit typed on deck is Celsius in the table."""
    style = Style("ft", "F", True)
    made = Deck(context, written(tmp_path, deck_trip(ROWS[:1], SITE.zone, invented=True), style))
    assert "3.6 ft" in made.shows("where")
    assert made.shows("set_at").endswith("PM")
    assert "Invented" in made.shows("invented")
    made.tap("keepers", "to-finish")
    made.page.fill("#water", "70")
    assert ",21.1," in made.page.input_value("#text")
    made.page.close()


def test_fits_a_small_phone_and_buttons_are_large(context: Any, deck: Deck) -> None:
    """Sideways scrolling and small buttons are misses with wet hands; 44 px is common practice."""
    for step in ("to-list", "list-back", "to-finish", "finish-back"):
        width = deck.page.evaluate("document.documentElement.scrollWidth")
        assert width <= 390
        boxes = deck.page.evaluate(
            "[...document.querySelectorAll('button')].filter(b => b.offsetParent)"
            ".map(b => [b.id || b.textContent, b.offsetHeight])"
        )
        assert [name for name, high in boxes if high < 44] == []
        deck.tap(step)
    high = deck.page.evaluate("document.getElementById('keepers').offsetHeight")
    assert high >= 88
    nameless = deck.page.evaluate(
        "[...document.querySelectorAll('button, input, textarea')].filter(e =>"
        " !(e.textContent.trim() || e.ariaLabel || e.labels?.length)).length"
    )
    assert nameless == 0


# Where a word of a kind lies under the button that takes one away.
COVERED = """[...document.querySelectorAll(".kind")].filter((kind) => {
  const words = document.createRange();
  words.selectNodeContents(kind.querySelector(".add"));
  const less = kind.querySelector(".less").getBoundingClientRect();
  return [...words.getClientRects()].some((at) => at.right > less.left && at.bottom > less.top);
}).map((kind) => kind.textContent)"""


@pytest.mark.parametrize("code", codes())
def test_no_word_lies_under_a_button(
    new_phone: Callable[..., Any], tmp_path: Path, code: str
) -> None:
    """What a button counts is read at a glance, in the longest words, on the smallest phone."""
    use(code)
    try:
        long = [replace(haul, trap=f"Long label of a trap {haul.trap}") for haul in ROWS]
        file = written(tmp_path, deck_trip(long, SITE.zone, invented=True))
    finally:
        use("en")
    context = new_phone(viewport={"width": 320, "height": 568})
    try:
        page = Deck(context, file).page
        assert page.evaluate(COVERED) == []
        assert page.evaluate("document.documentElement.scrollWidth") <= 320
        assert page.locator("#trap").bounding_box()["height"] < 120
    finally:
        context.close()


def test_nothing_in_the_page_reaches_out() -> None:
    """One file: no address, no import, and a policy that would forbid either."""
    page = tally_page(deck_trip(ROWS, SITE.zone), Style())
    assert not re.search(r"https?://|\bimport\b|@import|<link rel=.stylesheet|src=", page)
    assert "default-src 'none'" in page


def test_a_name_cannot_break_out_of_the_page() -> None:
    """A place called like a tag must not end the script."""
    row = replace(ROWS[0], place="</script><script>alert(1)</script>", notes="&amp; <!--")
    page = tally_page(deck_trip([row], SITE.zone), Style())
    assert page.count("</script>") == 2  # the page's own


def test_from_the_window_and_the_command_line(
    bench: Workbench, qtbot: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The page is offered where the trip is loaded up, and without a window too."""
    out = tmp_path / "tally.html"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(out), ""))
    monkeypatch.setattr("planner.ui.load.deck_button.QDesktopServices.openUrl", lambda _: True)
    view = LoadView(bench)
    qtbot.addWidget(view)
    view.show()
    qtbot.waitUntil(lambda: bench.idle, timeout=30_000)
    view.on_deck.page.trigger()
    qtbot.waitUntil(out.exists, timeout=30_000)
    assert "29 Nov 2026" in out.read_text(encoding="utf-8")
    assert main(["tally", "sedge-hollow", str(out), "--day", "2026-12-05"]) == 0
    assert "5 Dec 2026" in out.read_text(encoding="utf-8")
