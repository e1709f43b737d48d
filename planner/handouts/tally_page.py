"""The tally page: one file that a phone opens without a network, and that gives a haul table."""

from __future__ import annotations

import hashlib
import json
import re
from html.parser import HTMLParser
from typing import Any, Final

from planner import words
from planner.assets import resource
from planner.handouts.deck import DeckTrip
from planner.logbook import Haul
from planner.logbook.columns import COLUMNS, COUNTS
from planner.phrasing import Style, height_text
from planner.words import spoken

_SLOT: Final = "__TRIP__"
_TEXTS: Final = ("trap", "spot", "design", "bait", "other", "notes")


def tally_page(trip: DeckTrip, style: Style) -> str:
    """Return the page of a trip as HTML, script and style inside.

    What it counts is kept in the browser under the trip and its traps, so the same page
    written twice finds what was counted before.
    """
    traps = [_trap(haul, style) for haul in trip.hauls]
    data = {
        "key": _key(trip),
        "trip": trip.name,
        "place": trip.place,
        "zone": trip.zone.key,
        "invented": trip.invented,
        "hours12": style.hours12,
        "fahrenheit": style.temperature == "F",
        "columns": COLUMNS,
        "language": spoken(),
        "words": {text: words.say(text) for text in page_texts()},
        "traps": traps,
    }
    # Inside a script element only "<" could end it.
    written = json.dumps(data).replace("<", "\\u003c")
    return _template().replace(_SLOT, written)


def page_texts() -> list[str]:
    """Return every text of the page: what stands in it, its labels, and what its script says."""
    page = _Texts()
    page.feed(_template())
    said = [json.loads(text) for text in re.findall(r'\btr\(("(?:[^"\\]|\\.)*")', _template())]
    return list(dict.fromkeys([*page.texts, *said]))


def _template() -> str:
    return resource("deck", "tally-page.html").read_text(encoding="utf-8")


class _Texts(HTMLParser):
    """Gathers the texts and labels of the page's body, without its script."""

    def __init__(self) -> None:
        super().__init__()
        self.texts: list[str] = []
        self._inside = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in ("main", "script"):
            self._inside = tag
        if self._inside == "main":
            self.texts += [
                text for name, text in attrs if name in ("aria-label", "placeholder") and text
            ]

    def handle_data(self, data: str) -> None:
        text = data.strip()
        if self._inside == "main" and any(letter.isalpha() for letter in text):
            self.texts.append(text)


def _key(trip: DeckTrip) -> str:
    traps = json.dumps([trip.place, trip.name, [(haul.trap, haul.spot) for haul in trip.hauls]])
    return hashlib.sha256(traps.encode()).hexdigest()[:16]


def _trap(haul: Haul, style: Style) -> dict[str, Any]:
    """Return a row as the page keeps it: instants in milliseconds, None for not recorded.

    A planned time of hauling is left out: the page stamps the real one.
    """
    counted = any(getattr(haul, name) is not None for name in COUNTS)
    hauled_at = haul.hauled_at if counted else None
    return {
        **{name: getattr(haul, name) for name in (*_TEXTS, *COUNTS)},
        "depth_m": haul.depth_m,
        "depth_said": "" if haul.depth_m is None else height_text(haul.depth_m, style),
        "set_at": None if haul.set_at is None else round(haul.set_at.timestamp() * 1000),
        "hauled_at": None if hauled_at is None else round(hauled_at.timestamp() * 1000),
        "touched": counted,
    }
