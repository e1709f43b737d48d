"""Waypoints as other programs read them: positions, names, and the GPX 1.1 schema.

gpxpy writes the file. It is read back by two others: Python's own ElementTree, and xmlschema by a
schema that is our own wording of the published one (GPX 1.1, topografix.com/GPX/1/1, 2004), for
what we write: its README says what it holds to. The published schema is not kept here, because
we know of no licence that lets its text be passed on; ours is the stricter, so a file that it
lets pass breaks no rule of the other for these elements.
"""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from xml.etree import ElementTree

import pytest
import xmlschema
from made_trips import CLOCKS_BACK, made_plan

from planner.assets import demo_log, demo_place
from planner.errors import PlannerError
from planner.handouts import trip_facts, waypoints_gpx
from planner.logbook import book_zone, read_log
from planner.phrasing import Style
from planner.sites import Site, load_site

NOW = datetime(2026, 10, 25, 12, 0, tzinfo=UTC)
SCHEMA = xmlschema.XMLSchema(Path(__file__).parents[1] / "reference" / "gpx" / "waypoints.xsd")
GPX = "{http://www.topografix.com/GPX/1/1}"


@pytest.fixture(scope="module")
def site() -> Site:
    return load_site(demo_place())


def written(site: Site, style: Style | None = None) -> bytes:
    facts = trip_facts(site, made_plan(CLOCKS_BACK), read_log(demo_log(), book_zone))
    return waypoints_gpx(facts, style or Style(), NOW)


def check(content: str) -> None:
    """Hold a file to the schema here, not to the one whose address it names."""
    SCHEMA.validate(content, use_location_hints=False)


def points(content: bytes) -> list[ElementTree.Element]:
    return ElementTree.fromstring(content).findall(f"{GPX}wpt")


@pytest.mark.parametrize(
    ("style", "depth", "line"),
    [(Style(), "1.10 m below MLLW", " m of line"), (Style("ft"), "3.6 ft below", " ft of line")],
)
def test_a_plotter_finds_every_spot(site: Site, style: Style, depth: str, line: str) -> None:
    """Protects the way to the traps: each spot where the place file has it, with its traps,
    depth and line in the reader's units, marked as invented where it is."""
    content = written(site, style)
    check(content.decode())
    found = points(content)
    assert len(found) == len(site.spots)
    for spot, point in zip(site.spots, found, strict=True):
        assert float(point.get("lat", "")) == pytest.approx(spot.latitude_deg, abs=1e-7)
        assert float(point.get("lon", "")) == pytest.approx(spot.longitude_deg, abs=1e-7)
        assert point.findtext(f"{GPX}name") == spot.name
        said = point.findtext(f"{GPX}desc") or ""
        assert said.startswith("INVENTED place")
        assert line in said
        assert "Traps: " in said
    assert depth in (found[0].findtext(f"{GPX}desc") or "")
    head = ElementTree.fromstring(content).findtext(f"{GPX}metadata/{GPX}desc") or ""
    assert "Not for navigation" in head


def test_spots_without_a_position_are_left_out(site: Site) -> None:
    """Protects from a point at nought degrees: a spot without a position is none."""
    spots = tuple(replace(spot, latitude_deg=None, longitude_deg=None) for spot in site.spots)
    some = replace(site, spots=(site.spots[0], *spots[1:]))
    assert [point.findtext(f"{GPX}name") for point in points(written(some))] == ["ramp flat"]
    with pytest.raises(PlannerError, match="place book"):
        written(replace(site, spots=spots))


def test_names_and_the_edge_of_the_map_keep_to_the_schema(site: Site) -> None:
    """Protects the file from names like markup, and from 180 degrees east, which has no place
    in the standard."""
    spot = replace(site.spots[0], name="<b>bar & shoal</b>", longitude_deg=180.0)
    content = written(replace(site, spots=(spot,)))
    check(content.decode())
    (point,) = points(content)
    assert point.findtext(f"{GPX}name") == spot.name
    assert float(point.get("lon", "")) == -180.0


# What the published schema demands of a file of waypoints, each broken once: the version, the
# namespace, both coordinates within their ranges, decimal numbers, times of ISO 8601, and the
# elements of a waypoint in their order (name before desc).
@pytest.mark.parametrize(
    ("pattern", "wrong"),
    [
        (r'lat="', 'north="'),
        (r'lat="[^"]*"', 'lat="90.5"'),
        (r'lat="[^"]*"', 'lat="29,5"'),
        (r'lon="[^"]*"', 'lon="180.0"'),
        (r'version="1.1"', 'version="1.0"'),
        (r'creator="[^"]*"', ""),
        ("topografix.com/GPX/1/1", "topografix.com/GPX/1/0"),
        (r"<time>[^<]*</time>", "<time>yesterday</time>"),
        (r"(?s)(<name>[^<]*</name>)(\s*)(<desc>[^<]*</desc>)(?=.*</wpt>)", r"\3\2\1"),
        (r"</wpt>", "<depth>1.1</depth></wpt>"),
    ],
)
def test_the_schema_refuses_what_the_standard_does(site: Site, pattern: str, wrong: str) -> None:
    """Protects from a schema that lets everything pass: each rule is broken, and refused."""
    content = written(site).decode()
    broken = re.sub(pattern, wrong, content, count=1)
    assert broken != content
    with pytest.raises(xmlschema.XMLSchemaException):
        check(broken)
