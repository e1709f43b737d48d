"""The paper that is usual where the user lives."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QLocale

from planner.handouts.pdf_file import Paper

# Where paper is sold as letter: Unicode CLDR, paper size by territory.
_LETTER_IN: Final = (
    *("US", "CA", "MX", "CO", "CL", "VE", "PH"),
    *("GT", "CR", "PA", "PR", "SV", "NI", "DO"),
)


def usual_paper() -> Paper:
    """Return the paper of the system's territory."""
    territory = QLocale.territoryToCode(QLocale.system().territory())
    return "letter" if territory in _LETTER_IN else "A4"
