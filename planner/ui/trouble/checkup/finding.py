"""What a check of the installation found, and how it is told."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Literal

from planner import __version__
from planner.faults import versions
from planner.words import say

State = Literal["good", "mind", "wrong"]
_SIGNS: dict[State, str] = {"good": say("ok"), "mind": say("mind"), "wrong": say("WRONG")}


@dataclass(frozen=True)
class Finding:
    """One thing that was looked at.

    said: what was found, with nothing private in it. remedy: what to do, "" when all is well.
    where: a file or folder of the user's own, which stays out of what is passed on.
    """

    what: str
    state: State
    said: str
    remedy: str = ""
    where: str = ""


Check = Callable[[], Iterable[Finding]]


def good(what: str, said: str, where: str = "") -> Finding:
    """Return a finding that all is well."""
    return Finding(what, "good", said, where=where)


def mind(what: str, said: str, remedy: str, where: str = "") -> Finding:
    """Return a finding that the user should know of; the program works."""
    return Finding(what, "mind", said, remedy, where)


def wrong(what: str, said: str, remedy: str, where: str = "") -> Finding:
    """Return a finding that keeps the program, or a part of it, from working."""
    return Finding(what, "wrong", said, remedy, where)


def found_by(checks: Iterable[Check]) -> list[Finding]:
    """Return what checks find; a check that fails itself is a finding."""
    found: list[Finding] = []
    for check in checks:
        try:
            found += check()
        except Exception as error:  # noqa: BLE001  (on a broken machine anything may be raised)
            name = check.__name__.removeprefix("check_").replace("_", " ")
            found.append(
                wrong(
                    name,
                    say("could not be looked at ({kind})", kind=type(error).__name__),
                    say("install the program again"),
                )
            )
    return found


def is_well(found: Sequence[Finding]) -> bool:
    """Tell whether nothing is wrong."""
    return all(each.state != "wrong" for each in found)


def verdict(found: Sequence[Finding]) -> str:
    """Return the sentence that sums up what was found."""
    count = sum(each.state == "wrong" for each in found)
    noted = sum(each.state == "mind" for each in found)
    if count:
        return say(
            "{count} of {found} things are wrong with this installation.",
            count=count,
            found=len(found),
        )
    if noted:
        return say("Nothing is wrong with this installation; {noted} to mind.", noted=noted)
    return say("Nothing is wrong with this installation.")


def text_of(found: Sequence[Finding]) -> str:
    """Return everything for the user's own eyes, folders and all."""
    lines = [
        say("Fullshell {version}: {verdict}", version=__version__, verdict=verdict(found)),
        "",
    ]
    for each in found:
        lines.append(f"{_SIGNS[each.state]:<5}  {each.what}: {each.said}")
        if each.where:
            lines.append(f"       {each.where}")
        if each.remedy:
            lines.append(f"       -> {each.remedy}")
    return "\n".join(lines) + "\n"


def report_of(found: Sequence[Finding]) -> str:
    """Return what may be passed on: versions and findings, no folder, name, place or log."""
    lines = [say("Fullshell {version}: {verdict}", version=__version__, verdict=verdict(found))]
    lines += [f"{name}: {value}" for name, value in versions().items()]
    lines += ["", *(f"{_SIGNS[each.state]:<5}  {each.what}: {each.said}" for each in found)]
    return "\n".join(lines) + "\n"
