"""Tables of any make: what is understood, what is asked, and what is refused by name."""

from __future__ import annotations

import io
import sys
import tomllib
import zipfile
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl import Workbook

from planner.assets import demo_log, resource
from planner.intake import Mapping, plan_intake, read_grid, recall, remember, understand
from planner.intake.grid import grid_of
from planner.intake.moments import NotAMoment, parse
from planner.intake.plan import Intake
from planner.intake.remembering import remembered_file
from planner.intake.understanding import needs_place
from planner.intake.vocabulary import words_of
from planner.logbook import Haul, Log, LogError, book_zone, export_table, read_log
from planner.logbook.columns import COLUMNS
from planner.logbook.log import haul_key
from planner.logbook.workbook import export_workbook, from_cell_text, to_cell_text

sys.path.insert(0, str(Path(__file__).parents[1] / "logbook"))
from haul_strategies import hauls as some_hauls

ZONE = ZoneInfo("America/New_York")
NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)


def taken(text: str | bytes, place: str = "Otter Bight", **answers: object) -> Intake:
    """Return what a table gives after a first understanding and these answers."""
    raw = text.encode() if isinstance(text, str) else text
    grid = grid_of(raw, "table.csv")
    mapping = replace(understand(grid, NOW, place), **answers)  # type: ignore[arg-type]
    return plan_intake(grid, mapping, lambda _: ZONE, NOW)


AGENCY = """Crab survey 2026
;;;
Date;Time pulled;Pot No.;Site;Legal males;Sub-legal;Depth (ft);Water temp (F);Weather;Soak (hrs)
21/08/2026;06:40;A1;grass edge;4;-;6,5;79;calm;14
22/08/2026;07:10;A2;oyster bar;0;2;8;78;windy;24
"""


SPANISH = """Cuaderno de pesca 2026;;;
Fecha de recogida;Hora de recogida;Nasa nº;Puesto;Cebo;De talla;Pequeños;Hembras;Con huevos;\
Examinados;Vacíos;Prof. (pies);Temp. del agua;Horas en el agua;Observaciones;Tiempo
vie 21 de agosto de 2026;7:40;A1;canal hondo;lisa;4;s/d;0;0;3;1;6,5;26,1;14;=mañana;calma
lun 24 ago 2026;07.10 h;A2;;;0;2;1;;;;8;;24;;viento
"""


@pytest.mark.parametrize("encoding", ["utf-8", "cp1252", "utf-16"])
def test_a_spanish_sheet_is_understood(encoding: str):
    """Who reads the program in Spanish keeps a notebook in Spanish: nothing is left to map."""
    intake = taken(SPANISH.encode(encoding))
    assert not intake.problems
    assert not intake.questions
    first, second = intake.hauls
    assert first == Haul(
        "21 Aug 2026", "Otter Bight", "canal hondo", "A1", bait="lisa", keepers=4, females=0,
        sponge=0, judged=3, light=1, depth_m=1.98, water_c=26.1, notes="=mañana",
        set_at=datetime(2026, 8, 20, 21, 40, tzinfo=UTC),
        hauled_at=datetime(2026, 8, 21, 11, 40, tzinfo=UTC), extra={"Tiempo": "calma"},
    )  # fmt: skip
    assert (second.keepers, second.shorts, second.light) == (0, 2, None)
    assert second.hauled_at == datetime(2026, 8, 24, 11, 10, tzinfo=UTC)


def test_no_word_of_a_table_has_two_meanings():
    """A month or a column that means another thing in another language would be read wrong."""
    seen: dict[tuple[str, str], str] = {}
    for path in resource("tables").glob("*.toml"):
        told = tomllib.loads(path.read_text("utf-8"))
        begins = enumerate(told["months"], start=1)
        words = {"month": {str(at): each.split(", ") for at, each in begins}}
        for kind, table in {**words, "unit": told["units"], "column": told["columns"]}.items():
            for meaning, names in table.items():
                assert kind != "column" or meaning in COLUMNS or meaning == "soak_h"
                for name in names:
                    assert seen.setdefault((kind, words_of(name)), meaning) == meaning, name


