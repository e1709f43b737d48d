"""The words of the command line."""

from __future__ import annotations

import argparse
from argparse import ArgumentParser, Namespace
from collections.abc import Sequence
from typing import NoReturn

from planner import __version__
from planner.cli.commands import (
    check,
    dates,
    doctor,
    learn,
    picture,
    plans,
    sky,
    start,
    take,
    tally,
    trials,
    water,
)
from planner.cli.errors import UsageError
from planner.sites import names_a_file
from planner.words import counted, say

_DESCRIPTION = say(
    "Plans crab trapping trips around water, light, rules and how full the crabs should be. "
    "Without a job it opens the window, on a place file when that is all there is; on a machine "
    "without a screen it prints the ranked plans of that place, or of the demo place, and draws "
    "the window to a file."
)
_EPILOG = say(
    "PLACE is a place file (.toml) or the name of a place in your book; LOG is a logbook file or "
    "a haul table (CSV). Exit status: 0 done, 2 the command line is wrong, 3 the input is wrong."
)


# The words of argparse that a user can meet.
_WORDS = {
    "usage: ": say("usage: "),
    "positional arguments": say("positional arguments"),
    "options": say("options"),
    "show this help message and exit": say("show this help message and exit"),
    "unrecognized arguments: %s": say("unrecognized arguments: %s"),
    "the following arguments are required: %s": say("the following arguments are required: %s"),
    "argument %(argument_name)s: %(message)s": say("argument %(argument_name)s: %(message)s"),
    "expected one argument": say("expected one argument"),
    "expected at least one argument": say("expected at least one argument"),
    "ignored explicit argument %r": say("ignored explicit argument %r"),
    "not allowed with argument %s": say("not allowed with argument %s"),
    "invalid %(type)s value: %(value)r": say("invalid %(type)s value: %(value)r"),
    "invalid choice: %(value)r (choose from %(choices)s)": say(
        "invalid choice: %(value)r (choose from %(choices)s)"
    ),
}
# It looks for them under this name of its own, and offers no other way to another language.
argparse._ = lambda text: _WORDS.get(text, text)  # type: ignore[attr-defined]


class _Parser(ArgumentParser):
    """An argument parser whose errors are ours to report."""

    def error(self, message: str) -> NoReturn:
        raise UsageError(say("{message}; see {prog} --help", message=message, prog=self.prog))


def parse(argv: Sequence[str]) -> Namespace:
    """Return the arguments; `run(args) -> str` among them does the job.

    UsageError when they are wrong; SystemExit after --help and --version.
    """
    if argv and all(map(names_a_file, argv)):  # no job is called like that
        if len(argv) > 1:
            raise UsageError(
                say(
                    "{files} were given, and the window opens one; give one",
                    files=counted(len(argv), "place file"),
                )
            )
        return Namespace(run=start.run, place=argv[0])
    return _parser().parse_args(argv)


def _parser() -> ArgumentParser:
    parser = _Parser(prog="fullshell", description=_DESCRIPTION, epilog=_EPILOG, allow_abbrev=False)
    parser.add_argument(
        "--version",
        action="version",
        version=f"fullshell {__version__}",
        help=say("show the program's version number and exit"),
    )
    parser.set_defaults(run=start.run, place=None)
    jobs = parser.add_subparsers(title=say("jobs"), metavar="JOB", parser_class=_Parser)
    for command in (water, sky, dates, plans, learn, trials, check, take, tally, picture, doctor):
        command.add_to(jobs)
    return parser
