"""Hauls from outside against those in the log: nothing doubled, nothing lost, rows filled once."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from planner.logbook import Haul, Logbook
from planner.logbook.columns import COLUMNS
from planner.logbook.joining import join, merged

SET = datetime(2026, 8, 13, 21, 0, tzinfo=UTC)
WAITING = Haul(
    "14 Aug", "Otter Bight", "grass edge", "A3", bait="menhaden", set_at=SET,
    hauled_at=SET + timedelta(hours=14), depth_m=1.8, extra={"crew": "two"},
)  # fmt: skip
COUNTED = replace(
    WAITING, hauled_at=SET + timedelta(hours=14, minutes=25), keepers=4, judged=4, light=1,
    depth_m=None, bait="", extra={},
)  # fmt: skip

# Few different values, so that hauls meet.
NEAR = st.builds(
    Haul,
    trip=st.just("14 Aug"),
    place=st.just("Otter Bight"),
    spot=st.sampled_from(["", "deep bend"]),
    trap=st.sampled_from(["", "A3", "A4"]),
    set_at=st.sampled_from([None, SET]),
    hauled_at=st.sampled_from([None, SET + timedelta(hours=14), SET - timedelta(hours=1)]),
    keepers=st.sampled_from([None, None, 0, 4]),
    notes=st.sampled_from(["", "fouled"]),
    extra=st.sampled_from([{}, {"crew": "two"}]),
)
ROWS = st.lists(NEAR, max_size=6)


def test_a_row_that_waited_is_filled():
    """A trip made ready before it was hauled would otherwise stand twice in the log."""
    joined = join([WAITING], [COUNTED])
    assert joined.new == ()
    filled = joined.filled[0]
    assert (filled.keepers, filled.hauled_at) == (4, COUNTED.hauled_at)
    assert (filled.depth_m, filled.bait, filled.extra) == (1.8, "menhaden", {"crew": "two"})


def test_taking_it_in_twice_adds_nothing():
    """The row that was filled holds more than the file says, and is still the same haul."""
    row = merged(WAITING, COUNTED)
    joined = join([row], [COUNTED])
    assert (joined.new, joined.filled, joined.known) == ((), {}, 1)


def test_a_haul_gives_way_to_one_that_fits_nowhere_else():
    """Two rows of a trap, two hauls that say less: each finds its own, none is added once more."""
    plain = replace(COUNTED, notes="", extra={})
    fouled = replace(plain, notes="fouled")
    rows = [replace(fouled, bait="menhaden"), replace(plain, bait="mullet")]
    joined = join(rows, [plain, fouled])  # the first fits both rows, the second only the first
    assert (joined.new, joined.filled, joined.known) == ((), {}, 2)
    assert joined.met == {0: 1, 1: 0}


def test_a_counted_row_is_never_overwritten():
    """What was typed on deck is not replaced by what a file says of the same trap."""
    row = replace(WAITING, keepers=2)
    joined = join([row], [COUNTED])
    assert joined.new == (COUNTED,)
    assert not joined.filled


def test_an_impossible_filling_is_a_new_haul():
    """A planned set after the real haul must not make a haul that ends before it began."""
    row = replace(WAITING, set_at=SET + timedelta(days=3), hauled_at=None)
    haul = replace(COUNTED, set_at=None)
    assert join([row], [haul]).new == (haul,)


def test_of_two_rows_of_a_trap_the_one_at_its_spot():
    """A trap hauled at two spots on one trip keeps its catches apart."""
    elsewhere = replace(WAITING, spot="deep bend")
    assert set(join([elsewhere, WAITING], [COUNTED]).filled) == {1}


@settings(max_examples=200)
@given(ROWS, ROWS)
def test_what_was_taken_in_is_known(there, more):
    """Importing a file twice adds nothing, whatever is in it and in the log."""
    first = join(there, more)
    after = [first.filled.get(at, haul) for at, haul in enumerate(there)] + list(first.new)
    again = join(after, more)
    assert again.new == ()
    assert not again.filled
    assert again.known == len(more)


@settings(max_examples=200)
@given(ROWS, ROWS)
def test_nothing_recorded_is_lost(there, more):
    """Whatever comes in, every value that the log had stays, and every haul is somewhere."""
    joined = join(there, more)
    assert len(joined.new) + len(joined.filled) + joined.known == len(more)
    for at, haul in joined.filled.items():
        assert set(there[at].extra) <= set(haul.extra)
        for name in COLUMNS:
            if getattr(there[at], name) not in (None, ""):
                assert getattr(haul, name) not in (None, "")


def test_the_book_fills_rows_as_one_change(tmp_path: Path):
    """Undo takes a phone's tally out again and leaves the trip ready as it was."""
    with Logbook.open(tmp_path / "a.logbook") as book:
        other = replace(WAITING, trap="A4")
        book.save_trip("14 Aug", [WAITING, other])
        change = book.add_hauls([COUNTED], "import of tally.csv")
        assert (change.added, change.filled, change.trips) == (0, 1, ("14 Aug",))
        assert book.read().hauls == (merged(WAITING, COUNTED), other)
        assert book.add_hauls([COUNTED], "import of tally.csv").trips == ()
        book.undo()
        assert book.read().hauls == (WAITING, other)
