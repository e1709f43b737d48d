"""What is wrong with an installation, and what to do about it; no Qt is loaded here.

It must work where everything else does not: each check imports what it looks at itself.
"""

from __future__ import annotations

from planner.ui.trouble.checkup.finding import (
    Finding,
    found_by,
    is_well,
    report_of,
    text_of,
    verdict,
)
from planner.ui.trouble.checkup.libraries import check_libraries, check_python
from planner.ui.trouble.checkup.screen import check_window

__all__ = ["Finding", "examine", "is_well", "report_of", "text_of", "verdict"]


def examine() -> list[Finding]:
    """Look at everything, which takes some seconds."""
    from planner.ui.trouble.checkup import files

    return found_by(
        (
            check_python,
            check_libraries,
            check_window,
            files.check_own_files,
            files.check_sun_and_moon,
            files.check_time_zones,
            files.check_folders,
            files.check_log,
            files.check_settings,
            files.check_faults,
        )
    )
