"""`fullshell take` with a sheet, which is drawn by the window's library."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader

from planner.assets import demo_log
from planner.cli import main

DAYS = ("--from", "2026-10-30", "--to", "2026-11-03")  # the clocks go back in between


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize(("paper", "height"), [("A4", 841.9), ("letter", 792.0)])
def test_the_sheet_is_one_page_of_the_paper_asked_for(
    tmp_path: Path, paper: str, height: float
) -> None:
    """Whoever prints without the window gets the same page, on the paper they have."""
    out = tmp_path / "trip.pdf"
    words = ("take", "sedge-hollow", str(out), *DAYS, "--log", str(demo_log()), "--paper", paper)
    assert main(words) == 0
    (page,) = PdfReader(out).pages
    assert float(page.mediabox.height) == pytest.approx(height, abs=1.5)
    assert "Sedge Hollow: set" in " ".join(page.extract_text().split())
