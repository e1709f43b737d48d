"""Bent, cut and scrambled place files give a `Site` or one `SiteError`, nothing else."""

from __future__ import annotations

import random
import re
from collections.abc import Callable
from pathlib import Path

import pytest
from place_text import OFFSETS, WHOLE

from planner.assets import sample_sites
from planner.sites import Site, SiteError, load_site

VALUES = [
    *("nan", "inf", "-inf", "0", "-1", "1e999", "-0.0", "1e-320", "9" * 400, "0x7f", "true"),
    *('""', '"x"', '"\\u0000"', '"' + "é" * 300 + '"', "'''\n'''", "[]", "[[]]", "{}", "{ a = 1 }"),
    *(
        "[1, 'a', true]",
        "1979-05-27",
        "07:32:00",
        "1979-05-27T07:32:00Z",
        "0001-01-01",
        "9999-12-31",
    ),
    *(
        "24:00:00",
        "01:02:03+01:00",
        '"02-29"',
        '"13-13"',
        '"UTC+99:99"',
        '"Mon"',
        '"२३:००"',
        "1_000",
    ),
    *('"America/Nowhere"', '"/"', '"."', '"MLLW"', '"ft"', "[nan, nan]", "[50, 14]", "1.5", ""),
]
KEYS = [
    "",
    "x",
    '"a b"',
    '""',
    "lat",
    "M2",
    "m2",
    "RHO",
    "format",
    "water",
    "units",
    "depth",
    "a.b.c",
]

Mutator = Callable[[random.Random, str], str]


def _lines(rng: random.Random, text: str) -> tuple[list[str], int]:
    lines = text.split("\n")
    return lines, rng.randrange(len(lines))


def other_value(rng: random.Random, text: str) -> str:
    spots = list(re.finditer(r"= *([^=\n]+?)(?= *[,}\n])", text))
    spot = rng.choice(spots) if spots else None
    return (
        text if spot is None else text[: spot.start(1)] + rng.choice(VALUES) + text[spot.end(1) :]
    )


def other_key(rng: random.Random, text: str) -> str:
    spots = list(re.finditer(r"(\w+) *=", text))
    spot = rng.choice(spots) if spots else None
    return text if spot is None else text[: spot.start(1)] + rng.choice(KEYS) + text[spot.end(1) :]


def drop_line(rng: random.Random, text: str) -> str:
    lines, at = _lines(rng, text)
    return "\n".join(lines[:at] + lines[at + 1 :])


def double_line(rng: random.Random, text: str) -> str:
    lines, at = _lines(rng, text)
    lines.insert(rng.randrange(len(lines) + 1), lines[at])
    return "\n".join(lines)


def other_table(rng: random.Random, text: str) -> str:
    heads = list(re.finditer(r"^\[+([\w.]+)\]+", text, re.M))
    if not heads:
        return text
    head = rng.choice(heads)
    names = [
        "[x]",
        "[[water]]",
        "[water]",
        "[[ramp]]",
        "[spots]",
        "[water.constituents.M2]",
        "[free]",
    ]
    return text[: head.start()] + rng.choice(names) + text[head.end() :]


def cut_end(rng: random.Random, text: str) -> str:
    return text[: rng.randrange(len(text) + 1)]


def other_letter(rng: random.Random, text: str) -> str:
    at = rng.randrange(len(text) + 1)
    return (
        text[:at] + chr(rng.choice([0, 9, 34, 39, 61, 91, 123, 0xFFFD, 0x1F600])) + text[at + 1 :]
    )


MUTATORS: list[Mutator] = [
    *(other_value, other_value, other_value, other_key, drop_line),
    *(double_line, other_table, cut_end, other_letter),
]


def bent_file(rng: random.Random, originals: list[str]) -> bytes:
    """Return a place file with one to four things changed, now and then in its bytes."""
    text = rng.choice(originals)
    for _ in range(rng.randint(1, 4)):
        text = rng.choice(MUTATORS)(rng, text)
    data = text.encode("utf-8")
    if rng.random() < 0.1 and data:
        at = rng.randrange(len(data))
        data = data[:at] + rng.randbytes(rng.randint(1, 8)) + data[at + 1 :]
    return data


def refusal(path: Path) -> SiteError | None:
    """Load a place file; return how it was refused, None when it is a place."""
    try:
        site = load_site(path)
    except SiteError as error:
        return error
    assert isinstance(site, Site)
    return None


def is_refused_in_words(path: Path, data: bytes) -> bool:
    """Load the bytes; True when they were refused, with where, what and remedy each time."""
    path.write_bytes(data)
    error = refusal(path)
    if error is None:
        return False
    assert error.problems, data
    assert all(p.where and p.what and p.remedy for p in error.problems), data
    assert str(error).replace("\n", "").isprintable(), data
    return True


def run(folder: Path, seed: int, count: int) -> int:
    """Load many bent files; return how many were refused."""
    rng = random.Random(seed)
    originals = [
        WHOLE,
        OFFSETS,
        *(p.read_text("utf-8") for p in sorted(sample_sites().glob("*.toml"))),
    ]
    (folder / "otter-bight.toml").write_text(WHOLE, encoding="utf-8")
    path = folder / "bent.toml"
    return sum(is_refused_in_words(path, bent_file(rng, originals)) for _ in range(count))


def test_bent_files(tmp_path):
    """Protects "no traceback anywhere" for place files; most bends must be noticed."""
    assert run(tmp_path, seed=1, count=1500) > 750


@pytest.mark.slow
def test_ten_thousand_bent_files(tmp_path):
    """The same over ten thousand variants."""
    assert run(tmp_path, seed=2, count=10_000) > 5000
