"""Fullshell: plans crab trapping trips around water, light and how full the crabs are."""

import os

__version__ = "0.1.0"

# Before numpy is loaded: on a busy machine two threads of its linear algebra wait for one
# another, for seconds over matrices of a hundred rows. Whoever set a number keeps it.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