def test_trips_without_a_name_have_the_day_of_the_place():
    """Written in UTC, an evening in the Americas goes over midnight: it is one trip of that day."""
    intake = taken(
        "trap,hauled_at,keepers\n"
        "A1,2026-08-21T23:55:00Z,1\nA2,2026-08-22T00:10:00Z,2\nA3,2026-08-22 20:20,3\n"
    )
    assert [haul.trip for haul in intake.hauls] == ["21 Aug 2026", "21 Aug 2026", "22 Aug 2026"]


def test_an_agencys_sheet_is_understood():
    """A table that nobody made for this program is taken as it is, and says what was decided."""
    intake = taken(AGENCY)
    assert not intake.problems
    first, second = intake.hauls
    assert (first.trip, first.place, first.trap, first.spot) == (
        "21 Aug 2026", "Otter Bight", "A1", "grass edge",
    )  # fmt: skip
    assert first.hauled_at == datetime(2026, 8, 21, 10, 40, tzinfo=UTC)
    assert first.set_at == first.hauled_at - timedelta(hours=14)
    assert (first.keepers, first.shorts, second.keepers, second.shorts) == (4, None, 0, 2)
    assert (first.depth_m, first.water_c) == (1.98, 26.11)
    assert first.extra == {"Weather": "calm"}
    assert "semicolons" in intake.grid.made_of
    assert any("not recorded" in note for note in intake.notes)


@pytest.mark.parametrize(
    ("dates", "order"),
    [
        (["13/08/2026 06:40", "02/08/2026 06:40"], "dmy"),
        (["08/13/2026 06:40", "08/02/2026 06:40"], "mdy"),
        (["03/12/2025 06:40", "05/12/2026 06:40"], "mdy"),  # 5 December 2026 is ahead of now
        ([f"{d:02d}/{m:02d}/2026 06:40" for m in (4, 5, 6) for d in (2, 9)], "dmy"),
        ([f"{d:02d}/{m:02d}/2026 06:40" for d in (4, 5) for m in (9, 2)], None),
        (["03/04/2026 06:40", "05/06/2026 06:40"], None),
        (["13/08/2026 06:40", "08/13/2026 06:40"], None),
        (["12/08/2025 06:40"], None),  # there is a twelfth month
    ],
)
def test_the_order_of_dates_is_proved_or_asked(dates: list[str], order: str | None):
    """A season logged with day and month changed is a season of wrong moons."""
    intake = taken("trap,hauled,keepers\n" + "".join(f"A,{each},1\n" for each in dates))
    assert intake.mapping.order == order
    if order is None:
        assert intake.questions == ("order",)
        assert intake.hauls == ()
    else:
        assert len(intake.hauls) == len(dates)


def test_an_answer_that_rows_contradict_names_them():
    """An order given by hand does not make an impossible month possible."""
    intake = taken("trap,hauled,keepers\nA,13/08/2026 06:40,1\nB,08/13/2026 06:40,1\n", order="dmy")
    assert [haul.trap for haul in intake.hauls] == ["A"]
    (problem,) = intake.problems
    assert str(problem).startswith("line 3, hauled: is not a time (found 08/13/2026 06:40)")


def test_dates_alone_ask_for_a_time_of_day():
    """A haul without a clock is not guessed at: the user says when they usually haul."""
    table = "trap,date,keepers\nA,2026-08-13,1\n"
    assert taken(table).questions == ("clock",)
    (haul,) = taken(table, haul_clock=time(7)).hauls
    assert haul.hauled_at == datetime(2026, 8, 13, 11, tzinfo=UTC)


