"""The tally sheet read back from its file, and got from the window and the command line."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader
from PySide6.QtWidgets import QFileDialog

from planner.assets import demo_log, demo_place
from planner.cli import main
from planner.errors import PlannerError
from planner.handouts.deck import deck_trip
from planner.handouts.pdf_file import MM, Paper
from planner.handouts.tally import TallySheet, tally_sheet
from planner.handouts.tally_pdf import _BOX, write_tally
from planner.logbook import book_zone, read_log
from planner.phrasing import Style
from planner.sites import load_site
from planner.ui.hauls.view import HaulsView
from planner.ui.load.view import LoadView
from planner.ui.workbench import Workbench

pytestmark = pytest.mark.usefixtures("qapp")

# ISO 216 and ANSI Y14.1, in points, the long side across.
SIZES: dict[Paper, tuple[float, float]] = {"A4": (841.9, 595.3), "letter": (792.0, 612.0)}


def made_sheet(traps: int) -> TallySheet:
    site, log = load_site(demo_place()), read_log(demo_log(), book_zone)
    hauls = [replace(log.hauls[-1], trap=f"T{number:02d}") for number in range(1, traps + 1)]
    return tally_sheet(deck_trip(hauls, site.zone, invented=True), date(2026, 11, 25), Style())


def pages_of(path: Path) -> list[str]:
    return [" ".join(page.extract_text().split()) for page in PdfReader(path).pages]


@pytest.mark.parametrize("paper", ["A4", "letter"])
def test_a_dozen_traps_go_on_one_page(tmp_path: Path, paper: Paper) -> None:
    """Two sheets on a wet deck are one too many for the usual trip."""
    out = tmp_path / "tally.pdf"
    write_tally(made_sheet(12), out, paper)
    (page,) = PdfReader(out).pages
    assert (float(page.mediabox.width), float(page.mediabox.height)) == pytest.approx(
        SIZES[paper], abs=1.5
    )
    (text,) = pages_of(out)
    for number in range(1, 13):
        assert f"T{number:02d}" in text
    for heading in ("Keepers", "Shorts", "Females", "Eggs", "Judged", "Light"):
        assert heading in text
    assert "INVENTED" in text
    assert not list(tmp_path.glob("*.partial"))


def test_more_traps_take_more_pages_and_none_is_lost(tmp_path: Path) -> None:
    """A crew with thirty traps needs all thirty on paper, each page saying which it is."""
    out = tmp_path / "tally.pdf"
    write_tally(made_sheet(30), out)
    pages = pages_of(out)
    assert len(pages) == 3
    assert all(f"Page {number} of 3" in page for number, page in enumerate(pages, start=1))
    for number in range(1, 31):
        assert sum(f"T{number:02d}" in page for page in pages) == 1


def test_boxes_are_large_enough_for_wet_hands() -> None:
    """Boxes under half a centimetre run into each other under a pencil in a glove; judgement."""
    assert _BOX / MM >= 5.5


def test_long_names_stay_inside(tmp_path: Path) -> None:
    """A name that runs into the boxes makes both unreadable: it is cut, with a sign."""
    sheet = made_sheet(1)
    long = replace(sheet.lines[0], trap="W" * 60)
    out = tmp_path / "tally.pdf"
    write_tally(replace(sheet, lines=(long,)), out)
    (text,) = pages_of(out)
    assert "…" in text
    assert "W" * 60 not in text


def test_long_names_that_differ_at_the_end_are_told_apart(tmp_path: Path) -> None:
    """Two traps with one name on paper are two counts that nobody can enter."""
    sheet = made_sheet(2)
    label = "Uncle's big green trap with the long cord"
    lines = tuple(
        replace(line, trap=f"{label} {number}") for number, line in enumerate(sheet.lines, 41)
    )
    title = "Upper Sedge Hollow River at the old bridge, trip 29 Nov 2026"
    write_tally(replace(sheet, lines=lines, title=title), tmp_path / "t.pdf")
    (text,) = pages_of(tmp_path / "t.pdf")
    assert "cord 41" in text
    assert "cord 42" in text
    assert "29 Nov 2026" in text


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    """A sheet that was not written must not be looked for at the printer."""
    with pytest.raises(PlannerError, match="cannot be written"):
        write_tally(made_sheet(1), tmp_path / "none" / "tally.pdf")


@pytest.mark.parametrize("view", [LoadView, HaulsView])
def test_from_the_window(
    view: Any, bench: Workbench, qtbot: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The button writes the sheet of the trip on show, from both places that offer it."""
    out = tmp_path / "tally.pdf"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(out), ""))
    monkeypatch.setattr("planner.ui.load.deck_button.QDesktopServices.openUrl", lambda _: True)
    shown = view(bench)
    qtbot.addWidget(shown)
    shown.show()
    qtbot.waitUntil(lambda: bench.idle, timeout=30_000)
    shown.on_deck.sheet.trigger()
    qtbot.waitUntil(out.exists, timeout=30_000)
    qtbot.waitUntil(lambda: bench.idle, timeout=30_000)
    (text,) = pages_of(out)
    assert "Sedge Hollow, trip" in text
    assert "A1" in text


def test_from_the_command_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The same sheet without the window, for a trip of the log or the next one."""
    out = tmp_path / "tally.pdf"
    words = ["tally", "sedge-hollow", str(out), "--log", str(demo_log())]
    assert main([*words, "--trip", "22 Nov 2026"]) == 0
    assert "11 traps of trip 22 Nov 2026" in capsys.readouterr().out
    assert "trip 22 Nov 2026" in pages_of(out)[0]
    assert main([*words, "--day", "2026-12-05"]) == 0
    assert "trip 5 Dec 2026" in pages_of(out)[0]
    assert main([*words, "--trip", "none such"]) == 2
    assert "none such" in capsys.readouterr().err
