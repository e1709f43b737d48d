"""Reading haul tables: the right rows, or every bad cell by line and column."""

from __future__ import annotations

import random
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from planner.errors import PlannerError
from planner.logbook import Log, LogError, export_table, read_log
from planner.logbook.columns import CellError, read_time

NEW_YORK = ZoneInfo("America/New_York")
HEADER = (
    "trip,place,spot,trap,design,bait,set_at,hauled_at,depth_m,keepers,females,sponge,judged,light"
)
GOOD = (
    "14 Aug,Sedge Hollow,grass edge,A1,bare wire,mullet,"
    "2026-08-13 18:00,2026-08-14T07:10-04:00,1.5,3,2,1,3,1"
)

Write = Callable[[str | bytes], Path]


def zones(place: str) -> ZoneInfo | None:
    """Know the demo place only."""
    return NEW_YORK if place == "Sedge Hollow" else None


@pytest.fixture
def write(tmp_path: Path) -> Write:
    """Write a table and return its path."""

    def write(content: str | bytes) -> Path:
        path = tmp_path / "hauls.csv"
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return path

    return write


def problems(path: Path, now: datetime | None = None) -> dict[str, str]:
    """Return the problems of a table: what is wrong by where."""
    with pytest.raises(LogError) as caught:
        read_log(path, zones, now)
    assert all(problem.remedy for problem in caught.value.problems)
    return {problem.where: problem.what for problem in caught.value.problems}


def test_reads_what_was_written(write: Write) -> None:
    """Local times become UTC by the place's zone, counts are numbers, the empty is None."""
    log = read_log(write(f"{HEADER}\n{GOOD}\n14 Aug,Sedge Hollow{',' * 12}\n"), zones)
    first, second = log.hauls
    assert first.set_at == datetime(2026, 8, 13, 22, 0, tzinfo=UTC)
    assert first.hauled_at == datetime(2026, 8, 14, 11, 10, tzinfo=UTC)
    assert (first.depth_m, first.keepers, first.judged, first.light) == (1.5, 3, 3, 1)
    assert (second.keepers, second.set_at, second.spot) == (None, None, "")


@pytest.mark.parametrize(
    ("column", "cell"),
    [
        ("trip", ""),
        ("place", " "),
        ("keepers", "-1"),
        ("keepers", "2.5"),
        ("keepers", "three"),
        ("keepers", "99999999999999999999999"),
        ("keepers", "1e3"),
        ("keepers", "٣"),
        ("keepers", "nan"),
        ("depth_m", "5 ft"),
        ("depth_m", "1,5"),
        ("depth_m", "-2"),
        ("depth_m", "inf"),
        ("depth_m", "1e999"),
        ("light", "4"),
        ("judged", ""),
        ("sponge", "3"),
        ("set_at", "yesterday"),
        ("set_at", "13/08/2026 18:00"),
        ("set_at", "2026-08-13"),
        ("set_at", "0026-08-13 18:00"),
        ("set_at", "2026-03-08 02:30"),
        ("hauled_at", "2026-08-13 18:00"),
        ("hauled_at", "9999-12-31T23:59-14:00"),
    ],
)
def test_names_the_bad_cell(write: Write, column: str, cell: str) -> None:
    """A bad cell is named by line and column, and the good row before it hides nothing."""
    cells = dict(zip(HEADER.split(","), GOOD.split(","), strict=True))
    cells[column] = f'"{cell}"'
    found = problems(write(f"{HEADER}\n{GOOD}\n{','.join(cells.values())}\n"))
    blamed = "light" if column == "judged" else column
    assert list(found) == [f"line 3, {blamed}"]


def test_every_bad_row_at_once(write: Write) -> None:
    """All problems of all rows are told together; a text over two lines keeps the count right."""
    note = '"two\nlines"'
    header = f"{HEADER},notes"
    rows = [f"{GOOD},{note}", f"{GOOD.replace(',3,2,1,3,1', ',x,y,,3,9')},", f",,{',' * 12}5"]
    found = problems(write("\n".join([header, *rows])))
    assert list(found) == [
        "line 4, keepers",
        "line 4, females",
        "line 4, light",
        "line 5, trip",
        "line 5, place",
    ]


