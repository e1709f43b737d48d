"""From what the file model found wrong to problems a person can put right."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from datetime import date, time
from difflib import get_close_matches
from types import UnionType
from typing import Any, Union, get_args, get_origin

from pydantic import BaseModel, ValidationError
from pydantic.fields import FieldInfo

from planner.errors import Problem
from planner.sites.file_model import PlaceFile
from planner.words import say

_BARE_KEY = re.compile(r"[A-Za-z0-9_-]{1,60}")

# What each kind of refusal means to somebody who has never heard of types.
_MEANINGS: Mapping[str, str] = {
    "missing": say("is missing"),
    "model_type": say("must be a table"),
    "dict_type": say("must be a table"),
    "list_type": say("must be a list"),
    "float_type": say("must be a number"),
    "int_type": say("must be a whole number"),
    "string_type": say("must be text in quotes"),
    "bool_type": say("must be true or false"),
    "finite_number": say("must be an ordinary number, not nan or inf"),
    "greater_than": say("must be more than {gt:g}"),
    "greater_than_equal": say("must be {ge:g} or more"),
    "less_than": say("must be less than {lt:g}"),
    "less_than_equal": say("must be {le:g} or less"),
    "literal_error": say("must be {expected}"),
    "string_too_long": say("must be at most {max_length} characters long"),
    "too_short": say("must have at least {min_length} entries"),
    "too_long": say("must have at most {max_length} entries"),
}


def problems_in_words(error: ValidationError) -> list[Problem]:
    """Return one problem for each thing the file model refused."""
    return [_in_words(dict(details)) for details in error.errors(include_url=False)]


def _in_words(details: Mapping[str, Any]) -> Problem:
    steps: tuple[str | int, ...] = details["loc"]
    kind: str = details["type"]
    where = field_path(steps)
    if kind == "missing":
        return Problem(
            where, "", _MEANINGS[kind], say("give {description}", description=_description(steps))
        )
    found = shown(details["input"])
    if kind == "extra_forbidden":
        known = _keys_of(_model_at(steps[:-1]))
        return Problem(
            where, found, say("is not a key of this table"), _key_remedy(str(steps[-1]), known)
        )
    context: Mapping[str, Any] = details.get("ctx", {})
    if kind == "refused":
        remedy = context["remedy"] or say("give {description}", description=_description(steps))
        return Problem(where, found, context["what"], remedy)
    meaning = _MEANINGS.get(kind, details["msg"]).format(**context)
    return Problem(
        where, found, meaning, say("give {description}", description=_description(steps))
    )


def field_path(steps: Iterable[str | int]) -> str:
    """Return "spots[2].depth" for a field; entries of a list count from 1."""
    path = ""
    for step in steps:
        if isinstance(step, int):
            path += f"[{step + 1}]"
        else:
            key = step if _BARE_KEY.fullmatch(step) else shown(step)
            path += f".{key}" if path else key
    return path


def shown(value: Any) -> str:
    """Return a value about as it was written in the file."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return (
            '"'
            + "".join(each if each.isprintable() else _escaped(each) for each in value[:60])
            + '"'
        )
    if isinstance(value, dict):
        return say("a table")
    if isinstance(value, list):
        return say("a list of {count}", count=len(value))
    if isinstance(value, (date, time)):
        return value.isoformat()
    if isinstance(value, int) and abs(value) > 10**30:
        return say("a very long number")
    return str(value)


def _escaped(letter: str) -> str:
    return letter.encode("unicode_escape").decode("ascii")


def near_words(written: str, known: Iterable[str]) -> list[str]:
    """Return up to three known words that look like the written one, nearest first."""
    folded = {word.casefold(): word for word in known}
    start = written.casefold()[:64]
    close = get_close_matches(start, folded, n=3, cutoff=0.6)
    begun = [word for word in folded if len(start) >= 3 and word.startswith(start)]
    return [folded[word] for word in dict.fromkeys(close + begun)][:3]


def _key_remedy(written: str, known: list[str]) -> str:
    near = near_words(written, known)
    if near:
        return say("did you mean {near}? otherwise take it out", near=say(" or ").join(near))
    return say("take it out; the keys here are {known}", known=", ".join(known))


def _keys_of(model: type[BaseModel] | None) -> list[str]:
    if model is None:
        return []
    return [field.alias or name for name, field in model.model_fields.items()]


def _field_named(model: type[BaseModel], key: str | int) -> FieldInfo | None:
    for name, field in model.model_fields.items():
        if key == (field.alias or name):
            return field
    return None


def _description(steps: Iterable[str | int]) -> str:
    """Return the description of the innermost field on the way to a value."""
    model: type[BaseModel] | None = PlaceFile
    text = say("a value as docs/place-file.md shows")
    for step in steps:
        field = _field_named(model, step) if model is not None else None
        if field is not None:
            text = field.description or text
            model = _model_in(field.annotation)
    return text


def _model_at(steps: Iterable[str | int]) -> type[BaseModel] | None:
    model: type[BaseModel] | None = PlaceFile
    for step in steps:
        field = _field_named(model, step) if model is not None else None
        if field is not None:
            model = _model_in(field.annotation)
    return model


def _model_in(annotation: Any) -> type[BaseModel] | None:
    """Return the table type inside `X | None`, `list[X]` or `dict[str, X]`."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    if get_origin(annotation) in (list, dict, Union, UnionType):
        for part in get_args(annotation):
            found = _model_in(part)
            if found is not None:
                return found
    return None