def test_a_place_is_asked_for_when_none_is_named():
    """Hauls of no place teach nothing."""
    assert taken("trap,keepers,trip\nA,1,x\n", place="").questions == ("place",)


def test_the_hour_that_comes_twice_and_the_one_that_is_skipped():
    """The night the clocks go back has two half past ones; the night they go on has none."""
    head = "trap,set,hauled,keepers\n"
    back = taken(head + "A,2026-11-01 01:50,2026-11-01 01:20,1\n")
    (haul,) = back.hauls
    assert haul.hauled_at - haul.set_at == timedelta(minutes=30)
    assert any("twice" in note for note in back.notes)
    evening = taken(head + "A,2026-10-31 18:00,2026-11-01 01:20,1\nB,2026-11-01 01:20,,2\n")
    assert [haul.trap for haul in evening.hauls] == ["A", "B"]
    first = evening.hauls[0]
    assert first.hauled_at - first.set_at == timedelta(hours=7, minutes=20)
    later = taken(head + "A,2026-11-01 01:40,2026-11-01 08:00,1\n").hauls[0]
    assert later.hauled_at - later.set_at == timedelta(hours=7, minutes=20)
    told = taken(head + "A,2026-10-31T18:00-04:00,2026-11-01 01:20,1\n").hauls[0]
    assert told.hauled_at - told.set_at == timedelta(hours=7, minutes=20)
    skipped = taken(head + "A,2026-03-07 18:00,2026-03-08 02:30,1\n")
    (problem,) = skipped.problems
    assert "does not exist" in problem.what
    assert problem.where == "line 2, hauled"


def test_a_soak_is_in_hours_whatever_the_clocks_do():
    """A trap that lay for 24 h over a change of clocks was set an hour off by the clock."""
    head = "trap,hauled,soak,keepers\n"
    for row in ("2026-11-01 06:40,24", "2026-03-09 02:30,24:00", "2026-03-08T06:40-04:00,24"):
        (haul,) = taken(head + f"A,{row},1\n").hauls
        assert haul.hauled_at - haul.set_at == timedelta(hours=24)


def test_days_as_numbers_of_a_spreadsheet_are_told():
    """What was read out of a bare number is said, so that the user can look at the dates."""
    intake = taken("trap,hauled,keepers\nA,46350.25,1\nB,2026-11-24 06:05,2\n")
    assert [haul.trip for haul in intake.hauls] == ["24 Nov 2026"] * 2
    assert any(note.startswith("1 times") for note in intake.notes)


def test_a_table_that_lies_otherwise_is_told():
    """A column for each trap gives rows without a crab, and a table without a heading loses its
    first haul to it: both are said before anything is taken."""
    wide = taken("date,A1,A2\n2026-08-14 06:40,3,4\n")
    assert any("without their crabs" in note for note in wide.notes)
    bare = taken("2026-08-14 06:40,A1,3\n2026-08-15 06:40,A1,4\n")
    assert any('"2026-08-14 06:40, A1, 3"' in note for note in bare.notes)
    assert not taken("trap,hauled,keepers\nA,2026-08-14 06:40,1\n").notes


def test_what_is_said_of_a_cell_is_in_the_tables_own_terms():
    """Feet stay feet, and times the place's own, as they were written: UTC helps nobody."""
    feet = taken("trap,hauled,depth (ft),keepers\nA,2026-08-14 06:40,1000,1\n")
    (problem,) = feet.problems
    assert (problem.value, problem.what) == ("1000", "is outside 0 to 984")
    assert problem.remedy == "give it in feet"
    turned = taken("trap,set,hauled,keepers\nA,2026-08-14 18:00,2026-08-14 06:40,1\n")
    (problem,) = turned.problems
    assert problem.value == "2026-08-14 06:40"
    assert "2026-08-14 18:00-04:00" in problem.what


