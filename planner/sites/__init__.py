"""Places: the place file, its checks, the book of places, and what a place is made of."""

from planner.sites.book import PLACE_ENDINGS, find_place, list_places, names_a_file
from planner.sites.load import load_site
from planner.sites.reading import SiteError
from planner.sites.site import Site

__all__ = [
    "PLACE_ENDINGS",
    "Site",
    "SiteError",
    "find_place",
    "list_places",
    "load_site",
    "names_a_file",
]
