"""The heat strip: real keys and clicks, days in words, and painting that always comes out."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from functools import cache
from itertools import combinations
from typing import Any
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QImage, QKeyEvent, QPainter
from PySide6.QtWidgets import QApplication

from planner.assets import demo_place
from planner.estimates import Band, Interval
from planner.logbook import TripOutcome
from planner.molt.forecast_types import Forecast, Why
from planner.phrasing import Style
from planner.sites import load_site
from planner.sky import SkyDays, phases, sky_days
from planner.trips import Outlook, Plan
from planner.ui import theme
from planner.ui.strip import StripView
from planner.ui.strip.days import (
    day_at,
    day_sentences,
    instant_at,
    moon_text,
    place_of,
    place_of_instant,
    trip_marks,
    why_text,
)
from planner.ui.strip.moon_lane import MoonLane
from planner.ui.strip.plans_lane import packed
from planner.ui.strip.table import DaysTable

TODAY = date(2026, 11, 25)
NEW_YORK = ZoneInfo("America/New_York")


@cache
def _outlook(first: date, days: int) -> Outlook:
    """Return a made outlook: only the phases of the moon are worked out."""
    every = tuple(first + timedelta(days=n) for n in range(days))
    share = np.arange(days) % 100 / 100
    flat = np.zeros(days)
    noon = np.array([f"{day}T17:00" for day in every], "datetime64[ms]")
    half_day = np.timedelta64(12, "h")
    band = Band(share, np.clip(share - 0.2, 0, 1), np.clip(share + 0.2, 0, 1))
    light = Band(1 - band.mean, 1 - band.high, 1 - band.low)
    nowhere = np.full(days, np.datetime64("NaT", "ms"))
    return Outlook(
        site=load_site(demo_place()),
        days=every,
        forecast=Forecast(
            days=every,
            fullness=band,
            light_share=light,
            why=Why(season=flat + 0.021, moon=flat - 0.012, runs=flat, place=flat),
            yearly_light_share=0.125,
            lunar_age_d=flat,
            water_c=flat + 17,
            basis="prior",
            trips=0,
        ),
        sky=SkyDays(
            days=every,
            lunar_age_d=np.arange(days) % 29.5,
            illuminated=np.abs((np.arange(days) % 29.5) / 29.5 * 2 - 1),
            sunrise=noon - np.timedelta64(5, "h"),
            sunset=noon + np.timedelta64(5, "h"),
            civil_dawn=nowhere,
            civil_dusk=nowhere,
            moonrise=nowhere,
            moonset=nowhere,
            sun_up_all_day=np.zeros(days, bool),
            sun_down_all_day=np.zeros(days, bool),
        ),
        phases=phases(noon[0] - half_day, noon[-1] + half_day),
        lowest_m=flat - 0.2,
        highest_m=flat + 1.2,
        why_not_free=tuple("" if day.weekday() >= 4 else "a working day" for day in every),
        why_closed=tuple("winter closure" if day.month == 1 else "" for day in every),
    )


def _plan(rank: int, set_at: datetime, soak_h: float) -> Plan:
    share = Interval(0.1, 0.05, 0.2)
    return Plan(
        rank=rank,
        set_at=set_at,
        latest_set_at=set_at,
        haul_at=set_at + timedelta(hours=soak_h),
        soak_h=soak_h,
        full_keepers=Interval(14, 9, 20),
        light_share=share,
        lowest_cover_m=0.5,
        lowest_cover_spot="bar",
        lowest_cover_at=set_at,
        reasons=("because",),
        warnings=(),
    )


def _trip(day: date, judged: int | None, light: int | None) -> TripOutcome:
    when = datetime(day.year, day.month, day.day, 15, tzinfo=UTC)
    return TripOutcome(f"trip {day}", "Sedge Hollow", when, 8, 13, judged, light, 17.0)


@pytest.fixture(scope="module")
def year() -> Outlook:
    """Half a year either side of today."""
    return _outlook(TODAY - timedelta(days=180), 366)


@pytest.fixture
def strip(app: QApplication, qtbot: Any, year: Outlook) -> StripView:
    """A strip of which the chosen day follows what the user does."""
    made = StripView(TODAY)
    made.day_chosen.connect(made.choose_day)
    qtbot.addWidget(made)
    made.resize(1000, made.height())
    made.show_outlook(year)
    made.show()
    return made


# -- keys and clicks -----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("key", "shift", "days"),
    [
        (Qt.Key.Key_Right, False, 1),
        (Qt.Key.Key_Left, False, -1),
        (Qt.Key.Key_Right, True, 7),
        (Qt.Key.Key_Left, True, -7),
    ],
)
def test_arrows_go_by_day_and_with_shift_by_week(
    strip: StripView, qtbot: Any, key: Qt.Key, shift: bool, days: int
) -> None:
    """The strip is walked without a mouse."""
    held = Qt.KeyboardModifier.ShiftModifier if shift else Qt.KeyboardModifier.NoModifier
    qtbot.keyClick(strip, key, held)
    assert strip.day == TODAY + timedelta(days=days)
    qtbot.keyClick(strip, key, held)
    assert strip.day == TODAY + timedelta(days=2 * days)


def test_the_chosen_day_stays_in_view_and_home_is_today(strip: StripView, qtbot: Any) -> None:
    """Walking past the edge brings the days there into view; Home comes back."""
    for _ in range(10):
        qtbot.keyClick(strip, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
        first, last = strip.days_in_view()
        assert first <= strip.day <= last
    assert strip.day == TODAY + timedelta(days=70)
    qtbot.keyClick(strip, Qt.Key.Key_Home)
    assert strip.day == TODAY
    first, last = strip.days_in_view()
    assert first <= TODAY <= last


def test_plus_and_minus_zoom_around_the_chosen_day_within_limits(
    strip: StripView, qtbot: Any
) -> None:
    """From two weeks to ten years, and the chosen day is never lost."""

    def shown() -> int:
        first, last = strip.days_in_view()
        assert first <= strip.day <= last
        return (last - first).days + 1

    before = shown()
    qtbot.keyClick(strip, Qt.Key.Key_Minus)
    assert shown() > 1.3 * before
    qtbot.keyClick(strip, Qt.Key.Key_Plus)
    assert abs(shown() - before) <= 1
    for _ in range(30):
        qtbot.keyClick(strip, Qt.Key.Key_Plus)
    assert 14 <= shown() <= 15
    for _ in range(40):
        qtbot.keyClick(strip, Qt.Key.Key_Minus)
    assert 3600 < shown() <= 3654


def test_the_days_end_ten_years_away(strip: StripView, qtbot: Any) -> None:
    """Beyond them nothing is ever worked out, so nobody is led there."""
    strip.choose_day(TODAY + timedelta(days=3650))
    qtbot.keyClick(strip, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    assert strip.day == TODAY + timedelta(days=3653)


def test_keys_that_mean_nothing_are_left_to_others(strip: StripView) -> None:
    """A letter of any script is neither an error nor swallowed."""
    for key, text in ((Qt.Key.Key_A, "a"), (0x042F, "я"), (0, "")):
        event = QKeyEvent(QEvent.Type.KeyPress, key, Qt.KeyboardModifier.NoModifier, text)
        QApplication.sendEvent(strip, event)
        assert not event.isAccepted()
    assert strip.day == TODAY


def _click(strip: StripView, qtbot: Any, x: float, y: float) -> None:
    plot = strip._plot
    QApplication.processEvents()
    at = plot.mapFromScene(strip._box.mapViewToScene(QPointF(x, y)))
    qtbot.mouseClick(plot.viewport(), Qt.MouseButton.LeftButton, pos=at)


@pytest.mark.parametrize("away", [-9, 0, 5, 20])
def test_a_click_picks_the_day_under_it(strip: StripView, qtbot: Any, away: int) -> None:
    """Anywhere in its column, from the dates to the plans."""
    day = TODAY + timedelta(days=away)
    for share, y in ((0.1, 20), (0.5, 120), (0.9, 240)):
        strip.choose_day(TODAY - timedelta(days=1))
        _click(strip, qtbot, place_of(day) + share, y)
        assert strip.day == day


def test_a_click_on_a_bracket_picks_its_plan_and_beside_it_none(
    strip: StripView, qtbot: Any
) -> None:
    """Two plans of the same days lie in rows of their own; each can be hit."""
    begin = datetime(2026, 11, 27, 12, tzinfo=UTC)
    plans = [_plan(1, begin, 48), _plan(2, begin + timedelta(hours=6), 40)]
    strip.show_plans(plans, 1, NEW_YORK)
    picked: list[int] = []
    strip.plan_chosen.connect(picked.append)
    lane = strip._brackets
    middle = place_of(date(2026, 11, 28)) + 0.5
    for row in (0, 1, 2):
        _click(strip, qtbot, middle, lane.top + (row + 0.5) * lane.height / lane.rows)
    assert picked == [1, 2]
    _click(strip, qtbot, place_of(date(2026, 12, 3)) + 0.5, lane.top + lane.height / 6)
    assert picked == [1, 2]


# -- plans as brackets ---------------------------------------------------------------------------


@given(
    st.lists(st.tuples(st.integers(0, 2000), st.integers(12, 96)), max_size=14),
)
def test_brackets_never_overlap_in_a_row(spans: list[tuple[int, int]]) -> None:
    """Every plan is on the strip, none over another, the best ones highest."""
    begin = datetime(2026, 10, 20, 11, tzinfo=UTC)
    plans = [
        _plan(rank, begin + timedelta(hours=hours / 4), soak)
        for rank, (hours, soak) in enumerate(spans, start=1)
    ]
    brackets = packed(plans, NEW_YORK)
    assert [bracket.rank for bracket in brackets] == [plan.rank for plan in plans]
    for one, other in combinations(brackets, 2):
        if one.row == other.row:
            assert one.end < other.begin or other.end < one.begin
    for plan, bracket in zip(plans, brackets, strict=True):
        assert bracket.begin == place_of_instant(plan.set_at, NEW_YORK)
        assert bracket.end > bracket.begin
        assert bracket.row < len(plans)
    assert not brackets or brackets[0].row == 0


# -- days in words -------------------------------------------------------------------------------


@given(st.dates(date(1900, 1, 1), date(2100, 12, 31)))
def test_places_and_days_agree(day: date) -> None:
    """A column belongs to one day, from its first pixel to its last."""
    assert day_at(place_of(day)) == day_at(place_of(day) + 0.999) == day
    assert place_of(day + timedelta(days=1)) == place_of(day) + 1


def test_instants_fall_into_their_local_day_across_the_change_of_clocks() -> None:
    """The day of 25 hours (1 November 2026 in New York) keeps to its own column."""
    last = datetime(2026, 11, 2, 4, 59, tzinfo=UTC)  # 23:59 that evening
    assert day_at(place_of_instant(last, NEW_YORK)) == date(2026, 11, 1)
    assert day_at(place_of_instant(last + timedelta(minutes=1), NEW_YORK)) == date(2026, 11, 2)


@given(st.integers(0, 2 * 365 * 24 * 60))
def test_places_lead_back_to_their_instants(minutes: int) -> None:
    """What a hand drags is the instant it points at, to the minute, on days of any length; of an
    hour that the clock shows twice the first."""
    instant = datetime(2026, 1, 1, tzinfo=UTC) + timedelta(minutes=minutes)
    back = instant_at(place_of_instant(instant, NEW_YORK), NEW_YORK)
    twice = instant.astimezone(NEW_YORK).fold == 1
    assert back == (instant - timedelta(hours=1) if twice else instant)


def test_a_day_is_told_in_words(year: Outlook) -> None:
    """What the colours say can be read out: forecast, water, sky, log, plans, limits."""
    day = date(2026, 11, 27)
    plan = _plan(3, datetime(2026, 11, 27, 12, tzinfo=UTC), 48)
    marks = trip_marks([_trip(day, 12, 4)], NEW_YORK)
    said = day_sentences(year, day, marks, [plan], Style())
    index = year.index(day)
    assert said.startswith(f"Fri 27 Nov 2026: {index % 100}% full (")
    assert "water −0.20 m to 1.20 m, 17 °C" in said
    assert "sun 07:00 to 17:00" in said
    assert "Logged trip 2026-11-27: 13 keepers from 8 hauls, 4 of 12 judged were light." in said
    assert "Plan 3: set Fri 27 Nov 07:00, haul Sun 29 Nov 07:00, about 14 (9–20)" in said
    assert "free" not in said
    american = day_sentences(year, day, marks, [plan], Style("ft", "F", hours12=True))
    assert "−0.7 ft to 3.9 ft, 63 °F" in american
    assert "7:00 am to 5:00 pm" in american


@pytest.mark.parametrize(
    ("day", "sun"),
    [
        (date(2027, 5, 17), "sun from 01:20."),
        (date(2027, 5, 18), "sun to 00:20 and from 01:00."),
        (date(2027, 6, 10), "sun up all day."),
        (date(2026, 12, 10), "sun down all day."),
        (date(2027, 3, 20), "sun 05:45 to 18:00."),
    ],
)
def test_the_polar_day_and_night_are_told(day: date, sun: str) -> None:
    """Nothing was said of the sun on days on which it does not both rise and set."""
    north = replace(
        load_site(demo_place()),
        latitude_deg=69.65,
        longitude_deg=18.96,
        zone=ZoneInfo("Europe/Oslo"),
    )
    made = replace(_outlook(day, 1), site=north, sky=sky_days(north, day, day))
    assert sun in day_sentences(made, day, [], [], Style())
    unasked = replace(made, sky=sky_days(north, day, day, ()))
    assert "sun" not in day_sentences(unasked, day, [], [], Style())


def test_what_is_in_the_way_is_said(year: Outlook) -> None:
    """Closed goes before not free; a day nobody has worked out says so."""
    closed = day_sentences(year, date(2027, 1, 6), [], [], Style())
    assert closed.endswith("Closed: winter closure.")
    busy = day_sentences(year, date(2026, 11, 25), [], [], Style())
    assert busy.endswith("Not free: a working day.")
    beyond = day_sentences(year, date(2030, 1, 1), [], [], Style())
    assert beyond == "Tue 1 Jan 2030: not worked out yet."


def test_a_plan_speaks_on_each_of_its_days_only(year: Outlook) -> None:
    """From the day of the set to the day of the haul."""
    plan = _plan(3, datetime(2026, 11, 27, 12, tzinfo=UTC), 48)
    told = [
        "Plan 3" in day_sentences(year, date(2026, 11, day), [], [plan], Style())
        for day in range(26, 31)
    ]
    assert told == [False, True, True, True, False]


def test_why_says_how_much_each_part_moves_the_light_share(year: Outlook) -> None:
    """In light crabs of 100 against the year's average; parts that move nothing are left out."""
    said = why_text(year, TODAY)
    assert said == (
        "Against the year's average (about 1 in 8), in light crabs of 100: season and water +2.1, "
        "moon −1.2."
    )