def test_a_bad_cell_is_named_as_the_table_names_it():
    """The user looks for the column by the name that stands above it."""
    intake = taken("trap,Date pulled,Legal males\nA,2026-08-13 06:40,three\n")
    (problem,) = intake.problems
    assert problem.where == "line 2, Legal males"
    assert problem.value == "three"
    assert problem.remedy


@pytest.mark.parametrize(
    "encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"]
)
def test_encodings(encoding: str):
    """An accent in a spot's name must not stop a log, nor be mangled in silence."""
    intake = taken("trap;spot;keepers;trip\nA;Crêpe édge;1;x\n".encode(encoding))
    assert intake.hauls[0].spot == "Crêpe édge"
    assert intake.grid.guessed_letters is (encoding == "cp1252")


@pytest.mark.parametrize(
    "raw",
    [b"", b"\0\1\2\3", b"PK\x03\x04rubbish", b"\xd0\xcf\x11\xe0old", b"\x89PNG\r\n\x1a\n\xff\0"],
)
def test_what_is_no_table_is_told(raw: bytes):
    """A picture dropped on the import is a message, not a crash and not a haul."""
    with pytest.raises(LogError) as caught:
        grid_of(raw, "x")
    assert caught.value.problems[0].remedy


def workbook(rows: list[list[object]]) -> bytes:
    book = Workbook()
    for row in rows:
        book.active.append(row)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def test_a_workbook_with_real_dates_and_times():
    """Cells that a spreadsheet knows as dates come in as what they show."""
    raw = workbook(
        [
            ["Date", "Time hauled", "Trap", "Keepers", "Temp"],
            [date(2026, 8, 13), time(6, 40), "A1", 3, 24.5],
            [datetime.combine(date(2026, 8, 14), time()), time(7, 5), 7, 2.0, None],
        ]
    )
    first, second = taken(raw).hauls
    assert first.hauled_at == datetime(2026, 8, 13, 10, 40, tzinfo=UTC)
    assert (first.water_c, second.trap, second.keepers) == (24.5, "7", 2)


def workbook_of(*rows: list[object], over: tuple[str, ...] = ()) -> bytes:
    book = Workbook()
    for row in rows:
        book.active.append(row)
    for each in over:
        book.active.merge_cells(each)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def test_a_cell_over_several_rows_is_each_rows_own():
    """A trip or place written once over its traps is not that of the first trap alone."""
    raw = workbook_of(
        ["My crabs"], [], ["Trip", "Area", "Pot", "Keepers", "Note"], ["x", "Bay", "A1", 4, "n"],
        [None] * 5, [None, None, "A2", 0], ["y", None, "A3", 2],
        over=("A1:E1", "A4:A6", "B4:B7", "E4:E7"),
    )  # fmt: skip
    intake = taken(raw, place="elsewhere")
    assert not intake.problems
    assert [(haul.trip, haul.place, haul.trap, haul.notes) for haul in intake.hauls] == [
        ("x", "Bay", "A1", "n"), ("x", "Bay", "A2", ""), ("y", "Bay", "A3", ""),
    ]  # fmt: skip
    counted = taken(
        workbook_of(["Trip", "Pot", "Keepers"], ["x", "A1", 6], ["x", "A2"], ["x", "A3", 1],
                    over=("C2:C3",))
    )  # fmt: skip
    assert [haul.trap for haul in counted.hauls] == ["A3"]
    assert [problem.where for problem in counted.problems] == ["row 2, Keepers", "row 3, Keepers"]


def test_a_column_merged_to_its_end_is_read():
    """A small file must not be made to fill the memory, a cell for each row that there could be."""
    raw = workbook_of(["Trip", "Pot", "Keepers"], ["x", "A1", 6], [None, "A2", 1], over=("A2:A3",))
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(raw)) as small, zipfile.ZipFile(out, "w") as large:
        for name in small.namelist():
            large.writestr(name, small.read(name).replace(b'"A2:A3"', b'"A2:A1048576"'))
    assert [haul.trip for haul in taken(out.getvalue()).hauls] == ["x", "x"]


