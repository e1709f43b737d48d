"""When an environment is kept, added to, or made anew."""

from __future__ import annotations

import json
from dataclasses import asdict, replace
from pathlib import Path

import environment
import pytest
from environment import Stamp, next_step

WANTED = Stamp(python="3.11.2", checkout="/boat", requirements="abc", extras=("window",))


def test_an_environment_that_fits_is_kept() -> None:
    """Protects the second start from setting up again."""
    assert next_step(WANTED, WANTED, "3.11.2") == "keep"


def test_an_environment_with_more_extras_than_wanted_is_kept() -> None:
    """Protects the developer's environment from the next plain start."""
    found = replace(WANTED, extras=("dev", "window"))
    assert next_step(found, WANTED, "3.11.2") == "keep"


@pytest.mark.parametrize(
    "found",
    [
        None,  # never finished, or made by hand
        replace(WANTED, requirements="older"),
        replace(WANTED, extras=()),
    ],
)
def test_an_environment_that_lacks_something_is_added_to(found: Stamp | None) -> None:
    """Protects against running with packages of an older checkout or of half a set-up."""
    assert next_step(found, WANTED, "3.11.2") == "install"


@pytest.mark.parametrize(
    ("found", "python_there"),
    [
        (None, None),  # no environment yet
        (WANTED, None),  # its Python was taken off the machine
        (WANTED, "3.10.1"),
        (replace(WANTED, checkout="/dock"), "3.11.2"),  # its scripts hold the old place
    ],
)
def test_an_environment_that_cannot_work_is_made_anew(
    found: Stamp | None, python_there: str | None
) -> None:
    """Protects against an environment that another Python or a moved folder has broken."""
    assert next_step(found, WANTED, python_there) == "rebuild"


def test_a_stamp_survives_its_file() -> None:
    """Protects the second run: what was written is what is compared."""
    assert environment.parse_stamp(json.dumps(asdict(WANTED))) == WANTED


@pytest.mark.parametrize("text", ["", "null", "[]", "{}", '{"python": "3"}', '{"extras": 1}'])
def test_a_damaged_stamp_counts_as_none(text: str) -> None:
    """Protects the set-up from a stamp cut short or written by another version."""
    assert environment.parse_stamp(text) is None


def test_the_digest_changes_with_either_file_and_with_their_border() -> None:
    """Protects against missing a change that moves text from one file to the other."""
    digests = {
        environment.requirements_digest(*files)
        for files in [(b"a", b"b"), (b"a", b"c"), (b"x", b"b"), (b"ab", b"")]
    }
    assert len(digests) == 4


def test_the_interpreter_is_where_each_system_puts_it() -> None:
    """Protects Windows, where an environment has another shape."""
    assert environment.python_of(Path("e"), "linux") == Path("e/bin/python")
    assert environment.python_of(Path("e"), "win32") == Path("e/Scripts/python.exe")
