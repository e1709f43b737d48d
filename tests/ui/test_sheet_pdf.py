"""The printed sheet read back: one page, real text, fonts inside, nothing over the edge."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from unicodedata import normalize

import numpy as np
import pypdfium2 as pdfium
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


_BLANK = "\ufffe \r\n"
Box = tuple[float, float, float, float]  # left, bottom, right, top, in points


def letters_of(path: Path) -> list[Box]:
    """Return where each letter of the page is inked, read by another library than pypdf."""
    text = pdfium.PdfDocument(path)[0].get_textpage()
    inked = (at for at in range(text.count_chars()) if text.get_text_range(at, 1).strip(_BLANK))
    return [text.get_charbox(at) for at in inked]


@pytest.mark.parametrize("paper", ["A4", "letter"])
@pytest.mark.parametrize("style", STYLES, ids=["metric", "american"])
def test_nothing_is_clipped(tmp_path: Path, paper: Paper, style: Style) -> None:
    """Protects from clipping: every letter and every line of the chart lies whole within the
    margins, by its bounding box."""
    out = tmp_path / "sheet.pdf"
    write_sheet(made_sheet(load_site(demo_place()), style), out, paper)
    page = pdfium.PdfDocument(out)[0]
    width, height = page.get_size()
    margin = 12 / 25.4 * 72 - 2  # a pen with its mitre, and the rounding of the paper's size
    drawn = [part.get_bounds() for part in page.get_objects()]
    letters = letters_of(out)
    assert len(letters) > 1000
    assert len(drawn) > len(letters) / 2
    for left, bottom, right, top in (*drawn, *letters):
        assert margin <= left <= right <= width - margin
        assert margin <= bottom <= top <= height - margin


@pytest.mark.parametrize("paper", ["A4", "letter"])
def test_no_letter_lies_on_another(tmp_path: Path, paper: Paper) -> None:
    """Protects from columns, rows and the chart's words that run into each other."""
    out = tmp_path / "sheet.pdf"
    write_sheet(made_sheet(load_site(demo_place()), Style()), out, paper)
    boxes = np.array(letters_of(out))
    for at, (left, bottom, right, top) in enumerate(boxes):
        # Next to each other letters may join, as fl and Yo do.
        others = boxes[at + 4 :]
        wide = np.minimum(others[:, 2], right) - np.maximum(others[:, 0], left)
        high = np.minimum(others[:, 3], top) - np.maximum(others[:, 1], bottom)
        assert not np.any((wide > 0.5) & (high > 0.5)), boxes[at]


def test_a_sheet_over_a_change_of_clocks_names_both(tmp_path: Path) -> None:
    """Protects the set from being read on the haul's clock: the page names the zone of each."""
    out = tmp_path / "sheet.pdf"
    write_sheet(made_sheet(load_site(demo_place()), Style()), out)
    assert "EDT at the set, EST at the haul" in text_of(out)


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


def test_ranges_and_water_below_zero_have_their_signs(tmp_path: Path) -> None:
    """The dash and the minus are in the font of the page, each drawn and read back as itself."""
    site = load_site(demo_place())
    low = replace(site, water=replace(site.water, mean_level_m=-0.6))
    out = tmp_path / "sheet.pdf"
    write_sheet(made_sheet(low, Style()), out, "A4")
    text = text_of(out)
    assert "9–20" in text
    assert re.search(r"−\d\.\d\d m", text)
    page = pdfium.PdfDocument(out)[0].get_textpage()
    for at in range(page.count_chars()):
        if page.get_text_range(at, 1) in "–−":
            left, _, right, _ = page.get_charbox(at)
            assert right - left > 2.0  # points: a missing glyph would be empty
