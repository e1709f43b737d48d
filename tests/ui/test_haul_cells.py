"""What may be typed into a cell of the haul table, and what the rows say together."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.assets import demo_place
from planner.estimates import Interval
from planner.handouts.layout import Placement, TrapKit, TrapLayout
from planner.logbook import Haul, Log
from planner.logbook.columns import CellError
from planner.phrasing import Style
from planner.sites import load_site
from planner.trips import Plan
from planner.ui.hauls.haul_cells import (
    COLUMNS,
    NOT_RECORDED,
    Clock,
    Column,
    with_texts,
    written,
)
from planner.ui.hauls.haul_rows import (
    Refused,
    meant_day,
    nudged,
    row_after,
    trip_like_last,
    trip_of_plan,
    trips_newest_first,
    typed,
)
from planner.ui.hauls.haul_words import doubts, light_words, missing, totals

ZONE = ZoneInfo("America/New_York")
CLOCK = Clock(ZONE, Style())
FEET = Clock(ZONE, Style("ft", "F", True))
DAY = date(2026, 11, 22)
BY_FIELD = {column.field: column for column in COLUMNS}
HAUL = Haul(
    "22 Nov", "Sedge Hollow", trap="A1", spot="bar",
    set_at=datetime(2026, 11, 21, 19, 35, tzinfo=UTC),
    hauled_at=datetime(2026, 11, 22, 12, 35, tzinfo=UTC),
    depth_m=1.9, keepers=6, females=3, sponge=1, judged=6, light=2,
)  # fmt: skip


def with_text(haul: Haul, column: Column, text: str, clock: Clock, day: date) -> Haul:
    return with_texts(haul, {column: text}, clock, lambda _: day)


def put(field: str, text: str, haul: Haul = HAUL, clock: Clock = CLOCK) -> object:
    return getattr(with_text(haul, BY_FIELD[field], text, clock, DAY), field)


def local(*when: int) -> datetime:
    return datetime(*when, tzinfo=ZONE).astimezone(UTC)  # type: ignore[misc, arg-type]


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("8:05", local(2026, 11, 22, 8, 5)),
        ("805", local(2026, 11, 22, 8, 5)),
        ("1:05 pm", local(2026, 11, 22, 13, 5)),
        ("12:05 am", local(2026, 11, 23, 0, 5)),
        ("23 8:05", local(2026, 11, 23, 8, 5)),
        ("1 0805", local(2026, 12, 1, 8, 5)),
        ("24 Nov 8:05", local(2026, 11, 24, 8, 5)),
        ("2 January 8:05", local(2027, 1, 2, 8, 5)),
        ("2026-11-25 08:05", local(2026, 11, 25, 8, 5)),
        ("8.05", local(2026, 11, 22, 8, 5)),
        ("8:05 p.m.", local(2026, 11, 22, 20, 5)),
        ("8 pm", local(2026, 11, 22, 20, 0)),
        ("24 Nov 2026 8:05", local(2026, 11, 24, 8, 5)),
        ("2026-11-25T08:05+00:00", datetime(2026, 11, 25, 8, 5, tzinfo=UTC)),
    ],
)
def test_a_time_may_be_typed_in_many_ways(text: str, meant: datetime) -> None:
    """Protects cold fingers: digits are enough, and a date without its year is the near one."""
    day = date(2026, 11, 23) if text == "12:05 am" else DAY
    made = with_text(HAUL, BY_FIELD["hauled_at"], text, CLOCK, day)
    assert made.hauled_at == meant


@pytest.mark.parametrize(
    "text",
    ["25:00", "8:61", "31 Feb 8:00", "noon", "8", "99 Nov 8:00", "13:00 am", "25 Nov 2026"],
)
def test_an_impossible_time_is_refused(text: str) -> None:
    """Protects the log from a time that nobody meant."""
    with pytest.raises(CellError):
        put("hauled_at", text)


def test_a_time_that_the_clocks_skip_is_refused() -> None:
    """Protects the hour of spring that does not exist."""
    haul = replace(HAUL, set_at=None, hauled_at=None)
    with pytest.raises(CellError, match="does not exist"):
        with_text(haul, BY_FIELD["set_at"], "2:30", CLOCK, date(2026, 3, 8))


def test_typing_a_cell_as_it_stands_changes_nothing() -> None:
    """Protects what is finer than what is shown: the second 01:30 of the night the clocks go
    back, seconds, and a depth kept to more digits than the feet on screen."""
    second = datetime(2026, 11, 1, 6, 30, 17, tzinfo=UTC)  # 01:30:17 EST, the second one
    haul = replace(HAUL, set_at=None, hauled_at=second, depth_m=1.2345)
    for field in ("hauled_at", "depth_m"):
        for clock in (CLOCK, FEET):
            text = written(haul, BY_FIELD[field], clock)
            assert with_text(haul, BY_FIELD[field], text, clock, DAY) is haul


@given(
    field=st.sampled_from([c.field for c in COLUMNS if c.kind != "text"]),
    text=st.text(max_size=12) | st.from_regex(r"[0-9 :.apmNov-]{0,10}", fullmatch=True),
    feet=st.booleans(),
)
def test_anything_typed_is_taken_whole_or_refused(field: str, text: str, feet: bool) -> None:
    """Protects the table from its user: whatever is typed gives a haul that shows and types back
    the same, or one CellError."""
    clock = FEET if feet else CLOCK
    column = BY_FIELD[field]
    bare = Haul("t", "p", judged=9000, females=9000)
    try:
        made = with_text(bare, column, text, clock, DAY)
    except CellError:
        return
    again = with_text(made, column, written(made, column, clock), clock, DAY)
    assert again == made


def test_nothing_is_not_zero() -> None:
    """Protects the difference between no crab and no record."""
    assert put("keepers", "0") == 0
    assert put("keepers", "") is None
    assert put("keepers", NOT_RECORDED) is None
    assert written(replace(HAUL, keepers=None), BY_FIELD["keepers"], CLOCK) == ""
    assert written(replace(HAUL, keepers=0), BY_FIELD["keepers"], CLOCK) == "0"


@pytest.mark.parametrize(
    ("field", "text", "why"),
    [
        ("light", "7", "more than were judged"),
        ("judged", "1", "more than were judged"),
        ("judged", "", "needs the number"),
        ("sponge", "4", "more than the females"),
        ("keepers", "-1", "not a whole number"),
        ("keepers", "six", "not a whole number"),
        ("hauled_at", "21 Nov 8:00", "not after the trap was set"),
        ("depth_m", "400", "outside"),
    ],
)
def test_what_cannot_be_is_refused_with_a_sentence(field: str, text: str, why: str) -> None:
    """Protects the log's own rules at the key, with trap, cell, value and remedy named."""
    with pytest.raises(Refused) as refused:
        typed([HAUL], 0, {BY_FIELD[field]: text}, CLOCK, DAY)
    assert why in str(refused.value)
    assert "Trap A1" in str(refused.value)
    assert str(refused.value).startswith("Not saved.")


