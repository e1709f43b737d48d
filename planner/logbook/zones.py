"""The time zones of the places in the user's book, for times a table gives in local time."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from planner.sites import SiteError, find_place, load_site


def book_zone(place: str) -> ZoneInfo | None:
    """Return the zone of a place of the book by its name; None when the book has no such place."""
    try:
        return load_site(find_place(place)).zone
    except SiteError:
        return None