def test_the_moon_is_named_on_the_local_day_of_its_phase(year: Outlook) -> None:
    """Full moon on 24 November 2026 at 14:53 UTC, new moon on 9 December at 00:52 UTC.

    Instants from memory of published almanacs; New York has the new moon on the 8th.
    """
    named = {
        day: moon_text(year, year.index(day))
        for day in (date(2026, 11, 24), date(2026, 12, 8), date(2026, 12, 9))
    }
    assert named[date(2026, 11, 24)] == "full moon"
    assert named[date(2026, 12, 8)] == "new moon"
    assert named[date(2026, 12, 9)].startswith("moon w")


def test_marks_tell_light_mixed_full_and_not_judged_apart() -> None:
    """One in four light or more is a light trip; a trip without a time has no place."""
    outcomes = [
        _trip(date(2026, 11, 1), 40, 1),
        _trip(date(2026, 11, 2), 40, 7),
        _trip(date(2026, 11, 3), 40, 20),
        _trip(date(2026, 11, 4), None, None),
        replace(_trip(date(2026, 11, 5), 40, 1), when=None),
    ]
    marks = trip_marks(outcomes, NEW_YORK)
    assert [mark.catch for mark in marks] == ["full", "mixed", "light", "not judged"]
    assert [mark.day.day for mark in marks] == [1, 2, 3, 4]
    share = marks[2].full_share
    assert share is not None
    assert share.low < share.mean < share.high
    assert marks[3].full_share is None


