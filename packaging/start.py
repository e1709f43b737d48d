"""Set up Fullshell and open it.

    python3 packaging/start.py [arguments for the program]

The first run fetches packages into `.venv`; later runs start at once.
"""

import sys

if sys.version_info < (3, 11):  # noqa: UP036  an older Python must get as far as this message
    sys.exit(
        "Fullshell needs Python 3.11 or later; this is %d.%d (%s)."  # noqa: UP031
        % (sys.version_info[0], sys.version_info[1], sys.executable)
    )

import os
import subprocess

import environment
import machine


def main(arguments: list[str]) -> int:
    """Set up, then run the program with its arguments; return its exit status."""
    screen = machine.has_screen(sys.platform, os.environ)
    try:
        machine.prepare(screen=screen)
        python = environment.prepare(".venv", ["window"])
    except machine.SetUpError as error:
        print(error, file=sys.stderr)
        return 1
    variables = dict(os.environ)
    if not screen:
        # Without it Qt looks for a display and ends the process when there is none.
        variables.setdefault("QT_QPA_PLATFORM", "offscreen")
    machine.say("Opening Fullshell" if screen else "Opening Fullshell without a screen")
    return subprocess.call([python, "-m", "planner", *arguments], env=variables)


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        sys.exit("\nstopped")
