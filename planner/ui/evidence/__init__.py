"""Weigh evidence: what moves the share of light crabs, how forecasts did, traps compared."""
