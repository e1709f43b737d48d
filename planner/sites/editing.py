"""Changing a place file as text: only the named fields change, all else stays as written.

Comments, order, blank lines and the way numbers are written survive, because the file is
edited as a document (tomlkit) and not written anew. Every edit is read back and compared with
what was meant, so that a file laid out in an unusual way is refused rather than damaged.
"""

from __future__ import annotations

import math
import re
import tomllib
from collections.abc import Iterator, Mapping, MutableMapping, Sequence
from difflib import SequenceMatcher
from pathlib import Path
from typing import Any, Final

import tomlkit
from tomlkit.exceptions import TOMLKitError
from tomlkit.items import AoT

from planner.constituents import UnknownConstituent, canonical
from planner.errors import Problem
from planner.phrasing import typed_number
from planner.sites.reading import SiteError, tables_of
from planner.sites.site import Site
from planner.words import say

FieldPath = tuple[str, ...]
# Fields by their path in the file; None takes a field or a table out.
Wanted = Mapping[FieldPath, Any]

_BOM: Final = "\ufeff"
# [water.constituents] and [[spots]] have lines of their own; M2 = { ... } and the columns of
# tabled differences, deeper inside, stand on one.
_INLINE_DEPTH: Final = 3
_WORDS: Final[Mapping[FieldPath, str]] = {
    ("name",): "name",
    ("latitude",): "position",
    ("longitude",): "position",
    ("timezone",): say("time zone"),
    ("water", "units"): "units",
    ("water", "datum"): "datum",
    ("water", "mean_level"): say("mean level"),
    ("water", "phase_reference"): say("clock of the lags"),
    ("water", "node_factors"): say("node factors"),
    ("water", "constants_state"): say("state of the constants"),
    ("water", "source"): "source",
    ("water", "constituents"): "constituents",
    ("water", "offsets"): "offsets",
    ("ramp",): "ramp",
    ("slack",): say("slack water"),
    ("spots",): "spots",
    ("temperature",): say("water temperature"),
    ("closures",): say("closed periods"),
    ("rules",): "rules",
    ("free",): say("free days"),
}


def edited(text: str, wanted: Wanted) -> str:
    """Return the text of a place file with the wanted values; the same text when it has them.

    Values are text, numbers, lists, tables (mappings) and lists of tables. A table replaces
    the one that is there entry by entry, spots are recognised by their names. SiteError when
    the text is not TOML or is laid out so that it cannot be changed safely.
    """
    tables = tables_of(text, "place file")
    expected = tables_of(text, "place file")
    for path, value in wanted.items():
        _put_plain(expected, path, _without_none(value))
    if expected == tables:
        return text
    mark = _BOM if text.startswith(_BOM) else ""
    body = text.removeprefix(_BOM)
    try:
        document = tomlkit.parse(body if body.endswith("\n") else f"{body}\n")
        for path, value in wanted.items():
            _put_at(document, path, _without_none(value))
        made = document.as_string()
        sound = tomllib.loads(made) == expected
    except (TOMLKitError, TypeError, ValueError, KeyError, AttributeError):
        sound = False
    if not sound:
        raise SiteError("place file", [_cannot()])
    return mark + made


def changed_fields(before: str, after: str) -> tuple[str, ...]:
    """Return what differs between two texts of a place file, in words; nothing twice."""
    one, other = tables_of(before, "place file"), tables_of(after, "place file")
    names = [words for path, words in _WORDS.items() if _at(one, path) != _at(other, path)]
    for path in _WORDS:
        _put_plain(one, path, None)
        _put_plain(other, path, None)
    one, other = _pruned(one), _pruned(other)
    names += [key for key in {**one, **other} if one.get(key) != other.get(key)]
    return tuple(dict.fromkeys(names))


def site_of_text(text: str, path: Path) -> Site:
    """Return the place that a text describes if it stood at `path`; SiteError as `load_site`."""
    from planner.sites.build import build_site

    return build_site(tables_of(text, str(path)), path)


def number_or_text(written: str) -> float | int | str | None:
    """Return the number that was typed; None for nothing, the text itself for anything else.

    Text is kept so that the place file's own checks can say what is wrong with it. A comma
    between digits is a decimal point.
    """
    plain = typed_number(written.strip())
    if not plain:
        return None
    plain = re.sub(r"(?<=\d),(?=\d)", ".", plain)
    if re.fullmatch(r"[+-]?\d{1,15}", plain, re.ASCII):
        return int(plain)
    if re.fullmatch(r"[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?", plain, re.ASCII | re.IGNORECASE):
        number = float(plain)
        if math.isfinite(number):
            return number
    return written.strip()


def under_names_in_use(
    constituents: Mapping[str, Any], in_use: Mapping[str, Any]
) -> dict[str, Any]:
    """Return the constituents under the names that a file already has for them.

    Agencies differ in names (RHO and RHO1): a line that is there keeps its name and comment.
    """
    written = {}
    for name in in_use:
        try:
            written[canonical(name)] = name
        except UnknownConstituent:
            continue
    return {_written_name(name, written): entry for name, entry in constituents.items()}


def _written_name(name: str, written: Mapping[str, str]) -> str:
    try:
        return written.get(canonical(name), name)
    except UnknownConstituent:
        return name


# -- plain tables --------------------------------------------------------------------------------


