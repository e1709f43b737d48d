"""Load up: the checklist of a trip, where its traps go, and what is taken along."""
