"""The front door: a place file in, a `Site` out, or every problem of the file at once."""

from __future__ import annotations

from pathlib import Path

from planner.sites.reading import read_tables
from planner.sites.site import Site


def load_site(path: str | Path) -> Site:
    """Return the place that a file describes.

    SiteError, with every problem by field or line, when the file cannot be read, is not
    TOML, or describes no possible place.
    """
    from planner.sites.build import build_site  # pydantic loads when a place is first read

    path = Path(path)
    return build_site(read_tables(path), path)
