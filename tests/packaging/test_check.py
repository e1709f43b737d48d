"""What the checks cover, and what they report."""

from __future__ import annotations

import re
from importlib.metadata import requires
from pathlib import Path

import check
import core_without_qt
import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]


def test_every_test_that_needs_qt_is_run_where_qt_is() -> None:
    """Protects against a test that skips itself without Qt and is never run with it."""
    importing = re.compile(
        r"^\s*(?:from|import) (?:PySide6|pyqtgraph|planner\.ui)\b"
        r"|importorskip\(\s*[\"'](?:PySide6|pyqtgraph|pytestqt)",
        re.MULTILINE,
    )
    elsewhere = [
        str(path.relative_to(ROOT))
        for path in (ROOT / "tests").rglob("*.py")
        if path.relative_to(ROOT / "tests").parts[0] in check.ONLY_WITHOUT_QT
        and importing.search(path.read_text(encoding="utf-8"))
    ]
    assert elsewhere == []


def test_no_folder_is_left_out_of_both_halves() -> None:
    """Protects against a folder of tests that no half of the run takes."""
    assert not set(check.ONLY_WITH_QT) & set(check.ONLY_WITHOUT_QT)


def test_the_core_is_what_the_import_contract_says() -> None:
    """Protects the proof without Qt from checking a list of its own."""
    names = core_without_qt.core_packages((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    assert {"planner.cli", "planner.tides", "planner.molt", "planner.logbook"} <= set(names)
    assert not any(name.startswith("planner.ui") for name in names)


def test_every_requirement_is_pinned_within_its_own_bounds() -> None:
    """Protects a fresh machine from releases that no test has seen, and from a clash of the two."""
    pins = {
        canonicalize_name(name): version
        for name, version in re.findall(
            r"^([\w.-]+)==(\S+)$",
            (ROOT / "packaging" / "constraints.txt").read_text(encoding="utf-8"),
            re.MULTILINE,
        )
    }
    wanted = [Requirement(text) for text in requires("fullshell") or []]
    unpinned = [
        str(requirement)
        for requirement in wanted
        if canonicalize_name(requirement.name) != "fullshell"
        and not requirement.specifier.contains(pins.get(canonicalize_name(requirement.name), "0"))
    ]
    assert wanted
    assert unpinned == []


def test_a_failed_check_is_named_last_and_what_builds_on_it_is_not_run() -> None:
    """Protects against a failure that scrolls by, and against passing a check never made."""
    report = check.Report()
    assert report.check("first", lambda: True)
    built = report.check("second", lambda: False)
    assert not report.check("third", lambda: pytest.fail("was run"), after=built)
    assert report.check("fourth", lambda: True)
    closing = report.summary().splitlines()[-1]
    assert closing.startswith("2 of 4 checks FAILED")
    assert closing.endswith("second; third")


def test_all_passed_is_said_when_all_passed() -> None:
    """Protects the line that people and machines look for."""
    report = check.Report()
    report.check("only", lambda: True)
    assert report.summary().splitlines()[-1].startswith("All 1 checks passed")