def test_depth_is_typed_in_the_unit_on_screen() -> None:
    """Protects from feet taken for metres."""
    assert put("depth_m", "6", clock=FEET) == pytest.approx(6 * 0.3048, abs=1e-4)
    assert put("depth_m", "1,5") == 1.5
    assert written(HAUL, BY_FIELD["depth_m"], FEET) == "6.23"
    assert put("depth_m", "6 ft") == put("depth_m", "6 ft", clock=FEET)
    assert put("depth_m", "1.5 m", clock=FEET) == 1.5
    with pytest.raises(CellError) as refused:
        put("depth_m", "1000", clock=FEET)
    assert (refused.value.what, refused.value.remedy) == ("is outside 0 to 984", "give it in feet")


def test_a_refused_time_is_told_by_the_places_clock() -> None:
    """Protects from a riddle: what was typed here is not told back in UTC."""
    with pytest.raises(CellError, match=r"2026-11-21 14:35-05:00"):
        put("hauled_at", "21 Nov 8:00")


def test_cells_of_one_row_are_judged_together() -> None:
    """Protects a pasted row: both times move past the old ones, and fewer light with fewer judged;
    what cannot be is refused with nothing of the row taken."""
    row = {"set_at": "25 Nov 8:00", "hauled_at": "26 Nov 8:00", "judged": "1", "light": "0"}
    texts = {BY_FIELD[field]: text for field, text in row.items()}
    (made,) = typed([HAUL], 0, texts, CLOCK, DAY)
    assert (made.judged, made.light) == (1, 0)
    assert (made.set_at, made.hauled_at) == (local(2026, 11, 25, 8), local(2026, 11, 26, 8))
    with pytest.raises(Refused, match="more than were judged"):
        typed([HAUL], 0, {**texts, BY_FIELD["light"]: "2"}, CLOCK, DAY)


