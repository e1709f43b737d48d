"""What is known of each trap: its hauls, its history, and both as lines; no Qt."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime
from typing import Final

from planner.logbook import Haul, Log, Trap
from planner.logbook.log import haul_judged
from planner.phrasing import date_text, natural_order
from planner.ui.hauls.haul_cells import NOT_RECORDED
from planner.ui.hauls.haul_words import light_words
from planner.ui.hauls.log_words import IN_WORDS
from planner.words import counted, say

_OLDEST: Final = datetime.min.replace(tzinfo=UTC)


def trap_labels(log: Log) -> list[str]:
    """Return the labels of all traps, of hauls and of histories, as a person sorts them."""
    labels = {haul.trap for haul in log.hauls if haul.trap} | {trap.label for trap in log.traps}
    return sorted(labels, key=natural_order)


def trap_named(log: Log, label: str) -> Trap:
    """Return what is kept of a trap; its design as last hauled where nothing is."""
    for trap in log.traps:
        if trap.label == label:
            return trap
    design = next((haul.design for haul in hauls_of_trap(log, label) if haul.design), "")
    return Trap(label, design)


def hauls_of_trap(log: Log, label: str) -> list[Haul]:
    """Return a trap's hauls, newest first; those without a time first, as they wait for it."""
    hauls = [haul for haul in log.hauls if haul.trap == label]
    undated = [haul for haul in hauls if haul.hauled_at is None]
    dated = [haul for haul in hauls if haul.hauled_at is not None]
    return undated + sorted(dated, key=lambda h: h.hauled_at or _OLDEST, reverse=True)


def sums_of_trap(hauls: Sequence[Haul]) -> str:
    """Return what a trap gave in all, and how often."""
    caught = [haul.keepers for haul in hauls if haul.keepers is not None]
    told = [pair for pair in map(haul_judged, hauls) if pair is not None]
    judged, light = sum(pair[0] for pair in told), sum(pair[1] for pair in told)
    parts = [counted(len(hauls), "haul")]
    if caught:
        parts.append(
            say(
                "{keepers} keepers, {each:.1f} a haul",
                keepers=sum(caught),
                each=sum(caught) / len(caught),
            )
        )
    if judged:
        parts.append(
            say(
                "{judged} judged, light {light_words}",
                judged=judged,
                light_words=light_words(judged, light),
            )
        )
    return "; ".join(parts)


def haul_line(haul: Haul) -> tuple[str, ...]:
    """Return a trap's haul as a row: trip, place, spot, bait, keepers, light of judged."""
    keepers = NOT_RECORDED if haul.keepers is None else str(haul.keepers)
    judged = haul_judged(haul)
    light = (
        NOT_RECORDED
        if judged is None
        else say("{light} of {judged}", light=judged[1], judged=judged[0])
    )
    return (haul.trip, haul.place, haul.spot, haul.bait, keepers, light)


def event_lines(trap: Trap) -> list[tuple[str, str, str]]:
    """Return a trap's history as rows, in the order of its days."""
    events = sorted(trap.events, key=lambda event: event.on)
    return [
        (date_text(event.on), IN_WORDS.get(event.kind, event.kind), event.notes) for event in events
    ]
