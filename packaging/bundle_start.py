"""Run by the bundle before the program, inside its own Python."""

import os
import sys

# The starter of the bundle points the loader to the bundle's own libraries. By now it has read
# that; other programs that are started from here (a viewer of the printed sheet) need their own.
if sys.platform.startswith("linux"):
    before = os.environ.pop("LD_LIBRARY_PATH_ORIG", None)
    if before:
        os.environ["LD_LIBRARY_PATH"] = before
    else:
        os.environ.pop("LD_LIBRARY_PATH", None)
    # This program itself, started from here, must then point the loader anew: without this word
    # the starter takes it for a part of the one that runs, which had everything set.
    os.environ["PYINSTALLER_RESET_ENVIRONMENT"] = "1"