def test_the_midnight_behind_a_date_is_no_haul_at_night():
    """Programs that write tables put 00:00 behind a date; the clock's own column is meant."""
    head, night = ["trap", "Date", "Keepers"], datetime(2026, 5, 3)  # noqa: DTZ001
    assert taken(workbook_of(head, ["A1", night, 4])).questions == ("clock",)
    (haul,) = taken(workbook_of(head, ["A1", night, 4]), haul_clock=time(7)).hauls
    assert haul.hauled_at == datetime(2026, 5, 3, 11, tzinfo=UTC)
    both = [*head, "Time"]
    for rows in ([["A1", night, 4, time(6, 30)]], [["A1", night, 4, time(6, 30)],
                 ["A2", night + timedelta(hours=7), 4, None]]):  # fmt: skip
        haul = taken(workbook_of(both, *rows)).hauls[0]
        assert haul.hauled_at == datetime(2026, 5, 3, 10, 30, tzinfo=UTC)
    late = taken("trap,trip,place,hauled_at\nA,x,Bay,2026-05-03 00:00\n").hauls[0]
    assert late.hauled_at == datetime(2026, 5, 3, 4, tzinfo=UTC)  # a haul table means what it says


def test_rows_without_a_place_are_told():
    """Half a table that went to the place that happens to be open would be lost in silence."""
    intake = taken("trip,place,trap,keepers\nx,Bay,A,1\nx,,B,2\n")
    assert [haul.place for haul in intake.hauls] == ["Bay", "Otter Bight"]
    assert any("1 lines name no place" in note for note in intake.notes)
    assert needs_place(intake.grid, intake.mapping)


def test_a_formula_without_its_result_is_named():
    """A cell that was never worked out is not an empty one."""
    intake = taken(workbook([["trap", "trip", "keepers"], ["A", "x", "=1+1"], ["B", "x", 2]]))
    assert [haul.trap for haul in intake.hauls] == ["B"]
    assert intake.problems[0].where == "row 2, keepers"


def test_the_demo_log_is_taken_as_the_strict_reader_takes_it():
    """Two roads meet: a haul table says the same through the mapping as without it."""
    log = read_log(demo_log(), book_zone)
    grid = read_grid(demo_log())
    intake = plan_intake(grid, understand(grid, NOW), book_zone, NOW)
    assert intake.hauls == log.hauls


def test_understanding_is_remembered_by_the_heading():
    """What was once said of a make of table need not be said again; a damaged memory is none."""
    heading = ("Pot", "Legal", "When")
    mapping = Mapping(
        {"Pot": "trap", "When": "haul_date"}, "mdy", "Otter Bight", time(7), depth="ft"
    )
    remember(heading, mapping)
    assert recall(("When", "pot", "LEGAL")) is not None  # capitals and order do not matter
    assert recall(heading) == mapping
    assert recall((*heading, "more")) is None
    remembered_file().write_text('{"x": [1', encoding="utf-8")
    assert recall(heading) is None


