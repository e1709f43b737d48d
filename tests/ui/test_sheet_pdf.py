"""The printed sheet read back: one page, real text, fonts inside, nothing over the edge."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from unicodedata import normalize

import pytest
from pypdf import PdfReader

from planner.assets import demo_log, demo_place
from planner.errors import PlannerError
from planner.estimates import Interval
from planner.handouts import TripSheet, trip_facts, trip_sheet
from planner.handouts.sheet_pdf import Paper, write_sheet
from planner.logbook import book_zone, read_log
from planner.phrasing import Style
from planner.sites import Site, load_site
from planner.sites.site import RuleNote
from planner.trips import Plan

pytestmark = pytest.mark.usefixtures("qapp")

TODAY = date(2026, 11, 25)
STYLES = [Style(), Style("ft", "F", True)]
# ISO 216 and ANSI Y14.1, in points.
SIZES: dict[Paper, tuple[float, float]] = {"A4": (595.3, 841.9), "letter": (612.0, 792.0)}


def made_sheet(site: Site, style: Style) -> TripSheet:

    begin = datetime(2026, 10, 31, 20, 0, tzinfo=UTC)  # over the night the clocks go back
    plan = Plan(
        1, begin, begin + timedelta(hours=1), begin + timedelta(hours=42), 42.0,
        Interval(14, 9, 20), Interval(0.12, 0.05, 0.25), 0.8, site.spots[0].name,
        begin + timedelta(hours=12), ("About 14.",), ("Little daylight left after the haul.",),
    )  # fmt: skip
    facts = trip_facts(site, plan, read_log(demo_log(), book_zone), 16.0)
    return trip_sheet(facts, TODAY, style)


def text_of(path: Path) -> str:
    """Return the words of the page, single-spaced, with ligatures written out."""
    (page,) = PdfReader(path).pages
    return (
        " ".join(page.extract_text().split())
        .replace("ﬂ", "fl")
        .replace("ﬀ", "ff")
        .replace("ﬁ", "fi")
    )


@pytest.mark.parametrize("paper", ["A4", "letter"])
@pytest.mark.parametrize("style", STYLES, ids=["metric", "american"])
def test_one_page_with_everything_on_it(tmp_path: Path, paper: Paper, style: Style) -> None:
    """Protects the sheet in the sleeve: one page of the right size that says all of it."""
    sheet = made_sheet(load_site(demo_place()), style)
    out = tmp_path / "sheet.pdf"
    write_sheet(sheet, out, paper)
    reader = PdfReader(out)
    assert len(reader.pages) == 1
    box = reader.pages[0].mediabox
    assert (float(box.width), float(box.height)) == pytest.approx(SIZES[paper], abs=1.5)
    text = text_of(out)
    parts = [
        sheet.title, sheet.invented, sheet.made, sheet.spots_note, sheet.rules_note,
        sheet.curve.in_words, *sheet.sky, *sheet.rules, *sheet.cautions,
        *(cell for row in (*sheet.times, *sheet.spots, *sheet.layout) for cell in row),
    ]  # fmt: skip
    for part in parts:
        assert normalize("NFKC", " ".join(part.split())) in text, part
    assert reader.metadata is not None
    assert reader.metadata.title == sheet.title


def test_fonts_are_embedded(tmp_path: Path) -> None:
    """Protects print on another machine: every font of the page travels in the file."""
    out = tmp_path / "sheet.pdf"
    write_sheet(made_sheet(load_site(demo_place()), Style()), out)
    fonts = PdfReader(out).pages[0]["/Resources"]["/Font"]
    assert fonts
    for font in fonts.values():
        (child,) = font.get_object()["/DescendantFonts"]
        descriptor = child.get_object()["/FontDescriptor"].get_object()
        assert {"/FontFile", "/FontFile2", "/FontFile3"} & set(descriptor), font


def test_all_text_lies_on_the_page(tmp_path: Path) -> None:
    """Protects from clipping: every piece of text begins within the margins of the page."""
    out = tmp_path / "sheet.pdf"
    write_sheet(made_sheet(load_site(demo_place()), Style()), out)
    page = PdfReader(out).pages[0]
    places: list[tuple[float, float]] = []

    def visit(text: str, cm: list[float], tm: list[float], _font: object, _size: float) -> None:
        if text.strip():
            x, y = tm[4], tm[5]
            places.append((x * cm[0] + y * cm[2] + cm[4], x * cm[1] + y * cm[3] + cm[5]))

    page.extract_text(visitor_text=visit)
    assert len(places) > 50
    margin = 12 / 25.4 * 72 - 1
    for x, y in places:
        assert margin <= x <= float(page.mediabox.width) - margin
        assert margin <= y <= float(page.mediabox.height) - margin


@pytest.mark.parametrize("paper", ["A4", "letter"])
def test_the_largest_place_still_fits(tmp_path: Path, paper: Paper) -> None:
    """Protects a place with everything: letters shrink, the page stays one."""
    site = load_site(demo_place())
    spots = tuple(
        replace(site.spots[0], name=f"a spot with a long name {at}", depth_m=2.0 + at)
        for at in range(40)
    )
    notes = tuple(RuleNote(f"heading {at}", "word " * 80) for at in range(40))
    habits = replace(site.habits, traps=80)
    rules = replace(site.rules, notes=notes, max_traps=None)
    sheet = made_sheet(replace(site, spots=spots, rules=rules, habits=habits), Style())
    out = tmp_path / "sheet.pdf"
    write_sheet(sheet, out, paper)
    assert len(PdfReader(out).pages) == 1
    assert sheet.cautions[-1] in text_of(out)


def test_marks_in_names_are_text(tmp_path: Path) -> None:
    """Protects from names that look like markup: they are printed as they are written."""
    site = load_site(demo_place())
    spot = replace(site.spots[0], name="<b>bar & shoal</b>")
    out = tmp_path / "sheet.pdf"
    write_sheet(made_sheet(replace(site, spots=(spot,)), Style()), out)
    assert "<b>bar & shoal</b>" in text_of(out)


def test_a_folder_that_is_not_there_is_a_sentence(tmp_path: Path) -> None:
    """Protects from a silent nothing: a file that cannot be written is said, and none is left."""
    sheet = made_sheet(load_site(demo_place()), Style())
    with pytest.raises(PlannerError, match="cannot be written"):
        write_sheet(sheet, tmp_path / "nowhere" / "sheet.pdf")
    assert list(tmp_path.iterdir()) == []