def test_a_clock_alone_means_the_day_of_its_neighbours() -> None:
    """Protects the date: of the cell itself, else the row above, else a day before the haul."""
    bare = Haul("t", "p")
    rows = [HAUL, bare]
    assert meant_day(rows, 1, BY_FIELD["set_at"], CLOCK, date(2026, 12, 24)) == date(2026, 11, 21)
    assert meant_day([bare], 0, BY_FIELD["hauled_at"], CLOCK, DAY) == DAY
    assert meant_day([bare], 0, BY_FIELD["set_at"], CLOCK, DAY) == DAY - timedelta(days=1)
    hauled = replace(bare, hauled_at=HAUL.hauled_at)
    days = meant_day([hauled], 0, BY_FIELD["set_at"], CLOCK, date(2026, 12, 24))
    assert days == date(2026, 11, 21)


def test_nudges_are_five_minutes_and_start_from_above() -> None:
    """Protects + and −: five minutes, from the row above where the cell is empty."""
    column = BY_FIELD["hauled_at"]
    assert HAUL.hauled_at is not None
    five = timedelta(minutes=5)
    assert nudged([HAUL], 0, column, 1)[0].hauled_at == HAUL.hauled_at + five
    bare = Haul("t", "p", trap="B")
    assert nudged([HAUL, bare], 1, column, 1)[1].hauled_at == HAUL.hauled_at + five
    with pytest.raises(Refused, match="type one"):
        nudged([bare], 0, column, 1)
    tight = replace(HAUL, set_at=HAUL.hauled_at - five)
    with pytest.raises(Refused, match="before it went in"):
        nudged([tight], 0, column, -1)


def test_totals_add_what_is_recorded() -> None:
    """Protects the sums: unrecorded hauls are left out, and light counts only where judged."""
    rows = [
        HAUL,
        replace(HAUL, trap="A2", keepers=None, judged=None, light=None),
        replace(HAUL, trap="A3", keepers=2, judged=4, light=None),
    ]
    text = totals(rows)
    assert text.startswith("3 traps: 8 keepers")
    assert "9 females (3 sponge)" in text
    assert "6 judged, 2 light: about 1 in 3" in text
    assert totals([Haul("t", "p")]) == "1 trap, nothing counted yet"
    assert (light_words(31, 0), light_words(0, 0), light_words(None, 3)) == ("none", "–", "–")


def test_what_is_missing_is_named_by_trap() -> None:
    """Protects from forgetting a trap: named one by one, summed up when many, and a trap
    without a keeper has nothing to judge."""
    empty = replace(HAUL, trap="A2", keepers=0, judged=None, light=None, hauled_at=None)
    assert missing([HAUL, empty]) == "Not recorded yet: hauled of A2."
    many = [replace(HAUL, trap=f"T{at}", keepers=None) for at in range(5)]
    assert "keepers of 5 traps" in missing([HAUL, *many])
    assert "keepers of every trap" in missing(many)
    assert missing([HAUL]) == ""


