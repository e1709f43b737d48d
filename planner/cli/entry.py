"""From a command line to output and an exit status; nothing is written unless all went well."""

from __future__ import annotations

import os
import sys
from argparse import Namespace
from collections.abc import Sequence

from planner.cli.commands import doctor
from planner.cli.errors import UsageError
from planner.errors import PlannerError, RangeError
from planner.faults import keep, report
from planner.words import MINUS, say

DONE = 0
FAULT = 1
USAGE = 2
INPUT = 3


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command and return the exit status.

    0 done; 1 a fault of the program itself, or the output could not be written; 2 the command
    line is wrong; 3 the input is wrong, or the window is not installed. For 1 to 3 there is one
    message on standard error and nothing on standard output; the doctor alone prints what it
    found and returns 1 when something is wrong.
    """
    words = sys.argv[1:] if argv is None else argv
    try:
        from planner.cli.parser import parse
    except Exception as error:  # noqa: BLE001  (a library or module that is damaged raises anything)
        return _without_libraries(words, error)
    try:
        args = parse(words)
        output = args.run(args)
    except SystemExit as stop:  # --help and --version are on their way, the window has closed
        return int(stop.code or DONE) or _write("")
    except (UsageError, RangeError) as error:
        return _say(error, USAGE)
    except PlannerError as error:
        return _say(error, INPUT)
    except KeyboardInterrupt:
        return 130
    except Exception as error:
        keep(report(error))
        if "FULLSHELL_TRACEBACK" in os.environ:
            raise
        return _say(
            say(
                "this is a fault in the program itself, not in your input: {kind}: "
                "{error}; look whether its files are whole: fullshell doctor; if they are, set "
                "FULLSHELL_TRACEBACK=1 to see where, and report it",
                kind=type(error).__name__,
                error=error,
            ),
            FAULT,
        )
    return _write(output) or int(getattr(args, "status", DONE))


def _without_libraries(words: Sequence[str], error: Exception) -> int:
    """Answer where something that the jobs need does not load: only the doctor needs none."""
    if list(words[:1]) == ["doctor"]:
        args = Namespace(report="--report" in words, format="json" if "json" in words else "text")
        return _write(doctor.answer(args)) or int(args.status)
    return _say(
        say(
            "a library or a file of the program does not load ({error}); find out what is wrong: "
            "fullshell doctor",
            error=error,
        ),
        INPUT,
    )


def _say(message: object, status: int) -> int:
    print(f"fullshell: {message}", file=sys.stderr)
    return status


def _write(output: str) -> int:
    if sys.stdout is None:  # the caller closed it: nobody wants to read
        return DONE
    try:
        sys.stdout.write(_encodable(output, sys.stdout.encoding))
        sys.stdout.flush()
    except OSError as error:
        # What is left in the buffer must not be tried, and reported, once more at exit.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        if isinstance(error, BrokenPipeError):  # the reader (head, less) has seen enough
            return DONE
        return _say(
            say(
                "the output could not be written: {strerror}; send it somewhere else",
                strerror=error.strerror,
            ),
            FAULT,
        )
    return DONE


def _encodable(text: str, encoding: str | None) -> str:
    """Return the text with a question mark for what a narrow terminal cannot show.

    Signs of numbers become hyphens there: a question mark would turn low water into high.
    """
    encoding = encoding or "utf-8"
    for sign in (MINUS, "–"):
        if sign.encode(encoding, errors="ignore") == b"":
            text = text.replace(sign, "-")
    return text.encode(encoding, errors="replace").decode(encoding)
