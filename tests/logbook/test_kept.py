"""What the log keeps beside counts: kitchen, single crabs, traps, the bin, rows that stay."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from planner.estimates import Interval
from planner.logbook import Crab, Haul, Log, Logbook, LogError, Promise, Trap, TrapEvent, Trip

HAULED = datetime(2026, 8, 14, 11, tzinfo=UTC)
CRAB = Crab("male", 142.0, "point to point", 171.0, "papershell", "none", "white", "light", 21.0)


def haul(trap: str, trip: str = "14 Aug", **values: object) -> Haul:
    return Haul(trip, "Sedge Hollow", trap=trap, hauled_at=HAULED, **values)  # type: ignore[arg-type]


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Logbook]:
    with Logbook.open(tmp_path / "hauls.logbook") as made:
        yield made


@pytest.mark.parametrize(
    ("deck", "kitchen", "expected"),
    [
        ((None, None), (40, 12), (40, 12, True)),
        ((10, 5), (40, 12), (40, 12, True)),
        ((40, 5), (40, 12), (40, 12, True)),
        ((50, 5), (40, 12), (50, 5, False)),
        ((10, 5), (None, None), (10, 5, False)),
        ((10, 5), (40, None), (10, 5, False)),
        ((10, None), (0, 0), (None, None, False)),
        ((None, None), (None, None), (None, None, False)),
    ],
)
def test_deck_or_kitchen_never_both(
    deck: tuple[int | None, int | None],
    kitchen: tuple[int | None, int | None],
    expected: tuple[int | None, int | None, bool],
) -> None:
    """The same crabs are not counted twice: the larger count speaks, the kitchen's of equal."""
    row = haul("A1", keepers=60, judged=deck[0], light=deck[1])
    trip = Trip("14 Aug", "Sedge Hollow", kitchen_picked=kitchen[0], kitchen_light=kitchen[1])
    (outcome,) = Log((row,), (trip,)).outcomes()
    assert (outcome.judged, outcome.light, outcome.in_kitchen) == expected


def test_crabs_graded_singly_are_judged_crabs() -> None:
    """Grades speak for a haul only where no count does; an ungraded crab says nothing."""
    crabs = (CRAB, replace(CRAB, grade="full"), replace(CRAB, grade=""))
    (outcome,) = Log((haul("A1", crabs=crabs),)).outcomes()
    assert (outcome.judged, outcome.light) == (2, 1)
    (outcome,) = Log((haul("A1", crabs=crabs, judged=8, light=3),)).outcomes()
    assert (outcome.judged, outcome.light) == (8, 3)


def test_the_kitchen_count_reaches_the_evidence() -> None:
    """A trip judged only in the kitchen is learned from like one judged on deck."""
    from planner.assets import demo_place
    from planner.molt import evidence
    from planner.sites import load_site

    site = load_site(demo_place())
    trip = Trip("14 Aug", site.name, kitchen_picked=40, kitchen_light=12)
    found = evidence(site, Log((replace(haul("A1"), place=site.name),), (trip,)))
    assert found is not None
    assert (found.trips, found.crabs) == (1, 40)


def test_crabs_stay_with_their_haul(book: Logbook) -> None:
    """A trap removed above must not hand its crabs to the trap below."""
    book.save_trip("14 Aug", [haul("A1"), haul("A2", crabs=(CRAB,)), haul("A3")])
    hauls = book.read().hauls
    book.save_trip("14 Aug", [hauls[1], hauls[2]])
    assert [(h.trap, h.crabs) for h in book.read().hauls] == [("A2", (CRAB,)), ("A3", ())]
    book.undo()
    assert [h.trap for h in book.read().hauls] == ["A1", "A2", "A3"]
    assert [h.row for h in book.read().hauls] == [h.row for h in hauls]


def test_a_trap_between_two_stays_there(book: Logbook) -> None:
    """Rows stand in the order of the user's table, also after reopening."""
    book.save_trip("14 Aug", [haul("A1"), haul("A2")])
    first, second = book.read().hauls
    book.save_trip("14 Aug", [first, haul("B1"), second])
    with Logbook.open(book.path, read_only=True) as reader:
        assert [h.trap for h in reader.read().hauls] == ["A1", "B1", "A2"]


def test_crabs_that_cannot_be_are_refused(book: Logbook) -> None:
    """An inch taken for a millimetre, and meat heavier than its crab, are named."""
    wrong = replace(CRAB, width_mm=0.6, meat_g=180.0, sex="hen")
    with pytest.raises(LogError) as caught:
        book.save_trip("14 Aug", [haul("A1", crabs=(wrong,))])
    assert [problem.where for problem in caught.value.problems] == [
        "haul 1, crab 1, sex",
        "haul 1, crab 1, width_mm",
        "haul 1, crab 1, meat_g",
    ]


def test_more_light_than_picked_is_refused(book: Logbook) -> None:
    """The kitchen count obeys the rule of the deck count, and nothing is saved."""
    book.save_trip("14 Aug", [haul("A1")])
    for picked, light in ((3, 4), (None, 1)):
        trip = Trip("14 Aug", "Sedge Hollow", kitchen_picked=picked, kitchen_light=light)
        with pytest.raises(LogError, match="kitchen_light"):
            book.save_details(trip)
    assert book.read().trips == (Trip("14 Aug", "Sedge Hollow"),)


def test_a_kitchen_is_asked_for_once(book: Logbook) -> None:
    """That the window has asked is kept, is no change to undo and changes no forecast."""
    book.save_trip("14 Aug", [haul("A1")])
    before = book.read()
    book.kitchen_asked([("14 Aug", "Sedge Hollow")])
    after = book.read()
    assert [trip.kitchen_asked for trip in after.trips] == [True]
    assert after.fingerprint == before.fingerprint
    assert book.undo_name == "Undo entry of trip 14 Aug"


