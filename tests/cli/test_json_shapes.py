"""The JSON of every command has the fields and kinds of value that programs rely on."""

from __future__ import annotations

import re
from typing import Any

import pytest

from planner.assets import demo_log

UTC_TIME = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ")
DATE = re.compile(r"\d{4}-\d\d-\d\d")

NUMBER = (int, float)
MAYBE_NUMBER = (int, float, type(None))
ESTIMATE = {"mean": NUMBER, "low": NUMBER, "high": NUMBER}
MAYBE_ESTIMATE = dict.fromkeys(("low", "high"), MAYBE_NUMBER)


def maybe(pattern: re.Pattern[str]) -> tuple[Any, ...]:
    """Return a shape that is null or text of a pattern."""
    return (pattern, type(None))


def fits(shape: Any, value: Any) -> bool:
    """Tell whether a value has a shape: types, patterns, lists of one shape, tables of keys."""
    if isinstance(shape, tuple):
        return any(fits(each, value) for each in shape)
    if isinstance(shape, re.Pattern):
        return isinstance(value, str) and bool(shape.fullmatch(value))
    if isinstance(shape, list):
        return isinstance(value, list) and all(fits(shape[0], each) for each in value)
    if isinstance(shape, dict):
        return isinstance(value, dict) and all(
            key in value and fits(each, value[key]) for key, each in shape.items()
        )
    if isinstance(shape, type):
        return isinstance(value, shape) and not (shape in NUMBER and isinstance(value, bool))
    return bool(value == shape)


WATER = {"place": str, "datum": str, "units": ("m", "ft"), "zone": str}
SPAN = "--from 2026-08-14 --to 2026-08-17"
LOG = f"--log {demo_log()}"

SHAPES: dict[str, Any] = {
    f"water sedge-hollow {SPAN} --every 6m": {**WATER, "times": [UTC_TIME], "heights": [NUMBER]},
    f"water sedge-hollow {SPAN} --turns": {
        **WATER,
        "turns": [{"time": UTC_TIME, "height": NUMBER, "kind": ("high", "low")}],
    },
    f"water sedge-hollow {SPAN} --turns --ramp": {
        **WATER,
        "turns": [
            {
                "time": UTC_TIME,
                "height": NUMBER,
                "kind": ("high", "low", "ramp_begins", "ramp_ends"),
            }
        ],
    },
    "sky sedge-hollow --from 2026-08-01 --to 2026-08-31": {
        "place": str,
        "zone": str,
        "phases": [{"time": UTC_TIME, "phase": ("new", "first quarter", "full", "last quarter")}],
        "days": [
            {
                "date": DATE,
                "lunar_age_d": NUMBER,
                "illuminated": NUMBER,
                **dict.fromkeys(
                    ("sunrise", "sunset", "civil_dawn", "civil_dusk", "moonrise", "moonset"),
                    maybe(UTC_TIME),
                ),
            }
        ],
    },
    f"dates sedge-hollow {SPAN}": {
        "place": str,
        "basis": ("prior", "log"),
        "trips": int,
        "days": [
            {
                "date": DATE,
                "fullness": ESTIMATE,
                "light_share": ESTIMATE,
                "why": {"season": NUMBER, "moon": NUMBER, "runs": NUMBER, "place": NUMBER},
                "lunar_age_d": NUMBER,
                "water_c": MAYBE_NUMBER,
            }
        ],
    },
    f"plans sedge-hollow {SPAN}": {
        "place": str,
        "plans": [
            {
                "rank": int,
                "set": UTC_TIME,
                "haul": UTC_TIME,
                "soak_h": NUMBER,
                "full_keepers": ESTIMATE,
                "light_share": ESTIMATE,
                "lowest_cover_m": MAYBE_NUMBER,
                "set_daylight_h": NUMBER,
                "haul_daylight_h": NUMBER,
                "wishes": dict,
                "reasons": [str],
                "warnings": [str],
            }
        ],
        "rejected": dict,
    },
    f"learn sedge-hollow {LOG}": {
        "place": str,
        "trips": int,
        "crabs_judged": int,
        "effects": {
            name: {"swing": MAYBE_NUMBER, **MAYBE_ESTIMATE, "p_matters": MAYBE_NUMBER}
            for name in ("moon", "season", "runs")
        },
        "record": {
            "n": int,
            **dict.fromkeys(
                ("brier", "brier_season_only", "brier_running_mean", "log_score"), MAYBE_NUMBER
            ),
        },
        "to_settle": {"moon_trips": (int, type(None))},
    },
    f"trials {LOG}": {
        "by": "design",
        "groups": [
            {
                "name": str,
                "hauls": int,
                "keepers": (int, type(None)),
                "rate": MAYBE_NUMBER,
                **MAYBE_ESTIMATE,
                "p_best": MAYBE_NUMBER,
            }
        ],
        "test": {"name": str, "p": MAYBE_NUMBER},
        "dispersion": {"k": MAYBE_NUMBER, **MAYBE_ESTIMATE},
        "to_settle": {"hauls_per_group": (int, type(None)), "difference": NUMBER},
        "layout": [{"trap": str, "design": str, "spot": str}],
        "warnings": [{"code": str, "text": str}],
    },
}


@pytest.mark.parametrize("words", SHAPES, ids=lambda words: " ".join(words.split()[:2]))
def test_shape(run, words):
    """Protects every field that the contract of the command line names."""
    ran = run(f"{words} --format json")
    assert ran.status == 0, ran.err
    assert ran.err == ""
    assert fits(SHAPES[words], ran.data), ran.out[:2000]
    for lists in ("times", "turns", "days", "groups", "plans"):
        assert ran.data.get(lists, [1]), f"{lists} is empty, so its shape was not looked at"


def test_the_shape_check_can_fail():
    """A check that takes everything would protect nothing."""
    assert not fits({"a": [NUMBER]}, {"a": [1, "2"]})
    assert not fits({"a": int}, {"b": 1})
    assert not fits(NUMBER, True)
    assert not fits(UTC_TIME, "2026-08-14T00:00:00+00:00")