# -- the same days as a table --------------------------------------------------------------------


@pytest.fixture
def table(app: QApplication, qtbot: Any, year: Outlook) -> Iterator[DaysTable]:
    """The table over the made year with a trip and a plan."""
    made = DaysTable()
    qtbot.addWidget(made)
    marks = trip_marks([_trip(date(2026, 11, 27), 12, 4)], NEW_YORK)
    plan = _plan(3, datetime(2026, 11, 27, 12, tzinfo=UTC), 48)
    made.days.show(year, marks, [plan], Style())
    made.resize(900, 300)
    made.show()
    return made


def test_the_table_has_a_row_for_every_day_of_the_strip(table: DaysTable, year: Outlook) -> None:
    """What is drawn can be read, day by day, in the same words."""
    model = table.days
    assert model.rowCount() == len(year.days)
    row = year.index(date(2026, 11, 27))
    cells = {
        model.headerData(c, Qt.Orientation.Horizontal): model.data(model.index(row, c))
        for c in range(model.columnCount())
    }
    assert cells["Day"] == "Fri 27 Nov 2026"
    assert cells["Fullness"].startswith(f"{row % 100}% (")
    assert cells["Water"] == "−0.20 m to 1.20 m"
    assert cells["Logged"] == "13 keepers from 8 hauls, 4 of 12 judged were light"
    assert cells["Plans"] == "plan 3"
    assert cells["Free or closed"] == "free"
    assert model.data(model.index(row + 7, 7)) == "free"
    assert model.data(model.index(year.index(date(2027, 1, 6)), 7)) == "closed: winter closure"
    assert all(model.data(model.index(r, 0)) for r in range(model.rowCount()))