def _without_none(value: Any) -> Any:
    if isinstance(value, Mapping):
        return {key: _without_none(each) for key, each in value.items() if each is not None}
    if isinstance(value, (list, tuple)):
        return [_without_none(each) for each in value]
    return value


def _at(tables: Mapping[str, Any], path: FieldPath) -> Any:
    found: Any = tables
    for step in path:
        found = found.get(step) if isinstance(found, Mapping) else None
    return found


def _put_plain(tables: dict[str, Any], path: FieldPath, value: Any) -> None:
    *holders, key = path
    for step in holders:
        if value is None and step not in tables:
            return
        below = tables.setdefault(step, {})
        if not isinstance(below, dict):
            if value is None:
                return
            raise SiteError("place file", [_cannot(step)])
        tables = below
    if value is None:
        tables.pop(key, None)
    else:
        tables[key] = value


def _pruned(tables: Mapping[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in tables.items() if value != {}}


def _cannot(where: str = "file") -> Problem:
    return Problem(
        where,
        "",
        say("is laid out in a way that cannot be changed here without harm"),
        say("change it in a text editor; docs/place-file.md shows the usual layout"),
    )


# -- the document --------------------------------------------------------------------------------


def _put_at(document: MutableMapping[str, Any], path: FieldPath, value: Any) -> None:
    holder: MutableMapping[str, Any] = document
    for step in path[:-1]:
        if step not in holder:
            if value is None:
                return
            holder[step] = tomlkit.table()
        holder = holder[step]
    _put(holder, path[-1], value, len(path))


def _put(holder: MutableMapping[str, Any], key: str, value: Any, depth: int) -> None:
    """Give a key of a table its value, keeping whatever is the same already."""
    if value is None:
        if key in holder:
            del holder[key]
        return
    present = holder.get(key)
    if isinstance(value, Mapping) and isinstance(present, MutableMapping):
        for gone in [each for each in present if each not in value]:
            del present[gone]
        for each, inner in value.items():
            _put(present, each, inner, depth + 1)
    elif _are_tables(value) and isinstance(present, list):
        _put_tables(present, value)
    elif isinstance(value, list) and isinstance(present, list) and len(value) == len(present):
        for index, inner in enumerate(value):
            if not _same(present[index], inner):
                present[index] = inner
    elif present is None or not _same(present, value):
        holder[key] = _item(value, depth)


def _put_tables(present: list[Any], wanted: Sequence[Mapping[str, Any]]) -> None:
    """Make a list of tables the wanted one; tables of the same name stay where they are."""
    new = _table if isinstance(present, AoT) else _inline
    steps = list(
        _pairs([str(t.get("name")) for t in present], [str(t.get("name")) for t in wanted])
    )
    for there, here in reversed(steps):
        if there[1] and here is None:
            del present[there[0]]
        elif here is not None and not there[1]:
            present.insert(there[0], new(wanted[here]))
        elif here is not None:
            entry = present[there[0]]
            for gone in [key for key in entry if key not in wanted[here]]:
                del entry[gone]
            for key, value in wanted[here].items():
                _put(entry, key, value, _INLINE_DEPTH)


def _pairs(
    before: Sequence[str], after: Sequence[str]
) -> Iterator[tuple[tuple[int, bool], int | None]]:
    """Yield ((position before, whether one is there), position after or None), in order."""
    for kind, a1, a2, b1, b2 in SequenceMatcher(None, before, after, autojunk=False).get_opcodes():
        common = min(a2 - a1, b2 - b1) if kind in ("equal", "replace") else 0
        for index in range(common):
            yield (a1 + index, True), b1 + index
        for index in range(a1 + common, a2):
            yield (index, True), None
        for index in range(b1 + common, b2):
            yield (a2, False), index


def _item(value: Any, depth: int) -> Any:
    if _are_tables(value) and depth < _INLINE_DEPTH:
        tables = tomlkit.aot()
        for entry in value:
            tables.append(_table(entry))
        return tables
    if isinstance(value, Mapping) and (depth < _INLINE_DEPTH or _holds_tables(value)):
        table = tomlkit.table()
        for key, inner in value.items():
            table[key] = _item(inner, depth + 1)
        return table
    return _inline(value)


def _inline(value: Any) -> Any:
    """Return a value as it stands on one line."""
    if isinstance(value, Mapping) or _are_tables(value):
        return tomlkit.value(_one_line(value))
    return tomlkit.item(value)


def _one_line(value: Any) -> str:
    if isinstance(value, Mapping):
        inside = (f"{tomlkit.key(key).as_string()} = {_one_line(v)}" for key, v in value.items())
        return f"{{ {', '.join(inside)} }}" if value else "{}"
    if _are_tables(value):
        return f"[{', '.join(_one_line(each) for each in value)}]"
    return str(tomlkit.item(value).as_string())


def _holds_tables(value: Mapping[str, Any]) -> bool:
    return any(isinstance(each, Mapping) or _are_tables(each) for each in value.values())


def _table(entry: Mapping[str, Any]) -> Any:
    table = tomlkit.table()
    for key, value in entry.items():
        table[key] = tomlkit.item(value)
    table.add(tomlkit.nl())
    return table


def _are_tables(value: Any) -> bool:
    return isinstance(value, list) and bool(value) and all(isinstance(v, Mapping) for v in value)


def _same(one: Any, other: Any) -> bool:
    return isinstance(one, bool) == isinstance(other, bool) and bool(one == other)