def test_future_only_when_asked(write: Write) -> None:
    """A time to come is refused when the present is given, and both times are named."""
    path = write(f"{HEADER}\n{GOOD}\n")
    now = datetime(2026, 8, 1, tzinfo=UTC)
    assert set(problems(path, now)) == {"line 2, set_at", "line 2, hauled_at"}
    assert len(read_log(path, zones).hauls) == 1


def test_local_time_needs_a_known_place(write: Write) -> None:
    """A local time at an unknown place is refused; with an offset it is fine."""
    row = GOOD.replace("Sedge Hollow", "Nowhere")
    assert list(problems(write(f"{HEADER}\n{row}\n"))) == ["line 2, set_at"]
    fixed = row.replace("18:00", "18:00-04:00")
    assert len(read_log(write(f"{HEADER}\n{fixed}\n"), zones).hauls) == 1


def test_repeated_hour_is_the_first_unless_told(write: Write) -> None:
    """In the hour that happens twice a local time is the first one; an offset picks the other."""
    rows = (
        "trip,place,set_at\na,Sedge Hollow,2026-11-01 01:30\na,Sedge Hollow,2026-11-01 01:30-05:00"
    )
    first, second = read_log(write(rows), zones).hauls
    assert first.set_at == datetime(2026, 11, 1, 5, 30, tzinfo=UTC)
    assert second.set_at == datetime(2026, 11, 1, 6, 30, tzinfo=UTC)


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"\n\n",
        b"\xff\xfet\x00r\x00i\x00p\x00",
        b"trip,place\na,b\xe9\n",
        b"trip,place\na,\x00\n",
        b"trip\na\n",
        b"tripp,place\na,b\n",
        b"trip,place,keepers,Keepers\na,b,1,2\n",
        b"trip,place\na,b,c\n",
        b"trip,place,spot\na,b\n",
        b'trip,place\na,"b\n',
        b'trip,place\na,"b"c\n',
        b"trip,place,\na,b,c\n",
        b"14 Aug,Sedge Hollow,3\n",
        b"%PDF-1.7 ...",
    ],
)
def test_refuses_what_is_no_table(write: Write, content: bytes) -> None:
    """A file that is not a whole haul table gives a message, not rows."""
    assert problems(write(content))


def test_near_names_are_kept_not_guessed(write: Write) -> None:
    """A column whose name is nearly a known one is kept as it is and counts for nothing."""
    log = read_log(write("trip,place,keeper,Trap colour\na,Sedge Hollow,5,red\n"), zones)
    assert log.hauls[0].keepers is None
    assert log.hauls[0].extra == {"keeper": "5", "Trap colour": "red"}


@pytest.mark.parametrize(
    "content",
    [
        "\ufefftrip,place,depth_m,keepers\na,Sedge Hollow,1.5,3\n",
        "trip;place;depth_m;keepers\na;Sedge Hollow;1,5;3\n",
        "trip\tplace\tdepth_m\tkeepers\na\tSedge Hollow\t1.5\t3\n",
        "TRIP, Place ,Depth_m,Keepers\r\n a ,Sedge Hollow,1.50,3.0\r\n,,,\r\n\r\n",
        "trip,place,depth_m,keepers,\ra,Sedge Hollow,1.5,3,\r",
        '"trip","place","depth_m","keepers"\n"a","Sedge Hollow","1.5","3"\n',
    ],
)
def test_reads_what_spreadsheets_write(write: Write, content: str) -> None:
    """Byte-order mark, semicolon, tab, quotes, capitals, blank lines: the same haul."""
    (haul,) = read_log(write(content), zones).hauls
    assert (haul.trip, haul.place, haul.depth_m, haul.keepers) == ("a", "Sedge Hollow", 1.5, 3)