def test_the_table_follows_and_leads_the_chosen_day(table: DaysTable, qtbot: Any) -> None:
    """A day chosen elsewhere comes into view; arrow keys choose the day of each row."""
    chosen: list[date] = []
    table.day_chosen.connect(chosen.append)
    table.choose_day(TODAY)
    row = table.days.row(TODAY)
    assert table.currentIndex().row() == row
    assert table.viewport().rect().contains(table.visualRect(table.currentIndex()).center())
    qtbot.keyClick(table, Qt.Key.Key_Down)
    assert chosen[-1] == TODAY + timedelta(days=1)
    table.choose_day(date(2040, 1, 1))
    assert table.currentIndex().row() == row + 1  # type: ignore[operator]


# -- painting ------------------------------------------------------------------------------------


def _picture(strip: StripView) -> QImage:
    QApplication.processEvents()
    return strip.grab().toImage()


def _colours(image: QImage) -> set[int]:
    return {
        image.pixel(x, y) for x in range(0, image.width(), 2) for y in range(0, image.height(), 2)
    }


@pytest.mark.parametrize("days", [0, 1, 3653])
@pytest.mark.parametrize("shown", [14, 60, 366, 3653])
def test_lanes_paint_whatever_there_is_to_show(
    app: QApplication, qtbot: Any, days: int, shown: int
) -> None:
    """Nothing yet, one day, ten years; from two weeks to ten years on the screen.

    An error while painting fails the test by itself.
    """
    strip = StripView(TODAY)
    qtbot.addWidget(strip)
    strip.resize(1000, strip.height())
    first = TODAY - timedelta(days=days // 2)
    strip.show_outlook(_outlook(first, days) if days else None)
    outcomes = [_trip(TODAY - timedelta(days=n), 20, n % 9) for n in range(0, 60, 7)]
    strip.show_trips(trip_marks([*outcomes, _trip(TODAY, None, None)], NEW_YORK))
    begin = datetime(2026, 11, 27, 12, tzinfo=UTC)
    plans = [_plan(n, begin + timedelta(hours=n), 30) for n in range(1, 8)]
    strip.show_plans(plans, 2, NEW_YORK)
    strip.show_days(TODAY - timedelta(days=shown // 2), shown)
    strip.show()
    assert len(_colours(_picture(strip))) > 10


def test_a_new_theme_reaches_every_lane(strip: StripView, app: QApplication) -> None:
    """The strip is painted anew in the colours in use; nothing is kept from before."""
    before = _picture(strip)
    theme.apply(app, "dark")
    strip.refresh()
    after = _picture(strip)
    corner = (before.width() - 3, before.height() - 3)
    assert before.pixel(*corner) != after.pixel(*corner)
    theme.apply(app, "light")
    strip.refresh()
    assert _picture(strip) == before


def test_ten_years_are_labelled_by_year(strip: StripView, monkeypatch: Any) -> None:
    """A year's column must not be taken for its January."""
    from planner.ui.strip import calendar_lanes

    drawn: list[str] = []

    class Painter(QPainter):
        def drawText(self, *arguments: Any) -> Any:
            drawn.append(arguments[-1])

    image = QImage(1000, 36, QImage.Format.Format_RGB32)
    lane = calendar_lanes.DateLane(0, 36, TODAY)
    for width, first_label in ((0.4, "2025"), (10.0, "February 2025"), (2.0, "Feb")):
        drawn.clear()
        painter = Painter(image)
        start = place_of(date(2025, 2, 10))
        lane.draw(calendar_lanes.Canvas(painter, width, 36, start, start + int(900 / width)))
        painter.end()
        assert drawn[0] == first_label
        assert all(len(text) == 4 for text in drawn) == (width == 0.4)


def _moon(year: Outlook, latitude_deg: float, lit: float, waxing: bool) -> QImage:
    lane = MoonLane(0, 40)
    lane.outlook = replace(year, site=replace(year.site, latitude_deg=latitude_deg))
    image = QImage(41, 41, QImage.Format.Format_RGB32)
    image.fill(0)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    lane.disc(painter, QPointF(20.5, 20.5), 16, lit, waxing)
    painter.end()
    return image


@pytest.mark.parametrize("lit", [0.1, 0.5, 0.8])
@pytest.mark.parametrize("waxing", [True, False])
def test_south_of_the_equator_the_moon_is_lit_on_the_other_side(
    app: QApplication, year: Outlook, lit: float, waxing: bool
) -> None:
    """As the user sees it in the sky: a waxing moon is lit on the right in the north."""
    north, south = (_moon(year, latitude, lit, waxing) for latitude in (35.0, -35.0))
    apart = [
        abs(north.pixelColor(x, y).lightness() - south.pixelColor(40 - x, y).lightness())
        for x in range(41)
        for y in range(41)
    ]
    assert sum(apart) / len(apart) < 5  # the rim alone falls on other pixels
    right, left = (north.pixelColor(x, 20).lightness() for x in (34, 6))
    assert (right > left) == waxing


@pytest.mark.parametrize("lit", [0.0, 0.25, 0.5, 0.75, 1.0])
def test_as_much_of_the_disc_is_bright_as_is_lit(
    app: QApplication, year: Outlook, lit: float
) -> None:
    """The bright part of the drawn disc is the illuminated fraction, within a pixel's rim."""
    image = _moon(year, 35.0, lit, True)
    inside = [
        image.pixelColor(x, y).lightness() > 170
        for x in range(41)
        for y in range(41)
        if (x - 20) ** 2 + (y - 20) ** 2 <= 15**2
    ]
    assert sum(inside) / len(inside) == pytest.approx(lit, abs=0.06)
