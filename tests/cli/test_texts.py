"""Text is for people: the place's own clock, its zone, and the cautions that belong there."""

from __future__ import annotations

import re

import pytest

from planner.assets import demo_place
from planner.phrasing import RULES_CAUTION, TIDE_CAUTION
from planner.sites.editing import edited


def test_the_hour_that_comes_twice(run):
    """On the day clocks go back 01:00 is printed twice, each with its zone (1 Nov 2026)."""
    out = run("water sedge-hollow --from 2026-11-01 --to 2026-11-01T04:00").out
    assert re.findall(r"\d\d:\d\d E.T", out) == [
        *("00:00 EDT", "01:00 EDT", "01:00 EST", "02:00 EST", "03:00 EST", "04:00 EST")
    ]


def test_the_hour_that_is_left_out(run):
    """On the day clocks go forward there is no 02:00 (8 Mar 2026)."""
    out = run("water sedge-hollow --from 2026-03-08 --to 2026-03-08T04:00").out
    assert re.findall(r"\d\d:\d\d E.T", out) == ["00:00 EST", "01:00 EST", "03:00 EDT", "04:00 EDT"]


def test_local_times_in_csv_carry_their_offset(run):
    """A spreadsheet can tell the two hours apart as well."""
    out = run("water sedge-hollow --from 2026-11-01 --to 2026-11-01T02:00 --format csv").out
    local = [line.split(",")[1] for line in out.splitlines()[1:]]
    assert local == [
        *("2026-11-01T00:00:00-04:00", "2026-11-01T01:00:00-04:00"),
        *("2026-11-01T01:00:00-05:00", "2026-11-01T02:00:00-05:00"),
    ]


@pytest.mark.parametrize(
    ("words", "cautions"),
    [
        ("water sedge-hollow --from 2026-08-14 --to 2026-08-15", [TIDE_CAUTION]),
        ("water sedge-hollow --from 2026-08-14 --to 2026-08-15 --turns", [TIDE_CAUTION]),
        ("check sedge-hollow", [TIDE_CAUTION]),
        ("plans sedge-hollow --from 2026-08-14 --to 2026-08-17", [TIDE_CAUTION, RULES_CAUTION]),
    ],
)
def test_cautions(run, words, cautions):
    """Nobody reads water or plans here without the caution beside them."""
    out = run(words).out
    assert all(caution in out for caution in cautions)


def test_an_invented_place_says_so(run):
    """The demo place may not pass for real water; a published station does not say invented."""
    assert "Sedge Hollow (invented)" in run("sky sedge-hollow").out
    assert "(invented)" not in run("sky boston-ma").out


def test_phases_of_the_text_are_local(run):
    """Full moon of 28 Aug 2026 (04:18 UTC by the packaged ephemeris) is just after midnight."""
    assert (
        "full moon: Fri 28 Aug 00:20 EDT"
        in run("sky sedge-hollow --from 2026-08-20 --to 2026-08-30").out
    )


def test_no_plan_is_said_in_words(run):
    """An empty list of plans tells what ruled them out, and what can be done."""
    out = run("plans sedge-hollow --from 2026-02-12 --to 2026-02-16").out
    assert "closed" in out
    assert "So look at other days." in out


def test_dates_say_what_they_rest_on(run):
    """A forecast without a log may not look as if it had learned."""
    assert (
        "no logged trip speaks yet"
        in run("dates sedge-hollow --from 2026-08-14 --to 2026-08-15").out
    )


def test_a_turn_read_as_midnight_stands_under_its_day(run):
    """High water at 23:59 on 13 Nov 2026 reads 00:00, which is the 14th and not a day early."""
    out = run("water sedge-hollow --turns --from 2026-11-13 --to 2026-11-14T04:00").out
    assert re.search(r"^Sat 14 Nov 2026\n  00:00 EST +high", out, re.M)


def test_slack_is_told_as_an_estimate_of_the_users_own(run, tmp_path):
    """Without a height, with the turn it follows, and with the caution under it."""
    path = tmp_path / "own.toml"
    wanted = {("slack",): {"after_high_minutes": 40}}
    path.write_text(edited(demo_place().read_text("utf-8"), wanted), "utf-8")
    words = f"water {path} --from 2026-11-01 --to 2026-11-02"
    out = run(f"{words} --turns --slack").out
    assert re.search(r" high +1\.\d+ m\n  \S+ EST  slack \(estimated\) after high water\n", out)
    assert "Slack about 40 min after high water: your own estimate" in out
    assert TIDE_CAUTION in out
    rows = run(f"{words} --turns --slack --format json").data["turns"]
    assert {row["height"] for row in rows if row["kind"] == "slack_estimated_high"} == {None}
    assert "slack" not in run(f"{words} --turns").out


def test_an_event_just_before_midnight_keeps_its_day(run):
    """Moonset at 23:58 on 19 May 2026 may not read 00:00 in that day's row."""
    out = run("sky sedge-hollow --from 2026-05-19 --to 2026-05-19").out
    assert re.search(r"^Tue 19 May .* 23:58 ", out, re.M)


def test_seconds_are_shown_where_there_are_any(run):
    """A step of half a minute may not print the same time twice."""
    out = run("water sedge-hollow --from 2026-08-14 --to 2026-08-14T00:01 --every 30s").out
    assert re.findall(r"\d\d:\d\d:\d\d", out) == ["00:00:00", "00:00:30", "00:01:00"]


def test_limits_are_said_in_words(run):
    """What ruled plans out is told in the trapper's words, not in the program's names."""
    out = run("plans sedge-hollow --from 2026-02-12 --to 2026-02-16").out
    assert re.search(r"^ +\d+  a trap in the water on a closed day$", out, re.M)
