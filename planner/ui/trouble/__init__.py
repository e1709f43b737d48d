"""Faults of the program and the check of an installation, shown."""
