"""`fullshell doctor`: what is wrong with this installation, and what to do about it."""

from __future__ import annotations

import json
from argparse import Namespace
from dataclasses import asdict
from typing import TYPE_CHECKING

from planner.words import say

if TYPE_CHECKING:
    from planner.cli.arguments import Jobs

SOMETHING_WRONG = 1


def add_to(jobs: Jobs) -> None:
    """Add the job."""
    summary = say("What is wrong with this installation, and what to do about it; changes nothing.")
    parser = jobs.add_parser("doctor", help=summary, description=summary, allow_abbrev=False)
    parser.add_argument(
        "--report",
        action="store_true",
        help=say("what may be passed on: versions and findings, no folder, name, place or log"),
    )
    parser.add_argument(
        "--format", choices=("text", "json"), default="text", help=say("(default: text)")
    )
    parser.set_defaults(run=answer)


def answer(args: Namespace) -> str:
    """Return the findings; `args.status` becomes what the program is to end with."""
    from planner.ui.trouble.checkup import examine, is_well, report_of, text_of

    found = examine()
    args.status = 0 if is_well(found) else SOMETHING_WRONG
    if args.format == "json":
        rows = [asdict(each) for each in found]
        if args.report:
            for row in rows:
                del row["where"]
        return json.dumps({"well": is_well(found), "findings": rows}, indent=1) + "\n"
    return report_of(found) if args.report else text_of(found)
