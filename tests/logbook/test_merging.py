"""Two whole logs made one: nothing doubled, nothing overwritten, what is not alike is named."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from planner.logbook import Crab, Haul, Log, Logbook, Trap, TrapEvent, Trip
from planner.logbook.log import haul_key
from planner.logbook.merging import Merged, merge

SET = datetime(2026, 8, 13, 21, 0, tzinfo=UTC)
ROW = Haul(
    "14 Aug", "Otter Bight", "grass edge", "A3", set_at=SET, hauled_at=SET + timedelta(hours=14),
    keepers=4, judged=4, light=1,
)  # fmt: skip
CRAB = Crab("male", 160.0, grade="light")
BOUGHT, LOST = TrapEvent("bought", date(2025, 4, 1)), TrapEvent("lost", date(2026, 9, 1))


def merged_in(tmp_path: Path, here: Log, there: Log) -> tuple[Log, Log]:
    """Return the log after taking in another once and twice, through the file."""
    with Logbook.open(tmp_path / "here.logbook") as book:
        book.add_log(here, "import of here")
        book.add_log(there, "import of there")
        once = book.read()
        assert book.add_log(there, "import of there").trips == ()
        twice = book.read()
        assert book.undo_name == "Undo import of there"
        book.undo()
        assert book.read().fingerprint == here.fingerprint
    return once, twice


def test_other_trips_come_in_whole_and_once(tmp_path: Path):
    """A log carried from another machine brings its trips with crabs, kitchen and traps, once."""
    other = replace(ROW, trip="15 Aug", crabs=(CRAB,))
    details = Trip("15 Aug", "Otter Bight", crew=2, kitchen_picked=3, kitchen_light=1)
    there = Log((ROW, other), (details,), (Trap("A3", "bare", events=(BOUGHT,)),))
    once, twice = merged_in(tmp_path, Log((ROW,)), there)
    assert once.fingerprint == there.fingerprint == twice.fingerprint
    assert once.by_trip["15 Aug", "Otter Bight"].hauls[0].crabs == (CRAB,)


def test_what_was_empty_here_is_filled(tmp_path: Path):
    """The kitchen's count, single crabs and a note made on the other machine come home."""
    theirs = replace(ROW, notes="fouled", females=0, crabs=(CRAB,))
    trip = Trip("14 Aug", "Otter Bight", kitchen_picked=4, kitchen_light=2, notes="calm")
    once, _ = merged_in(tmp_path, Log((ROW,)), Log((theirs,), (trip,)))
    logged = once.by_trip["14 Aug", "Otter Bight"]
    assert logged.hauls == (theirs,)
    assert logged.trip == trip


def test_what_is_not_alike_is_named_and_stays(tmp_path: Path):
    """A correction on one machine is not undone in silence by the other's older value."""
    here = Log(
        (replace(ROW, crabs=(CRAB,)), replace(ROW, trap="A4")),
        (Trip("14 Aug", "Otter Bight", kitchen_picked=4, notes="calm"),),
        (Trap("A3", "bare", events=(BOUGHT,)),),
    )
    there = Log(
        (replace(ROW, crabs=(CRAB, CRAB)), replace(ROW, trap="A4", keepers=9, judged=9)),
        (Trip("14 Aug", "Otter Bight", crew=2, kitchen_picked=9, kitchen_light=3),),
        (Trap("A3", "coated", events=(BOUGHT, LOST)),),
    )
    found = merge(here, there)
    assert [(each.trip, each.trap, each.values) for each in found.differences] == [
        ("14 Aug", "A3", {"crabs": (1, 2)}),
        ("14 Aug", "A4", {"keepers": (4, 9), "judged": (4, 9)}),
        ("14 Aug", "", {"kitchen_picked": (4, 9)}),
        ("", "A3", {"design": ("bare", "coated")}),
    ]
    once, _ = merged_in(tmp_path, here, there)
    assert once.hauls == here.hauls
    trip = once.by_trip["14 Aug", "Otter Bight"].trip
    assert (trip.crew, trip.kitchen_picked, trip.kitchen_light, trip.notes) == (2, 4, None, "calm")
    assert once.traps == (Trap("A3", "bare", events=(BOUGHT, LOST)),)


def test_what_is_alike_in_both_is_neither_taken_nor_named():
    """A copy of the log, crabs and traps included, is nothing to settle and nothing to take."""
    here = Log((replace(ROW, crabs=(CRAB, CRAB)),), (), (Trap("A3", "bare", events=(BOUGHT,)),))
    found = merge(here, here)
    assert (found.adds, found.differences) == (False, ())