def test_missing_file_and_folder(tmp_path: Path) -> None:
    """No file, a folder, an impossible name: a sentence each."""
    for path in (tmp_path / "none.csv", tmp_path, tmp_path / "a\0b"):
        with pytest.raises(LogError):
            read_log(path, zones)


def test_bent_tables_give_rows_or_a_message(write: Write, tmp_path: Path) -> None:
    """Whatever is done to a table, it is read whole or refused; what is read survives export."""
    rng = random.Random(20260814)
    whole = f"{HEADER},notes\n" + "\n".join(f'{GOOD},"note {i}"' for i in range(3)) + "\n"
    bits = [b",", b";", b'"', b"\n", b"\r", b"\0", b"\xff", b"=", b"-", b"9", b"2026-03-08 02:30"]
    taken = 0
    for _ in range(1500):
        raw = bytearray(whole.encode())
        for _ in range(rng.randint(1, 4)):
            at = rng.randrange(len(raw))
            raw[at : at + rng.randint(0, 3)] = rng.choice(bits)
        try:
            log = read_log(write(bytes(raw)), zones)
        except PlannerError:
            continue
        taken += 1
        export_table(log, tmp_path / "back.csv", zones)
        assert read_log(tmp_path / "back.csv", zones).fingerprint == log.fingerprint
    assert taken > 50


def test_fingerprint_is_of_the_content(write: Write) -> None:
    """The order of rows changes nothing; one more light crab does."""
    rows = [GOOD, GOOD.replace("A1", "A2"), GOOD.replace("A1", "B1")]
    one = read_log(write("\n".join([HEADER, *rows])), zones)
    other = read_log(write("\n".join([HEADER, *reversed(rows)])), zones)
    changed = read_log(write("\n".join([HEADER, *rows[:2], rows[2][:-1] + "2"])), zones)
    assert one.fingerprint == other.fingerprint != changed.fingerprint
    assert one.outcomes() == other.outcomes()


def test_outcomes_add_up_what_was_recorded(write: Write) -> None:
    """Sums skip what was not recorded, a trip without any count has None, order is by time."""
    rows = [
        "trip,place,hauled_at,keepers,judged,light,water_c",
        "b,Sedge Hollow,2026-08-15 08:00,2,2,1,29",
        "b,Sedge Hollow,2026-08-15 09:00,,3,,31",
        "a,Sedge Hollow,2026-08-20 08:00,,,,",
        "c,Otter Bight,,0,,,",
    ]
    log = read_log(write("\n".join(rows)), zones)
    b, a, c = log.outcomes()
    assert (b.trip, b.hauls, b.keepers, b.judged, b.light, b.water_c) == ("b", 2, 2, 2, 1, 30.0)
    assert b.when == datetime(2026, 8, 15, 12, 30, tzinfo=UTC)
    assert (a.keepers, a.judged, a.light, c.keepers, c.when) == (None, None, None, 0, None)
    assert [outcome.trip for outcome in log.outcomes("Otter Bight")] == ["c"]
    assert Log(()).outcomes() == ()


@pytest.mark.parametrize(
    ("zone", "skipped", "offset"),
    [
        ("Europe/Madrid", "2027-03-28 02:30", "+01:00"),
        ("Australia/Adelaide", "2025-10-05 02:30", "+09:30"),
        ("America/New_York", "2026-03-08 02:30", "-05:00"),
        ("Pacific/Chatham", "2026-09-27 03:00", "+12:45"),
    ],
)
def test_the_remedy_for_a_skipped_hour_is_of_the_place(
    zone: str, skipped: str, offset: str
) -> None:
    """Who adds the offset that is shown gets the instant of a clock that was not put forward."""
    place = ZoneInfo(zone)
    with pytest.raises(CellError) as refused:
        read_time(skipped, place)
    assert refused.value.remedy.endswith(f"such as {offset}")
    before = (datetime.fromisoformat(skipped) - timedelta(hours=1)).replace(tzinfo=place)
    assert read_time(f"{skipped}{offset}", place) == before.astimezone(UTC) + timedelta(hours=1)