def test_the_improbable_is_asked_about_not_refused() -> None:
    """Protects from slips: sixty keepers in a trap, nine days of soak, a trap twice."""
    assert HAUL.set_at is not None
    now = datetime(2026, 11, 25, tzinfo=UTC)
    assert doubts([HAUL], now) == []
    odd = replace(HAUL, keepers=60, set_at=HAUL.set_at - timedelta(days=8.3))
    text = " ".join(doubts([odd, odd], now))
    assert "60 keepers" in text
    assert "a soak of 9 days" in text
    assert "2 times" in text
    ahead = " ".join(doubts([HAUL], datetime(2026, 11, 1, tzinfo=UTC)))
    assert "counted for a haul that lies ahead" in ahead
    planned = replace(HAUL, keepers=None)
    assert "the plan's" in " ".join(doubts([planned], datetime(2026, 11, 1, tzinfo=UTC)))


def made_plan() -> Plan:
    begin = datetime(2026, 11, 27, 19, 0, tzinfo=UTC)
    return Plan(
        1, begin, begin, begin + timedelta(hours=42), 42.0, Interval(14, 9, 20),
        Interval(0.1, 0.05, 0.2), None, None, None, (), (),
    )  # fmt: skip


TRAPS = TrapLayout(
    (TrapKit("A1", "wire", "mullet"), TrapKit("B1")),
    (Placement("B1", "", "ramp flat"), Placement("A1", "wire", "deep bend")),
    "",
)


def test_a_planned_trip_is_ready_to_fill() -> None:
    """Protects the way from plan to log: traps, spots, depths, bait and times are there, the
    counts are not."""
    site = load_site(demo_place())
    first, second = trip_of_plan(Log(()), site, made_plan(), TRAPS)
    assert (first.trip, first.place) == ("29 Nov 2026", "Sedge Hollow")
    assert (first.trap, first.spot, first.depth_m) == ("B1", "ramp flat", 1.1)
    assert (second.trap, second.design, second.bait) == ("A1", "wire", "mullet")
    assert first.set_at == made_plan().set_at
    assert second.set_at == made_plan().set_at + timedelta(minutes=30)
    assert second.hauled_at == made_plan().haul_at + timedelta(minutes=45)
    assert first.keepers is None
    assert first.judged is None


def test_a_trip_like_the_last_takes_its_traps_and_no_times() -> None:
    """Protects the log from guessed times, and a second trip of a day from the first's name."""
    site = load_site(demo_place())
    log = Log((replace(HAUL, trip="22 Nov 2026"),))
    (row,) = trip_like_last(log, site, DAY, TRAPS)
    assert row.trip == "22 Nov 2026 (2)"
    assert (row.trap, row.spot, row.depth_m) == ("A1", "bar", 1.9)
    assert (row.set_at, row.hauled_at, row.keepers) == (None, None, None)
    assert [haul.trap for haul in trip_like_last(Log(()), site, DAY, TRAPS)] == ["B1", "A1"]


def test_a_new_row_follows_the_one_above() -> None:
    """Protects the quick entry of one more trap: same spot and kind, five minutes on."""
    assert HAUL.set_at is not None
    row = row_after([HAUL], 0, ("22 Nov", "Sedge Hollow"))
    assert (row.trap, row.spot, row.keepers) == ("", "bar", None)
    assert row.set_at == HAUL.set_at + timedelta(minutes=5)
    assert row_after([], -1, ("t", "p")) == Haul("t", "p")


def test_trips_come_newest_first_and_the_undated_on_top() -> None:
    """Protects the list: what waits for its times is not buried under ten years of log."""
    older = replace(HAUL, trip="older", hauled_at=datetime(2026, 5, 1, tzinfo=UTC), set_at=None)
    bare = Haul("bare", "Sedge Hollow")
    names = [trip.trip for trip in trips_newest_first(Log((older, HAUL, bare)))]
    assert names == ["bare", "22 Nov", "older"]
