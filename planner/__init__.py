"""Fullshell: plans crab trapping trips around water, light and how full the crabs are."""

__version__ = "0.1.0"