@pytest.mark.parametrize(
    ("text", "day", "clock"),
    [
        ("14 Aug 2026 6:40 am", date(2026, 8, 14), time(6, 40)),
        ("Fri, Aug 14, 2026", date(2026, 8, 14), None),
        ("14-Aug-26 18:05", date(2026, 8, 14), time(18, 5)),
        ("2026/8/14 0640", date(2026, 8, 14), time(6, 40)),
        ("12.30 pm", None, time(12, 30)),
        ("12 am", None, time(0)),
        ("14.8.26", date(2026, 8, 14), None),
        ("21stAug2026 at 7:40", date(2026, 8, 21), time(7, 40)),
        ("viernes, 21 de agosto de 2026, a las 7:40", date(2026, 8, 21), time(7, 40)),
        ("mié. 2 de setiembre del 2026 07.40 hs", date(2026, 9, 2), time(7, 40)),
        ("sábado 22/08/2026 7:40\u00a0p.\u00a0m.", date(2026, 8, 22), time(19, 40)),
        ("1.º ene. 26", date(2026, 1, 1), None),
        ("mar 24 mar 2026", date(2026, 3, 24), None),  # a Tuesday in March
        ("mar 24, 2026", date(2026, 3, 24), None),
        ("mar 24.03.2026", date(2026, 3, 24), None),
        ("2026-8-4 6:40", date(2026, 8, 4), time(6, 40)),
        ("46350", date(2026, 11, 24), None),  # a spreadsheet's day, its format lost
        ("46350.2777777778", date(2026, 11, 24), time(6, 40)),
        ("46350,99999", date(2026, 11, 25), time(0)),
        ("14.8.68", date(2068, 8, 14), None),  # two-digit years as POSIX reads them
        ("14.8.69", date(1969, 8, 14), None),
    ],
)
def test_dates_as_people_write_them(text: str, day: date | None, clock: time | None):
    """What a person can read without doubt, the program reads too."""
    assert parse(text, "dmy") == (day, clock)


def test_a_day_of_its_own_months_number_needs_no_order():
    """4/4 is one day whichever stands first; 3/4 is two."""
    assert parse("4/4/2026", None) == (date(2026, 4, 4), None)
    with pytest.raises(NotAMoment):
        parse("3/4/2026", None)


@pytest.mark.parametrize(
    "text",
    ["", "31/02/2026", "soon", "14 Foo 2026", "25:00", "13 pm", "2026-13-01", "May 2026",
     "31 de abril de 2026", "mar 24 03 2026", "12345", "99999", "20260814"],
)  # fmt: skip
def test_what_is_no_date_is_no_date(text: str):
    """A date that is nearly right is not made right in silence."""
    with pytest.raises(NotAMoment):
        parse(text, "dmy")


@given(st.text(st.characters(exclude_categories=["Cs"]), max_size=40))
def test_any_text_survives_a_workbooks_cell(text: str):
    """Letters that the format cannot hold are written its own way and come back."""
    assert from_cell_text(to_cell_text(text)) == text


@settings(max_examples=25)
@given(st.data())
def test_out_and_in_again_loses_nothing(
    tmp_path_factory: pytest.TempPathFactory, data: st.DataObject
):
    """CSV and workbook give the same log back, with the user's own columns, formulas and all."""
    hauls = data.draw(st.lists(some_hauls(), min_size=1, max_size=5))
    folder = tmp_path_factory.mktemp("out")
    log = Log(tuple(hauls))
    export_workbook(log, folder / "log.xlsx", lambda _: ZONE)
    export_table(log, folder / "log.csv", lambda _: ZONE)
    now = datetime(2051, 1, 1, tzinfo=UTC) + timedelta(days=400)
    for name in ("log.xlsx", "log.csv"):
        grid = read_grid(folder / name)
        intake = plan_intake(grid, understand(grid, now), lambda _: ZONE, now)
        assert not intake.problems
        assert [haul_key(haul) for haul in intake.hauls] == [haul_key(haul) for haul in hauls]


def test_no_cell_of_a_workbook_is_a_formula(tmp_path: Path):
    """A note that begins like a formula is a text in every spreadsheet that opens the log."""
    from openpyxl import load_workbook

    haul = replace(read_log(demo_log(), book_zone).hauls[0], notes="=1+1", extra={"=own": "@x"})
    export_workbook(Log((haul,)), tmp_path / "log.xlsx")
    sheet = load_workbook(tmp_path / "log.xlsx").active
    cells = [cell for row in sheet.iter_rows() for cell in row if cell.value is not None]
    assert "f" not in {cell.data_type for cell in cells}
    assert not any(str(cell.value).startswith(("=", "+", "@")) for cell in cells)
    assert not list(tmp_path.glob("*.partial"))