def test_an_event_that_befell_a_trap_twice_is_taken_once_more():
    """Two repairs of one day are two: the one that is here already stands for one of them."""
    repaired = TrapEvent("repaired", date(2026, 7, 1))
    here, there = (Log((), (), (Trap("A3", events=(repaired,) * n),)) for n in (1, 2))
    (trap,) = merge(here, there).traps
    assert trap.events == (repaired, repaired)
    assert merge(there, here).traps == ()


def test_a_haul_without_a_label_is_not_doubled_either():
    """A trip kept without trap labels has no other sign that two rows are one haul."""
    here, there = replace(ROW, trap=""), replace(ROW, trap="", keepers=5)
    found = merge(Log((here,)), Log((there,)))
    assert not found.adds
    assert found.differences[0].values == {"keepers": (4, 5)}


def test_a_second_pull_of_a_trap_is_taken():
    """A trap hauled twice on a trip, of which this log has the first, gets its second."""
    second = replace(ROW, hauled_at=SET + timedelta(hours=16), keepers=1)
    found = merge(Log((ROW,)), Log((ROW, second)))
    assert (found.hauls.new, found.differences) == ((second,), ())


def test_who_was_asked_is_not_asked_again(tmp_path: Path):
    """The question after the kitchen is put once, on whichever machine."""
    asked = Trip("14 Aug", "Otter Bight", kitchen_asked=True)
    with Logbook.open(tmp_path / "a.logbook") as book:
        book.add_log(Log((ROW,), (asked,)), "import of b")
        assert book.read().by_trip["14 Aug", "Otter Bight"].trip.kitchen_asked


# Few different values, so that hauls meet.
HAULS = st.lists(
    st.builds(
        Haul,
        trip=st.sampled_from(["14 Aug", "15 Aug"]),
        place=st.just("Otter Bight"),
        trap=st.sampled_from(["", "A3", "A4"]),
        hauled_at=st.sampled_from([None, SET, SET + timedelta(hours=1)]),
        keepers=st.sampled_from([None, 0, 4]),
        notes=st.sampled_from(["", "fouled"]),
        crabs=st.sampled_from([(), (), (CRAB,), (CRAB, CRAB)]),
    ),
    max_size=6,
)
TRIPS = st.lists(
    st.builds(
        Trip, st.sampled_from(["14 Aug", "15 Aug"]), st.just("Otter Bight"),
        crew=st.sampled_from([None, 1, 2]), kitchen_picked=st.sampled_from([None, 3, 4]),
        kitchen_light=st.none(),
    ),
    max_size=2, unique_by=lambda trip: trip.name,
)  # fmt: skip
LOGS = st.builds(lambda hauls, trips: Log(tuple(hauls), tuple(trips)), HAULS, TRIPS)


def after(here: Log, found: Merged) -> Log:
    """Return a log with what was found put in, as the file has it."""
    hauls = [found.hauls.filled.get(at, haul) for at, haul in enumerate(here.hauls)]
    trips = {(trip.name, trip.place): trip for trip in (*here.trips, *found.trips)}
    return Log((*hauls, *found.hauls.new), tuple(trips.values()))


@settings(max_examples=300)
@given(LOGS, LOGS)
def test_nothing_is_lost_and_the_second_time_adds_nothing(here: Log, there: Log):
    """Whatever the two hold: no value here changes, and taking it in again is taking nothing."""
    found = merge(here, there)
    whole = after(here, found)
    for old, new in zip(here.hauls, whole.hauls, strict=False):
        waited = old.keepers is None
        assert waited or new.keepers == old.keepers
        assert waited or old.hauled_at in (None, new.hauled_at)
        assert old.crabs in ((), new.crabs)
    again = merge(whole, there)
    assert not again.adds
    assert len(again.differences) <= len(there.hauls) + len(there.trips)


def test_crabs_of_a_trap_written_down_twice_are_taken_once():
    """Of two uncounted rows of one trap only one has crabs: no other row is given them too."""
    uncounted = Haul("15 Aug", "Otter Bight", trap="A4", hauled_at=ROW.hauled_at)
    here = Log((replace(uncounted, notes="fouled"),))
    there = Log((uncounted, replace(uncounted, crabs=(CRAB,))))
    whole = after(here, merge(here, there))
    assert [haul.crabs for haul in whole.hauls] == [(), (CRAB,)]
    assert not merge(whole, there).adds


@settings(max_examples=100)
@given(LOGS)
def test_a_log_into_an_empty_one_is_that_log(there: Log):
    """Nothing is taken for a second telling of what is there where nothing is there."""
    found = merge(Log(()), there)
    assert not found.differences
    assert sorted(map(repr, found.hauls.new)) == sorted(map(repr, there.hauls))
    assert {haul_key(haul) for haul in after(Log(()), found).hauls} == set(
        map(haul_key, there.hauls)
    )
