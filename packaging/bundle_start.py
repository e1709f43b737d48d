"""Run by the bundle before the program, inside its own Python."""

import os
import sys

# By this name the set-up program of Windows sees that this one is open, and lets it alone: what is
# open reads its parts from its folder as it goes. Windows lets go of it with the process.
MUTEX = "Fullshell.Open"
if sys.platform == "win32" and hasattr(sys, "frozen"):
    import ctypes

    ctypes.windll.kernel32.CreateMutexW(None, False, MUTEX)

# The starter of the bundle points the loader to the bundle's own libraries. By now it has read
# that; other programs that are started from here (a viewer of the printed sheet) need their own.
if sys.platform.startswith("linux") and hasattr(sys, "frozen"):
    before = os.environ.pop("LD_LIBRARY_PATH_ORIG", None)
    if before:
        os.environ["LD_LIBRARY_PATH"] = before
    else:
        os.environ.pop("LD_LIBRARY_PATH", None)
    # This program itself, started from here, must then point the loader anew: without this word
    # the starter takes it for a part of the one that runs, which had everything set.
    os.environ["PYINSTALLER_RESET_ENVIRONMENT"] = "1"