def test_traps_have_a_history(book: Logbook) -> None:
    """A trap keeps what befell it and what is put right; undo goes step by step, to no trap."""
    trap = Trap("A1", "bare", events=(TrapEvent("bought", date(2026, 4, 2), "two doors"),))
    book.save_trap(trap)
    lost = replace(trap, events=(*trap.events, TrapEvent("lost", date(2026, 8, 1))))
    book.save_trap(lost, change="loss of trap A1")
    book.save_trap(replace(trap, design="bare, ring"))
    assert book.read().traps == (replace(trap, design="bare, ring"),)
    assert book.undo_name == "Undo history of trap A1"
    book.undo()
    assert book.read().traps == (lost,)
    assert book.undo_name == "Undo loss of trap A1"
    book.undo()
    assert book.read().traps == (trap,)
    book.undo()
    assert book.read().traps == ()
    with pytest.raises(LogError):
        book.save_trap(replace(trap, label=" ", events=(TrapEvent("eaten", date(1000, 1, 1)),)))


def test_what_is_deleted_is_in_the_bin_until_it_is_emptied(book: Logbook) -> None:
    """Trips and hauls come back whole from the bin after more changes than undo reaches."""
    crabs = (CRAB, replace(CRAB, sex="mature female"), replace(CRAB, grade="full"))
    kept = [haul("A1", crabs=crabs), haul("A2", extra={"moon": "full"})]
    details = Trip("14 Aug", "Sedge Hollow", crew=2, kitchen_picked=5, kitchen_light=1)
    book.save_trip("14 Aug", kept, details)
    whole = book.read()
    book.save_trip("14 Aug", [whole.hauls[1]])
    book.delete_trip("14 Aug")
    for count in range(60):
        book.save_trip("20 Aug", [haul("B1", "20 Aug", keepers=count)])
    with Logbook.open(book.path, read_only=True) as reader:
        assert [(each.name, each.hauls) for each in reader.binned()] == [
            ("trip 14 Aug", 1),
            ("trap A1 of trip 14 Aug", 1),
        ]
    for binned in book.binned():
        assert book.take_out_of_bin(binned.number).trips == ("14 Aug",)
    assert book.binned() == ()
    back = book.read().by_trip["14 Aug", "Sedge Hollow"]
    assert back.trip == details
    assert {each.trap: each.crabs for each in back.hauls} == {"A1": crabs, "A2": ()}
    assert back.digest == whole.by_trip["14 Aug", "Sedge Hollow"].digest


def test_emptying_the_bin_is_the_users_and_can_be_undone(book: Logbook) -> None:
    """Nothing else empties it: not undo of a delete made before, not restarts."""
    book.save_trip("14 Aug", [haul("A1")])
    book.delete_trip("14 Aug")
    assert len(book.binned()) == 1
    book.empty_bin()
    assert book.binned() == ()
    book.undo()
    assert len(book.binned()) == 1
    book.undo()
    assert book.binned() == ()
    assert [h.trap for h in book.read().hauls] == ["A1"]
    assert book.take_out_of_bin(77).trips == ()


def test_reading_again_reads_what_changed(book: Logbook) -> None:
    """A later reading equals a fresh one, after changes, undo, a failure, and another's writing."""
    for day in range(5):
        book.save_trip(f"{day}", [haul("A1", f"{day}"), haul("A2", f"{day}", crabs=(CRAB,))])
    book.read()
    steps = [
        lambda: book.save_trip("3", [haul("A1", "3", keepers=4)]),
        lambda: book.delete_trip("2"),
        book.undo,
        book.undo,
        book.redo,
        lambda: book.save_details(Trip("1", "Sedge Hollow", weather="fog")),
        lambda: book.add_hauls([haul("Z", "1"), haul("Z", "9")], "import"),
        lambda: book.save_trip("0", [haul("A1", "0", crabs=(CRAB, CRAB))]),
        lambda: book.save_trip("0", [haul("A1", "0", crabs=(replace(CRAB, sex=""), CRAB))]),
    ]
    for step in steps:
        step()
        with Logbook.open(book.path, read_only=True) as fresh:
            assert book.read() == fresh.read()
            assert book.read().fingerprint == fresh.read().fingerprint
    with Logbook.open(book.path, read_only=True) as reader:
        assert reader.read() == book.read()
        book.save_trip("4", [haul("A1", "4", keepers=1, set_at=HAULED - timedelta(hours=9))])
        assert reader.read() == book.read()


def test_what_a_plan_promised_stays_with_its_trip(book: Logbook) -> None:
    """Later details, counts, undo and the bin leave the forecast of the plan as it was."""
    promise = Promise(Interval(14.5, 9.0, 20.0), Interval(0.12, 0.05, 0.25))
    details = Trip("14 Aug", "Sedge Hollow", promise=promise)
    book.save_trip("14 Aug", [haul("A1")], details, change="start")
    book.save_trip("14 Aug", [haul("A1", keepers=3)])
    (trip,) = book.read().trips
    assert trip.promise == promise
    book.save_details(replace(trip, kitchen_picked=5, kitchen_light=1))
    book.undo()
    book.delete_trip("14 Aug")
    book.take_out_of_bin(book.binned()[0].number)
    assert book.read().trips[0].promise == promise
    book.close()
    with closing(sqlite3.connect(book.path)) as file, file:
        file.execute("UPDATE trips SET promise = '{\"full_keepers\": 3}'")
    with Logbook.open(book.path) as again:
        (trip,) = again.read().trips
        assert trip.promise is None
        assert again.read().hauls[0].keepers == 3
